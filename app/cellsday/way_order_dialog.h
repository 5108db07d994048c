/// @file way_order_dialog.h  The order of ways for cells that find no nuc: which, in what order,
/// how many at the most.
#pragma once
#include <QDialog>

#include "cellsday/propose.h"

class QLabel;
class QPushButton;
class QSpinBox;
class QTableWidget;

namespace tenthday {

class WayOrderDialog : public QDialog {
    Q_OBJECT

public:
    explicit WayOrderDialog(const WayOrder& order, QWidget* parent = nullptr);

    [[nodiscard]] WayOrder order() const;
    [[nodiscard]] QTableWidget& table() { return *table_; }
    /// Moves the current way up (-1) or down (1).
    void move(int by);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fill(const std::vector<std::pair<WayStep, bool>>& ways);
    [[nodiscard]] std::vector<std::pair<WayStep, bool>> ways() const;

    QTableWidget* table_;
    QPushButton* up_;
    QPushButton* down_;
};

}  // namespace tenthday
