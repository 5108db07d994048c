/// @file builder_room.h  How many started cells a builder takes on a day.
#pragma once
#include <optional>

#include "records/snapshot.h"

namespace tenthday {

/// Room for started cells on a day.
struct OpenRoom {
    double cells;
    bool dearth = false;  ///< less, for there is a dearth
};

/// Cells are fed by bees there: anywhere but in an incubator and where cells only wait.
[[nodiscard]] bool raisesCells(BuilderKind kind);

/// Started cells it takes as a rule: its own room, else the default of its kind. None: no bound.
[[nodiscard]] std::optional<double> usualRoom(const Builder& builder, const Facts& facts);

/// Its own room, else the default of its kind; less in a dearth (S76). None: no bound, where cells
/// are only kept, or where a flow or a feed is noted, in which a box takes more.
[[nodiscard]] std::optional<OpenRoom> openRoomOn(const Snapshot& snapshot, const Builder& builder,
                                                 Day day);

}  // namespace tenthday
