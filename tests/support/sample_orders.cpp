#include "support/sample_orders.h"

#include <algorithm>

#include "support/days.h"
#include "support/ids.h"
#include "support/sample_outlook.h"

namespace tenthday {
namespace {

using test::day;

struct SampleOrder {
    std::string label;
    OrderKind kind;
    int count;
    std::string due;
    OrderState state;
    double chance;
    int lacking;
    std::string batch;
    std::string go;  ///< empty: the due day
};

OrderOutlook made(const SampleOrder& sample, std::uint64_t n) {
    Order order;
    order.id = test::id<Order>(n);
    order.label = sample.label;
    order.kind = sample.kind;
    order.count = sample.count;
    order.due = day(sample.due);
    OrderOutlook outlook;
    outlook.order = std::make_shared<const Order>(order);
    outlook.state = sample.state;
    outlook.chance = sample.chance;
    outlook.lacking = sample.lacking;
    outlook.owedDue = sample.count;
    outlook.rest = sample.count;
    outlook.wholeOn = order.due;
    const Day go = sample.go.empty() ? order.due : day(sample.go);
    outlook.days = OrderDays{go, go - Days{1}};
    outlook.fills = {{sampleBatch(sample.batch), sample.count * sample.chance}};
    return outlook;
}

}  // namespace

SeasonOrdersPtr sampleOrders() {
    const std::vector<SampleOrder> samples{
        {"Splits", OrderKind::Own, 24, "2027-06-18", OrderState::Met, 0.97, 0, "14", ""},
        {"K-09", OrderKind::RipeCell, 12, "2027-06-17", OrderState::Met, 0.99, 0, "18", ""},
        {"K-03", OrderKind::Mated, 30, "2027-07-02", OrderState::AtRisk, 0.71, 4, "16",
         "2027-06-30"},
        {"K-07", OrderKind::Proven, 8, "2027-07-11", OrderState::Met, 0.93, 0, "18", ""},
        {"Requeen", OrderKind::Own, 60, "2027-07-23", OrderState::Short, 0.12, 21, "20", ""}};
    auto orders = std::make_shared<SeasonOrders>();
    for (std::size_t i = 0; i < samples.size(); ++i)
        orders->orders.push_back(made(samples[i], i + 1));
    orders->orders[3].rest = 0;  // delivered
    orders->days = {day("2027-04-26"), day("2027-07-31")};
    for (Day on = orders->days.first; on <= orders->days.last; on += Days{1}) {
        const auto days = static_cast<std::int32_t>((on - day("2027-06-10")).count());
        std::int32_t gone = 0;
        for (const auto& order : orders->orders)
            if (isForQueens(order.order->kind) && order.order->due <= on)
                gone += order.order->count;
        const std::int32_t queens = std::max(0, days * 3);
        const auto left = [&](std::int32_t part) { return std::max(queens * part / 10 - gone, 0); };
        orders->owed.push_back(gone);
        orders->inHand.push_back({left(8), left(10), left(12)});
    }
    for (Day monday = day("2027-04-26"); monday <= orders->days.last; monday += Days{7})
        orders->weeks.push_back({isoWeekOf(monday), 40, 24, monday == day("2027-07-19") ? 13 : 0});
    return orders;
}

}  // namespace tenthday
