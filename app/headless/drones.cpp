#include <cmath>

#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto outlook = readOutlook(call);
    if (!outlook) return Answer::failed(outlook.error());
    Listing listing{{"yard", "from", "until", "peak", "virgins", "wanted", "noted", "mature",
                     "comb_by", "comb_last"},
                    {}};
    for (const auto& need : outlook.value()->drones)
        listing.rows.push_back({cell(need.yard->label), cell(need.flights.first),
                                cell(need.flights.last), cell(need.peak),
                                cell(static_cast<std::int32_t>(std::lround(need.virgins))),
                                cell(need.wanted), cell(need.noted), cell(need.mature),
                                cell(need.combBy), cell(need.combLast)});
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& dronesVerb() {
    static const HeadlessVerb verb{
        "drones", {{"BOOK"}, {}},
        "BOOK",   "the drones that the season's virgins want, yard by yard",
        true,     run};
    return verb;
}

}  // namespace tenthday
