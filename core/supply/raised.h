/// @file raised.h  What a batch raises, line by line, and how far it is known. Inner to the room.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "losses/batch_losses.h"
#include "supply/nuc_room.h"

namespace tenthday {

/// Queens known of from a day on.
struct KnownQueens {
    Day day;                   ///< in hand, or to be caught by plan
    std::int32_t laying = 0;   ///< seen laying, still to be judged
    std::int32_t certain = 0;  ///< caught, or what has still to be found is found
};

/// Nucs looked at before there were eggs: the queens may still lay, the later the less likely.
struct WaitingQueens {
    Day seen;            ///< the last look
    bool isOut = false;  ///< the virgin herself was seen; else nothing was
    std::int32_t nucs = 0;
};

/// The bars of a batch that have one line and one rate of acceptance: they share the batch's luck.
struct RaisedPart {
    Id<Batch> batch;
    std::optional<Id<Line>> line;
    const BatchTimeline* timeline = nullptr;
    Given given = Given::Sealed;
    ChainRates rates;          ///< with what this batch has shown so far
    CountSpread ripe{0};       ///< cells on the cells day, or queens that came
    CellsElsewhere elsewhere;  ///< of these, by plan or record
    bool isSettled = false;    ///< nothing more comes out of its builders
    std::int32_t room = 0;     ///< most cells in nucs

    /// In nucs, by what was seen; cells of a batch that is not settled are not among them.
    std::int32_t unseen = 0;  ///< nothing yet; of a settled batch
    std::int32_t looked = 0;  ///< nucs of which anything was seen
    std::vector<WaitingQueens> waiting;
    std::vector<KnownQueens> known;

    /// Queens that come out of so many of its cells.
    [[nodiscard]] CountSpread emerged(const CountSpread& cells) const;
    /// Chance of one of them.
    [[nodiscard]] double emergedShare() const;
    /// The days of its ripe cells and of its virgins.
    [[nodiscard]] Day cellsDay() const { return timeline->hold.transferDay; }
    [[nodiscard]] Day outDay() const;
};

/// By batch in the order of timelines, its lines by bar. A batch given up has none.
///
/// A nuc does not tell its bar: where a batch has several lines, nucs and cells that go elsewhere
/// are dealt to them in proportion to their ripe cells.
/// @param rates  in force for batches that were fed
[[nodiscard]] std::vector<RaisedPart> raisedParts(const Snapshot& snapshot,
                                                  const Timelines& timelines,
                                                  const NucOutlook& nucs, const ChainRates& rates);

}  // namespace tenthday
