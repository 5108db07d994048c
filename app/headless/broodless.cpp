#include "headless/verb.h"
#include "occupancy/mite_spans.h"

namespace tenthday {
namespace {

/// A line for each thing done; "none" where nothing was.
void addRows(const MiteSpan& span, Listing& listing) {
    const auto line = [&](const MiteWork* work) {
        const bool nuc = span.side != nullptr;
        listing.rows.push_back(
            {cell(nuc ? "nuc" : "builder"), nuc ? cell(span.side->box->label) : ListingCell{},
             nuc ? cell(span.side->side->side) : ListingCell{},
             nuc ? ListingCell{} : cell(span.builder->builder->label), cell(span.span.from),
             cell(span.span.until), work ? cell(work->day) : ListingCell{},
             work ? cell(work->what) : cell("none")});
    };
    if (span.work.empty()) line(nullptr);
    for (const auto& work : span.work) line(work.get());
}

Answer run(const Call& call) {
    const auto outlook = readOutlook(call);
    if (!outlook) return Answer::failed(outlook.error());
    const auto& season = *outlook.value();
    Listing listing{{"kind", "box", "side", "builder", "from", "until", "done", "what"}, {}};
    for (const auto& span : miteSpans(season.snapshot, season.nucs, season.builders))
        addRows(span, listing);
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& broodlessVerb() {
    static const HeadlessVerb verb{
        "broodless",
        {{"BOOK"}, {}},
        "BOOK",
        "days without open brood of nucs and builders, and the work against mites done on them",
        true,
        run};
    return verb;
}

}  // namespace tenthday
