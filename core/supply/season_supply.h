/// @file season_supply.h  The orders of a season and the queens for them, from an outlook's parts.
#pragma once
#include <memory>
#include <vector>

#include "supply/cell_orders.h"

namespace tenthday {

/// Reckoned when asked for, and no part of the outlook. What it is made from must outlive it.
class SeasonSupply {
public:
    /// @param timelines  of the season's batches, in the order of graft
    SeasonSupply(const Snapshot& snapshot, const Timelines& timelines, const NucOutlook& nucs,
                 const MatingTable& mating);

    /// All orders of the season, in the order of filling.
    [[nodiscard]] std::vector<OrderOutlook> orders();
    /// Queens in hand by a day that serve any order for queens, over all possible seasons; all
    /// since the season began, those gone to orders among them.
    [[nodiscard]] const CountSpread& queensBy(Day day) { return sums_->overall({}, day); }
    /// Queens wanted since the season began: by orders for queens due by a day, those delivered and
    /// those to be replaced among them, and whatever else was delivered by then.
    [[nodiscard]] std::int32_t owedBy(Day day) const;
    /// Days on which an order for queens is due, rising, each once.
    [[nodiscard]] std::vector<Day> dueDays() const;
    /// The same were all batches caught by this rule.
    [[nodiscard]] SeasonSupply under(CatchRule rule) const;
    /// The same with one open order more.
    [[nodiscard]] SeasonSupply with(const Order& order, std::string_view shipDays) const;

    [[nodiscard]] const Snapshot& snapshot() const { return *snapshot_; }

private:
    void makeStock(std::optional<CatchRule> rule);

    const Snapshot* snapshot_;
    std::shared_ptr<QueenMaker> maker_;
    std::vector<Ptr<Order>> all_;
    std::vector<RaisedPart> parts_;
    CellOrders cells_;
    std::shared_ptr<const QueenStock> stock_;
    std::shared_ptr<QueenSums> sums_;
};

}  // namespace tenthday
