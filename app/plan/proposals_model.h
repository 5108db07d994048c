/// @file proposals_model.h  Proposed batches as a table, each with a tick: those to be taken over.
#pragma once
#include <QAbstractTableModel>

#include "planning/season_plan.h"

namespace tenthday {

class ProposalsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        Graft,
        Breeder,
        Builder,
        Grafts,
        Cells,
        CellsOut,
        Where,
        Ready,
        For,
        ColumnCount
    };

    /// One proposal.
    struct Row {
        ProposedBatch batch;
        ProposedBatch planned;  ///< as it was proposed
        bool ticked = true;
        [[nodiscard]] bool isChanged() const {
            return batch.graft != planned.graft || batch.bars != planned.bars;
        }
    };

    using QAbstractTableModel::QAbstractTableModel;

    void show(OutlookPtr outlook, std::vector<Row> rows);
    /// What the proposals were shown with; null before.
    [[nodiscard]] const OutlookPtr& outlook() const { return outlook_; }
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] const Row& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] std::vector<ProposedBatch> ticked() const;
    void tickAll(bool tick);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

Q_SIGNALS:
    void ticksChanged();

private:
    [[nodiscard]] QString text(const Row& row, int column) const;

    OutlookPtr outlook_;
    std::vector<Row> rows_;
};

}  // namespace tenthday
