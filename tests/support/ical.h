/// @file ical.h  Calendars as libical reads them: a judge of what we write.
#pragma once
#include <libical/ical.h>

#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace tenthday::test {

/// Owns what libical made of a text. Throws when that is no calendar.
class Ical {
public:
    explicit Ical(const std::string& text) : root_(icalparser_parse_string(text.c_str())) {
        if (root_ == nullptr || icalcomponent_isa(root_) != ICAL_VCALENDAR_COMPONENT)
            throw std::invalid_argument("no calendar: " + text.substr(0, 200));
    }
    ~Ical() { icalcomponent_free(root_); }
    Ical(const Ical&) = delete;
    Ical& operator=(const Ical&) = delete;

    [[nodiscard]] icalcomponent* root() const { return root_; }
    /// All properties that must be there are, none too often, and each could be read.
    [[nodiscard]] bool isSound() const {
        return icalrestriction_check(root_) == 1 && icalcomponent_count_errors(root_) == 0;
    }
    [[nodiscard]] std::vector<icalcomponent*> events() const {
        std::vector<icalcomponent*> events;
        for (auto* event = icalcomponent_get_first_component(root_, ICAL_VEVENT_COMPONENT);
             event != nullptr;
             event = icalcomponent_get_next_component(root_, ICAL_VEVENT_COMPONENT))
            events.push_back(event);
        return events;
    }
    /// By UID; throws when two have the same.
    [[nodiscard]] std::map<std::string, icalcomponent*> byUid() const {
        std::map<std::string, icalcomponent*> events;
        for (auto* event : this->events())
            if (!events.emplace(icalcomponent_get_uid(event), event).second)
                throw std::invalid_argument("twice: " + std::string(icalcomponent_get_uid(event)));
        return events;
    }

private:
    icalcomponent* root_;
};

/// The text of a property; "(none)" where there is no such property.
inline std::string textOf(icalcomponent* component, icalproperty_kind kind) {
    auto* property = icalcomponent_get_first_property(component, kind);
    if (property == nullptr) return "(none)";
    const auto* value = icalproperty_get_value(property);
    if (icalvalue_isa(value) == ICAL_TEXT_VALUE) return icalvalue_get_text(value);
    return icalproperty_get_value_as_string(property);
}

inline int sequenceOf(icalcomponent* event) { return icalcomponent_get_sequence(event); }
inline bool isCancelled(icalcomponent* event) {
    return icalcomponent_get_status(event) == ICAL_STATUS_CANCELLED;
}
/// `20270614` or `20270614T140000`.
inline std::string startOf(icalcomponent* event) {
    return icaltime_as_ical_string(icalcomponent_get_dtstart(event));
}
/// Its one alarm, or null.
inline icalcomponent* alarmIn(icalcomponent* event) {
    return icalcomponent_get_first_component(event, ICAL_VALARM_COMPONENT);
}
/// Minutes from the start of its event at which it rings.
inline int minutesOf(icalcomponent* alarm) {
    auto* property = icalcomponent_get_first_property(alarm, ICAL_TRIGGER_PROPERTY);
    return icaldurationtype_as_int(icalproperty_get_trigger(property).duration) / 60;
}

}  // namespace tenthday::test
