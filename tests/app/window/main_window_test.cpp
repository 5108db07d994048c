#include "window/main_window.h"

#include <QApplication>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QStatusBar>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "app/book/book_fixture.h"
#include "book/backups.h"
#include "cellsday/cells_day_dialog.h"
#include "chart/season_chart.h"
#include "exchange/example.h"
#include "facts/facts_page.h"
#include "help/keys_dialog.h"
#include "nucs/nucs_page.h"
#include "paste/paste_dialog.h"
#include "phone/phone_link.h"
#include "reasons/why_dialog.h"
#include "records/verbs.h"
#include "screen_text/key_text.h"
#include "screen_text/phone_text.h"
#include "virgins/virgins_page.h"
#include "weather/weather_page.h"
#include "week/week_page.h"

namespace tenthday {
namespace {

using test::day;

/// Answers given beforehand, and what was told.
struct Answers {
    QString path;
    bool read = false;
    bool restore = false;
    std::optional<ListFile> list;
    int backup = -1;  ///< which of the backups
    std::vector<std::string> told;
};

class AnswersGiven : public Questions {
public:
    explicit AnswersGiven(Answers& answers) : answers_(answers) {}
    QString bookToOpen() override { return answers_.path; }
    std::optional<NewBookWish> newBook(Day today) override {
        if (answers_.path.isEmpty()) return std::nullopt;
        return NewBookWish{
            answers_.path,
            planFor(QFileInfo(answers_.path).completeBaseName().toStdString(), today)};
    }
    QString placeForCopy(const QString&) override { return answers_.path; }
    std::optional<ListFile> listToImport() override { return answers_.list; }
    std::optional<ListFile> placeForList() override { return answers_.list; }
    std::optional<PictureFile> placeForPicture(const QString&) override {
        if (answers_.path.isEmpty()) return std::nullopt;
        return PictureFile{answers_.path, Poster::A4};
    }
    QString backupToRestore(const QStringList& backups) override {
        return answers_.backup >= 0 ? backups.value(answers_.backup) : QString();
    }
    bool restoreInstead(const Error& why, const QString& backup) override {
        answers_.told.push_back("restore instead? " + why.text + " " + backup.toStdString());
        return answers_.restore;
    }
    bool readInstead(const Error& why) override {
        answers_.told.push_back("read instead? " + why.text);
        return answers_.read;
    }
    void tell(const QString& what, const Error& why, const QString& hint) override {
        answers_.told.push_back(what.toStdString() + " " + why.text + hint.toStdString());
    }

private:
    Answers& answers_;
};

class MainWindowTest : public test::BookTest {
protected:
    void SetUp() override { reopen(); }
    void TearDown() override { window_.reset(); }
    /// A new run of the program with the same settings.
    void reopen() {
        window_.reset();
        auto store =
            std::make_unique<QSettings>(at(QStringLiteral("settings.ini")), QSettings::IniFormat);
        const Clock clock(std::nullopt, [] { return day("2027-06-01"); });
        window_ = std::make_unique<MainWindow>(
            Settings(std::move(store)), clock, [](const QString& path) {
                return createBook(path, test::smallBookRows(), test::fixedOptions());
            });
        window_->setQuestions(std::make_unique<AnswersGiven>(answers_));
        window_->setExamplePath(at(QStringLiteral("data/example.tenthday")));
        window_->show();
    }
    void moveTo(std::string_view text) {
        const auto& book = window_->desk()->snapshot();
        const auto move = moveBatch(book, test::kBatch, day(text));
        ASSERT_TRUE(window_->desk()->apply(move.value()));
    }
    Day dayInFile(const QString& path) { return reread(path).find(test::kBatch)->day; }
    std::string title() const { return window_->windowTitle().toStdString(); }
    WindowActions& actions() { return window_->actions(); }

    Answers answers_;
    std::unique_ptr<MainWindow> window_;
};

TEST_F(MainWindowTest, BeginsWithTheWaysToABook) {
    window_->start({});
    EXPECT_EQ(window_->desk(), nullptr);
    EXPECT_EQ(title(), "Tenthday");
    std::vector<std::string> buttons;
    for (const auto* button : window_->findChildren<QPushButton*>()) {
        EXPECT_TRUE(button->isVisible());
        buttons.push_back(button->text().remove(u'&').toStdString());
    }
    EXPECT_EQ(buttons,
              (std::vector<std::string>{"Open the example", "Open a book ...", "New book ..."}));
    EXPECT_FALSE(actions().saveCopy->isEnabled());
    EXPECT_FALSE(actions().undo->isEnabled());
}

TEST_F(MainWindowTest, TheExampleIsMadeOnceAndKeepsItsEdits) {
    window_->findChildren<QPushButton*>().at(0)->click();
    ASSERT_NE(window_->desk(), nullptr);
    EXPECT_EQ(title(), "Alder Lane - Tenthday");
    moveTo("2027-06-08");
    reopen();
    actions().openExample->trigger();
    EXPECT_EQ(window_->desk()->snapshot().find(test::kBatch)->day, day("2027-06-08"));
}

TEST_F(MainWindowTest, WhatWasDoneInAnotherSeasonIsUndoneWhereItIsSeen) {
    const auto path = makeSmallBook();
    answers_.path = path;
    actions().openBook->trigger();
    auto& desk = *window_->desk();
    const auto first = desk.snapshot().seasonId();
    const auto before = dayInFile(path);
    ChangeSet later;
    later.add(Season{test::id<Season>(900), 1, "2028", day("2028-04-01"), day("2028-09-30")});
    ASSERT_TRUE(desk.apply(later));
    moveTo("2027-06-08");
    ASSERT_TRUE(desk.showSeason(test::id<Season>(900)));
    actions().undo->trigger();
    EXPECT_EQ(desk.snapshot().seasonId(), first);
    EXPECT_EQ(desk.snapshot().find(test::kBatch)->day, before);
    EXPECT_TRUE(window_->statusBar()->currentMessage().contains(QStringLiteral("2027")))
        << window_->statusBar()->currentMessage().toStdString();
    ASSERT_TRUE(desk.showSeason(test::id<Season>(900)));
    actions().redo->trigger();
    EXPECT_EQ(desk.snapshot().seasonId(), first);
    EXPECT_EQ(dayInFile(path), day("2027-06-08"));
    EXPECT_TRUE(answers_.told.empty());
}

TEST_F(MainWindowTest, OpensTheLastBookAgain) {
    const auto path = makeSmallBook();
    answers_.path = path;
    actions().openBook->trigger();
    ASSERT_NE(window_->desk(), nullptr);
    reopen();
    window_->start({});
    ASSERT_NE(window_->desk(), nullptr);
    EXPECT_EQ(window_->desk()->path().toStdString(), path.toStdString());
    window_.reset();
    QFile::remove(path);
    reopen();
    window_->start({});
    EXPECT_EQ(window_->desk(), nullptr) << "gone without a complaint";
    EXPECT_TRUE(answers_.told.empty());
}

TEST_F(MainWindowTest, UndoAndRedoSayWhatTheyDo) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    EXPECT_EQ(actions().undo->text().toStdString(), "&Undo");
    moveTo("2027-06-08");
    EXPECT_TRUE(actions().undo->text().startsWith(QStringLiteral("&Undo: move batch 1 to ")))
        << actions().undo->text().toStdString();
    actions().undo->trigger();
    EXPECT_EQ(dayInFile(window_->desk()->path()), day("2027-06-04"));
    EXPECT_FALSE(actions().undo->isEnabled());
    EXPECT_TRUE(actions().redo->text().startsWith(QStringLiteral("&Redo: move batch 1 to ")));
    actions().redo->trigger();
    EXPECT_EQ(dayInFile(window_->desk()->path()), day("2027-06-08"));
}

TEST_F(MainWindowTest, AFailedUndoIsToldAndCanBeTriedAgain) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    moveTo("2027-06-08");
    window_->desk()->file().connection().setSaboteur([](const QString&) { return true; });
    actions().undo->trigger();
    window_->desk()->file().connection().setSaboteur({});
    EXPECT_EQ(answers_.told.size(), 1U);
    EXPECT_EQ(dayInFile(window_->desk()->path()), day("2027-06-08"));
    actions().undo->trigger();
    EXPECT_EQ(dayInFile(window_->desk()->path()), day("2027-06-04"));
}

TEST_F(MainWindowTest, ARefusedBookIsToldAndTheOneShownStays) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    const auto none = at(QStringLiteral("none.tenthday"));
    EXPECT_FALSE(window_->open(none));
    EXPECT_EQ(answers_.told, std::vector{"The book cannot be opened. " + none.toStdString() +
                                         ": there is no such file"});
    EXPECT_EQ(title(), "Alder Lane - Tenthday");
}

TEST_F(MainWindowTest, ABookHeldByAnotherCanBeReadInstead) {
    const auto path = makeSmallBook();
    const auto other = open(path);
    EXPECT_FALSE(window_->open(path));
    EXPECT_NE(answers_.told.at(0).find("read instead? "), std::string::npos);
    EXPECT_NE(answers_.told.at(0).find("is open for writing by"), std::string::npos);
    answers_.read = true;
    EXPECT_TRUE(window_->open(path));
    EXPECT_TRUE(window_->desk()->isReadOnly());
}

TEST_F(MainWindowTest, NamesTheNewestBackupOfADamagedBook) {
    const auto path = makeSmallBook();
    const auto backup = open(path)->backUp().value().toStdString();
    QFile file(path);
    ASSERT_TRUE(file.resize(file.size() / 2));
    EXPECT_FALSE(window_->open(path));
    EXPECT_NE(answers_.told.at(0).find("damaged"), std::string::npos);
    EXPECT_NE(answers_.told.at(0).find(backup), std::string::npos);
    EXPECT_EQ(window_->desk(), nullptr) << "only when the user agrees";

    answers_.restore = true;
    ASSERT_TRUE(window_->open(path));
    EXPECT_TRUE(window_->desk()->snapshot().sameContent(test::smallBook()));
}

TEST_F(MainWindowTest, ABackupTakesThePlaceOfTheBookAndTheBookIsKept) {
    const auto path = makeSmallBook();
    ASSERT_TRUE(window_->open(path));
    ASSERT_TRUE(window_->desk()->file().backUp().ok());
    moveTo("2027-06-08");
    answers_.backup = 0;
    actions().restoreBackup->trigger();
    ASSERT_NE(window_->desk(), nullptr);
    EXPECT_TRUE(window_->desk()->snapshot().sameContent(test::smallBook()));
    EXPECT_EQ(window_->windowTitle().toStdString(), "Alder Lane - Tenthday");

    // The book as it was is the newest of the backups; restoring it takes the restoring back.
    const auto backups = backupsOf(path);
    ASSERT_EQ(backups.size(), 2);
    answers_.backup =
        static_cast<int>(backups.indexOf(QRegularExpression(QStringLiteral(".*before-restore.*"))));
    actions().restoreBackup->trigger();
    EXPECT_EQ(window_->desk()->snapshot().find(test::kBatch)->day, day("2027-06-08"));
    EXPECT_TRUE(answers_.told.empty());
}

TEST_F(MainWindowTest, AListIsTakenAsOneStepThatCanBeUndone) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    const auto yards = window_->desk()->snapshot().all<Yard>().size();
    answers_.list = ListFile{at(QStringLiteral("yards.csv")), "yards"};
    QFile file(answers_.list->path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("label,drive_order\nHeron,7\nDike,8\n");
    file.close();
    actions().importList->trigger();
    auto* dialog = window_->findChild<PasteDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->preview().rowCount(), 2);
    EXPECT_EQ(window_->desk()->snapshot().all<Yard>().size(), yards) << "looked at first";
    dialog->accept();
    EXPECT_TRUE(answers_.told.empty());
    EXPECT_EQ(window_->desk()->snapshot().all<Yard>().size(), yards + 2);
    EXPECT_EQ(actions().undo->text().toStdString(), "&Undo: import Yards");
    actions().undo->trigger();
    EXPECT_EQ(window_->desk()->snapshot().all<Yard>().size(), yards);
}

TEST_F(MainWindowTest, ABadListIsRefusedByLineAndColumnAndNothingIsTaken) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    answers_.list = ListFile{at(QStringLiteral("yards.csv")), "yards"};
    QFile file(answers_.list->path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("label,drive_order\nHeron,7\nDike,many\n");
    file.close();
    actions().importList->trigger();
    auto* dialog = window_->findChild<PasteDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->takeButton().isEnabled());
    EXPECT_EQ(dialog->preview().item(1, 0)->text(), QStringLiteral("3"));
    EXPECT_NE(dialog->preview().item(1, 1)->toolTip().indexOf(QStringLiteral("drive_order")), -1);
    EXPECT_FALSE(actions().undo->isEnabled());
}

TEST_F(MainWindowTest, AListIsWrittenThatCanBeTakenAgain) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    answers_.list = ListFile{at(QStringLiteral("boxes.csv")), "boxes"};
    actions().exportList->trigger();
    EXPECT_TRUE(QFile::exists(answers_.list->path));
    actions().importList->trigger();
    auto* dialog = window_->findChild<PasteDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->accept();
    EXPECT_FALSE(dialog->told().isEmpty());
    EXPECT_TRUE(answers_.told.empty());
    EXPECT_FALSE(actions().undo->isEnabled()) << "it says nothing new";
}

TEST_F(MainWindowTest, ThinkingBetterOfItRestoresNothing) {
    const auto path = makeSmallBook();
    ASSERT_TRUE(window_->open(path));
    ASSERT_TRUE(window_->desk()->file().backUp().ok());
    moveTo("2027-06-08");
    actions().restoreBackup->trigger();
    EXPECT_EQ(window_->desk()->snapshot().find(test::kBatch)->day, day("2027-06-08"));
    EXPECT_TRUE(actions().undo->isEnabled());
}

TEST_F(MainWindowTest, EveryMenuEntryWithAKeyIsInTheKeyList) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    actions().keys->trigger();
    const auto* dialog = window_->findChild<KeysDialog*>();
    ASSERT_NE(dialog, nullptr);
    QStringList texts;
    for (const auto* label : dialog->findChildren<QLabel*>()) texts += label->text();
    for (const auto* top : window_->menuBar()->actions())
        for (const auto* action : top->menu()->actions()) {
            const auto keys = action->shortcut().toString(QKeySequence::NativeText);
            EXPECT_TRUE(keys.isEmpty() || texts.contains(keys)) << action->text().toStdString();
        }
    for (const auto& key : key_text::chartKeys()) EXPECT_TRUE(texts.contains(key.what));
}

TEST_F(MainWindowTest, PagesAreReachedByKeysAndZoomBelongsToTheChart) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    EXPECT_TRUE(window_->chart()->isVisible());
    actions().factsPage->trigger();
    EXPECT_TRUE(window_->facts()->isVisible());
    EXPECT_FALSE(window_->chart()->isVisible());
    EXPECT_FALSE(actions().zoomIn->isEnabled());
    actions().seasonPage->trigger();
    EXPECT_TRUE(window_->chart()->isVisible());
    EXPECT_TRUE(actions().zoomIn->isEnabled());
}

TEST_F(MainWindowTest, MakesANewBookThatCanBeOpened) {
    answers_.path = at(QStringLiteral("Mill & sons.tenthday"));
    actions().newBook->trigger();
    ASSERT_NE(window_->desk(), nullptr);
    EXPECT_EQ(title(), "Mill & sons - Tenthday");
    const auto season = window_->desk()->snapshot().season();
    EXPECT_TRUE(season.contains(day("2027-06-01")));
    EXPECT_EQ(window_->desk()->snapshot().all<Method>().size(), 5U);
    actions().newBook->trigger();
    EXPECT_EQ(answers_.told.size(), 1U) << "is there already";
}

TEST_F(MainWindowTest, SavesACopy) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    answers_.path = at(QStringLiteral("copy.tenthday"));
    actions().saveCopy->trigger();
    EXPECT_TRUE(reread(answers_.path).sameContent(test::smallBook()));
    EXPECT_TRUE(answers_.told.empty());
    answers_.path = window_->desk()->path();
    actions().saveCopy->trigger();
    EXPECT_EQ(answers_.told.size(), 1U) << "the open book itself";
}

TEST_F(MainWindowTest, RemembersLookAndPlace) {
    actions().looks[static_cast<std::size_t>(LookChoice::Dark)]->trigger();
    EXPECT_EQ(lookOf(QApplication::palette()), Look::Dark);
    window_->resize(780, 560);
    window_->close();
    reopen();
    EXPECT_TRUE(actions().looks[static_cast<std::size_t>(LookChoice::Dark)]->isChecked());
    EXPECT_EQ(window_->size(), QSize(780, 560));
    actions().looks[static_cast<std::size_t>(LookChoice::Light)]->trigger();
    EXPECT_EQ(lookOf(QApplication::palette()), Look::Light);
}

TEST_F(MainWindowTest, TheChartShowsTheBookAndSavesWhatIsMovedOnIt) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    auto* chart = window_->chart();
    ASSERT_NE(chart, nullptr);
    EXPECT_TRUE(chart->isVisible());
    EXPECT_EQ(chart->outlook(), window_->desk()->outlook());
    chart->setSelectedBatch(test::kBatch);
    QTest::keyClick(chart, Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(dayInFile(window_->desk()->path()), day("2027-06-05"));
    actions().undo->trigger();
    EXPECT_EQ(dayInFile(window_->desk()->path()), day("2027-06-04"));
    EXPECT_EQ(chart->outlook(), window_->desk()->outlook());
    const auto before = chart->dayAxis();
    actions().zoomIn->trigger();
    EXPECT_GT(chart->dayAxis().dayWidth(), before.dayWidth());
    actions().wholeSeason->trigger();
    actions().goToToday->trigger();
}

TEST_F(MainWindowTest, AnotherBookTakesThePlaceOfTheFirst) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    const auto second = makeSmallBook(QStringLiteral("second.tenthday"));
    ASSERT_TRUE(window_->open(second));
    EXPECT_EQ(window_->desk()->path().toStdString(), second.toStdString());
    EXPECT_EQ(window_->chart()->outlook(), window_->desk()->outlook());
    EXPECT_TRUE(open(at(QStringLiteral("mill.tenthday")))) << "the first is let go";
}

TEST_F(MainWindowTest, EveryMenuEntryHasAKeyOfItsOwnInItsMenu) {
    for (const auto* top : window_->menuBar()->actions()) {
        std::set<QChar> keys;
        for (const auto* action : top->menu()->actions()) {
            if (action->isSeparator()) continue;
            const auto at = action->text().indexOf(u'&');
            ASSERT_GE(at, 0) << action->text().toStdString();
            EXPECT_TRUE(keys.insert(action->text().at(at + 1).toLower()).second)
                << action->text().toStdString();
        }
    }
}

TEST_F(MainWindowTest, TheWeekIsAPageAndItsDayIsTheOneChosenOnTheChart) {
    window_->start(makeSmallBook());
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    QTest::keyClick(window_.get(), Qt::Key_3, Qt::ControlModifier);
    EXPECT_TRUE(window_->week()->isVisible());
    QTest::keyClick(&window_->week()->table(), Qt::Key_PageDown);
    EXPECT_EQ(window_->chart()->chosenDay(), window_->week()->day());
    EXPECT_EQ(window_->nucs()->day(), window_->week()->day());
    window_->chart()->setChosenDay(day("2027-07-01"));
    EXPECT_EQ(window_->week()->day(), day("2027-07-01"));
    // A task of one's own from anywhere.
    QTest::keyClick(window_.get(), Qt::Key_1, Qt::ControlModifier);
    QTest::keyClick(window_.get(), Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_NE(window_->week()->asking(), nullptr);
    window_->week()->asking()->reject();
}

TEST_F(MainWindowTest, TheCalendarForThePhoneIsKeptAcrossRunsAndItsTroubleIsShown) {
    const auto path = makeSmallBook();
    window_->start(path);
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    QTest::keyClick(window_.get(), Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_NE(window_->phone()->dialog(), nullptr);
    window_->phone()->dialog()->accept();
    const auto file = at(QStringLiteral("mill.ics"));
    EXPECT_TRUE(QFileInfo::exists(file));
    EXPECT_TRUE(window_->statusBar()->currentMessage().contains(file));
    reopen();
    window_->start(path);
    ASSERT_NE(window_->phone()->keeper(), nullptr);
    ASSERT_TRUE(QFile::remove(file) && QDir().mkpath(file));  // a folder: nothing to write into
    (void)window_->phone()->keeper()->writeNow();
    QStringList state;
    for (const auto* label : window_->statusBar()->findChildren<QLabel*>()) state += label->text();
    EXPECT_TRUE(state.contains(phone_text::outOfDate()));
    EXPECT_TRUE(answers_.told.empty()) << "never a question in the way";
    actions().closeBook->trigger();
    EXPECT_EQ(window_->phone(), nullptr);
    EXPECT_FALSE(actions().phoneCalendar->isEnabled());
}

TEST_F(MainWindowTest, TheCellsDayOpensOnTheNextOneAndGoesWithTheBook) {
    ASSERT_TRUE(window_->open(makeSmallBook()));
    window_->actions().cellsDay->trigger();
    ASSERT_NE(window_->cellsDay(), nullptr);
    const auto& days = window_->desk()->outlook()->nucs.cellsDays;
    ASSERT_FALSE(days.empty());
    EXPECT_EQ(window_->cellsDay()->day(), days.front().day);
    window_->actions().closeBook->trigger();
    EXPECT_EQ(window_->cellsDay(), nullptr);
    EXPECT_FALSE(window_->actions().cellsDay->isEnabled());
}

TEST_F(MainWindowTest, TheWeatherIsAPage) {
    window_->start(makeSmallBook());
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    QTest::keyClick(window_.get(), Qt::Key_4, Qt::ControlModifier);
    EXPECT_TRUE(window_->weather()->isVisible());
    EXPECT_FALSE(window_->weather()->sourceText().isEmpty());
}

TEST_F(MainWindowTest, FromTheVirginsEnterGoesToTheNucOnItsPage) {
    const auto path = at(QStringLiteral("season.tenthday"));
    ASSERT_TRUE(createBook(path, exampleContent(), test::fixedOptions()).ok());
    window_->start(path);
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    window_->chart()->setChosenDay(day("2027-06-01"));
    QTest::keyClick(window_.get(), Qt::Key_5, Qt::ControlModifier);
    ASSERT_TRUE(window_->virgins()->isVisible());
    EXPECT_EQ(window_->virgins()->day(), day("2027-06-01"));
    ASSERT_NE(window_->virgins()->chosen(), nullptr);
    const auto batch = window_->virgins()->chosen()->round->batch;
    QTest::keyClick(&window_->virgins()->table(), Qt::Key_Return);
    EXPECT_TRUE(window_->nucs()->isVisible());
    EXPECT_EQ(window_->nucs()->day(), day("2027-06-01"));
    EXPECT_EQ(window_->nucs()->chosenDate().batch, batch);
}

TEST_F(MainWindowTest, WAsksWhyOnTheChartAndOnTheWeek) {
    window_->start(makeSmallBook());
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    QTest::keyClick(window_->chart(), Qt::Key_W);
    EXPECT_EQ(window_->why(), nullptr) << "no batch is chosen yet";
    window_->chart()->setSelectedBatch(test::kBatch);
    QTest::keyClick(window_->chart(), Qt::Key_W);
    ASSERT_NE(window_->why(), nullptr);
    EXPECT_EQ(window_->why()->batch(), test::kBatch);
    const auto graft = dayOf(window_->desk()->outlook()->find(test::kBatch)->timeline.graft);
    QTest::keyClick(window_.get(), Qt::Key_3, Qt::ControlModifier);
    window_->week()->setDay(graft);
    ASSERT_NE(window_->week()->chosen(), nullptr);
    QTest::keyClick(&window_->week()->table(), Qt::Key_W);
    EXPECT_EQ(window_->why()->chosen(), window_->week()->chosenDate().event);
    // The dialog leans on the book: it goes with it.
    answers_.path = makeSmallBook(QStringLiteral("other.tenthday"));
    actions().openBook->trigger();
    EXPECT_EQ(window_->why(), nullptr);
}

}  // namespace
}  // namespace tenthday
