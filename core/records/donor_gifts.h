/// @file donor_gifts.h  What bees and brood were taken from where, and where none may be taken.
#pragma once
#include <string>
#include <vector>

#include "records/donors.h"

namespace tenthday {

/// One donor: a yard or a colony, as it is written in the book.
struct DonorGifts {
    std::string donor;
    bool isYard = false;      ///< a whole yard: how many colonies give there is not known
    std::int32_t beesMl = 0;  ///< taken in the brood cycle before the day (fact worker_d)
    std::int32_t broodFrames = 0;
    std::optional<Day> last;  ///< anything was taken, or is planned to be; any day
    Ptr<YardNote> hold;       ///< nothing may leave: disease; none: it may
    [[nodiscard]] bool mayGive() const { return hold == nullptr; }
};

/// What one may still give in its brood cycle: of a colony, what the facts donor_bees_ml and
/// donor_frames leave (common practice); of a yard these for each of its colonies, as nobody knows
/// which of them gave. Nothing under a hold.
struct MayGive {
    BeesMl bees{0};
    Frames brood{0};
};
[[nodiscard]] MayGive mayStillGive(const DonorGifts& donor, const Facts& facts);

/// Yards of donors, and whatever was written as one this season. Those that may give first, then by
/// brood, bees and day of what they gave: what gave least and longest ago can give first. How
/// strong they are the book does not know. Of a field that names several each is taken to have
/// given all.
[[nodiscard]] std::vector<DonorGifts> donorGifts(const Snapshot& snapshot, Day day);

/// The donors of a field, without blanks around.
[[nodiscard]] std::vector<std::string> donorsIn(std::string_view field);

}  // namespace tenthday
