/// @file nucs_ticks_model.h  The nucs of a cells day in walking order, with a tick for each that
/// gets a cell.
#pragma once
#include <QAbstractTableModel>

#include "cellsday/cells_draft.h"

namespace tenthday {

/// Shows a draft that its owner keeps; says what is wished and changes nothing itself.
class NucsTicksModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Cell, YardName, Nuc, Fit, Since, Gets, ColumnCount };
    /// Which nucs are listed; in the order of cells_text::filter.
    enum class Listed : std::uint8_t { Open, Chosen, All };
    using QAbstractTableModel::QAbstractTableModel;

    /// Reads the draft anew. Both must live until the next call.
    void show(OutlookPtr outlook, const CellsDraft* draft, const std::vector<CellsNuc>* nucs);
    /// Shows nothing: what was shown goes.
    void drop();
    /// Ticks have changed, nothing else.
    void refresh();
    void list(Listed listed);
    void setEditable(bool editable) { editable_ = editable; }

    [[nodiscard]] const CellsNuc& at(int row) const {
        return (*nucs_)[rows_[static_cast<std::size_t>(row)]];
    }
    [[nodiscard]] bool isTicked(int row) const;
    /// A cell went in by record, or something else is in it.
    [[nodiscard]] bool isFixed(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    void findRows();
    [[nodiscard]] QString text(const CellsNuc& nuc, int column) const;

    OutlookPtr outlook_;
    const CellsDraft* draft_ = nullptr;
    const std::vector<CellsNuc>* nucs_ = nullptr;
    std::vector<std::size_t> rows_;  ///< indices into the nucs
    Listed listed_ = Listed::Open;
    bool editable_ = true;
};

}  // namespace tenthday
