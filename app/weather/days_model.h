/// @file days_model.h  The last days, today first: how warm, what was seen, what they count as.
#pragma once
#include <QAbstractTableModel>
#include <array>

#include "outlook/outlook.h"
#include "weather/flying_day.h"

namespace tenthday {

class DaysModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { When, Maximum, Seen, CountsAs, ColumnCount };
    static constexpr int kDays = 14;

    using QAbstractTableModel::QAbstractTableModel;

    void show(const Snapshot& snapshot);
    [[nodiscard]] Day dayAt(int row) const { return today_ - Days{row}; }
    [[nodiscard]] std::optional<bool> flewAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    Day today_;
    FlyingLimits limits_{};
    std::array<Ptr<WeatherDay>, kDays> rows_;  ///< null where the book has no row
};

}  // namespace tenthday
