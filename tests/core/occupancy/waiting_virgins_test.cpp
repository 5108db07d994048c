#include "occupancy/waiting_virgins.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "exchange/example.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

/// The batch's queens were seen to come out on this day.
const Day kOut = day("2027-05-16");
Day atAge(int days) { return kOut + Days{days}; }
std::string text(Day day) { return toText(day); }

/// A past year without a cold day; one batch, grafted on 4 May, a cell of it in N1 from 14 May.
class WaitingVirginsTest : public ::testing::Test {
protected:
    WaitingVirginsTest() {
        maker_.weather("2026-01-01", "2026-12-31", 24)
            .yard("Mill")
            .builder("Box", "Mill")
            .box("N1", "Mill", "7", "2027-04-01")
            .box("N2", "Mill", "7", "2027-04-01")
            .stock("N1/-", "2027-05-12")
            .batch("1", "2027-05-04", 14, 20, "Box")
            .place("1", "N1/-", "2027-05-14", true)
            .outcome("1", OutcomeKind::Emergence, text(kOut));
    }
    /// Recorded as days without flying.
    SeasonMaker& cold(Day from, Day until) { return maker_.weather(text(from), text(until), 10); }
    SeasonMaker& warm(Day from, Day until) { return maker_.weather(text(from), text(until), 24); }

    /// On that day, were it today.
    WaitingVirgins on(Day day) {
        auto snapshot = maker_.snapshot();
        snapshot.setToday(day);
        OutlookMemo memo;
        outlook_ = outlookOf(snapshot, memo);
        return waitingVirgins(outlook_->snapshot, outlook_->nucs, *outlook_->mating, day);
    }
    /// The virgin of N1, the only one listed.
    WaitingVirgin virgin(Day day) {
        const auto all = on(day);
        EXPECT_EQ(all.nucs.size(), 1U) << text(day);
        return all.nucs.empty() ? WaitingVirgin{} : all.nucs.front();
    }

    SeasonMaker maker_{"2027-05-20"};
    OutlookPtr outlook_;
};

TEST_F(WaitingVirginsTest, AtTwentyTwoDaysWithoutAFlyingDaySheNeverMates) {
    cold(kOut, atAge(40));
    const auto old = virgin(atAge(22));
    EXPECT_TRUE(old.outSeen);
    EXPECT_EQ(old.age, 22);
    EXPECT_EQ(text(old.lastDay), text(atAge(21)));
    EXPECT_EQ(old.flew, 0);
    EXPECT_EQ(old.idle, 16) << "from 6 to 21 days of age";
    EXPECT_EQ(*old.mated, 0);
    EXPECT_EQ(*old.still, 0);
    EXPECT_EQ(old.reason, VirginReason::TooOld);
    EXPECT_EQ(old.advice, VirginAdvice::Combine) << "no ripe cells are planned";
    EXPECT_FALSE(old.look);
}

TEST_F(WaitingVirginsTest, GivenUpSheIsRecelledWhileHerBeesCanTakeACell) {
    cold(kOut, atAge(40));
    // Her virgin counts as lost at 7 days; 21 days later the bees take no cell (common practice,
    // S89, S90): from 13 June. Cells come ten days after the graft.
    EXPECT_EQ(text(virgin(atAge(22)).needsBroodFrom), "2027-06-13");
    maker_.batch("late", "2027-06-04", 14, 20, "Box");
    EXPECT_EQ(virgin(atAge(22)).advice, VirginAdvice::Combine) << "ripe on 14 June";
    maker_.batch("soon", "2027-06-01", 14, 20, "Box");
    const auto recelled = virgin(atAge(22));
    EXPECT_EQ(recelled.advice, VirginAdvice::Recell);
    EXPECT_EQ(text(*recelled.cellDay), "2027-06-11");
    EXPECT_EQ(recelled.cellBatch, maker_.batchId("soon"));
    EXPECT_EQ(virgin(day("2027-06-12")).advice, VirginAdvice::Combine) << "those are gone";
}

TEST_F(WaitingVirginsTest, OpenBroodPutInLetsHerBeesWaitLonger) {
    cold(kOut, atAge(40));
    maker_.batch("late", "2027-06-04", 14, 20, "Box").stock("N1/-", "2027-05-30");
    const auto virgin = this->virgin(atAge(22));
    EXPECT_EQ(text(virgin.needsBroodFrom), "2027-06-29") << "open for 9 days, then 21";
    EXPECT_EQ(virgin.advice, VirginAdvice::Recell);
}

TEST_F(WaitingVirginsTest, WithoutHopeSheIsGivenUpBeforeSheIsOld) {
    cold(kOut, atAge(21));
    EXPECT_EQ(virgin(atAge(5)).advice, VirginAdvice::Wait) << "she is not even due to fly";
    const auto due = virgin(atAge(6));
    EXPECT_EQ(due.reason, VirginReason::SmallChance);
    EXPECT_EQ(due.advice, VirginAdvice::Combine);
}

TEST_F(WaitingVirginsTest, ThreeFlyingDaysAtEightToTenDaysOfAge) {
    cold(kOut, atAge(7));
    warm(atAge(8), atAge(10));
    cold(atAge(11), atAge(40));
    // 70 % need one flying day, 30 % two (S52; share from memory).
    const auto then = virgin(atAge(9));
    EXPECT_NEAR(*then.mated, 0.7, 1e-12);
    EXPECT_NEAR(*then.still, 0.3, 1e-12);
    EXPECT_EQ(then.flew, 1);
    EXPECT_EQ(then.idle, 2);
    EXPECT_EQ(then.advice, VirginAdvice::Wait);
    EXPECT_EQ(then.reason, VirginReason::LookNotDue);
    EXPECT_EQ(text(*then.look), text(atAge(14))) << "first look (S49)";
    const auto after = virgin(atAge(11));
    EXPECT_NEAR(*after.mated, 1, 1e-12);
    EXPECT_NEAR(*after.flown(), 3, 1e-12);
    // The first look is due and nobody has looked: look, whatever her age.
    const auto due = virgin(atAge(25));
    EXPECT_EQ(due.advice, VirginAdvice::Look);
    EXPECT_EQ(due.reason, VirginReason::EggsDue);
    EXPECT_EQ(text(*due.look), text(atAge(25)));
}

TEST_F(WaitingVirginsTest, AfterAColdWeekTheLookWaitsForEggs) {
    cold(kOut, atAge(16));
    // From 17 days on every possible season is warm: 70 % have eggs at 20, all at 21 days.
    const auto late = virgin(atAge(15));
    EXPECT_EQ(*late.mated, 0);
    EXPECT_NEAR(*late.still, 1, 1e-12);
    EXPECT_EQ(late.advice, VirginAdvice::Look);
    EXPECT_EQ(late.reason, VirginReason::FewFlyingDays);
    EXPECT_EQ(text(*late.look), text(atAge(21)));
    EXPECT_EQ(virgin(atAge(12)).advice, VirginAdvice::Wait) << "before the first look is due";
    EXPECT_EQ(text(*virgin(atAge(12)).look), text(atAge(21)));
    const auto unknown = virgin(atAge(19));
    EXPECT_EQ(unknown.flew, 0);
    EXPECT_EQ(unknown.unknown, 2);
    EXPECT_NEAR(*unknown.flown(), 2, 1e-12) << "by their chance";
    EXPECT_NEAR(*unknown.mated, 1, 1e-12);
}

TEST_F(WaitingVirginsTest, TheLookIsThatOfTheBatchUnlessMoreIsKnownOfTheNuc) {
    cold(kOut, atAge(16));
    const auto waits = virgin(atAge(15));
    EXPECT_EQ(text(*waits.look), text(outlook_->batches[0]->timeline.hold.lookDay));
}

TEST_F(WaitingVirginsTest, WhoIsSeenLayingOrGoneIsNotListed) {
    maker_.outcome("1", OutcomeKind::FirstEggs, "2027-05-31", {}, "N1/-");
    EXPECT_EQ(on(day("2027-05-31")).nucs.size(), 1U) << "at the start of that day";
    EXPECT_TRUE(on(day("2027-06-01")).nucs.empty());
}

TEST_F(WaitingVirginsTest, NeitherIsANucWithoutAQueenOrWithADroneLayer) {
    auto other = maker_;
    maker_.outcome("1", OutcomeKind::NoQueen, "2027-05-31", {}, "N1/-");
    EXPECT_TRUE(on(day("2027-06-01")).nucs.empty());
    maker_ = other;
    maker_.outcome("1", OutcomeKind::DroneLayer, "2027-05-31", {}, "N1/-");
    EXPECT_TRUE(on(day("2027-06-01")).nucs.empty());
}

TEST_F(WaitingVirginsTest, SeenWithoutEggsSheIsOneOfThoseThatMateLate) {
    cold(kOut, atAge(7));
    warm(atAge(8), atAge(9));
    cold(atAge(10), atAge(16));
    maker_.outcome("1", OutcomeKind::Emergence, text(atAge(11)), {}, "N1/-");
    const auto seen = virgin(atAge(12));
    EXPECT_EQ(text(seen.outLikely), text(kOut)) << "too late to be the day she came out";
    EXPECT_EQ(text(*seen.seen), text(atAge(11)));
    EXPECT_NEAR(*seen.mated, 1, 1e-12) << "she flew a second time at 9 days";
    EXPECT_EQ(text(*seen.look), text(atAge(14)));
    EXPECT_FALSE(virgin(atAge(11)).seen) << "that look is not done yet";
}

TEST_F(WaitingVirginsTest, SeenWithoutEggsAgainstTheRulesSheIsLookedAtAgain) {
    warm(kOut, atAge(30));
    maker_.outcome("1", OutcomeKind::Emergence, text(atAge(15)), {}, "N1/-");
    const auto seen = virgin(atAge(16));
    EXPECT_EQ(seen.reason, VirginReason::SeenAgainstRule);
    EXPECT_FALSE(seen.mated);
    EXPECT_EQ(seen.advice, VirginAdvice::Look);
    EXPECT_EQ(text(*seen.look), text(atAge(22))) << "a week later";
    maker_.outcome("1", OutcomeKind::Emergence, text(atAge(22)), {}, "N1/-");
    EXPECT_EQ(virgin(atAge(23)).reason, VirginReason::TooOld) << "and still no eggs";
    EXPECT_EQ(text(virgin(atAge(23)).needsBroodFrom), text(atAge(43))) << "she lived until then";
}

TEST_F(WaitingVirginsTest, SeenToComeOutInItsOwnNucItIsThatDay) {
    auto maker = SeasonMaker("2027-05-20");
    maker.yard("Mill")
        .builder("Box", "Mill")
        .box("N1", "Mill", "7", "2027-04-01")
        .stock("N1/-", "2027-05-12")
        .batch("1", "2027-05-04", 14, 20, "Box")
        .place("1", "N1/-", "2027-05-14", true);
    maker_ = maker;
    const auto spread = virgin(day("2027-05-20"));
    EXPECT_FALSE(spread.outSeen);
    EXPECT_LT(spread.outEarliest, spread.outLatest);
    const auto seenOn = text(spread.outEarliest);
    maker_.outcome("1", OutcomeKind::Emergence, seenOn, {}, "N1/-");
    const auto seen = virgin(day("2027-05-20"));
    EXPECT_TRUE(seen.outSeen);
    EXPECT_EQ(text(seen.outLikely), seenOn);
    EXPECT_EQ(seen.age, (day("2027-05-20") - seen.outLikely).count());
}

TEST_F(WaitingVirginsTest, ACellIsListedShortlyBeforeItEmerges) {
    EXPECT_TRUE(on(kOut - Days{3}).nucs.empty());
    // The batch that comes on 24 May is not out before 26 May.
    maker_.stock("N2/-", "2027-05-20")
        .batch("2", "2027-05-14", 14, 20, "Box")
        .place("2", "N2/-", "2027-05-24", true);
    const auto all = on(day("2027-05-25"));
    ASSERT_EQ(all.nucs.size(), 2U);
    EXPECT_EQ(all.nucs[0].age, 9) << "oldest first";
    EXPECT_LT(all.nucs[1].age, 0);
    EXPECT_EQ(all.nucs[1].advice, VirginAdvice::Wait);
    EXPECT_EQ(all.groups.size(), 2U);
}

TEST_F(WaitingVirginsTest, WithoutWeatherHerAgeAloneDecides) {
    auto maker = SeasonMaker("2027-05-20");
    maker.yard("Mill")
        .builder("Box", "Mill")
        .box("N1", "Mill", "7", "2027-04-01")
        .stock("N1/-", "2027-05-12")
        .batch("1", "2027-05-04", 14, 20, "Box")
        .place("1", "N1/-", "2027-05-14", true)
        .outcome("1", OutcomeKind::Emergence, text(kOut));
    maker_ = maker;
    const auto unknown = virgin(atAge(10));
    EXPECT_FALSE(unknown.mated || unknown.still || unknown.flown());
    EXPECT_EQ(unknown.advice, VirginAdvice::Wait);
    EXPECT_EQ(unknown.reason, VirginReason::WeatherUnknown);
    EXPECT_EQ(text(*unknown.look), text(outlook_->batches[0]->timeline.hold.lookDay));
    EXPECT_EQ(virgin(atAge(30)).advice, VirginAdvice::Look) << "nobody has looked";
    maker_.outcome("1", OutcomeKind::Emergence, text(atAge(22)), {}, "N1/-");
    EXPECT_EQ(virgin(atAge(23)).reason, VirginReason::TooOld);
}

TEST_F(WaitingVirginsTest, AtAMatingStationOnlyTheDaysThereCount) {
    const auto bare = maker_.snapshot();
    const auto outlookOfWay = [&](Mating way) {
        ChangeSet changes;
        const auto before = bare.find(maker_.batchId("1"));
        Batch after = *before;
        after.mating = way;
        changes.edit(before, after);
        changes.add(
            MatingStay{id<MatingStay>(800'001), 1, before->id,
                       way == Mating::Station ? std::optional(maker_.yardId("Mill")) : std::nullopt,
                       atAge(9), atAge(12)});
        OutlookMemo memo;
        return outlookOf(applied(bare, changes).value(), memo);
    };
    const auto there = outlookOfWay(Mating::Station);
    const auto all = waitingVirgins(there->snapshot, there->nucs, *there->mating, atAge(10));
    ASSERT_EQ(all.nucs.size(), 1U);
    EXPECT_EQ(all.nucs[0].idle, 3) << "at home at 6, 7 and 8 days";
    EXPECT_NEAR(*all.nucs[0].mated, 0.7, 1e-12);
    const auto inseminated = outlookOfWay(Mating::Insemination);
    EXPECT_TRUE(
        waitingVirgins(inseminated->snapshot, inseminated->nucs, *inseminated->mating, atAge(10))
            .nucs.empty())
        << "no weather is waited for";
}

TEST_F(WaitingVirginsTest, TellsTheColdRunAndWhoWaitsUntilWhen) {
    warm(kOut, atAge(3));
    cold(atAge(4), atAge(11));
    warm(atAge(12), atAge(12));
    const auto all = on(atAge(9));
    EXPECT_EQ(text(*all.lastFlying), text(atAge(3)));
    EXPECT_EQ(all.idleDays, 5);
    EXPECT_EQ(text(*all.nextFlying), text(atAge(12)));
    EXPECT_EQ(all.waiting, 1);
    EXPECT_EQ(text(*all.firstLastDay), text(atAge(21)));
    EXPECT_EQ(all.untilThen, 1);
    const auto before = on(atAge(5));
    EXPECT_EQ(before.waiting, 0) << "she cannot fly yet";
    EXPECT_FALSE(before.firstLastDay);
    EXPECT_EQ(on(atAge(13)).waiting, 0) << "most have mated";
    EXPECT_EQ(on(atAge(13)).idleDays, 0);
}

/// Every nuc of the example on every third day, its chances walked season by season.
class ExampleVirgins : public ::testing::Test {
protected:
    ExampleVirgins() {
        auto snapshot = applied(Snapshot{}, exampleContent()).value();
        snapshot.setToday(*snapshot.book().today);
        snapshot.setSeason((*snapshot.all<Season>().begin())->id);
        OutlookMemo memo;
        outlook_ = outlookOf(snapshot, memo);
    }
    /// Chances that virgins who come out on that day are mated before a day, and on it or later.
    std::pair<double, double> slowly(Day out, Day on) const {
        const auto& seasons = *outlook_->mating->seasons();
        std::pair<double, double> chances;
        for (std::size_t s = 0; s < seasons.size(); ++s)
            for (const auto& [first, share] : {std::pair{6, .3}, {7, .4}, {8, .3}})
                for (const auto& [needed, part] : {std::pair{1, .7}, {2, .3}}) {
                    int flights = 0;
                    for (int age = first; age <= 21; ++age)
                        if (seasons.flies(s, out + Days{age}) && ++flights == needed)
                            (out + Days{age} < on ? chances.first : chances.second) +=
                                share * part / static_cast<double>(seasons.size());
                }
        return chances;
    }
    OutlookPtr outlook_;
};

TEST_F(ExampleVirgins, ChancesAreThoseOfTheSlowWay) {
    int compared = 0;
    for (Day on = day("2027-05-16"); on <= day("2027-07-20"); on += Days{3}) {
        const auto all = waitingVirgins(outlook_->snapshot, outlook_->nucs, *outlook_->mating, on);
        std::set<Id<Batch>> batches;  // nucs of one batch are alike
        for (const auto& virgin : all.nucs) {
            if (!batches.insert(virgin.round->batch).second) continue;
            const auto& timeline = *virgin.round->timeline;
            const auto& emerged = timeline.clock.emerged();
            std::map<Day, double> shares;
            for (int hour = 200; hour < 400; ++hour)
                shares[dayOf(hoursAfter(timeline.graft, hour))] +=
                    emerged.by(hour + 1) - emerged.by(hour);
            double mated = 0;
            double still = 0;
            for (const auto& [out, share] : shares) {
                if (share < 1e-9) continue;
                const auto chances = slowly(out, on);
                mated += share * chances.first;
                still += share * chances.second;
            }
            ASSERT_TRUE(virgin.mated);
            EXPECT_NEAR(*virgin.mated, mated, 1e-5) << text(on) << virgin.side->box->label;
            EXPECT_NEAR(*virgin.still, still, 1e-5) << text(on) << virgin.side->box->label;
            ++compared;
        }
    }
    EXPECT_GT(compared, 20);
}

TEST_F(ExampleVirgins, GroupsAddUpToTheList) {
    for (Day on = day("2027-05-16"); on <= day("2027-07-20"); on += Days{5}) {
        const auto all = waitingVirgins(outlook_->snapshot, outlook_->nucs, *outlook_->mating, on);
        EXPECT_TRUE(std::is_sorted(all.nucs.begin(), all.nucs.end(),
                                   [](auto& a, auto& b) { return a.age > b.age; }));
        std::size_t nucs = 0;
        for (const auto& group : all.groups) {
            int here = 0;
            double mated = 0;
            for (const auto& virgin : all.nucs)
                if (virgin.round->batch == group.batch && virgin.yard == group.yard)
                    ++here, mated += *virgin.mated;
            EXPECT_EQ(group.nucs, here);
            EXPECT_NEAR(*group.mated, mated / here, 1e-12);
            int advised = 0;
            for (const auto count : group.advised) advised += count;
            EXPECT_EQ(advised, here);
            nucs += static_cast<std::size_t>(group.nucs);
        }
        EXPECT_EQ(nucs, all.nucs.size());
    }
}

}  // namespace
}  // namespace tenthday
