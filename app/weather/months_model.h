/// @file months_model.h  Twelve months to type their usual weather into.
#pragma once
#include <QAbstractTableModel>
#include <array>

#include "records/snapshot.h"

namespace tenthday {

class MonthsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Month, Maximum, RainDays, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(const Snapshot& snapshot);
    void setEditable(bool editable) { editable_ = editable; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    /// A month was given its values. @param month  1..12
    void wished(int month, std::optional<tenthday::Tenths> tmaxC,
                std::optional<tenthday::Tenths> rainDays);
    void refused(const QString& why);

private:
    std::array<Ptr<ClimateMonth>, 12> rows_;  ///< null where nothing is known
    bool editable_ = true;
};

}  // namespace tenthday
