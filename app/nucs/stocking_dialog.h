/// @file stocking_dialog.h  The nucs to stock in the week ahead: by when, how much, from where.
#pragma once
#include <QDialog>

#include "desk/desk.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace tenthday {

class StockingDialog : public QDialog {
    Q_OBJECT

public:
    StockingDialog(const Outlook& outlook, Day from, QWidget* parent = nullptr);

    [[nodiscard]] QTableWidget& table() { return *table_; }
    [[nodiscard]] QString sum() const;
    [[nodiscard]] QString donors() const;
    /// The list on the clipboard.
    void copy();

private:
    void fill(const Outlook& outlook, Day from);

    QTableWidget* table_;
    QLabel* sum_;
    QLabel* donors_;
    QPushButton* copy_;
};

}  // namespace tenthday
