/// @file yard_state.h  Nectar flow, dearth and robbing as noted, and what is fed against dearth.
#pragma once
#include <vector>

#include "records/snapshot.h"

namespace tenthday {

/// The note of this kind in force in a yard on a day, the newest; or null.
[[nodiscard]] Ptr<YardNote> yardNoteOn(const Snapshot& snapshot, Id<Yard> yard, YardNoteKind kind,
                                       Day day);
/// A dearth noted, and no flow: what the note says of a part of its days decides less than a flow
/// that was seen.
[[nodiscard]] Ptr<YardNote> dearthOn(const Snapshot& snapshot, Id<Yard> yard, Day day);

/// A feed is noted in the builder's diary that serves on that day (fact feed_serves_d).
[[nodiscard]] bool isFedOn(const Snapshot& snapshot, Id<Builder> builder, Day day);
/// The day on which the task of feeding a builder for a batch was ticked.
[[nodiscard]] std::optional<Day> feedTicked(const Snapshot& snapshot, Id<Batch> batch,
                                            Id<Builder> builder);

/// The first builders of a batch that stand in a dearth on its graft day, and the note that says
/// so; none for a start without graft.
struct HungryBuilder {
    Ptr<Builder> builder;
    Ptr<YardNote> dearth;
    std::vector<std::int32_t> bars;  ///< of the batch, that are started there
    std::optional<Day> fed;          ///< by a note, or by a task ticked
};
[[nodiscard]] std::vector<HungryBuilder> inDearth(const Snapshot& snapshot, const Batch& batch);

/// Bars of a batch that are started in a dearth without feed, by number.
[[nodiscard]] std::vector<std::int32_t> hungryBars(const Snapshot& snapshot, const Batch& batch);

}  // namespace tenthday
