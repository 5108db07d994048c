// What the weather of past years does to a batch's dates, states and counts.
#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// A batch grafted on 11 May 2027 at noon: queens out about 23 May, due to fly from 29 May on.
SeasonMaker season() {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("Box", "Mill").box("N1", "Mill", "7", "2027-04-01");
    maker.stock("N1/-", "2027-05-10");
    return maker.batch("1", "2027-05-11", 12, 20, "Box");
}

/// Two past years, fine but for a cold spell of one of them.
SeasonMaker withColdSpell(std::string_view from, std::string_view until) {
    auto maker = season();
    maker.weather("2025-01-01", "2025-12-31", 22);
    maker.weather("2026-01-01", toText(day(from) - Days{1}), 22).weather(from, until, 12);
    return maker.weather(toText(day(until) + Days{1}), "2026-12-31", 22);
}

Day dayOfEvent(const BatchTimeline& timeline, Event event) {
    return dayOf(timeline.find(event)->likely);
}

TEST(Weather, FineYearsGiveFirstEggsSoonAndLoseNobody) {
    auto maker = season();
    const auto without = maker.outlook();
    const auto with = maker.weather("2026-01-01", "2026-12-31", 22).outlook();
    const auto& plain = without->batches[0]->timeline;
    const auto& fine = with->batches[0]->timeline;
    EXPECT_FALSE(plain.weather);
    EXPECT_TRUE(fine.weather);
    EXPECT_EQ(fine.neverMates, 0);
    EXPECT_EQ(fine.counts.laying, plain.counts.laying);
    // Three in four are out on 23 May, the rest on the 24th. At the age of 10 d 58 % have eggs, at
    // 9 d 21 %: by 2 June a little less than half, by 3 June more.
    EXPECT_EQ(dayOfEvent(fine, Event::FirstEggs), day("2027-06-03"));
}

TEST(Weather, AColdSpellMovesTheLookTheCatchAndTheNuc) {
    const auto fine = withColdSpell("2026-01-01", "2026-01-05").outlook();
    const auto cold = withColdSpell("2026-05-25", "2026-06-08").outlook();
    const auto& before = fine->batches[0]->timeline;
    const auto& after = cold->batches[0]->timeline;
    EXPECT_EQ(before.hold.lookDay, day("2027-06-06")) << "14 days after emergence";
    // In the cold year flying begins on 9 June, by its shifts up to a week sooner or later: of four
    // queens in five the eggs are there by the 11th.
    EXPECT_EQ(after.hold.lookDay, day("2027-06-11"));
    EXPECT_GT(after.hold.catchDay, before.hold.catchDay);
    EXPECT_EQ(after.hold.catchDay, day("2027-06-20")) << "nine days after the level's first eggs";
    EXPECT_GT(after.hold.nucDays(), before.hold.nucDays());
}

TEST(Weather, ASpellThatOutlastsTheMatingAgeLosesQueens) {
    const auto outlook = withColdSpell("2026-05-01", "2026-07-10").outlook();
    const auto& timeline = outlook->batches[0]->timeline;
    EXPECT_NEAR(timeline.neverMates, 0.5, 1e-6) << "one of two years, at every shift";
    const auto plain = season().outlook();
    EXPECT_NEAR(timeline.counts.laying, plain->batches[0]->timeline.counts.laying / 2, 1e-4);
    EXPECT_NEAR(timeline.hold.layingShare, plain->batches[0]->timeline.hold.layingShare / 2, 1e-6);
}

TEST(Weather, TheLevelIsASetting) {
    auto snapshot = withColdSpell("2026-05-25", "2026-06-08").snapshot();
    ChangeSet changes;
    changes.add(FactOverride{test::id<FactOverride>(90'000), 1, "likely_level", 500});
    const auto set = applied(snapshot, changes);
    ASSERT_TRUE(set);
    OutlookMemo memo;
    const auto half = outlookOf(set.value(), memo);
    EXPECT_EQ(half->batches[0]->timeline.hold.lookDay, day("2027-06-06"));
}

TEST(Weather, WhatIsRecordedOrForecastTakesThePlaceOfWhatIsPossible) {
    auto maker = withColdSpell("2026-05-25", "2026-06-08");
    maker.weather("2027-05-25", "2027-06-15", 23);
    const auto outlook = maker.outlook();
    EXPECT_EQ(outlook->batches[0]->timeline.hold.lookDay, day("2027-06-06"));
}

TEST(Weather, WhyNamesIt) {
    const auto maker = withColdSpell("2026-05-25", "2026-06-08");
    const auto reasons = why(maker.snapshot(), maker.batchId("1"), Event::FirstEggs);
    ASSERT_FALSE(reasons.empty());
    EXPECT_EQ(reasons.front().kind, Reason::Kind::Weather);
    EXPECT_EQ(reasons.front().from, Event::DueToFly);
}

/// The same mean maximum and so many rain days in every month.
Snapshot withClimate(Snapshot snapshot, int tmaxC, int rainDays) {
    ChangeSet changes;
    for (std::int32_t month = 1; month <= 12; ++month)
        changes.add(ClimateMonth{test::id<ClimateMonth>(static_cast<std::uint64_t>(month)), 1,
                                 month, Tenths{tmaxC * 10}, Tenths{rainDays * 10}});
    return applied(snapshot, changes).value();
}

TEST(Weather, AClimateStandsInWhereNoPastYearIsRecorded) {
    OutlookMemo memo;
    const auto bare = season().snapshot();
    const auto hot = outlookOf(withClimate(bare, 35, 0), memo);
    const auto cool = outlookOf(withClimate(bare, 17, 12), memo);
    const auto& fine = hot->batches[0]->timeline;
    const auto& poor = cool->batches[0]->timeline;
    EXPECT_TRUE(fine.weather);
    EXPECT_EQ(dayOfEvent(fine, Event::FirstEggs), day("2027-06-03")) << "as in fine years";
    EXPECT_LT(fine.neverMates, 1e-4);
    EXPECT_GT(poor.neverMates, 0.01);
    EXPECT_GT(poor.hold.lookDay, fine.hold.lookDay);
    EXPECT_FALSE(outlookOf(bare, memo)->batches[0]->timeline.weather) << "the memo notices";
    // A past year counts before it.
    const auto years = season().weather("2026-01-01", "2026-12-31", 22).snapshot();
    EXPECT_EQ(outlookOf(withClimate(years, 5, 20), memo)->batches[0]->timeline.neverMates, 0);
}

TEST(Weather, RecordedDaysAreCertainInAClimateToo) {
    OutlookMemo memo;
    auto maker = season();
    maker.weather("2027-05-20", "2027-06-30", 12);  // no flying day at all
    const auto outlook = outlookOf(withClimate(maker.snapshot(), 35, 0), memo);
    EXPECT_EQ(outlook->batches[0]->timeline.neverMates, 1);
    EXPECT_EQ(outlook->mating->knownToFly(day("2027-06-01")), false);
    EXPECT_EQ(outlook->mating->knownToFly(day("2027-07-01")), std::nullopt);
    EXPECT_GT(outlook->mating->chanceToFly(day("2027-07-10")).value(), 0.9);
}

TEST(Weather, ThisYearAloneCountsWhereItsDaysTellAll) {
    // The last virgins are out on 25 May, fly from 2 June at the latest, some on 3 June again.
    const auto fine = [](std::string_view until) {
        return season().weather("2027-05-27", until, 22).outlook();
    };
    const auto enough = fine("2027-06-04");
    EXPECT_TRUE(enough->batches[0]->timeline.weather);
    EXPECT_EQ(enough->batches[0]->timeline.neverMates, 0);
    const auto years = season().weather("2026-01-01", "2026-12-31", 22).outlook();
    EXPECT_EQ(enough->batches[0]->timeline.find(Event::FirstEggs)->likely,
              years->batches[0]->timeline.find(Event::FirstEggs)->likely);
    const auto short_ = fine("2027-06-01");
    EXPECT_FALSE(short_->batches[0]->timeline.weather) << "they may wait for days not known";
    EXPECT_EQ(short_->mating->knownToFly(day("2027-06-01")), true);
    EXPECT_EQ(short_->mating->chanceToFly(day("2027-06-02")), std::nullopt);
    // Cold days first: they wait, by the record alone.
    const auto late = season()
                          .weather("2027-05-27", "2027-06-08", 12)
                          .weather("2027-06-09", "2027-06-11", 22)
                          .outlook();
    EXPECT_TRUE(late->batches[0]->timeline.weather);
    EXPECT_EQ(dayOfEvent(late->batches[0]->timeline, Event::FirstEggs), day("2027-06-12"));
}

TEST(Weather, ThisYearAloneSetsNoLimitOfTheSeason) {
    const auto outlook = season().weather("2027-05-27", "2027-06-30", 22).outlook();
    for (const auto& limit : outlook->limits.all) EXPECT_FALSE(limit.day);
}

TEST(Weather, WhyNamesTheClimate) {
    const auto maker = season();
    const auto reasons =
        why(withClimate(maker.snapshot(), 25, 5), maker.batchId("1"), Event::FirstEggs);
    ASSERT_FALSE(reasons.empty());
    EXPECT_EQ(reasons[0].kind, Reason::Kind::Weather);
    const auto& also = reasons[0].also;
    EXPECT_NE(std::find(also.begin(), also.end(), Fact::FlyPersistence), also.end());
}

}  // namespace
}  // namespace tenthday
