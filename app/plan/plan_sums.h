/// @file plan_sums.h  The season in sums, as the book is and with proposals; and each order's
/// chance.
#pragma once
#include <QTableWidget>

#include "planning/season_plan.h"

namespace tenthday {

class PlanSumsTable : public QTableWidget {
    Q_OBJECT

public:
    enum Column { What, Before, After, ColumnCount };

    explicit PlanSumsTable(QWidget* parent = nullptr);

    void show(const Outlook& outlook, const PlanSums& before, const PlanSums& after);
};

}  // namespace tenthday
