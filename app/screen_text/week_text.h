/// @file week_text.h  The words of the week's page and of a task of the user's own.
#pragma once
#include <QString>

#include "calendar/iso_week.h"
#include "outlook/outlook.h"

namespace tenthday::week_text {

[[nodiscard]] QString pageEntry();
[[nodiscard]] QString newTaskEntry();
/// "Week 23 · 7 Jun to 13 Jun 2027".
[[nodiscard]] QString head(IsoWeek week);
/// How many, how many of them must be on their day, how many are done.
[[nodiscard]] QString summary(int tasks, int must, int done);
[[nodiscard]] QString columnHead(int column);
[[nodiscard]] QString dayHead(Day day, bool isToday, bool isEmpty);
[[nodiscard]] QString stillOpen(int tasks);

/// A kind of task: "Cells into nucs".
[[nodiscard]] QString kind(TaskRule rule);
/// The task without what it is about: "Cells into nucs", the user's own in their words.
[[nodiscard]] QString task(const Outlook& outlook, const Task& task);
/// What it is about: "batch 705, West".
[[nodiscard]] QString subject(const Outlook& outlook, const Task& task);
[[nodiscard]] QString count(const Task& task);
[[nodiscard]] QString must(const Task& task);
/// Hour, last day, or when it was done. @param withDay  where no head names the day
[[nodiscard]] QString when(const Task& task, bool withDay);

[[nodiscard]] QString weekBefore();
[[nodiscard]] QString weekAfter();
[[nodiscard]] QString thisWeek();
[[nodiscard]] QString print();
[[nodiscard]] QString newTask();
[[nodiscard]] QString change();
[[nodiscard]] QString remove();
[[nodiscard]] QString whyButton();
[[nodiscard]] QString chooseTask();
[[nodiscard]] QString doneByRecord();

/// Heads of what is copied beside the columns of the table.
[[nodiscard]] QString dayHead();
[[nodiscard]] QString givenHead();
/// "ticks and initials of tasks": what undo calls what was pasted.
[[nodiscard]] QString pastedName();

[[nodiscard]] QString newTaskHead();
[[nodiscard]] QString changeTaskHead();
[[nodiscard]] QString text();
[[nodiscard]] QString day();
[[nodiscard]] QString yard();
[[nodiscard]] QString noYard();
[[nodiscard]] QString mustBox();
[[nodiscard]] QString textNeeded();

}  // namespace tenthday::week_text
