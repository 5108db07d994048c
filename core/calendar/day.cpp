#include "calendar/day.h"

#include <cmath>

namespace tenthday {
namespace {

/// The number that exactly these digits write, or nothing.
std::optional<int> digits(std::string_view text) {
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

void append(std::string& text, unsigned value, int width) {
    std::string number = std::to_string(value);
    if (number.size() < static_cast<std::size_t>(width))
        number.insert(0, static_cast<std::size_t>(width) - number.size(), '0');
    text += number;
}

Moment minutesAfter(Moment from, double minutes) {
    return from + std::chrono::minutes{static_cast<std::int64_t>(minutes)};
}

/// Hours to minutes, without the dust of floating point (a ten-thousandth of a minute).
double minutesOf(double hours) {
    const double minutes = hours * 60.0;
    const double nearest = std::round(minutes);
    return std::abs(minutes - nearest) < 1e-4 ? nearest : minutes;
}

}  // namespace

Moment hoursAfter(Moment from, double hours) {
    return minutesAfter(from, std::round(minutesOf(hours)));
}
Moment hoursAfterDown(Moment from, double hours) {
    return minutesAfter(from, std::floor(minutesOf(hours)));
}
Moment hoursAfterUp(Moment from, double hours) {
    return minutesAfter(from, std::ceil(minutesOf(hours)));
}

std::string toText(Day day) {
    const date::year_month_day ymd{day};
    std::string text;
    append(text, static_cast<unsigned>(static_cast<int>(ymd.year())), 4);
    text += '-';
    append(text, static_cast<unsigned>(ymd.month()), 2);
    text += '-';
    append(text, static_cast<unsigned>(ymd.day()), 2);
    return text;
}

std::string toText(Moment moment) {
    const Day day = dayOf(moment);
    const auto minutes = static_cast<unsigned>((moment - Moment{day}).count());
    std::string text = toText(day) + 'T';
    append(text, minutes / 60, 2);
    text += ':';
    append(text, minutes % 60, 2);
    return text;
}

std::optional<Day> dayFromText(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day) return std::nullopt;
    const date::year_month_day ymd{date::year{*year}, date::month{static_cast<unsigned>(*month)},
                                   date::day{static_cast<unsigned>(*day)}};
    if (!ymd.ok()) return std::nullopt;
    const Day result{ymd};
    if (result < kFirstDay || result > kLastDay) return std::nullopt;
    return result;
}

std::optional<Moment> momentFromText(std::string_view text) {
    if (text.size() == 10) {
        const auto day = dayFromText(text);
        return day ? std::optional{momentOf(*day)} : std::nullopt;
    }
    if (text.size() != 16 || text[10] != 'T' || text[13] != ':') return std::nullopt;
    const auto day = dayFromText(text.substr(0, 10));
    const auto hour = digits(text.substr(11, 2));
    const auto minute = digits(text.substr(14, 2));
    if (!day || !hour || !minute || *hour > 23 || *minute > 59) return std::nullopt;
    return Moment{*day} + std::chrono::minutes{*hour * 60 + *minute};
}

}  // namespace tenthday
