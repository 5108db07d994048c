#include "supply/season_supply.h"

#include <algorithm>
#include <set>

#include "supply/earlier_queens.h"
#include "supply/own_rates.h"

namespace tenthday {

SeasonSupply::SeasonSupply(const Snapshot& snapshot, const Timelines& timelines,
                           const NucOutlook& nucs, const MatingTable& mating)
    : snapshot_(&snapshot),
      maker_(std::make_shared<QueenMaker>(snapshot, mating)),
      book_(orderBookOf(snapshot)),
      parts_(raisedParts(snapshot, timelines, nucs,
                         ratesInForce(snapshot, ownOutcomes(snapshot, timelines, nucs, mating)))),
      cells_(cellOrders(book_, parts_)) {
    makeStock();
}

void SeasonSupply::makeStock() {
    auto stock = std::make_shared<QueenStock>(maker_->stock(parts_, cells_.taken, rule_));
    for (auto& part : boughtQueens(*snapshot_)) stock->parts.push_back(std::move(part));
    for (auto& part : earlierQueens(*snapshot_)) stock->parts.push_back(std::move(part));
    stock_ = std::move(stock);
    sums_ = std::make_shared<QueenSums>(*stock_);
}

SeasonSupply SeasonSupply::under(CatchRule rule) const {
    auto other = *this;
    other.rule_ = rule;
    other.makeStock();
    return other;
}

OrderBook SeasonSupply::bookWith(const Ptr<Order>& order, std::string_view shipDays) const {
    auto book = book_;
    const auto after = std::find_if(book.needs.begin(), book.needs.end(), [&](const auto& earlier) {
        return isFilledBefore(*order, *earlier.order);
    });
    book.needs.insert(after, needOf(*snapshot_, order, shipDays));
    return book;
}

SeasonSupply SeasonSupply::with(const Order& order, std::string_view shipDays) const {
    auto other = *this;
    other.book_ = bookWith(std::make_shared<const Order>(order), shipDays);
    if (isForQueens(order.kind)) return other;
    other.cells_ = cellOrders(other.book_, parts_);
    other.makeStock();
    return other;
}

bool SeasonSupply::cellsServe(const Order& order, std::string_view shipDays) const {
    const auto asked = std::make_shared<const Order>(order);
    const auto cells = cellOrders(bookWith(asked, shipDays), parts_);
    return std::any_of(cells.orders.begin(), cells.orders.end(), [&](const auto& outlook) {
        return outlook.order == asked && outlook.state == OrderState::Met;
    });
}

std::vector<OrderOutlook> SeasonSupply::orders() {
    auto outlooks = queenOrders(book_, *stock_, *sums_);
    outlooks.insert(outlooks.end(), cells_.orders.begin(), cells_.orders.end());
    const auto place = [&](const OrderOutlook& outlook) {
        return std::find_if(book_.needs.begin(), book_.needs.end(),
                            [&](const auto& need) { return need.order == outlook.order; });
    };
    std::sort(outlooks.begin(), outlooks.end(),
              [&](const auto& a, const auto& b) { return place(a) < place(b); });
    return outlooks;
}

std::int32_t SeasonSupply::owedBy(Day day) const {
    std::int32_t owed = 0;
    for (const auto& need : book_.needs)
        if (isForQueens(need.order->kind) && need.order->due <= day) owed += need.rest;
    for (const auto& gone : book_.gone) {
        const auto order = snapshot_->find(gone.order);
        if (gone.day <= day || (order && order->due <= day)) owed += gone.count;
    }
    return owed;
}

SeasonSupply::Together SeasonSupply::together(std::span<const BatchClaim> claims, Day wholeOn) {
    if (claims.empty()) return {queensBy(wholeOn), CountSpread(0)};
    std::vector<double> weights;
    std::vector<CountSpread> fit;
    std::vector<CountSpread> own;
    for (auto& season : sums_->apart({}, wholeOn, claims)) {
        weights.push_back(season.weight);
        fit.push_back(std::move(season.fit));
        own.push_back(std::move(season.own));
    }
    return {mixture(weights, fit), mixture(weights, own)};
}

CountSpread SeasonSupply::servingBy(Day wholeOn, Day due) {
    const auto later = std::find_if(book_.needs.begin(), book_.needs.end(),
                                    [&](const auto& need) { return need.order->due > due; });
    const auto place = static_cast<std::size_t>(later - book_.needs.begin());
    return together(claimsAt(book_, place, false, wholeOn), wholeOn).fit;
}

std::vector<SeasonSupply::Spare> SeasonSupply::spares(double level) {
    std::vector<Spare> all;
    std::int32_t owed = 0;
    for (std::size_t place = 0; place < book_.needs.size(); ++place) {
        const auto& need = book_.needs[place];
        if (!isForQueens(need.order->kind) || need.rest == 0) continue;
        owed += need.rest;
        const auto there = together(claimsAt(book_, place, true, need.wholeOn), need.wholeOn);
        const bool isMeant =
            need.earmarked() >= need.rest && there.own.atLeast(need.rest) >= level - kRounding;
        if (!isMeant)
            all.push_back(
                {need.order->due, there.fit.reachedWith(level) - goneBy(book_, need, {}) - owed});
    }
    return all;
}

std::vector<Day> SeasonSupply::cellsDays() const {
    std::set<Day> days;
    for (const auto& part : parts_)
        if (part.given == Given::Sealed) days.insert(part.cellsDay());
    return {days.begin(), days.end()};
}

}  // namespace tenthday
