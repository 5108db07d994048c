// Days for mating in the batch editor, by keys and clicks.
#include "batches/stays_form.h"

#include <gtest/gtest.h>

#include "app/batches/batch_editor_fixture.h"

namespace tenthday {
namespace {

using test::BatchEditorTest;
using test::day;
using test::GraftedBatch;
using test::kPatience;

class StaysInTheEditor : public BatchEditorTest {
protected:
    StaysForm& stays() { return editor_->form().stays(); }
    void mate(const char* way) {
        choose(editor_->form().mating(), QString::fromLatin1(way));
        ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->isPreviewing(); }, kPatience));
        QTest::qWait(20);
    }
    /// A planned batch as the other tests have it: out on Wed 23 June at 21:00.
    BatchEditor& planFriday() {
        auto& editor = plan();
        fillFriday();
        return editor;
    }
    Day fromOf(int stay) { return fromQDate(stays().from(stay).date()); }
    Day untilOf(int stay) { return fromQDate(stays().until(stay).date()); }
    Ptr<MatingStay> onlyStay() {
        const auto& all = desk_->snapshot().all<MatingStay>();
        EXPECT_EQ(all.size(), 1U);
        return all.empty() ? nullptr : *all.begin();
    }
};

TEST_F(StaysInTheEditor, AreHiddenWhileQueensMateInTheOpen) {
    planFriday();
    EXPECT_FALSE(stays().isVisible());
    mate("at a mating station");
    QCoreApplication::processEvents();  // what is new in a layout is shown then
    EXPECT_TRUE(stays().isVisible());
    EXPECT_TRUE(stays().from(0).isVisible());
    mate("open");
    EXPECT_FALSE(stays().isVisible());
}

TEST_F(StaysInTheEditor, AStationIsSuggestedAndSavedAsOneEdit) {
    const auto before = desk_->snapshot();
    auto& editor = planFriday();
    mate("at a mating station");
    ASSERT_EQ(stays().count(), 1);
    // Out on 23 June in the evening: due to fly from the 29th on, the latest on 2 July.
    EXPECT_EQ(fromOf(0), day("2027-06-28"));
    EXPECT_EQ(untilOf(0), day("2027-07-09"));
    EXPECT_TRUE(stays().told().startsWith(QStringLiteral("9 of 10 virgins are due to fly from")))
        << stays().told().toStdString();
    choose(stays().yard(0), QStringLiteral("Mill"));
    setDay(stays().until(0), "2027-07-10");
    QTest::keyClick(&editor, Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(editor.result(), QDialog::Accepted) << editor.told().toStdString();
    const auto stay = onlyStay();
    ASSERT_TRUE(stay);
    EXPECT_EQ(stay->yard, test::id<Yard>(1));
    EXPECT_EQ(stay->from, day("2027-06-28"));
    EXPECT_EQ(stay->until, day("2027-07-10"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(StaysInTheEditor, TheDatesFollow) {
    planFriday();
    mate("at a mating station");
    setDay(stays().until(0), "2027-07-20");
    setDay(stays().from(0), "2027-07-10");
    ASSERT_TRUE(QTest::qWaitFor([&] { return dateOf(Event::FirstEggs).starts_with("Tue 13 Jul"); },
                                kPatience))
        << dateOf(Event::FirstEggs);
    mate("by insemination");
    ASSERT_EQ(stays().count(), 1);
    setDay(stays().until(0), "2027-07-05");
    ASSERT_TRUE(QTest::qWaitFor([&] { return dateOf(Event::FirstEggs).starts_with("Thu 8 Jul"); },
                                kPatience))
        << dateOf(Event::FirstEggs);
    // Back again: the days at the station are not lost.
    mate("at a mating station");
    EXPECT_EQ(fromOf(0), day("2027-07-10"));
}

TEST_F(StaysInTheEditor, TheDaysMoveWithTheGraftWhileItIsPlanned) {
    auto& editor = planFriday();
    mate("at a mating station");
    setDay(editor.form().dayField(), "2027-06-14");
    ASSERT_TRUE(QTest::qWaitFor([&] { return fromOf(0) == day("2027-07-01"); }, kPatience));
    EXPECT_EQ(untilOf(0), day("2027-07-12"));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    EXPECT_EQ(onlyStay()->from, day("2027-07-01"));
    auto& again = edit("1");
    ASSERT_TRUE(settled());
    EXPECT_EQ(fromOf(0), day("2027-07-01"));
    EXPECT_FALSE(again.saveButton().isEnabled()) << "nothing has changed";
}

TEST_F(StaysInTheEditor, RepeatsShiftThem) {
    auto& editor = planFriday();
    mate("by insemination");
    const Day first = fromOf(0);
    type(editor.repeatEvery(), QStringLiteral("5"));
    type(editor.repeatMore(), QStringLiteral("1"));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    std::vector<Day> days;
    for (const auto& stay : desk_->snapshot().all<MatingStay>()) days.push_back(stay->until);
    std::sort(days.begin(), days.end());
    EXPECT_EQ(days, (std::vector{first, first + Days{5}}));
}

TEST_F(StaysInTheEditor, ComeAndGoByButtonsInTheOrderOfTheKeyboard) {
    auto& editor = planFriday();
    mate("at a mating station");
    QTest::mouseClick(&stays().addButton(), Qt::LeftButton);
    ASSERT_EQ(stays().count(), 2);
    EXPECT_EQ(fromOf(1), untilOf(0) + Days{1});
    QTest::qWait(20);  // until the new fields are shown
    editor.form().mating().setFocus();
    QTest::keyClick(&editor.form().mating(), Qt::Key_Tab);
    EXPECT_TRUE(stays().yard(0).hasFocus());
    EXPECT_EQ(stays().from(1).accessibleName(), QStringLiteral("Stay 2, Brought there"));
    QTest::mouseClick(&stays().removeButton(0), Qt::LeftButton);
    QTest::qWait(20);
    QTest::mouseClick(&stays().removeButton(0), Qt::LeftButton);
    EXPECT_EQ(stays().count(), 0);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return stays().told().contains(QStringLiteral("No days yet")); }, kPatience));
    QTest::mouseClick(&stays().addButton(), Qt::LeftButton);  // suggests
    ASSERT_TRUE(QTest::qWaitFor([&] { return stays().count() == 1; }, kPatience));
    EXPECT_EQ(fromOf(0), day("2027-06-28"));
}

TEST_F(StaysInTheEditor, AnEndBeforeTheBeginningFollows) {
    planFriday();
    mate("at a mating station");
    setDay(stays().from(0), "2027-07-15");
    EXPECT_EQ(untilOf(0), day("2027-07-15"));
    setDay(stays().until(0), "2027-07-12");
    EXPECT_EQ(untilOf(0), day("2027-07-15")) << "no day before the first can be chosen";
}

TEST_F(StaysInTheEditor, GoWithTheWayOfMating) {
    auto& editor = planFriday();
    mate("at a mating station");
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    auto& again = edit("1");
    ASSERT_TRUE(settled());
    mate("open");
    QTest::mouseClick(&again.saveButton(), Qt::LeftButton);
    EXPECT_TRUE(desk_->snapshot().all<MatingStay>().empty());
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().all<MatingStay>().size(), 1U);
}

TEST_F(GraftedBatch, CanStillBeBroughtToAStation) {
    auto& editor = edit("1");
    ASSERT_TRUE(settled());
    choose(editor.form().mating(), QStringLiteral("at a mating station"));
    auto& stays = editor.form().stays();
    ASSERT_TRUE(QTest::qWaitFor([&] { return stays.count() == 1; }, kPatience));
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.saveButton().isEnabled(); }, kPatience));
    QTest::mouseClick(&editor.saveButton(), Qt::LeftButton);
    EXPECT_EQ(desk_->snapshot().all<MatingStay>().size(), 1U);
}

}  // namespace
}  // namespace tenthday
