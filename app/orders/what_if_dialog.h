/// @file what_if_dialog.h  What bad luck would do to the orders: before and after, side by side.
#pragma once
#include <QDialog>

#include "desk/side_work.h"
#include "outlook/supply_of.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QGridLayout;
class QLabel;
class QSpinBox;
class QTableWidget;

namespace tenthday {

/// Each kind of bad luck is a tick, with numbers of its own. Nothing is ever kept.
class WhatIfDialog : public QDialog {
    Q_OBJECT

public:
    /// @param outlook  as it is shown; the dialog keeps to it
    explicit WhatIfDialog(OutlookPtr outlook, QWidget* parent = nullptr);

    [[nodiscard]] QCheckBox& cold() { return *cold_; }
    [[nodiscard]] QCheckBox& builderLost() { return *builderLost_; }
    [[nodiscard]] QCheckBox& robbed() { return *robbed_; }
    [[nodiscard]] QCheckBox& takeLow() { return *takeLow_; }
    [[nodiscard]] QSpinBox& robbedCount() { return *robbedCount_; }
    [[nodiscard]] QSpinBox& take() { return *take_; }
    [[nodiscard]] QDateEdit& coldFrom() { return *coldFrom_; }
    [[nodiscard]] QDateEdit& coldUntil() { return *coldUntil_; }
    [[nodiscard]] QTableWidget& table() { return *table_; }
    [[nodiscard]] QString summary() const;
    /// What is asked now.
    [[nodiscard]] WhatIf asked() const;
    [[nodiscard]] bool isReckoning() const { return isReckoning_; }

private:
    void makeChoices(QGridLayout& grid);
    void fillChoices();
    void connectChoices();
    void reckon();
    void show(const Result<WhatIfAnswer>& answer);

    OutlookPtr outlook_;
    std::vector<Id<Builder>> builders_;  ///< in the order of the list
    std::vector<std::optional<Id<Yard>>> yards_;
    QCheckBox* cold_;
    QDateEdit* coldFrom_;
    QDateEdit* coldUntil_;
    QCheckBox* builderLost_;
    QComboBox* builder_;
    QDateEdit* builderFrom_;
    QCheckBox* robbed_;
    QSpinBox* robbedCount_;
    QComboBox* robbedYard_;
    QDateEdit* robbedFrom_;
    QCheckBox* takeLow_;
    QSpinBox* take_;
    QTableWidget* table_;
    QLabel* summary_;
    SideWork work_{this};
    bool isReckoning_ = false;
};

}  // namespace tenthday
