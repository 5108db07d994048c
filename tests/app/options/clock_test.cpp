#include "options/clock.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

TEST(Clock, AsksTheCommandLineThenTheBookThenTheMachine) {
    const auto machine = [] { return day("2027-03-01"); };
    Book plain;
    Book example;
    example.today = day("2027-06-01");
    EXPECT_EQ(Clock({}, machine).today(plain), day("2027-03-01"));
    EXPECT_EQ(Clock({}, machine).today(example), day("2027-06-01"));
    EXPECT_EQ(Clock(day("2027-07-07"), machine).today(example), day("2027-07-07"));
    EXPECT_EQ(Clock(day("2027-07-07"), machine).realDay(), day("2027-03-01"));
}

}  // namespace
}  // namespace tenthday
