#include "orders/orders_filter.h"

#include "orders/orders_model.h"

namespace tenthday {

OrdersFilter::OrdersFilter(QObject* parent) : QSortFilterProxyModel(parent) {
    setFilterCaseSensitivity(Qt::CaseInsensitive);
    setFilterKeyColumn(-1);
    setSortRole(OrdersModel::kSortRole);
}

void OrdersFilter::setEntry(int entry) {
    entry_ = entry;
    invalidateFilter();
}

bool OrdersFilter::filterAcceptsRow(int row, const QModelIndex& parent) const {
    const auto standing = static_cast<const OrdersModel*>(sourceModel())->at(row).terms.standing;
    const bool isAll = entry_ >= static_cast<int>(kTokenCount<OrderStanding>);
    if (!isAll && static_cast<int>(standing) != entry_) return false;
    return QSortFilterProxyModel::filterAcceptsRow(row, parent);
}

}  // namespace tenthday
