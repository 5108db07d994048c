#include "occupancy/drone_needs.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

/// So many nucs at Heath, filled by two batches grafted on 29 and 30 May 2027.
class DroneNeeds : public ::testing::Test {
protected:
    OutlookPtr outlook(int nucs) {
        maker_.yard("Heath").yard("Home", 2).builder("Box", "Home").builder("Other", "Home");
        for (int i = 1; i <= nucs; ++i) {
            const auto box = "N" + std::to_string(i);
            maker_.box(box, "Heath", "7", "2027-04-01").stock(box + "/-", "2027-06-02");
        }
        maker_.batch("1", "2027-05-29", 12, nucs, "Box")
            .batch("2", "2027-05-30", 12, nucs, "Other");
        snapshot_ = maker_.snapshot();
        return outlookOf(snapshot_, memo_);
    }
    OutlookPtr see(DroneStage stage, const char* on, std::optional<int> colonies) {
        ChangeSet changes;
        changes.add(DroneSighting{
            id<DroneSighting>(++next_), 1, maker_.yardId("Heath"), day(on), stage, colonies, {}});
        snapshot_ = applied(snapshot_, changes).value();
        return outlookOf(snapshot_, memo_);
    }

    SeasonMaker maker_{"2027-03-01"};
    Snapshot snapshot_;
    OutlookMemo memo_;
    std::uint64_t next_ = 820'000;
};

/// The same by hand: over all batches, day by day, the queens that are due to fly.
std::pair<Day, double> peakByHand(const Outlook& outlook) {
    std::pair<Day, double> best{};
    for (Day on = outlook.season.first; on <= outlook.season.last; on += Days{1}) {
        double virgins = 0;
        for (const auto& side : outlook.nucs.sides)
            for (const auto& round : side.rounds)
                if (round.transferDay <= on && on <= round.catchDay)
                    virgins += static_cast<double>(
                        round.sharesOn(on)[static_cast<std::size_t>(NucState::DueToFly)]);
        if (virgins > best.second + 1e-9) best = {on, virgins};
    }
    return best;
}

// S16: at least 8 strong colonies, or one for 25 queens.
TEST_F(DroneNeeds, AddUpOverAllBatchesThatFlyAtOneTime) {
    const auto all = outlook(400);
    ASSERT_EQ(all->drones.size(), 1U);
    const auto& need = all->drones[0];
    EXPECT_EQ(need.yard->label, "Heath");
    const auto [peak, virgins] = peakByHand(*all);
    EXPECT_EQ(need.peak, peak);
    EXPECT_NEAR(need.virgins, virgins, 0.05);
    EXPECT_GT(virgins, 200) << "both batches count";
    EXPECT_EQ(need.wanted, static_cast<int>(std::ceil(virgins / 25)));
    EXPECT_TRUE(need.flights.contains(peak));
}

TEST_F(DroneNeeds, AFewQueensWantEightColoniesToo) { EXPECT_EQ(outlook(5)->drones[0].wanted, 8); }

// S18: comb two months before the flights; the first fly 18 days after the graft of 29 May.
TEST_F(DroneNeeds, SayWhenDroneCombGoesIn) {
    const auto all = outlook(5);
    const auto& need = all->drones[0];
    EXPECT_EQ(need.firstGraft, day("2027-05-29"));
    EXPECT_EQ(need.combBy, day("2027-04-17"));
    EXPECT_EQ(need.combLast, day("2027-05-07")) << "derived: 40 d before the flights, graft -22";
}

TEST_F(DroneNeeds, AreTakenFromTheNotesOfThisSeason) {
    (void)outlook(5);
    EXPECT_FALSE(see(DroneStage::Flying, "2026-07-01", 20)->drones[0].noted) << "last summer's";
    const auto few = see(DroneStage::CombIn, "2027-04-10", 6);
    EXPECT_EQ(few->drones[0].noted, 6);
    EXPECT_EQ(few->drones[0].mature, day("2027-05-20"));
    const auto told = std::find_if(few->findings.begin(), few->findings.end(),
                                   [](const auto& f) { return f.kind == FindingKind::FewDrones; });
    ASSERT_NE(told, few->findings.end());
    EXPECT_EQ(told->subjectLabel, "Heath");
    EXPECT_NE(englishText(*told).find("8 strong drone colonies are wanted, 6 are noted"),
              std::string::npos)
        << englishText(*told);
    const auto enough = see(DroneStage::Sealed, "2027-05-10", 9);
    EXPECT_EQ(enough->drones[0].noted, 9) << "the newest";
    for (const auto& finding : enough->findings) EXPECT_NE(finding.kind, FindingKind::FewDrones);
}

// S18, S53: 40 days from comb to mature drones.
TEST_F(DroneNeeds, CombPutInTooLateIsNoHelp) {
    (void)outlook(5);
    const auto all = see(DroneStage::CombIn, "2027-06-04", 9);
    EXPECT_EQ(all->drones[0].noted, 0);
    EXPECT_GT(*all->drones[0].mature, all->drones[0].peak);
    std::vector<std::string> told;
    for (const auto& finding : all->findings)
        if (finding.kind == FindingKind::FewDrones) told.push_back(englishText(finding));
    ASSERT_EQ(told.size(), 2U) << "too few, and too late";
    EXPECT_NE((told[0] + told[1]).find("mature only from"), std::string::npos);
}

TEST_F(DroneNeeds, NothingNotedIsTold) {
    const auto spring = outlook(5);
    for (const auto& finding : spring->findings)
        EXPECT_NE(finding.kind, FindingKind::FewDrones) << "there is time for comb yet";
    snapshot_.setToday(day("2027-05-08"));
    const auto nobody = outlookOf(snapshot_, memo_);
    for (const auto& finding : nobody->findings)
        EXPECT_NE(finding.kind, FindingKind::FewDrones) << "who notes no drones is not told";
    ChangeSet changes;
    changes.add(DroneSighting{id<DroneSighting>(++next_),
                              1,
                              maker_.yardId("Home"),
                              day("2027-04-20"),
                              DroneStage::Eggs,
                              8,
                              {}});
    snapshot_ = applied(snapshot_, changes).value();
    const auto late = outlookOf(snapshot_, memo_);
    const auto told = std::find_if(late->findings.begin(), late->findings.end(),
                                   [](const auto& f) { return f.kind == FindingKind::FewDrones; });
    ASSERT_NE(told, late->findings.end());
    EXPECT_EQ(told->severity, Severity::Note);
}

TEST_F(DroneNeeds, InseminatedQueensWantNone) {
    (void)outlook(5);
    ChangeSet changes;
    for (const auto& batch : snapshot_.all<Batch>()) {
        Batch after = *batch;
        after.mating = Mating::Insemination;
        changes.edit(batch, after);
    }
    EXPECT_TRUE(outlookOf(applied(snapshot_, changes).value(), memo_)->drones.empty());
}

}  // namespace
}  // namespace tenthday
