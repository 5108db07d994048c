/// @file builders.h  Each builder over the season: loads, rest, looks for wild cells, idle days.
#pragma once
#include <optional>
#include <unordered_map>
#include <vector>

#include "base/shared_list.h"
#include "calendar/window.h"
#include "records/snapshot.h"
#include "timeline/batch_timeline.h"

namespace tenthday {

/// One batch's cells in one builder.
struct BuilderLoad {
    Id<Batch> batch;
    const LoadSpan* span = nullptr;  ///< owned by the batch's timeline
};

/// A wild-cell clock: runs from a dequeening or open brood put in.
struct WildClock {
    Uuid cause;  ///< id of the make-up or of the note on brood put in
    Moment start;
    DayWindow firstLook;  ///< days on which the first look falls due
    DayWindow secondLook;
    std::optional<Day> firstTicked;
    std::optional<Day> secondTicked;  ///< a look after all its cells are begun: ends the clock
    Moment oldest;                    ///< wild queen of a 96 h larva, seldom
    Moment old;                       ///< of a 72 h larva
    Moment young;                     ///< of a 36 h larva
    Moment runsOut;
};

struct BuilderOutlook {
    Ptr<Builder> builder;
    std::vector<BuilderLoad> loads;    ///< by time
    std::vector<Ptr<MakeUp>> makeUps;  ///< by time
    std::vector<WildClock> clocks;     ///< by start
    std::vector<DayWindow> idle;       ///< made up, queenless, no cells
    /// Cells above the builder's room for open (started) or for sealed ones.
    struct Overfull {
        Id<Batch> batch;  ///< the batch whose cells made it so
        Moment from;
        double cells;
        double room;
        bool sealed = false;
        bool dearth = false;  ///< the room is that of a dearth
    };
    std::vector<Overfull> overfull;
    /// A batch comes before the builder is free for it: sooner than its rhythm, or while it rests;
    /// or it stands there after the builder's last day.
    struct TooSoon {
        Id<Batch> batch;
        Moment from;
        Id<Batch> after;              ///< the batch before it
        std::optional<Day> freeFrom;  ///< none: after the builder's last day
    };
    std::vector<TooSoon> tooSoon;
};

/// All builders of the snapshot, in order of label. `timelines` in the order of graft; the result
/// points into them.
/// @param before  those of a snapshot that differs in batches, bars, loads, shares and make-ups
///                alone, whose timelines are still alive: a builder about which nothing has changed
///                is the very same
[[nodiscard]] SharedList<BuilderOutlook> builderOutlooks(
    const Snapshot& snapshot, const Timelines& timelines,
    const SharedList<BuilderOutlook>& before = {});

}  // namespace tenthday
