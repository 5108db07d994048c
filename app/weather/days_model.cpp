#include "weather/days_model.h"

#include <QFont>

#include "outlook/sky.h"
#include "screen_text/weather_text.h"

namespace tenthday {

void DaysModel::show(const Snapshot& snapshot) {
    today_ = snapshot.today();
    limits_ = flyingLimits(snapshot.facts());
    rows_.fill(nullptr);
    for (const auto& row : snapshot.all<WeatherDay>())
        if (const auto back = (today_ - row->date).count(); back >= 0 && back < kDays)
            rows_[static_cast<std::size_t>(back)] = row;
    Q_EMIT dataChanged(index(0, 0), index(kDays - 1, ColumnCount - 1));
}

std::optional<bool> DaysModel::flewAt(int row) const {
    const auto& is = rows_[static_cast<std::size_t>(row)];
    return is ? is->flew : std::nullopt;
}

int DaysModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kDays; }

int DaysModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant DaysModel::data(const QModelIndex& index, int role) const {
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::FontRole) {
        QFont font;
        font.setBold(index.column() == Seen && row && row->flew);
        return font;
    }
    if (role == Qt::TextAlignmentRole && index.column() == Maximum)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | Qt::AlignRight));
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
        case When:
            return weather_text::day(dayAt(index.row()), index.row() == 0);
        case Maximum:
            return weather_text::tenths(row ? row->tmaxC : std::nullopt);
        case Seen:
            return weather_text::flew(flewAt(index.row()));
        default:
            return weather_text::countsAs(row ? isFlyingDay(weatherOf(*row), limits_)
                                              : std::nullopt);
    }
}

QVariant DaysModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return weather_text::dayColumn(section);
}

}  // namespace tenthday
