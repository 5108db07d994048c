/// @file week_table.h  The week of a graft: for each weekday, which jobs fall where.
#pragma once
#include <QTableWidget>

#include "drafting/day_trials.h"

namespace tenthday {

class WeekTable : public QTableWidget {
    Q_OBJECT

public:
    explicit WeekTable(QWidget* parent = nullptr);

    /// @param own  the draft's own day, whose line is marked
    void show(const std::vector<DayTrial>& week, const FreeDays& free, Day own);
    using QTableWidget::show;

Q_SIGNALS:
    /// The start that belongs to the graft day of a line: Enter or a double click.
    void dayWished(tenthday::Day start);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fill(int row, const DayTrial& trial, const FreeDays& free, bool own);

    std::vector<TaskRule> rules_;  ///< a column each
    std::vector<Day> starts_;      ///< a line each
};

}  // namespace tenthday
