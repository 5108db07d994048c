#include "outlook/grafts_for.h"

#include "exchange/field_text.h"
#include "headless/verb.h"
#include "supply/promise.h"

namespace tenthday {
namespace {

constexpr std::string_view kQueens = "--queens";
constexpr std::string_view kBy = "--by";
constexpr std::string_view kOrder = "--order";
constexpr std::string_view kSure = "--sure";
constexpr std::int32_t kMostQueens = 9999;

struct Question {
    std::optional<std::int32_t> queens;  ///< none: the order named
    Day by{};
    std::optional<double> sure;
};

Result<Question> questionOf(const Arguments& arguments) {
    Question asked;
    if (arguments.has(kQueens) == arguments.has(kOrder))
        return Error{"either --queens with --by or --order is needed"};
    if (arguments.has(kBy) != arguments.has(kQueens))
        return Error{"--by goes with --queens, and --queens with --by"};
    if (const auto text = arguments.value(kQueens)) {
        std::int32_t queens = 0;
        if (readField(*text, queens) || queens < 1 || queens > kMostQueens)
            return optionError(kQueens, "1 to 9999 queens are needed, not " + inQuotes(*text));
        const auto by = dayOption(arguments, kBy);
        if (!by) return by.error();
        asked.queens = queens;
        asked.by = by.value();
    }
    if (const auto text = arguments.value(kSure)) {
        Tenths percent;
        if (readField(*text, percent) || percent.value < 1 || percent.value > 999)
            return optionError(kSure,
                               "a chance from 0.1 to 99.9 % is needed, not " + inQuotes(*text));
        asked.sure = percent.value / 1000.0;
    }
    return asked;
}

Listing listingOf(const GraftsWanted& wanted) {
    Listing listing{{"batch", "graft", "planned", "needed", "planned_chance", "needed_chance"}, {}};
    const auto needed = [&](std::int32_t count) {
        return wanted.isEnough ? cell(count) : cell(std::string());
    };
    for (const auto& batch : wanted.batches)
        listing.rows.push_back({cell(batch.batch->label), cell(batch.graft), cell(batch.planned),
                                needed(batch.needed), cell(std::string()), cell(std::string())});
    listing.rows.push_back({cell(std::string("all")), cell(std::string()), cell(wanted.planned()),
                            needed(wanted.needed()), decimal(wanted.plannedChance * 100, 1),
                            decimal(wanted.neededChance * 100, 1)});
    return listing;
}

Answer run(const Call& call) {
    const auto asked = questionOf(call.arguments);
    if (!asked) return Answer::wrongUse(asked.error());
    const auto& [queens, by, sure] = asked.value();
    const auto outlook = readOutlookWithRates(call);
    if (!outlook) return Answer::failed(outlook.error());
    const auto& snapshot = outlook.value()->snapshot;
    if (queens)
        return call.print(listingOf(
            graftsWanted(snapshot, queensInHand(*queens, by), by, sure.value_or(kPromiseLevel))));
    const auto label = *call.arguments.value(kOrder);
    const auto order = findByLabel<Order>(snapshot, label);
    if (!order) return Answer::failed(Error{"no order " + inQuotes(label)});
    return call.print(listingOf(graftsWanted(snapshot, orderWhole(order->id), order->due,
                                             sure.value_or(order->sure.value / 1000.0))));
}

}  // namespace

const HeadlessVerb& graftsVerb() {
    static const HeadlessVerb verb{
        "grafts",
        {{"BOOK"}, {{kQueens}, {kBy}, {kOrder}, {kSure}}},
        "BOOK (--queens N --by DAY | --order NAME) [--sure 90]",
        "how many grafts would do, split over batches as planned, and how sure the plan is",
        true,
        run};
    return verb;
}

}  // namespace tenthday
