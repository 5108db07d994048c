/// @file chart_parts.h  What of the chart a screen reader can walk to, in reading order. Pure but
/// for the words.
#pragma once
#include <QString>

#include "chart/chart_item.h"
#include "chart/chart_options.h"

namespace tenthday {

struct ChartPart {
    enum class Kind : std::uint8_t { Batch, Load, YardDay, Order, LanesBelow, LanesAbove };
    Kind kind{};
    TargetKey key;  ///< as the layout names it; of a batch, its first load
    QString name;
    QString value;
    std::optional<Id<Order>> order;
};

/// Batches with their loads by graft, then yards on the chosen day (today without one) in driving
/// order, then orders by due day; last, lanes out of sight.
[[nodiscard]] std::vector<ChartPart> chartParts(const Outlook& outlook, const ChartOptions& options,
                                                const HiddenLanes& hidden = {});

}  // namespace tenthday
