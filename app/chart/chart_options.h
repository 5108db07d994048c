/// @file chart_options.h  What the chart shows beside the season itself.
#pragma once
#include <QSizeF>
#include <algorithm>
#include <optional>
#include <vector>

#include "base/id.h"
#include "calendar/day.h"
#include "outlook/season_orders.h"

namespace tenthday {

struct ChartOptions {
    QSizeF size{1280, 720};  ///< logical px
    qreal pixelRatio = 1;    ///< device px per logical px
    qreal scrollY = 0;       ///< px of lanes above the plot's top
    std::optional<Day> chosenDay;
    std::optional<Id<Batch>> selected;
    OutlookPtr before;                ///< the season as kept, while a preview is shown
    std::vector<Id<Yard>> openYards;  ///< shown nuc by nuc
    bool legend = true;
    /// Orders and queens, reckoned apart; null while they are not there yet.
    SeasonOrdersPtr orders;
    bool ordersAreOld = false;  ///< of the season as it was: what is shown of them is about right

    [[nodiscard]] bool isOpen(Id<Yard> yard) const {
        return std::find(openYards.begin(), openYards.end(), yard) != openYards.end();
    }
};

}  // namespace tenthday
