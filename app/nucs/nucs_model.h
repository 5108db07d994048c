/// @file nucs_model.h  Every nuc on one day as a table, in driving order.
#pragma once
#include <QAbstractTableModel>

#include "occupancy/nuc_upkeep.h"
#include "outlook/outlook.h"

namespace tenthday {

class NucsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Yard, Nuc, State, Since, Ready, ReadyFrom, Batch, Chance, Bees, ColumnCount };
    /// Which of the four numbers a nuc counts in; `Held` in none.
    enum class Group { Ready, Likely, CanStock, NeedsBrood, Held };

    /// What a column is sorted by: days and chances as numbers.
    static constexpr int kSortRole = Qt::UserRole + 1;

    using QAbstractTableModel::QAbstractTableModel;

    void show(OutlookPtr outlook, Day day);
    [[nodiscard]] Day day() const { return day_; }
    [[nodiscard]] const OutlookPtr& outlook() const { return outlook_; }
    /// The four numbers of all yards together.
    [[nodiscard]] ReadyNumbers numbers() const;
    /// The four numbers of each yard, a line for each, in driving order.
    [[nodiscard]] QStringList yardLines() const;
    [[nodiscard]] Id<NucSide> sideAt(int row) const;
    [[nodiscard]] const SideOutlook& sideOutlookAt(int row) const;
    [[nodiscard]] Group groupAt(int row) const;
    [[nodiscard]] bool isWornAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    struct Row {
        const SideOutlook* side;
        QString yard;
        SideDay is;
        std::optional<Day> since;  ///< it is what it is
        NucStrength bees;
    };
    [[nodiscard]] QString text(const Row& row, int column) const;
    [[nodiscard]] QVariant sortKey(const Row& row, int column) const;

    OutlookPtr outlook_;
    Day day_{};
    std::vector<Row> rows_;
};

}  // namespace tenthday
