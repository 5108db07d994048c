/// @file with_rows.h  Snapshots with a few rows more, and orders for tests.
#pragma once
#include <stdexcept>

#include "outlook/outlook.h"
#include "records/change_set.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {

/// The snapshot with these rows added; throws when refused.
template <class... Rows>
Snapshot with(const Snapshot& snapshot, const Rows&... rows) {
    ChangeSet changes;
    (changes.add(rows), ...);
    auto made = applied(snapshot, changes);
    if (!made) throw std::invalid_argument(made.error().text);
    return std::move(made).value();
}

inline OutlookPtr freshOutlook(const Snapshot& snapshot) {
    OutlookMemo memo;
    return outlookOf(snapshot, memo);
}

/// An order of any line, that must be 90 % sure.
inline Order orderFor(int n, int count, std::string_view due, OrderKind kind = OrderKind::Mated) {
    Order order;
    order.id = id<Order>(static_cast<std::uint64_t>(n));
    order.label = "Order " + std::to_string(n);
    order.kind = kind;
    order.count = count;
    order.due = day(due);
    return order;
}

}  // namespace tenthday::test
