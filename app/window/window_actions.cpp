#include "window/window_actions.h"

#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QToolBar>

#include "screen_text/batch_text.h"
#include "screen_text/cells_text.h"
#include "screen_text/evening_text.h"
#include "screen_text/order_page_text.h"
#include "screen_text/phone_text.h"
#include "screen_text/picture_text.h"
#include "screen_text/plan_text.h"
#include "screen_text/print_text.h"
#include "screen_text/season_text.h"
#include "screen_text/times_text.h"
#include "screen_text/virgin_text.h"
#include "screen_text/weather_text.h"
#include "screen_text/week_text.h"
#include "screen_text/welcome_text.h"
#include "screen_text/why_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

QAction* add(QMenu& menu, const QString& text, const QList<QKeySequence>& keys = {}) {
    auto* action = menu.addAction(text);
    action->setShortcuts(keys);
    return action;
}

}  // namespace

WindowActions::WindowActions(QMainWindow& window) {
    auto& file = *window.menuBar()->addMenu(window_text::fileMenu());
    newBook = add(file, window_text::newBook(), {QKeySequence::New});
    openBook = add(file, window_text::openBook(), {QKeySequence::Open});
    openExample = add(file, window_text::openExample());
    recentBooks = file.addMenu(welcome_text::recentMenu());
    closeBook = add(file, welcome_text::closeBook(), {Qt::CTRL | Qt::Key_W});
    file.addSeparator();
    saveCopy = add(file, window_text::saveCopy(), {Qt::CTRL | Qt::SHIFT | Qt::Key_S});
    restoreBackup = add(file, window_text::restoreBackup());
    file.addSeparator();
    importList = add(file, window_text::importList());
    exportList = add(file, window_text::exportList());
    savePicture = add(file, picture_text::entry(), {Qt::CTRL | Qt::ALT | Qt::Key_S});
    file.addSeparator();
    weekSheet = add(file, window_text::weekSheet(), {QKeySequence::Print});
    printLists = add(file, print_text::menuEntry(), {Qt::CTRL | Qt::ALT | Qt::Key_P});
    phoneCalendar = add(file, phone_text::entry(), {Qt::CTRL | Qt::SHIFT | Qt::Key_P});
    file.addSeparator();
    quit = add(file, window_text::quit(), {Qt::CTRL | Qt::Key_Q});
    quit->setMenuRole(QAction::QuitRole);

    auto& edit = *window.menuBar()->addMenu(window_text::editMenu());
    undo = add(edit, window_text::undo(), {Qt::CTRL | Qt::Key_Z});
    redo = add(edit, window_text::redo(), {Qt::CTRL | Qt::SHIFT | Qt::Key_Z, Qt::CTRL | Qt::Key_Y});
    edit.addSeparator();
    planBatch = add(edit, batch_text::planEntry(), {Qt::CTRL | Qt::Key_B});
    editBatch = add(edit, batch_text::editEntry(), {Qt::CTRL | Qt::Key_Return});
    cellsDay = add(edit, cells_text::menuEntry(), {Qt::CTRL | Qt::Key_D});

    edit.addSeparator();
    newTask = add(edit, week_text::newTaskEntry(), {Qt::CTRL | Qt::SHIFT | Qt::Key_T});

    auto& view = *window.menuBar()->addMenu(window_text::viewMenu());
    seasonPage = add(view, window_text::seasonPage(), {Qt::CTRL | Qt::Key_1});
    nucsPage = add(view, window_text::nucsPage(), {Qt::CTRL | Qt::Key_2});
    weekPage = add(view, week_text::pageEntry(), {Qt::CTRL | Qt::Key_3});
    weatherPage = add(view, weather_text::pageEntry(), {Qt::CTRL | Qt::Key_4});
    virginsPage = add(view, virgin_text::pageEntry(), {Qt::CTRL | Qt::Key_5});
    eveningPage = add(view, evening_text::pageEntry(), {Qt::CTRL | Qt::Key_6});
    ordersPage = add(view, order_page_text::pageEntry(), {Qt::CTRL | Qt::Key_7});
    planPage = add(view, plan_text::pageEntry(), {Qt::CTRL | Qt::SHIFT | Qt::Key_B});
    setupPage = add(view, window_text::setupPage(), {Qt::CTRL | Qt::Key_8});
    factsPage = add(view, window_text::factsPage(), {Qt::CTRL | Qt::Key_9});
    auto* pages = new QActionGroup(&window);
    pageBar = window.addToolBar(window_text::pages());
    auto& bar = *pageBar;
    bar.setMovable(false);
    bar.setToolButtonStyle(Qt::ToolButtonTextOnly);
    bar.toggleViewAction()->setVisible(false);
    for (auto* page : {seasonPage, nucsPage, weekPage, weatherPage, virginsPage, eveningPage,
                       ordersPage, planPage, setupPage, factsPage}) {
        page->setCheckable(true);
        pages->addAction(page);
        bar.addAction(page);
    }
    view.addSeparator();
    seasons = view.addMenu(window_text::seasonsMenu());
    nextSeason = add(view, season_text::nextEntry());
    workTimes = add(view, times_text::menuEntry());
    zoomIn = add(view, window_text::zoomIn(), {Qt::CTRL | Qt::Key_Plus, Qt::CTRL | Qt::Key_Equal});
    zoomOut = add(view, window_text::zoomOut(), {Qt::CTRL | Qt::Key_Minus});
    wholeSeason = add(view, window_text::wholeSeason(), {Qt::CTRL | Qt::Key_0});
    goToToday = add(view, window_text::goToToday(), {Qt::CTRL | Qt::Key_T});
    eachNuc = add(view, window_text::eachNuc(), {Qt::CTRL | Qt::Key_E});
    whyThisDay = add(view, why_text::menuEntry(), {QKeySequence(Qt::Key_W)});
    view.addSeparator();
    auto& look = *view.addMenu(window_text::lookMenu());
    auto* group = new QActionGroup(&window);
    const QString names[] = {window_text::lookSystem(), window_text::lookLight(),
                             window_text::lookDark()};
    for (std::size_t i = 0; i < std::size(looks); ++i) {
        looks[i] = group->addAction(add(look, names[i]));
        looks[i]->setCheckable(true);
    }

    auto& language = *view.addMenu(window_text::languageMenu());
    auto* tongues = new QActionGroup(&window);
    for (std::size_t i = 0; i < std::size(languages); ++i) {
        const auto name = nameOf(static_cast<Language>(i));
        languages[i] = tongues->addAction(
            add(language, name.isEmpty() ? window_text::languageOfSystem() : name));
        languages[i]->setCheckable(true);
    }

    auto& help = *window.menuBar()->addMenu(window_text::helpMenu());
    keys = add(help, window_text::keys(), {QKeySequence(Qt::Key_F1)});
}

void WindowActions::nameUndo(const std::optional<EditName>& undoing,
                             const std::optional<EditName>& redoing) {
    const auto subject = [](const EditName& edit) { return QString::fromStdString(edit.subject); };
    undo->setEnabled(undoing.has_value());
    undo->setText(undoing ? window_text::undo(undoing->verb, subject(*undoing), undoing->day)
                          : window_text::undo());
    redo->setEnabled(redoing.has_value());
    redo->setText(redoing ? window_text::redo(redoing->verb, subject(*redoing), redoing->day)
                          : window_text::redo());
}

void WindowActions::setHasBook(bool has) {
    for (auto* action :
         {closeBook,   saveCopy,   restoreBackup, importList,    exportList,  savePicture,
          weekSheet,   printLists, nextSeason,    workTimes,     zoomIn,      zoomOut,
          wholeSeason, goToToday,  eachNuc,       planBatch,     editBatch,   seasonPage,
          nucsPage,    weekPage,   weatherPage,   virginsPage,   eveningPage, setupPage,
          factsPage,   newTask,    whyThisDay,    phoneCalendar, cellsDay,    ordersPage,
          planPage})
        action->setEnabled(has);
    seasons->setEnabled(has);
    pageBar->setVisible(has);
    if (!has) nameUndo(std::nullopt, std::nullopt);
}

void WindowActions::setLanguage(Language language) {
    languages[static_cast<std::size_t>(language)]->setChecked(true);
}

void WindowActions::setLook(LookChoice choice) {
    looks[static_cast<std::size_t>(choice)]->setChecked(true);
}

}  // namespace tenthday
