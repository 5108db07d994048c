/// @file next_season.h  A season is over: what goes on into the next, in one edit.
#pragma once
#include <string>
#include <vector>

#include "base/id_source.h"
#include "records/change_set.h"

namespace tenthday {

/// A book's boxes, builders, breeder queens, methods, yards and learned rates are not of one
/// season: they go on unless they are left here. Yards, methods and outcomes always do.
struct NextSeason {
    std::string label;
    Day from;
    Day until;
    std::vector<Id<Box>> retiredBoxes;         ///< stand nowhere from its first day on, also later
    std::vector<Id<Builder>> retiredBuilders;  ///< their last day is the day before
    std::vector<Id<Queen>> retiredBreeders;    ///< likewise as breeder queens
};

/// The season after the one shown: a year later, its label counted up where it is a year; nothing
/// retired.
[[nodiscard]] NextSeason nextSeasonAfter(const Snapshot& snapshot);

/// What still stands on the last day of the season shown, by label.
[[nodiscard]] std::vector<Ptr<Box>> standingBoxes(const Snapshot& snapshot);
[[nodiscard]] std::vector<Ptr<Builder>> standingBuilders(const Snapshot& snapshot);
[[nodiscard]] std::vector<Ptr<Queen>> servingBreeders(const Snapshot& snapshot);

/// The new season, and those builders and breeder queens whose last day is just the season's last
/// go on (no last day). Refused where it begins before the season shown has ended, or as a season
/// cannot be. Days of rest, orders and batches stay where they are.
[[nodiscard]] Result<ChangeSet> carryOver(const Snapshot& snapshot, const NextSeason& next,
                                          const IdSource& newId);

}  // namespace tenthday
