#include "calendar/iso_week.h"

namespace tenthday {
namespace {

/// Monday of week 1: the week that holds 4 January.
Day firstMonday(int year) {
    const Day fourth{date::local_days{date::year{year} / 1 / 4}};
    return fourth - Days{isoWeekday(fourth) - 1};
}

}  // namespace

IsoWeek isoWeekOf(Day day) {
    const Day thursday = day - Days{isoWeekday(day) - 4};
    const int year = static_cast<int>(date::year_month_day{thursday}.year());
    const auto days = (thursday - firstMonday(year)).count();
    return {year, static_cast<int>(days / 7) + 1};
}

DayWindow daysOf(IsoWeek week) {
    const Day monday = firstMonday(week.year) + Days{7 * (week.week - 1)};
    return {monday, monday + Days{6}};
}

std::string toText(IsoWeek week) {
    std::string number = std::to_string(week.week);
    if (number.size() < 2) number.insert(0, 1, '0');
    std::string year = std::to_string(week.year);
    if (year.size() < 4) year.insert(0, 4 - year.size(), '0');
    return year + "-W" + number;
}

std::optional<IsoWeek> isoWeekFromText(std::string_view text) {
    if (text.size() != 8 || text.substr(4, 2) != "-W") return std::nullopt;
    int numbers[2] = {0, 0};
    for (std::size_t i = 0; i < 8; ++i) {
        if (i == 4 || i == 5) continue;
        if (text[i] < '0' || text[i] > '9') return std::nullopt;
        int& number = numbers[i < 4 ? 0 : 1];
        number = number * 10 + (text[i] - '0');
    }
    const IsoWeek week{numbers[0], numbers[1]};
    if (week.year < 1900 || week.year > 2199 || week.week < 1 || week.week > 53)
        return std::nullopt;
    return isoWeekOf(daysOf(week).first) == week ? std::optional{week} : std::nullopt;
}

}  // namespace tenthday
