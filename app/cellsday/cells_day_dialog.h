/// @file cells_day_dialog.h  A cells day: how many cells are ripe, where each one goes, and the
/// nucs that get one, planned or recorded.
#pragma once
#include <QDialog>
#include <functional>

#include "cellsday/cells_verbs.h"
#include "cellsday/nucs_ticks.h"
#include "cellsday/propose.h"
#include "cellsday/ways_grid.h"
#include "desk/desk.h"
#include "options/settings.h"
#include "sheets/list_paper.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace tenthday {

/// Nothing is kept before it is planned or done; each is one edit.
class CellsDayDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk, settings  must outlive the dialog
    CellsDayDialog(Desk& desk, Settings& settings, Day day, QWidget* parent = nullptr);
    ~CellsDayDialog() override;

    [[nodiscard]] Day day() const { return draft_.day; }
    [[nodiscard]] const CellsDraft& draft() const { return draft_; }
    [[nodiscard]] WaysGrid& ways() { return *grid_; }
    [[nodiscard]] NucsTicks& ticks() { return *ticks_; }
    [[nodiscard]] QComboBox& listed() { return *listed_; }
    [[nodiscard]] QComboBox& tickedFor() { return *batch_; }
    [[nodiscard]] QPushButton& planButton() { return *plan_; }
    [[nodiscard]] QPushButton& doneButton() { return *done_; }
    [[nodiscard]] QString sumText() const;
    [[nodiscard]] QString told() const;
    /// In place of a question to the user.
    void setAsk(std::function<bool(const QString&)> ask) { ask_ = std::move(ask); }

    void propose();
    void clear();
    void keep(CellsKept how);
    /// The cells day before (-1) or after (1).
    void step(int by);

    void reject() override;

    /// The placement list as it is drafted now.
    [[nodiscard]] ListPaper sheet() const;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeLeft();
    [[nodiscard]] QWidget* makeRight();
    [[nodiscard]] QWidget* makeFoot();
    void connectAll();
    void addKeys();
    void showDay(Day day);
    void refresh();
    void setTicks(const std::vector<Id<NucSide>>& sides, bool ticked);
    void orderWays();
    void undoOrRedo(Result<void> (Desk::*act)());
    [[nodiscard]] bool mayLeave();
    [[nodiscard]] bool isChanged() const;

    Desk& desk_;
    Settings& settings_;
    OutlookPtr outlook_;
    CellsDraft draft_;
    CellsDraft opened_;  ///< as the book has it
    std::vector<CellsNuc> nucs_;
    std::function<bool(const QString&)> ask_;
    int edits_ = 0;  ///< kept from here: so many may be taken back here

    WaysGrid* grid_;
    NucsTicks* ticks_;
    QLabel* head_;
    QLabel* sum_;
    QLabel* told_;
    QLabel* batchLabel_;
    QComboBox* batch_;
    QComboBox* listed_;
    QPushButton* propose_;
    QPushButton* clear_;
    QPushButton* order_;
    QPushButton* print_;
    QPushButton* plan_;
    QPushButton* done_;
};

/// The cells day to begin with: this day where cells are to be placed on it, else the next one,
/// else the last.
[[nodiscard]] Day cellsDayNear(const Outlook& outlook, Day day);

}  // namespace tenthday
