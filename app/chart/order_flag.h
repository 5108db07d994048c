/// @file order_flag.h  What stands on the flag of an order, and the room it takes.
#pragma once
#include <QStringList>

#include "chart/text_ruler.h"
#include "outlook/season_orders.h"

namespace tenthday {

namespace order_flag {
inline constexpr qreal kPadX = 5;
inline constexpr qreal kToWord = 4;
inline constexpr qreal kNotch = 5;  ///< how deep the tail of a short order's flag is cut
}  // namespace order_flag

/// What stands on a flag and beside it, and the room it takes.
struct OrderFlag {
    QStringList lines;  ///< one, or two where the name has words enough
    QString word;       ///< empty on a flag that says all itself
    qreal cloth = 0;    ///< width of the flag itself
    qreal width = 0;    ///< with its word

    [[nodiscard]] int rows() const { return static_cast<int>(lines.size()); }
};

/// With its widths, as an order in such a state is drawn.
[[nodiscard]] OrderFlag measured(OrderFlag flag, OrderState state, const TextRuler& ruler);
/// From the one wished to the shortest: the whole name in a line, in two, the count alone.
[[nodiscard]] std::vector<OrderFlag> flagsOf(const OrderOutlook& order, const TextRuler& ruler);

}  // namespace tenthday
