/// @file bare_example.h  The example without its orders, for tests that bring their own.
#pragma once
#include <algorithm>

#include "exchange/example.h"

namespace tenthday::test {

inline ChangeSet exampleWithoutOrders() {
    auto content = exampleContent();
    const auto isOfOrders = [](const RowChange& row) {
        return row.as<Order>() || row.as<OrderTerms>() || row.as<Earmark>() || row.as<Delivery>() ||
               row.as<PromiseMove>();
    };
    auto& rows = content.rows;
    rows.erase(std::remove_if(rows.begin(), rows.end(), isOfOrders), rows.end());
    return content;
}

}  // namespace tenthday::test
