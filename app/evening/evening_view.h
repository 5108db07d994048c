/// @file evening_view.h  The evening page: the day's tasks in the sheet's order, filled by key.
/// Each stroke is saved at once, so a half-filled page is kept.
#pragma once
#include <QWidget>

#include "desk/desk.h"
#include "desk/while_seen.h"
#include "evening/evening_model.h"

class QLabel;
class QPushButton;
class QTableView;

namespace tenthday {

class EveningView : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit EveningView(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] Day day() const { return day_; }
    /// Not after today: what is still to come cannot be entered.
    void setDay(Day day);

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] EveningModel& model() { return *model_; }
    [[nodiscard]] QString summary() const;
    /// The line that tells keys or a refusal.
    [[nodiscard]] QString told() const;

    /// Fills the current row, or the empty ones under a head.
    void look(NucLook look);
    /// Done, in, caught; of a count what was expected.
    void accept();
    /// Queens of the current row, or of the empty ones under a head, stay for the winter.
    void leaveForWinter();
    /// The pattern of the numbers that caught queens get from now on; empty: none.
    void setQueenNumbers(const QString& pattern) { queenNumbers_ = pattern; }
    void takeBackCurrent();

Q_SIGNALS:
    void dayChosen(tenthday::Day day);
    void cellsDayWished(tenthday::Day day);
    void queenNumbersWished();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeFoot();
    void follow();
    void tellCurrent();
    void goTo(int row);
    [[nodiscard]] const EveningRow* current() const;
    /// Rows under the current one that take this entry.
    [[nodiscard]] std::vector<const EveningRow*> fitting(EveningEntry entry) const;
    void enterRows(const std::vector<const EveningRow*>& rows, const EveningInput& input);
    void enterCount(int row, const QString& typed);
    void enterHour(int row, const QString& typed);
    void enterNote(int row, const QString& typed);
    /// Saves, and goes on to the next empty row where `goOn`.
    void save(const Result<ChangeSet>& changes, bool goOn);
    void askCause();
    [[nodiscard]] bool press(int key);

    Desk& desk_;
    Day day_;
    WhileSeen seen_{this, [this] { follow(); }};
    QString queenNumbers_;
    EveningModel* model_;
    QTableView* table_;
    QLabel* head_;
    QLabel* summary_;
    QLabel* told_;
    QPushButton* accept_;
    QPushButton* takeBack_;
};

}  // namespace tenthday
