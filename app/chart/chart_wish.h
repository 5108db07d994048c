/// @file chart_wish.h  What a hand on the chart wishes changed, as one value, and the edit it
/// makes.
#pragma once
#include "outlook/outlook.h"
#include "records/chart_verbs.h"

namespace tenthday {

/// Parts that are empty change nothing.
struct ChartWish {
    std::vector<Id<Batch>> batches;  ///< those meant, the grabbed one first
    Days by{0};                      ///< along days, all of them
    std::optional<LoadMove> load;    ///< to another builder
    struct Grafts {
        Id<Batch> batch;
        std::int32_t bar = 1;
        std::int32_t cells = 0;
        friend bool operator==(const Grafts&, const Grafts&) = default;
    };
    std::optional<Grafts> grafts;
    struct Share {
        Id<Batch> batch;
        Id<Yard> from;
        Id<Yard> to;
        friend bool operator==(const Share&, const Share&) = default;
    };
    std::optional<Share> share;  ///< cells to another yard

    [[nodiscard]] bool isEmpty() const { return by == Days{0} && !load && !grafts && !share; }
    friend bool operator==(const ChartWish&, const ChartWish&) = default;
};

/// One edit, whatever the wish holds; named by what it does first. Refused where a part of it is.
/// @param saved  the season as kept
[[nodiscard]] Result<ChangeSet> changesOf(const Outlook& saved, const ChartWish& wish,
                                          const IdSource& fresh);

/// Cells of a batch by yard: as planned where yards are planned, else as found. Beyond a plan, what
/// was found in `from`, which it does not name: cells for which a planned yard had no room.
[[nodiscard]] YardShares sharesOf(const Outlook& outlook, Id<Batch> batch, Id<Yard> from = {});

/// Cells of a batch to the yard below (above, for by < 0): from the yard that `place` names, where
/// it has some there, else from the one with most. None at the end, or where it has none at all.
[[nodiscard]] std::optional<ChartWish::Share> yardMove(const Outlook& outlook, Id<Batch> batch,
                                                       Id<Yard> place, int by);

}  // namespace tenthday
