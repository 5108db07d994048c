#include <set>

#include "exchange/content_lines.h"
#include "exchange/field_text.h"
#include "exchange/icalendar.h"
#include "exchange/icalendar_parts.h"

namespace tenthday {
namespace {

using Complaint = std::optional<std::string>;

template <class T>
Complaint take(const std::optional<T>& read, T& value, std::string_view what) {
    if (!read) return std::string(what) + " is needed";
    value = *read;
    return std::nullopt;
}

/// Reads line by line; knows in which component it is and which properties it has seen there.
class Reader {
public:
    Result<Calendar> read(std::string_view text) {
        const auto lines = readContentLines(text);
        if (!lines) return lines.error();
        for (const auto& line : lines.value()) {
            const auto complaint = isOver_ ? Complaint("the calendar has ended") : readLine(line);
            if (complaint) return atLine(line.number, *complaint);
        }
        if (!isOver_)
            return atLine(static_cast<std::int32_t>(lines.value().size()),
                          "END:VCALENDAR is missing");
        return std::move(calendar_);
    }

private:
    Complaint readLine(const ContentLine& line) {
        if (line.name == "BEGIN") return begin(line.value);
        if (line.name == "END") return end(line.value);
        if (inside_.empty()) return "BEGIN:VCALENDAR is needed";
        if (inside_.back() == "VCALENDAR") return ofCalendar(line);
        if (!seen_.insert(inside_.back() + " " + line.name).second) return line.name + " twice";
        return inside_.back() == "VEVENT" ? ofEvent(line) : ofAlarm(line);
    }

    Complaint begin(const std::string& name) {
        constexpr std::string_view kNested[] = {"VCALENDAR", "VEVENT", "VALARM"};
        if (inside_.size() >= std::size(kNested) || name != kNested[inside_.size()])
            return "no " + name + " belongs here";
        inside_.push_back(name);
        if (name == "VALARM") return std::nullopt;
        seen_.clear();
        event_ = {};
        until_.reset();
        return std::nullopt;
    }

    Complaint end(const std::string& name) {
        if (inside_.empty() || inside_.back() != name) return "no " + name + " is open";
        inside_.pop_back();
        isOver_ = inside_.empty();
        if (isOver_ && !isOurs_) return "PRODID is missing";
        return name == "VEVENT" ? finish() : std::nullopt;
    }

    Complaint finish() {
        for (const auto* needed : {"UID", "DTSTAMP", "SEQUENCE", "DTSTART", "SUMMARY", "STATUS"})
            if (!seen_.contains(std::string("VEVENT ") + needed))
                return std::string(needed) + " is missing";
        if (!uids_.insert(event_.uid).second) return "UID " + event_.uid + " twice";
        if (event_.hour && until_) {
            const auto length = *until_ - momentOf(event_.day, event_.hour);
            event_.minutes = static_cast<std::int32_t>(length.count());
        }
        calendar_.events.push_back(std::move(event_));
        return std::nullopt;
    }

    Complaint ofCalendar(const ContentLine& line) {
        if (line.name == "PRODID") {
            isOurs_ = line.value == kProductId;
            if (!isOurs_) return "another program made it";
        }
        if (line.name == "NAME") calendar_.name = unescapedText(line.value);
        if (line.name == "UID") return take(uuidFromText(line.value), calendar_.book, "an id");
        return std::nullopt;
    }

    Complaint ofEvent(const ContentLine& line) {
        const auto& value = line.value;
        if (line.name == "UID") event_.uid = unescapedText(value);
        if (line.name == "SUMMARY") event_.summary = unescapedText(value);
        if (line.name == "DESCRIPTION") event_.description = unescapedText(value);
        if (line.name == "LOCATION") event_.location = unescapedText(value);
        if (line.name == "CATEGORIES")
            for (const auto& part : partsOf(value))
                event_.categories.push_back(unescapedText(part));
        if (line.name == "DTSTAMP") return take(utcFromIcal(value), event_.stamp, "a time in UTC");
        if (line.name == "SEQUENCE") return sequence(value);
        if (line.name == "DTSTART") return start(line);
        if (line.name == "DTEND") until_ = momentFromIcal(value);
        if (line.name == "STATUS") return status(value);
        return std::nullopt;
    }

    Complaint start(const ContentLine& line) {
        if (line.parameters == "VALUE=DATE")
            return take(dayFromIcal(line.value), event_.day, "a day");
        Moment moment;
        if (auto complaint = take(momentFromIcal(line.value), moment, "a time")) return complaint;
        event_.day = dayOf(moment);
        event_.hour = hourOf(moment);
        return moment == momentOf(event_.day, event_.hour) ? Complaint{} : "a full hour is needed";
    }

    Complaint sequence(const std::string& value) {
        constexpr std::int32_t kMost = 1'000'000'000;  // room for all revisions to come
        if (auto complaint = readField(value, event_.sequence)) return complaint;
        const bool fits = event_.sequence >= 0 && event_.sequence <= kMost;
        return fits ? Complaint{} : "a number from 0 is needed";
    }

    Complaint status(const std::string& value) {
        event_.cancelled = value == "CANCELLED";
        return event_.cancelled || value == "CONFIRMED" ? Complaint{} : "STATUS is unknown";
    }

    Complaint ofAlarm(const ContentLine& line) {
        if (line.name != "TRIGGER") return std::nullopt;
        event_.alarm = minutesFromIcal(line.value);
        return event_.alarm ? Complaint{} : "a duration is needed";
    }

    Calendar calendar_;
    CalendarEvent event_;
    std::optional<Moment> until_;
    std::vector<std::string> inside_;
    std::set<std::string> seen_;
    std::set<std::string> uids_;
    bool isOurs_ = false;
    bool isOver_ = false;
};

}  // namespace

Result<Calendar> readCalendar(std::string_view text) { return Reader().read(text); }

}  // namespace tenthday
