// Ways to a book: recent books by keys, a new book, closing one.
#include "window/welcome_page.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QComboBox>
#include <QDateEdit>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>

#include "app/book/book_fixture.h"
#include "window/main_window.h"
#include "window/new_book_dialog.h"

namespace tenthday {
namespace {

using test::day;

class WelcomeTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        reopen();
    }
    void TearDown() override {
        window_.reset();
        QLocale::setDefault(QLocale::c());
    }
    void reopen() {
        window_.reset();
        const Clock clock(std::nullopt, [] { return day("2027-06-01"); });
        window_ = std::make_unique<MainWindow>(
            Settings(std::make_unique<QSettings>(at(QStringLiteral("settings.ini")),
                                                 QSettings::IniFormat)),
            clock, nullptr);
        window_->show();
    }
    QListWidget& recent() { return window_->welcome().recent(); }

    std::unique_ptr<MainWindow> window_;
};

TEST_F(WelcomeTest, BooksOpenedLatelyAreOpenedAgainByKey) {
    EXPECT_FALSE(recent().isVisible()) << "none yet";
    const auto first = makeSmallBook(QStringLiteral("first.tenthday"));
    const auto second = makeSmallBook(QStringLiteral("second.tenthday"));
    ASSERT_TRUE(window_->open(first));
    ASSERT_TRUE(window_->open(second));
    window_->actions().closeBook->trigger();
    EXPECT_EQ(window_->desk(), nullptr);
    ASSERT_TRUE(recent().isVisible());
    ASSERT_EQ(recent().count(), 2);
    EXPECT_TRUE(recent().item(0)->text().contains(QStringLiteral("second.tenthday")))
        << recent().item(0)->text().toStdString();
    recent().setFocus();
    QTest::keyClick(&recent(), Qt::Key_Down);
    QTest::keyClick(&recent(), Qt::Key_Return);
    ASSERT_NE(window_->desk(), nullptr);
    EXPECT_EQ(window_->desk()->path(), first);
}

TEST_F(WelcomeTest, AMissingBookIsToldAndTakenOffByKey) {
    const auto path = makeSmallBook();
    ASSERT_TRUE(window_->open(path));
    window_->actions().closeBook->trigger();
    reopen();
    ASSERT_TRUE(QFile::remove(path));
    reopen();
    window_->start({});
    EXPECT_EQ(window_->desk(), nullptr);
    ASSERT_EQ(recent().count(), 1);
    EXPECT_TRUE(recent().item(0)->text().contains(QStringLiteral("not found")));
    QTest::keyClick(&recent(), Qt::Key_Delete);
    EXPECT_EQ(recent().count(), 0);
    reopen();
    EXPECT_EQ(recent().count(), 0) << "for good";
}

TEST_F(WelcomeTest, TheMouseOpensAndTakesOffToo) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    window_->actions().closeBook->trigger();
    ASSERT_EQ(recent().contextMenuPolicy(), Qt::ActionsContextMenu);
    ASSERT_EQ(recent().actions().size(), 2);
    recent().actions().at(0)->trigger();
    ASSERT_NE(window_->desk(), nullptr);
    window_->actions().closeBook->trigger();
    recent().actions().at(1)->trigger();
    EXPECT_EQ(recent().count(), 0);
}

TEST_F(WelcomeTest, FitsASmallWindow) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    window_->actions().closeBook->trigger();
    EXPECT_LT(window_->welcome().minimumSizeHint().height(), 300);
    for (int i = 0; i < recent().count(); ++i)
        EXPECT_LE(recent().visualItemRect(recent().item(i)).right(), recent().viewport()->width());
}

TEST_F(WelcomeTest, AClosedBookIsNotOpenedAtTheNextStart) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    QTest::keyClick(window_.get(), Qt::Key_W, Qt::ControlModifier);
    ASSERT_EQ(window_->desk(), nullptr);
    EXPECT_FALSE(window_->actions().planBatch->isEnabled());
    EXPECT_FALSE(window_->actions().weekPage->isEnabled());
    reopen();
    window_->start({});
    EXPECT_EQ(window_->desk(), nullptr);
}

TEST_F(WelcomeTest, TheMenuListsThemToo) {
    EXPECT_FALSE(window_->actions().recentBooks->actions().at(0)->isEnabled());
    const auto path = makeSmallBook();
    ASSERT_TRUE(window_->open(path));
    window_->actions().closeBook->trigger();
    ASSERT_EQ(window_->actions().recentBooks->actions().size(), 1);
    window_->actions().recentBooks->actions().at(0)->trigger();
    ASSERT_NE(window_->desk(), nullptr);
    EXPECT_EQ(window_->desk()->path(), path);
}

TEST_F(WelcomeTest, TheOldestOfManyGoes) {
    auto settings = Settings(
        std::make_unique<QSettings>(at(QStringLiteral("other.ini")), QSettings::IniFormat));
    for (int i = 0; i < 12; ++i)
        settings.rememberBook({QStringLiteral("/b%1").arg(i), {}, QDate(2027, 6, 1)});
    settings.rememberBook({QStringLiteral("/b8"), QStringLiteral("Mill"), QDate(2027, 6, 2)});
    const auto books = settings.recentBooks();
    ASSERT_EQ(books.size(), Settings::kMostRecent);
    EXPECT_EQ(books[0].path, QStringLiteral("/b8"));
    EXPECT_EQ(books[0].label, QStringLiteral("Mill"));
    EXPECT_EQ(books[1].path, QStringLiteral("/b11"));
}

class NewBookTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        dialog_ = std::make_unique<NewBookDialog>(day("2027-02-01"), at({}));
        dialog_->show();
    }
    void TearDown() override {
        dialog_.reset();
        QLocale::setDefault(QLocale::c());
    }
    std::unique_ptr<NewBookDialog> dialog_;
};

TEST_F(NewBookTest, IsFilledInByKeysAndMade) {
    EXPECT_FALSE(dialog_->makeButton().isEnabled());
    dialog_->operation().setFocus();
    QTest::keyClicks(&dialog_->operation(), QStringLiteral("Mill/Weir"));
    EXPECT_TRUE(dialog_->place().text().endsWith(QStringLiteral("Mill-Weir.tenthday")));
    dialog_->yard().setFocus();
    QTest::keyClicks(&dialog_->yard(), QStringLiteral("Home"));
    QTest::keyClick(&dialog_->yard(), Qt::Key_Return);
    ASSERT_EQ(dialog_->result(), QDialog::Accepted);
    const auto wish = dialog_->wish();
    ASSERT_TRUE(createBook(wish.path, newBookContent(wish.plan), test::fixedOptions()));
    const auto book = reread(wish.path);
    EXPECT_EQ(book.book().label, "Mill/Weir");
    EXPECT_EQ(book.season(), (DayWindow{day("2027-03-01"), day("2027-10-31")}));
    ASSERT_EQ(book.all<Yard>().size(), 1U);
    EXPECT_EQ((*book.all<Yard>().begin())->label, "Home");
    EXPECT_FALSE(book.all<Method>().empty());
}

TEST_F(NewBookTest, TheSouthHasASeasonAcrossTheNewYear) {
    dialog_->hemisphere().setFocus();
    QTest::keyClick(&dialog_->hemisphere(), Qt::Key_Down);
    const auto plan = dialog_->wish().plan;
    EXPECT_EQ(plan.hemisphere, Hemisphere::South);
    EXPECT_EQ(plan.season, (DayWindow{day("2026-09-01"), day("2027-04-30")}));
    QTest::keyClicks(&dialog_->operation(), QStringLiteral("Mill"));
    EXPECT_FALSE(dialog_->makeButton().isEnabled()) << "a yard says where it stands";
    QTest::keyClicks(&dialog_->yard(), QStringLiteral("Home"));
    ASSERT_TRUE(dialog_->makeButton().isEnabled()) << dialog_->told().toStdString();
    const auto wish = dialog_->wish();
    ASSERT_TRUE(createBook(wish.path, newBookContent(wish.plan), test::fixedOptions()));
    EXPECT_EQ((*reread(wish.path).all<Yard>().begin())->hemisphere, Hemisphere::South);
}

TEST_F(NewBookTest, ABareNameMeansTheProposedFolder) {
    QTest::keyClicks(&dialog_->operation(), QStringLiteral("Mill"));
    dialog_->place().selectAll();
    QTest::keyClicks(&dialog_->place(), QStringLiteral("mill v1.2"));
    EXPECT_EQ(dialog_->wish().path, at(QStringLiteral("mill v1.2.tenthday")));
    EXPECT_TRUE(dialog_->told().isEmpty()) << dialog_->told().toStdString();
}

TEST_F(NewBookTest, DaysOfOnesOwnStayWhenTheHemisphereChanges) {
    dialog_->from().setDate(QDate(2027, 4, 10));
    dialog_->hemisphere().setCurrentIndex(1);
    EXPECT_EQ(dialog_->wish().plan.season.first, day("2027-04-10"));
}

TEST_F(NewBookTest, ASeasonTooLongIsToldAtOnce) {
    QTest::keyClicks(&dialog_->operation(), QStringLiteral("Mill"));
    dialog_->until().setDate(dialog_->from().date().addDays(550));
    EXPECT_TRUE(dialog_->makeButton().isEnabled());
    dialog_->until().setDate(dialog_->from().date().addDays(551));
    EXPECT_FALSE(dialog_->makeButton().isEnabled());
    EXPECT_TRUE(dialog_->told().contains(QStringLiteral("550 days")));
}

TEST_F(NewBookTest, SaysWhatIsMissing) {
    QTest::keyClicks(&dialog_->operation(), QStringLiteral("Mill"));
    EXPECT_TRUE(dialog_->told().isEmpty());
    dialog_->until().setDate(QDate(2026, 1, 1));
    EXPECT_TRUE(dialog_->told().contains(QStringLiteral("before it begins")));
    EXPECT_FALSE(dialog_->makeButton().isEnabled());
    dialog_->until().setDate(QDate(2027, 11, 1));
    QFile taken(dialog_->place().text());
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    QTest::keyClicks(&dialog_->yard(), QStringLiteral("x"));
    dialog_->until().setDate(QDate(2027, 11, 2));
    EXPECT_TRUE(dialog_->told().contains(QStringLiteral("already")));
    dialog_->place().selectAll();
    QTest::keyClicks(&dialog_->place(), at(QStringLiteral("nowhere/mill")));
    EXPECT_TRUE(dialog_->told().contains(QStringLiteral("no such folder")));
}

TEST(PlanFor, ProposesTheSeasonThatRunsOrComesNext) {
    EXPECT_EQ(planFor("x", day("2027-11-25")).season.first, day("2028-03-01"));
    EXPECT_EQ(planFor("x", day("2027-10-31")).season.first, day("2027-03-01"));
    EXPECT_EQ(planFor("x", day("2027-05-01"), Hemisphere::South).season.first, day("2027-09-01"));
    EXPECT_EQ(planFor("x", day("2027-12-01"), Hemisphere::South).season.first, day("2027-09-01"));
}

}  // namespace
}  // namespace tenthday
