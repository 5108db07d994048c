/// @file season_supply.h  The orders of a season and the queens for them, from an outlook's parts.
#pragma once
#include <memory>
#include <string_view>
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
    /// Queens that an order not in the book, due on a day and whole on another (or the same), and
    /// those filled before it can have, over all possible seasons: without what is earmarked for
    /// orders due later.
    [[nodiscard]] CountSpread servingBy(Day wholeOn, Day due);
    /// Of an order in the book for queens that is not delivered: how many more those filled before
    /// it could want, at a chance, and it would still be whole; below 0 where it is short.
    struct Spare {
        Day due;
        std::int32_t queens = 0;
    };
    /// In the order of filling; none for an order that is sure of what is earmarked for it.
    [[nodiscard]] std::vector<Spare> spares(double level);
    /// The same were all batches caught by this rule.
    [[nodiscard]] SeasonSupply under(CatchRule rule) const;
    /// The same with one open order more.
    [[nodiscard]] SeasonSupply with(const Order& order, std::string_view shipDays) const;
    /// An order for cells or virgins would be met, whatever it does to others: quick to tell.
    [[nodiscard]] bool cellsServe(const Order& order, std::string_view shipDays) const;

    [[nodiscard]] const Snapshot& snapshot() const { return *snapshot_; }
    [[nodiscard]] const OrderBook& book() const { return book_; }
    /// Days on which batches give ripe cells, rising.
    [[nodiscard]] std::vector<Day> cellsDays() const;
    /// The mean of queensBy().
    [[nodiscard]] double expectedBy(Day day) { return queensBy(day).mean(); }

private:
    void makeStock();
    [[nodiscard]] OrderBook bookWith(const Ptr<Order>& order, std::string_view shipDays) const;
    /// What serves an order under these claims, over all seasons; of `own`, what is meant for it.
    struct Together {
        CountSpread fit{0};
        CountSpread own{0};
    };
    [[nodiscard]] Together together(std::span<const BatchClaim> claims, Day wholeOn);

    const Snapshot* snapshot_;
    std::optional<CatchRule> rule_;  ///< for all batches
    std::shared_ptr<QueenMaker> maker_;
    OrderBook book_;
    std::vector<RaisedPart> parts_;
    CellOrders cells_;
    std::shared_ptr<const QueenStock> stock_;
    std::shared_ptr<QueenSums> sums_;
};

}  // namespace tenthday
