#include "calendar/plain_words.h"

#include <array>
#include <string_view>

#include "calendar/iso_week.h"

namespace tenthday {
namespace {

constexpr std::array<std::string_view, 7> kWeekdays{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                    "Friday", "Saturday", "Sunday"};
constexpr std::array<std::string_view, 12> kMonths{"January",   "February", "March",    "April",
                                                   "May",       "June",     "July",     "August",
                                                   "September", "October",  "November", "December"};
constexpr std::array<std::string_view, 5> kParts{"night", "morning", "midday", "afternoon",
                                                 "evening"};

std::string_view weekday(Day day) {
    return kWeekdays[static_cast<std::size_t>(isoWeekday(day) - 1)];
}

}  // namespace

DayPart dayPartOf(Moment moment) {
    const int hour = hourOf(moment).value;
    if (hour < 5 || hour >= 22) return DayPart::Night;
    if (hour < 11) return DayPart::Morning;
    if (hour < 14) return DayPart::Midday;
    return hour < 18 ? DayPart::Afternoon : DayPart::Evening;
}

std::string plainDay(Day day) {
    const date::year_month_day ymd{day};
    return std::string(weekday(day).substr(0, 3)) + " " +
           std::to_string(static_cast<unsigned>(ymd.day())) + " " +
           std::string(kMonths[static_cast<unsigned>(ymd.month()) - 1]);
}

std::string plainMoment(Moment moment) {
    return plainDay(dayOf(moment)) + " " + toText(moment).substr(11);
}

std::string plainPart(Moment moment) {
    // The small hours belong to the night that began the day before.
    const Day day = hourOf(moment).value < 5 ? dayOf(moment) - Days{1} : dayOf(moment);
    return std::string(weekday(day)) + " " +
           std::string(kParts[static_cast<std::size_t>(dayPartOf(moment))]);
}

}  // namespace tenthday
