/// @file cells_text.h  The words of the cells day.
#pragma once
#include <QString>
#include <QStringList>

#include "cellsday/cells_verbs.h"
#include "cellsday/propose.h"

namespace tenthday::cells_text {

[[nodiscard]] QString menuEntry();
/// "Cells day: Monday, 21 June".
[[nodiscard]] QString head(Day day);
/// "24 ripe = 20 into nucs + 2 sold + 2 without a place yet".
[[nodiscard]] QString sum(const CellsDraft& draft);
[[nodiscard]] QString noCells(Day day);
[[nodiscard]] QString noCellsAnywhere();

/// Names of the lines that add up, and what each means.
[[nodiscard]] QString ripe();
[[nodiscard]] QString ripeHint(const Outlook& outlook, const BatchCells& cells);
[[nodiscard]] QString nucsAt(const QString& yard);
/// "4 ready, 2 more if caught the day before".
[[nodiscard]] QString openIn(int ready, int likely);
[[nodiscard]] QString nucsHint();
[[nodiscard]] QString way(CellTarget way);
[[nodiscard]] QString wayHint(CellTarget way);
[[nodiscard]] QString recorded();
[[nodiscard]] QString recordedHint();
[[nodiscard]] QString left();
/// "adds up", "3 have no place yet", "2 too many".
[[nodiscard]] QString leftWords(int left);
[[nodiscard]] QString batch(const QString& label);
/// What a screen reader says of a field.
[[nodiscard]] QString field(const QString& line, const QString& batch);

/// The list of nucs.
[[nodiscard]] QString nucsHead();
[[nodiscard]] QString columnHead(int column);
[[nodiscard]] QString fit(const CellsNuc& nuc);
[[nodiscard]] QString cellOf(const QString& batch, bool done);
[[nodiscard]] QString filter(int entry);
inline constexpr int kFilters = 3;
[[nodiscard]] QString ticksFor();
[[nodiscard]] QString tickHint();

[[nodiscard]] QString dayBefore();
[[nodiscard]] QString dayAfter();
[[nodiscard]] QString propose();
[[nodiscard]] QString proposeHint(const WayOrder& order);
[[nodiscard]] QString clear();
[[nodiscard]] QString order();
[[nodiscard]] QString print();
[[nodiscard]] QString planIt();
[[nodiscard]] QString planHint();
[[nodiscard]] QString done();
[[nodiscard]] QString doneHint();
[[nodiscard]] QString close();
[[nodiscard]] QString leaveDraft();

[[nodiscard]] QString refusal(const CellsRefusal& refusal, const QString& batch);
/// What can be done with virgins in cages; empty where there are none.
[[nodiscard]] QString virginsWait(const CellsDraft& draft);
[[nodiscard]] QString planned(const CellsDraft& draft);
[[nodiscard]] QString recordedNow(const CellsDraft& draft);
[[nodiscard]] QString readOnly();

/// The order of ways.
[[nodiscard]] QString orderTitle();
[[nodiscard]] QString orderExplained();
[[nodiscard]] QString wayOf(Way way);
[[nodiscard]] QString atMost();
[[nodiscard]] QString asMany();
[[nodiscard]] QString use();
[[nodiscard]] QString up();
[[nodiscard]] QString down();
[[nodiscard]] QString keep();

/// The placement list on paper.
/// "Mill: 14 cells".
[[nodiscard]] QString stop(const QString& yard, int cells);
[[nodiscard]] QString noList();

}  // namespace tenthday::cells_text
