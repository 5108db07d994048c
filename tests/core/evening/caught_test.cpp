// Catches bring queens with numbers of their own; queens that stay in their nucs for the winter.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "evening/evening_verbs.h"
#include "occupancy/winter.h"
#include "records/queen_verbs.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// Batch 9 grafted on 11 June 2027, cells in six nucs on 21 June, eggs seen in all on 5 July.
class CaughtTest : public ::testing::Test {
protected:
    CaughtTest() : maker_("2027-07-14") {
        maker_.yard("Mill", 2).yard("Home", 1).builder("Box", "Home");
        maker_.batch("9", "2027-06-11", 15, 12, "Box");
        maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 12);
        for (int i = 1; i <= 6; ++i) {
            const auto nuc = "N" + std::to_string(i) + "/-";
            maker_.box("N" + std::to_string(i), "Mill", "7", "2027-04-01").stock(nuc, "2027-06-18");
            maker_.place("9", nuc, "2027-06-21", true);
            maker_.outcome("9", OutcomeKind::FirstEggs, "2027-07-05", {}, nuc);
        }
        Line line{test::id<Line>(5), 1, "Hill"};
        Queen mother;
        mother.id = test::id<Queen>(6);
        mother.label = "B1";
        mother.line = line.id;
        mother.breederFrom = day("2027-01-01");
        auto snapshot = test::with(maker_.snapshot(), line, mother);
        const auto bar = *snapshot.all<BatchBar>().begin();
        auto grafted = *bar;
        grafted.breeder = mother.id;
        ChangeSet changes;
        changes.edit(bar, grafted);
        read(applied(snapshot, changes).value());
    }
    void read(const Snapshot& snapshot) {
        outlook_ = outlookOf(snapshot, memo_);
        kept_.push_back(outlook_);
    }
    std::vector<EveningRow> rows(const char* on = "2027-07-14") {
        std::vector<EveningRow> found;
        for (const auto& row : eveningOf(*outlook_, day(on)).rows)
            if (row.task.key.rule == TaskRule::CatchQueens && !row.isHead) found.push_back(row);
        return found;
    }
    EveningInput caught(const char* pattern = "{yy}-{n:3}") {
        EveningInput input;
        input.day = day("2027-07-14");
        input.queenNumbers = pattern;
        return input;
    }
    IdSource ids() {
        return [this] { return test::id<Outcome>(++next_).uuid; };
    }
    void apply(const Result<ChangeSet>& changes) {
        ASSERT_TRUE(changes.ok()) << changes.error().text;
        auto next = applied(outlook_->snapshot, changes.value());
        ASSERT_TRUE(next.ok()) << next.error().text;
        read(next.value());
    }
    const Snapshot& book() const { return outlook_->snapshot; }

    SeasonMaker maker_;
    OutlookMemo memo_;
    OutlookPtr outlook_;
    std::vector<OutlookPtr> kept_;
    std::uint64_t next_ = 900'000;
};

TEST_F(CaughtTest, ACatchBringsTheQueenWithNumberMotherLineAndPlace) {
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    const auto queen = findByLabel<Queen>(book(), "27-001");
    ASSERT_TRUE(queen);
    EXPECT_EQ(queen->year, 2027) << "born about 23 June: her mark is yellow (S105)";
    EXPECT_EQ(queen->mother, test::id<Queen>(6));
    EXPECT_EQ(queen->line, test::id<Line>(5));
    EXPECT_FALSE(queen->breederFrom);
    ASSERT_EQ(book().all<CaughtQueen>().size(), 1U);
    const auto caughtRow = *book().all<CaughtQueen>().begin();
    EXPECT_EQ(caughtRow->side, maker_.sideId("N1/-"));
    EXPECT_EQ(caughtRow->day, day("2027-07-14"));
    const auto stay = stayOn(book(), queen->id, day("2027-07-14"));
    ASSERT_TRUE(stay);
    EXPECT_EQ(stay->place, QueenPlace::Bank);
    EXPECT_EQ(queensInBank(book(), day("2027-07-14")), 1);
    EXPECT_EQ(queensInBank(book(), day("2027-07-13")), 0);
    const auto filled = rows()[0];
    ASSERT_TRUE(filled.queen);
    EXPECT_EQ(filled.queen->label, "27-001");
}

TEST_F(CaughtTest, OneStrokeForAllNumbersThemInTheirOrder) {
    const auto all = rows();
    ASSERT_EQ(all.size(), 6U);
    std::vector<const EveningRow*> wanted;
    for (const auto& row : all) wanted.push_back(&row);
    apply(enterAll(*outlook_, wanted, caught("{line}-{batch}-{n}"), ids()));
    const auto filled = rows();
    for (std::size_t i = 0; i < filled.size(); ++i)
        EXPECT_EQ(filled[i].queen->label, "Hill-9-" + std::to_string(i + 1));
}

TEST_F(CaughtTest, WithoutAPatternNoQueenComes) {
    apply(enter(*outlook_, rows()[0], caught(""), ids()));
    EXPECT_TRUE(book().all<CaughtQueen>().empty());
    EXPECT_EQ(book().all<Queen>().size(), 1U);
    EXPECT_TRUE(rows()[0].isFilled());
    const auto refused = enter(*outlook_, rows()[1], caught("{yy}"), ids());
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().text.find("{n}"), std::string::npos);
}

TEST_F(CaughtTest, AnHourPutRightBringsNoSecondQueen) {
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    auto input = inputOf(rows()[0]);
    input.hour = Hour{9};
    input.queenNumbers = "{yy}-{n:3}";
    apply(enter(*outlook_, rows()[0], input, ids()));
    EXPECT_EQ(book().all<CaughtQueen>().size(), 1U);
    EXPECT_EQ(rows()[0].seen->hour, Hour{9});
}

TEST_F(CaughtTest, TakenBackTheCatchTakesItsQueenAlong) {
    const auto before = book();
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    apply(takeBack(*outlook_, rows()[0]));
    EXPECT_TRUE(book().sameContent(before));
}

TEST_F(CaughtTest, AQueenThatWasMovedKeepsHerCatch) {
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    const auto queen = findByLabel<Queen>(book(), "27-001");
    apply(moveQueens(book(), {queen->id}, QueenPlace::Sold, day("2027-07-15"), "Order 4", ids()));
    EXPECT_EQ(stayOn(book(), queen->id, day("2027-07-15"))->place, QueenPlace::Sold);
    EXPECT_EQ(stayOn(book(), queen->id, day("2027-07-14"))->place, QueenPlace::Bank);
    const auto refused = takeBack(*outlook_, rows()[0]);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().text.find("27-001"), std::string::npos) << refused.error().text;
}

TEST_F(CaughtTest, AQueenInUseKeepsHerCatch) {
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    Queen daughter;
    daughter.id = test::id<Queen>(77);
    daughter.label = "D";
    daughter.mother = findByLabel<Queen>(book(), "27-001")->id;
    read(test::with(book(), daughter));
    EXPECT_FALSE(takeBack(*outlook_, rows()[0]).ok());
}

TEST_F(CaughtTest, MovesAreRefusedBeforeTheCatchAndReplacedOnTheirDay) {
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    const std::vector queens{findByLabel<Queen>(book(), "27-001")->id};
    EXPECT_FALSE(moveQueens(book(), queens, QueenPlace::Cage, day("2027-07-13"), {}, ids()).ok());
    apply(moveQueens(book(), queens, QueenPlace::Cage, day("2027-07-16"), "1", ids()));
    apply(moveQueens(book(), queens, QueenPlace::Lost, day("2027-07-16"), "dead", ids()));
    ASSERT_EQ(staysOf(book(), queens[0]).size(), 2U) << "one for each day";
    EXPECT_EQ(staysOf(book(), queens[0]).back()->place, QueenPlace::Lost);
    EXPECT_FALSE(
        moveQueens(book(), {test::id<Queen>(99)}, QueenPlace::Bank, day("2027-07-16"), {}, ids())
            .ok());
}

TEST_F(CaughtTest, HerLineIsUnknownWhereBarsDiffer) {
    BatchBar bar;
    bar.id = test::id<BatchBar>(50);
    bar.batch = maker_.batchId("9");
    bar.bar = 2;
    bar.cells = Cells{5};
    read(test::with(book(), bar));
    const auto lineage = lineageOf(book(), maker_.batchId("9"));
    EXPECT_FALSE(lineage.mother);
    EXPECT_FALSE(lineage.line);
}

TEST_F(CaughtTest, AQueenLeftForWinterIsNotCaughtAndNotLate) {
    auto input = caught();
    input.stays = true;
    apply(enter(*outlook_, rows()[0], input, ids()));
    EXPECT_TRUE(rows()[0].stays());
    const auto queen = rows()[0].queen;
    ASSERT_TRUE(queen) << "known by her number in the seasons to come";
    EXPECT_EQ(queen->label, "27-001");
    EXPECT_EQ(stayOn(book(), queen->id, day("2027-07-14"))->place, QueenPlace::Nuc);
    EXPECT_EQ(queensInBank(book(), day("2027-07-14")), 0);
    auto later = book();
    later.setToday(day("2027-09-20"));
    read(later);
    const auto& side = outlook_->nucs.sides[0];
    EXPECT_TRUE(staysForWinter(side.rounds[0]));
    const auto is = sideOn(side, day("2027-09-20"), day("2027-09-20"));
    EXPECT_EQ(is.state, NucState::JudgedGood);
    EXPECT_FALSE(is.ready);
    EXPECT_FALSE(is.readyFrom) << "no day on which her nuc is free";
    for (const auto& task : tasksOf(*outlook_)) {
        if (task.key.rule != TaskRule::CatchQueens || task.done) continue;
        for (const auto* asked : task.sides) EXPECT_NE(asked->side->id, side.side->id);
        EXPECT_EQ(task.sides.size(), 5U);
    }
}

TEST_F(CaughtTest, AQueenThatStaysHasANumberThoughNoneAreGiven) {
    const auto before = book();
    auto input = caught("");
    input.stays = true;
    apply(enter(*outlook_, rows()[0], input, ids()));
    ASSERT_TRUE(rows()[0].queen);
    EXPECT_EQ(rows()[0].queen->label, "9-1");
    input.hour = Hour{9};
    apply(enter(*outlook_, rows()[0], input, ids()));
    EXPECT_EQ(book().all<CaughtQueen>().size(), 1U) << "put right, she keeps it";
    apply(takeBack(*outlook_, rows()[0]));
    EXPECT_TRUE(book().sameContent(before));
}

TEST_F(CaughtTest, NumbersOfOneEveningNeverCollide) {
    auto pattern = QueenPattern::of("{n}{batch}");
    ASSERT_TRUE(pattern.ok());
    QueenNumbers numbers(book(), std::move(pattern).value());
    std::set<std::string> given;
    for (int i = 0; i < 30; ++i)
        for (const char* batch : {"9", "19", "119"})
            EXPECT_TRUE(given.insert(numbers.next({2027, "", batch})).second) << batch << i;
}

TEST_F(CaughtTest, StayingInsteadOfCaughtTakesTheNumberBack) {
    const auto before = book();
    apply(enter(*outlook_, rows()[0], caught(), ids()));
    auto input = inputOf(rows()[0]);
    input.stays = true;
    apply(enter(*outlook_, rows()[0], input, ids()));
    EXPECT_FALSE(findByLabel<Queen>(book(), "27-001"));
    EXPECT_TRUE(rows()[0].stays());
    apply(takeBack(*outlook_, rows()[0]));
    EXPECT_TRUE(book().sameContent(before));
}

}  // namespace
}  // namespace tenthday
