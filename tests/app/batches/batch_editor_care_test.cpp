// What the batch editor takes care of, so that a slip costs nothing.
#include <gtest/gtest.h>

#include "app/batches/batch_editor_fixture.h"
#include "screen_text/batch_text.h"

namespace tenthday {
namespace {

using test::BatchEditorTest;
using test::day;
using test::GraftedBatch;
using test::kPatience;

TEST_F(BatchEditorTest, LeavesWithoutAWordWhenNothingWasTyped) {
    auto& editor = plan();
    ASSERT_TRUE(settled());
    editor.setQuestion([](const QString&) { return ADD_FAILURE() << "asked", false; });
    QTest::keyClick(&editor, Qt::Key_Escape);
    EXPECT_FALSE(editor.isVisible());
}

TEST_F(BatchEditorTest, AnotherMethodComesWithBuildersOfItsKinds) {
    auto& editor = plan();
    fillFriday();
    choose(editor.form().method(), QStringLiteral("starter and finisher"));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return editor.draft().bars[0].steps.size() == 2; }, kPatience));
    EXPECT_EQ(editor.draft().bars[0].steps[0], test::id<Builder>(2));
    EXPECT_EQ(editor.draft().bars[0].steps[1], test::id<Builder>(3));
}

TEST_F(BatchEditorTest, StartsWithoutAGraftHaveNoMakeUp) {
    auto& editor = plan();
    fillFriday();
    EXPECT_TRUE(editor.form().makeUp().isEnabled());
    choose(editor.form().start(), QStringLiteral("virgins"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.draft().start == Start::Virgin; }, kPatience));
    EXPECT_FALSE(editor.form().makeUp().isEnabled());
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    EXPECT_EQ(desk_->snapshot().all<Batch>().size(), 1U);
    EXPECT_TRUE(desk_->snapshot().all<MakeUp>().empty());
}

TEST_F(BatchEditorTest, TellsWhatRepeatsClashWith) {
    auto& editor = plan();
    fillFriday();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return editor.clashesText().startsWith(QStringLiteral("Nothing")); }, kPatience))
        << editor.clashesText().toStdString();
    type(editor.repeatEvery(), QStringLiteral("1"));  // the box is not free the day after
    type(editor.repeatMore(), QStringLiteral("1"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return editor.clashesText().startsWith(QStringLiteral("▲")); }, kPatience));
}

TEST_F(BatchEditorTest, CountsDaysAndBatchesInWords) {
    auto& editor = plan();
    type(editor.repeatEvery(), QStringLiteral("1"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return editor.repeatEvery().suffix() == QStringLiteral(" day"); }, kPatience));
    EXPECT_EQ(batch_text::repeatMore(1), QStringLiteral("batch more"));
    EXPECT_EQ(batch_text::repeatMore(2), QStringLiteral("batches more"));
    EXPECT_TRUE(batch_text::sum(1, 0).startsWith(QStringLiteral("1 ripe cell expected")));
}

TEST_F(BatchEditorTest, WhatWasReckonedFromRefusedFieldsIsGrey) {
    auto& editor = plan();
    ASSERT_TRUE(settled());
    editor.form().label().clear();
    editor.form().label().setFocus();
    QTest::keyClicks(&editor.form().label(), QStringLiteral(" "));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !editor.saveButton().isEnabled(); }, kPatience));
    EXPECT_FALSE(editor.dates().isEnabled());
    QTest::keyClicks(&editor.form().label(), QStringLiteral("7"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.saveButton().isEnabled(); }, kPatience));
    EXPECT_TRUE(editor.dates().isEnabled());
}

TEST_F(GraftedBatch, HasNoOtherDays) {
    auto& editor = edit("1");
    EXPECT_TRUE(QTest::qWaitFor([&] { return editor.clashesText() != batch_text::searching(); },
                                kPatience));
    EXPECT_FALSE(editor.week().isVisible());
    EXPECT_TRUE(editor.nearest().empty());
}

/// The batch again with a second bar, and a count of each.
class CountedBars : public GraftedBatch {
protected:
    void SetUp() override {
        GraftedBatch::SetUp();
        auto draft = draftOf(desk_->snapshot(), test::id<Batch>(1));
        draft.bars[0].taken = Cells{15};
        draft.bars.push_back({0, test::id<Queen>(1), Cells{10}, draft.bars[0].steps, Cells{8}});
        ASSERT_TRUE(desk_->apply(
            changesOf(desk_->snapshot(), draft, {}, [] { return newId<Batch>().uuid; }).value()));
    }
};

TEST_F(CountedBars, ABarThatGoesSaysThatItsCountGoesToo) {
    auto& editor = edit("1");
    ASSERT_EQ(editor.bars().count(), 2);
    QTest::mouseClick(&editor.bars().removeButton(0), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return editor.told().contains(QStringLiteral("takes out 1 recorded count")); },
        kPatience))
        << editor.told().toStdString();
    QTest::mouseClick(&editor.bars().addButton(), Qt::LeftButton);
    EXPECT_EQ(editor.bars().grafts(1).accessibleName(), QStringLiteral("Bar 3, Grafts"));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    const auto saved = draftOf(desk_->snapshot(), test::id<Batch>(1));
    ASSERT_EQ(saved.bars.size(), 2U);
    EXPECT_EQ(saved.bars[0].number, 2);
    EXPECT_EQ(saved.bars[0].breeder, test::id<Queen>(1));
    EXPECT_EQ(saved.bars[0].taken, Cells{8}) << "the count stays with its breeder queen";
    EXPECT_FALSE(saved.bars[1].taken);
}

// Cups of larvae that were not started, by +2.
TEST_F(GraftedBatch, ACountInTimeOffersATopUp) {
    auto& editor = edit("1");
    std::vector<BatchDraft> wished;
    QObject::connect(&editor, &BatchEditor::furtherWished,
                     [&](const BatchDraft& draft) { wished.push_back(draft); });
    EXPECT_FALSE(editor.topUpButton().isVisible()) << "nothing is counted";
    EXPECT_TRUE(editor.insureButton().isVisible());
    type(editor.bars().take(0), QStringLiteral("14"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.topUpButton().isVisible(); }, kPatience));
    EXPECT_TRUE(editor.topUpButton().text().contains(QStringLiteral("6")));
    QTest::mouseClick(&editor.topUpButton(), Qt::LeftButton);
    ASSERT_EQ(wished.size(), 1U);
    EXPECT_EQ(wished[0].bars.at(0).cells, Cells{6});
    EXPECT_EQ(wished[0].day, day("2027-06-13"));
    EXPECT_FALSE(editor.isVisible());
    bool counted = false;
    for (const auto& outcome : desk_->snapshot().all<Outcome>())
        counted =
            counted || (outcome->kind == OutcomeKind::TakeCount && outcome->count == Cells{14});
    EXPECT_TRUE(counted) << "what was typed is saved first";
}

TEST_F(GraftedBatch, ASecondGraftAsInsuranceIsTheWholeBatch) {
    auto& editor = edit("1");
    std::vector<BatchDraft> wished;
    QObject::connect(&editor, &BatchEditor::furtherWished,
                     [&](const BatchDraft& draft) { wished.push_back(draft); });
    QTest::mouseClick(&editor.insureButton(), Qt::LeftButton);
    ASSERT_EQ(wished.size(), 1U);
    EXPECT_EQ(wished[0].bars.at(0).cells, Cells{20});
    EXPECT_EQ(wished[0].bars.at(0).steps.at(0), test::id<Builder>(1)) << "into the same box";
}

}  // namespace
}  // namespace tenthday
