/// @file welcome_text.h  The words of the welcome, of a new book, and of what is still empty.
#pragma once
#include <QDate>
#include <QString>

namespace tenthday::welcome_text {

[[nodiscard]] QString purpose();
/// What each way does.
[[nodiscard]] QString exampleDoes();
[[nodiscard]] QString openDoes();
[[nodiscard]] QString newDoes();
[[nodiscard]] QString recentHead();
[[nodiscard]] QString recentMenu();
[[nodiscard]] QString noRecent();
[[nodiscard]] QString recentKeys();
[[nodiscard]] QString openRecent();
[[nodiscard]] QString forgetRecent();
/// "opened Thu 3 Jun 2027".
[[nodiscard]] QString opened(const QDate& day);
[[nodiscard]] QString notFound();
[[nodiscard]] QString closeBook();

/// The dialog of a new book; `&` marks the key.
[[nodiscard]] QString operation();
[[nodiscard]] QString place();
[[nodiscard]] QString choosePlace();
[[nodiscard]] QString hemisphere();
[[nodiscard]] QString north();
[[nodiscard]] QString south();
[[nodiscard]] QString seasonFrom();
[[nodiscard]] QString seasonUntil();
[[nodiscard]] QString firstYard();
[[nodiscard]] QString firstYardHint();
[[nodiscard]] QString firstYardWanted();
[[nodiscard]] QString make();
[[nodiscard]] QString needsOperation();
[[nodiscard]] QString needsPlace();
[[nodiscard]] QString endsBefore();
[[nodiscard]] QString needsYard();
[[nodiscard]] QString placeIsTaken();
/// @param most  days
[[nodiscard]] QString seasonTooLong(int most);
[[nodiscard]] QString noFolder();

/// In the lanes of an empty season chart.
[[nodiscard]] QString noBuilders();
[[nodiscard]] QString cellsDays();
[[nodiscard]] QString noBatches();
[[nodiscard]] QString noNucs();

}  // namespace tenthday::welcome_text
