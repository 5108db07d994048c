#include "supply/promise.h"

#include "exchange/field_text.h"
#include "headless/verb.h"
#include "outlook/supply_of.h"

namespace tenthday {
namespace {

constexpr std::string_view kSure = "--sure";

/// The chance asked for, 0..1.
Result<double> levelOf(const Call& call) {
    const auto text = call.arguments.value(kSure);
    if (!text) return kPromiseLevel;
    Tenths percent;
    if (readField(*text, percent) || percent.value < 1 || percent.value > 999)
        return optionError(kSure, "a chance from 0.1 to 99.9 % is needed, not " + inQuotes(*text));
    return percent.value / 1000.0;
}

Answer run(const Call& call) {
    const auto level = levelOf(call);
    if (!level) return Answer::wrongUse(level.error());
    const auto outlook = readOutlookWithRates(call);
    if (!outlook) return Answer::failed(outlook.error());
    auto supply = supplyOf(*outlook.value());
    Listing listing{{"week", "ready", "owed", "can_promise"}, {}};
    for (const auto& week : promiseByWeek(supply, level.value()))
        listing.rows.push_back(
            {cell(toText(week.week)), cell(week.ready), cell(week.owed), cell(week.canPromise)});
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& promiseVerb() {
    static const HeadlessVerb verb{"promise",
                                   {{"BOOK"}, {{kSure}}},
                                   "BOOK [--sure 90]",
                                   "by week: queens ready, owed, and what more can be promised",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
