/// @file cells_verbs.h  What a cells day keeps: one edit, as a plan or as done, and what cannot be.
#pragma once
#include <optional>
#include <string>

#include "base/id_source.h"
#include "cellsday/cells_draft.h"
#include "records/change_set.h"

namespace tenthday {

enum class CellsKept : std::uint8_t { Planned, Done };

/// Why a draft cannot be kept.
enum class CellsTrouble : std::uint8_t {
    TooMany,       ///< count cells of the batch more than are ripe
    NoPlaceYet,    ///< count cells of the batch without a place: only a plan may have such
    AfterToday,    ///< done or counted, but the day is still to come
    NucHeld,       ///< by record another cell or queen is in `side`
    QueenStays,    ///< a queen of a season before is in `side`
    BelowRecord,   ///< counted fewer than the count cells recorded on the day
    VirginsLater,  ///< virgins out of cages are recorded once they are in, not planned
};
struct CellsRefusal {
    CellsTrouble why{};
    Id<Batch> batch;
    std::int32_t count = 0;
    const SideOutlook* side = nullptr;  ///< of NucHeld, QueenStays
    std::string queen{};                ///< of QueenStays: her number
};

/// Nothing where the draft can be kept. @param nucs  those of the draft
[[nodiscard]] std::optional<CellsRefusal> whyNotKept(const Outlook& outlook,
                                                     const std::vector<CellsNuc>& nucs,
                                                     const CellsDraft& draft, CellsKept how);
/// The refusal as one plain English line, without the batch.
[[nodiscard]] std::string englishText(const CellsRefusal& refusal);

/// Keeps the draft in place of what was planned for its batches and day (or for days that are
/// over): a placement per cell, and what was counted; once all is done, how many were ripe. What is
/// recorded as done stays as it is; but the record of a virgin that leaves her cage becomes that of
/// where she goes, so that there are never more of them than were caged. A plan may leave cells
/// without a place. Empty where nothing differs; refused where it cannot be.
[[nodiscard]] Result<ChangeSet> changesOf(const Outlook& outlook, const CellsDraft& draft,
                                          CellsKept how, const IdSource& newId);

}  // namespace tenthday
