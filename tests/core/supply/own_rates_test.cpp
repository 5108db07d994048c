/// Rates of losses from a season's own outcomes.
#include "supply/own_rates.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "records/order_verbs.h"
#include "records/verbs.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Batches of 40 grafts with a take count each, grafted a week apart.
SeasonMaker counted(const std::vector<int>& takes) {
    SeasonMaker maker("2027-08-01");
    maker.yard("Mill").builder("B1", "Mill");
    for (std::size_t i = 0; i < takes.size(); ++i) {
        const auto label = std::to_string(i + 1);
        const Day graft = day("2027-05-03") + Days{7 * static_cast<int>(i)};
        maker.batch(label, toText(graft), 14, 40, "B1")
            .outcome(label, OutcomeKind::Graft, toText(graft), 40)
            .outcome(label, OutcomeKind::TakeCount, toText(graft + Days{2}), takes[i]);
    }
    return maker;
}
OwnRates ratesOf(const Snapshot& snapshot) { return ownRatesOf(*freshOutlook(snapshot)); }
StageCount sumOf(const OwnRates& rates, LossStage stage) { return rates.fits[stage].record; }

TEST(OwnOutcomes, OfAcceptanceAreGraftsAndTakeCounts) {
    const auto rates = ratesOf(counted({20, 24, 28}).snapshot());
    const auto& batches = rates.outcomes[LossStage::Accepted];
    ASSERT_EQ(batches.size(), 3U);
    EXPECT_EQ(batches[1].label, "2");
    EXPECT_EQ(batches[1].outcome.count, (StageCount{40, 24}));
    EXPECT_EQ(sumOf(rates, LossStage::Accepted), (StageCount{120, 72}));
    EXPECT_TRUE(rates.outcomes[LossStage::Sealed].empty());
}

TEST(OwnOutcomes, ATakeCountWithoutAGraftRecordedSaysNothing) {
    SeasonMaker maker("2027-08-01");  // started cells bought in, with the count in a take count
    maker.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-03", 14, 30, "B1");
    maker.outcome("1", OutcomeKind::TakeCount, "2027-05-05", 30)
        .outcome("1", OutcomeKind::Sealed, "2027-05-08", 27);
    const auto rates = ratesOf(maker.snapshot());
    EXPECT_TRUE(rates.outcomes[LossStage::Accepted].empty());
    EXPECT_EQ(sumOf(rates, LossStage::Sealed), (StageCount{30, 27}));
}

TEST(OwnOutcomes, ABarInADearthSaysNothingOfTheUsualRate) {
    auto maker = counted({20, 24, 28});
    const auto snapshot = with(maker.snapshot(), YardNote{id<YardNote>(1),
                                                          1,
                                                          maker.yardId("Mill"),
                                                          YardNoteKind::Dearth,
                                                          day("2027-05-08"),
                                                          day("2027-05-12"),
                                                          {}});
    EXPECT_EQ(sumOf(ratesOf(snapshot), LossStage::Accepted), (StageCount{80, 48}));
}

TEST(OwnOutcomes, AnOddBatchIsNamedWithItsReasonAndDoesNotCount) {
    auto maker = counted({20, 3, 28});
    const auto rates = ratesOf(with(
        maker.snapshot(), LeftOut{id<LeftOut>(1), 1, maker.batchId("2"), "builder had a queen"}));
    EXPECT_EQ(rates.outcomes[LossStage::Accepted][1].outcome.leftOut, "builder had a queen");
    const auto& fit = rates.fits[LossStage::Accepted];
    EXPECT_EQ(fit.batches, 2);
    EXPECT_EQ(fit.leftOut, 1);
    EXPECT_EQ(fit.record, (StageCount{80, 48}));
}

/// A batch in ten nucs, its queens out on about 22 May; what is seen is still to be told.
SeasonMaker tenNucs() {
    SeasonMaker maker("2027-08-01");
    maker.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 12, "B1");
    for (int i = 1; i <= 10; ++i) {
        const auto box = std::to_string(i);
        maker.box(box, "Mill", "7", "2027-04-01")
            .stock(box + "/-", "2027-05-15")
            .place("1", box + "/-", "2027-05-20", true);
    }
    return maker;
}

TEST(OwnOutcomes, OfEmergenceAreNucsLookedAtBeforeTheFirstFlights) {
    auto maker = tenNucs();
    for (const std::string box : {"1", "2", "3", "4"})
        maker.outcome("1", OutcomeKind::Emergence, "2027-05-24", {}, box + "/-");
    maker.outcome("1", OutcomeKind::NoQueen, "2027-05-24", {}, "5/-");
    maker.outcome("1", OutcomeKind::FirstEggs, "2027-06-05", {}, "6/-");  // nobody looked before
    EXPECT_EQ(sumOf(ratesOf(maker.snapshot()), LossStage::Emerged), (StageCount{5, 4}));
}

TEST(OwnOutcomes, OfMatingAreVirginsSeenAndThoseReckoned) {
    auto maker = tenNucs();
    for (const std::string box : {"1", "2", "3"})
        maker.outcome("1", OutcomeKind::FirstEggs, "2027-06-05", {}, box + "/-");
    maker.outcome("1", OutcomeKind::Emergence, "2027-05-24", {}, "4/-")
        .outcome("1", OutcomeKind::NoQueen, "2027-06-05", {}, "4/-");
    for (const std::string box : {"5", "6", "7", "8"})
        maker.outcome("1", OutcomeKind::NoQueen, "2027-06-05", {}, box + "/-");
    maker.outcome("1", OutcomeKind::Emergence, "2027-05-24", {}, "9/-");  // still waited for
    maker.outcome("1", OutcomeKind::DroneLayer, "2027-06-05", {}, "10/-");
    // Of the four never seen, .88 * .2 / (1 - .88 * .8) = .595 had a virgin: two.
    EXPECT_EQ(sumOf(ratesOf(maker.snapshot()), LossStage::Mated), (StageCount{3 + 1 + 1 + 2, 3}));
}

TEST(OwnOutcomes, AVirginThatMetNoFlyingWeatherSaysNothingOfMating) {
    auto maker = tenNucs();
    maker.outcome("1", OutcomeKind::Emergence, "2027-05-24", {}, "1/-")
        .outcome("1", OutcomeKind::NoQueen, "2027-06-16", {}, "1/-");
    EXPECT_EQ(sumOf(ratesOf(maker.snapshot()), LossStage::Mated), (StageCount{1, 0}));
    maker.weather("2027-05-20", "2027-07-01", 9);
    EXPECT_EQ(sumOf(ratesOf(maker.snapshot()), LossStage::Mated), (StageCount{0, 0}));
}

TEST(OwnOutcomes, OfJudgingAreQueensThatWaitedForTheirBrood) {
    auto maker = tenNucs();
    for (const std::string box : {"1", "2", "3", "4"})
        maker.outcome("1", OutcomeKind::FirstEggs, "2027-06-05", {}, box + "/-");
    maker.outcome("1", OutcomeKind::Catch, "2027-06-15", {}, "1/-")
        .outcome("1", OutcomeKind::JudgedGood, "2027-06-15", {}, "2/-")
        .outcome("1", OutcomeKind::DroneLayer, "2027-06-15", {}, "3/-");
    const auto rates = ratesOf(maker.snapshot());
    EXPECT_EQ(sumOf(rates, LossStage::JudgedGood), (StageCount{3, 2}));
    EXPECT_EQ(sumOf(rates, LossStage::Mated), (StageCount{4, 4}));
}

TEST(OwnRates, AreInForceWhereThreeBatchesSpeak) {
    const auto two = counted({12, 14}).snapshot();
    EXPECT_FALSE(isOwnRateInForce(two, ratesOf(two), LossStage::Accepted));
    EXPECT_EQ(ratesInForce(two, ratesOf(two)), chainRates(two.facts()));
    const auto three = counted({12, 14, 16}).snapshot();
    const auto rates = ratesOf(three);
    const auto chain = ratesInForce(three, rates);
    EXPECT_TRUE(isOwnRateInForce(three, rates, LossStage::Accepted));
    EXPECT_LT(chain[LossStage::Accepted].mean, .65);
    EXPECT_GT(chain[LossStage::Accepted].mean, .35);
    EXPECT_EQ(chain[LossStage::Mated], chainRates(three.facts())[LossStage::Mated]);
    for (const auto stage : kAllLossStages) {
        const auto quick = ratesInForce(three, rates.outcomes)[stage];
        EXPECT_NEAR(quick.mean, chain[stage].mean, .002);
        EXPECT_NEAR(quick.sd, chain[stage].sd, .002);
    }
}

/// Batches of earlier seasons speak like those of this one, in front of them; an odd one is left
/// out with its reason, and one that is read with this season counts once, as it is now.
TEST(OwnRates, LearnFromEarlierSeasonsToo) {
    auto snapshot = counted({12, 14}).snapshot();
    auto earlier = std::make_shared<EarlierOutcomes>();
    const auto before = [&](std::uint64_t n, int started) {
        EarlierOutcome outcome;
        outcome.batch = id<Batch>(n);
        outcome.label = "26-" + std::to_string(n);
        outcome.day = day("2026-05-03");
        outcome.counts[LossStage::Accepted] = {40, started};
        return outcome;
    };
    earlier->batches = {before(901, 16), before(902, 38)};
    auto again = before(903, 40);
    again.batch = findByLabel<Batch>(snapshot, "1")->id;
    earlier->batches.push_back(again);
    snapshot.setEarlier(earlier);
    const auto rates = ratesOf(snapshot);
    const auto& batches = rates.outcomes[LossStage::Accepted];
    ASSERT_EQ(batches.size(), 4U);
    EXPECT_EQ(batches[0].label, "26-901");
    EXPECT_EQ(batches[0].day, day("2026-05-03"));
    EXPECT_EQ(batches[2].label, "1");
    EXPECT_EQ(sumOf(rates, LossStage::Accepted), (StageCount{160, 80}));
    EXPECT_TRUE(isOwnRateInForce(snapshot, rates, LossStage::Accepted));
    EXPECT_NE(ratesInForce(snapshot, rates)[LossStage::Accepted],
              ratesInForce(counted({12, 14}).snapshot(),
                           ratesOf(counted({12, 14}).snapshot()))[LossStage::Accepted]);

    const auto odd = leaveOut(snapshot, id<Batch>(902), "Fed by mistake.", id<LeftOut>(1));
    ASSERT_TRUE(odd.ok()) << odd.error().text;
    const auto left = applied(snapshot, odd.value());
    ASSERT_TRUE(left.ok()) << left.error().text;
    const auto without = ratesOf(left.value());
    EXPECT_EQ(sumOf(without, LossStage::Accepted), (StageCount{120, 42}));
    EXPECT_EQ(without.fits[LossStage::Accepted].leftOut, 1);
    EXPECT_EQ(without.outcomes[LossStage::Accepted][1].outcome.leftOut, "Fed by mistake.");
    const auto back = takeIn(left.value(), id<Batch>(902));
    EXPECT_TRUE(applied(left.value(), back.value()).value().sameContent(snapshot));
}

TEST(OwnRates, YieldToAFactSetByHand) {
    const auto three = counted({12, 14, 16}).snapshot();
    const auto set = setFact(three, Fact::Accepted, .8, id<FactOverride>(1));
    const auto snapshot = applied(three, set.value()).value();
    EXPECT_FALSE(isOwnRateInForce(snapshot, ratesOf(snapshot), LossStage::Accepted));
    EXPECT_EQ(ratesInForce(snapshot, ratesOf(snapshot))[LossStage::Accepted].mean, .8);
}

TEST(OwnRates, ChangeTheChancesOfOrdersAndNotTheCounts) {
    const auto chanceWith = [](const std::vector<int>& takes) {
        auto maker = counted(takes);
        maker.batch("9", "2027-08-02", 14, 40, "B1");
        auto snapshot = maker.snapshot();
        snapshot = with(snapshot, LeftOut{id<LeftOut>(9), 1, maker.batchId("9"), "none"});
        snapshot.setToday(day("2027-08-01"));
        const auto outlook = freshOutlook(snapshot);
        EXPECT_NEAR(outlook->batches.back()->timeline.counts.accepted, 30, 1e-9);
        auto supply = supplyOf(*outlook);
        const Day end = day("2027-10-20");
        return supply.queensBy(end).mean() - supply.queensBy(day("2027-09-01")).mean();
    };
    EXPECT_LT(chanceWith({12, 14, 16}), chanceWith({30, 30, 30}) * .75);
}

}  // namespace
}  // namespace tenthday::test
