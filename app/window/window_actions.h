/// @file window_actions.h  The window's menus. Each action has a key; the window says what it does.
#pragma once
#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <QToolBar>

#include "desk/changes.h"
#include "options/settings.h"

namespace tenthday {

/// The actions belong to the window they were made for.
struct WindowActions {
    explicit WindowActions(QMainWindow& window);

    /// Names what undo and redo would do, and whether they can.
    void nameUndo(const std::optional<EditName>& undoing, const std::optional<EditName>& redoing);
    /// Switches what needs an open book.
    void setHasBook(bool has);
    void setLook(LookChoice choice);
    void setLanguage(Language language);

    QAction* newBook;
    QAction* openBook;
    QAction* openExample;
    QToolBar* pageBar;
    QMenu* recentBooks;
    QMenu* seasons;
    QAction* nextSeason;
    QAction* workTimes;
    QAction* closeBook;
    QAction* saveCopy;
    QAction* restoreBackup;
    QAction* importList;
    QAction* exportList;
    QAction* savePicture;
    QAction* weekSheet;
    QAction* printLists;
    QAction* phoneCalendar;
    QAction* quit;
    QAction* planBatch;
    QAction* editBatch;
    QAction* undo;
    QAction* redo;
    QAction* cellsDay;
    QAction* newTask;
    QAction* zoomIn;
    QAction* zoomOut;
    QAction* wholeSeason;
    QAction* goToToday;
    QAction* eachNuc;
    QAction* whyThisDay;
    QAction* seasonPage;  ///< one of the pages is checked
    QAction* nucsPage;
    QAction* weekPage;
    QAction* weatherPage;
    QAction* virginsPage;
    QAction* eveningPage;
    QAction* ordersPage;
    QAction* planPage;
    QAction* factsPage;
    QAction* setupPage;
    QAction* keys;
    QAction* languages[kTokenCount<Language>];  ///< in the order of Language; one is checked
    QAction* looks[kTokenCount<LookChoice>];    ///< in the order of LookChoice; one is checked
};

}  // namespace tenthday
