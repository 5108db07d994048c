/// @file row_change.h  What an edit does to one row, of whichever table.
#pragma once
#include <memory>
#include <optional>
#include <type_traits>
#include <utility>

#include "records/columns.h"

namespace tenthday {

template <class List>
struct RowCount;
template <class... Rows>
struct RowCount<RowList<Rows...>> {
    static constexpr std::size_t value = sizeof...(Rows);
};
/// How many row types there are.
inline constexpr std::size_t kTables = RowCount<AllRows>::value;

template <class Row, class... Rows>
constexpr std::size_t placeIn(RowList<Rows...>) {
    std::size_t place = 0;
    static_cast<void>(((std::is_same_v<Row, Rows> || (++place, false)) || ...));
    return place;
}
/// Place of a row type in AllRows.
template <class Row>
inline constexpr std::size_t kTable = placeIn<Row>(AllRows{});

/// Names a row of any type.
struct RowKey {
    std::size_t table = 0;  ///< place in AllRows
    Uuid id;

    RowKey() = default;
    template <class Row>
    RowKey(Id<Row> row) : table(kTable<Row>), id(row.uuid) {}
    friend auto operator<=>(const RowKey&, const RowKey&) = default;
};

/// A row that comes (before null), changes, or goes (after null).
template <class Row>
struct RowChangeOf {
    Ptr<Row> before;
    Ptr<Row> after;
};

/// The same of any type. Holds no variant: that would be made anew, for all types, in every source
/// that touches an edit.
class RowChange {
public:
    template <class Row>
    RowChange(RowChangeOf<Row> change)
        : table_(kTable<Row>), before_(std::move(change.before)), after_(std::move(change.after)) {}

    /// Place of the row's type in AllRows.
    [[nodiscard]] std::size_t table() const { return table_; }
    /// The change, where the row is of this type.
    template <class Row>
    [[nodiscard]] std::optional<RowChangeOf<Row>> as() const {
        if (table_ != kTable<Row>) return std::nullopt;
        return RowChangeOf<Row>{std::static_pointer_cast<const Row>(before_),
                                std::static_pointer_cast<const Row>(after_)};
    }

private:
    std::size_t table_;
    std::shared_ptr<const void> before_;
    std::shared_ptr<const void> after_;
};

/// Calls `visit` with the change as a RowChangeOf its row's type; all its results are of one type.
template <class Visitor>
decltype(auto) visitChange(Visitor&& visit, const RowChange& change) {
    using Answer = std::invoke_result_t<Visitor&, RowChangeOf<Book>>;
    return [&]<class... Rows>(RowList<Rows...>) -> Answer {
        using Call = Answer (*)(Visitor&, const RowChange&);
        static constexpr Call kCalls[] = {[](Visitor& visitor, const RowChange& of) -> Answer {
            return visitor(*of.as<Rows>());
        }...};
        return kCalls[change.table()](visit, change);
    }(AllRows{});
}

}  // namespace tenthday
