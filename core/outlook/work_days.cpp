#include "outlook/work_days.h"

#include <algorithm>

namespace tenthday {

DayWindow workDays(const Outlook& outlook) {
    const Day today = outlook.snapshot.today();
    DayWindow days = outlook.snapshot.startDays();
    days.first = std::min(days.first - Days{7}, today);
    days.last = std::max(days.last, today);
    for (const auto& batch : outlook.batches)
        days.last = std::max(
            {days.last, batch->timeline.hold.catchDay, dayOf(batch->timeline.hold.leaves)});
    return days;
}

}  // namespace tenthday
