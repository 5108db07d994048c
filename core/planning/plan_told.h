/// @file plan_told.h  A whole plan in the book's words: proposals, and what the season is like with
/// them. Inner to the room.
#pragma once
#include <span>

#include "base/id_source.h"
#include "planning/plan_site.h"
#include "planning/season_plan.h"
#include "supply/season_supply.h"

namespace tenthday {

/// Ids of rows that are never kept, none of them one of a row in the snapshot.
[[nodiscard]] IdSource planIds(const Snapshot& snapshot);

/// The batches with their breeder queens, builders and yards; orders are told by told().
[[nodiscard]] std::vector<ProposedBatch> proposalsOf(const Snapshot& snapshot, const PlanSite& site,
                                                     const WholePlan& plan);

/// A season with proposals in it.
struct PlannedSeason {
    OutlookPtr outlook;
    std::vector<Id<Batch>> batches;  ///< of the proposals, in their order
    std::vector<OrderOutlook> orders;
    std::vector<LongDay> longDays;  ///< where hours are limited
};
[[nodiscard]] Result<PlannedSeason> seasonWith(const Snapshot& snapshot,
                                               std::span<const ProposedBatch> batches,
                                               OutlookMemo& memo);

[[nodiscard]] PlanSums sumsOf(const Outlook& outlook);

/// Dates, cells and orders of the proposals as the season has them.
void tellBatches(const PlannedSeason& season, std::vector<ProposedBatch>& batches);
/// The orders that are not as sure as they must be.
[[nodiscard]] std::vector<ShortOrder> shortOf(const std::vector<OrderOutlook>& orders);

}  // namespace tenthday
