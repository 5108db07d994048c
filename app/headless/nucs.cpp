#include <algorithm>
#include <map>

#include "base/natural_order.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

std::vector<Ptr<Yard>> yardsByDrive(const Snapshot& snapshot) {
    std::vector<Ptr<Yard>> yards(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
    std::sort(yards.begin(), yards.end(), [](const auto& a, const auto& b) {
        return a->driveOrder != b->driveOrder ? a->driveOrder < b->driveOrder
                                              : naturalLess(a->label, b->label);
    });
    return yards;
}

/// Sides whose layout is in force and whose box has come into a yard by that day.
std::vector<const SideOutlook*> sidesThere(const Outlook& outlook, Day day) {
    std::vector<const SideOutlook*> sides;
    for (const auto& side : outlook.nucs.sides) {
        const auto came = [&](const auto& stay) { return stay.from <= day; };
        if (side.stands.contains(day) && std::any_of(side.stays.begin(), side.stays.end(), came))
            sides.push_back(&side);
    }
    return sides;
}

std::vector<ListingCell> rowOf(const Outlook& outlook, const SideOutlook& side, Day day) {
    const auto yard = side.yardOn(day);
    const auto state = sideOn(side, day, outlook.snapshot.today());
    return {yard ? cell(outlook.snapshot.find(*yard)->label) : ListingCell{},
            cell(side.box->label),
            cell(side.side->side),
            cell(state.state),
            yesNo(state.ready),
            cell(state.readyFrom),
            decimal(state.chance * 100, 1),
            cell(state.reason)};
}

/// In driving order, retired boxes last.
Listing sidesOf(const Outlook& outlook, Day day) {
    Listing listing{{"yard", "box", "side", "state", "ready", "ready_from", "chance", "reason"},
                    {}};
    const auto sides = sidesThere(outlook, day);
    std::vector<std::optional<Id<Yard>>> yards;
    for (const auto& yard : yardsByDrive(outlook.snapshot)) yards.emplace_back(yard->id);
    yards.emplace_back();
    for (const auto& yard : yards)
        for (const auto* side : sides)
            if (side->yardOn(day) == yard) listing.rows.push_back(rowOf(outlook, *side, day));
    return listing;
}

Listing totalsOf(const Outlook& outlook, Day day) {
    Listing listing{{"yard", "ready", "likely", "likely_90", "can_stock", "needs_brood"}, {}};
    std::map<Id<Yard>, ReadyNumbers> numbers;
    for (const auto& yard : outlook.nucs.yards) numbers[yard.yard->id];
    for (const auto* side : sidesThere(outlook, day)) {
        const auto yard = side->yardOn(day);
        if (!yard) continue;
        numbers[*yard] += numbersOf(sideOn(*side, day, outlook.snapshot.today()));
    }
    for (const auto& yard : yardsByDrive(outlook.snapshot)) {
        const auto at = numbers.find(yard->id);
        if (at == numbers.end()) continue;
        // The number met with 90 % comes with the losses' spread: until then there is none.
        listing.rows.push_back({cell(yard->label), cell(at->second.ready),
                                decimal(at->second.likely, 1), ListingCell{},
                                cell(at->second.canStock), cell(at->second.needsBrood)});
    }
    return listing;
}

Answer run(const Call& call) {
    const auto day = dayOption(call.arguments, "--on");
    if (!day) return Answer::wrongUse(day.error());
    const auto outlook = readOutlook(call, day.value());
    if (!outlook) return Answer::failed(outlook.error());
    return call.print(call.arguments.has("--totals") ? totalsOf(*outlook.value(), day.value())
                                                     : sidesOf(*outlook.value(), day.value()));
}

}  // namespace

const HeadlessVerb& nucsVerb() {
    static const HeadlessVerb verb{"nucs",
                                   {{"BOOK"}, {{"--on"}, {"--totals", false}}},
                                   "BOOK --on DAY [--totals]",
                                   "every nuc on a day, or each yard's four numbers",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
