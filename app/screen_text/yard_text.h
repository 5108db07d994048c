/// @file yard_text.h  The words of what is noted of a yard: drones, nectar flow, dearth, robbing.
#pragma once
#include <QString>

#include "facts/facts.h"
#include "records/kinds.h"

namespace tenthday::yard_text {

/// "drone comb put in", "sealed brood".
[[nodiscard]] QString droneStage(DroneStage stage);
/// "All mature by Sat 10 Jul 2027."
[[nodiscard]] QString matureBy(Day day);
/// The rule behind that day, with its numbers and the keys of their sources.
[[nodiscard]] QString whyMature(DroneStage stage, const Facts& facts);
/// Those sources in full, a line each.
[[nodiscard]] QString matureSources(const Facts& facts);

/// "nectar flow".
[[nodiscard]] QString noteKind(YardNoteKind kind);
/// "nectar flow, Sat 1 May 2027 to Thu 20 May 2027".
[[nodiscard]] QString note(YardNoteKind kind, Day from, Day until);
[[nodiscard]] QString notOverHint();

/// What is noted of a yard, with the yard: "Mill, Sat 1 May 2027".
[[nodiscard]] QString inYard(const QString& yard, const QString& what);

}  // namespace tenthday::yard_text
