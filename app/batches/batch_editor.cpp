#include "batches/batch_editor.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>

#include "batches/bars_form.h"
#include "batches/dates_list.h"
#include "batches/draft_form.h"
#include "batches/stays_form.h"
#include "batches/week_table.h"
#include "batches/yards_form.h"
#include "book/new_id.h"
#include "drafting/second_graft.h"
#include "outlook/plan_of.h"
#include "reasons/why_dialog.h"
#include "screen_text/batch_text.h"
#include "screen_text/dates.h"
#include "screen_text/why_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

}  // namespace

BatchEditor::BatchEditor(Desk& desk, Settings& settings, BatchDraft draft, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      settings_(settings),
      draft_(std::move(draft)),
      isNew_(desk.snapshot().find(draft_.id) == nullptr),
      form_(new DraftForm(desk.snapshot())),
      bars_(new BarsForm(desk.snapshot())),
      yards_(new YardsForm(desk.snapshot())),
      dates_(new DatesList),
      week_(new WeekTable),
      weekSum_(new QLabel),
      clashes_(new QLabel),
      nearest_(new QVBoxLayout),
      nearestTold_(new QLabel),
      every_(new QSpinBox),
      more_(new QSpinBox),
      moreLabel_(new QLabel),
      repeats_(new QLabel),
      told_(new QLabel),
      whyButton_(new QPushButton(window_text::asTitle(why_text::menuEntry()))),
      save_(new QPushButton(batch_text::save())),
      remove_(new QPushButton(batch_text::remove())),
      topUp_(new QPushButton),
      insure_(new QPushButton(batch_text::insure())) {
    setWindowTitle(isNew_ ? batch_text::planTitle() : batch_text::editTitle(plain(draft_.label)));
    ask_ = [this](const QString& question) {
        return QMessageBox::question(this, windowTitle(), question) == QMessageBox::Yes;
    };
    form_->show(draft_);
    bars_->show(draft_);
    yards_->show(draft_);
    layOut();
    connectAll();
    if (isGraftRecorded()) {
        form_->lockGraft();
        weekPart_->hide();
    }
    refresh();
    opened_ = draft_;
    form_->label().setFocus();
}

WhyDialog* BatchEditor::why() const { return why_; }

/// Follows the preview; one at a time.
void BatchEditor::showWhy(std::optional<Event> event) {
    if (!desk_.outlook()->find(draft_.id)) return;
    if (why_) {
        why_->showBatch(draft_.id, event);
    } else {
        why_ = new WhyDialog(desk_, draft_.id, event, this);
        why_->setAttribute(Qt::WA_DeleteOnClose);
    }
    why_->show();
    why_->raise();
    why_->activateWindow();
}

BatchEditor::~BatchEditor() {
    delete why_;
    if (desk_.isPreviewing()) (void)desk_.preview(std::nullopt);
}

QString BatchEditor::weekSum() const { return weekSum_->text(); }
QString BatchEditor::clashesText() const { return clashes_->text(); }
QString BatchEditor::told() const { return told_->text(); }

void BatchEditor::connectAll() {
    soon_.setSingleShot(true);
    soon_.setInterval(0);
    connect(&soon_, &QTimer::timeout, this, &BatchEditor::refresh);
    const auto later = [this] { soon_.start(); };
    connect(form_, &DraftForm::changed, this, later);
    connect(bars_, &BarsForm::changed, this, later);
    connect(yards_, &YardsForm::changed, this, later);
    for (auto* field : {every_, more_}) connect(field, &QSpinBox::valueChanged, this, later);
    connect(&worker_, &TrialWorker::found, this, &BatchEditor::showTrials);
    connect(week_, &WeekTable::dayWished, this, &BatchEditor::take);
    for (auto* weekday : weekdays_)
        connect(weekday, &QToolButton::toggled, this, [this, later] {
            settings_.setFreeWeekdays(weekdaysOff());
            later();
        });
    connect(dates_, &DatesList::whyWished, this, &BatchEditor::showWhy);
    connect(whyButton_, &QPushButton::clicked, this, [this] { showWhy(dates_->chosen()); });
    connect(save_, &QPushButton::clicked, this, &BatchEditor::save);
    connect(remove_, &QPushButton::clicked, this, &BatchEditor::removeBatch);
    connect(topUp_, &QPushButton::clicked, this, [this] { planFurther(false); });
    connect(insure_, &QPushButton::clicked, this, [this] { planFurther(true); });
    // Undone or changed elsewhere while this is open: reckon anew.
    connect(&desk_, &Desk::shown, this, [later](const OutlookPtr&, const Changes& changes) {
        if (!changes.isPreview()) later();
    });
}

std::array<bool, 7> BatchEditor::weekdaysOff() const {
    std::array<bool, 7> off{};
    for (std::size_t i = 0; i < off.size(); ++i) off[i] = weekdays_[i]->isChecked();
    return off;
}

Repeat BatchEditor::repeat() const { return {Days{every_->value()}, more_->value()}; }

/// The day that the wish asks for, or a word that there is none.
bool BatchEditor::dayFromWish() {
    const auto wish = form_->wish();
    if (!wish) return true;
    const auto start = startFor(desk_.snapshot(), draft_, wish->event, wish->day, wish->sureness);
    if (!start) return false;
    draft_.day = *start;
    form_->showDay(*start);
    return true;
}

void BatchEditor::readFields() {
    const auto method = draft_.method;
    const auto start = draft_.start;
    form_->read(draft_);
    if (draft_.method != method || draft_.start != start)
        bars_->setMethod(draft_.method, draft_.start, draft_.day);
    bars_->read(draft_);
    yards_->read(draft_);
    if (!form_->stays().wantsDays()) return;
    form_->stays().suggest(usualStays(desk_.snapshot(), draft_));
    form_->stays().read(draft_);
}

/// Everything that follows from the fields, in one go.
void BatchEditor::refresh() {
    if (result() != 0 || (!isNew_ && !desk_.snapshot().find(draft_.id))) return;
    readFields();
    const bool found = dayFromWish();
    form_->stays().setGraft(plannedGraft(desk_.snapshot(), draft_));
    bars_->setCountable(canCountTake());
    const auto changes = changesOf(desk_.snapshot(), draft_, repeat(), ids_.fromStart());
    Result<void> shown;
    if (!found)
        shown = Error{batch_text::cannotWant().toStdString()};
    else if (!changes)
        shown = changes.error();
    else
        shown = desk_.preview(changes.value());
    if (!shown) return refuse(plain(shown.error().text));
    told_->setText(toldOf(changes.value()));
    save_->setEnabled(!desk_.isReadOnly() && (isNew_ || !changes.value().isEmpty()));
    showDerived();
    offerFurther();
    tellRepeats();
    showFresh(true);
    worker_.ask(desk_.saved(),
                {draft_, repeat(), freeDays(desk_.snapshot(), weekdaysOff()), !isGraftRecorded()});
}

bool BatchEditor::isGraftRecorded() const {
    return !isNew_ && isGrafted(desk_.snapshot(), draft_.id);
}

/// A take is counted from the day after the graft on.
bool BatchEditor::canCountTake() const {
    if (desk_.isReadOnly() || !hasGraft(draft_.start)) return false;
    if (isGraftRecorded())
        return graftedOrPlanned(desk_.snapshot(), *desk_.snapshot().find(draft_.id)) <
               desk_.snapshot().today();
    const auto begin = momentOf(draft_.day, draft_.hour);
    return dayOf(reckonedGraft(draft_.start, begin, desk_.snapshot().facts())) <
           desk_.snapshot().today();
}

/// What the user should know before saving.
QString BatchEditor::toldOf(const ChangeSet& changes) const {
    if (desk_.isReadOnly()) return batch_text::readOnly();
    int gone = 0;
    for (const auto& row : changes.rows)
        if (const auto outcome = row.as<Outcome>())
            gone += outcome->before && !outcome->after ? 1 : 0;
    if (gone > 0) return batch_text::countsGo(gone);
    return isGraftRecorded() ? batch_text::grafted() : QString();
}

/// What was reckoned from fields that are refused now is greyed.
void BatchEditor::showFresh(bool fresh) {
    for (QWidget* part : {static_cast<QWidget*>(dates_), static_cast<QWidget*>(week_),
                          static_cast<QWidget*>(weekSum_), static_cast<QWidget*>(clashes_)})
        part->setEnabled(fresh);
    for (auto* button : nearestButtons_) button->setEnabled(fresh && button->isEnabled());
}

void BatchEditor::refuse(const QString& why) {
    told_->setText(why);
    save_->setEnabled(false);
    showFresh(false);
    worker_.cancel();
    if (desk_.isPreviewing()) (void)desk_.preview(std::nullopt);
}

void BatchEditor::showDerived() {
    const auto& outlook = *desk_.outlook();
    const auto* batch = outlook.find(draft_.id);
    if (batch == nullptr) return;
    dates_->show(batch->timeline, planOf(outlook, draft_.id));
    form_->showNucDays(&batch->timeline.hold);
    form_->stays().follow(batch->timeline);
    yards_->follow(outlook, draft_.id);
}

void BatchEditor::showTrials(const TrialResult& result) {
    const auto free = freeDays(desk_.snapshot(), weekdaysOff());
    week_->show(result.week, free, draft_.day);
    weekSum_->setText(batch_text::weekSum(result.week, free, draft_.day));
    if (result.own) {
        const auto lines = batch_text::against(*result.own);
        clashes_->setText(lines.isEmpty() ? batch_text::noClash() : lines.join(u'\n'));
    }
    if (result.nearest)
        showNearest(*result.nearest);
    else
        nearestTold_->setText(batch_text::searching());
}

void BatchEditor::showNearest(const std::vector<DayTrial>& days) {
    for (auto* button : nearestButtons_) {
        button->hide();
        button->deleteLater();
    }
    nearestButtons_.clear();
    nearestTold_->setText(days.empty() ? batch_text::noneNear() : QString());
    nearestTold_->setVisible(days.empty());
    for (const auto& trial : days) {
        const auto away = static_cast<int>((trial.day - draft_.day).count());
        auto* button = new QPushButton(batch_text::nearest(trial.graft, away));
        button->setAutoDefault(false);
        button->setEnabled(away != 0 && form_->direction().isEnabled());
        connect(button, &QPushButton::clicked, this, [this, day = trial.day] { take(day); });
        nearest_->addWidget(button);
        nearestButtons_.push_back(button);
    }
}

void BatchEditor::tellRepeats() {
    every_->setSuffix(batch_text::daysSuffix(every_->value()));
    moreLabel_->setText(batch_text::repeatMore(more_->value()));
    QStringList days;
    for (int i = 1; i <= more_->value(); ++i)
        days += weekdayAndDay(draft_.day + Days{every_->value() * i});
    repeats_->setText(days.isEmpty() ? QString()
                                     : batch_text::repeats(days.join(QStringLiteral(", "))));
}

/// Plans forward from that day.
void BatchEditor::take(Day start) {
    if (!form_->direction().isEnabled()) return;
    form_->planForward(start);
}

void BatchEditor::save() {
    if (soon_.isActive()) {
        soon_.stop();
        refresh();
    }
    if (!save_->isEnabled()) return;
    const auto changes = changesOf(desk_.snapshot(), draft_, repeat(), ids_.fromStart());
    const auto saved = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (saved) return accept();
    told_->setText(window_text::cannotSaveEdit() + u' ' + plain(saved.error().text));
}

/// As the fields have it: what is typed is saved before a further batch is planned.
void BatchEditor::offerFurther() {
    const auto& book = desk_.outlook()->snapshot;
    const bool may = !isNew_ && !desk_.isReadOnly();
    const auto topUp = may ? topUpOf(book, draft_.id) : std::nullopt;
    topUp_->setVisible(topUp.has_value());
    if (topUp) {
        topUp_->setText(batch_text::topUp(topUp->cups));
        topUp_->setToolTip(batch_text::topUpHint(topUp->by));
    }
    insure_->setVisible(may && canInsure(book, draft_.id));
}

void BatchEditor::planFurther(bool asInsurance) {
    readFields();
    if (draft_ == opened_) {
        QDialog::reject();
    } else {
        save();
        if (result() != Accepted) return;
    }
    const auto& book = desk_.snapshot();
    const auto id = newId<Batch>();
    if (asInsurance) {
        Q_EMIT furtherWished(insuranceDraft(book, draft_.id, id));
    } else if (const auto topUp = topUpOf(book, draft_.id)) {
        Q_EMIT furtherWished(topUpDraft(book, draft_.id, *topUp, id));
    }
}

void BatchEditor::removeBatch() {
    const auto& snapshot = desk_.snapshot();
    const auto question = batch_text::askRemove(
        plain(draft_.label), static_cast<int>(snapshot.all<Placement>().of(draft_.id.uuid).size()),
        static_cast<int>(snapshot.all<Outcome>().of(draft_.id.uuid).size()));
    if (!ask_(question)) return;
    const auto changes = deleteBatch(snapshot, draft_.id);
    const auto gone = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (gone) return accept();
    told_->setText(window_text::cannotSaveEdit() + u' ' + plain(gone.error().text));
}

void BatchEditor::reject() {
    readFields();
    const bool changed = draft_ != opened_ || more_->value() > 0;
    if (changed && !desk_.isReadOnly() && !ask_(batch_text::askLeave())) return;
    QDialog::reject();
}

void BatchEditor::done(int result) {
    soon_.stop();
    worker_.cancel();
    disconnect(&desk_, nullptr, this, nullptr);
    if (desk_.isPreviewing()) (void)desk_.preview(std::nullopt);
    QDialog::done(result);
}

}  // namespace tenthday
