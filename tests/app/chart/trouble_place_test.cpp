#include "chart/trouble_place.h"

#include <gtest/gtest.h>

#include "support/ids.h"

namespace tenthday {
namespace {

Finding about(FindingKind kind, Id<Batch> batch) {
    Finding finding;
    finding.kind = kind;
    finding.subject = batch;
    return finding;
}

TEST(TroublePlace, OfABatchIsInItsBuilderButAboutNucsInTheYards) {
    const auto batch = test::id<Batch>(7);
    const auto late = placeOf(about(FindingKind::QueenOutBeforeMove, batch));
    EXPECT_EQ(late.hit, Hit::Load);
    EXPECT_EQ(late.lane(), LaneName::Builders);
    for (const auto kind :
         {FindingKind::YardFull, FindingKind::NucNotFree, FindingKind::CatchHoldsNucs}) {
        const auto place = placeOf(about(kind, batch));
        EXPECT_EQ(place.hit, Hit::YardDay);
        EXPECT_EQ(place.lane(), std::nullopt) << "yards do not fold: nothing is unfolded";
        EXPECT_TRUE(place.is({.hit = Hit::YardDay, .batch = batch, .index = 3}));
        EXPECT_FALSE(place.is({.hit = Hit::YardDay, .batch = test::id<Batch>(8), .index = 3}));
    }
}

}  // namespace
}  // namespace tenthday
