/// @file hands.h  Hands the queens that are expected out to orders. Inner to the room.
#pragma once
#include <span>
#include <vector>

#include "supply/order_states.h"

namespace tenthday {

/// In the order of filling: first what is earmarked, of all orders; then what is free. Queens that
/// went out are gone from their batch, or where none is named from those in hand longest.
class Hands {
public:
    Hands(const OrderBook& book, const QueenStock& stock);

    /// What the next order for queens is expected to have, by batch.
    std::vector<OrderFill> fill(const OrderNeed& need);

private:
    [[nodiscard]] double expected(const QueenPart& part, Day day) const;
    /// Gives of a part up to `most` that are there by a day; how many.
    double give(std::size_t part, Day day, double most);
    void takeGone(const QueensGone& gone);
    void keepEarmarked(const OrderNeed& need);

    const QueenStock& stock_;
    std::vector<double> given_;       ///< by part, what is kept for earmarks among it
    std::vector<double> most_;        ///< by part, what it will ever give
    std::vector<std::size_t> order_;  ///< parts, those nobody asks for by line or proof first
    std::vector<std::pair<const Order*, std::vector<OrderFill>>> kept_;
};

}  // namespace tenthday
