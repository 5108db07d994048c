/// @file hold_guard.h  Nothing is planned that takes bees, brood or nucs out of a yard under a hold
/// for disease.
#pragma once
#include <optional>

#include "records/change_set.h"
#include "records/donors.h"

namespace tenthday {

/// One such plan.
struct BrokenHold {
    Day day;
    DonorHold hold;
};
/// The first change that plans such a thing for a day after today. What was done, today or before,
/// is recorded as it was, and found by `leavesHold`. A row that said so before may stay.
/// @param snapshot  before the changes
[[nodiscard]] std::optional<BrokenHold> brokenHold(const Snapshot& snapshot,
                                                   const ChangeSet& changes);

[[nodiscard]] std::string englishText(const BrokenHold& broken);

}  // namespace tenthday
