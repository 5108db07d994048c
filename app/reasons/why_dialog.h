/// @file why_dialog.h  "Why this day?": every date of a batch, and why the chosen one is that day.
#pragma once
#include <QDialog>

#include "desk/desk.h"

class QTableWidget;

namespace tenthday {

class ReasonsView;

/// What is asked for: a date of a batch; without an event all its dates.
struct DateOfBatch {
    std::optional<Id<Batch>> batch;
    std::optional<Event> event;
};

/// Stands beside the window, not in its way, and follows every edit and every drag.
class WhyDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk   must outlive the dialog
    /// @param event  chosen at first; without it, or where the batch lacks it, the first
    WhyDialog(Desk& desk, Id<Batch> batch, std::optional<Event> event, QWidget* parent = nullptr);

    [[nodiscard]] Id<Batch> batch() const { return batch_; }
    void showBatch(Id<Batch> batch, std::optional<Event> event);

    [[nodiscard]] QTableWidget& events() { return *events_; }
    [[nodiscard]] ReasonsView& reasons() { return *reasons_; }
    [[nodiscard]] std::optional<Event> chosen() const;

private:
    void follow();
    void choose(std::optional<Event> event);
    void tellChosen();

    Desk& desk_;
    Id<Batch> batch_;
    bool filling_ = false;
    QTableWidget* events_;
    ReasonsView* reasons_;
};

}  // namespace tenthday
