/// @file record_text.h  The words of taking in a daily weather record from a file.
#pragma once
#include <QString>
#include <array>
#include <vector>

#include "exchange/weather_file.h"

namespace tenthday::record_text {

[[nodiscard]] QString importEntry();
[[nodiscard]] QString head(const QString& fileName);
[[nodiscard]] QString columns();
[[nodiscard]] QString units();
[[nodiscard]] QString preview();
[[nodiscard]] QString troubles();
/// "Daily maximum".
[[nodiscard]] QString column(WeatherColumn column);
/// With the unit the book keeps: "Daily maximum, °C".
[[nodiscard]] QString columnHead(WeatherColumn column);
[[nodiscard]] QString notInFile();
[[nodiscard]] QString noName(int column);
[[nodiscard]] QString heat();
[[nodiscard]] QString rain();
[[nodiscard]] QString wind();
/// In the order of the unit's enum.
[[nodiscard]] std::array<QString, 2> heatUnits();
[[nodiscard]] std::array<QString, 2> rainUnits();
[[nodiscard]] std::array<QString, 3> windUnits();

/// A day of the preview: "Tue 1 Jan 2013".
[[nodiscard]] QString day(Day day);
[[nodiscard]] QString flew(std::optional<bool> flew);
/// "1461 days, from 1 Jan 2012 to 31 Dec 2015."
[[nodiscard]] QString summary(const std::vector<WeatherFileDay>& days);
/// What skipping means: "Leave out 3 lines whose date can't be read".
[[nodiscard]] QString skip(WeatherTrouble kind, int count);
/// "Line 7: "-999" stands for a missing value (Daily maximum)".
[[nodiscard]] QString trouble(const WeatherTroubleAt& trouble);
[[nodiscard]] QString moreTroubles(int count);
[[nodiscard]] QString decide();
/// "Import 1461 days".
[[nodiscard]] QString importButton(int days);
[[nodiscard]] QString nothingNew();
[[nodiscard]] QString imported(int days);

}  // namespace tenthday::record_text
