/// @file what_if.h  What bad luck would do to the orders. Nothing is kept: a changed snapshot, and
/// two seasons' supply compared. See outlook/supply_of.h for the whole answer.
#pragma once
#include <utility>

#include "supply/season_supply.h"

namespace tenthday {

/// What is asked; any of them together.
struct WhatIf {
    std::optional<DayWindow> cold;  ///< no flying day on any of these

    struct BuilderLost {
        Id<Builder> builder;
        Day from;  ///< cells in it on this day or later are lost
    };
    std::optional<BuilderLost> builder;

    struct NucsRobbed {
        std::int32_t count = 0;
        Day from;                      ///< given up on this day, with what is in them
        std::optional<Id<Yard>> yard;  ///< of this yard; none: any
    };
    /// The least harmful first: empty nucs, then cells, virgins, laying queens.
    std::optional<NucsRobbed> nucs;

    std::optional<double> take;  ///< share of grafts started, 0..1, of bars not counted yet

    [[nodiscard]] bool isNothing() const { return !cold && !builder && !nucs && !take; }
};

/// An order before and after.
struct OrderBeforeAfter {
    OrderOutlook before;
    OrderOutlook after;
};

struct WhatIfAnswer {
    std::vector<OrderBeforeAfter> orders;  ///< in the order of filling
    /// Queens expected in hand by the end of the season and its last queens, since it began.
    double queensBefore = 0;
    double queensAfter = 0;
    /// Cold days were asked about, and no past year or climate is known: first eggs come at a fixed
    /// figure then, and nothing hangs on the weather of some days.
    bool coldUnknown = false;
};

/// The snapshot as it would be; its new rows are never kept. Cells in a builder that is lost come
/// to nothing, and no other builder takes them; a nuc that is robbed out stands nowhere from that
/// day on, and cells planned for it look for another. Refused where the builder is unknown, fewer
/// nucs with bees stand there on the day, or the take is no share.
/// @param nucs  of the snapshot as it is
[[nodiscard]] Result<Snapshot> snapshotIf(const Snapshot& snapshot, const Timelines& timelines,
                                          const NucOutlook& nucs, const WhatIf& what);

[[nodiscard]] WhatIfAnswer compared(SeasonSupply& before, SeasonSupply& after);

}  // namespace tenthday
