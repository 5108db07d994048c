/// @file plan_page.h  The season plan: what is asked, what is proposed, what it does to the season;
/// and what of it goes into the book.
#pragma once
#include <QDialog>
#include <QPointer>
#include <QWidget>
#include <vector>

#include "chart/chart_proposals.h"
#include "desk/desk.h"
#include "desk/side_work.h"
#include "plan/plan_trial.h"
#include "plan/plan_worker.h"
#include "plan/proposals_model.h"
#include "screen_text/setup_text.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QSplitter;
class QStackedWidget;
class QTableView;

namespace tenthday {

class PlanForm;
class PlanSteps;
class PlanSumsTable;
class ReasonsView;

/// Plans beside the window's own work; nothing is kept until it is taken over, in one undo step.
/// Without a plan it shows the way to one in three steps.
class PlanPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit PlanPage(Desk& desk, QWidget* parent = nullptr);
    ~PlanPage() override;

    void plan();
    void stop();
    void findWays();
    /// Asks for the current proposal's graft day and grafts.
    void change();
    void backToPlanned();
    void tickAll(bool tick);
    /// Makes the ticked proposals batches of the book.
    void takeOver();
    /// Lets all proposals go; the book stays as it is.
    void forget();

    [[nodiscard]] PlanForm& form() { return *form_; }
    [[nodiscard]] PlanSteps& steps() { return *steps_; }
    [[nodiscard]] ProposalsModel& model() { return *model_; }
    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] PlanSumsTable& sums() { return *sums_; }
    [[nodiscard]] ReasonsView& reasons() { return *reasons_; }
    [[nodiscard]] QPushButton& takeOverButton() { return *takeOver_; }
    [[nodiscard]] QPushButton& waysButton() { return *findWays_; }
    [[nodiscard]] bool showsSteps() const;
    /// Planning, or looking for ways.
    [[nodiscard]] bool isPlanning() const { return worker_->isWorking(); }
    /// The ticked proposals are being looked at again.
    [[nodiscard]] bool isTrying() const { return isTrying_; }
    [[nodiscard]] QString status() const;
    /// Orders that are short or not sure enough, and what the ticked batches bring to be warned of.
    [[nodiscard]] QString gaps() const;
    [[nodiscard]] QString ways() const;
    [[nodiscard]] QString told() const;
    /// The dialog open now, or null.
    [[nodiscard]] QDialog* dialog() const { return asking_; }

Q_SIGNALS:
    /// What the chart is to show as ghosts; null: nothing.
    void proposalsShown(const tenthday::ChartProposalsPtr& proposals);
    void chartWanted();
    void ordersWanted();
    void setupWanted(tenthday::setup_text::Kind kind);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeAnswer();
    [[nodiscard]] QWidget* makeSide();
    [[nodiscard]] QWidget* makeFoot();
    void makeTable();
    void connectParts();
    bool key(int key, Qt::KeyboardModifiers with);
    void toggleTick();
    void follow(const Changes& changes);
    void tellProgress(const PlanProgress& progress);
    void takeAnswer(const Result<PlanAnswer>& answer);
    void takeWays(const Result<std::vector<WayToFix>>& ways);
    /// Looks again at what is ticked.
    void tryTicked();
    void takeTrial(const Result<PlanTrial>& trial);
    void tellAnswer();
    void tellCurrent();
    void tellButtons();
    void tell(const QString& what);
    void showRows(std::vector<ProposalsModel::Row> rows);
    [[nodiscard]] bool isAsPlanned() const;

    Desk& desk_;
    PlanWorker* worker_;
    SideWork trying_{this};
    bool isTrying_ = false;
    bool taking_ = false;  ///< the edit under way is the page's own
    OutlookPtr working_;   ///< what is being planned on
    OutlookPtr of_;        ///< what the answer was planned on
    PlanQuestion asked_;
    std::optional<PlanAnswer> answer_;
    std::optional<PlanTrial> trial_;
    PlanForm* form_;
    PlanSteps* steps_;
    ProposalsModel* model_;
    QTableView* table_;
    PlanSumsTable* sums_;
    ReasonsView* reasons_;
    QStackedWidget* body_;
    QSplitter* batches_;
    std::vector<QWidget*> ofBatches_;  ///< shown while batches are proposed
    QWidget* shown_;                   ///< the answer, on the body
    QLabel* status_;
    QLabel* gaps_;
    QLabel* ways_;
    QLabel* progress_;
    QLabel* told_;
    QProgressBar* busy_;
    QPushButton* plan_;
    QPushButton* stop_;
    QPushButton* findWays_;
    QPushButton* change_;
    QPushButton* asPlanned_;
    QPushButton* takeOver_;
    QPointer<QDialog> asking_;
};

}  // namespace tenthday
