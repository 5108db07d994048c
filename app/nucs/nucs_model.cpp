#include "nucs/nucs_model.h"

#include <algorithm>

#include "base/natural_order.h"
#include "screen_text/chart_cards.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/nuc_text.h"
#include "screen_text/upkeep_text.h"

namespace tenthday {

void NucsModel::show(OutlookPtr outlook, Day day) {
    beginResetModel();
    outlook_ = std::move(outlook);
    day_ = day;
    rows_.clear();
    const Day today = outlook_->snapshot.today();
    for (const auto& yard : outlook_->nucs.yards)
        for (const auto& side : outlook_->nucs.sides)
            if (side.stands.contains(day) && side.yardOn(day) == yard.yard->id)
                rows_.push_back({&side, QString::fromStdString(yard.yard->label),
                                 sideOn(side, day, today), stateSince(side, day, today),
                                 strengthOn(outlook_->snapshot, side, day)});
    endResetModel();
}

ReadyNumbers NucsModel::numbers() const {
    ReadyNumbers all;
    for (const auto& row : rows_) all += numbersOf(row.is);
    return all;
}

Id<NucSide> NucsModel::sideAt(int row) const {
    return rows_[static_cast<std::size_t>(row)].side->side->id;
}

const SideOutlook& NucsModel::sideOutlookAt(int row) const {
    return *rows_[static_cast<std::size_t>(row)].side;
}

QStringList NucsModel::yardLines() const {
    QStringList lines;
    for (auto row = rows_.begin(); row != rows_.end();) {
        ReadyNumbers numbers;
        const auto yard = row->yard;
        for (; row != rows_.end() && row->yard == yard; ++row) numbers += numbersOf(row->is);
        lines += nuc_text::yardLine(yard, numbers);
    }
    return lines;
}

NucsModel::Group NucsModel::groupAt(int row) const {
    const auto& is = rows_[static_cast<std::size_t>(row)].is;
    if (is.ready) return Group::Ready;
    if (is.needsBrood) return Group::NeedsBrood;
    if (is.canStock) return Group::CanStock;
    return is.likely > 0 ? Group::Likely : Group::Held;
}

bool NucsModel::isWornAt(int row) const {
    return rows_[static_cast<std::size_t>(row)].bees.isWorn();
}

int NucsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int NucsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString NucsModel::text(const Row& row, int column) const {
    switch (column) {
        case Yard:
            return row.yard;
        case Nuc:
            return chart_text::nuc(QString::fromStdString(row.side->box->label),
                                   QString::fromStdString(row.side->side->side));
        case State:
            return chart_text::state(row.is.state);
        case Since:
            return row.since ? weekdayAndDay(*row.since) : QString();
        case Ready:
            return chart_text::notReady(row.is.reason);
        case ReadyFrom:
            return row.is.readyFrom && *row.is.readyFrom < kLastDay
                       ? weekdayAndDay(*row.is.readyFrom)
                       : QString();
        case Batch: {
            if (row.is.wintered != nullptr)
                return nuc_text::wintered(outlook_->snapshot, *row.is.wintered);
            const auto* batch = row.is.round ? outlook_->find(row.is.round->batch) : nullptr;
            return batch ? QString::fromStdString(batch->batch->label) : QString();
        }
        case Chance:
            return row.is.chance < 1 ? nuc_text::percent(row.is.chance) : QString();
        case Bees:
            return upkeep_text::strength(row.bees);
        default:
            return {};
    }
}

QVariant NucsModel::sortKey(const Row& row, int column) const {
    const auto dayKey = [](std::optional<Day> day) {
        return day ? day->time_since_epoch().count() : kLastDay.time_since_epoch().count();
    };
    switch (column) {
        case Nuc:
            return QString::fromStdString(naturalKey(row.side->box->label) + ' ' +
                                          row.side->side->side);
        case State:
            return static_cast<int>(row.is.state);
        case Since:
            return static_cast<qlonglong>(dayKey(row.since));
        case Ready:
            return static_cast<int>(row.is.reason);
        case ReadyFrom:
            return static_cast<qlonglong>(dayKey(row.is.readyFrom));
        case Chance:
            return row.is.chance;
        case Bees:  // the worn ones first
            return -row.bees.rounds;
        default:
            return text(row, column);
    }
}

QVariant NucsModel::data(const QModelIndex& index, int role) const {
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return text(row, index.column());
    if (role == kSortRole) return sortKey(row, index.column());
    if (role == Qt::ToolTipRole && index.column() == Bees)
        return upkeep_text::whyStrength(row.bees);
    if (role == Qt::ToolTipRole)
        return chart_cards::asPlainText(chart_cards::nuc(*outlook_, *row.side, day_));
    return {};
}

QVariant NucsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == Bees ? upkeep_text::beesHead() : nuc_text::columnHead(section);
}

}  // namespace tenthday
