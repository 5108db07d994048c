/// @file plan_answer.h  A season's plan: the batches proposed, what each is for, and what the
/// season is like before and after.
#pragma once
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

#include "base/tokens.h"
#include "calendar/window.h"
#include "records/rows.h"
#include "supply/order_states.h"

namespace tenthday {

/// One bar of a proposed batch.
struct ProposedBar {
    std::optional<Id<Line>> line;      ///< asked for by an order; none: any
    std::optional<Id<Queen>> breeder;  ///< none: the book has no breeder queen on that day
    std::int32_t grafts = 0;           ///< >= 1
    std::vector<std::optional<Id<Builder>>> builders;  ///< by step; none: nothing is kept there
    friend bool operator==(const ProposedBar&, const ProposedBar&) = default;
};

/// What a batch is for.
struct ServedOrder {
    Id<Order> order;
    double count = 0;  ///< queens, cells or virgins that it is to have of it, expected; > 0
    friend bool operator==(const ServedOrder&, const ServedOrder&) = default;
};

struct ProposedBatch {
    Day graft;
    Id<Method> method;
    std::vector<ProposedBar> bars;
    double cells = 0;                                       ///< ripe cells expected
    Day cellsDay;                                           ///< ripe cells come out
    Day ready;                                              ///< its queens are caught by plan
    std::vector<std::pair<Id<Yard>, std::int32_t>> shares;  ///< cells for nucs, by yard
    std::int32_t sold = 0;            ///< of its ripe cells, for orders for cells
    std::int32_t caged = 0;           ///< of its ripe cells, for orders for virgins
    std::vector<ServedOrder> orders;  ///< in the order of filling

    [[nodiscard]] std::int32_t grafts() const {
        std::int32_t sum = 0;
        for (const auto& bar : bars) sum += bar.grafts;
        return sum;
    }
    friend bool operator==(const ProposedBatch&, const ProposedBatch&) = default;
};

/// How an order stands.
struct OrderChance {
    Id<Order> order;
    OrderState state = OrderState::Short;
    double chance = 0;  ///< that it is whole on its day, 0..1; exact by the season's supply
    friend bool operator==(const OrderChance&, const OrderChance&) = default;
};

/// What a season costs and gives; of all its batches, those in the book among them.
struct PlanSums {
    std::int32_t graftDays = 0;
    std::int32_t grafts = 0;
    std::int32_t trips = 0;  ///< days by yard on which cells are brought or queens caught
    std::int32_t nucDays = 0;
    double spareQueens = 0;  ///< expected at the end, less all that is owed; below 0: too few
    std::vector<OrderChance> orders;  ///< in the order of filling
    friend bool operator==(const PlanSums&, const PlanSums&) = default;
};

/// An order that is not as sure as it must be, by its exact chance.
struct ShortOrder {
    Id<Order> order;
    /// The fewest queens, cells or virgins by which it would have to want less to be as sure as it
    /// must be, >= 1.
    std::int32_t lacking = 0;
    double wanted = 0;   ///< chance it must have, 0..1
    double reached = 0;  ///< that it has
    friend bool operator==(const ShortOrder&, const ShortOrder&) = default;
};

/// A day that takes longer than was asked, by a proposed batch.
struct LongDay {
    Day day;
    std::int32_t minutes = 0;  ///< of all its work and ways
    friend bool operator==(const LongDay&, const LongDay&) = default;
};

enum class PlanStatus : std::uint8_t {
    Proven,   ///< every order is met; see how near it is to the best
    Short,    ///< not every order is met; see `isShortProven`
    Stopped,  ///< cancelled, or out of time: the best found so far, nothing proven
    Nothing,  ///< nothing is owed that the batches in the book do not give
    Checked,  ///< looked at again, with nothing planned anew
};
template <>
struct TokensOf<PlanStatus> {
    static constexpr auto names =
        std::to_array<std::string_view>({"proven", "short", "stopped", "nothing", "checked"});
};

struct PlanAnswer {
    PlanStatus status = PlanStatus::Nothing;
    std::vector<ProposedBatch> batches;  ///< by graft, those held fast among them
    PlanSums before;
    PlanSums after;
    std::vector<ShortOrder> shortOf;  ///< in the order of filling
    std::vector<LongDay> longDays;    ///< where hours are limited; by day
    bool isShortProven = false;       ///< no plan meets them all
    /// Graft days more than are proven to be needed; 0: fewer do not do.
    std::int32_t graftDaysWithin = 0;
    std::int32_t leastGraftDays = 0;  ///< new ones, proven to be needed; 0: nothing is proven
    /// Of the plans with as few graft days none is better in grafts and earliness by more grafts
    /// than this: what it is proven within. Of no meaning while `graftDaysWithin` is above 0.
    std::int32_t graftsWithin = 0;
    std::int32_t rounds = 0;  ///< times it was solved anew to be sure enough
};

}  // namespace tenthday
