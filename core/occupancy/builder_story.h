/// @file builder_story.h  One builder's season in order: what was done, what stood there, what
/// follows.
#pragma once
#include "occupancy/broodless.h"
#include "occupancy/builder_room.h"

namespace tenthday {

/// In the order of one day.
enum class StoryKind : std::uint8_t {
    MadeUp,
    BroodIn,
    BeesIn,
    Pollen,
    Feed,
    Looked,       ///< for wild cells
    LookWanted,   ///< a look of a clock that no note stands for
    Load,         ///< a batch's
    Idle,         ///< queenless without cells
    NoOpenBrood,  ///< and perhaps no brood at all
    Ends
};

/// How a look that is wanted stands today.
enum class LookState : std::uint8_t {
    Ahead,
    Due,
    Overdue,  ///< a wild queen can still come
    Ticked,   ///< as a task; no note
    Missed    ///< never noted, and over
};

struct BuilderStoryLine {
    StoryKind kind{};
    Moment from;
    std::optional<Moment> until;  ///< none: one moment, or still so
    Ptr<MakeUp> makeUp = {};
    Ptr<BuilderNote> note = {};
    const WildClock* clock = nullptr;  ///< that it starts, or whose look it is
    LookState look{};
    bool second = false;  ///< the second look of its clock
    Ptr<Batch> batch = {};
    double cells = 0;                   ///< that stand there, once their take is known
    std::optional<OpenRoom> room = {};  ///< for them; none: no bound
    bool overfull = false;
    std::optional<Day> noBroodFrom = {};
};

/// By time. Clocks are pointed to, and stay the outlook's.
[[nodiscard]] std::vector<BuilderStoryLine> builderStory(const Snapshot& snapshot,
                                                         const BuilderOutlook& outlook);

}  // namespace tenthday
