#include "plan/proposals_model.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/plan_text.h"

namespace tenthday {

void ProposalsModel::show(OutlookPtr outlook, std::vector<Row> rows) {
    beginResetModel();
    outlook_ = std::move(outlook);
    rows_ = std::move(rows);
    endResetModel();
}

std::vector<ProposedBatch> ProposalsModel::ticked() const {
    std::vector<ProposedBatch> batches;
    for (const auto& row : rows_)
        if (row.ticked) batches.push_back(row.batch);
    return batches;
}

void ProposalsModel::tickAll(bool tick) {
    if (rows_.empty()) return;
    for (auto& row : rows_) row.ticked = tick;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, 0), {Qt::CheckStateRole});
    Q_EMIT ticksChanged();
}

int ProposalsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int ProposalsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString ProposalsModel::text(const Row& row, int column) const {
    const auto& batch = row.batch;
    switch (column) {
        case Graft:
            return plan_text::graftOn(batch.graft, row.isChanged());
        case Breeder:
            return plan_text::breeders(*outlook_, batch);
        case Builder:
            return plan_text::builders(*outlook_, batch);
        case Grafts:
            return chart_text::number(batch.grafts());
        case Cells:
            return chart_text::expected(batch.cells);
        case CellsOut:
            return weekdayAndDay(batch.cellsDay);
        case Where:
            return plan_text::yards(*outlook_, batch);
        case Ready:
            return weekdayAndDay(batch.ready);
        default:
            return plan_text::serves(*outlook_, batch);
    }
}

QVariant ProposalsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto& row = at(index.row());
    const bool isNumber = index.column() == Grafts || index.column() == Cells;
    switch (role) {
        case Qt::DisplayRole:
            return text(row, index.column());
        case Qt::ToolTipRole: {
            const auto because = plan_text::because(*outlook_, row.batch, index.column());
            const auto whole = text(row, index.column());
            return because.isEmpty() ? whole : whole + u'\n' + because;
        }
        case Qt::CheckStateRole:
            if (index.column() != Graft) return {};
            return row.ticked ? Qt::Checked : Qt::Unchecked;
        case Qt::TextAlignmentRole:
            return isNumber ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
        default:
            return {};
    }
}

bool ProposalsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::CheckStateRole) return false;
    rows_[static_cast<std::size_t>(index.row())].ticked = value.toInt() == Qt::Checked;
    Q_EMIT dataChanged(index, index, {Qt::CheckStateRole});
    Q_EMIT ticksChanged();
    return true;
}

Qt::ItemFlags ProposalsModel::flags(const QModelIndex& index) const {
    const auto flags = QAbstractTableModel::flags(index);
    return index.column() == Graft ? flags | Qt::ItemIsUserCheckable : flags;
}

QVariant ProposalsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::DisplayRole) return plan_text::columnHead(section);
    if (role == Qt::TextAlignmentRole && (section == Grafts || section == Cells))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

}  // namespace tenthday
