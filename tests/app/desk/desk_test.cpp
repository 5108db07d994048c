#include "desk/desk.h"

#include "app/book/book_fixture.h"
#include "book/reader.h"
#include "records/verbs.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

/// What the desk said, in order.
struct Listener {
    explicit Listener(Desk& desk) {
        QObject::connect(&desk, &Desk::shown, &desk,
                         [this](const OutlookPtr& outlook, const Changes& changes) {
                             heard.emplace_back(outlook, changes);
                         });
    }
    std::vector<std::pair<OutlookPtr, Changes>> heard;
};

class DeskTest : public test::BookTest {
protected:
    void SetUp() override { openDesk(makeSmallBook()); }
    void TearDown() override { desk_.reset(); }
    void openDesk(QString path, const OpenOptions& options = test::fixedOptions()) {
        desk_.reset();
        auto desk = Desk::open(path, options);
        if (!desk) throw std::runtime_error(desk.error().text);
        desk_ = std::move(desk).value();
    }
    Day dayOfBatch() const { return desk_->snapshot().find(test::kBatch)->day; }
    Day dayShown() const { return desk_->outlook()->snapshot.find(test::kBatch)->day; }
    Day dayInFile() { return reread(desk_->path()).find(test::kBatch)->day; }
    Snapshot seasonInFile(std::uint64_t n) {
        return desk_->file().read({id<Season>(n), false}).value();
    }
    ChangeSet moveTo(std::string_view text) {
        return moveBatch(desk_->snapshot(), test::kBatch, day(text)).value();
    }
    std::unique_ptr<Desk> desk_;
};

TEST_F(DeskTest, ShowsTheBookItOpened) {
    EXPECT_TRUE(desk_->snapshot().sameContent(test::smallBook()));
    ASSERT_EQ(desk_->outlook()->batches.size(), 1U);
    EXPECT_EQ(desk_->outlook()->batches[0]->batch->label, "1");
    EXPECT_FALSE(desk_->canUndo());
    EXPECT_FALSE(desk_->canRedo());
}

TEST_F(DeskTest, AnEditIsSavedAndShownOnce) {
    const Listener listener(*desk_);
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-08")));
    EXPECT_EQ(dayOfBatch(), day("2027-06-08"));
    EXPECT_EQ(dayInFile(), day("2027-06-08"));
    ASSERT_EQ(listener.heard.size(), 1U);
    const auto& [outlook, changes] = listener.heard[0];
    EXPECT_EQ(outlook, desk_->outlook());
    EXPECT_EQ(changes.cause, Cause::Edited);
    EXPECT_TRUE(changes.touches<Batch>());
    EXPECT_FALSE(changes.touches<Yard>());
}

TEST_F(DeskTest, UndoAndRedoAreEditsOfTheirOwn) {
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-08")));
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-09")));
    const EditName second{Verb::MoveBatch, "1", day("2027-06-09")};
    EXPECT_EQ(desk_->undoName(), second);
    const Listener listener(*desk_);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(dayInFile(), day("2027-06-08"));
    EXPECT_EQ(desk_->redoName(), second);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(dayInFile(), day("2027-06-04"));
    EXPECT_FALSE(desk_->canUndo());
    ASSERT_TRUE(desk_->undo()) << "nothing to undo is fine";
    ASSERT_TRUE(desk_->redo());
    ASSERT_TRUE(desk_->redo());
    EXPECT_EQ(dayInFile(), day("2027-06-09"));
    EXPECT_FALSE(desk_->canRedo());
    EXPECT_EQ(desk_->snapshot().find(test::kBatch)->version, 7) << "six edits since version 1";
    std::vector<Cause> causes;
    for (const auto& [outlook, changes] : listener.heard) causes.push_back(changes.cause);
    EXPECT_EQ(causes, (std::vector{Cause::Undone, Cause::Undone, Cause::Redone, Cause::Redone}));
}

TEST_F(DeskTest, VersionsRiseAlsoOfRowsThatComeAndGo) {
    ChangeSet changes;
    changes.add(Line{id<Line>(1), 1, "amber"});
    ASSERT_TRUE(desk_->apply(changes));
    for (std::int32_t version = 2; version < 5; ++version) {
        ASSERT_TRUE(desk_->undo());
        EXPECT_EQ(desk_->snapshot().find(id<Line>(1)), nullptr);
        ASSERT_TRUE(desk_->redo());
        EXPECT_EQ(desk_->snapshot().find(id<Line>(1))->version, version);
        EXPECT_EQ(reread(desk_->path()).find(id<Line>(1))->version, version);
    }
}

TEST_F(DeskTest, ANewEditForgetsWhatWasUndone) {
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-08")));
    ASSERT_TRUE(desk_->undo());
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-20")));
    EXPECT_FALSE(desk_->canRedo());
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(dayInFile(), day("2027-06-04"));
}

TEST_F(DeskTest, AnEditThatChangesNothingLeavesNoTrace) {
    const Listener listener(*desk_);
    const auto before = state();
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-04")));
    EXPECT_FALSE(desk_->canUndo());
    EXPECT_TRUE(listener.heard.empty());
    EXPECT_EQ(state(), before);
}

TEST_F(DeskTest, APreviewIsSeenButNotSaved) {
    const Listener listener(*desk_);
    const auto before = state();
    ASSERT_TRUE(desk_->preview(moveTo("2027-06-08")));
    ASSERT_TRUE(desk_->preview(moveTo("2027-06-09")));
    EXPECT_EQ(dayShown(), day("2027-06-09"));
    EXPECT_EQ(dayOfBatch(), day("2027-06-04"));
    EXPECT_TRUE(listener.heard.at(1).second.isPreview());
    EXPECT_EQ(state(), before);
    EXPECT_FALSE(desk_->canUndo());
    ASSERT_TRUE(desk_->preview(std::nullopt));
    EXPECT_EQ(dayShown(), day("2027-06-04"));
    EXPECT_EQ(listener.heard.back().second.cause, Cause::PreviewDropped);
    EXPECT_EQ(listener.heard.size(), 3U);
    ASSERT_TRUE(desk_->preview(std::nullopt)) << "twice is fine";
    EXPECT_EQ(listener.heard.size(), 3U);
}

TEST_F(DeskTest, AnEditEndsThePreviewWithOneSignal) {
    const auto move = moveTo("2027-06-09");
    ASSERT_TRUE(desk_->preview(move));
    const Listener listener(*desk_);
    ASSERT_TRUE(desk_->apply(move));
    EXPECT_FALSE(desk_->isPreviewing());
    ASSERT_EQ(listener.heard.size(), 1U);
    EXPECT_EQ(listener.heard[0].second.cause, Cause::Edited);
    EXPECT_EQ(dayShown(), day("2027-06-09"));
}

TEST_F(DeskTest, ARefusedEditLeavesEverythingAndDropsThePreview) {
    ASSERT_TRUE(desk_->preview(moveTo("2027-06-08")));
    ChangeSet bad;
    bad.erase(desk_->snapshot().find(test::kYard));
    const Listener listener(*desk_);
    const auto before = state();
    EXPECT_FALSE(desk_->apply(bad));
    EXPECT_EQ(dayShown(), day("2027-06-04"));
    ASSERT_EQ(listener.heard.size(), 1U);
    EXPECT_EQ(listener.heard[0].second.cause, Cause::PreviewDropped);
    EXPECT_FALSE(desk_->preview(bad));
    EXPECT_EQ(listener.heard.size(), 1U) << "nothing new to be seen";
    EXPECT_EQ(state(), before);
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(DeskTest, AReadOnlyBookShowsAndPreviewsButRefusesEdits) {
    const auto path = desk_->path();
    openDesk(path, test::fixedOptions(Access::ReadOnly));
    EXPECT_TRUE(desk_->isReadOnly());
    EXPECT_TRUE(desk_->preview(moveTo("2027-06-08")));
    const auto done = desk_->apply(moveTo("2027-06-08"));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().text,
              path.toStdString() + ": is open for reading only; nothing was changed");
    EXPECT_EQ(dayShown(), day("2027-06-04"));
}

TEST_F(DeskTest, ShowsAnotherSeasonAndUndoGoesOn) {
    ChangeSet changes;
    changes.add(Season{id<Season>(2), 1, "2028", day("2028-04-01"), day("2028-09-30")});
    std::vector<std::string> labels;
    for (const auto& batch : desk_->snapshot().all<Batch>()) labels.push_back(batch->label);
    ASSERT_FALSE(labels.empty());
    EXPECT_FALSE(desk_->snapshot().isLabelOfOtherSeason(labels[0]));
    ASSERT_TRUE(desk_->apply(changes));
    ASSERT_TRUE(desk_->showSeason(id<Season>(2)));
    EXPECT_EQ(desk_->snapshot().seasonId(), id<Season>(2));
    EXPECT_TRUE(desk_->outlook()->batches.empty());
    for (const auto& label : labels) EXPECT_TRUE(desk_->snapshot().isLabelOfOtherSeason(label));
    EXPECT_FALSE(desk_->showSeason(id<Season>(3)));
    EXPECT_EQ(desk_->snapshot().seasonId(), id<Season>(2));
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().find(id<Season>(2)), nullptr);
    EXPECT_EQ(desk_->outlook()->batches.size(), labels.size());
    EXPECT_FALSE(desk_->snapshot().isLabelOfOtherSeason(labels[0]));
    ASSERT_TRUE(desk_->redo());
    EXPECT_NE(desk_->snapshot().find(id<Season>(2)), nullptr);
}

TEST_F(DeskTest, WhatWasDoneInASeasonIsTakenBackFromAnother) {
    ChangeSet changes;
    changes.add(Season{id<Season>(2), 1, "2028", day("2028-04-01"), day("2028-09-30")});
    ASSERT_TRUE(desk_->apply(changes));
    ASSERT_TRUE(desk_->apply(moveTo("2027-06-08")));
    ASSERT_TRUE(desk_->showSeason(id<Season>(2)));
    const Listener listener(*desk_);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(seasonInFile(1).find(test::kBatch)->day, day("2027-06-04"));
    EXPECT_EQ(desk_->snapshot().seasonId(), id<Season>(2));
    EXPECT_TRUE(desk_->outlook()->batches.empty());
    EXPECT_EQ(listener.heard.size(), 1U);
    ASSERT_TRUE(desk_->redo());
    EXPECT_EQ(seasonInFile(1).find(test::kBatch)->day, day("2027-06-08"));
}

TEST_F(DeskTest, ARowOfAnotherSeasonIsKeptNotShownAndTakenBack) {
    ChangeSet season;
    season.add(Season{id<Season>(2), 1, "2028", day("2028-04-01"), day("2028-09-30")});
    ASSERT_TRUE(desk_->apply(season));
    Batch later = *desk_->snapshot().find(test::kBatch);
    later.id = id<Batch>(900);
    later.label = "900";
    later.day = day("2028-06-01");
    ChangeSet brings;
    brings.add(later);
    Outcome graft;
    graft.id = id<Outcome>(901);
    graft.batch = later.id;
    graft.day = later.day;
    brings.add(graft);
    ASSERT_TRUE(desk_->apply(brings));
    EXPECT_EQ(desk_->snapshot().find(later.id), nullptr);
    EXPECT_TRUE(desk_->snapshot().isLabelOfOtherSeason("900"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(seasonInFile(2).find(later.id), nullptr);
    ASSERT_TRUE(desk_->redo());
    const auto there = seasonInFile(2);
    ASSERT_NE(there.find(later.id), nullptr);
    EXPECT_GT(there.find(later.id)->version, 1);
    EXPECT_NE(there.find(id<Outcome>(901)), nullptr);
    // A label that is taken in another season is refused there too.
    ChangeSet twice;
    later.id = id<Batch>(902);
    twice.add(later);
    EXPECT_FALSE(desk_->apply(twice));
}

TEST_F(DeskTest, OtherDaysOfTheSeasonReadItsBatchesAnew) {
    ASSERT_EQ(desk_->outlook()->batches.size(), 1U);
    const auto season = desk_->snapshot().find(desk_->snapshot().seasonId());
    Season later = *season;
    later.from = dayOfBatch() + Days{100};
    later.until = later.from + Days{60};
    ChangeSet changes;
    changes.edit(season, later);
    const Listener listener(*desk_);
    ASSERT_TRUE(desk_->apply(changes));
    EXPECT_TRUE(desk_->outlook()->batches.empty());
    EXPECT_TRUE(listener.heard.back().second.touches<Batch>());
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->outlook()->batches.size(), 1U) << "and back again";
}

Season seasonFrom(std::uint64_t n, const char* from, const char* until) {
    return {id<Season>(n), 1, from, day(from), day(until)};
}

TEST(SeasonOf, KeepsTheOneThatEndedWhileItsBatchesLast) {
    const auto seasons = Table<Season>::from(
        {std::make_shared<const Season>(seasonFrom(1, "2027-03-01", "2027-10-31")),
         std::make_shared<const Season>(seasonFrom(2, "2028-03-01", "2028-10-31"))});
    EXPECT_EQ(seasonOf(seasons, day("2027-06-01")), id<Season>(1));
    EXPECT_EQ(seasonOf(seasons, day("2027-11-02")), id<Season>(1));
    EXPECT_EQ(seasonOf(seasons, day("2028-01-01")), id<Season>(2)) << "its first grafts may begin";
    EXPECT_EQ(seasonOf(seasons, day("2026-12-01")), id<Season>(1)) << "the next to come";
    EXPECT_EQ(seasonOf(seasons, day("2030-01-01")), id<Season>(2)) << "the last one";
    EXPECT_TRUE(seasonOf({}, day("2027-06-01")).isNone());
}

TEST_F(DeskTest, TellsWhenTheDayHasChanged) {
    auto today = day("2027-06-01");
    auto options = test::fixedOptions();
    options.clock = Clock(std::nullopt, [&] { return today; });
    openDesk(desk_->path(), options);
    const Listener listener(*desk_);
    desk_->refreshToday();
    EXPECT_TRUE(listener.heard.empty());
    today += Days{1};
    desk_->refreshToday();
    ASSERT_EQ(listener.heard.size(), 1U);
    EXPECT_EQ(listener.heard[0].first->snapshot.today(), day("2027-06-02"));
}

}  // namespace
}  // namespace tenthday
