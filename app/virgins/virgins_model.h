/// @file virgins_model.h  The nucs whose virgin waits, on one day, as a table; oldest first.
#pragma once
#include <QAbstractTableModel>

#include "occupancy/waiting_virgins.h"
#include "outlook/outlook.h"

namespace tenthday {

class VirginsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        Yard,
        Nuc,
        Batch,
        Age,
        Flown,
        LastDay,
        Mated,
        Still,
        NextLook,
        Advice,
        ColumnCount
    };
    /// What a column is sorted by: days and chances as numbers.
    static constexpr int kSortRole = Qt::UserRole + 1;

    using QAbstractTableModel::QAbstractTableModel;

    void show(OutlookPtr outlook, Day day);
    [[nodiscard]] const WaitingVirgins& virgins() const { return virgins_; }
    [[nodiscard]] const WaitingVirgin& at(int row) const {
        return virgins_.nucs[static_cast<std::size_t>(row)];
    }
    /// Null until something was shown.
    [[nodiscard]] const OutlookPtr& outlook() const { return outlook_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QString text(const WaitingVirgin& virgin, int column) const;
    [[nodiscard]] QVariant sortKey(const WaitingVirgin& virgin, int column) const;
    [[nodiscard]] QString because(const WaitingVirgin& virgin, int column) const;

    OutlookPtr outlook_;
    WaitingVirgins virgins_;
};

/// The same nucs by yard and batch.
class VirginGroupsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Batch, Yard, Nucs, Age, Flown, Mated, Still, Advised, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(OutlookPtr outlook, std::vector<VirginGroup> groups);
    [[nodiscard]] const VirginGroup& at(int row) const {
        return groups_[static_cast<std::size_t>(row)];
    }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QString text(const VirginGroup& group, int column) const;

    OutlookPtr outlook_;
    std::vector<VirginGroup> groups_;
};

}  // namespace tenthday
