/// @file builder_names_text.h  Builders of the chart whose rows are too low for a name each.
#pragma once
#include <QString>

namespace tenthday::builder_names_text {

/// One name for neighbouring rows: "Finisher 8 to 10"; "East to North" where they share no word.
[[nodiscard]] QString joined(const QString& first, const QString& last);
/// A label without the number at its end: "Finisher " of "Finisher 8"; empty where it has none.
[[nodiscard]] QString stemOf(const QString& label);

}  // namespace tenthday::builder_names_text
