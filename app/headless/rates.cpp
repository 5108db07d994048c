#include "headless/verb.h"
#include "outlook/supply_of.h"

namespace tenthday {
namespace {

ListingCell percent(double share) { return decimal(share * 100, 1); }

std::vector<ListingCell> rowOf(LossStage stage, const RateFit& fit) {
    std::vector<ListingCell> row{cell(token(rateFact(stage)))};
    const auto add = [&](const RangedShare& share) {
        for (const double value : {share.value, share.low, share.high})
            row.push_back(percent(value));
    };
    add(fit.priorRate);
    if (fit.ownRate)
        add(*fit.ownRate);
    else
        row.resize(row.size() + 3);
    add(fit.rate);
    row.push_back(percent(fit.spread.value));
    row.push_back(cell(fit.batches));
    row.push_back(cell(fit.leftOut));
    return row;
}

Answer run(const Call& call) {
    const auto outlook = readOutlookWithRates(call);
    if (!outlook) return Answer::failed(outlook.error());
    const auto rates = ownRatesOf(*outlook.value());
    Listing listing{{"stage", "prior", "prior_low", "prior_high", "own", "own_low", "own_high",
                     "rate", "rate_low", "rate_high", "spread", "batches", "left_out"},
                    {}};
    for (const auto stage : kAllLossStages) listing.rows.push_back(rowOf(stage, rates.fits[stage]));
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& ratesVerb() {
    static const HeadlessVerb verb{
        "rates", {{"BOOK"}, {}},
        "BOOK",  "the rates of losses: before, by own outcomes of all seasons, and both together",
        true,    run};
    return verb;
}

}  // namespace tenthday
