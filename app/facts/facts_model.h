/// @file facts_model.h  The trade numbers as a table; typing over one asks for an edit.
#pragma once
#include <QAbstractTableModel>

#include "facts/facts.h"

namespace tenthday {

class FactsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { What, InUse, Unit, Default, Range, Source, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void setFacts(const Facts& facts);
    void setEditable(bool editable) { editable_ = editable; }
    [[nodiscard]] const Facts& facts() const { return facts_; }
    [[nodiscard]] static Fact factAt(int row) { return static_cast<Fact>(row); }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Saves nothing itself: it asks, and shows what the book says afterwards.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void wished(tenthday::Fact fact, double value);
    void refused(const QString& why);

private:
    [[nodiscard]] QString text(const FactEntry& entry, int column) const;

    Facts facts_;
    bool editable_ = true;
};

}  // namespace tenthday
