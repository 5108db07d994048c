#include "cellsday/nucs_ticks_model.h"

#include <QApplication>
#include <QFont>

#include "look/palette.h"
#include "screen_text/cells_text.h"
#include "screen_text/chart_cards.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

}  // namespace

void NucsTicksModel::show(OutlookPtr outlook, const CellsDraft* draft,
                          const std::vector<CellsNuc>* nucs) {
    beginResetModel();
    outlook_ = std::move(outlook);
    draft_ = draft;
    nucs_ = nucs;
    findRows();
    endResetModel();
}

void NucsTicksModel::drop() {
    beginResetModel();
    nucs_ = nullptr;
    rows_.clear();
    endResetModel();
}

void NucsTicksModel::refresh() {
    const auto before = rows_;
    findRows();
    if (rows_ == before) {
        if (rowCount() > 0) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        return;
    }
    beginResetModel();
    endResetModel();
}

void NucsTicksModel::list(Listed listed) {
    listed_ = listed;
    refresh();
}

void NucsTicksModel::findRows() {
    rows_.clear();
    for (std::size_t i = 0; nucs_ != nullptr && i < nucs_->size(); ++i) {
        const auto& nuc = (*nucs_)[i];
        const bool chosen = draft_->in(nuc.id()) != nullptr;
        if (chosen || listed_ == Listed::All || (listed_ == Listed::Open && nuc.isOpen()))
            rows_.push_back(i);
    }
}

bool NucsTicksModel::isTicked(int row) const { return draft_->in(at(row).id()) != nullptr; }

bool NucsTicksModel::isFixed(int row) const {
    const auto& nuc = at(row);
    const auto* cells = draft_->in(nuc.id());
    return cells != nullptr ? !cells->goesInto(nuc.id()) : nuc.fit == NucFit::Held;
}

int NucsTicksModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int NucsTicksModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString NucsTicksModel::text(const CellsNuc& nuc, int column) const {
    const auto* cells = draft_->in(nuc.id());
    switch (column) {
        case YardName: {
            const auto yard = outlook_->snapshot.find(nuc.yard);
            return yard ? plain(yard->label) : QString();
        }
        case Nuc:
            return chart_text::nuc(plain(nuc.side->box->label), plain(nuc.side->side->side));
        case Fit:
            return cells != nullptr && !cells->goesInto(nuc.id()) ? QString()
                                                                  : cells_text::fit(nuc);
        case Since:
            return nuc.isOpen() && nuc.since ? weekdayAndDay(*nuc.since) : QString();
        case Gets: {
            const auto batch = cells ? outlook_->snapshot.find(cells->batch) : nullptr;
            return batch ? cells_text::cellOf(plain(batch->label), !cells->goesInto(nuc.id()))
                         : QString();
        }
        default:
            return {};
    }
}

QVariant NucsTicksModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto& nuc = at(index.row());
    switch (role) {
        case Qt::DisplayRole:
            return text(nuc, index.column());
        case Qt::CheckStateRole:
            if (index.column() != Cell) return {};
            return isTicked(index.row()) ? Qt::Checked : Qt::Unchecked;
        case Qt::ToolTipRole:
            if (index.column() <= Cell) return cells_text::tickHint();
            return chart_cards::asPlainText(chart_cards::nuc(*outlook_, *nuc.side, draft_->day));
        case Qt::AccessibleTextRole:
            if (index.column() == Cell) return text(nuc, Nuc) + u' ' + cells_text::columnHead(Cell);
            return text(nuc, index.column());
        case Qt::FontRole: {
            QFont font;
            font.setBold(index.column() == Gets ||
                         (index.column() == Nuc && isTicked(index.row())));
            return font;
        }
        case Qt::ForegroundRole:
            // Given by hand though it is not ready: wants a look.
            if (index.column() == Fit && !nuc.isOpen() && isTicked(index.row()))
                return paletteOf(lookOf(QApplication::palette()))[Role::Caution];
            return {};
        default:
            return {};
    }
}

QVariant NucsTicksModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return cells_text::columnHead(section);
}

Qt::ItemFlags NucsTicksModel::flags(const QModelIndex& index) const {
    auto flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (index.isValid() && index.column() == Cell && editable_ && !isFixed(index.row()))
        flags |= Qt::ItemIsUserCheckable;
    return flags;
}

}  // namespace tenthday
