/// @file orders_model.h  The season's orders as a table, in the order of filling.
#pragma once
#include <QAbstractTableModel>

#include "outlook/outlook.h"
#include "supply/promise.h"

namespace tenthday {

/// An order and what is known of it.
struct OrderRow {
    Ptr<Order> order;
    OrderTerms terms;
    std::int32_t delivered = 0;           ///< without those that failed
    std::int32_t rest = 0;                ///< still owed
    std::optional<OrderOutlook> outlook;  ///< of an open one
    std::optional<Day> earliest;          ///< of a waiting one: on which it could be promised
};

class OrdersModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        For,
        What,
        Count,
        Delivered,
        State,
        Due,
        Goes,
        Caged,
        Line,
        Sure,
        Weight,
        FilledBy,
        ColumnCount
    };
    static constexpr int kSortRole = Qt::UserRole + 1;

    using QAbstractTableModel::QAbstractTableModel;

    /// @param areOld  how orders stand is not reckoned for this outlook yet
    void show(OutlookPtr outlook, std::vector<OrderRow> rows, bool areOld);
    [[nodiscard]] const std::vector<OrderRow>& rows() const { return rows_; }
    [[nodiscard]] const OrderRow& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    /// Some open order is not met.
    [[nodiscard]] bool isAnythingShort() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QString text(const OrderRow& row, int column) const;
    [[nodiscard]] QVariant sortKey(const OrderRow& row, int column) const;

    OutlookPtr outlook_;
    std::vector<OrderRow> rows_;
    bool areOld_ = false;
};

/// Orders and promises of one outlook.
struct OrdersReckoned {
    OutlookPtr of;
    std::vector<OrderRow> rows;
    std::vector<PromiseWeek> weeks;  ///< at kPromiseLevel
};

/// All orders of the outlook's season: the open ones in the order of filling, then the waiting
/// list, then the cancelled ones by due day. Takes up to some tenths of a second: not for the
/// window's own thread.
[[nodiscard]] OrdersReckoned reckonOrders(const OutlookPtr& outlook);

/// The same rows at once: how each stands is as it was among `known`, or not known; what is
/// delivered and the days are as they are now.
[[nodiscard]] std::vector<OrderRow> orderRows(const Outlook& outlook,
                                              const std::vector<OrderRow>& known);

}  // namespace tenthday
