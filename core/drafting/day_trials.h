/// @file day_trials.h  What a draft would bring on other days: where it clashes with nothing, and
/// which weekday's jobs leave which days free. Each trial derives the whole season anew, so these
/// are for a worker.
#pragma once
#include <functional>

#include "drafting/batch_draft.h"
#include "drafting/job_days.h"

namespace tenthday {

/// A draft on a day.
struct DayTrial {
    Day day;    ///< of the draft's start
    Day graft;  ///< the graft's day that belongs to it
    std::vector<Job> jobs;
    std::vector<Job> onFreeDays;   ///< jobs that no day of their window keeps off free days
    std::vector<Finding> clashes;  ///< warnings and dangers that are there only because of it

    std::optional<Day> lateMakeUp;  ///< the make-up it wants would have been on this day, now past

    /// Nothing speaks against the day itself, whatever its jobs.
    [[nodiscard]] bool clashesWithNothing() const { return clashes.empty() && !lateMakeUp; }
    [[nodiscard]] bool isClear() const { return onFreeDays.empty() && clashesWithNothing(); }
};

/// Asked between trials; true ends the search early.
using Cancelled = std::function<bool()>;

/// Tries one draft on any day against all else the snapshot holds.
class DayTrials {
public:
    /// @param season  with all else
    /// @param draft   of a new batch, or of one the season has
    DayTrials(const Outlook& season, BatchDraft draft, FreeDays free);

    /// The trial of one day, or why the draft cannot be there.
    /// @param repeat  batches that follow: what they clash with is told too; jobs are the draft's
    [[nodiscard]] Result<DayTrial> on(Day day, const Repeat& repeat = {});

    /// What DayTrial::clashesWithNothing() says of the day, sooner: without its jobs. False where
    /// the draft cannot be there.
    [[nodiscard]] bool clashesWithNothing(Day day);

    /// The seven days of the ISO week of the draft's day, Monday first, but those outside the
    /// season. Empty when cancelled or when the draft is refused.
    [[nodiscard]] std::vector<DayTrial> week(const Cancelled& cancelled = {});

    /// Up to `wanted` days that are clear, the nearest to the draft's day first (of two as near,
    /// the earlier), not before today, within the season and 60 days off at most; the draft's own
    /// day may be among them.
    [[nodiscard]] std::vector<DayTrial> nearestClear(std::size_t wanted,
                                                     const Cancelled& cancelled = {});

private:
    [[nodiscard]] Result<OutlookPtr> tried(Day day, const Repeat& repeat);
    [[nodiscard]] DayTrial clashesOf(const Outlook& tried) const;

    Snapshot base_;
    BatchDraft draft_;
    FreeDays free_;
    OutlookMemo memo_;
    std::vector<Finding> before_;  ///< findings of the season without the batch
};

/// Which figure of an event's spread a wish is about.
enum class Sureness : std::uint8_t {
    Likely,  ///< for half of the queens
    Latest,  ///< for 19 of 20
};

/// The last day the draft can start so that an event of it falls on the wanted day or before.
/// Nothing where the batch has no such event, or the draft is refused in those weeks.
[[nodiscard]] std::optional<Day> startFor(const Snapshot& snapshot, const BatchDraft& draft,
                                          Event event, Day wanted, Sureness sureness);

}  // namespace tenthday
