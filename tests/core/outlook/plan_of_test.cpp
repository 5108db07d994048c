#include "outlook/plan_of.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;

class PlanOf : public ::testing::Test {
protected:
    PlanOf() : maker_("2027-07-10") {
        maker_.yard("Mill").builder("Box", "Mill").batch("9", "2027-06-11", 15, 12, "Box");
        for (int i = 1; i <= 4; ++i)
            maker_.box("N" + std::to_string(i), "Mill", "7", "2027-04-01")
                .stock("N" + std::to_string(i) + "/-", "2027-06-10");
    }
    std::optional<Day> planned(Event event) {
        const auto outlook = maker_.outlook();
        const auto plan = planOf(*outlook, maker_.batchId("9"));
        return plannedElse(*plan, outlook->batches[0]->timeline, event);
    }

    test::SeasonMaker maker_;
};

TEST_F(PlanOf, WithoutAnythingSeenItIsTheTimeline) {
    for (std::size_t i = 0; i < kTokenCount<Event>; ++i)
        EXPECT_FALSE(planned(static_cast<Event>(i)));
    EXPECT_FALSE(planOf(*maker_.outlook(), test::id<Batch>(1)));
}

TEST_F(PlanOf, AGraftTwoDaysLateKeepsThePlanBesideIt) {
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-13", 12);
    EXPECT_EQ(planned(Event::Graft), day("2027-06-11"));
    const auto outlook = maker_.outlook();
    const auto plan = planOf(*outlook, maker_.batchId("9"));
    const auto& now = outlook->batches[0]->timeline;
    for (const auto event : {Event::Ripe, Event::Emergence, Event::FirstLook, Event::Catch})
        EXPECT_EQ(dayOf(now.find(event)->likely), *planned(event) + Days{2}) << token(event);
    EXPECT_EQ(plan->hold.transferDay, day("2027-06-21"));
    EXPECT_EQ(now.hold.transferDay, day("2027-06-23"));
}

TEST_F(PlanOf, CellsRecordedOnAnotherDayDoNotChangeThePlan) {
    maker_.place("9", "N1/-", "2027-06-20", true).place("9", "N2/-", "2027-06-20", true);
    const auto outlook = maker_.outlook();
    EXPECT_EQ(outlook->batches[0]->timeline.hold.transferDay, day("2027-06-20"));
    EXPECT_EQ(planOf(*outlook, maker_.batchId("9"))->hold.transferDay, day("2027-06-21"));
}

TEST_F(PlanOf, CellsPlannedByNameAreThePlan) {
    maker_.place("9", "N1/-", "2027-06-22", false);
    EXPECT_EQ(planOf(*maker_.outlook(), maker_.batchId("9"))->hold.transferDay, day("2027-06-22"));
}

}  // namespace
}  // namespace tenthday
