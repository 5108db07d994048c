/// @file first_eggs.h  The soft edge between virgins and layers: as far as the day is not known.
#pragma once
#include <optional>

#include "outlook/outlook.h"

namespace tenthday {

/// Share of queens that have eggs, of those that will lay, on a day on which it is neither hardly
/// any nor nearly all: from 10 to 90 %. Nothing on other days.
[[nodiscard]] std::optional<double> unsureEggs(const NucHold& hold, Day day);
/// The same of one nuc; nothing once it was seen how she is.
[[nodiscard]] std::optional<double> unsureEggs(const SideDay& day);

}  // namespace tenthday
