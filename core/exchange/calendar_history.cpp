#include "exchange/calendar_history.h"

#include <unordered_map>
#include <unordered_set>

namespace tenthday {

Calendar continued(const Calendar& before, Calendar now, Day today, UtcSecond stamp) {
    std::unordered_map<std::string, const CalendarEvent*> earlier;
    for (const auto& event : before.events) earlier[event.uid] = &event;
    std::unordered_set<std::string> here;
    for (auto& event : now.events) {
        here.insert(event.uid);
        event.stamp = stamp;
        event.sequence = 0;
        const auto found = earlier.find(event.uid);
        if (found == earlier.end()) continue;
        const auto& old = *found->second;
        const bool stays = !old.cancelled && saySame(old, event);
        event.sequence = old.sequence + (stays ? 0 : 1);
        if (stays) event.stamp = old.stamp;
    }
    for (const auto& old : before.events) {
        if (here.contains(old.uid) || old.day < today) continue;
        auto event = old;
        if (!event.cancelled) {
            event.cancelled = true;
            event.alarm.reset();
            event.sequence += 1;
            event.stamp = stamp;
        }
        now.events.push_back(std::move(event));
    }
    return now;
}

}  // namespace tenthday
