// How often a builder takes a batch, and room for open and sealed cells.
#include <gtest/gtest.h>

#include "records/change_set.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;
using test::freshOutlook;
using test::id;
using test::SeasonMaker;

std::vector<std::string> tooSoon(const OutlookPtr& outlook, const std::string& builder) {
    std::vector<std::string> labels;
    for (const auto& b : outlook->builders)
        if (b.builder->label == builder)
            for (const auto& soon : b.tooSoon)
                labels.push_back(outlook->snapshot.find(soon.batch)->label + " free " +
                                 (soon.freeFrom ? toText(*soon.freeFrom) : "never"));
    return labels;
}

OutlookPtr with(const Snapshot& snapshot, Fact fact, double value) {
    ChangeSet changes;
    FactOverride row;
    row.id = test::id<FactOverride>(77);
    row.fact = token(fact);
    row.valueMilli = static_cast<std::int32_t>(value * 1000);
    changes.add(row);
    OutlookMemo memo;
    return outlookOf(applied(snapshot, changes).value(), memo);
}

/// Four batches of 20 grafts so many days apart.
SeasonMaker inTurn(int apart, const std::string& method) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box", "East");
    for (int i = 0; i < 4; ++i)
        maker.batch(std::to_string(i + 1), toText(day("2027-05-10") + Days{apart * i}), 14, 20,
                    "Box", method);
    return maker;
}

TEST(Rhythm, ABoxThatStartsAndFinishesTakesABatchEveryEighthDay) {  // S79
    EXPECT_TRUE(tooSoon(inTurn(8, "one box").outlook(), "Box").empty());
    EXPECT_EQ(
        tooSoon(inTurn(7, "one box").outlook(), "Box"),
        (std::vector<std::string>{"2 free 2027-05-18", "3 free 2027-05-25", "4 free 2027-06-01"}));
}

/// One starter, one finisher, a batch every so many days.
SeasonMaker staged(int apart) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East")
        .builder("Start", "East", BuilderKind::Starter)
        .builder("End", "East", BuilderKind::Finisher);
    for (int i = 0; i < 4; ++i) {
        const auto label = std::to_string(i + 1);
        maker.batch(label, toText(day("2027-05-10") + Days{apart * i}), 14, 20, "Start",
                    "starter and finisher");
        maker.load(label, 1, 2, "End");
    }
    return maker;
}

TEST(Rhythm, AStagedFinisherIsFreeTheNextDayByDefault) {  // S11
    EXPECT_TRUE(tooSoon(staged(1).outlook(), "End").empty());
    EXPECT_TRUE(tooSoon(staged(4).outlook(), "End").empty());
}

TEST(Rhythm, EveryFourthDayIsASettingAndClashesBelowIt) {  // S25
    EXPECT_TRUE(tooSoon(with(staged(4).snapshot(), Fact::RhythmFinisherD, 4), "End").empty());
    EXPECT_EQ(
        tooSoon(with(staged(3).snapshot(), Fact::RhythmFinisherD, 4), "End"),
        (std::vector<std::string>{"2 free 2027-05-15", "3 free 2027-05-18", "4 free 2027-05-21"}));
    const auto told = with(staged(3).snapshot(), Fact::RhythmFinisherD, 4);
    std::vector<std::string> texts;
    for (const auto& finding : told->findings)
        if (finding.kind == FindingKind::BuilderNotFree) texts.push_back(englishText(finding));
    ASSERT_EQ(texts.size(), 3U);
    EXPECT_EQ(texts[0],
              "comes into End on Fri 14 May 14:00, after batch 1 the box is free from Sat 15 May");
}

TEST(Rhythm, BarsOfOneBatchDoNotClashWithEachOther) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box", "East").batch("1", "2027-05-10", 14, 12, "Box");
    maker.bar("1", 2, 12, "Box");
    EXPECT_TRUE(tooSoon(maker.outlook(), "Box").empty());
}

// Contract: a top-up is offered when cells are counted by +2, into the same box.
TEST(Rhythm, ATopUpOfTheSameBatchDoesNotComeTooSoon) {
    const auto book = [](const char* day, int cups, std::optional<int> started) {
        SeasonMaker maker("2027-05-12");
        maker.yard("East").builder("Box", "East").batch("1", "2027-05-10", 14, 20, "Box");
        if (started) maker.outcome("1", OutcomeKind::TakeCount, "2027-05-11", started);
        maker.batch("1 again", day, 14, cups, "Box");
        return maker.outlook();
    };
    EXPECT_TRUE(tooSoon(book("2027-05-12", 8, 12), "Box").empty());
    const std::vector<std::string> early{"1 again free 2027-05-18"};
    EXPECT_EQ(tooSoon(book("2027-05-12", 9, 12), "Box"), early) << "there are eight empty cups";
    EXPECT_EQ(tooSoon(book("2027-05-12", 8, {}), "Box"), early) << "nothing was counted";
    EXPECT_EQ(tooSoon(book("2027-05-13", 8, 12), "Box"), early) << "too late for a top-up";
}

std::optional<Severity> toldOf(const Outlook& outlook, FindingKind kind) {
    for (const auto& finding : outlook.findings)
        if (finding.kind == kind) return finding.severity;
    return std::nullopt;
}

// Common practice: a second graft as insurance, the day after, into the same box. It is noted only;
// that the box may be overfull then is told all the same.
TEST(Rhythm, AGraftAsInsuranceIntoTheSameBoxIsNotedOnly) {
    const auto book = [](const char* day, int grafts, std::optional<int> breeder = 1,
                         std::optional<int> first = 1) {
        SeasonMaker maker("2027-05-10");
        maker.yard("East").builder("Box", "East").batch("1", "2027-05-10", 14, 20, "Box");
        maker.batch("2", day, 14, grafts, "Box");
        ChangeSet changes;
        const auto snapshot = maker.snapshot();
        for (const std::uint64_t n : {1U, 2U}) {
            Queen queen;
            queen.id = id<Queen>(n);
            queen.label = "Y" + std::to_string(n);
            changes.add(queen);
        }
        for (const auto& bar : snapshot.all<BatchBar>()) {
            const bool isFirst = snapshot.find(bar->batch)->label == "1";
            auto named = *bar;
            const auto own = isFirst ? first : breeder;
            if (own) named.breeder = id<Queen>(static_cast<std::uint64_t>(*own));
            changes.edit(bar, named);
        }
        return freshOutlook(applied(snapshot, changes).value());
    };
    const auto kind = FindingKind::BuilderNotFree;
    for (const char* day : {"2027-05-11", "2027-05-12"})
        EXPECT_EQ(toldOf(*book(day, 20), kind), Severity::Note) << day;
    EXPECT_EQ(toldOf(*book("2027-05-13", 20), kind), Severity::Warning) << "too far apart";
    EXPECT_EQ(toldOf(*book("2027-05-12", 12), kind), Severity::Warning) << "another batch";
    EXPECT_EQ(toldOf(*book("2027-05-12", 20, 2), kind), Severity::Warning) << "another queen";
    EXPECT_EQ(toldOf(*book("2027-05-12", 20, {}), kind), Severity::Warning) << "no queen named";
    EXPECT_EQ(toldOf(*book("2027-05-12", 20, {}, {}), kind), Severity::Warning)
        << "of neither: nobody says that they are sisters";
    EXPECT_TRUE(toldOf(*book("2027-05-12", 20), FindingKind::BoxOverfull));
}

TEST(Rhythm, RestAfterTheCellsAreOutCountsWhereBatchesDoNotOverlap) {
    // In the starter until 11 May, a day of rest by the method: the next from 13 May, whenever it
    // is asked for.
    for (const char* next : {"2027-05-10", "2027-05-11", "2027-05-12"}) {
        auto maker = staged(20);
        maker.batch("9", next, 18, 20, "Start", "starter and finisher").load("9", 1, 2, "End");
        EXPECT_EQ(tooSoon(maker.outlook(), "Start"),
                  (std::vector<std::string>{"9 free 2027-05-13"}))
            << next;
    }
    auto maker = staged(20);
    maker.batch("9", "2027-05-13", 6, 20, "Start", "starter and finisher").load("9", 1, 2, "End");
    EXPECT_TRUE(tooSoon(maker.outlook(), "Start").empty());
}

TEST(Rhythm, OnceFreeItStaysFree) {
    for (int later = 8; later < 14; ++later)
        EXPECT_TRUE(tooSoon(inTurn(later, "one box").outlook(), "Box").empty()) << later;
}

TEST(Rhythm, ABuilderThatEndsBeforeItsCellsAreOutIsTold) {
    auto snapshot = inTurn(8, "one box").snapshot();
    ChangeSet changes;
    const auto box = *snapshot.all<Builder>().begin();
    auto ended = *box;
    ended.until = day("2027-05-15");
    changes.edit(box, ended);
    OutlookMemo memo;
    const auto outlook = outlookOf(applied(snapshot, changes).value(), memo);
    EXPECT_EQ(tooSoon(outlook, "Box"), (std::vector<std::string>{"1 free never", "2 free never",
                                                                 "3 free never", "4 free never"}));
}

TEST(Room, OpenAndSealedCellsAreCountedApart) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box", "East");
    maker.batch("1", "2027-05-10", 14, 28, "Box").batch("2", "2027-05-18", 14, 28, "Box");
    auto snapshot = maker.snapshot();
    OutlookMemo memo;
    // 21 started of 28, twice; the first are sealed when the second come: never over 24 open.
    const auto roomy = outlookOf(snapshot, memo);
    for (const auto& b : roomy->builders) EXPECT_TRUE(b.overfull.empty());

    ChangeSet changes;
    const auto box = snapshot.find(maker.builderId("Box"));
    auto small = *box;
    small.sealedRoom = Cells{15};
    changes.edit(box, small);
    const auto outlook = outlookOf(applied(snapshot, changes).value(), memo);
    ASSERT_EQ(outlook->builders[0].overfull.size(), 2U);
    for (const auto& full : outlook->builders[0].overfull) {
        EXPECT_TRUE(full.sealed);
        EXPECT_NEAR(full.cells, 28 * .75 * .95, 0.01);  // the first have left when these are sealed
        EXPECT_EQ(full.room, 15);
    }
}

TEST(Finishers, SeveralOnOneStarterShareABatchByItsBars) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East")
        .builder("Start", "East", BuilderKind::Starter)
        .builder("Left", "East", BuilderKind::Finisher)
        .builder("Right", "East", BuilderKind::Finisher);
    maker.batch("1", "2027-05-10", 14, 20, "Start", "starter and finisher");
    maker.bar("1", 2, 28, "Start");
    maker.load("1", 1, 2, "Left").load("1", 2, 2, "Right");
    const auto outlook = maker.outlook();
    std::map<std::string, double> started;
    for (const auto& b : outlook->builders)
        for (const auto& load : b.loads) started[b.builder->label] += load.span->thickness[0].cells;
    EXPECT_NEAR(started["Start"], 48, 0.01);
    EXPECT_NEAR(started["Left"], 20 * .75, 0.01);
    EXPECT_NEAR(started["Right"], 28 * .75, 0.01);
    // The first queen out is that of the fuller box: 28, not 48.
    const auto* batch = outlook->find(maker.batchId("1"));
    EXPECT_LT(batch->timeline.clock.firstOutAt(28 * .75 * .95, .01) -
                  hoursBetween(batch->timeline.graft, batch->timeline.latestMove),
              0.02);
}

TEST(Builders, OutOfTheirDaysAreNotFree) {
    auto maker = inTurn(20, "one box");
    auto snapshot = maker.snapshot();
    ChangeSet changes;
    const auto box = snapshot.find(maker.builderId("Box"));
    Builder late = *box;
    late.from = day("2027-06-01");
    changes.edit(box, late);
    OutlookMemo memo;
    EXPECT_EQ(tooSoon(outlookOf(applied(snapshot, changes).value(), memo), "Box").front(),
              "1 free 2027-06-01");
    Builder gone = *box;
    gone.from = day("2025-04-01");
    gone.until = day("2026-09-01");
    ChangeSet before;
    before.edit(box, gone);
    const auto told = tooSoon(outlookOf(applied(snapshot, before).value(), memo), "Box");
    EXPECT_EQ(told.size(), 4U) << "it ended before the season";
}

}  // namespace
}  // namespace tenthday
