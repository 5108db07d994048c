#include "outlook/season_orders.h"

#include <algorithm>

namespace tenthday {
namespace {

QueensInHand inHandOn(SeasonSupply& supply, Day day, std::int32_t gone) {
    const auto& queens = supply.queensBy(day);
    const auto left = [&](double share) { return std::max(queens.quantile(share) - gone, 0); };
    return {left(0.1), left(0.5), left(0.9)};
}

}  // namespace

const PromiseWeek* SeasonOrders::weekOf(Day day) const {
    const auto week = isoWeekOf(day);
    const auto found = std::find_if(weeks.begin(), weeks.end(),
                                    [&](const auto& each) { return each.week == week; });
    return found == weeks.end() ? nullptr : &*found;
}

SeasonOrdersPtr seasonOrdersOf(const Outlook& outlook) {
    auto made = std::make_shared<SeasonOrders>();
    auto supply = supplyOf(outlook);
    made->orders = supply.orders();
    made->days = outlook.season;
    for (Day day = made->days.first; day <= made->days.last; day += Days{1}) {
        made->owed.push_back(supply.owedBy(day));
        made->inHand.push_back(inHandOn(supply, day, made->owed.back()));
    }
    made->weeks = promiseByWeek(supply, kPromiseLevel);
    return made;
}

bool hasQueensOrOrders(const Outlook& outlook) {
    return !outlook.batches.empty() || !ordersOf(outlook.snapshot).empty();
}

}  // namespace tenthday
