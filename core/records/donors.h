/// @file donors.h  What stands in a field of donors: yards, or colonies of yards.
#pragma once
#include <string_view>
#include <vector>

#include "records/snapshot.h"

namespace tenthday {

/// Donors stand with a comma or a semicolon between. One is of a yard when the yard's label is in
/// it as whole words, large or small: "mill 3, Heath" names a colony of Mill, and Heath; never
/// Millbrook.
/// @param others  labels of yards: "Mill Road 3" is not of Mill where one is called Mill Road
[[nodiscard]] bool namesYard(std::string_view donors, std::string_view yard,
                             const std::vector<std::string_view>& others = {});

/// A hold for disease, and the yard it is on.
struct DonorHold {
    Ptr<YardNote> note;
    Ptr<Yard> yard;
};
/// The holds in force on a day on yards that donors are of: nothing may be taken from there.
[[nodiscard]] std::vector<DonorHold> donorHolds(const Snapshot& snapshot, std::string_view donors,
                                                Day day);

}  // namespace tenthday
