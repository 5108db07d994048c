/// @file table.h  An immutable, shared, sorted table of rows.
#pragma once
#include <algorithm>
#include <memory>
#include <span>
#include <vector>

#include "records/rows.h"

namespace tenthday {

/// What rows of a type are grouped by. Grouped rows stand together in a table, so that
/// "all bars of a batch" is one slice. Types not named here are ordered by id alone.
inline Uuid ownerOf(const BoxStay& r) { return r.box.uuid; }
inline Uuid ownerOf(const Stocking& r) { return r.side.uuid; }
inline Uuid ownerOf(const MakeUp& r) { return r.builder.uuid; }
inline Uuid ownerOf(const BuilderNote& r) { return r.builder.uuid; }
inline Uuid ownerOf(const Step& r) { return r.method.uuid; }
inline Uuid ownerOf(const BatchBar& r) { return r.batch.uuid; }
inline Uuid ownerOf(const BatchLoad& r) { return r.batch.uuid; }
inline Uuid ownerOf(const BatchShare& r) { return r.batch.uuid; }
inline Uuid ownerOf(const Placement& r) { return r.batch.uuid; }
inline Uuid ownerOf(const Outcome& r) { return r.batch.uuid; }
inline Uuid ownerOf(const DroneSighting& r) { return r.yard.uuid; }
inline Uuid ownerOf(const YardNote& r) { return r.yard.uuid; }
inline Uuid ownerOf(const MatingStay& r) { return r.batch.uuid; }
inline Uuid ownerOf(const NucCare& r) { return r.side.uuid; }
inline Uuid ownerOf(const QueenNote& r) { return r.queen.uuid; }
inline Uuid ownerOf(const CaughtQueen& r) { return r.batch.uuid; }
inline Uuid ownerOf(const QueenStay& r) { return r.queen.uuid; }
inline Uuid ownerOf(const OrderTerms& r) { return r.order.uuid; }
inline Uuid ownerOf(const Earmark& r) { return r.order.uuid; }
inline Uuid ownerOf(const Delivery& r) { return r.order.uuid; }
inline Uuid ownerOf(const PromiseMove& r) { return r.order.uuid; }
inline Uuid ownerOf(const LeftOut& r) { return r.batch.uuid; }

template <class Row>
concept Grouped = requires(const Row& row) {
    ownerOf(row);
};

struct ByOwner {
    template <Grouped Row>
    bool operator()(const Ptr<Row>& row, const Uuid& owner) const {
        return ownerOf(*row) < owner;
    }
    template <Grouped Row>
    bool operator()(const Uuid& owner, const Ptr<Row>& row) const {
        return owner < ownerOf(*row);
    }
};

/// Rows ordered by owner (where grouped), then id. Copying a Table copies one pointer.
/// What is not defined here is in table.cpp, made once per row type: a new type is named there.
template <class Row>
class Table {
public:
    using Rows = std::vector<Ptr<Row>>;

    [[nodiscard]] auto begin() const { return rows_->begin(); }
    [[nodiscard]] auto end() const { return rows_->end(); }
    [[nodiscard]] std::size_t size() const { return rows_->size(); }
    [[nodiscard]] bool empty() const { return rows_->empty(); }

    /// All rows of one owner, by id. The span lives as long as this table or a copy of it.
    [[nodiscard]] std::span<const Ptr<Row>> of(Uuid owner) const requires Grouped<Row> {
        const auto [first, last] = std::equal_range(rows_->begin(), rows_->end(), owner, ByOwner{});
        return {first, last};
    }
    /// The row with this id, or null. By bisection; a walk where rows are grouped.
    [[nodiscard]] Ptr<Row> find(Id<Row> id) const;

    /// The very same rows, not only equal ones.
    [[nodiscard]] bool isSame(const Table& other) const { return rows_ == other.rows_; }

    /// Takes all rows at once, in any order.
    [[nodiscard]] static Table from(Rows rows);
    /// A table without `gone` (by id; may be null) and with `come` (may be null) in its place.
    [[nodiscard]] Table with(const Ptr<Row>& gone, const Ptr<Row>& come) const;

private:
    std::shared_ptr<const Rows> rows_ = std::make_shared<const Rows>();
};

}  // namespace tenthday
