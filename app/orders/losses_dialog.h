/// @file losses_dialog.h  The rates of losses: prior, own record and result side by side, and the
/// batches they come from.
#pragma once
#include <QDialog>
#include <QPointer>

#include "desk/desk.h"
#include "desk/side_work.h"
#include "supply/own_rates.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace tenthday {

class FieldsDialog;

/// Follows the book while it is open; the rates are fitted beside the window's own work. An odd
/// batch is left out for a reason, or taken in again; each is one undo step.
class LossesDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk  must outlive the dialog
    explicit LossesDialog(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] QTableWidget& stages() { return *stages_; }
    /// Batches that speak for the current stage.
    [[nodiscard]] QTableWidget& batches() { return *batches_; }
    [[nodiscard]] QPushButton& leaveOutButton() { return *leaveOut_; }
    [[nodiscard]] QPushButton& takeInButton() { return *takeIn_; }
    [[nodiscard]] FieldsDialog* question() const { return asking_; }
    [[nodiscard]] QString told() const;
    /// The rates are being reckoned beside; until then those of before stand.
    [[nodiscard]] bool isReckoning() const { return isReckoning_; }

private:
    void follow();
    void take(const OwnRates& rates);
    void showStages();
    void showBatches();
    void tellCurrent();
    void leaveOutCurrent();
    void takeInCurrent();
    [[nodiscard]] LossStage stage() const;
    [[nodiscard]] const BatchOutcome* current() const;
    QString save(const Result<ChangeSet>& changes);

    Desk& desk_;
    OwnRates rates_;
    QTableWidget* stages_;
    QTableWidget* batches_;
    QLabel* batchesHead_;
    QLabel* told_;
    QPushButton* leaveOut_;
    QPushButton* takeIn_;
    QPointer<FieldsDialog> asking_;
    bool isReckoning_ = false;
    SideWork work_{this};
};

}  // namespace tenthday
