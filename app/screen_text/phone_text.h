/// @file phone_text.h  The words of the calendar for the phone, and of the dialog that makes it.
#pragma once
#include <QString>

#include "outlook/outlook.h"

namespace tenthday::phone_text {

/// "Cells out of North, batch 19: 32 expected", with a tick before it when done.
[[nodiscard]] QString summary(const Outlook& outlook, const Task& task);
/// How and whether it must be on its day; of what is done, when it was. Which nucs.
[[nodiscard]] QString details(const Outlook& outlook, const Task& task);

[[nodiscard]] QString entry();
[[nodiscard]] QString what();
[[nodiscard]] QString file();
[[nodiscard]] QString chooseFile();
[[nodiscard]] QString calendarFiles();
[[nodiscard]] QString tasks();
[[nodiscard]] QString all();
[[nodiscard]] QString none();
[[nodiscard]] QString times();
[[nodiscard]] QString withHours();
[[nodiscard]] QString allDay();
[[nodiscard]] QString keep();
[[nodiscard]] QString keepMeans();
[[nodiscard]] QString keptAlready();
[[nodiscard]] QString cannotKeep();
[[nodiscard]] QString write();
[[nodiscard]] QString stopKeeping();
[[nodiscard]] QString needsFile();
[[nodiscard]] QString needsTasks();

[[nodiscard]] QString cannotWrite();
[[nodiscard]] QString written(const QString& path);
[[nodiscard]] QString kept(const QString& path);
[[nodiscard]] QString noLongerKept();
/// Stands in the status line while the kept calendar is not up to date.
[[nodiscard]] QString outOfDate();

}  // namespace tenthday::phone_text
