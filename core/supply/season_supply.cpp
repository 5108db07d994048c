#include "supply/season_supply.h"

#include <algorithm>

namespace tenthday {

SeasonSupply::SeasonSupply(const Snapshot& snapshot, const Timelines& timelines,
                           const NucOutlook& nucs, const MatingTable& mating)
    : snapshot_(&snapshot),
      maker_(std::make_shared<QueenMaker>(snapshot, mating)),
      all_(ordersOf(snapshot)),
      parts_(raisedParts(snapshot, timelines, nucs)),
      cells_(cellOrders(all_, parts_)) {
    makeStock({});
}

void SeasonSupply::makeStock(std::optional<CatchRule> rule) {
    stock_ = std::make_shared<const QueenStock>(maker_->stock(parts_, cells_.taken, rule));
    sums_ = std::make_shared<QueenSums>(*stock_);
}

SeasonSupply SeasonSupply::under(CatchRule rule) const {
    auto other = *this;
    other.makeStock(rule);
    return other;
}

std::vector<OrderOutlook> SeasonSupply::orders() {
    auto outlooks = queenOrders(all_, *stock_, *sums_);
    outlooks.insert(outlooks.end(), cells_.orders.begin(), cells_.orders.end());
    const auto place = [&](const OrderOutlook& outlook) {
        return std::find(all_.begin(), all_.end(), outlook.order);
    };
    std::sort(outlooks.begin(), outlooks.end(),
              [&](const auto& a, const auto& b) { return place(a) < place(b); });
    return outlooks;
}

std::int32_t SeasonSupply::owedBy(Day day) const {
    std::int32_t owed = 0;
    for (const auto& order : all_)
        if (isForQueens(order->kind) && order->due <= day) owed += order->count;
    return owed;
}

std::vector<Day> SeasonSupply::dueDays() const {
    std::vector<Day> days;
    for (const auto& order : all_)
        if (isForQueens(order->kind) && (days.empty() || days.back() != order->due))
            days.push_back(order->due);
    return days;
}

}  // namespace tenthday
