#include "headless/verb.h"
#include "outlook/supply_of.h"

namespace tenthday {
namespace {

std::string sourceOf(const Outlook& outlook, const OrderFill& fill) {
    if (fill.batch.isNone()) return "bought";
    const auto* batch = outlook.find(fill.batch);
    return batch ? batch->batch->label : "earlier";
}

/// "701 6.2; 702 3.8": the batches with what is expected of each; "bought" for queens bought in,
/// "earlier" for those of an earlier season.
std::string batchesOf(const Outlook& outlook, const OrderOutlook& order) {
    std::string text;
    for (const auto& fill : order.fills) {
        const auto from = sourceOf(outlook, fill);
        text += (text.empty() ? "" : "; ") + from + " " + decimal(fill.count, 1).text;
    }
    return text;
}

Answer run(const Call& call) {
    const auto outlook = readOutlookWithRates(call);
    if (!outlook) return Answer::failed(outlook.error());
    auto supply = supplyOf(*outlook.value());
    Listing listing{{"order", "kind", "count", "due", "state", "chance", "short", "batches"}, {}};
    for (const auto& standing : supply.orders()) {
        const auto& order = *standing.order;
        listing.rows.push_back({cell(order.label), cell(order.kind), cell(order.count),
                                cell(order.due), cell(standing.state),
                                decimal(standing.chance * 100, 1), cell(standing.lacking),
                                cell(batchesOf(*outlook.value(), standing))});
    }
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& ordersVerb() {
    static const HeadlessVerb verb{"orders", {{"BOOK"}, {}},
                                   "BOOK",   "the orders in the order of filling, how sure each is",
                                   true,     run};
    return verb;
}

}  // namespace tenthday
