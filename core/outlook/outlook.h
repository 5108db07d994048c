/// @file outlook.h  All derived facts of a snapshot. A pure fold over rows; a memo spares work.
#pragma once
#include <memory>
#include <unordered_map>
#include <vector>

#include "findings/finding.h"
#include "limits/season_limits.h"
#include "mating/mating_table.h"
#include "occupancy/builders.h"
#include "occupancy/nucs.h"
#include "records/snapshot.h"
#include "tasks/task.h"
#include "timeline/batch_timeline.h"

namespace tenthday {

/// What a batch's timeline was made of. Inner to the room.
struct BatchLeaning;

/// One batch with its timeline. Equal pointers mean nothing it leans on has changed.
struct BatchOutlook {
    Ptr<Batch> batch;
    std::vector<Ptr<BatchBar>> bars;  ///< by bar number
    BatchTimeline timeline;
    std::shared_ptr<const BatchLeaning> leaning{};  ///< null where it was put together by hand
};

/// Everything the window shows of a season. Immutable; parts point into one another, so it is
/// only ever handled through its shared pointer.
struct Outlook {
    Snapshot snapshot;
    DayWindow season;
    std::vector<std::shared_ptr<const BatchOutlook>> batches;  ///< by graft, then label
    /// By label. Equal pointers mean that nothing about a builder has changed.
    SharedList<BuilderOutlook> builders;
    NucOutlook nucs;
    std::vector<Finding> findings;
    SeasonLimits limits;
    std::vector<DroneNeed> drones;              ///< in driving order of the yards
    std::shared_ptr<const MatingTable> mating;  ///< never null

    /// The batch, or null when it is not of this season.
    [[nodiscard]] const BatchOutlook* find(Id<Batch> id) const;
};
using OutlookPtr = std::shared_ptr<const Outlook>;

/// Keeps batches, nucs and builders about which nothing changes. Give the same memo to each call;
/// it holds only what is likely to serve the next one.
class OutlookMemo {
public:
    OutlookMemo();
    /// As if that had just been derived with it: for one who goes on from there, in another thread
    /// as well.
    explicit OutlookMemo(const Outlook& last);
    OutlookMemo(const OutlookMemo&) = delete;
    OutlookMemo& operator=(const OutlookMemo&) = delete;
    ~OutlookMemo();
    [[nodiscard]] std::shared_ptr<const BatchOutlook> batch(const Snapshot& snapshot,
                                                            const Ptr<Batch>& batch);
    /// The weather's share in mating, for the season of the snapshot; never null.
    [[nodiscard]] const std::shared_ptr<const MatingTable>& mating(const Snapshot& snapshot);
    /// Forgets batches not asked for since the last call.
    void sweep();
    /// Derives nucs and builders of an outlook whose batches are there. A builder about which
    /// nothing has changed since the last call is the very same; so is a nuc side that is as in the
    /// season that the memo compares with (see NucMemo).
    void deriveOccupancy(Outlook& outlook);

private:
    struct Entry {
        std::shared_ptr<const BatchOutlook> result;
        std::uint64_t tables = 0;  ///< those under which it was last found to hold
        std::uint64_t round = 0;
    };
    struct Kept;
    std::unique_ptr<Kept> kept_;
    std::unordered_map<Id<Batch>, Entry> entries_;
    std::uint64_t round_ = 0;
};

[[nodiscard]] OutlookPtr outlookOf(const Snapshot& snapshot, OutlookMemo& memo);

/// The tasks of an outlook's season; their sides point into it.
[[nodiscard]] std::vector<Task> tasksOf(const Outlook& outlook);

/// How an event of a batch came to be: the same code with a tracer, the last reasons for the
/// event first, then what they lean on.
[[nodiscard]] std::vector<Reason> why(const Snapshot& snapshot, Id<Batch> batch, Event event);

}  // namespace tenthday
