/// @file fact_text.h  Trade numbers in the user's language and units.
#pragma once
#include <QString>
#include <optional>

#include "facts/facts.h"

namespace tenthday::fact_text {

/// "Cells are ripe and leave the box by road from here after the graft".
[[nodiscard]] QString name(Fact fact);
/// "h", "d", "°C", "cells"; shares are shown in "%".
[[nodiscard]] QString unit(const FactEntry& entry);
/// A value of this fact as shown, without its unit: shares in percent.
[[nodiscard]] QString value(const FactEntry& entry, double value);
/// What was typed, in the fact's own unit; nothing when it is no number.
[[nodiscard]] std::optional<double> fromTyped(const FactEntry& entry, const QString& typed);
/// "15 to 48", or "outside 15 to 48" of a value that lies outside.
[[nodiscard]] QString range(const FactEntry& entry, double inForce);
/// The sources in full, a line each.
[[nodiscard]] QString sources(const FactEntry& entry);

[[nodiscard]] QString head();
[[nodiscard]] QString intro();
[[nodiscard]] QString find();
[[nodiscard]] QString useDefault();
[[nodiscard]] QString columnHead(int column);
[[nodiscard]] QString notANumber(const QString& typed);
[[nodiscard]] QString outOfBounds(const FactEntry& entry);
[[nodiscard]] QString own();

}  // namespace tenthday::fact_text
