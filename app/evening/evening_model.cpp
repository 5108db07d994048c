#include "evening/evening_model.h"

#include <QApplication>
#include <QFont>
#include <algorithm>

#include "look/palette.h"
#include "screen_text/chart_text.h"
#include "screen_text/evening_text.h"

namespace tenthday {
namespace {

bool isSame(const EveningRow& a, const EveningRow& b) {
    return a.task.key == b.task.key && a.isHead == b.isHead && a.bar == b.bar && a.side == b.side;
}

std::optional<Hour> hourOf(const EveningRow& row) {
    if (row.entry == EveningEntry::Placed)
        return row.placed && row.placed->done ? row.placed->hour : std::nullopt;
    return row.seen ? row.seen->hour : std::nullopt;
}

}  // namespace

void EveningModel::show(OutlookPtr outlook, Day day) {
    beginResetModel();
    // The rows until now point into the outlook until now.
    page_ = eveningOf(*outlook, day, page_);
    outlook_ = std::move(outlook);
    endResetModel();
}

int EveningModel::find(const EveningRow& row) const {
    // Sides are those of another outlook: they are compared by id.
    const auto side = [](const EveningRow& of) {
        return of.side ? of.side->side->id : Id<NucSide>{};
    };
    for (int at = 0; at < rowCount(); ++at) {
        auto other = row;
        const auto& one = this->at(at);
        if (side(one) != side(row)) continue;
        other.side = one.side;
        if (isSame(one, other)) return at;
    }
    return -1;
}

std::vector<int> EveningModel::emptyUnder(int row) const {
    if (at(row).entry != EveningEntry::None) return {row};
    std::vector<int> rows;
    // One stroke for all catches only queens that were seen laying.
    for (int next = row + 1; next < rowCount() && !at(next).isHead; ++next)
        if (!at(next).isFilled() && at(next).sure) rows.push_back(next);
    return rows;
}

int EveningModel::nextEmpty(int row) const {
    for (int next = row + 1; next < rowCount(); ++next)
        if (at(next).entry != EveningEntry::None && !at(next).isFilled()) return next;
    return -1;
}

int EveningModel::filledCount() const {
    return static_cast<int>(std::count_if(page_.rows.begin(), page_.rows.end(),
                                          [](const auto& row) { return row.isFilled(); }));
}
int EveningModel::entryCount() const {
    return static_cast<int>(
        std::count_if(page_.rows.begin(), page_.rows.end(),
                      [](const auto& row) { return row.entry != EveningEntry::None; }));
}
int EveningModel::lateCount() const {
    return static_cast<int>(std::count_if(page_.rows.begin(), page_.rows.end(),
                                          [](const auto& row) { return row.late && row.isHead; }));
}

int EveningModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(page_.rows.size());
}
int EveningModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString EveningModel::text(const EveningRow& row, int column) const {
    switch (column) {
        case Number:
            return row.isHead && row.number > 0 ? chart_text::number(row.number) : QString();
        case What: {
            const auto what = evening_text::what(*outlook_, row);
            return row.isHead ? what : QStringLiteral("     ") + what;
        }
        case Expected:
            return evening_text::expected(*outlook_, row);
        case Entered:
            return evening_text::seen(row, page_.day);
        case HourColumn: {
            const auto hour = hourOf(row);
            return hour ? chart_text::number(hour->value) : QString();
        }
        default:
            return row.seen ? evening_text::note(row) : QString();
    }
}

QVariant EveningModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto& row = at(index.row());
    switch (role) {
        case Qt::DisplayRole:
            return text(row, index.column());
        case Qt::EditRole:
            if (index.column() == Entered && row.seen && row.seen->count)
                return QString::number(row.seen->count->value);
            return index.column() == Entered ? QString() : text(row, index.column());
        case Qt::ToolTipRole:
            return row.isFilled() ? evening_text::filledHint() : evening_text::keys(row);
        case Qt::AccessibleTextRole:
            if (index.column() != Entered) return text(row, index.column());
            return evening_text::columnHead(Entered) + u' ' + text(row, Entered);
        case Qt::TextAlignmentRole:
            if (index.column() == Number) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
            return {};
        case Qt::FontRole: {
            QFont font;
            font.setBold((row.isHead && index.column() <= What) || index.column() == Entered);
            return font;
        }
        case Qt::ForegroundRole:
            if (row.late && row.isHead && !row.isFilled() && index.column() == Expected)
                return paletteOf(lookOf(QApplication::palette()))[Role::Caution];
            return {};
        default:
            return {};
    }
}

QVariant EveningModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return evening_text::columnHead(section);
}

Qt::ItemFlags EveningModel::flags(const QModelIndex& index) const {
    auto flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (!index.isValid() || !editable_) return flags;
    const auto& row = at(index.row());
    const bool count = index.column() == Entered && row.entry == EveningEntry::Count;
    const bool outcome = row.isFilled() && row.seen;
    const bool hour = index.column() == HourColumn &&
                      (outcome || (row.isFilled() && row.entry == EveningEntry::Placed));
    const bool note = index.column() == Note && outcome;
    if (count || hour || note) flags |= Qt::ItemIsEditable;
    return flags;
}

bool EveningModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole) return false;
    const auto typed = value.toString().trimmed();
    if (typed == data(index, Qt::EditRole).toString()) return false;
    if (index.column() == Entered) Q_EMIT countWished(index.row(), typed);
    if (index.column() == HourColumn) Q_EMIT hourWished(index.row(), typed);
    if (index.column() == Note) Q_EMIT noteWished(index.row(), typed);
    return true;
}

}  // namespace tenthday
