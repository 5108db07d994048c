/// @file weather_text.h  The words of the page of weather.
#pragma once
#include <QString>
#include <optional>

#include "facts/facts.h"
#include "outlook/outlook.h"
#include "weather/fly_fit.h"

namespace tenthday::weather_text {

[[nodiscard]] QString pageEntry();
[[nodiscard]] QString head();
/// Which weather is reckoned with: past years, months, or none and what to do.
[[nodiscard]] QString source(const MatingTable& mating);
/// A limit of flying days with its value, unit and source.
[[nodiscard]] QString limit(const Facts& facts, Fact fact);

/// The list of the last days.
[[nodiscard]] QString lastDays();
[[nodiscard]] QString dayColumn(int column);
[[nodiscard]] QString day(Day day, bool isToday);
/// "16.5"; empty where nobody knows.
[[nodiscard]] QString tenths(std::optional<Tenths> value);
[[nodiscard]] QString flew(std::optional<bool> flew);
[[nodiscard]] QString countsAs(std::optional<bool> flying);
[[nodiscard]] QString flewButton();
[[nodiscard]] QString notButton();
[[nodiscard]] QString unsaidButton();
/// What undo calls it: "flights on Wed 2 Jun".
[[nodiscard]] QString flightsOn(Day day);

/// What the ticks say about the limit in force; without a fit, what is still wanted of it.
[[nodiscard]] QString fit(const std::optional<FlyFit>& fit, double inForce, int flew, int didNot);
[[nodiscard]] QString useIt();

/// The months.
[[nodiscard]] QString months(bool inUse, bool pastYears);
[[nodiscard]] QString monthColumn(int column);
[[nodiscard]] QString month(int month);
[[nodiscard]] QString usualWeather(int month);
/// What was typed, in tenths: nothing when it is no number, nothing in it when it is empty.
[[nodiscard]] std::optional<std::optional<Tenths>> fromTyped(const QString& typed);
[[nodiscard]] QString notANumber(const QString& typed);
[[nodiscard]] QString maximumFirst();
[[nodiscard]] QString maximumBounds();
[[nodiscard]] QString rainDayBounds();

}  // namespace tenthday::weather_text
