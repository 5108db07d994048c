/// @file evening_model.h  The evening page as a list: tasks, and under them their bars and nucs.
#pragma once
#include <QAbstractTableModel>
#include <optional>

#include "evening/evening_verbs.h"

namespace tenthday {

class EveningModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, What, Expected, Entered, HourColumn, Note, ColumnCount };
    using QAbstractTableModel::QAbstractTableModel;

    void show(OutlookPtr outlook, Day day);
    void setEditable(bool editable) { editable_ = editable; }

    [[nodiscard]] const OutlookPtr& outlook() const { return outlook_; }
    [[nodiscard]] Day day() const { return page_.day; }
    [[nodiscard]] const EveningPage& page() const { return page_; }
    [[nodiscard]] const EveningRow& at(int row) const {
        return page_.rows[static_cast<std::size_t>(row)];
    }
    /// The row that stands for the same task, bar and nuc; -1 where there is none any more.
    [[nodiscard]] int find(const EveningRow& row) const;
    /// The lines under a task's head that hold nothing yet; the row itself where it is no head.
    [[nodiscard]] std::vector<int> emptyUnder(int row) const;
    /// The next row after this one that takes an entry and holds none; -1 where there is none.
    [[nodiscard]] int nextEmpty(int row) const;
    [[nodiscard]] int filledCount() const;
    [[nodiscard]] int entryCount() const;
    [[nodiscard]] int lateCount() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void countWished(int row, const QString& typed);
    void hourWished(int row, const QString& typed);
    void noteWished(int row, const QString& typed);

private:
    [[nodiscard]] QString text(const EveningRow& row, int column) const;

    OutlookPtr outlook_;
    EveningPage page_{};
    bool editable_ = true;
};

}  // namespace tenthday
