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

}  // namespace
}  // namespace tenthday
