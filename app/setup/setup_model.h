/// @file setup_model.h  The things of one kind as a table.
#pragma once
#include <QAbstractTableModel>

#include "look/palette.h"
#include "setup/setup_kind.h"

namespace tenthday {

class SetupModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void show(QStringList columns, std::vector<ListRow> rows);
    void setLook(Look look);
    [[nodiscard]] Uuid idAt(int row) const { return rows_[static_cast<std::size_t>(row)].id; }
    /// The row of a thing, or -1.
    [[nodiscard]] int rowOf(const Uuid& id) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QStringList columns_;
    std::vector<ListRow> rows_;
    Look look_ = Look::Light;
};

}  // namespace tenthday
