/// Ship days, days off, and the day an order has to be whole. Common practice: queens are caged the
/// day before they go, and none is posted into a holiday.
#include "records/order_days.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

std::string days(const Snapshot& snapshot, const Order& order, std::string_view shipDays) {
    const auto found = orderDays(snapshot, order, shipDays);
    return found ? toText(found->cage) + " " + toText(found->go) : "none";
}
Day wholeDay(const Snapshot& snapshot, const Order& order, std::string_view shipDays) {
    return wholeOn(order, shipDays, orderDays(snapshot, order, shipDays));
}

// 27 June 2027 is a Sunday.
TEST(OrderDays, AreTheLastOfItsWeekdaysByTheDueDayAndTheDayBefore) {
    const auto snapshot = SeasonMaker().snapshot();
    const auto order = orderFor(1, 5, "2027-06-27");
    EXPECT_EQ(days(snapshot, order, "1234"), "2027-06-23 2027-06-24");
    EXPECT_EQ(days(snapshot, order, "1"), "2027-06-20 2027-06-21");
    EXPECT_EQ(days(snapshot, order, "7"), "2027-06-26 2027-06-27");
    EXPECT_EQ(wholeDay(snapshot, order, "1234"), day("2027-06-23"));
}

TEST(OrderDays, WithoutWeekdaysTheDueDayStands) {
    const auto snapshot = SeasonMaker().dayOff("2027-06-26", "2027-06-28").snapshot();
    const auto order = orderFor(1, 5, "2027-06-27");
    EXPECT_EQ(days(snapshot, order, ""), "2027-06-26 2027-06-27");
    EXPECT_EQ(wholeDay(snapshot, order, ""), day("2027-06-27"));
}

struct OffCase {
    const char* name;
    const char* from;
    const char* until;
    const char* expected;
};
void PrintTo(const OffCase& c, std::ostream* out) { *out << c.name; }
class OrderDaysAndDaysOff : public ::testing::TestWithParam<OffCase> {};

TEST_P(OrderDaysAndDaysOff, KeepClearOfThem) {
    const auto& c = GetParam();
    const auto snapshot = SeasonMaker().dayOff(c.from, c.until).snapshot();
    EXPECT_EQ(days(snapshot, orderFor(1, 5, "2027-06-24"), "1234"), c.expected);  // a Thursday
}
// clang-format off
INSTANTIATE_TEST_SUITE_P(OfAThursday, OrderDaysAndDaysOff, ::testing::Values(
    OffCase{"ItselfAndWednesdayIsBeforeIt", "2027-06-24", "2027-06-24", "2027-06-21 2027-06-22"},
    OffCase{"TheDayAfter",                  "2027-06-25", "2027-06-25", "2027-06-22 2027-06-23"},
    OffCase{"TheDayOfCaging",               "2027-06-23", "2027-06-23", "2027-06-20 2027-06-21"},
    OffCase{"AnotherWeek",                  "2027-06-14", "2027-06-18", "2027-06-23 2027-06-24"},
    OffCase{"TheWholeWeek",                 "2027-06-20", "2027-06-26", "2027-06-16 2027-06-17"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST(OrderDays, AreNoneWhereNotBeforeLeavesNone) {
    const auto snapshot = SeasonMaker().snapshot();
    auto order = orderFor(1, 5, "2027-06-27");
    order.notBefore = day("2027-06-25");
    EXPECT_EQ(days(snapshot, order, "1234"), "none");
    EXPECT_EQ(wholeDay(snapshot, order, "1234"), order.due);
    order.notBefore = day("2027-06-24");
    EXPECT_EQ(days(snapshot, order, "1234"), "2027-06-23 2027-06-24");
}

TEST(OrderDays, CellsAndQueensForOneselfAreNotCagedTheDayBefore) {
    const auto snapshot = SeasonMaker().dayOff("2027-06-23", "2027-06-23").snapshot();
    for (const auto kind : {OrderKind::RipeCell, OrderKind::Virgin, OrderKind::Own})
        EXPECT_EQ(days(snapshot, orderFor(1, 5, "2027-06-24", kind), "4"), "2027-06-24 2027-06-24");
}

TEST(OrderTermsOf, AnOrderWithoutARowIsOpenAndGoesAnyDay) {
    const auto order = orderFor(1, 5, "2027-06-27");
    const auto bare = with(SeasonMaker().snapshot(), order);
    EXPECT_EQ(termsOf(bare, order.id).standing, OrderStanding::Open);
    EXPECT_EQ(termsOf(bare, order.id).shipDays, "");
    const auto snapshot = with(bare, OrderTerms{id<OrderTerms>(1), 1, order.id,
                                                OrderStanding::Waiting, OrderPurpose::None, "12"});
    EXPECT_EQ(termsOf(snapshot, order.id).standing, OrderStanding::Waiting);
    EXPECT_EQ(orderDays(snapshot, order)->go, day("2027-06-22"));
}

}  // namespace
}  // namespace tenthday::test
