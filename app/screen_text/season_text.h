/// @file season_text.h  The words of the end of a season, and of lists for a spreadsheet.
#pragma once
#include <QString>

namespace tenthday::season_text {

[[nodiscard]] QString nextEntry();
[[nodiscard]] QString head();
[[nodiscard]] QString explained();
[[nodiscard]] QString label();
[[nodiscard]] QString from();
[[nodiscard]] QString until();
[[nodiscard]] QString boxes();
[[nodiscard]] QString builders();
[[nodiscard]] QString breeders();
[[nodiscard]] QString goOn();
/// Yards, methods and rates go on of themselves.
[[nodiscard]] QString always();
[[nodiscard]] QString begin();
[[nodiscard]] QString cancel();
[[nodiscard]] QString cannot(const QString& why);
[[nodiscard]] QString readOnly();

/// Of the file dialog: lists with the locale's separators.
[[nodiscard]] QString spreadsheetFiles();
/// Of a list that is imported: "Take in 12 lines".
[[nodiscard]] QString takeInLines(int lines);

}  // namespace tenthday::season_text
