/// @file evening_text.h  The words of the evening page.
#pragma once
#include <QString>
#include <QStringList>

#include "evening/evening_verbs.h"

namespace tenthday::evening_text {

[[nodiscard]] QString pageEntry();
/// "Wednesday, 9 June: what was done and seen".
[[nodiscard]] QString head(Day day);
/// How much of the page is filled; what is late.
[[nodiscard]] QString summary(int filled, int rows, int late);
[[nodiscard]] QString columnHead(int column);

/// The task, or on further lines its bar or nuc.
[[nodiscard]] QString what(const Outlook& outlook, const EveningRow& row);
/// The head's task by its kind, batch or order, and yard: its words without its numbers.
[[nodiscard]] QString name(const Outlook& outlook, const EveningRow& head);
/// What is expected, or for a late task what to do now.
[[nodiscard]] QString expected(const Outlook& outlook, const EveningRow& row);
/// What was entered; empty where nothing was.
[[nodiscard]] QString seen(const EveningRow& row, Day day);
[[nodiscard]] QString look(NucLook look);
/// What a task that is late wants now.
[[nodiscard]] QString lateAdvice(TaskRule rule, const Facts& facts);

/// The keys that fill a row of this kind, in one line.
[[nodiscard]] QString keys(const EveningRow& row);
/// A filled row: that it can be corrected and taken back.
[[nodiscard]] QString filledHint();
[[nodiscard]] QString refusal(const Refusal& refusal);
/// "caught: 27-014", or that she stays.
[[nodiscard]] QString caught(const EveningRow& row);
/// Why the catch cannot be taken back: its queen was moved, or is in use.
[[nodiscard]] QString queenMoved(const QString& number);
[[nodiscard]] QString cannotSave();
[[nodiscard]] QString readOnly();
[[nodiscard]] QString badHour();
[[nodiscard]] QString badCount();

/// What was entered, as it is written out and read again.
[[nodiscard]] QString wentIn();
[[nodiscard]] QString done();
[[nodiscard]] QString caught();
[[nodiscard]] QString staysForWinter();
/// Head of the column that names a bar or a nuc.
[[nodiscard]] QString part();
/// "entries of Wednesday, 9 June": what undo calls them.
[[nodiscard]] QString pastedName(Day day);
[[nodiscard]] QString noHourHere();
[[nodiscard]] QString noNoteHere();

/// Why a queen is gone.
[[nodiscard]] QString cause(LossCause cause);
/// The note of what was entered; a cause in words.
[[nodiscard]] QString note(const EveningRow& row);
[[nodiscard]] QString causeHead();

[[nodiscard]] QString empty();
[[nodiscard]] QString takeBackButton();
[[nodiscard]] QString asPlannedButton();
[[nodiscard]] QString printHint();

}  // namespace tenthday::evening_text
