/// @file task_event.h  A task as an event of a calendar; its words come in ready-made.
#pragma once
#include "exchange/icalendar.h"
#include "tasks/task.h"

namespace tenthday {

struct EventWords {
    std::string summary;
    std::string description;
    std::string location;
    std::string category;
};

/// From rule, subject, place and occurrence: the same however the task moves.
[[nodiscard]] std::string uidOf(const TaskKey& key);

/// Hours (common practice): what takes an hour of its own is put down for one hour. The alarm
/// rings for what must be done on its day, an hour before its time or at 7:00 where it has none;
/// for what can wait at 7:00 of the last day on which it can be done; never later than two hours
/// before a queen can be out. What is done has none.
/// @param allDay  leaves the hour out
[[nodiscard]] CalendarEvent eventOf(const Task& task, bool allDay, const EventWords& words);

}  // namespace tenthday
