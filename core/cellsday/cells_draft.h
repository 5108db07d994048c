/// @file cells_draft.h  A cells day being planned or recorded: ripe cells, and where each one goes.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday {

/// Cells by where they go; index: CellTarget.
using WayCounts = std::array<std::int32_t, kTokenCount<CellTarget>>;
[[nodiscard]] std::int32_t sumOf(const WayCounts& counts);

/// The ripe cells of one batch on one day. At every moment ripe() = done + drafted + left().
struct BatchCells {
    Id<Batch> batch;
    std::int32_t expected = 0;            ///< ripe on this day, as reckoned or counted before
    bool wasCounted = false;              ///< `expected` rests on a count
    std::optional<std::int32_t> counted;  ///< as counted now: not kept yet
    std::int32_t onOtherDays = 0;  ///< cells of the batch that have their place on other days
    /// Virgins by now, in the cages or the incubator their cells went into on a day before: they
    /// can go into nucs. In `others` from the start; what stays there stays as it is.
    WayCounts caged{};
    std::vector<Id<NucSide>> doneNucs;  ///< recorded on this day
    WayCounts doneOthers{};             ///< recorded on this day; of nucs 0
    std::vector<Id<NucSide>> nucs;      ///< drafted, in no order
    WayCounts others{};                 ///< drafted; of nucs 0

    [[nodiscard]] std::int32_t ripe() const { return counted.value_or(expected); }
    [[nodiscard]] std::int32_t done() const;
    [[nodiscard]] std::int32_t drafted() const;
    /// Cells without a place yet; below 0: so many more than there are.
    [[nodiscard]] std::int32_t left() const { return ripe() - done() - drafted(); }
    [[nodiscard]] bool goesInto(Id<NucSide> side) const;
    /// Virgins are drafted to leave their cages.
    [[nodiscard]] bool takesVirgins() const;
};

/// All batches whose cells are ripe on a day. A plain value: nothing is kept before changesOf.
struct CellsDraft {
    Day day;
    std::vector<BatchCells> batches;  ///< by graft

    [[nodiscard]] std::int32_t ripe() const;
    [[nodiscard]] std::int32_t left() const;
    [[nodiscard]] std::int32_t toNucs() const;
    /// Cells of a way on the day, recorded ones too.
    [[nodiscard]] std::int32_t on(CellTarget way) const;
    /// The batch whose cell is drafted for, or went into, a nuc; null where there is none.
    [[nodiscard]] const BatchCells* in(Id<NucSide> side) const;
};

/// The day as it is in the book: what was recorded and what is planned. Batches whose cells are to
/// come out on it, those with a cell placed on it, and, up to today, those whose day is over while
/// cells of theirs have no record (until their queens are out), or virgins wait in cages (up to
/// their last useful age for mating).
[[nodiscard]] CellsDraft cellsDraft(const Outlook& outlook, Day day);

/// Whether a nuc can take a cell.
enum class NucFit : std::uint8_t {
    Ready,     ///< surely
    Likely,    ///< by plan: a queen is to be caught before
    NotReady,  ///< by hand only
    Held       ///< another cell or queen is in it by record
};

/// A nuc in walking order.
struct CellsNuc {
    const SideOutlook* side = nullptr;
    Id<Yard> yard;
    std::size_t stop = 0;  ///< place of the yard on the round, 0 first
    NucFit fit = NucFit::NotReady;
    std::optional<Day> since;  ///< ready since or, for NotReady, ready from
    NotReady why{};            ///< of NotReady; None: another cell comes before this one's catch

    [[nodiscard]] Id<NucSide> id() const { return side->side->id; }
    [[nodiscard]] bool isOpen() const { return fit <= NucFit::Likely; }
};

/// All nucs that stand in a yard on the draft's day in walking order: yards in driving order, boxes
/// by label, then sides. The cells of the draft are not in them yet.
[[nodiscard]] std::vector<CellsNuc> nucsOf(const Outlook& outlook, const CellsDraft& draft);

/// Drafts a cell of a batch for a nuc; from another batch it is taken. Without effect where a cell
/// went in by record.
void give(CellsDraft& draft, std::size_t batch, Id<NucSide> side);
/// Takes the drafted cell out again.
void takeOut(CellsDraft& draft, Id<NucSide> side);

/// How many drafted cells of a batch go to a yard.
[[nodiscard]] std::int32_t cellsIn(const CellsDraft& draft, const std::vector<CellsNuc>& nucs,
                                   std::size_t batch, Id<Yard> yard);
/// Brings them to so many, as far as open nucs allow: by first fit, longest ready first; out again
/// in the opposite order.
void setCellsIn(CellsDraft& draft, const std::vector<CellsNuc>& nucs, std::size_t batch,
                Id<Yard> yard, std::int32_t cells);

/// A cell's way into a nuc, drafted or done.
struct PlacementStop {
    const CellsNuc* nuc = nullptr;
    Id<Batch> batch;
    bool done = false;
};
/// The placement list: nucs that get a cell of the day, in walking order. Points into `nucs`.
[[nodiscard]] std::vector<PlacementStop> placementList(const CellsDraft& draft,
                                                       const std::vector<CellsNuc>& nucs);

}  // namespace tenthday
