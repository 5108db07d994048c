#include "records/deliveries.h"

#include <algorithm>

namespace tenthday {

std::int32_t Delivered::restOf(const Order& order) const {
    return std::max(order.count - good(), 0);
}

Delivered deliveredOf(const Snapshot& snapshot, Id<Order> order) {
    Delivered sum;
    for (const auto& delivery : snapshot.all<Delivery>().of(order.uuid)) {
        sum.count += delivery->count;
        sum.failed += delivery->failed;
        sum.last = std::max(sum.last.value_or(delivery->day), delivery->day);
    }
    return sum;
}

std::vector<Ptr<Delivery>> deliveriesOf(const Snapshot& snapshot, Id<Order> order) {
    const auto rows = snapshot.all<Delivery>().of(order.uuid);
    std::vector<Ptr<Delivery>> sorted(rows.begin(), rows.end());
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const auto& a, const auto& b) { return a->day < b->day; });
    return sorted;
}

}  // namespace tenthday
