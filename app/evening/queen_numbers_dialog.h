/// @file queen_numbers_dialog.h  Whether caught queens get numbers, and by which pattern.
#pragma once
#include <QDialog>

#include "options/settings.h"
#include "records/snapshot.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tenthday {

class QueenNumbersDialog : public QDialog {
    Q_OBJECT

public:
    /// @param book  whose next numbers are shown; is copied
    QueenNumbersDialog(const QueenNumbering& numbering, const Snapshot& book,
                       QWidget* parent = nullptr);

    [[nodiscard]] QueenNumbering numbering() const;
    [[nodiscard]] QCheckBox& give() { return *give_; }
    [[nodiscard]] QLineEdit& pattern() { return *pattern_; }
    /// The next numbers, or what is wrong with the pattern.
    [[nodiscard]] QString told() const;
    [[nodiscard]] QPushButton& keepButton() { return *keep_; }

private:
    void tell();

    Snapshot book_;
    QCheckBox* give_;
    QLineEdit* pattern_;
    QLabel* told_;
    QPushButton* keep_;
};

}  // namespace tenthday
