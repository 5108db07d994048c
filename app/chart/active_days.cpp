#include "chart/active_days.h"

#include <algorithm>

#include "supply/order_needs.h"

namespace tenthday {

DayWindow activeDays(const Outlook& outlook) {
    if (outlook.batches.empty()) return outlook.season;
    const auto& season = outlook.season;
    const Day today = std::clamp(outlook.snapshot.today(), season.first, season.last);
    DayWindow days{today, today};
    for (const auto& batch : outlook.batches) {
        days.first = std::min(days.first, dayOf(batch->timeline.graft));
        days.last = std::max(days.last, batch->timeline.hold.catchDay);
    }
    for (const auto& order : ordersOf(outlook.snapshot))
        days.last = std::max(days.last, order->due);
    for (const auto& builder : outlook.builders)
        for (const auto& makeUp : builder.makeUps) days.first = std::min(days.first, makeUp->day);
    return {std::max(season.first, days.first - Days{7}),
            std::min(season.last, days.last + Days{7})};
}

}  // namespace tenthday
