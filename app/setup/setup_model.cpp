#include "setup/setup_model.h"

#include <algorithm>

#include "look/year_dot.h"

namespace tenthday {

void SetupModel::show(QStringList columns, std::vector<ListRow> rows) {
    beginResetModel();
    columns_ = std::move(columns);
    rows_ = std::move(rows);
    endResetModel();
}

void SetupModel::setLook(Look look) {
    if (look == look_) return;
    look_ = look;
    if (!rows_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

int SetupModel::rowOf(const Uuid& id) const {
    const auto at =
        std::find_if(rows_.begin(), rows_.end(), [&](const auto& row) { return row.id == id; });
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int SetupModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int SetupModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant SetupModel::data(const QModelIndex& index, int role) const {
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return row.cells.value(index.column()).simplified();
    if (role == Qt::ToolTipRole) {
        const auto tip = row.tips.value(index.column());
        return tip.isEmpty() ? row.cells.value(index.column()) : tip;
    }
    if (role == Qt::DecorationRole && row.mark && index.column() == row.markColumn)
        return yearDot(*row.mark, look_);
    return {};
}

QVariant SetupModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return columns_.value(section);
}

}  // namespace tenthday
