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
        onlyWorn_ = false;
        invalidateFilter();
    }
    /// Those whose bees are worn.
    void setOnlyWorn() {
        group_.reset();
        onlyWorn_ = true;
        invalidateFilter();
    }

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override {
        const auto* nucs = static_cast<const NucsModel*>(sourceModel());
        if (onlyWorn_ && !nucs->isWornAt(row)) return false;
        if (group_ && nucs->groupAt(row) != *group_) return false;
        return QSortFilterProxyModel::filterAcceptsRow(row, parent);
    }

private:
    std::optional<NucsModel::Group> group_;
    bool onlyWorn_ = false;
};

}  // namespace tenthday
