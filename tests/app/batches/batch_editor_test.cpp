#include <gtest/gtest.h>

#include <QStyle>
#include <QStyleOptionComboBox>

#include "app/batches/batch_editor_fixture.h"

namespace tenthday {
namespace {

using test::BatchEditorTest;
using test::day;
using test::GraftedBatch;
using test::kPatience;

TEST_F(BatchEditorTest, ShowsEveryDateWhileTyping) {
    plan();
    fillFriday();
    ASSERT_TRUE(settled());
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return dateOf(Event::Emergence) == "Wed 23 Jun 21:00"; }, kPatience))
        << dateOf(Event::Emergence);
    EXPECT_EQ(dateOf(Event::Ripe), "Mon 21 Jun 15:00");
    EXPECT_TRUE(desk_->snapshot().all<Batch>().empty()) << "nothing is saved yet";
    EXPECT_EQ(desk_->outlook()->batches.size(), 1U) << "but all is previewed";
}

TEST_F(BatchEditorTest, SavesByKeyAsOneEditThatUndoTakesBack) {
    const auto before = desk_->snapshot();
    auto& editor = plan();
    fillFriday();
    choose(editor.bars().breeder(0), QStringLiteral("B7"));
    type(*editor.yards().cells(test::id<Yard>(1)), QStringLiteral("9"));
    QTest::keyClick(&editor, Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(editor.result(), QDialog::Accepted) << editor.told().toStdString();
    const auto batch = findByLabel<Batch>(desk_->snapshot(), "1");
    ASSERT_TRUE(batch);
    const auto saved = draftOf(desk_->snapshot(), batch->id);
    EXPECT_EQ(saved.hour, Hour{15});
    EXPECT_EQ(saved.larvaFromH, 18);
    ASSERT_EQ(saved.bars.size(), 1U);
    EXPECT_EQ(saved.bars[0].cells, Cells{20});
    EXPECT_EQ(saved.bars[0].breeder, test::id<Queen>(1));
    EXPECT_EQ(saved.shares, (std::vector{std::pair{test::id<Yard>(1), Cells{9}}}));
    EXPECT_EQ(saved.makeUp, MakeUpPlan::WithoutOpenBrood);
    EXPECT_FALSE(desk_->isPreviewing());
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(BatchEditorTest, EscapeLeavesNoTrace) {
    const auto before = desk_->snapshot();
    auto& editor = plan();
    fillFriday();
    ASSERT_TRUE(settled());
    bool answer = false;
    int asked = 0;
    editor.setQuestion([&](const QString&) { return ++asked, answer; });
    QTest::keyClick(&editor, Qt::Key_Escape);
    EXPECT_TRUE(editor.isVisible()) << "what was typed is not dropped unasked";
    answer = true;
    QTest::keyClick(&editor, Qt::Key_Escape);
    EXPECT_EQ(asked, 2);
    EXPECT_EQ(editor.result(), QDialog::Rejected);
    EXPECT_FALSE(desk_->isPreviewing());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(BatchEditorTest, WithoutWeekendWorkFridayIsTheOnlyDay) {
    plan();
    fillFriday();
    noWeekend();
    ASSERT_TRUE(waitForSum(QStringLiteral("Friday 11 June is the only graft day")))
        << editor_->weekSum().toStdString();
    // The Friday's line: graft, confine, free, make up, count, cells out.
    const std::vector<std::string> days{"Fri 11 Jun", "Mon 7 Jun",  "Tue 8 Jun",
                                        "Thu 10 Jun", "Mon 14 Jun", "Mon 21 Jun"};
    for (int column = 0; column < static_cast<int>(days.size()); ++column)
        EXPECT_EQ(weekCell(4, column), days[static_cast<std::size_t>(column)]);
    EXPECT_EQ(weekCell(4, 6), "none");
    EXPECT_EQ(weekCell(2, 1), "Sat 5 Jun, free day");
    EXPECT_EQ(settings_->freeWeekdays(),
              (std::array<bool, 7>{false, false, false, false, false, true, true}));
}

TEST_F(BatchEditorTest, WithOpenBroodItSaysOneLookOnSaturday) {
    auto& editor = plan();
    fillFriday();
    noWeekend();
    choose(editor.form().makeUp(), QStringLiteral("for this batch, with open"));
    ASSERT_TRUE(waitForSum(QStringLiteral("one look on Saturday")))
        << editor_->weekSum().toStdString();
    EXPECT_TRUE(editor_->weekSum().contains(QStringLiteral("Friday 11 June")));
}

TEST_F(BatchEditorTest, AStarterEmptiedTheDayAfterLeavesNoDay) {
    auto& editor = plan();
    fillFriday();
    noWeekend();
    choose(editor.form().method(), QStringLiteral("starter and finisher"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.bars().count() == 1; }, kPatience));
    QTest::qWait(20);
    choose(editor.bars().builder(0, 0), QStringLiteral("Start"));
    choose(editor.bars().builder(0, 1), QStringLiteral("Finish"));
    ASSERT_TRUE(waitForSum(QStringLiteral("Every graft day brings work on a free day")))
        << editor_->weekSum().toStdString();
    EXPECT_TRUE(editor_->weekSum().contains(QStringLiteral("move cells on Saturday")))
        << editor_->weekSum().toStdString();
}

TEST_F(BatchEditorTest, AnotherDayIsTakenFromTheWeekByKey) {
    auto& editor = plan();
    fillFriday();
    ASSERT_TRUE(waitForWeek());
    editor.week().setCurrentCell(1, 0);
    QTest::keyClick(&editor.week(), Qt::Key_Return);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return editor.draft().day == day("2027-06-08"); }, kPatience));
    EXPECT_TRUE(editor.isVisible()) << "Enter in the list does not save";
}

TEST_F(BatchEditorTest, TheCatchIsReadWholeWithItsNucDays) {
    auto& editor = plan();
    fillFriday();
    ASSERT_TRUE(waitForWeek());
    auto& rule = editor.form().catchRule();
    QStyleOptionComboBox option;
    option.initFrom(&rule);
    option.rect = rule.rect();
    const int room =
        rule.style()
            ->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &rule)
            .width();
    for (int i = 0; i < rule.count(); ++i)
        EXPECT_LE(rule.fontMetrics().horizontalAdvance(rule.itemText(i)), room)
            << rule.itemText(i).toStdString();
}

TEST_F(BatchEditorTest, PlansBackwardFromADayWanted) {
    auto& editor = plan();
    fillFriday();
    choose(editor.form().direction(), QStringLiteral("backward"));
    choose(editor.form().wantedEvent(), QStringLiteral("ripe cells"));
    setDay(editor.form().wantedDay(), "2027-07-05");
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.draft().day == day("2027-06-25"); }, kPatience))
        << toText(editor.draft().day);
    EXPECT_FALSE(editor.form().dayField().isEnabled());
    EXPECT_EQ(dateOf(Event::Ripe), "Mon 5 Jul 15:00");
}

TEST_F(BatchEditorTest, OffersTheNearestDaysThatClashWithNothing) {
    plan();
    fillFriday();
    QTest::mouseClick(&editor_->saveButton(), Qt::LeftButton);
    auto& second = plan("2027-06-12");
    second.form().makeUp().setCurrentIndex(0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return second.nearest().size() == 3; }, kPatience));
    EXPECT_TRUE(second.clashesText().startsWith(QStringLiteral("▲"))) << "the box is not free";
    const auto words = second.nearest()[0]->text();
    QTest::mouseClick(second.nearest()[0], Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return words.startsWith(weekdayAndDay(second.draft().day)); },
                                kPatience));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return second.clashesText().startsWith(QStringLiteral("Nothing")); }, kPatience))
        << second.clashesText().toStdString();
}

TEST_F(BatchEditorTest, RepeatsAsOneUndoStep) {
    const auto before = desk_->snapshot();
    auto& editor = plan();
    fillFriday();
    type(editor.repeatEvery(), QStringLiteral("4"));
    type(editor.repeatMore(), QStringLiteral("3"));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    EXPECT_EQ(desk_->snapshot().all<Batch>().size(), 4U);
    EXPECT_EQ(findByLabel<Batch>(desk_->snapshot(), "4")->day, day("2027-06-23"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(BatchEditorTest, BarsComeAndGoByButtons) {
    auto& editor = plan();
    fillFriday();
    QTest::mouseClick(&editor.bars().addButton(), Qt::LeftButton);
    QTest::mouseClick(&editor.bars().addButton(), Qt::LeftButton);
    ASSERT_EQ(editor.bars().count(), 3);
    type(editor.bars().grafts(1), QStringLiteral("7"));
    type(editor.bars().grafts(2), QStringLiteral("8"));
    QTest::mouseClick(&editor.bars().removeButton(0), Qt::LeftButton);
    ASSERT_EQ(editor.bars().count(), 2);
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    const auto batch = findByLabel<Batch>(desk_->snapshot(), "1");
    ASSERT_TRUE(batch);
    const auto saved = draftOf(desk_->snapshot(), batch->id);
    ASSERT_EQ(saved.bars.size(), 2U);
    EXPECT_EQ(saved.bars[0].cells, Cells{7});
    EXPECT_EQ(saved.bars[1].cells, Cells{8});
}

TEST_F(BatchEditorTest, ChangesABatchAndDeletesItWhenAsked) {
    plan();
    fillFriday();
    QTest::mouseClick(&editor_->saveButton(), Qt::LeftButton);
    auto& editor = edit("1");
    ASSERT_TRUE(settled());
    EXPECT_FALSE(editor.saveButton().isEnabled()) << "nothing has changed";
    type(editor.bars().grafts(0), QStringLiteral("33"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.saveButton().isEnabled(); }, kPatience));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    EXPECT_EQ((*desk_->snapshot().all<BatchBar>().begin())->cells, Cells{33});

    auto& again = edit("1");
    QString asked;
    bool answer = false;
    again.setQuestion([&](const QString& question) { return asked = question, answer; });
    QTest::mouseClick(&again.deleteButton(), Qt::LeftButton);
    EXPECT_TRUE(asked.contains(QStringLiteral("Delete batch 1?")));
    EXPECT_EQ(desk_->snapshot().all<Batch>().size(), 1U);
    answer = true;
    QTest::mouseClick(&again.deleteButton(), Qt::LeftButton);
    EXPECT_TRUE(desk_->snapshot().all<Batch>().empty());
    EXPECT_FALSE(again.isVisible());
}

TEST_F(BatchEditorTest, ATakenLabelIsToldAndNotSaved) {
    plan();
    fillFriday();
    QTest::mouseClick(&editor_->saveButton(), Qt::LeftButton);
    auto& editor = plan("2027-07-20");
    editor.form().label().selectAll();
    QTest::keyClicks(&editor.form().label(), QStringLiteral("1"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return editor.told().contains(QStringLiteral("is there already")); }, kPatience));
    EXPECT_FALSE(editor.saveButton().isEnabled());
    EXPECT_FALSE(desk_->isPreviewing());
}

TEST_F(GraftedBatch, KeepsItsGraftAndTakesACount) {
    auto& editor = edit("1");
    ASSERT_TRUE(settled());
    EXPECT_FALSE(editor.form().dayField().isEnabled());
    EXPECT_FALSE(editor.form().hour().isEnabled());
    EXPECT_FALSE(editor.form().method().isEnabled());
    EXPECT_TRUE(editor.told().contains(QStringLiteral("graft is recorded")));
    ASSERT_TRUE(editor.bars().take(0).isEnabled());
    type(editor.bars().take(0), QStringLiteral("17"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.saveButton().isEnabled(); }, kPatience));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    const auto count = takeCountOf(desk_->snapshot(), test::id<Batch>(1), 1, true);
    ASSERT_TRUE(count);
    EXPECT_EQ(count->count, Cells{17});
    EXPECT_EQ(count->day, day("2027-06-13"));
}

TEST_F(GraftedBatch, CanOnlyBeReadInABookForReading) {
    const auto path = path_;
    desk_.reset();
    OpenOptions options = test::fixedOptions(Access::ReadOnly);
    desk_ = Desk::open(path, options).value();
    auto& editor = edit("1");
    ASSERT_TRUE(settled());
    EXPECT_GT(editor.dates().rowCount(), 10);
    EXPECT_FALSE(editor.saveButton().isEnabled());
    EXPECT_FALSE(editor.deleteButton().isEnabled());
    EXPECT_TRUE(editor.told().contains(QStringLiteral("for reading only")));
}

TEST_F(BatchEditorTest, WhyThisDayFollowsWhatIsTyped) {
    auto& editor = plan();
    fillFriday();
    ASSERT_TRUE(settled());
    editor.dates().setCurrentCell(3, 0);
    QTest::keyClick(&editor.dates(), Qt::Key_W);
    ASSERT_NE(editor.why(), nullptr);
    EXPECT_EQ(editor.why()->chosen(), Event::Graft);
    EXPECT_EQ(editor.why()->batch(), editor.draft().id);
    type(editor.form().hour(), QStringLiteral("9"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            return editor.why()->events().item(3, 3)->text() == QStringLiteral("Fri 11 Jun 9:00");
        },
        kPatience));
}

TEST_F(BatchEditorTest, ClosingWhileTheSearchRunsIsSafe) {
    for (int i = 0; i < 20; ++i) {
        plan();
        QTest::qWait(i % 3);
        editor_.reset();
    }
    QTest::qWait(50);
    EXPECT_FALSE(desk_->isPreviewing());
}

}  // namespace
}  // namespace tenthday
