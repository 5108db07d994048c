#include <gtest/gtest.h>

#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>

#include "app/setup/setup_page_fixture.h"
#include "setup/in_use_dialog.h"
#include "weather/flying_seasons.h"

namespace tenthday {
namespace {

using test::day;
using test::SetupPageTest;

TEST_F(SetupPageTest, AFirstYardIsAddedByKeys) {
    openEmpty();
    EXPECT_TRUE(page_->emptyText().startsWith(QStringLiteral("No yard yet")));
    page_->table().setFocus();
    QTest::keyClick(page_.get(), Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(page_->form().isOpen());
    auto* label = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(label, nullptr);
    QTest::keyClicks(label, QStringLiteral("Orchard"));
    EXPECT_TRUE(page_->form().isDirty());
    QTest::keyClick(label, Qt::Key_Return);
    ASSERT_EQ(desk_->snapshot().all<Yard>().size(), 1U) << page_->form().told().toStdString();
    EXPECT_EQ((*desk_->snapshot().all<Yard>().begin())->label, "Orchard");
    EXPECT_TRUE(page_->emptyText().isEmpty());
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().all<Yard>().empty());
    EXPECT_TRUE(page_->emptyText().startsWith(QStringLiteral("No yard yet")));
}

TEST_F(SetupPageTest, ADozenBoxesAreOneEdit) {
    openExample();
    const auto before = desk_->snapshot().all<Box>().size();
    goTo(setup_text::Kind::Boxes);
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    type(setup_text::name(setup_text::Name::FirstLabel), QStringLiteral("Z01"));
    type(setup_text::name(setup_text::Name::HowMany), QStringLiteral("12"));
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    EXPECT_EQ(desk_->snapshot().all<Box>().size(), before + 12)
        << page_->form().told().toStdString();
    EXPECT_TRUE(findByLabel<Box>(desk_->snapshot(), "Z12"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().all<Box>().size(), before);
}

TEST_F(SetupPageTest, ATakenLabelIsToldBesideItsField) {
    openExample();
    const auto taken = (*desk_->snapshot().all<Yard>().begin())->label;
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    type(setup_text::name(setup_text::Name::Label), QString::fromStdString(taken));
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    EXPECT_FALSE(desk_->canUndo());
    EXPECT_TRUE(page_->form().under(0).contains(QString::fromStdString(taken)))
        << page_->form().under(0).toStdString();
}

TEST_F(SetupPageTest, EscapeDiscardsAndSaveKeeps) {
    openExample();
    goTo(setup_text::Kind::Builders);
    const auto first = (*desk_->snapshot().all<Builder>().begin())->label;
    chooseRow(QString::fromStdString(first));
    type(setup_text::name(setup_text::Name::Label), QStringLiteral("Changed"));
    QTest::keyClick(&field<QLineEdit>(setup_text::name(setup_text::Name::Label)), Qt::Key_Escape);
    EXPECT_FALSE(page_->form().isDirty());
    EXPECT_FALSE(desk_->canUndo());
    type(setup_text::name(setup_text::Name::Label), QStringLiteral("Changed"));
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(findByLabel<Builder>(desk_->snapshot(), "Changed"))
        << page_->form().told().toStdString();
    EXPECT_FALSE(page_->form().isDirty());
}

TEST_F(SetupPageTest, WhatIsInUseIsNotDeletedButRetired) {
    openExample();
    goTo(setup_text::Kind::Builders);
    Ptr<Builder> used;
    for (const auto& load : desk_->snapshot().all<BatchLoad>())
        used = desk_->snapshot().find(load->builder);
    ASSERT_TRUE(used);
    chooseRow(QString::fromStdString(used->label));
    QString words;
    answerNext<InUseDialog>([&](InUseDialog& dialog) {
        for (const auto* label : dialog.findChildren<QLabel*>()) words += label->text() + u'\n';
        QTest::keyClick(&dialog, Qt::Key_Return);
    });
    QTest::mouseClick(&page_->removeButton(), Qt::LeftButton);
    ASSERT_TRUE(answered_);
    EXPECT_TRUE(words.contains(QStringLiteral("is in use"))) << words.toStdString();
    const auto after = desk_->snapshot().find(used->id);
    ASSERT_TRUE(after);
    EXPECT_EQ(after->until, desk_->snapshot().today() - Days{1});
}

TEST_F(SetupPageTest, WhatIsUnusedIsDeletedAndComesBack) {
    openExample();
    goTo(setup_text::Kind::DaysOff);
    const auto before = desk_->snapshot();
    ASSERT_FALSE(before.all<DayOff>().empty());
    page_->table().setFocus();
    QTest::keyClick(&page_->table(), Qt::Key_Delete);
    EXPECT_EQ(desk_->snapshot().all<DayOff>().size(), before.all<DayOff>().size() - 1);
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(SetupPageTest, TheNextSeasonIsAddedAndOneWithBatchesStays) {
    openExample();
    goTo(setup_text::Kind::Seasons);
    const auto before = desk_->snapshot().all<Season>().size();
    QTest::mouseClick(&page_->addButton(), Qt::LeftButton);
    QTest::mouseClick(&page_->form().saveButton(), Qt::LeftButton);
    ASSERT_EQ(desk_->snapshot().all<Season>().size(), before + 1)
        << page_->form().told().toStdString();
    const auto next = findByLabel<Season>(desk_->snapshot(), "2028");
    ASSERT_TRUE(next);
    EXPECT_EQ(yearsBefore(next->from, 1), desk_->snapshot().season().first);
    // The one with batches cannot be made so short that they would stand in none.
    chooseRow(QStringLiteral("2027"));
    auto& until = field<QLineEdit>(setup_text::name(setup_text::Name::Until));
    until.setFocus();
    until.selectAll();
    QTest::keyClicks(&until, setup_text::day(desk_->snapshot().season().first + Days{20}));
    QTest::keyClick(&until, Qt::Key_Return);
    EXPECT_TRUE(page_->form().isDirty());
    EXPECT_EQ(findByLabel<Season>(desk_->snapshot(), "2027")->until,
              desk_->snapshot().season().last);
    page_->form().discardButton().click();
    page_->table().setFocus();
    QTest::keyClick(&page_->table(), Qt::Key_Delete);
    EXPECT_TRUE(findByLabel<Season>(desk_->snapshot(), "2027"));
}

TEST_F(SetupPageTest, AUsedMethodIsCopied) {
    openExample();
    goTo(setup_text::Kind::Methods);
    const auto used = desk_->snapshot().find((*desk_->snapshot().all<Batch>().begin())->method);
    const auto methods = desk_->snapshot().all<Method>().size();
    chooseRow(QString::fromStdString(used->label));
    auto spins = page_->form().findChildren<QSpinBox*>();
    ASSERT_FALSE(spins.empty());
    auto* rest = spins.back();
    rest->setFocus();
    rest->selectAll();
    QTest::keyClicks(rest, QStringLiteral("9"));
    QTest::keyClick(page_.get(), Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(desk_->snapshot().all<Method>().size(), methods + 1)
        << page_->form().told().toStdString();
    EXPECT_EQ(desk_->snapshot().find(used->id)->label, used->label);
}

TEST_F(SetupPageTest, LeavingUnsavedAsks) {
    openExample();
    type(setup_text::name(setup_text::Name::Label), QStringLiteral("Changed"));
    answerNext<QMessageBox>([](QMessageBox& box) { QTest::keyClick(&box, Qt::Key_Escape); });
    EXPECT_FALSE(page_->mayLeave());
    EXPECT_TRUE(answered_);
    EXPECT_TRUE(page_->form().isDirty());
}

TEST_F(SetupPageTest, AnEditElsewhereIsFollowed) {
    openExample();
    const auto yard = *desk_->snapshot().all<Yard>().begin();
    ChangeSet changes;
    auto edited = *yard;
    edited.label = "Elsewhere";
    changes.edit(yard, edited);
    ASSERT_TRUE(desk_->apply(changes));
    chooseRow(QStringLiteral("Elsewhere"));
}

TEST_F(SetupPageTest, ABookForReadingIsOnlyShown) {
    openExample(Access::ReadOnly);
    EXPECT_FALSE(page_->addButton().isEnabled());
    EXPECT_FALSE(page_->removeButton().isEnabled());
    EXPECT_FALSE(page_->form().saveButton().isEnabled());
    EXPECT_TRUE(page_->form().told().contains(QStringLiteral("for reading only")));
}

TEST_F(SetupPageTest, EveryFormIsReadWithoutScrollingSideways) {
    openExample();
    page_->resize(1248, 640);  // of a window on a screen of 1366 x 768
    for (int kind = 0; kind < page_->kinds().count(); ++kind) {
        goTo(static_cast<setup_text::Kind>(kind));
        for (int i = 0; i < 5; ++i) QApplication::processEvents();
        for (auto* area : page_->form().findChildren<QScrollArea*>())
            EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0)
                << page_->kinds().currentItem()->text().toStdString();
    }
}

}  // namespace
}  // namespace tenthday
