#include "week/week_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QInputDialog>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "book/new_id.h"
#include "look/page_parts.h"
#include "outlook/work_days.h"
#include "paste/table_lines.h"
#include "reasons/reasons_view.h"
#include "screen_text/evening_text.h"
#include "screen_text/print_text.h"
#include "screen_text/week_text.h"
#include "screen_text/why_task.h"
#include "screen_text/window_text.h"
#include "tasks/event_behind.h"
#include "tasks/given.h"
#include "tasks/tick.h"
#include "week/tick_delegate.h"
#include "week/week_paste.h"

namespace tenthday {

WeekPage::WeekPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      day_(desk.snapshot().today()),
      model_(new WeekModel(this)),
      table_(new QTableView),
      reasons_(new ReasonsView),
      head_(new QLabel),
      summary_(new QLabel),
      told_(new QLabel),
      new_(new QPushButton(week_text::newTask())),
      change_(new QPushButton(week_text::change())),
      delete_(new QPushButton(week_text::remove())),
      give_(new QPushButton(print_text::give())),
      why_(new QPushButton(week_text::whyButton())) {
    const auto days = workDays(*desk.outlook());
    day_ = std::clamp(day_, days.first, days.last);
    model_->setTickable(!desk.isReadOnly());
    model_->show(desk.outlook(), week());
    table_->setModel(model_);
    makeList(*table_, window_text::asTitle(week_text::pageEntry()));
    table_->setItemDelegateForColumn(WeekModel::Done, new TickDelegate(table_));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setAlternatingRowColors(false);
    table_->setTabKeyNavigation(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->installEventFilter(this);
    setTableLines(desk_, *table_,
                  {[this] { return copiedWeek(*model_); }, [this] { return weekToPaste(*model_); },
                   [this](const QString& pasted) {
                       return weekPasteText(*model_, table_->currentIndex().row(), pasted);
                   }});
    auto* parts = new QSplitter(Qt::Horizontal);
    parts->addWidget(table_);
    parts->addWidget(reasons_);
    parts->setStretchFactor(0, 3);
    parts->setStretchFactor(1, 2);
    parts->setChildrenCollapsible(false);
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(parts, 1);
    column->addWidget(makeFoot());
    setFocusProxy(table_);
    connect(model_, &WeekModel::tickWished, this, &WeekPage::tickRow);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &WeekPage::chose);
    connect(table_, &QTableView::doubleClicked, this, &WeekPage::changeTask);
    connect(&desk_, &Desk::shown, &seen_, &WhileSeen::follow);
    fill();
    goToDay();
}

QWidget* WeekPage::makeTop() {
    auto* top = new QWidget;
    makeStrong(*summary_);
    auto* print = new QPushButton(week_text::print());
    connect(print, &QPushButton::clicked, this, &WeekPage::printWished);
    connect(new_, &QPushButton::clicked, this, &WeekPage::addTask);
    auto* first = stepRow(
        {week_text::weekBefore(), week_text::weekAfter(), week_text::thisWeek()}, *head_,
        [this](int weeks) { stepWeek(weeks); }, [this] { setDay(desk_.snapshot().today()); });
    first->addWidget(new_);
    first->addWidget(print);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addWidget(summary_);
    return top;
}

QWidget* WeekPage::makeFoot() {
    auto* foot = new QWidget;
    told_->setWordWrap(true);
    connect(change_, &QPushButton::clicked, this, &WeekPage::changeTask);
    connect(delete_, &QPushButton::clicked, this, &WeekPage::deleteTask);
    connect(why_, &QPushButton::clicked, this, &WeekPage::whyWished);
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(told_, 1);
    connect(give_, &QPushButton::clicked, this, &WeekPage::askWho);
    row->addWidget(give_);
    row->addWidget(change_);
    row->addWidget(delete_);
    row->addWidget(why_);
    return foot;
}

QString WeekPage::told() const { return told_->text(); }

const Task* WeekPage::chosen() const { return model_->taskAt(table_->currentIndex().row()); }

Ptr<OwnTask> WeekPage::own() const {
    const auto* task = chosen();
    if (task == nullptr || task->key.rule != TaskRule::Own) return nullptr;
    return desk_.snapshot().find(Id<OwnTask>{task->key.subject});
}

DateOfBatch WeekPage::chosenDate() const {
    const auto* task = chosen();
    if (task == nullptr || !task->batch) return {};
    const auto* batch = model_->outlook()->find(*task->batch);
    return {task->batch, batch ? eventBehind(*task, batch->timeline) : std::nullopt};
}

void WeekPage::setDay(Day day) {
    const auto days = workDays(*desk_.outlook());
    day = std::clamp(day, days.first, days.last);
    if (day == day_) return;
    day_ = day;
    if (model_->week() != week()) {
        filling_ = true;
        model_->show(desk_.outlook(), week());
        fill();
        filling_ = false;
    }
    goToDay();
    Q_EMIT dayChosen(day_);
}

void WeekPage::stepWeek(int by) { setDay(day_ + Days{7 * by}); }

/// Row of the day's first task, else of the next one in the week, else of the last before.
int WeekPage::rowFor(Day day) const {
    int row = -1;
    for (int at = 0; at < model_->rowCount(); ++at) {
        if (model_->taskAt(at) == nullptr || model_->isStillOpen(at)) continue;
        row = at;
        if (model_->dayAt(at) >= day) break;
    }
    return row;
}

/// Chooses a task of the day unless one is chosen, and brings the day into sight.
void WeekPage::goToDay() {
    const auto* now = chosen();
    if (now == nullptr || model_->isStillOpen(table_->currentIndex().row()) || now->day != day_) {
        filling_ = true;
        const int row = rowFor(day_);
        table_->setCurrentIndex(row < 0 ? QModelIndex() : model_->index(row, WeekModel::What));
        filling_ = false;
    }
    for (int row = 0; row < model_->rowCount(); ++row)
        if (!model_->isStillOpen(row) && model_->dayAt(row) == day_) {
            table_->scrollTo(model_->index(row, 0));
            break;
        }
    tellChosen();
}

/// Keeps the chosen task, wherever it stands now.
void WeekPage::follow() {
    const auto* before = chosen();
    const auto key = before ? std::optional(before->key) : std::nullopt;
    const bool wasOpen = before && model_->isStillOpen(table_->currentIndex().row());
    const int row = table_->currentIndex().row();
    const auto days = workDays(*desk_.outlook());
    day_ = std::clamp(day_, days.first, days.last);
    filling_ = true;
    model_->show(desk_.outlook(), week());
    fill();
    int found = -1;
    for (int at = 0; at < model_->rowCount() && key; ++at) {
        const auto* task = model_->taskAt(at);
        if (task && task->key == *key && (found < 0 || model_->isStillOpen(at) == wasOpen))
            found = at;
    }
    // It is gone: the next one in its place.
    for (int at = row; found < 0 && key && at < model_->rowCount(); ++at)
        if (model_->taskAt(at) != nullptr) found = at;
    if (found >= 0) table_->setCurrentIndex(model_->index(found, WeekModel::What));
    filling_ = false;
    tellChosen();
}

void WeekPage::fill() {
    table_->clearSpans();
    for (int row = 0; row < model_->rowCount(); ++row)
        if (model_->taskAt(row) == nullptr) table_->setSpan(row, 0, 1, WeekModel::ColumnCount);
    head_->setText(week_text::head(week()));
    summary_->setText(
        week_text::summary(model_->taskCount(), model_->mustCount(), model_->doneCount()));
}

/// The user went to another row: its day is the chosen one.
void WeekPage::chose() {
    if (filling_) return;
    tellChosen();
    const auto* task = chosen();
    if (task == nullptr || task->day == day_ || isoWeekOf(task->day) != week()) return;
    day_ = task->day;
    Q_EMIT dayChosen(day_);
}

void WeekPage::tellChosen() {
    const auto* task = chosen();
    told_->clear();
    new_->setEnabled(!desk_.isReadOnly());
    const bool changeable = own() != nullptr && !desk_.isReadOnly();
    change_->setEnabled(changeable);
    delete_->setEnabled(changeable);
    give_->setEnabled(task != nullptr && !desk_.isReadOnly());
    why_->setEnabled(task != nullptr && task->batch.has_value());
    reasons_->showChain(
        task ? why_text::task(*model_->outlook(), *task) : std::vector<why_text::Link>{},
        week_text::chooseTask());
}

QString WeekPage::save(const Result<ChangeSet>& changes) {
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return {};
    return window_text::cannotSaveEdit() + u' ' + QString::fromStdString(done.error().text);
}

void WeekPage::tickRow(int row) {
    const auto* task = model_->taskAt(row);
    if (task == nullptr) return;
    if (desk_.isReadOnly()) return told_->setText(evening_text::readOnly());
    const auto day = task->done ? std::nullopt : std::optional(desk_.snapshot().today());
    const auto changes = tick(desk_.snapshot(), *task, day, newId<TaskDone>());
    if (changes.isEmpty()) return told_->setText(week_text::doneByRecord());
    if (const auto why = save(changes); !why.isEmpty()) told_->setText(why);
}

void WeekPage::ask(const QString& head, const OwnTaskWords& words, OwnTaskDialog::Save save) {
    asking_ = new OwnTaskDialog(head, desk_.snapshot(), words, std::move(save), this);
    asking_->setAttribute(Qt::WA_DeleteOnClose);
    asking_->open();
}

void WeekPage::addTask() {
    if (desk_.isReadOnly()) return;
    OwnTaskWords words;
    words.day = day_;
    if (const auto* task = chosen()) words.yard = task->yard;
    ask(week_text::newTaskHead(), words,
        [this](const OwnTaskWords& given) { return save(addOwnTask(given, newId<OwnTask>())); });
}

void WeekPage::changeTask() {
    const auto row = own();
    if (!row || desk_.isReadOnly()) return;
    ask(week_text::changeTaskHead(), {row->day, row->yard, row->text, row->must},
        [this, id = row->id](const OwnTaskWords& given) {
            return save(changeOwnTask(desk_.snapshot(), id, given));
        });
}

void WeekPage::deleteTask() {
    const auto row = own();
    if (!row || desk_.isReadOnly()) return;
    if (const auto why = save(deleteOwnTask(desk_.snapshot(), row->id)); !why.isEmpty())
        told_->setText(why);
}

void WeekPage::giveTo(const QString& who) {
    const auto* task = chosen();
    if (task == nullptr || desk_.isReadOnly()) return;
    const auto changes =
        giveTasks(desk_.snapshot(), {*task}, who.toStdString(), [] { return idMaker().next(); });
    if (const auto why = save(changes); !why.isEmpty()) told_->setText(why);
}

void WeekPage::askWho() {
    const auto* task = chosen();
    if (task == nullptr) return;
    QStringList names{QString()};
    for (const auto& one : everybody(desk_.snapshot())) names += QString::fromStdString(one);
    const auto now = QString::fromStdString(givenTo(desk_.snapshot(), task->key));
    bool chosen = false;
    const auto who = QInputDialog::getItem(
        this, window_text::asTitle(print_text::give()), print_text::giveTo(), names,
        std::max(static_cast<int>(names.indexOf(now)), 0), true, &chosen);
    if (chosen) giveTo(who);
}

bool WeekPage::key(int key, Qt::KeyboardModifiers with) {
    if (with == Qt::AltModifier && (key == Qt::Key_Left || key == Qt::Key_Right))
        return stepWeek(key == Qt::Key_Left ? -1 : 1), true;
    if (with != Qt::NoModifier) return false;
    switch (key) {
        case Qt::Key_PageUp:
            return stepWeek(-1), true;
        case Qt::Key_PageDown:
            return stepWeek(1), true;
        case Qt::Key_Home:
            return setDay(desk_.snapshot().today()), true;
        case Qt::Key_Space:
            return tickRow(table_->currentIndex().row()), true;
        case Qt::Key_G:
            return askWho(), true;
        case Qt::Key_Insert:
            return addTask(), true;
        case Qt::Key_Delete:
            return deleteTask(), true;
        case Qt::Key_F2:
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return changeTask(), true;
        default:
            return false;
    }
}

bool WeekPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* press = static_cast<QKeyEvent*>(event);
        if (key(press->key(), press->modifiers() & ~Qt::KeypadModifier)) return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
