/// @file references.h  What a row refers to, read from its columns.
#pragma once
#include "records/row_change.h"

namespace tenthday {

template <class Kind>
std::optional<Id<Kind>> asReference(const Id<Kind>& id) {
    return id;
}
template <class Kind>
std::optional<Id<Kind>> asReference(const std::optional<Id<Kind>>& id) {
    return id;
}

template <class T>
concept Reference = requires(const T& value) {
    asReference(value);
};

/// Calls `visit(Column, optional<Id<Kind>>)` for each column of a row that refers to rows.
template <class Row, class Visitor>
void forEachReference(const Row& row, Visitor&& visit) {
    forEachColumn<Row>([&](const auto& column) {
        if constexpr (Reference<std::remove_cvref_t<decltype(row.*column.member)>>)
            visit(column, asReference(row.*column.member));
    });
}

template <class Row>
[[nodiscard]] bool refersTo(const Row& row, const RowKey& key) {
    bool found = false;
    forEachReference(row, [&](const auto&, const auto& reference) {
        found = found || (reference && RowKey(*reference) == key);
    });
    return found;
}

}  // namespace tenthday
