#include "headless/optional_day.h"
#include "occupancy/waiting_virgins.h"

namespace tenthday {
namespace {

ListingCell percent(std::optional<double> chance) {
    return chance ? decimal(*chance * 100, 1) : ListingCell{};
}

std::vector<ListingCell> rowOf(const Outlook& outlook, const WaitingVirgin& virgin) {
    const auto* batch = outlook.find(virgin.round->batch);
    const auto flown = virgin.flown();
    return {cell(outlook.snapshot.find(virgin.yard)->label),
            cell(virgin.side->box->label),
            cell(virgin.side->side->side),
            batch ? cell(batch->batch->label) : ListingCell{},
            cell(virgin.age),
            flown ? decimal(*flown, 1) : ListingCell{},
            cell(virgin.lastDay),
            percent(virgin.mated),
            percent(virgin.still),
            cell(virgin.look),
            cell(virgin.advice)};
}

Listing listingOf(const Outlook& outlook, Day day) {
    Listing listing{{"yard", "box", "side", "batch", "age", "flown", "last_day", "mated", "still",
                     "look", "advice"},
                    {}};
    const auto virgins = waitingVirgins(outlook.snapshot, outlook.nucs, *outlook.mating, day);
    for (const auto& virgin : virgins.nucs) listing.rows.push_back(rowOf(outlook, virgin));
    return listing;
}

Answer run(const Call& call) {
    const auto on = optionalDay(call.arguments, "--on");
    if (!on) return Answer::wrongUse(on.error());
    const auto outlook = readOutlook(call, on.value());
    if (!outlook) return Answer::failed(outlook.error());
    return call.print(
        listingOf(*outlook.value(), on.value().value_or(outlook.value()->snapshot.today())));
}

}  // namespace

const HeadlessVerb& virginsVerb() {
    static const HeadlessVerb verb{"virgins",
                                   {{"BOOK"}, {{"--on"}}},
                                   "BOOK [--on DAY]",
                                   "the nucs with a virgin: her age, her flying days, what to do",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
