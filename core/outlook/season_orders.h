/// @file season_orders.h  The orders of an outlook's season as a picture shows them: how each
/// stands, the queens in hand day by day, what can be promised week by week.
#pragma once
#include <memory>
#include <vector>

#include "outlook/supply_of.h"
#include "supply/promise.h"

namespace tenthday {

/// Queens in hand at the end of a day, after what was owed by it has gone out; never below 0. The
/// three numbers are those that 10, 50 and 90 % of outcomes do not exceed.
struct QueensInHand {
    std::int32_t low = 0;
    std::int32_t likely = 0;
    std::int32_t high = 0;

    friend bool operator==(const QueensInHand&, const QueensInHand&) = default;
};

struct SeasonOrders {
    std::vector<OrderOutlook> orders;  ///< in the order of filling
    DayWindow days;                    ///< of `inHand`: the season shown
    std::vector<QueensInHand> inHand;  ///< by day
    std::vector<std::int32_t> owed;    ///< by day: wanted by orders for queens due by then
    std::vector<PromiseWeek> weeks;    ///< at kPromiseLevel

    /// The week a day lies in, or null outside the season's weeks.
    [[nodiscard]] const PromiseWeek* weekOf(Day day) const;
};
using SeasonOrdersPtr = std::shared_ptr<const SeasonOrders>;

/// Takes up to a few tenths of a second for the largest season: not for the way of a drag. A pure
/// function, so it may be reckoned beside the window's own work.
[[nodiscard]] SeasonOrdersPtr seasonOrdersOf(const Outlook& outlook);

/// There is something to show: a batch, or an order of the season.
[[nodiscard]] bool hasQueensOrOrders(const Outlook& outlook);

}  // namespace tenthday
