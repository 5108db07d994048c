#include "weather/months_model.h"

#include "screen_text/weather_text.h"

namespace tenthday {

void MonthsModel::show(const Snapshot& snapshot) {
    rows_.fill(nullptr);
    for (const auto& row : snapshot.all<ClimateMonth>())
        rows_[static_cast<std::size_t>(row->month - 1)] = row;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int MonthsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int MonthsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant MonthsModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::TextAlignmentRole && index.column() != Month)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | Qt::AlignRight));
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (index.column() == Month) return weather_text::month(index.row() + 1);
    if (!row) return QString();
    return weather_text::tenths(index.column() == Maximum ? row->tmaxC : row->rainDays);
}

QVariant MonthsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return weather_text::monthColumn(section);
}

Qt::ItemFlags MonthsModel::flags(const QModelIndex& index) const {
    auto flags = QAbstractTableModel::flags(index);
    if (index.column() != Month && editable_) flags |= Qt::ItemIsEditable;
    return flags;
}

bool MonthsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || index.column() == Month) return false;
    const auto typed = weather_text::fromTyped(value.toString());
    const auto refuse = [&](const QString& why) { return Q_EMIT refused(why), false; };
    if (!typed) return refuse(weather_text::notANumber(value.toString()));
    const bool isMaximum = index.column() == Maximum;
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    const auto given = *typed;
    if (isMaximum && given && (*given < Tenths{-600} || *given > Tenths{599}))
        return refuse(weather_text::maximumBounds());
    if (!isMaximum && given && (*given < Tenths{0} || *given > Tenths{310}))
        return refuse(weather_text::rainDayBounds());
    if (!isMaximum && !row) return given ? refuse(weather_text::maximumFirst()) : false;
    const auto rain = row ? row->rainDays : std::nullopt;
    Q_EMIT wished(index.row() + 1, isMaximum ? given : std::optional(row->tmaxC),
                  isMaximum ? rain : given);
    return true;
}

}  // namespace tenthday
