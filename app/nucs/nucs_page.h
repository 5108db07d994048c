/// @file nucs_page.h  The nucs of a day: what each is, which are ready, and bees for many at once.
#pragma once
#include <QWidget>

#include "desk/desk.h"
#include "desk/while_seen.h"
#include "nucs/nucs_model.h"
#include "reasons/why_dialog.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QSplitter;
class QTableView;

namespace tenthday {

class NucsFilter;
class ReasonsView;

class NucsPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit NucsPage(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] Day day() const { return day_; }
    void setDay(Day day);

    /// Makes a nuc the current one, whatever is filtered out for it.
    void choose(Id<NucSide> side);

    /// The catch that frees the current nuc; no batch where none holds it.
    [[nodiscard]] DateOfBatch chosenDate() const;
    [[nodiscard]] ReasonsView& reasons() { return *reasons_; }

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QComboBox& filter() { return *filter_; }
    [[nodiscard]] QLineEdit& find() { return *find_; }
    [[nodiscard]] QPushButton& allButton() { return *all_; }
    [[nodiscard]] QPushButton& stockButton() { return *stock_; }
    /// What is done to the chosen nucs: stocked, or one kind of upkeep.
    [[nodiscard]] QComboBox& what() { return *what_; }
    [[nodiscard]] QSpinBox& bees() { return *bees_; }
    [[nodiscard]] QSpinBox& brood() { return *brood_; }
    [[nodiscard]] QCheckBox& openBrood() { return *openBrood_; }
    [[nodiscard]] QComboBox& donor() { return *donor_; }
    [[nodiscard]] QString numbersText() const;
    [[nodiscard]] QString told() const;

Q_SIGNALS:
    void dayChosen(tenthday::Day day);
    void cellsDayWished(tenthday::Day day);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeStocking();
    void follow();
    void divide();
    void tellSelection();
    void tellCurrent();
    void followWhat();
    void enterSelected();
    [[nodiscard]] Result<ChangeSet> stocking(const std::vector<Id<NucSide>>& sides) const;
    [[nodiscard]] Result<ChangeSet> care(const std::vector<Id<NucSide>>& sides) const;
    /// None for a stocking.
    [[nodiscard]] std::optional<NucCareKind> careKind() const;
    [[nodiscard]] bool isTakeBack() const;
    void showStockings();
    void showMiteWork();
    [[nodiscard]] std::vector<Id<NucSide>> selected() const;

    Desk& desk_;
    Day day_;
    WhileSeen seen_{this, [this] { follow(); }};
    NucsModel* model_;
    NucsFilter* shown_;
    QTableView* table_;
    QSplitter* parts_;
    bool isDivided_ = false;  ///< by hand
    ReasonsView* reasons_;
    QLabel* head_;
    QLabel* numbers_;
    QLabel* yards_;
    QComboBox* filter_;
    QLineEdit* find_;
    QComboBox* what_;
    QSpinBox* bees_;
    QSpinBox* brood_;
    QCheckBox* openBrood_;
    QComboBox* donor_;
    QPushButton* all_;
    QPushButton* stock_;
    QLabel* told_;
};

}  // namespace tenthday
