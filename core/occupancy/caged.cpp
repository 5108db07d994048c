#include "occupancy/caged.h"

#include <algorithm>

namespace tenthday {

std::optional<Day> virginsFrom(const BatchTimeline& timeline) {
    const auto* out = timeline.find(Event::Emergence);
    // Virgins that were bought in go into their nucs at once: none of them waits in a cage.
    if (out == nullptr || timeline.hold.transferDay > dayOf(out->likely)) return std::nullopt;
    return dayOf(out->likely) + Days{1};
}

bool isVirginPlacement(const BatchTimeline& timeline, const Placement& placement) {
    const auto from = virginsFrom(timeline);
    return placement.done && placement.target == CellTarget::Nuc && from && placement.day >= *from;
}

Days behindBatch(const BatchTimeline& timeline, Day transfer) {
    if (transfer <= timeline.hold.transferDay) return Days{0};
    const auto* due = timeline.find(Event::DueToFly);
    if (due == nullptr) return Days{0};
    return std::max(transfer - dayOf(due->likely), Days{0});
}

}  // namespace tenthday
