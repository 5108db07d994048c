#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto outlook = readOutlook(call);
    if (!outlook) return Answer::failed(outlook.error());
    Listing listing{{"day", "severity", "finding", "subject", "text"}, {}};
    for (const auto& finding : outlook.value()->findings)
        listing.rows.push_back({cell(finding.day), cell(finding.severity), cell(finding.kind),
                                cell(finding.subjectLabel), cell(englishText(finding))});
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& findingsVerb() {
    static const HeadlessVerb verb{
        "findings", {{"BOOK"}, {}}, "BOOK", "what to look into, with its day", true, run};
    return verb;
}

}  // namespace tenthday
