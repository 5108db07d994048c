/// @file queen_text.h  The words of caught queens: their numbers, where they are, how long.
#pragma once
#include <QString>

#include "calendar/day.h"
#include "facts/facts.h"
#include "records/kinds.h"

namespace tenthday::queen_text {

/// Heads of columns and names of fields.
[[nodiscard]] QString number();
[[nodiscard]] QString batch();
[[nodiscard]] QString matedIn();
[[nodiscard]] QString caughtOn();
[[nodiscard]] QString where();
[[nodiscard]] QString since();
[[nodiscard]] QString daysThere();
[[nodiscard]] QString moveTo();
[[nodiscard]] QString from();

[[nodiscard]] QString place(QueenPlace place);
/// What its note is for: which bank, to whom, how lost.
[[nodiscard]] QString nucUnknown();
/// "in N1 for the winter".
[[nodiscard]] QString inNuc(const QString& nuc);
[[nodiscard]] QString noteHint(QueenPlace place);
/// "12", or where it is longer than queens stay in a bank "72: longer than 60".
[[nodiscard]] QString daysInBank(int days, const Facts& facts);
[[nodiscard]] QString bankDaysTip(const Facts& facts);
/// "14 queens are in a bank then; one bank colony keeps up to 120 (S20)."
[[nodiscard]] QString bankHint(int queens, const Facts& facts);
[[nodiscard]] bool isBankFull(int queens, const Facts& facts);
[[nodiscard]] QString beforeCatch(Day caught);
/// Cautions on caging, moving and selling queens.
[[nodiscard]] QString caution(QueenPlace place);

/// The dialog of numbers.
[[nodiscard]] QString numbersButton();
[[nodiscard]] QString numbersTitle();
[[nodiscard]] QString giveNumbers();
[[nodiscard]] QString pattern();
[[nodiscard]] QString patternHelp();
/// "The next three: 27-001, 27-002, 27-003".
[[nodiscard]] QString nextNumbers(const QString& a, const QString& b, const QString& c);
/// What is wrong with a pattern, in the words of its error.
[[nodiscard]] QString badPattern(const QString& text);

}  // namespace tenthday::queen_text
