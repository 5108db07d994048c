/// @file seattle.h  Daily weather of Seattle, 2012 to 2015: see data/readme.txt.
#pragma once
#include <array>
#include <charconv>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "support/days.h"
#include "weather/climate.h"
#include "weather/flying_seasons.h"

namespace tenthday::test {

inline std::string seattleFile() {
    return TENTHDAY_SOURCE_DIR "/tests/core/weather/data/seattle-weather.csv";
}

/// With a decimal point, wherever the suite runs.
inline double plainNumber(const std::string& text) {
    double number = 0;
    const auto* end = text.data() + text.size();
    if (std::from_chars(text.data(), end, number).ptr != end) throw std::invalid_argument(text);
    return number;
}

inline std::vector<std::pair<Day, DayWeather>> seattle() {
    std::ifstream file(seattleFile());
    std::vector<std::pair<Day, DayWeather>> days;
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream cells(line);
        std::string date, rain, tmax, tmin, wind;
        for (auto* cell : {&date, &rain, &tmax, &tmin, &wind}) std::getline(cells, *cell, ',');
        days.emplace_back(day(date), DayWeather{plainNumber(tmax), plainNumber(rain),
                                                plainNumber(wind), std::nullopt});
    }
    return days;
}

inline std::vector<FlyingRecordDay> seattleFlying(const FlyingLimits& limits) {
    std::vector<FlyingRecordDay> days;
    for (const auto& [on, weather] : seattle())
        days.push_back({on, isFlyingDay(weather, limits).value()});
    return days;
}

/// The same four years as twelve months; rain days are those with 1 mm or more.
inline Climate seattleClimate() {
    Climate climate;
    climate.months.fill({0, 0});
    std::array<int, 12> days{};
    for (const auto& [on, weather] : seattle()) {
        const auto m = unsigned{date::year_month_day{on}.month()} - 1;
        *climate.months[m].tmaxC += *weather.tmaxC;
        *climate.months[m].rainDays += *weather.rainMm >= 1 ? 0.25 : 0;
        ++days[m];
    }
    for (std::size_t m = 0; m < days.size(); ++m) *climate.months[m].tmaxC /= days[m];
    return climate;
}

}  // namespace tenthday::test
