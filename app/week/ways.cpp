#include "week/ways.h"

#include <algorithm>

#include "screen_text/times_text.h"

namespace tenthday {

std::vector<DrivenWay> waysOf(const Snapshot& book) {
    std::vector<Ptr<Yard>> yards;
    for (const auto& yard : book.all<Yard>()) yards.push_back(yard);
    std::stable_sort(yards.begin(), yards.end(),
                     [](const auto& a, const auto& b) { return a->driveOrder < b->driveOrder; });
    std::vector<DrivenWay> ways;
    for (const auto& yard : yards) ways.push_back({std::nullopt, yard->id});
    for (std::size_t i = 0; i < yards.size(); ++i)
        for (std::size_t k = i + 1; k < yards.size(); ++k)
            ways.push_back({yards[i]->id, yards[k]->id});
    return ways;
}

QString placeName(const Snapshot& book, std::optional<Id<Yard>> id) {
    const auto yard = id ? book.find(*id) : nullptr;
    return yard ? QString::fromStdString(yard->label) : times_text::home();
}

}  // namespace tenthday
