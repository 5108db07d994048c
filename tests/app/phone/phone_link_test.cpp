// The dialog and the calendar kept beside an open book.
#include "phone/phone_link.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

#include "app/book/book_fixture.h"
#include "book/finished_file.h"
#include "records/verbs.h"
#include "support/ical.h"

namespace tenthday {
namespace {

using test::day;

constexpr int kPatience = 5'000;  // ms

class PhoneLinkTest : public test::BookTest {
protected:
    void SetUp() override {
        book_ = makeSmallBook();
        file_ = at(QStringLiteral("mill.ics"));
        openBook();
        window_.show();
    }
    void TearDown() override { closeBook(); }
    void closeBook() {
        link_.reset();
        desk_.reset();
    }
    void openBook(Access access = Access::ReadWrite) {
        closeBook();
        desk_ = Desk::open(book_, test::fixedOptions(access)).value();
        link_ = std::make_unique<PhoneLink>(*desk_, settings_, window_, [this] {
            ++asked_;
            return QDateTime({2027, 6, 1}, {8, 30}, Qt::UTC);
        });
    }
    CalendarDialog& ask() {
        link_->ask();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(link_->dialog()));
        return *link_->dialog();
    }
    /// Keeps the calendar as the dialog proposes.
    void keep() {
        ask().accept();
        ASSERT_NE(link_->keeper(), nullptr);
        (void)link_->keeper()->writeNow();
        asked_ = 0;
    }
    Result<void> moveTo(std::string_view on) {
        return desk_->apply(moveBatch(desk_->snapshot(), test::kBatch, day(on)).value());
    }
    /// Of the graft.
    std::string graftIn(const QString& path) const {
        const auto text = readWhole(path);
        if (!text) return text.error().text;
        const test::Ical read(text.value());
        for (auto* event : read.events())
            if (std::string(icalcomponent_get_uid(event)).starts_with("graft-"))
                return test::startOf(event) + " " + std::to_string(test::sequenceOf(event));
        return "no graft";
    }
    bool waitFor(const std::string& graft) {
        return QTest::qWaitFor([&] { return graftIn(file_) == graft; }, kPatience);
    }

    QString book_;
    QString file_;
    int asked_ = 0;  ///< once for each try to write
    QWidget window_;
    Settings settings_{
        std::make_unique<QSettings>(at(QStringLiteral("settings.ini")), QSettings::IniFormat)};
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<PhoneLink> link_;
};

TEST_F(PhoneLinkTest, ItProposesAFileBesideTheBookAndKeepsIt) {
    QSignalSpy told(link_.get(), &PhoneLink::told);
    auto& dialog = ask();
    EXPECT_EQ(dialog.file().text().toStdString(), file_.toStdString());
    EXPECT_TRUE(dialog.file().hasFocus());
    EXPECT_TRUE(dialog.keep().isChecked());
    EXPECT_FALSE(dialog.stopButton().isVisible());
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(graftIn(file_), "20270604T140000 0");
    ASSERT_EQ(told.size(), 1);
    EXPECT_TRUE(told[0][0].toString().contains(file_));
    EXPECT_EQ(settings_.keptCalendar(book_), (KeptCalendar{file_, {}}));
    ASSERT_NE(link_->keeper(), nullptr);
}

TEST_F(PhoneLinkTest, WithoutKeepingItIsWrittenOnce) {
    auto& dialog = ask();
    dialog.keep().setChecked(false);
    dialog.accept();
    EXPECT_EQ(graftIn(file_), "20270604T140000 0");
    EXPECT_EQ(link_->keeper(), nullptr);
    EXPECT_FALSE(settings_.keptCalendar(book_));
}

TEST_F(PhoneLinkTest, ABareNameIsBesideTheBookAndGetsItsEnding) {
    auto& dialog = ask();
    dialog.file().setText(QStringLiteral(" queens "));
    dialog.accept();
    EXPECT_EQ(graftIn(at(QStringLiteral("queens.ics"))), "20270604T140000 0");
}

TEST_F(PhoneLinkTest, KindsAndHoursAreChosenAndComeBackNextTime) {
    auto* dialog = &ask();
    dialog->none().click();
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible()) << "a calendar of nothing";
    EXPECT_FALSE(dialog->told().isEmpty());
    EXPECT_FALSE(QFile::exists(file_));
    dialog->kind(TaskRule::Graft).setChecked(true);
    dialog->allDay().setChecked(true);
    dialog->accept();
    EXPECT_EQ(graftIn(file_), "20270604 0");
    EXPECT_EQ(test::Ical(readWhole(file_).value()).events().size(), 1U);
    openBook();
    dialog = &ask();
    EXPECT_TRUE(dialog->kind(TaskRule::Graft).isChecked());
    EXPECT_FALSE(dialog->kind(TaskRule::CellsOut).isChecked());
    EXPECT_TRUE(dialog->allDay().isChecked());
    EXPECT_TRUE(dialog->stopButton().isVisible());
}

TEST_F(PhoneLinkTest, AFileThatIsNotOursIsRefusedInTheDialogWhichStays) {
    ASSERT_TRUE(writeWhole(file_, "Buy sugar\n"));
    auto& dialog = ask();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.told().contains(QStringLiteral("it is left as it is")));
    EXPECT_EQ(readWhole(file_).value(), "Buy sugar\n");
    EXPECT_EQ(link_->keeper(), nullptr);
}

TEST_F(PhoneLinkTest, EditsInQuickSuccessionAreWrittenOnceAndSoIsUndo) {
    keep();
    ASSERT_TRUE(moveTo("2027-06-05"));
    ASSERT_TRUE(moveTo("2027-06-06"));
    ASSERT_TRUE(moveTo("2027-06-07"));
    EXPECT_EQ(graftIn(file_), "20270604T140000 0") << "not while edits come";
    EXPECT_TRUE(waitFor("20270607T140000 1"));
    EXPECT_EQ(asked_, 1);
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(waitFor("20270606T140000 2"));
}

TEST_F(PhoneLinkTest, APreviewIsNeverWritten) {
    keep();
    const auto move = moveBatch(desk_->snapshot(), test::kBatch, day("2027-06-09"));
    ASSERT_TRUE(desk_->preview(move.value()));
    QTest::qWait(2 * CalendarKeeper::kRest);
    EXPECT_EQ(asked_, 0);
    // Nor along with something that is.
    ASSERT_TRUE(desk_->preview(std::nullopt));
    ASSERT_TRUE(moveTo("2027-06-05"));
    ASSERT_TRUE(
        desk_->preview(moveBatch(desk_->snapshot(), test::kBatch, day("2027-06-09")).value()));
    EXPECT_TRUE(waitFor("20270605T140000 1"));
}

TEST_F(PhoneLinkTest, WhatStillWaitsIsWrittenWhenTheBookCloses) {
    keep();
    ASSERT_TRUE(moveTo("2027-06-05"));
    closeBook();
    EXPECT_EQ(graftIn(file_), "20270605T140000 1");
}

TEST_F(PhoneLinkTest, TheNextOpeningKeepsItAgain) {
    keep();
    closeBook();
    {
        const auto other = open(book_);
        const auto move = moveBatch(other->read().value(), test::kBatch, day("2027-06-10"));
        ASSERT_TRUE(other->write(move.value()));
    }
    openBook();
    ASSERT_NE(link_->keeper(), nullptr);
    EXPECT_TRUE(waitFor("20270610T140000 1"));
}

TEST_F(PhoneLinkTest, AFailureIsToldOnceAndSeenUntilItIsOver) {
    keep();
    QSignalSpy told(link_.get(), &PhoneLink::told);
    QSignalSpy state(link_.get(), &PhoneLink::outOfDate);
    const auto ours = readWhole(file_).value();
    ASSERT_TRUE(writeWhole(file_, "Buy sugar\n"));
    ASSERT_TRUE(moveTo("2027-06-05"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.size() == 1; }, kPatience));
    EXPECT_TRUE(told[0][0].toString().contains(file_));
    ASSERT_EQ(state.size(), 1);
    EXPECT_FALSE(state[0][0].toString().isEmpty());
    EXPECT_FALSE(link_->keeper()->writeNow().ok());
    EXPECT_EQ(told.size(), 1) << "the same again is no news";
    EXPECT_EQ(desk_->snapshot().find(test::kBatch)->day, day("2027-06-05")) << "the edit stands";
    ASSERT_TRUE(writeWhole(file_, QByteArray::fromStdString(ours)));
    ASSERT_TRUE(moveTo("2027-06-06"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return state.size() == 2; }, kPatience));
    EXPECT_TRUE(state[1][0].toString().isEmpty());
    EXPECT_EQ(graftIn(file_), "20270606T140000 1");
}

TEST_F(PhoneLinkTest, StoppedItLeavesTheFileAsItIs) {
    keep();
    auto& dialog = ask();
    QTest::mouseClick(&dialog.stopButton(), Qt::LeftButton);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(link_->keeper(), nullptr);
    EXPECT_FALSE(settings_.keptCalendar(book_));
    ASSERT_TRUE(moveTo("2027-06-05"));
    QTest::qWait(2 * CalendarKeeper::kRest);
    EXPECT_EQ(graftIn(file_), "20270604T140000 0");
}

TEST_F(PhoneLinkTest, ABookOpenForReadingKeepsNothing) {
    keep();
    openBook(Access::ReadOnly);
    EXPECT_EQ(link_->keeper(), nullptr);
    auto& dialog = ask();
    EXPECT_FALSE(dialog.keep().isEnabled());
    EXPECT_FALSE(dialog.keep().isChecked());
    dialog.file().setText(QStringLiteral("once"));
    dialog.accept();
    EXPECT_EQ(graftIn(at(QStringLiteral("once.ics"))), "20270604T140000 0");
    EXPECT_EQ(settings_.keptCalendar(book_), (KeptCalendar{file_, {}})) << "of the first window";
}

}  // namespace
}  // namespace tenthday
