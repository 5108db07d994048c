/// @file donors.h  What stands in a field of donors: yards, or colonies of yards.
#pragma once
#include <string_view>
#include <vector>

#include "records/snapshot.h"

namespace tenthday {

/// Donors stand with a comma or a semicolon between. One is of a yard when it is its label or
/// begins with it: "Mill 3, Heath" names a colony of Mill, and Heath; never Millbrook.
[[nodiscard]] bool namesYard(std::string_view donors, std::string_view yard);

/// A hold for disease, and the yard it is on.
struct DonorHold {
    Ptr<YardNote> note;
    Ptr<Yard> yard;
};
/// The holds in force on a day on yards that donors are of: nothing may be taken from there.
[[nodiscard]] std::vector<DonorHold> donorHolds(const Snapshot& snapshot, std::string_view donors,
                                                Day day);

}  // namespace tenthday
