/// @file legend_text.h  In the legend of the chart: the signs beside the colours of its bands.
#pragma once
#include <QString>
#include <cstdint>

namespace tenthday {

enum class LegendSign : std::uint8_t {
    CellsOut,  ///< what hangs from a bar's end
    MakeUp,    ///< the open box
    Idle,      ///< an empty frame in a builder's row
    CellsDay,  ///< the tick over a sum
    TooMany,   ///< the same in red
    DroneLayer,
    Spent,
    BoxedNumber,
    InHand,  ///< the curve of the queens and its range
    OrderMet,
    OrderAtRisk,
    OrderShort,
    Leaves,  ///< the arrow of an order that leaves before or after it is due
    Weekend,
    DayOff,
    Chosen,    ///< frame and way of a chosen batch
    ClearDay,  ///< while a batch is dragged
    Planned,   ///< the broken outline of what is not so, or not yet
    Trouble,
    Urgent
};

namespace legend_text {

[[nodiscard]] QString sign(LegendSign sign);

}  // namespace legend_text
}  // namespace tenthday
