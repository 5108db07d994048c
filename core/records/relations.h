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
/// Day 0 as a moment, from what a batch starts with: later than the breeder queen's confining,
/// reckoned back from cells or virgins.
[[nodiscard]] Moment reckonedGraft(Start start, Moment begin, const Facts& facts);
/// The day of that moment, for a batch.
[[nodiscard]] Day graftDay(const Snapshot& snapshot, const Batch& batch);
/// The day the graft is recorded on, else the planned one.
[[nodiscard]] Day graftedOrPlanned(const Snapshot& snapshot, const Batch& batch);
/// The builders that take a batch's first step, each once.
[[nodiscard]] std::vector<Id<Builder>> firstBuilders(const Snapshot& snapshot, Id<Batch> batch);
/// The batches a make-up was for: those grafted in its builder on the first graft day after it, if
/// that day is one it belongs to. Several when they share the day.
[[nodiscard]] std::vector<Ptr<Batch>> batchesServed(const Snapshot& snapshot, const MakeUp& makeUp);
/// The make-ups of its first builders that were for this batch; none where it has no graft.
[[nodiscard]] std::vector<Ptr<MakeUp>> makeUpsFor(const Snapshot& snapshot, const Batch& batch);
/// Those of them that serve this batch alone.
[[nodiscard]] std::vector<Ptr<MakeUp>> ownMakeUps(const Snapshot& snapshot, const Batch& batch);

}  // namespace tenthday
