/// @file week_model.h  The tasks of a week as a table: what is still open, then day by day.
#pragma once
#include <QAbstractTableModel>

#include "outlook/outlook.h"
#include "tasks/week.h"

namespace tenthday {

class WeekModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, Done, What, About, Count, Yard, Must, When, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void show(OutlookPtr outlook, IsoWeek week);
    void setTickable(bool tickable) { tickable_ = tickable; }
    [[nodiscard]] IsoWeek week() const { return week_; }
    [[nodiscard]] const OutlookPtr& outlook() const { return outlook_; }

    /// The task of a row, or null for a head.
    [[nodiscard]] const Task* taskAt(int row) const;
    /// The row stands in the group of what is still open.
    [[nodiscard]] bool isStillOpen(int row) const;
    /// The head's day, or the row's.
    [[nodiscard]] Day dayAt(int row) const;
    [[nodiscard]] int taskCount() const { return static_cast<int>(tasks_.size()); }
    [[nodiscard]] int mustCount() const;
    [[nodiscard]] int doneCount() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    /// The box of a row was pressed.
    void tickWished(int row);

private:
    enum class Group { StillOpen, OfDay };
    struct Row {
        Group group = Group::OfDay;
        Day day;
        QString head;                         ///< of a head
        const NumberedTask* entry = nullptr;  ///< of a task
        bool empty = false;                   ///< head of a day without tasks
    };
    [[nodiscard]] QVariant headData(const Row& row, int column, int role) const;
    [[nodiscard]] QString text(const Row& row, int column) const;

    OutlookPtr outlook_;
    IsoWeek week_{};
    bool tickable_ = true;
    std::vector<NumberedTask> open_;
    std::vector<NumberedTask> tasks_;
    std::vector<Row> rows_;
};

}  // namespace tenthday
