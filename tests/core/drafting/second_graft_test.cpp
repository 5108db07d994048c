#include "drafting/second_graft.h"

#include <gtest/gtest.h>

#include "outlook/mixed_ages.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

/// Batch 9: 15 and 10 grafts into one box on 11 June.
class SecondGraft : public ::testing::Test {
protected:
    SecondGraft() {
        maker_.yard("Home", 1).yard("Mill", 2).builder("Box", "Home");
        maker_.batch("9", "2027-06-11", 15, 15, "Box").bar("9", 2, 10, "Box").share("9", "Mill", 9);
        maker_.makeUp("Box", "2027-06-10", 9, false);
    }
    [[nodiscard]] Snapshot book(const char* today) const {
        auto snapshot = maker_.snapshot();
        snapshot.setToday(day(today));
        return snapshot;
    }
    [[nodiscard]] std::optional<TopUp> topUp(const char* today) const {
        return topUpOf(book(today), maker_.batchId("9"));
    }
    void grafted() { maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 25); }

    test::SeasonMaker maker_{"2027-06-13"};
};

// Contract: offered only when counted by +2.
TEST_F(SecondGraft, CupsNotStartedAreOfferedWhenCountedInTime) {
    EXPECT_FALSE(topUp("2027-06-12")) << "nothing is grafted";
    grafted();
    EXPECT_FALSE(topUp("2027-06-12")) << "nothing is counted";
    maker_.outcome("9", OutcomeKind::TakeCount, "2027-06-13", 9, {}, 1);
    ASSERT_TRUE(topUp("2027-06-13"));
    EXPECT_EQ(topUp("2027-06-13")->cups, Cells{6}) << "bar 2 is not counted";
    EXPECT_EQ(topUp("2027-06-13")->by, day("2027-06-13"));
    EXPECT_FALSE(topUp("2027-06-14")) << "too far apart";
    maker_.outcome("9", OutcomeKind::TakeCount, "2027-06-13", 8, {}, 2);
    EXPECT_EQ(topUp("2027-06-13")->cups, Cells{6 + 2});
}

TEST_F(SecondGraft, ACountOnTheThirdDayIsTooLate) {
    grafted();
    maker_.outcome("9", OutcomeKind::TakeCount, "2027-06-14", 9, {}, 1);
    EXPECT_FALSE(topUp("2027-06-14"));
}

TEST_F(SecondGraft, ATopUpIsABatchOfItsOwnInTheSameBox) {
    grafted();
    maker_.outcome("9", OutcomeKind::TakeCount, "2027-06-12", 9, {}, 1);
    const auto before = book("2027-06-13");
    const auto draft = topUpDraft(before, maker_.batchId("9"), *topUp("2027-06-13"), id<Batch>(70));
    EXPECT_EQ(draft.label, "10");
    EXPECT_EQ(draft.day, day("2027-06-13"));
    EXPECT_EQ(draft.makeUp, MakeUpPlan::None);
    ASSERT_EQ(draft.bars.size(), 1U);
    EXPECT_EQ(draft.bars[0].cells, Cells{6});
    std::uint64_t next = 700;
    const auto changes = changesOf(before, draft, {}, [&] { return id<Batch>(++next).uuid; });
    ASSERT_TRUE(changes.ok()) << changes.error().text;
    const auto after = applied(before, changes.value()).value();
    EXPECT_EQ(after.all<Batch>().size(), 2U);
    EXPECT_EQ(after.all<MakeUp>().size(), 1U) << "the box is made up already";
    const auto outlook = test::freshOutlook(after);
    const auto* older = outlook->find(maker_.batchId("9"));
    const auto* younger = outlook->find(id<Batch>(70));
    ASSERT_NE(younger, nullptr);
    const auto box = older->timeline.loads.at(0).builder;
    EXPECT_EQ(younger->timeline.loads.at(0).builder, box);
    // The box goes by the oldest cells, whichever batch is asked for.
    for (const auto batch : {maker_.batchId("9"), id<Batch>(70)}) {
        const auto oldest = oldestCells(*outlook, *box, batch);
        ASSERT_TRUE(oldest);
        EXPECT_EQ(oldest->batch, maker_.batchId("9"));
        EXPECT_EQ(oldest->latestMove, older->timeline.latestMove);
    }
    EXPECT_LT(older->timeline.latestMove, younger->timeline.latestMove);
    EXPECT_FALSE(oldestCells(*test::freshOutlook(before), *box, maker_.batchId("9")))
        << "alone there";
}

TEST_F(SecondGraft, InsuranceIsTheWholeBatchADayLater) {
    EXPECT_TRUE(canInsure(book("2027-06-01"), maker_.batchId("9")));
    EXPECT_TRUE(canInsure(book("2027-06-13"), maker_.batchId("9")));
    EXPECT_FALSE(canInsure(book("2027-06-14"), maker_.batchId("9")));
    const auto draft = insuranceDraft(book("2027-06-01"), maker_.batchId("9"), id<Batch>(70));
    EXPECT_EQ(draft.day, day("2027-06-12"));
    EXPECT_EQ(draft.bars.size(), 2U);
    EXPECT_EQ(draft.shares.size(), 1U);
    EXPECT_EQ(draft.makeUp, MakeUpPlan::None);
    EXPECT_EQ(insuranceDraft(book("2027-06-13"), maker_.batchId("9"), id<Batch>(70)).day,
              day("2027-06-13"));
}

}  // namespace
}  // namespace tenthday
