/// @file relations.h  How rows hang together: what a row alone cannot tell.
#pragma once
#include <string>

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

}  // namespace tenthday
