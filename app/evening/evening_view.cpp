#include "evening/evening_view.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "book/new_id.h"
#include "evening/evening_paste.h"
#include "look/page_parts.h"
#include "outlook/work_days.h"
#include "paste/table_lines.h"
#include "screen_text/cells_text.h"
#include "screen_text/evening_text.h"
#include "screen_text/nuc_text.h"
#include "screen_text/queen_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

std::optional<NucLook> lookFor(int key) {
    switch (key) {
        case Qt::Key_E:
            return NucLook::Eggs;
        case Qt::Key_L:
            return NucLook::Larvae;
        case Qt::Key_S:
            return NucLook::SealedBrood;
        case Qt::Key_V:
            return NucLook::VirginSeen;
        case Qt::Key_N:
        case Qt::Key_Minus:
            return NucLook::NoneYet;
        case Qt::Key_X:
            return NucLook::Gone;
        default:
            return std::nullopt;
    }
}

IdSource freshIds() {
    return [] { return idMaker().next(); };
}

}  // namespace

EveningView::EveningView(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      day_(desk.snapshot().today()),
      model_(new EveningModel(this)),
      table_(new QTableView),
      head_(new QLabel),
      summary_(new QLabel),
      told_(new QLabel),
      accept_(new QPushButton(evening_text::asPlannedButton())),
      takeBack_(new QPushButton(evening_text::takeBackButton())) {
    model_->setEditable(!desk.isReadOnly());
    model_->show(desk.outlook(), day_);
    table_->setModel(model_);
    makeList(*table_, window_text::asTitle(evening_text::pageEntry()));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);  // a digit opens a count
    table_->setTabKeyNavigation(false);
    table_->setAlternatingRowColors(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->installEventFilter(this);
    setTableLines(desk_, *table_,
                  {[this] { return copiedEvening(*model_); },
                   [this] { return eveningToPaste(*model_, queenNumbers_); },
                   [this](const QString& pasted) {
                       return eveningPasteText(*model_, table_->currentIndex().row(), pasted);
                   }});
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(table_, 1);
    column->addWidget(makeFoot());
    setFocusProxy(table_);
    // The editor is closed before the list is made anew.
    connect(model_, &EveningModel::countWished, this, &EveningView::enterCount,
            Qt::QueuedConnection);
    connect(model_, &EveningModel::hourWished, this, &EveningView::enterHour, Qt::QueuedConnection);
    connect(model_, &EveningModel::noteWished, this, &EveningView::enterNote, Qt::QueuedConnection);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &EveningView::tellCurrent);
    connect(&desk_, &Desk::shown, &seen_, &WhileSeen::follow);
    seen_.follow();
}

QWidget* EveningView::makeTop() {
    auto* top = new QWidget;
    makeStrong(*summary_);
    summary_->setWordWrap(false);  // beside the hint, which wraps
    auto* hint = new QLabel(evening_text::printHint());
    hint->setWordWrap(true);
    auto* first = stepRow(
        {nuc_text::dayBefore(), nuc_text::dayAfter(), nuc_text::today()}, *head_,
        [this](int days) { setDay(day() + Days{days}); },
        [this] { setDay(desk_.snapshot().today()); });
    auto* second = new QHBoxLayout;
    second->addWidget(summary_);
    second->addSpacing(16);
    second->addWidget(hint, 1);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addLayout(second);
    return top;
}

QWidget* EveningView::makeFoot() {
    auto* foot = new QWidget;
    told_->setWordWrap(true);
    connect(accept_, &QPushButton::clicked, this, [this] {
        accept();
        table_->setFocus();
    });
    connect(takeBack_, &QPushButton::clicked, this, [this] {
        takeBackCurrent();
        table_->setFocus();
    });
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(told_, 1);
    auto* cells = new QPushButton(cells_text::menuEntry());
    connect(cells, &QPushButton::clicked, this, [this] { Q_EMIT cellsDayWished(day_); });
    auto* numbers = new QPushButton(queen_text::numbersButton());
    connect(numbers, &QPushButton::clicked, this, &EveningView::queenNumbersWished);
    row->addWidget(numbers);
    row->addWidget(cells);
    row->addWidget(accept_);
    row->addWidget(takeBack_);
    return foot;
}

QString EveningView::summary() const { return summary_->text(); }
QString EveningView::told() const { return told_->text(); }

void EveningView::setDay(Day day) {
    const auto days = workDays(*desk_.outlook());
    day = std::clamp(day, days.first, std::max(days.first, desk_.snapshot().today()));
    if (day == day_) return;
    day_ = day;
    seen_.follow();
    Q_EMIT dayChosen(day_);
}

const EveningRow* EveningView::current() const {
    const int row = table_->currentIndex().row();
    return row >= 0 && row < model_->rowCount() ? &model_->at(row) : nullptr;
}

/// Keeps the current row, wherever it stands now.
void EveningView::follow() {
    std::optional<EveningRow> before;
    if (const auto* row = current()) before = *row;
    const int at = std::max(table_->currentIndex().row(), 0);
    // The row's side is of the outlook shown until now: it is held until the new one is searched.
    const auto held = model_->outlook();
    day_ = std::min(day_, desk_.snapshot().today());
    model_->show(desk_.outlook(), day_);
    head_->setText(evening_text::head(day_));
    summary_->setText(
        evening_text::summary(model_->filledCount(), model_->entryCount(), model_->lateCount()));
    const int found = before ? model_->find(*before) : model_->nextEmpty(-1);
    goTo(found >= 0 ? found : std::min(at, model_->rowCount() - 1));
    tellCurrent();
}

void EveningView::goTo(int row) {
    if (row < 0) return table_->setCurrentIndex({});
    table_->setCurrentIndex(model_->index(row, EveningModel::Entered));
    table_->scrollTo(model_->index(row, EveningModel::Entered));
}

void EveningView::tellCurrent() {
    const auto* row = current();
    const bool can = row != nullptr && !desk_.isReadOnly();
    const bool takes = can && (row->entry != EveningEntry::Look || row->isFilled());
    accept_->setEnabled(takes && !row->isFilled() &&
                        (row->entry != EveningEntry::Count || row->expected.has_value()));
    takeBack_->setEnabled(can && row->isFilled());
    if (desk_.isReadOnly()) return told_->setText(evening_text::readOnly());
    told_->setText(row == nullptr    ? QString()
                   : row->isFilled() ? evening_text::filledHint()
                                     : evening_text::keys(*row));
}

std::vector<const EveningRow*> EveningView::fitting(EveningEntry entry) const {
    std::vector<const EveningRow*> rows;
    const int row = table_->currentIndex().row();
    if (row < 0) return rows;
    for (const int at : model_->emptyUnder(row))
        if (model_->at(at).entry == entry) rows.push_back(&model_->at(at));
    return rows;
}

void EveningView::enterRows(const std::vector<const EveningRow*>& rows, const EveningInput& input) {
    if (rows.empty() || desk_.isReadOnly()) return;
    for (const auto* row : rows)
        if (const auto refusal = whyImpossible(*model_->outlook(), *row, input))
            return told_->setText(evening_text::refusal(*refusal));
    save(enterAll(*model_->outlook(), rows, input, freshIds()), true);
}

void EveningView::save(const Result<ChangeSet>& changes, bool goOn) {
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (!done)
        return told_->setText(evening_text::cannotSave() + u' ' +
                              QString::fromStdString(done.error().text));
    if (!goOn) return;
    const int next = model_->nextEmpty(table_->currentIndex().row());
    if (next >= 0) goTo(next);
}

void EveningView::look(NucLook look) {
    if (look == NucLook::Gone) return askCause();
    EveningInput input;
    input.day = day_;
    input.look = look;
    enterRows(fitting(EveningEntry::Look), input);
}

void EveningView::accept() {
    const auto* row = current();
    if (row == nullptr) return;
    EveningInput input;
    input.day = day_;
    input.queenNumbers = queenNumbers_.toStdString();
    if (row->entry == EveningEntry::Count) {
        if (!row->expected || row->isFilled()) return;
        input.count = row->expected;
        return enterRows({row}, input);
    }
    for (const auto entry : {EveningEntry::Tick, EveningEntry::Placed, EveningEntry::Caught})
        if (const auto rows = fitting(entry); !rows.empty() && !rows.front()->isFilled())
            return enterRows(rows, input);
}

void EveningView::takeBackCurrent() {
    const auto* row = current();
    if (row == nullptr || !row->isFilled() || desk_.isReadOnly()) return;
    const auto changes = takeBack(*model_->outlook(), *row);
    if (!changes && row->queen)
        return told_->setText(evening_text::queenMoved(QString::fromStdString(row->queen->label)));
    save(changes, false);
}

void EveningView::leaveForWinter() {
    EveningInput input;
    input.day = day_;
    input.stays = true;
    input.queenNumbers = queenNumbers_.toStdString();
    enterRows(fitting(EveningEntry::Caught), input);
}

void EveningView::enterCount(int row, const QString& typed) {
    if (row >= model_->rowCount()) return;
    const auto& entry = model_->at(row);
    if (typed.isEmpty()) return takeBackCurrent();
    bool whole = false;
    const int count = typed.toInt(&whole);
    if (!whole) return told_->setText(evening_text::badCount());
    auto input = entry.seen ? inputOf(entry) : EveningInput{};
    if (!entry.seen) input.day = day_;
    input.count = count;
    enterRows({&entry}, input);
}

void EveningView::enterHour(int row, const QString& typed) {
    if (row >= model_->rowCount()) return;
    const auto& entry = model_->at(row);
    auto input = inputOf(entry);
    bool whole = true;
    const int hour = typed.isEmpty() ? 0 : typed.toInt(&whole);
    if (!whole || hour < 0 || hour > 23) return told_->setText(evening_text::badHour());
    input.hour = typed.isEmpty() ? std::nullopt : std::optional(Hour{hour});
    save(enter(*model_->outlook(), entry, input, freshIds()), false);
}

void EveningView::enterNote(int row, const QString& typed) {
    if (row >= model_->rowCount()) return;
    const auto& entry = model_->at(row);
    auto input = inputOf(entry);
    input.note = typed.toStdString();
    save(enter(*model_->outlook(), entry, input, freshIds()), false);
}

/// One key more: why she is gone.
void EveningView::askCause() {
    if (fitting(EveningEntry::Look).empty() || desk_.isReadOnly()) return;
    auto* menu = new QMenu(evening_text::causeHead(), this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addSection(evening_text::causeHead());
    for (std::size_t i = 0; i < kTokenCount<LossCause>; ++i) {
        const auto cause = static_cast<LossCause>(i);
        auto* action =
            menu->addAction(QStringLiteral("&%1  %2").arg(i + 1).arg(evening_text::cause(cause)));
        connect(action, &QAction::triggered, this, [this, cause] {
            EveningInput input;
            input.day = day_;
            input.look = NucLook::Gone;
            input.note = std::string(token(cause));
            enterRows(fitting(EveningEntry::Look), input);
        });
    }
    const auto rect = table_->visualRect(table_->currentIndex());
    menu->popup(table_->viewport()->mapToGlobal(rect.bottomLeft()));
}

bool EveningView::press(int key) {
    if (const auto seen = lookFor(key); seen && !fitting(EveningEntry::Look).empty())
        return look(*seen), true;
    switch (key) {
        case Qt::Key_Left:
            return setDay(day_ - Days{1}), true;
        case Qt::Key_Right:
            return setDay(day_ + Days{1}), true;
        case Qt::Key_Home:
            return setDay(desk_.snapshot().today()), true;
        case Qt::Key_Space:
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return accept(), true;
        case Qt::Key_W:
            if (fitting(EveningEntry::Caught).empty()) return false;
            return leaveForWinter(), true;
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            return takeBackCurrent(), true;
        default:
            return false;
    }
}

bool EveningView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if ((key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) return false;
    // While a cell is being typed into, keys that its editor leaves over are not strokes.
    if (table_->indexWidget(table_->currentIndex()) != nullptr) return false;
    return press(key->key()) || QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
