/// @file orders_filter.h  Shows open, waiting, cancelled or all orders; and of these what is
/// searched for.
#pragma once
#include <QSortFilterProxyModel>

namespace tenthday {

class OrdersFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit OrdersFilter(QObject* parent);
    /// An entry of the page's filter: a standing, or all.
    void setEntry(int entry);

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    int entry_ = 0;
};

}  // namespace tenthday
