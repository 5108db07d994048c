/// @file virgins_page.h  The page for a cold week: nucs by the age of their virgin, how long she
/// can still mate, and what to do.
#pragma once
#include <QWidget>

#include "desk/desk.h"
#include "desk/while_seen.h"
#include "reasons/why_dialog.h"
#include "virgins/virgins_model.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSortFilterProxyModel;
class QTableView;

namespace tenthday {

class ReasonsView;

/// Reckons only while it is seen.
class VirginsPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit VirginsPage(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] Day day() const { return day_; }
    void setDay(Day day);

    /// The first look of the current nuc's batch; no batch where no nuc is listed.
    [[nodiscard]] DateOfBatch chosenDate() const;
    /// The current nuc, or null.
    [[nodiscard]] const WaitingVirgin* chosen() const;

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QTableView& groups() { return *groupTable_; }
    [[nodiscard]] QComboBox& filter() { return *filter_; }
    [[nodiscard]] QLineEdit& find() { return *find_; }
    [[nodiscard]] ReasonsView& reasons() { return *reasons_; }
    [[nodiscard]] QString sentence() const;

Q_SIGNALS:
    void dayChosen(tenthday::Day day);
    void nucWished(tenthday::Id<tenthday::NucSide> side);
    void batchWished(tenthday::Id<tenthday::Batch> batch);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeSide();
    [[nodiscard]] QWidget* makeFoot();
    void connectParts();
    void follow();
    void tellCurrent();
    void wishNuc();
    void wishBatch();

    Desk& desk_;
    Day day_;
    WhileSeen seen_{this, [this] { follow(); }};
    VirginsModel* model_;
    QSortFilterProxyModel* shown_;
    VirginGroupsModel* groups_;
    QTableView* table_;
    QTableView* groupTable_;
    ReasonsView* reasons_;
    QLabel* head_;
    QLabel* sentence_;
    QLabel* advised_;
    QComboBox* filter_;
    QLineEdit* find_;
    QPushButton* nuc_;
    QPushButton* batch_;
};

}  // namespace tenthday
