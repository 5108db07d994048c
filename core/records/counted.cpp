#include "records/counted.h"

namespace tenthday {

Ptr<Outcome> newestCount(std::span<const Ptr<Outcome>> outcomes, OutcomeKind kind,
                         std::optional<std::int32_t> bar) {
    const Ptr<Outcome>* newest = nullptr;
    for (const auto& row : outcomes)
        if (row->kind == kind && row->bar == bar && row->count && !row->side)
            if (newest == nullptr || row->day >= (*newest)->day) newest = &row;
    return newest == nullptr ? nullptr : *newest;
}

std::optional<Counted> countedOf(std::span<const Ptr<Outcome>> outcomes,
                                 std::span<const Ptr<BatchBar>> bars, OutcomeKind kind) {
    const auto whole = newestCount(outcomes, kind, std::nullopt);
    Counted sum{0, true};
    bool isSum = !bars.empty();
    for (const auto& bar : bars) {
        const auto own = newestCount(outcomes, kind, bar->bar);
        isSum = isSum && own && (!whole || own->day > whole->day);
        if (!isSum) break;
        sum.cells += own->count->value;
    }
    if (isSum) return sum;
    return whole ? std::optional(Counted{whole->count->value, false}) : std::nullopt;
}

}  // namespace tenthday
