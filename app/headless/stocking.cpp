#include "headless/optional_day.h"
#include "occupancy/stocking_list.h"

namespace tenthday {
namespace {

std::vector<ListingCell> rowOf(const Outlook& outlook, const StockingNeed& need) {
    const auto yard = outlook.snapshot.find(need.yard);
    return {cell(need.dayBy),
            yard ? cell(yard->label) : ListingCell{},
            cell(need.side->box->label),
            cell(need.side->side->side),
            need.bees ? cell(need.bees->value) : ListingCell{},
            need.brood ? cell(need.brood->value) : ListingCell{},
            cell(need.donor),
            cell(need.why)};
}

Answer run(const Call& call) {
    const auto on = optionalDay(call.arguments, "--on");
    if (!on) return Answer::wrongUse(on.error());
    const auto outlook = readOutlook(call, on.value());
    if (!outlook) return Answer::failed(outlook.error());
    const auto& season = *outlook.value();
    Listing listing{{"day_by", "yard", "box", "side", "bees_ml", "brood_frames", "donor", "reason"},
                    {}};
    const auto list =
        stockingList(season.snapshot, season.nucs, on.value().value_or(season.snapshot.today()));
    for (const auto& need : list.needs) listing.rows.push_back(rowOf(season, need));
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& stockingVerb() {
    static const HeadlessVerb verb{"stocking",
                                   {{"BOOK"}, {{"--on"}}},
                                   "BOOK [--on DAY]",
                                   "nucs that want bees or brood for the cells of seven days",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
