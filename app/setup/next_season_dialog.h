/// @file next_season_dialog.h  A season is over: what goes on into the next, ticked in one list.
#pragma once
#include <QDialog>

#include "desk/desk.h"
#include "records/next_season.h"

class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;
class QTreeWidget;

namespace tenthday {

/// One edit, one undo step. Stays open, and says why, while what was given is refused.
class NextSeasonDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk  must outlive the dialog
    explicit NextSeasonDialog(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit& label() { return *label_; }
    [[nodiscard]] QDateEdit& from() { return *from_; }
    [[nodiscard]] QTreeWidget& things() { return *things_; }
    [[nodiscard]] QString told() const;
    /// The season that was begun, as text; empty before.
    [[nodiscard]] const QString& seasonMade() const { return made_; }

    void accept() override;

private:
    void fill();
    [[nodiscard]] NextSeason chosen() const;

    Desk& desk_;
    QString made_;
    QLineEdit* label_;
    QDateEdit* from_;
    QDateEdit* until_;
    QTreeWidget* things_;
    QLabel* told_;
    QPushButton* begin_;
};

}  // namespace tenthday
