/// @file seattle.h  Daily weather of Seattle, 2012 to 2015: see data/readme.txt.
#pragma once
#include <fstream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "support/days.h"
#include "weather/flying_seasons.h"

namespace tenthday::test {

inline std::string seattleFile() {
    return TENTHDAY_SOURCE_DIR "/tests/core/weather/data/seattle-weather.csv";
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
        days.emplace_back(
            day(date), DayWeather{std::stod(tmax), std::stod(rain), std::stod(wind), std::nullopt});
    }
    return days;
}

inline std::vector<FlyingRecordDay> seattleFlying(const FlyingLimits& limits) {
    std::vector<FlyingRecordDay> days;
    for (const auto& [on, weather] : seattle())
        days.push_back({on, isFlyingDay(weather, limits).value()});
    return days;
}

}  // namespace tenthday::test
