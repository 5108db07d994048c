#include "evening/evening_verbs.h"
#include "occupancy/caged.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// One batch of two bars grafted on Fri 11 June 2027 at 15:00, ten nucs at Mill.
class EveningTest : public ::testing::Test {
protected:
    explicit EveningTest(std::string_view today = "2027-06-12", bool secondBar = true)
        : maker_(today) {
        maker_.yard("Mill", 2).yard("Home", 1).builder("Box", "Home");
        maker_.makeUp("Box", "2027-06-10", 17, true);
        for (int i = 1; i <= 10; ++i) {
            const auto box = "N" + std::to_string(i);
            maker_.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-06-18");
        }
        maker_.batch("9", "2027-06-11", 15, 14, "Box");
        if (secondBar) maker_.bar("9", 2, 10, "Box");
        read(maker_.snapshot());
    }
    /// Rows point into the outlook they were read from: all are kept.
    void read(const Snapshot& snapshot) {
        outlook_ = outlookOf(snapshot, memo_);
        kept_.push_back(outlook_);
    }
    void setToday(const char* text) {
        auto snapshot = outlook_->snapshot;
        snapshot.setToday(day(text));
        read(snapshot);
    }
    EveningPage page(const char* on) const { return eveningOf(*outlook_, day(on)); }
    IdSource ids() {
        return [this] { return test::id<Outcome>(++next_).uuid; };
    }
    void apply(const Result<ChangeSet>& changes) {
        ASSERT_TRUE(changes.ok()) << changes.error().text;
        auto next = applied(outlook_->snapshot, changes.value());
        ASSERT_TRUE(next.ok()) << next.error().text;
        read(next.value());
    }
    static std::vector<EveningRow> rowsOf(const EveningPage& page, TaskRule rule) {
        std::vector<EveningRow> rows;
        for (const auto& row : page.rows)
            if (row.task.key.rule == rule) rows.push_back(row);
        return rows;
    }
    static EveningInput on(const char* text) {
        EveningInput input;
        input.day = day(text);
        return input;
    }
    static EveningInput counted(const char* text, int count) {
        auto input = on(text);
        input.count = count;
        return input;
    }
    static EveningInput seen(const char* text, NucLook look) {
        auto input = on(text);
        input.look = look;
        return input;
    }
    std::optional<Refusal> impossible(const EveningRow& row, const EveningInput& input) const {
        return whyImpossible(*outlook_, row, input);
    }
    /// Grafted, started and ripe as planned, and all cells in on 21 June.
    void untilCellsAreIn() {
        maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 14, {}, 1);
        maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 10, {}, 2);
        for (int i = 1; i <= 10; ++i)
            maker_.place("9", "N" + std::to_string(i) + "/-", "2027-06-21", true);
        read(maker_.snapshot());
    }
    const BatchTimeline& line() const { return outlook_->batches[0]->timeline; }

    SeasonMaker maker_;
    OutlookPtr outlook_;
    std::vector<OutlookPtr> kept_;
    OutlookMemo memo_;
    std::uint64_t next_ = 850'000;
};

TEST_F(EveningTest, RowsAndNumbersAreThoseOfTheSheet) {
    const auto sheet = ofWeek(tasksOf(*outlook_), isoWeekOf(day("2027-06-11")));
    const auto evening = page("2027-06-11");
    std::vector<std::int32_t> numbers;
    for (const auto& row : evening.rows)
        if (row.isHead && !row.late) numbers.push_back(row.number);
    std::vector<std::int32_t> wanted;
    for (const auto& entry : sheet)
        if (entry.task.day == day("2027-06-11")) wanted.push_back(entry.number);
    EXPECT_EQ(numbers, wanted);
    EXPECT_FALSE(numbers.empty());
}

TEST_F(EveningTest, WhatIsLateComesFirst) {
    const auto evening = page("2027-06-12");
    ASSERT_FALSE(evening.rows.empty());
    EXPECT_TRUE(evening.rows.front().late);
    const auto graft = rowsOf(evening, TaskRule::Graft);
    ASSERT_FALSE(graft.empty()) << "the graft of yesterday was not entered";
    EXPECT_TRUE(graft.front().late);
}

TEST_F(EveningTest, GraftsAreCountedBarByBarAndStartTheBatch) {
    setToday("2027-06-11");
    auto rows = rowsOf(page("2027-06-11"), TaskRule::Graft);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].entry, EveningEntry::None);
    EXPECT_EQ(rows[1].bar, 1);
    EXPECT_EQ(rows[1].expected, 14);
    auto first = counted("2027-06-11", 12);
    first.hour = Hour{17};
    apply(enter(*outlook_, rows[1], first, ids()));
    EXPECT_TRUE(line().grafted);
    EXPECT_EQ(line().graft, momentOf(day("2027-06-11"), Hour{17}))
        << "two hours later than planned";
    rows = rowsOf(page("2027-06-11"), TaskRule::Graft);
    EXPECT_TRUE(rows[1].isFilled());
    EXPECT_FALSE(rows[2].isFilled()) << "a half-filled day is kept";
    apply(enter(*outlook_, rows[2], counted("2027-06-11", 9), ids()));
    EXPECT_NEAR(line().counts.grafted, 21, 1e-9);
    // A correction replaces: there is still one count of each bar.
    rows = rowsOf(page("2027-06-11"), TaskRule::Graft);
    apply(enter(*outlook_, rows[2], counted("2027-06-11", 10), ids()));
    EXPECT_NEAR(line().counts.grafted, 22, 1e-9);
    EXPECT_EQ(outlook_->snapshot.all<Outcome>().size(), 2U);
}

TEST_F(EveningTest, WhatIsTakenBackLeavesNoTrace) {
    const auto before = outlook_;
    setToday("2027-06-11");
    const auto rows = rowsOf(page("2027-06-11"), TaskRule::Graft);
    apply(enter(*outlook_, rows[1], counted("2027-06-11", 12), ids()));
    apply(takeBack(*outlook_, rowsOf(page("2027-06-11"), TaskRule::Graft)[1]));
    setToday("2027-06-12");
    EXPECT_TRUE(outlook_->snapshot.sameContent(before->snapshot));
    EXPECT_EQ(test::describe(*outlook_), test::describe(*before));
}

TEST_F(EveningTest, CountsThatCannotBeAreNamed) {
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 14, {}, 1);
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 10, {}, 2);
    read(maker_.snapshot());
    const auto take = rowsOf(page("2027-06-12"), TaskRule::TakeCount);
    ASSERT_EQ(take.size(), 3U);
    const auto more = impossible(take[1], counted("2027-06-12", 15));
    ASSERT_TRUE(more);
    EXPECT_EQ(more->why, Impossible::MoreThanBefore);
    EXPECT_EQ(more->count, 14);
    EXPECT_FALSE(impossible(take[1], counted("2027-06-12", 14)));
    EXPECT_FALSE(impossible(take[1], counted("2027-06-12", 0)));
    EXPECT_EQ(impossible(take[1], counted("2027-06-12", -1))->why, Impossible::OutOfRange);
    EXPECT_EQ(impossible(take[1], counted("2027-06-12", 10'000))->why, Impossible::OutOfRange);
    EXPECT_EQ(impossible(take[1], on("2027-06-12"))->why, Impossible::OutOfRange) << "no count";
    EXPECT_EQ(impossible(take[1], counted("2027-06-10", 9))->why, Impossible::BeforeGraft);
    EXPECT_EQ(impossible(take[1], counted("2027-06-13", 9))->why, Impossible::AfterToday);
    EXPECT_FALSE(enter(*outlook_, take[1], counted("2027-06-12", 15), ids()).ok());
    // Later counts bind an earlier one that is put right.
    apply(enter(*outlook_, take[1], counted("2027-06-12", 11), ids()));
    const auto graft = rowsOf(page("2027-06-11"), TaskRule::Graft);
    ASSERT_EQ(graft.size(), 3U);
    EXPECT_EQ(impossible(graft[1], counted("2027-06-11", 10))->why, Impossible::FewerThanAfter);
    EXPECT_FALSE(impossible(graft[1], counted("2027-06-11", 11)));
}

TEST_F(EveningTest, CellsGoInNucByNuc) {
    setToday("2027-06-21");
    auto rows = rowsOf(page("2027-06-21"), TaskRule::CellsIn);
    ASSERT_EQ(rows.size(), 11U) << "the head and ten nucs";
    EXPECT_EQ(rows[0].entry, EveningEntry::None);
    apply(enter(*outlook_, rows[1], on("2027-06-21"), ids()));
    apply(enter(*outlook_, rows[2], on("2027-06-21"), ids()));
    rows = rowsOf(page("2027-06-21"), TaskRule::CellsIn);
    EXPECT_EQ(std::count_if(rows.begin(), rows.end(), [](const auto& r) { return r.isFilled(); }),
              2);
    apply(takeBack(*outlook_, rows[1]));
    rows = rowsOf(page("2027-06-21"), TaskRule::CellsIn);
    EXPECT_EQ(std::count_if(rows.begin(), rows.end(), [](const auto& r) { return r.isFilled(); }),
              1);
}

// A plan by name that is entered only once its cell is a virgin: taken back she was in no cage.
TEST_F(EveningTest, ALatePlanTakenBackIsNotCaged) {
    maker_.place("9", "N1/-", "2027-06-21", false);
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 14, {}, 1);
    read(maker_.snapshot());
    setToday("2027-06-27");
    ASSERT_LT(*virginsFrom(line()), day("2027-06-27"));
    auto rows = rowsOf(page("2027-06-27"), TaskRule::CellsIn);
    const auto named = std::find_if(rows.begin(), rows.end(), [](const auto& r) {
        return r.entry == EveningEntry::Placed && r.placed;
    });
    ASSERT_NE(named, rows.end());
    apply(enter(*outlook_, *named, on("2027-06-27"), ids()));
    const auto filled = [&] {
        rows = rowsOf(page("2027-06-27"), TaskRule::CellsIn);
        return std::find_if(rows.begin(), rows.end(), [](const auto& r) { return r.isFilled(); });
    };
    ASSERT_NE(filled(), rows.end());
    apply(takeBack(*outlook_, *filled()));
    EXPECT_TRUE(outlook_->snapshot.all<Placement>().empty()) << "neither caged nor in a nuc";
}

// Cells that go in late leave other nucs without brood for them: those do not leave the page.
TEST_F(EveningTest, NucsMeantForACellStayWhileThePageIsFilled) {
    maker_ = SeasonMaker("2027-06-23");
    maker_.yard("Mill", 2).yard("Home", 1).builder("Box", "Home");
    for (int i = 1; i <= 4; ++i) {
        const auto box = "N" + std::to_string(i);
        maker_.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-06-01", false);
    }
    maker_.batch("9", "2027-06-11", 15, 14, "Box");
    read(maker_.snapshot());
    const auto before = page("2027-06-23");
    const auto rows = rowsOf(before, TaskRule::CellsIn);
    ASSERT_EQ(rows.size(), 5U) << "planned for the 21st, when their bees still took a cell";
    apply(enter(*outlook_, rows[1], on("2027-06-23"), ids()));
    EXPECT_LT(rowsOf(page("2027-06-23"), TaskRule::CellsIn).size(), 5U) << "the plan has moved";
    const auto after = rowsOf(eveningOf(*outlook_, day("2027-06-23"), before), TaskRule::CellsIn);
    ASSERT_EQ(after.size(), 5U);
    EXPECT_TRUE(after[1].isFilled());
    EXPECT_FALSE(after[2].isFilled());
    apply(enter(*outlook_, after[2], on("2027-06-23"), ids()));
    EXPECT_EQ(outlook_->snapshot.all<Placement>().size(), 2U);
}

TEST_F(EveningTest, LooksAreEnteredBySide) {
    untilCellsAreIn();
    setToday("2027-07-07");
    auto rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    ASSERT_EQ(rows.size(), 11U);
    apply(enter(*outlook_, rows[1], seen("2027-07-07", NucLook::Eggs), ids()));
    apply(enter(*outlook_, rows[2], seen("2027-07-07", NucLook::SealedBrood), ids()));
    apply(enter(*outlook_, rows[3], seen("2027-07-07", NucLook::NoneYet), ids()));
    auto gone = seen("2027-07-07", NucLook::Gone);
    gone.note = "did not come back";
    apply(enter(*outlook_, rows[4], gone, ids()));
    rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    ASSERT_EQ(rows.size(), 11U) << "what was entered today stays in sight";
    EXPECT_EQ(rows[1].look(), NucLook::Eggs);
    EXPECT_EQ(rows[3].look(), NucLook::NoneYet);
    EXPECT_EQ(rows[4].look(), NucLook::Gone);
    EXPECT_EQ(rows[4].seen->note, "did not come back");
    // Eggs on 7 July: sealed brood and the catch nine days later (S1, S2). None yet: look again.
    const auto& sides = outlook_->nucs.sides;
    EXPECT_EQ(sides[0].rounds[0].catchDay, day("2027-07-16"));
    EXPECT_EQ(sides[2].rounds[0].lookDay, day("2027-07-12"));
    EXPECT_EQ(sides[3].rounds[0].seen, NucState::NoQueen);
    // The nuc that waits comes again on its day; the answer of the first look stays as it was.
    setToday("2027-07-12");
    const auto again = rowsOf(page("2027-07-12"), TaskRule::FirstLook);
    const auto third = std::find_if(again.begin(), again.end(), [](const auto& row) {
        return row.side && row.side->box->label == "N3";
    });
    ASSERT_NE(third, again.end());
    apply(enter(*outlook_, *third, seen("2027-07-12", NucLook::Eggs), ids()));
    EXPECT_EQ(outlook_->snapshot.all<Outcome>().size(), 7U) << "two counts and five looks";
}

// S1, S2: three days from egg to larva, nine to sealed brood.
TEST_F(EveningTest, LarvaeMeanEggsThreeDaysBefore) {
    untilCellsAreIn();
    setToday("2027-07-10");
    const auto rows = rowsOf(page("2027-07-10"), TaskRule::FirstLook);
    ASSERT_GT(rows.size(), 1U);
    apply(enter(*outlook_, rows[1], seen("2027-07-10", NucLook::Larvae), ids()));
    EXPECT_EQ(outlook_->nucs.sides[0].rounds[0].seen, NucState::Laying);
    EXPECT_EQ(outlook_->nucs.sides[0].rounds[0].catchDay,
              std::max(day("2027-07-16"), outlook_->batches[0]->timeline.hold.catchDay));
}

TEST_F(EveningTest, LooksThatCannotBeAreNamed) {
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 24);
    for (int i = 1; i <= 10; ++i)
        maker_.place("9", "N" + std::to_string(i) + "/-", "2027-06-19", true);
    read(maker_.snapshot());
    setToday("2027-07-07");
    const auto rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    ASSERT_GT(rows.size(), 1U);
    // The early queen of a warm spell can be entered (S11: on day 11); none a day before that.
    const auto first = dayOf(line().find(Event::FirstOut)->earliest) - Days{1};
    EXPECT_EQ(impossible(rows[1], seen("2027-06-18", NucLook::Gone))->why,
              Impossible::BeforePlaced);
    EveningInput early;
    early.look = NucLook::VirginSeen;
    early.day = first - Days{1};
    ASSERT_GE(early.day, day("2027-06-19"));
    EXPECT_EQ(impossible(rows[1], early)->why, Impossible::BeforeEmergence);
    early.day = day("2027-06-22");
    EXPECT_FALSE(impossible(rows[1], early));
    // S61: first eggs at 4 days of age at the earliest.
    early.look = NucLook::Eggs;
    early.day = first + Days{3};
    EXPECT_EQ(impossible(rows[1], early)->why, Impossible::TooYoung);
    early.day = first + Days{4};
    EXPECT_FALSE(impossible(rows[1], early));
}

// What an earlier look found is no answer of this evening, and is not taken back with it.
TEST_F(EveningTest, TheNextLookIsEmptyAgain) {
    untilCellsAreIn();
    maker_.outcome("9", OutcomeKind::NoneYet, "2027-07-07", {}, "N1/-");
    read(maker_.snapshot());
    setToday("2027-07-12");
    const auto rows = rowsOf(page("2027-07-12"), TaskRule::FirstLook);
    const auto found = std::find_if(rows.begin(), rows.end(), [](const auto& row) {
        return row.side && row.side->box->label == "N1";
    });
    ASSERT_NE(found, rows.end());
    EXPECT_FALSE(found->isFilled());
    EXPECT_EQ(found->lookBefore(), NucLook::NoneYet);
    EXPECT_TRUE(takeBack(*outlook_, *found).value().isEmpty());
}

// Nucs nobody has looked into are not put off by those to be looked into again.
TEST_F(EveningTest, NoneYetPutsOffItsOwnNucOnly) {
    untilCellsAreIn();
    const auto look = line().hold.lookDay;
    maker_.outcome("9", OutcomeKind::NoneYet, toText(look), {}, "N1/-");
    maker_.outcome("9", OutcomeKind::Emergence, toText(look), {}, "N2/-");
    read(maker_.snapshot());
    setToday(toText(look).c_str());
    std::vector<std::pair<Day, std::size_t>> looks;
    for (const auto& task : tasksOf(*outlook_))
        if (task.key.rule == TaskRule::FirstLook) looks.emplace_back(task.day, task.sides.size());
    EXPECT_EQ(looks, (std::vector<std::pair<Day, std::size_t>>{{look, 8}, {look + Days{5}, 2}}));
}

TEST_F(EveningTest, RipeCellsAreCountedBuilderByBuilder) {
    maker_.builder("Other", "Home").load("9", 2, 1, "Other");
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 14, {}, 1);
    maker_.outcome("9", OutcomeKind::Graft, "2027-06-11", 10, {}, 2);
    read(maker_.snapshot());
    setToday("2027-06-21");
    const auto counts = [&] {
        auto rows = rowsOf(page("2027-06-21"), TaskRule::CellsOut);
        std::erase_if(rows, [](const auto& row) { return row.entry != EveningEntry::Count; });
        return rows;
    };
    ASSERT_EQ(counts().size(), 2U);
    apply(enter(*outlook_, counts()[0], counted("2027-06-21", 11), ids()));
    apply(enter(*outlook_, counts()[1], counted("2027-06-21", 9), ids()));
    EXPECT_NEAR(line().counts.ripe, 20, 1e-9) << "neither count replaces the other";
}

TEST_F(EveningTest, QueensAreCaughtNucByNucAndFreeThem) {
    untilCellsAreIn();
    for (int i = 1; i <= 10; ++i)
        maker_.outcome("9", OutcomeKind::SealedBrood, "2027-07-10", {},
                       "N" + std::to_string(i) + "/-");
    read(maker_.snapshot());
    setToday("2027-07-16");
    const auto tasks = tasksOf(*outlook_);
    const auto task = std::find_if(tasks.begin(), tasks.end(), [](const auto& t) {
        return t.key.rule == TaskRule::CatchQueens;
    });
    ASSERT_NE(task, tasks.end());
    setToday(toText(task->day).c_str());
    const auto text = toText(task->day);
    const auto rows = rowsOf(page(text.c_str()), TaskRule::CatchQueens);
    ASSERT_EQ(rows.size(), 11U);
    apply(enter(*outlook_, rows[1], on(text.c_str()), ids()));
    EXPECT_EQ(outlook_->nucs.sides[0].rounds[0].seen, NucState::Caught);
    EXPECT_EQ(impossible(rows[1], on("2027-06-20"))->why, Impossible::BeforePlaced)
        << "caught before she was there";
}

TEST_F(EveningTest, AWholeHeadIsFilledAsOneEdit) {
    untilCellsAreIn();
    setToday("2027-07-07");
    const auto rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    std::vector<const EveningRow*> all;
    for (std::size_t i = 1; i < rows.size(); ++i) all.push_back(&rows[i]);
    const auto changes = enterAll(*outlook_, all, seen("2027-07-07", NucLook::Eggs), ids());
    ASSERT_TRUE(changes.ok());
    EXPECT_EQ(changes.value().rows.size(), 10U);
    apply(changes);
    EXPECT_EQ(outlook_->nucs.sides[9].rounds[0].seen, NucState::Laying);
    const auto early = enterAll(*outlook_, all, seen("2027-06-20", NucLook::VirginSeen), ids());
    EXPECT_FALSE(early.ok()) << "refused as a whole";
}

TEST_F(EveningTest, WhatIsKeptCanBeEnteredAgainWithAnotherHour) {
    untilCellsAreIn();
    setToday("2027-07-07");
    auto rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    apply(enter(*outlook_, rows[1], seen("2027-07-07", NucLook::Eggs), ids()));
    rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    auto input = inputOf(rows[1]);
    EXPECT_EQ(input.look, NucLook::Eggs);
    input.hour = Hour{18};
    apply(enter(*outlook_, rows[1], input, ids()));
    rows = rowsOf(page("2027-07-07"), TaskRule::FirstLook);
    EXPECT_EQ(rows[1].seen->hour, Hour{18});
    EXPECT_EQ(rows[1].look(), NucLook::Eggs);
}

}  // namespace
}  // namespace tenthday
