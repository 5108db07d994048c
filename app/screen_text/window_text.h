/// @file window_text.h  The words of the window: menus, the empty state, what went wrong.
#pragma once
#include <QString>

#include "calendar/window.h"
#include "records/change_set.h"

namespace tenthday::window_text {

/// "Mill - Tenthday", the program's name alone without a book.
[[nodiscard]] QString title(const QString& book);

/// A menu entry's text without key mark and dots, as a dialog's title.
[[nodiscard]] QString asTitle(QString entry);

/// Menus and their entries; `&` marks the key.
[[nodiscard]] QString fileMenu();
[[nodiscard]] QString editMenu();
[[nodiscard]] QString viewMenu();
[[nodiscard]] QString lookMenu();
[[nodiscard]] QString languageMenu();
[[nodiscard]] QString languageOfSystem();
[[nodiscard]] QString languageFromNextStart();
[[nodiscard]] QString helpMenu();
[[nodiscard]] QString eachNuc();
[[nodiscard]] QString seasonPage();
[[nodiscard]] QString nucsPage();
[[nodiscard]] QString factsPage();
[[nodiscard]] QString setupPage();
[[nodiscard]] QString keys();
[[nodiscard]] QString pages();
[[nodiscard]] QString newBook();
[[nodiscard]] QString openBook();
[[nodiscard]] QString openExample();
[[nodiscard]] QString saveCopy();
[[nodiscard]] QString restoreBackup();
[[nodiscard]] QString importList();
[[nodiscard]] QString exportList();
[[nodiscard]] QString weekSheet();
[[nodiscard]] QString quit();
[[nodiscard]] QString zoomIn();
[[nodiscard]] QString zoomOut();
[[nodiscard]] QString wholeSeason();
[[nodiscard]] QString seasonsMenu();
/// "2027: 1 March to 31 October".
[[nodiscard]] QString season(const QString& label, Day from, Day until);
[[nodiscard]] QString goToToday();
[[nodiscard]] QString lookSystem();
[[nodiscard]] QString lookLight();
[[nodiscard]] QString lookDark();

/// "Undo: move batch 17 to Wed 12 May"; without an edit "Undo".
[[nodiscard]] QString undo();
[[nodiscard]] QString redo();
[[nodiscard]] QString undo(Verb verb, const QString& subject, std::optional<Day> day);
[[nodiscard]] QString redo(Verb verb, const QString& subject, std::optional<Day> day);

/// File dialogs.
[[nodiscard]] QString bookFiles();

/// The status line.
[[nodiscard]] QString readOnly();
[[nodiscard]] QString todayIs(Day day);
[[nodiscard]] QString copySaved(const QString& path);
[[nodiscard]] QString backupFailed(const QString& why);

/// Lists as files.
[[nodiscard]] QString listFiles();
[[nodiscard]] QString whichKind();
/// "Boxes" for "boxes"; a kind without a name of its own keeps its token.
[[nodiscard]] QString kindName(const QString& kind);
[[nodiscard]] QString imported(int rows);
[[nodiscard]] QString exported(const QString& path);
[[nodiscard]] QString cannotImport();
[[nodiscard]] QString cannotExport();

/// Backups.
[[nodiscard]] QString whichBackup();
[[nodiscard]] QString noBackups();
[[nodiscard]] QString restoreNow();
[[nodiscard]] QString cancel();
/// "Wed 12 May 2027, before bringing it up to date".
[[nodiscard]] QString backupName(const QString& backupPath);
[[nodiscard]] QString restored(const QString& kept);
[[nodiscard]] QString cannotRestore();
[[nodiscard]] QString restoreDamaged(const QString& backup);

/// What went wrong; the reason follows in the program's own English line.
[[nodiscard]] QString cannotOpen();
[[nodiscard]] QString cannotMake();
[[nodiscard]] QString cannotSaveCopy();
[[nodiscard]] QString cannotSaveEdit();
/// That the season was gone to, for what is undone was done there.
[[nodiscard]] QString undoneIn(const QString& season);
[[nodiscard]] QString openForReading();
[[nodiscard]] QString doNotOpen();
[[nodiscard]] QString newestBackup(const QString& path);

}  // namespace tenthday::window_text
