/// @file chart_options.h  What the chart shows beside the season itself.
#pragma once
#include <QSizeF>
#include <algorithm>
#include <map>
#include <optional>
#include <vector>

#include "base/id.h"
#include "calendar/day.h"
#include "chart/chart_item.h"
#include "chart/chart_proposals.h"
#include "chart/legend_mark.h"
#include "outlook/season_orders.h"

namespace tenthday {

/// Lanes that fold to one line with their name; yards fold by themselves.
enum class LaneName : std::uint8_t { FlyingDays, Builders, CellsDays, Queens, Promise };

/// The legend as it was: one that came and went, or grew, with each day of a drag would move all
/// that is dragged over.
struct LegendHeld {
    bool folded = false;
    std::vector<LegendMark> marks;
    friend bool operator==(const LegendHeld&, const LegendHeld&) = default;
};

/// Of builders' rows, how many tracks they have at the least; loads without a builder stand under
/// none.
using HeldTracks = std::map<Id<Builder>, int>;

struct ChartOptions {
    QSizeF size{1280, 720};  ///< logical px
    qreal pixelRatio = 1;    ///< device px per logical px
    qreal scrollY = 0;       ///< px of lanes above the plot's top
    std::optional<Day> chosenDay;
    std::optional<Id<Batch>> selected;
    OutlookPtr before;                    ///< the season as kept, while a preview is shown
    std::vector<Id<Batch>> alsoSelected;  ///< moved along with `selected`
    std::vector<Id<Yard>> openYards;      ///< shown nuc by nuc
    std::vector<LaneName> foldedLanes;
    bool legend = true;
    bool legendFolded = false;             ///< to its head, which opens it again
    bool legendOpened = false;             ///< by hand: open however little room lanes have
    std::optional<LegendHeld> legendHeld;  ///< while a preview is shown
    HeldTracks heldTracks{};               ///< so that rows hold still, while a preview is shown
    bool isPicture = false;       ///< nobody scrolls or presses: lanes without room are left out
    bool canFold = false;         ///< marks beside names fold lanes
    bool strip = false;           ///< the whole season in small, where not all of it is shown
    TargetKey place;              ///< where the keys are: framed
    bool offersDays = false;      ///< while a batch is dragged: `clearDays` are marked
    std::vector<Day> clearDays;   ///< days on which it could start and clash with nothing
    ChartProposalsPtr proposals;  ///< drawn as ghosts beside what is planned
    /// Orders and queens, reckoned apart; null while they are not there yet.
    SeasonOrdersPtr orders;
    bool ordersAreOld = false;  ///< of the season as it was: what is shown of them is about right
    friend bool operator==(const ChartOptions&, const ChartOptions&) = default;

    [[nodiscard]] bool isFolded(LaneName lane) const {
        return std::find(foldedLanes.begin(), foldedLanes.end(), lane) != foldedLanes.end();
    }
    /// Alone or among others.
    [[nodiscard]] bool isSelected(Id<Batch> batch) const {
        return selected == batch ||
               std::find(alsoSelected.begin(), alsoSelected.end(), batch) != alsoSelected.end();
    }
    [[nodiscard]] bool isOpen(Id<Yard> yard) const {
        return std::find(openYards.begin(), openYards.end(), yard) != openYards.end();
    }
};

}  // namespace tenthday
