/// @file sheet_text.h  The words on the week's sheet.
#pragma once
#include <QString>
#include <QStringList>
#include <vector>

#include "calendar/iso_week.h"
#include "outlook/outlook.h"

namespace tenthday::sheet_text {

/// "Cells out of North, batch 19: 32 ripe expected".
[[nodiscard]] QString what(const Outlook& outlook, const Task& task);
/// How, until when, which nucs; may be empty.
[[nodiscard]] QString how(const Outlook& outlook, const Task& task);
/// Those it is about: "O1 A B, O2 A, Q18".
[[nodiscard]] QString nucs(const Task& task);
/// Beside the line to write on: "in, of 10"; empty where nothing is counted.
[[nodiscard]] QString blank(const Task& task);
/// The work in a word: "graft".
[[nodiscard]] QString work(TaskRule rule);
/// What these works need, "warm box, cell protectors"; empty when nothing.
[[nodiscard]] QString takeAlong(const std::vector<TaskRule>& rules, Day day);
/// Where the cells of a day can go, each with a line to write on: the first is what came out.
[[nodiscard]] QStringList sumOfCells(const QStringList& yards);
[[nodiscard]] QStringList cautions();

[[nodiscard]] QString week(IsoWeek week);
/// "Week 23 · AK" of one person.
[[nodiscard]] QString weekOf(IsoWeek week, const QString& who);
/// "for AK"; empty of nobody.
[[nodiscard]] QString givenTo(const QString& who);
/// Both, a semicolon between; one alone where the other is empty.
[[nodiscard]] QString with(const QString& words, const QString& more);
[[nodiscard]] QString toNobody(int tasks);
/// "about 3 h 20"; below an hour "about 40 min".
[[nodiscard]] QString hours(int minutes);
/// @param own  all kinds of tasks have times of the user's own
/// @param driven  all ways of the round have a time
[[nodiscard]] QString hoursExplained(bool own, bool driven);
[[nodiscard]] QString cannotPrint();
/// "21 to 27 June 2027".
[[nodiscard]] QString daysOfWeek(IsoWeek week);
[[nodiscard]] QString page(int number, int of);
[[nodiscard]] QString head(Day day, const QString& yard);
[[nodiscard]] QString goesOn(const QString& head);
[[nodiscard]] QString nothing();
[[nodiscard]] QString nothingShort();
[[nodiscard]] QString takeAlongHead();
[[nodiscard]] QString notes(const QString& yard);
[[nodiscard]] QString box();
/// What to circle, and what it means.
[[nodiscard]] QString circles();
[[nodiscard]] QString circlesMean();
[[nodiscard]] QString sumHead();
[[nodiscard]] QString done();

}  // namespace tenthday::sheet_text
