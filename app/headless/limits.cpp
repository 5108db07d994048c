#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto outlook = readOutlook(call);
    if (!outlook) return Answer::failed(outlook.error());
    Listing listing{{"limit", "day", "reason", "binds"}, {}};
    for (const auto& limit : outlook.value()->limits.all)
        listing.rows.push_back(
            {cell(limit.limit), cell(limit.day), cell(englishReason(limit)), yesNo(limit.binds)});
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& limitsVerb() {
    static const HeadlessVerb verb{"limits", {{"BOOK"}, {}},
                                   "BOOK",   "the first and the last graft of the season, and why",
                                   true,     run};
    return verb;
}

}  // namespace tenthday
