#include "screen_text/legend_text.h"

#include "screen_text/words.h"

namespace tenthday::legend_text {

QString sign(LegendSign sign) {
    switch (sign) {
        case LegendSign::CellsOut:
            return Words::tr("cells go out");
        case LegendSign::MakeUp:
            return Words::tr("builder made up");
        case LegendSign::Idle:
            return Words::tr("queenless, no cells");
        case LegendSign::CellsDay:
            return Words::tr("cells are ripe");
        case LegendSign::TooMany:
            return Words::tr("too many cells");
        case LegendSign::DroneLayer:
            return Words::tr("drone layer");
        case LegendSign::Spent:
            return Words::tr("spent");
        case LegendSign::BoxedNumber:
            return Words::tr("how many in a thin stripe, or to promise");
        case LegendSign::InHand:
            return Words::tr("queens in hand");
        case LegendSign::OrderMet:
            return Words::tr("order met");
        case LegendSign::OrderAtRisk:
            return Words::tr("order in doubt");
        case LegendSign::OrderShort:
            return Words::tr("order short");
        case LegendSign::Leaves:
            return Words::tr("an order leaves");
        case LegendSign::Weekend:
            return Words::tr("weekend");
        case LegendSign::DayOff:
            return Words::tr("day off");
        case LegendSign::Chosen:
            return Words::tr("chosen batch");
        case LegendSign::ClearDay:
            return Words::tr("no clash, while dragging");
        case LegendSign::Planned:
            return Words::tr("as planned before, or proposed");
        case LegendSign::Trouble:
            return Words::tr("late, or other trouble");
        case LegendSign::Urgent:
            return Words::tr("urgent");
    }
    return {};
}

}  // namespace tenthday::legend_text
