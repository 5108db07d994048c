/// @file change_set.h  One edit as data: rows before and after.
///
///   verb ──> ChangeSet ──┬─> SQL of one transaction        (app/book)
///                        ├─> the next Snapshot             (applied)
///                        ├─> its inverse, for undo         (inverse)
///                        └─> the change log's line         (app/book)
///
/// All four come from the same value, so they cannot disagree.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "records/row_change.h"
#include "records/snapshot.h"

namespace tenthday {

/// What the user did, for the undo text and the change log. The window words it.
enum class Verb : std::uint8_t {
    MakeBook,
    MoveBatch,
    MoveBatches,  ///< several by as many days
    MoveBars,
    MoveShare,  ///< cells to another yard
    SetGrafts,  ///< how many are grafted
    AddRow,
    EditRow,
    DeleteRow,
    Import,
    RecordOutcome,
    TickLook,
    SetFact,
    TickTask,
    PlanBatch,
    EditBatch,
    DeleteBatch,
    PlanSeason,
    GiveTask,
    SetMinutes,
    CarrySeason
};
template <>
struct TokensOf<Verb> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"make_book", "move_batch",  "move_batches", "move_bars",  "move_share",     "set_grafts",
         "add_row",   "edit_row",    "delete_row",   "import",     "record_outcome", "tick_look",
         "set_fact",  "tick_task",   "plan_batch",   "edit_batch", "delete_batch",   "plan_season",
         "give_task", "set_minutes", "carry_season"});
};

struct ChangeSet {
    Verb verb = Verb::EditRow;
    std::string subject;     ///< label of what was changed: "17"
    std::optional<Day> day;  ///< the day it went to, where there is one
    std::vector<RowChange> rows;

    /// Nothing to do: keeps empty steps off the undo stack.
    [[nodiscard]] bool isEmpty() const { return rows.empty(); }

    template <class Row>
    void add(Row row) {
        row.version = 1;
        rows.push_back(RowChangeOf<Row>{nullptr, std::make_shared<const Row>(std::move(row))});
    }
    /// Skipped when nothing differs.
    template <class Row>
    void edit(const Ptr<Row>& before, Row after) {
        after.id = before->id;
        after.version = before->version;
        if (after == *before) return;
        ++after.version;
        rows.push_back(RowChangeOf<Row>{before, std::make_shared<const Row>(std::move(after))});
    }
    template <class Row>
    void erase(const Ptr<Row>& row) {
        rows.push_back(RowChangeOf<Row>{row, nullptr});
    }

    /// The edit that takes this one back. A new edit: its versions are higher, never the old ones.
    [[nodiscard]] ChangeSet inverse() const;
};

/// The snapshot after the edit, or why it cannot be: a row is not as the edit found it
/// (someone else changed it), a reference dangles, a label is taken, a value is out of range.
/// The old snapshot is untouched.
[[nodiscard]] Result<Snapshot> applied(const Snapshot& snapshot, const ChangeSet& changes);

}  // namespace tenthday
