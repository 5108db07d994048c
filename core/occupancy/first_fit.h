/// @file first_fit.h  Gives cells that no stored placement names their nucs. Inner to the room.
#pragma once
#include <algorithm>
#include <functional>

#include "occupancy/free_sides.h"
#include "occupancy/sides.h"

namespace tenthday {

/// The yards in driving order, and which sides ever stand in each.
struct YardsOfSides {
    std::vector<Ptr<Yard>> yards;
    std::vector<std::vector<std::size_t>> sides;  ///< by yard, rising

    YardsOfSides(const Snapshot& snapshot, const BareSides& bare);
    /// Place in `yards`, or nothing.
    [[nodiscard]] std::optional<std::size_t> find(Id<Yard> yard) const;
};

/// What a batch wants of first fit.
struct FitWish {
    struct Planned {
        std::size_t yard = 0;    ///< in driving order
        std::int32_t cells = 0;  ///< planned for it and not placed there yet
    };
    Id<Batch> batch;
    const BatchTimeline* timeline = nullptr;
    std::int32_t cells = 0;        ///< that want a nuc and have none
    std::vector<Planned> planned;  ///< in driving order
};

/// The free sides of one yard as a batch finds them.
struct AskedYard {
    std::size_t yard = 0;  ///< in driving order
    std::vector<FreeSide> free;
};

struct TakenSide {
    std::size_t side = 0;
    std::size_t yard = 0;  ///< in driving order

    friend bool operator==(const TakenSide&, const TakenSide&) = default;
};

/// What first fit did for one batch.
struct BatchFit {
    FitWish wish;
    PlacedCells cells;
    std::vector<AskedYard> asked;     ///< what it hung on
    std::vector<AskedYard> notAsked;  ///< what it would have found in the other yards
    std::vector<TakenSide> taken;     ///< as they were given

    [[nodiscard]] bool hasAsked(std::size_t yard) const {
        return std::any_of(asked.begin(), asked.end(),
                           [&](const AskedYard& one) { return one.yard == yard; });
    }
};

using StoredRounds = std::vector<std::pair<Day, std::size_t>>;
/// The wish of a batch, whose stored rounds stand in these sides on these days, and its cells as
/// far as they are stored.
[[nodiscard]] BatchFit wishOf(const Snapshot& snapshot, const YardsOfSides& yards, Id<Batch> batch,
                              const BatchTimeline& timeline, const StoredRounds& stored,
                              const BareSides& bare);

/// Chooses sides for what a batch wants: the planned yards first, then the fewest yards that take
/// the rest. What is surely ready comes before what is only planned to be, longest ready first.
/// Fills `asked`, `taken` and the cells placed.
/// @param freeIn  sides of a yard that could take a cell on the batch's transfer day and hold it to
///                its catch; asked for once for a yard
void chooseSides(BatchFit& fit, std::size_t yards,
                 const std::function<std::vector<FreeSide>(std::size_t)>& freeIn);

/// Puts a batch's round into a side, and divides it.
void giveRound(SideOutlook& side, const FitWish& wish, const Snapshot& snapshot);

/// Batches in the order in which first fit serves them: places in `timelines`, by transfer.
[[nodiscard]] std::vector<std::size_t> fitOrder(const Timelines& timelines);

/// Gives all batches' cells their sides. A batch whose cells are partly recorded gets no more once
/// its day is over.
/// @return in the order of serving
[[nodiscard]] std::vector<BatchFit> firstFit(std::vector<SideOutlook>& sides,
                                             const YardsOfSides& yards, const Snapshot& snapshot,
                                             const Timelines& timelines, const BareSides& bare);

}  // namespace tenthday
