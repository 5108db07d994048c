/// @file stays_text.h  The words of the days for mating: at a station, by insemination.
#pragma once
#include <QString>

#include "facts/facts.h"
#include "records/kinds.h"

namespace tenthday::stays_text {

/// Names of the fields.
[[nodiscard]] QString station();
[[nodiscard]] QString noStation();
/// "Brought there", "First day".
[[nodiscard]] QString from(Mating mating);
[[nodiscard]] QString until(Mating mating);
/// "Stay 2, brought there".
[[nodiscard]] QString ofStay(Mating mating, int number, const QString& field);
/// @param none  there are no days yet
[[nodiscard]] QString add(Mating mating, bool none);
[[nodiscard]] QString remove(Mating mating);

/// When the virgins are ready, and what is reckoned while no days are given.
[[nodiscard]] QString dueToFly(Day earliest, Day latest, bool none);
[[nodiscard]] QString whyStation();
/// @param age  d
[[nodiscard]] QString oldEnough(double age, Day day, bool none);
[[nodiscard]] QString whyInsemination(const Facts& facts);

}  // namespace tenthday::stays_text
