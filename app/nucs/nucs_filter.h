/// @file nucs_filter.h  Which nucs of the day are shown.
#pragma once
#include <QSortFilterProxyModel>

#include "nucs/nucs_model.h"

namespace tenthday {

class NucsFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    /// Nothing shows all.
    void setGroup(std::optional<NucsModel::Group> group) {
        group_ = group;
        invalidateFilter();
    }

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override {
        const auto* nucs = static_cast<const NucsModel*>(sourceModel());
        if (group_ && nucs->groupAt(row) != *group_) return false;
        return QSortFilterProxyModel::filterAcceptsRow(row, parent);
    }

private:
    std::optional<NucsModel::Group> group_;
};

}  // namespace tenthday
