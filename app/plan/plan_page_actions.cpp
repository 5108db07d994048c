/// What is done with a season's plan on its page.
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <algorithm>

#include "book/new_id.h"
#include "plan/plan_ask.h"
#include "plan/plan_form.h"
#include "plan/plan_page.h"
#include "plan/plan_steps.h"
#include "plan/plan_sums.h"
#include "planning/adopt.h"
#include "reasons/reasons_view.h"
#include "screen_text/plan_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

using Rows = std::vector<ProposalsModel::Row>;

QString plain(const std::string& text) { return QString::fromStdString(text); }

/// The order in which a plan tells its batches.
void sortByGraft(Rows& rows) {
    std::stable_sort(rows.begin(), rows.end(), [](const auto& one, const auto& other) {
        return one.batch.graft < other.batch.graft;
    });
}

}  // namespace

void PlanPage::tell(const QString& what) {
    told_->setText(what);
    told_->setVisible(!what.isEmpty());
}

void PlanPage::plan() {
    if (worker_->isWorking() || desk_.isPreviewing()) return;
    tell({});
    working_ = desk_.outlook();
    asked_ = form_->question();
    if (form_->keepsTicked()) asked_.keep = model_->ticked();
    progress_->setText(plan_text::beginning());
    worker_->plan(working_, asked_);
    tellButtons();
}

void PlanPage::stop() {
    worker_->stop();
    stop_->setEnabled(false);
}

void PlanPage::tellProgress(const PlanProgress& progress) {
    progress_->setText(progress.phase == PlanPhase::Ways ? plan_text::searchingWays(progress.round)
                                                         : plan_text::progress(progress));
}

void PlanPage::takeAnswer(const Result<PlanAnswer>& answer) {
    progress_->clear();
    if (!answer) {
        tell(plan_text::cannotPlan(plain(answer.error().text)));
        return tellButtons();
    }
    delete asking_;  // it asks of a row that gives way
    answer_ = answer.value();
    of_ = working_;
    Rows rows;
    for (const auto& batch : answer_->batches) rows.push_back({batch, batch, true});
    ways_->clear();
    ways_->hide();
    trial_.reset();
    if (rows.empty() && answer_->shortOf.empty()) tell(plan_text::status(*of_, *answer_));
    const auto* focus = window()->focusWidget();
    const bool isHere = focus == nullptr || focus == this || isAncestorOf(focus);
    showRows(std::move(rows));
    if (isHere && !showsSteps()) focusProxy()->setFocus();
    tryTicked();
}

void PlanPage::findWays() {
    if (worker_->isWorking() || !answer_ || desk_.isPreviewing()) return;
    working_ = desk_.outlook();
    ways_->clear();
    ways_->hide();
    progress_->setText(plan_text::searchingWays(0));
    worker_->findWays(working_, asked_);
    tellButtons();
}

void PlanPage::takeWays(const Result<std::vector<WayToFix>>& ways) {
    progress_->clear();
    QStringList lines;
    if (!ways) lines += plan_text::cannotPlan(plain(ways.error().text));
    if (ways)
        for (const auto& each : ways.value()) lines += plan_text::way(*working_, each);
    const bool fixes = ways && std::any_of(ways.value().begin(), ways.value().end(),
                                           [](const WayToFix& each) { return each.fixes; });
    if (ways && !fixes) lines += plan_text::noWay();
    ways_->setText(lines.join(u'\n'));
    ways_->show();
    tellButtons();
}

void PlanPage::showRows(Rows rows) {
    const int row = std::max(table_->currentIndex().row(), 0);
    const bool none = rows.empty();
    sortByGraft(rows);
    model_->show(desk_.outlook(), std::move(rows));
    body_->setCurrentWidget(
        none && !(answer_ && !answer_->shortOf.empty()) ? static_cast<QWidget*>(steps_) : shown_);
    form_->setHasProposals(!none);
    table_->setCurrentIndex(model_->index(std::min(row, model_->rowCount() - 1), 0));
    for (auto* part : ofBatches_) part->setVisible(!none);
    setFocusProxy(!none          ? static_cast<QWidget*>(table_)
                  : showsSteps() ? &steps_->button(2)
                                 : findWays_);
    tellCurrent();
    tellButtons();
}

void PlanPage::tryTicked() {
    trial_.reset();
    tellCurrent();
    if (!answer_) return Q_EMIT proposalsShown(nullptr);
    isTrying_ = true;
    if (!worker_->isWorking()) progress_->setText(plan_text::lookingAgain());
    trying_.ask([outlook = desk_.outlook(),
                 batches = model_->ticked()] { return tryPlan(*outlook, batches); },
                [this](const Result<PlanTrial>& trial) { takeTrial(trial); });
}

void PlanPage::takeTrial(const Result<PlanTrial>& trial) {
    isTrying_ = false;
    if (!worker_->isWorking()) progress_->clear();
    if (!answer_) return;
    if (!trial) {
        trial_.reset();
        status_->setText(plan_text::cannotTry(plain(trial.error().text)));
        status_->setToolTip({});
        Q_EMIT proposalsShown(nullptr);
        return tellCurrent();
    }
    trial_ = trial.value();
    auto rows = model_->rows();
    std::size_t next = 0;
    for (auto& row : rows)
        if (row.ticked) row.batch = trial_->answer.batches[next++];
    showRows(std::move(rows));
    tellAnswer();
    Q_EMIT proposalsShown(ghostsOf(*trial_));
}

bool PlanPage::isAsPlanned() const {
    return of_ == desk_.outlook() &&
           std::all_of(model_->rows().begin(), model_->rows().end(),
                       [](const auto& row) { return row.ticked && !row.isChanged(); });
}

void PlanPage::tellAnswer() {
    const auto& told = isAsPlanned() ? *answer_ : trial_->answer;
    const auto outlook = desk_.outlook();
    status_->setText(plan_text::status(*outlook, told));
    status_->setToolTip(plan_text::statusBecause());
    auto lines = plan_text::gaps(*outlook, told) + plan_text::warnings(trial_->warnings);
    if (told.batches.empty() && !told.shortOf.empty()) lines += plan_text::whatNext();
    gaps_->setText(lines.join(u'\n'));
    gaps_->setVisible(!lines.isEmpty());
    sums_->show(*outlook, trial_->answer.before, trial_->answer.after);
}

/// The current proposal's place among those ticked tells its batch of the trial.
void PlanPage::tellCurrent() {
    const int row = table_->currentIndex().row();
    std::vector<why_text::Link> chain;
    if (row >= 0 && trial_ && model_->at(row).ticked) {
        const auto& rows = model_->rows();
        const auto before = static_cast<std::size_t>(std::count_if(
            rows.begin(), rows.begin() + row, [](const auto& each) { return each.ticked; }));
        if (before < trial_->batches.size())
            chain = why_text::event(*trial_->outlook, trial_->batches[before], Event::Catch);
    }
    reasons_->showChain(chain, plan_text::chooseBatch());
    tellButtons();
}

void PlanPage::tellButtons() {
    const bool working = worker_->isWorking();
    const int ticked = static_cast<int>(model_->ticked().size());
    const int row = table_->currentIndex().row();
    const bool has = row >= 0 && row < model_->rowCount();
    busy_->setVisible(working);
    stop_->setVisible(working);
    stop_->setEnabled(working);
    plan_->setVisible(!showsSteps() && !working);
    steps_->button(2).setEnabled(!working && planGround(*desk_.outlook()).canPlan());
    findWays_->setVisible(answer_ && !answer_->shortOf.empty());
    findWays_->setEnabled(!working);
    change_->setEnabled(has);
    asPlanned_->setEnabled(has && model_->at(row).isChanged());
    takeOver_->setText(plan_text::takeOver(ticked));
    takeOver_->setEnabled(ticked > 0 && !desk_.isReadOnly());
    takeOver_->setToolTip(desk_.isReadOnly() ? plan_text::readOnly() : QString());
}

void PlanPage::change() {
    const int row = table_->currentIndex().row();
    if (row < 0) return;
    delete asking_;
    const auto keep = [this, row](const ProposedBatch& batch) {
        auto rows = model_->rows();
        if (static_cast<std::size_t>(row) >= rows.size()) return;
        rows[static_cast<std::size_t>(row)].batch = batch;
        rows[static_cast<std::size_t>(row)].ticked = true;
        showRows(std::move(rows));
        tryTicked();
    };
    asking_ = new FieldsDialog(askProposal(*model_->outlook(), model_->at(row).batch, keep),
                               desk_.snapshot().today(), this);
    asking_->setAttribute(Qt::WA_DeleteOnClose);
    asking_->open();
}

void PlanPage::backToPlanned() {
    const int row = table_->currentIndex().row();
    if (row < 0) return;
    auto rows = model_->rows();
    auto& each = rows[static_cast<std::size_t>(row)];
    each.batch = each.planned;
    showRows(std::move(rows));
    tryTicked();
}

void PlanPage::tickAll(bool tick) { model_->tickAll(tick); }

void PlanPage::takeOver() {
    const auto batches = model_->ticked();
    if (batches.empty() || desk_.isReadOnly()) return;
    const auto changes = adopt(desk_.snapshot(), batches, [] { return idMaker().next(); });
    taking_ = true;
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    taking_ = false;
    if (!done) return tell(window_text::cannotSaveEdit() + u' ' + plain(done.error().text));
    Rows left;
    for (const auto& row : model_->rows())
        if (!row.ticked) left.push_back(row);
    delete asking_;
    asked_.keep.clear();
    ways_->clear();
    ways_->hide();
    trial_.reset();
    trying_.cancel();  // its batches are in the book now
    isTrying_ = false;
    if (left.empty()) answer_.reset();
    showRows(std::move(left));
    tell(plan_text::takenOver(static_cast<int>(batches.size())));
    follow({});
    if (!answer_) Q_EMIT proposalsShown(nullptr);
}

void PlanPage::forget() {
    answer_.reset();
    trial_.reset();
    trying_.cancel();
    isTrying_ = false;
    progress_->clear();
    tell({});
    showRows({});
    Q_EMIT proposalsShown(nullptr);
}

/// What is planned on a book that has changed is told of the book as it is now.
void PlanPage::follow(const Changes& changes) {
    if (changes.isPreview() || taking_) return;
    const auto outlook = desk_.outlook();
    if (worker_->isWorking() && working_ != outlook) {
        worker_->drop();
        progress_->clear();
        tell(plan_text::droppedByEdit());
    }
    form_->follow(*outlook);
    steps_->show(*outlook);
    tellButtons();
    if (!answer_ || of_ == outlook) return;
    ways_->clear();  // they were of the book before
    ways_->hide();
    if (of_->snapshot.seasonId() != outlook->snapshot.seasonId()) return forget();
    if (told_->text().isEmpty()) tell(plan_text::bookChanged());
    tryTicked();
}

}  // namespace tenthday
