/// What was counted of each bar, and its part of a count of the whole batch.
#include "timeline/bar_seen.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday::test {
namespace {

TEST(BarSeen, ACountOfTheWholeBatchIsSharedByWhatWasExpected) {
    SeasonMaker maker;
    maker.yard("Mill").builder("B1", "Mill");
    maker.batch("1", "2027-05-10", 14, 30, "B1").bar("1", 2, 10, "B1");
    maker.outcome("1", OutcomeKind::TakeCount, "2027-05-12", 28)
        .outcome("1", OutcomeKind::Graft, "2027-05-10", 9, {}, 2);
    const auto snapshot = maker.snapshot();
    const auto bars = snapshot.all<BatchBar>().of(maker.batchId("1").uuid);
    BatchInputs inputs;
    inputs.batch = snapshot.find(maker.batchId("1"));
    inputs.bars = bars;
    inputs.outcomes = snapshot.all<Outcome>().of(maker.batchId("1").uuid);
    inputs.facts = &snapshot.facts();
    const auto seen = barsSeen(inputs, Given::Sealed);
    ASSERT_EQ(seen.seen.size(), 2U);
    double accepted = 0;
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(seen.counts[i].accepted, seen.seen[i].accepted);
        EXPECT_FALSE(seen.seen[i].sealed.has_value());
        accepted += *seen.seen[i].accepted;
        EXPECT_EQ(seen.seen[i].grafted.has_value(), bars[i]->bar == 2);
    }
    EXPECT_NEAR(accepted, 28, 1e-9);
}

}  // namespace
}  // namespace tenthday::test
