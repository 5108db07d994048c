/// @file relations.h  How rows hang together: what a row alone cannot tell.
#pragma once
#include <string>
#include <vector>

#include "records/snapshot.h"

namespace tenthday {

/// "Q18 A"; the box alone where it is undivided.
[[nodiscard]] std::string nucName(const Box& box, const NucSide& side);

/// The stay or the layout of a box in force on a day, or null.
[[nodiscard]] Ptr<BoxStay> stayOn(const Snapshot& snapshot, Id<Box> box, Day day);
[[nodiscard]] Ptr<BoxLayout> layoutOn(const Snapshot& snapshot, Id<Box> box, Day day);

/// The yard a box stands in on a day; nothing where it stands nowhere.
[[nodiscard]] std::optional<Id<Yard>> yardOn(const Snapshot& snapshot, Id<Box> box, Day day);

/// A make-up belongs to a graft in its builder on the same day or up to 4 days later
/// (common practice).
[[nodiscard]] bool isMadeUpFor(Day makeUp, Day graft);

/// The graft is recorded: what was observed no longer moves.
[[nodiscard]] bool isGrafted(const Snapshot& snapshot, Id<Batch> batch);
/// The day of the graft: a batch that starts with the breeder queen confined is grafted later.
[[nodiscard]] Day graftDay(const Snapshot& snapshot, const Batch& batch);
/// The builders that take a batch's first step, each once.
[[nodiscard]] std::vector<Id<Builder>> firstBuilders(const Snapshot& snapshot, Id<Batch> batch);
/// The make-ups of its first builders that were for this batch: just before its graft, with no
/// other batch grafted in between.
[[nodiscard]] std::vector<Ptr<MakeUp>> makeUpsFor(const Snapshot& snapshot, const Batch& batch);

}  // namespace tenthday
