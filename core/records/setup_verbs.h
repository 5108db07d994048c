/// @file setup_verbs.h  Edits of the lasting things but boxes: see box_verbs.h for those.
#pragma once
#include "base/id_source.h"
#include "records/change_set.h"

namespace tenthday {

/// Keeps a row: a new one, or another content of the one with its id. For Yard, Builder, Queen,
/// DayOff, Season, DroneSighting, YardNote, MakeUp and BuilderNote. Refused, naming table and
/// column, where the row breaks a rule.
template <class Row>
[[nodiscard]] Result<ChangeSet> saveRow(const Snapshot& snapshot, Row row);

/// Keeps a queen with her line by its label, a new line where there is none so called.
/// Refused where she would be among her own ancestors. @param fresh  id of the line, should it be
/// new
[[nodiscard]] Result<ChangeSet> saveQueen(const Snapshot& snapshot, Queen queen,
                                          const std::string& line, Id<Line> fresh);

/// Keeps a method with its steps, in their order; their ids, numbers and method are set here. A
/// method that batches use keeps its steps: with others it is copied, under the label given or,
/// where that is its own, under the next free one. Refused where steps are none or overlap.
/// @param snapshot  of all seasons: older batches use methods too
[[nodiscard]] Result<ChangeSet> saveMethod(const Snapshot& snapshot, Method method,
                                           std::vector<Step> steps, const IdSource& newId);

/// The label itself where no row of its kind has it, else counted up: "one box 2".
template <class Row>
[[nodiscard]] std::string freeLabel(const Snapshot& snapshot, const std::string& label);

/// Deletes a thing with its parts and the ticks of its tasks. Refused while anything hangs on it
/// (see usesOf).
/// @param snapshot  of all seasons
template <class Row>
[[nodiscard]] Result<ChangeSet> deleteWhole(const Snapshot& snapshot, Id<Row> id);

/// The thing is there until the day before `from`. Refused where it came only on `from` or later.
[[nodiscard]] Result<ChangeSet> retireBuilder(const Snapshot& snapshot, Id<Builder> id, Day from);
[[nodiscard]] Result<ChangeSet> retireBreeder(const Snapshot& snapshot, Id<Queen> id, Day from);

}  // namespace tenthday
