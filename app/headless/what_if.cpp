#include "supply/what_if.h"

#include "exchange/field_text.h"
#include "headless/optional_day.h"
#include "outlook/supply_of.h"

namespace tenthday {
namespace {

constexpr std::string_view kCold = "--cold";
constexpr std::string_view kBuilder = "--builder";
constexpr std::string_view kNucs = "--nucs";
constexpr std::string_view kTake = "--take";
constexpr std::string_view kFrom = "--from";

Result<DayWindow> daysOption(const std::string& text) {
    const auto dots = text.find("..");
    const auto from = dayFromText(text.substr(0, dots));
    const auto until = dots == std::string::npos ? from : dayFromText(text.substr(dots + 2));
    constexpr Days kMost{366};
    if (!from || !until || *until < *from || *until - *from > kMost)
        return optionError(kCold,
                           "days FROM..TO are needed, a year at the most, not " + inQuotes(text));
    return DayWindow{*from, *until};
}

Result<double> shareOption(const std::string& text) {
    Tenths percent;
    if (readField(text, percent) || percent.value < 0 || percent.value > 1000)
        return optionError(kTake, "a share from 0 to 100 % is needed, not " + inQuotes(text));
    return percent.value / 1000.0;
}

Result<std::int32_t> countOption(const std::string& text) {
    std::int32_t count = 0;
    if (readField(text, count) || count < 1)
        return optionError(kNucs, "a number of nucs is needed, not " + inQuotes(text));
    return count;
}

/// What is asked, but for the builder, whose name only the book knows.
Result<WhatIf> questionOf(const Arguments& arguments) {
    WhatIf what;
    if (const auto text = arguments.value(kCold)) {
        const auto days = daysOption(*text);
        if (!days) return days.error();
        what.cold = days.value();
    }
    if (const auto text = arguments.value(kNucs)) {
        const auto count = countOption(*text);
        if (!count) return count.error();
        what.nucs = WhatIf::NucsRobbed{count.value(), {}, {}};
    }
    if (const auto text = arguments.value(kTake)) {
        const auto share = shareOption(*text);
        if (!share) return share.error();
        what.take = share.value();
    }
    if (what.isNothing() && !arguments.has(kBuilder))
        return Error{"one of --cold, --builder, --nucs and --take is needed"};
    return what;
}

Listing listingOf(const WhatIfAnswer& answer) {
    Listing listing{{"order", "kind", "count", "due", "before", "after", "state_before",
                     "state_after", "short_after"},
                    {}};
    for (const auto& [before, after] : answer.orders) {
        const auto& order = *before.order;
        listing.rows.push_back({cell(order.label), cell(order.kind), cell(order.count),
                                cell(order.due), decimal(before.chance * 100, 1),
                                decimal(after.chance * 100, 1), cell(before.state),
                                cell(after.state), cell(after.lacking)});
    }
    return listing;
}

Answer run(const Call& call) {
    auto what = questionOf(call.arguments);
    if (!what) return Answer::wrongUse(what.error());
    const auto from = optionalDay(call.arguments, kFrom);
    if (!from) return Answer::wrongUse(from.error());
    const auto outlook = readOutlookWithRates(call);
    if (!outlook) return Answer::failed(outlook.error());
    const auto& snapshot = outlook.value()->snapshot;
    const Day lostFrom = from.value().value_or(snapshot.today());
    if (what.value().nucs) what.value().nucs->from = lostFrom;
    if (const auto label = call.arguments.value(kBuilder)) {
        const auto builder = findByLabel<Builder>(snapshot, *label);
        if (!builder) return Answer::failed(Error{"no builder " + inQuotes(*label)});
        what.value().builder = WhatIf::BuilderLost{builder->id, lostFrom};
    }
    const auto answer = whatIf(*outlook.value(), what.value());
    if (!answer) return Answer::failed(answer.error());
    return call.print(listingOf(answer.value()));
}

}  // namespace

const HeadlessVerb& whatIfVerb() {
    static const HeadlessVerb verb{
        "whatif",
        {{"BOOK"}, {{kCold}, {kBuilder}, {kNucs}, {kTake}, {kFrom}}},
        "BOOK [--cold FROM..TO] [--builder NAME] [--nucs N] [--take 50] [--from DAY]",
        "how sure each order is, now and should these days be cold, a builder or nucs be lost",
        true,
        run};
    return verb;
}

}  // namespace tenthday
