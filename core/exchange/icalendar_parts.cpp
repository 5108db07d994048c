#include "exchange/icalendar_parts.h"

#include <array>
#include <cstdlib>

namespace tenthday {
namespace {

constexpr std::int32_t kHour = 60;  // minutes
constexpr std::int32_t kDay = 24 * kHour;
constexpr std::size_t kDateLength = 8;
constexpr std::size_t kTimeLength = 15;

std::string twoDigits(std::int64_t number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

/// `140000` of the seconds since midnight.
std::string clock(std::chrono::seconds time) {
    const auto seconds = time.count();
    return twoDigits(seconds / 3600) + twoDigits(seconds / 60 % 60) + twoDigits(seconds % 60);
}

/// A number of that many digits, or nothing.
std::optional<std::int32_t> digits(std::string_view text, std::size_t count) {
    if (text.size() < count) return std::nullopt;
    std::int32_t number = 0;
    for (const char c : text.substr(0, count)) {
        if (c < '0' || c > '9') return std::nullopt;
        number = number * 10 + (c - '0');
    }
    return number;
}

/// Takes `7H` off the front: the number before that letter. 0 when it does not stand there.
std::int32_t takeNumber(std::string_view& text, char letter) {
    std::size_t length = 0;
    while (length < text.size() && length < 6 && text[length] >= '0' && text[length] <= '9')
        ++length;
    if (length == 0 || length == text.size() || text[length] != letter) return 0;
    const auto number = digits(text, length);
    text.remove_prefix(length + 1);
    return number.value_or(0);
}

}  // namespace

std::string icalDate(Day day) {
    const auto text = toText(day);  // YYYY-MM-DD
    return text.substr(0, 4) + text.substr(5, 2) + text.substr(8, 2);
}

std::string icalTime(Moment moment) {
    return icalDate(dayOf(moment)) + "T" + clock(moment - Moment{dayOf(moment)});
}

std::string icalUtc(UtcSecond moment) {
    const auto day = date::floor<Days>(moment);
    return icalDate(Day{day.time_since_epoch()}) + "T" + clock(moment - day) + "Z";
}

std::string icalDuration(std::int32_t minutes) {
    if (minutes == 0) return "PT0S";
    std::string text = minutes < 0 ? "-P" : "P";
    const auto all = std::abs(minutes);
    const auto part = [&](std::int32_t number, char letter) {
        if (number > 0) text += std::to_string(number) + letter;
    };
    part(all / kDay, 'D');
    if (all % kDay > 0) text += 'T';
    part(all % kDay / kHour, 'H');
    part(all % kHour, 'M');
    return text;
}

std::optional<Day> dayFromIcal(std::string_view text) {
    if (text.size() != kDateLength || !digits(text, kDateLength)) return std::nullopt;
    return dayFromText(std::string(text.substr(0, 4)) + "-" + std::string(text.substr(4, 2)) + "-" +
                       std::string(text.substr(6, 2)));
}

std::optional<Moment> momentFromIcal(std::string_view text) {
    if (text.size() != kTimeLength || text[kDateLength] != 'T') return std::nullopt;
    const auto day = dayFromIcal(text.substr(0, kDateLength));
    const auto hour = digits(text.substr(9), 2);
    const auto minute = digits(text.substr(11), 2);
    if (!day || !hour || *hour > 23 || !minute || *minute > 59 || !text.ends_with("00"))
        return std::nullopt;
    return Moment{*day} + std::chrono::minutes{*hour * kHour + *minute};
}

std::optional<UtcSecond> utcFromIcal(std::string_view text) {
    if (text.size() != kTimeLength + 1 || !text.ends_with('Z')) return std::nullopt;
    const auto second = digits(text.substr(13), 2);
    const auto minute = momentFromIcal(std::string(text.substr(0, 13)) + "00");
    if (!second || *second > 59 || !minute) return std::nullopt;
    return UtcSecond{minute->time_since_epoch()} + std::chrono::seconds{*second};
}

std::optional<std::int32_t> minutesFromIcal(std::string_view text) {
    const auto whole = text;
    const bool before = text.starts_with('-');
    if (before) text.remove_prefix(1);
    if (!text.starts_with('P')) return std::nullopt;
    text.remove_prefix(1);
    auto minutes = takeNumber(text, 'D') * kDay;
    if (text.starts_with('T')) {
        text.remove_prefix(1);
        minutes += takeNumber(text, 'H') * kHour;
        minutes += takeNumber(text, 'M');
        (void)takeNumber(text, 'S');
    }
    if (before) minutes = -minutes;
    // Only what is written here is read here.
    return icalDuration(minutes) == whole ? std::optional(minutes) : std::nullopt;
}

}  // namespace tenthday
