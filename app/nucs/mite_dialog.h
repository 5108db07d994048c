/// @file mite_dialog.h  Days without open brood of nucs and builders, and the work against mites
/// that was done on them: seen, entered for many at once, taken back.
#pragma once
#include <QDialog>

#include "desk/desk.h"
#include "occupancy/mite_spans.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace tenthday {

class MiteDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk  must outlive the dialog
    explicit MiteDialog(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] QTableWidget& table() { return *table_; }
    [[nodiscard]] QCheckBox& all() { return *all_; }
    [[nodiscard]] QComboBox& what() { return *what_; }
    [[nodiscard]] QPushButton& enterButton() { return *enter_; }
    [[nodiscard]] QPushButton& takeBackButton() { return *takeBack_; }
    [[nodiscard]] QString told() const;
    void setDay(Day day);

    /// What was done, for the rows that are chosen.
    void enter();
    /// Erases what is entered for the rows that are chosen.
    void takeBack();

private:
    [[nodiscard]] QWidget* makeEntry();
    void follow();
    void fill();
    void tellSelection();
    [[nodiscard]] std::vector<const MiteSpan*> chosen() const;
    void save(const Result<ChangeSet>& changes);

    Desk& desk_;
    OutlookPtr outlook_;
    std::vector<MiteSpan> spans_;  ///< those shown; they point into the outlook
    QTableWidget* table_;
    QCheckBox* all_;
    QDateEdit* day_;
    QComboBox* what_;
    QLineEdit* note_;
    QPushButton* enter_;
    QPushButton* takeBack_;
    QLabel* told_;
};

}  // namespace tenthday
