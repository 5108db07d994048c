// Queens that mate at a station, or are inseminated.
#include <gtest/gtest.h>

#include "records/verbs.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

/// A batch grafted on 11 May 2027 at noon: queens out about 23 May, due to fly from 29 May on.
class MatingWays : public ::testing::Test {
protected:
    MatingWays() {
        maker_.yard("Mill")
            .yard("Isle")
            .builder("Box", "Mill")
            .box("N1", "Mill", "7", "2027-04-01");
        maker_.stock("N1/-", "2027-05-10").batch("1", "2027-05-11", 12, 20, "Box");
    }
    struct Stay {
        const char* from;
        const char* until;
    };
    OutlookPtr outlook(Mating mating, std::initializer_list<Stay> stays) {
        const auto bare = maker_.snapshot();
        ChangeSet changes;
        const auto before = bare.find(maker_.batchId("1"));
        Batch after = *before;
        after.mating = mating;
        changes.edit(before, after);
        std::uint64_t next = 800'000;
        for (const auto& stay : stays)
            changes.add(MatingStay{
                id<MatingStay>(++next), 1, before->id,
                mating == Mating::Station ? std::optional(maker_.yardId("Isle")) : std::nullopt,
                day(stay.from), day(stay.until)});
        snapshot_ = applied(bare, changes).value();
        return outlookOf(snapshot_, memo_);
    }
    static const BatchTimeline& line(const OutlookPtr& outlook) {
        return outlook->batches[0]->timeline;
    }
    static Day firstEggs(const OutlookPtr& outlook) {
        return dayOf(line(outlook).find(Event::FirstEggs)->likely);
    }
    static bool tellsNoDays(const OutlookPtr& outlook) {
        return std::any_of(outlook->findings.begin(), outlook->findings.end(),
                           [](const auto& f) { return f.kind == FindingKind::NoMatingDays; });
    }

    SeasonMaker maker_{"2027-05-01"};
    Snapshot snapshot_;
    OutlookMemo memo_;
};

TEST_F(MatingWays, AtAStationQueensFlyOnTheDaysThereOnly) {
    // All are due by 31 May: they fly on 2 June, three in ten again on the 3rd; eggs 3 days later.
    const auto there = outlook(Mating::Station, {{"2027-06-02", "2027-06-09"}});
    EXPECT_EQ(firstEggs(there), day("2027-06-05"));
    EXPECT_EQ(line(there).neverMates, 0);
    EXPECT_FALSE(tellsNoDays(there));
    const auto eggs = line(there).find(Event::FirstEggs);
    EXPECT_EQ(dayOf(eggs->earliest), day("2027-06-05"));
    EXPECT_EQ(dayOf(eggs->latest), day("2027-06-06"));
}

TEST_F(MatingWays, AStayThatEndsTooSoonLosesQueens) {
    EXPECT_EQ(line(outlook(Mating::Station, {{"2027-05-20", "2027-05-25"}})).neverMates, 1);
    // One day there: those who need a second find none.
    EXPECT_NEAR(line(outlook(Mating::Station, {{"2027-06-02", "2027-06-02"}})).neverMates, 0.3,
                1e-9);
    // A second stay serves them.
    EXPECT_NEAR(
        line(outlook(Mating::Station, {{"2027-06-02", "2027-06-02"}, {"2027-06-05", "2027-06-07"}}))
            .neverMates,
        0, 1e-9);
}

TEST_F(MatingWays, TheWeatherAtTheStationCounts) {
    maker_.weather("2026-01-01", "2026-12-31", 22).weather("2027-06-02", "2027-06-05", 12);
    const auto cold = outlook(Mating::Station, {{"2027-06-02", "2027-06-09"}});
    EXPECT_EQ(firstEggs(cold), day("2027-06-09")) << "flights from the 6th on";
    EXPECT_LT(firstEggs(outlook(Mating::Open, {})), day("2027-06-09")) << "at home from 29 May on";
    const auto reasons = why(snapshot_, maker_.batchId("1"), Event::FirstEggs);
    EXPECT_EQ(reasons.at(0).kind, Reason::Kind::Weather);
}

TEST_F(MatingWays, WhyNamesTheStationAndTheInsemination) {
    const auto kind = [&](Mating mating, std::initializer_list<Stay> stays) {
        (void)outlook(mating, stays);
        return why(snapshot_, maker_.batchId("1"), Event::FirstEggs).at(0).kind;
    };
    EXPECT_EQ(kind(Mating::Station, {{"2027-06-02", "2027-06-09"}}), Reason::Kind::Station);
    EXPECT_EQ(kind(Mating::Station, {}), Reason::Kind::Rule);
    EXPECT_EQ(kind(Mating::Insemination, {}), Reason::Kind::Inseminated);
}

TEST_F(MatingWays, AStationWithoutDaysIsToldAndReckonedAsOpen) {
    const auto open = outlook(Mating::Open, {});
    const auto station = outlook(Mating::Station, {});
    EXPECT_TRUE(tellsNoDays(station));
    EXPECT_FALSE(tellsNoDays(open));
    EXPECT_EQ(firstEggs(station), firstEggs(open));
}

TEST_F(MatingWays, InseminatedQueensLayAfterTheirDayWhateverTheWeather) {
    maker_.weather("2026-01-01", "2026-12-31", 5);  // no flying day in the year
    const auto given = outlook(Mating::Insemination, {{"2027-05-31", "2027-06-01"}});
    EXPECT_EQ(firstEggs(given), day("2027-06-04"));
    EXPECT_EQ(line(given).neverMates, 0);
    // Without a day: 8 days of age and 3 more, from 23 May about 18:00.
    EXPECT_EQ(firstEggs(outlook(Mating::Insemination, {})), day("2027-06-03"));
    EXPECT_EQ(line(outlook(Mating::Open, {})).neverMates, 1);
}

TEST_F(MatingWays, StaysMoveWithTheBatchUnlessTheyArePast) {
    (void)outlook(Mating::Station, {{"2027-06-02", "2027-06-09"}});
    auto snapshot = snapshot_;
    const auto moved = [&] {
        const auto changes = moveBatch(snapshot, maker_.batchId("1"), day("2027-05-18"));
        const auto after = applied(snapshot, changes.value()).value();
        return (*after.all<MatingStay>().begin())->from;
    };
    EXPECT_EQ(moved(), day("2027-06-09"));
    snapshot.setToday(day("2027-06-10"));
    EXPECT_EQ(moved(), day("2027-06-02"));
}

TEST_F(MatingWays, DaysThatCannotServeAreTold) {
    for (const auto& stay : {Stay{"2027-05-12", "2027-05-18"}, Stay{"2027-06-20", "2027-06-30"},
                             Stay{"2026-06-02", "2026-06-09"}, Stay{"2028-06-02", "2028-06-09"}}) {
        const auto told = outlook(Mating::Station, {stay});
        EXPECT_TRUE(tellsNoDays(told)) << stay.from;
    }
    EXPECT_FALSE(tellsNoDays(outlook(Mating::Station, {{"2027-06-10", "2027-06-12"}})));
    const auto early = outlook(Mating::Insemination, {{"2027-05-15", "2027-05-15"}});
    EXPECT_TRUE(tellsNoDays(early));
    EXPECT_EQ(firstEggs(early), firstEggs(outlook(Mating::Insemination, {}))) << "no queen yet";
    EXPECT_FALSE(tellsNoDays(outlook(Mating::Insemination, {{"2027-05-31", "2027-06-01"}})));
}

TEST_F(MatingWays, TheMemoNoticesAChangedStay) {
    const auto late = outlook(Mating::Station, {{"2027-06-06", "2027-06-09"}});
    const auto early = outlook(Mating::Station, {{"2027-06-02", "2027-06-09"}});
    EXPECT_LT(firstEggs(early), firstEggs(late));
    OutlookMemo fresh;
    EXPECT_EQ(test::describe(*early), test::describe(*outlookOf(snapshot_, fresh)));
}

}  // namespace
}  // namespace tenthday
