#include "calendar/day.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;
using test::moment;

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Subtractable = requires(A a, B b) {
    a - b;
};

static_assert(Addable<Day, Days> && Subtractable<Day, Day>);
static_assert(!Addable<Day, Day>, "the sum of two days means nothing");
static_assert(!Addable<Moment, Moment>);
static_assert(!Addable<Day, int>, "a bare number does not say days or hours");
static_assert(!Addable<Hour, Hour>);
static_assert(!std::is_convertible_v<int, Day>);
static_assert(!std::is_convertible_v<Moment, Day>, "a moment is cut to its day by name");
static_assert(!std::is_convertible_v<Day, date::sys_days>, "a day on the wall is no instant");
static_assert(std::is_trivially_copyable_v<Day> && std::is_trivially_copyable_v<Moment>);

TEST(DayText, WritesAndReadsTheSameDay) {
    for (const char* text : {"1900-01-01", "1970-01-01", "2000-02-29", "2024-02-29", "2027-05-10",
                             "2099-12-31", "2199-12-31"}) {
        const auto read = dayFromText(text);
        ASSERT_TRUE(read) << text;
        EXPECT_EQ(toText(*read), text);
    }
}

TEST(DayText, RefusesADayThatIsNotInTheCalendar) {
    for (const char* text : {"2027-02-29", "2026-02-29", "2100-02-29", "1900-02-29", "2027-02-30",
                             "2027-04-31", "2027-13-01", "2027-00-10", "2027-01-00", "2027-01-32"})
        EXPECT_FALSE(dayFromText(text)) << text;
}

TEST(DayText, RefusesAnyOtherForm) {
    for (const char* text : {"", "2027-5-10", "2027-05-1", "27-05-10", "10.05.2027", "2027/05/10",
                             "20270510", "2027-05-10 ", " 2027-05-10", "2027-05-1O", "+027-05-10",
                             "-027-05-10", "2027-05-10T12:00", "2027-W20-1", "today", "2027-05-١٠"})
        EXPECT_FALSE(dayFromText(text)) << text;
}

TEST(DayText, RefusesWhatLiesOutsideTheRange) {
    EXPECT_FALSE(dayFromText("1899-12-31"));
    EXPECT_FALSE(dayFromText("2200-01-01"));
    EXPECT_FALSE(dayFromText("0000-01-01"));
    EXPECT_FALSE(dayFromText("9999-12-31"));
    EXPECT_EQ(dayFromText("1900-01-01"), kFirstDay);
    EXPECT_EQ(dayFromText("2199-12-31"), kLastDay);
}

TEST(MomentText, WritesAndReadsTheSameMinute) {
    for (const char* text : {"2027-05-10T00:00", "2027-05-10T09:07", "2027-05-10T23:59"}) {
        const auto read = momentFromText(text);
        ASSERT_TRUE(read) << text;
        EXPECT_EQ(toText(*read), text);
    }
}

TEST(MomentText, ADayAloneMeansNoon) {
    EXPECT_EQ(toText(moment("2027-05-10")), "2027-05-10T12:00");
}

TEST(MomentText, RefusesAnyOtherForm) {
    for (const char* text :
         {"2027-05-10T24:00", "2027-05-10T12:60", "2027-05-10T1200", "2027-05-10 12:00",
          "2027-05-10t12:00", "2027-05-10T12:00:00", "2027-05-10T12:00Z", "2027-02-29T12:00",
          "2027-05-10T9:00", "T12:00", "2027-05-10T", "2027-05-10T-1:00"})
        EXPECT_FALSE(momentFromText(text)) << text;
}

TEST(Moment, KnowsItsDayAndHour) {
    const auto late = moment("2027-06-21T23:59");
    EXPECT_EQ(dayOf(late), day("2027-06-21"));
    EXPECT_EQ(hourOf(late), Hour{23});
    EXPECT_EQ(momentOf(day("2027-06-21")), moment("2027-06-21T12:00"));
    EXPECT_EQ(momentOf(day("2027-06-21"), Hour{0}), moment("2027-06-21T00:00"));
    EXPECT_EQ(dayOf(moment("1969-12-31T23:00")), day("1969-12-31")) << "before the epoch too";
}

TEST(HoursAfter, RoundsToTheNearestMinuteDownOrUp) {
    const auto noon = moment("2027-05-10T12:00");
    const double third = 1.0 / 3.0 / 60.0;  // twenty seconds
    EXPECT_EQ(hoursAfter(noon, 1 + third), moment("2027-05-10T13:00"));
    EXPECT_EQ(hoursAfterDown(noon, 1 + third), moment("2027-05-10T13:00"));
    EXPECT_EQ(hoursAfterUp(noon, 1 + third), moment("2027-05-10T13:01"));
    EXPECT_EQ(hoursAfterDown(noon, 1 - third), moment("2027-05-10T12:59"));
    EXPECT_EQ(hoursAfter(noon, 1 - third), moment("2027-05-10T13:00"));
}

TEST(HoursAfter, RoundsTowardsThePastAndTheFutureAlsoBackwards) {
    const auto noon = moment("2027-05-10T12:00");
    const double third = 1.0 / 3.0 / 60.0;
    EXPECT_EQ(hoursAfterDown(noon, -1 - third), moment("2027-05-10T10:59"));
    EXPECT_EQ(hoursAfterUp(noon, -1 - third), moment("2027-05-10T11:00"));
}

TEST(HoursAfter, DoesNotRoundUpTheDustOfFloatingPoint) {
    const auto noon = moment("2027-05-10T12:00");
    double tenth = 0;
    for (int i = 0; i < 10; ++i) tenth += 0.1;  // not quite 1
    EXPECT_EQ(hoursAfterUp(noon, 239 + tenth), moment("2027-05-20T12:00"));
    EXPECT_EQ(hoursAfterDown(noon, 239 + tenth), moment("2027-05-20T12:00"));
}

TEST(HoursAfter, KeepsTheWallClockWhereClocksAreChanged) {
    // Central Europe 28 March 2027, Santiago 5 September 2027, Samoa's lost 30 December 2011.
    EXPECT_EQ(hoursAfter(moment("2027-03-27T14:00"), 24), moment("2027-03-28T14:00"));
    EXPECT_EQ(hoursAfter(moment("2027-09-04T23:00"), 2), moment("2027-09-05T01:00"));
    EXPECT_EQ(hoursAfter(moment("2011-12-29T12:00"), 24), moment("2011-12-30T12:00"));
}

TEST(HoursBetween, IsExactToTheMinute) {
    EXPECT_DOUBLE_EQ(hoursBetween(moment("2027-06-10T17:00"), moment("2027-06-19T17:00")), 216);
    EXPECT_DOUBLE_EQ(hoursBetween(moment("2027-06-10T17:30"), moment("2027-06-10T17:00")), -0.5);
}

}  // namespace
}  // namespace tenthday
