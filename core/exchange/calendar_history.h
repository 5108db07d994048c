/// @file calendar_history.h  What a calendar said before decides how its events are numbered now.
#pragma once
#include "exchange/icalendar.h"

namespace tenthday {

/// The next state of a calendar (RFC 5545, 3.8.7.4 and 3.8.1.11):
/// an event that says the same keeps SEQUENCE and time stamp; one that moved or was reworded, or
/// came back, is raised by one; one that is gone and not yet past stays as CANCELLED, raised by one
/// and without its alarm. What is gone and past is dropped.
/// @param now    its events, each with another uid; their revisions are set here
/// @param stamp  of the revisions made now
[[nodiscard]] Calendar continued(const Calendar& before, Calendar now, Day today, UtcSecond stamp);

}  // namespace tenthday
