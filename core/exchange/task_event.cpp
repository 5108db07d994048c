#include "exchange/task_event.h"

#include <algorithm>

namespace tenthday {
namespace {

using std::chrono::hours;

constexpr hours kMorning{7};
constexpr hours kBeforeWork{1};
constexpr hours kBeforeDeadline{2};

std::optional<std::int32_t> alarmOf(const Task& task, std::optional<Hour> hour) {
    if (task.done || (!task.must && task.window.size() <= 1)) return std::nullopt;
    const Moment start = Moment{task.day} + hours{hour.value_or(Hour{0}).value};
    Moment alarm = Moment{task.must ? task.day : task.window.last} + kMorning;
    if (task.must && hour) alarm = start - kBeforeWork;
    if (task.deadline) alarm = std::min(alarm, *task.deadline - kBeforeDeadline);
    return static_cast<std::int32_t>((alarm - start).count());
}

}  // namespace

std::string uidOf(const TaskKey& key) {
    auto uid = std::string(token(key.rule)) + "-" + toText(key.subject);
    if (key.place != Uuid{}) uid += "-" + toText(key.place);
    return uid + "-" + std::to_string(key.occurrence) + "@tenthday";
}

CalendarEvent eventOf(const Task& task, bool allDay, const EventWords& words) {
    CalendarEvent event;
    event.uid = uidOf(task.key);
    event.summary = words.summary;
    event.description = words.description;
    event.location = words.location;
    if (!words.category.empty()) event.categories.push_back(words.category);
    event.day = task.day;
    if (!allDay) event.hour = task.hour;
    event.alarm = alarmOf(task, event.hour);
    return event;
}

}  // namespace tenthday
