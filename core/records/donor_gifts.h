/// @file donor_gifts.h  What bees and brood were taken from where, and where none may be taken.
#pragma once
#include <string>
#include <vector>

#include "records/donors.h"

namespace tenthday {

/// One donor: a yard or a colony, as it is written in the book.
struct DonorGifts {
    std::string donor;
    bool isYard = false;      ///< a yard with the role of a donor
    std::int32_t beesMl = 0;  ///< taken in the brood cycle before the day (fact worker_d)
    std::int32_t broodFrames = 0;
    std::optional<Day> last;  ///< anything was taken, or is planned to be; any day
    Ptr<YardNote> hold;       ///< nothing may leave: disease; none: it may
    [[nodiscard]] bool mayGive() const { return hold == nullptr; }
};

/// Yards of donors, and whatever was written as one this season. Those that may give first, then by
/// brood, bees and day of what they gave: what gave least and longest ago can give first. How
/// strong they are the book does not know. Of a field that names several each is taken to have
/// given all.
[[nodiscard]] std::vector<DonorGifts> donorGifts(const Snapshot& snapshot, Day day);

/// The donors of a field, without blanks around.
[[nodiscard]] std::vector<std::string> donorsIn(std::string_view field);

}  // namespace tenthday
