// A season looked back on: only what is recorded compares, and with the plan of the same batches.
#include "outlook/year_review.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::SeasonMaker;

SeasonMaker twoBatches() {
    SeasonMaker maker("2027-08-01");
    maker.yard("Mill").box("Q1", "Mill", "3+3", "2027-04-01").builder("Big", "Mill");
    maker.stock("Q1/A", "2027-05-18").stock("Q1/B", "2027-05-18");
    maker.batch("1", "2027-05-10", 14, 30, "Big").batch("2", "2027-06-10", 14, 30, "Big");
    return maker;
}

TEST(YearReview, ComparesABatchWithItsOwnPlanAndGuessesNothing) {
    auto maker = twoBatches();
    maker.outcome("1", OutcomeKind::Graft, "2027-05-10", 28);
    maker.outcome("1", OutcomeKind::TakeCount, "2027-05-11", 14);
    const auto review = yearReview(*maker.outlook());
    EXPECT_EQ(review.batches, 2);
    const auto& grafted = review.at(ReviewStage::Grafted);
    EXPECT_EQ(grafted.batches, 1);
    EXPECT_EQ(grafted.missing, 1) << "the second one is past, too";
    EXPECT_EQ(grafted.happened, 28);
    EXPECT_DOUBLE_EQ(grafted.planned, 30);
    EXPECT_DOUBLE_EQ(review.takeSeen, 0.5);
    EXPECT_GT(review.takePlanned, 0.5) << "by the fact `accepted`";
    EXPECT_EQ(review.at(ReviewStage::Sealed).batches, 0);
    EXPECT_EQ(review.at(ReviewStage::Sealed).missing, 2);
}

TEST(YearReview, BarsAddUpAndALaterCountOfABarHolds) {
    auto maker = twoBatches();
    maker.bar("1", 2, 10, "Big");
    maker.outcome("1", OutcomeKind::TakeCount, "2027-05-11", 20, {}, 1);
    maker.outcome("1", OutcomeKind::TakeCount, "2027-05-12", 18, {}, 1);
    maker.outcome("1", OutcomeKind::TakeCount, "2027-05-12", 6, {}, 2);
    EXPECT_EQ(yearReview(*maker.outlook()).at(ReviewStage::Started).happened, 24);
}

TEST(YearReview, ANucCountsOnceHoweverOftenItsQueenWasSeen) {
    auto maker = twoBatches();
    maker.place("1", "Q1/A", "2027-05-20", true).place("1", "Q1/B", "2027-05-20", true);
    maker.outcome("1", OutcomeKind::FirstEggs, "2027-06-07", {}, "Q1/A");
    maker.outcome("1", OutcomeKind::SealedBrood, "2027-06-15", {}, "Q1/A");
    maker.outcome("1", OutcomeKind::Catch, "2027-06-16", {}, "Q1/A");
    maker.outcome("1", OutcomeKind::NoQueen, "2027-06-07", {}, "Q1/B");
    const auto review = yearReview(*maker.outlook());
    EXPECT_EQ(review.at(ReviewStage::Laying).happened, 1);
    EXPECT_EQ(review.at(ReviewStage::Caught).happened, 1);
    EXPECT_EQ(review.noQueen, 1);
    EXPECT_EQ(review.droneLayer, 0);
}

TEST(YearReview, CountsFlyingDaysAsRecorded) {
    auto maker = twoBatches();
    maker.weather("2027-05-01", "2027-05-10", 25).weather("2027-05-11", "2027-05-13", 5);
    const auto review = yearReview(*maker.outlook());
    EXPECT_EQ(review.flyingDays, 10);
    EXPECT_EQ(review.groundedDays, 3);
}

}  // namespace
}  // namespace tenthday
