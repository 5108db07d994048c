#include "plan/plan_page.h"

#include <QDialog>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "plan/plan_form.h"
#include "plan/plan_steps.h"
#include "plan/plan_sums.h"
#include "reasons/reasons_view.h"
#include "screen_text/derived_text.h"
#include "screen_text/plan_text.h"

namespace tenthday {

PlanPage::PlanPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      worker_(new PlanWorker(this)),
      form_(new PlanForm),
      steps_(new PlanSteps),
      model_(new ProposalsModel(this)),
      table_(new QTableView),
      sums_(new PlanSumsTable),
      reasons_(new ReasonsView),
      body_(new QStackedWidget),
      batches_(new QSplitter),
      status_(new QLabel),
      gaps_(new QLabel),
      ways_(new QLabel),
      progress_(new QLabel),
      told_(new QLabel),
      busy_(new QProgressBar),
      plan_(new QPushButton(plan_text::planAnew())),
      stop_(new QPushButton(plan_text::stop())),
      findWays_(new QPushButton(plan_text::findWays())),
      change_(new QPushButton(plan_text::change())),
      asPlanned_(new QPushButton(plan_text::asPlanned())),
      takeOver_(new QPushButton(plan_text::takeOver(0))) {
    shown_ = makeAnswer();
    body_->addWidget(steps_);
    body_->addWidget(shown_);
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(body_, 1);
    column->addWidget(told_);
    told_->setWordWrap(true);
    told_->hide();
    connectParts();
    showRows({});
    follow({});
}

PlanPage::~PlanPage() = default;

QWidget* PlanPage::makeTop() {
    auto* top = new QWidget;
    auto* head = new QLabel(plan_text::head());
    makeHead(*head);
    busy_->setRange(0, 0);
    busy_->setTextVisible(false);
    busy_->setMaximumWidth(180);
    busy_->setAccessibleName(plan_text::beginning());
    auto* first = new QHBoxLayout;
    first->addWidget(head);
    first->addSpacing(16);
    first->addWidget(progress_, 1);
    first->addWidget(busy_);
    first->addWidget(stop_);
    first->addWidget(plan_);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addWidget(form_);
    return top;
}

void PlanPage::makeTable() {
    table_->setModel(model_);
    makeList(*table_, plan_text::proposals());
    sayNoPaste(*table_, derived_text::proposals);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    // Names of orders, yards and builders are never cut.
    table_->setWordWrap(true);
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(ProposalsModel::For, QHeaderView::Stretch);
    table_->installEventFilter(this);
}

QWidget* PlanPage::makeAnswer() {
    makeTable();
    batches_->setOrientation(Qt::Vertical);
    batches_->addWidget(table_);
    batches_->addWidget(reasons_);
    batches_->setStretchFactor(0, 3);
    batches_->setStretchFactor(1, 2);
    batches_->setChildrenCollapsible(false);
    auto* parts = new QSplitter(Qt::Horizontal);
    parts->addWidget(batches_);
    parts->addWidget(makeSide());
    parts->setStretchFactor(0, 7);
    parts->setStretchFactor(1, 4);
    parts->setSizes({880, 470});
    parts->setChildrenCollapsible(false);
    makeStrong(*status_);
    gaps_->setWordWrap(true);
    auto* answer = new QWidget;
    auto* column = new QVBoxLayout(answer);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(status_);
    column->addWidget(gaps_);
    column->addWidget(parts, 1);
    column->addWidget(makeFoot());
    return answer;
}

QWidget* PlanPage::makeSide() {
    ways_->setWordWrap(true);
    ways_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    ways_->setToolTip(plan_text::wayBecause());
    ways_->setAccessibleName(plan_text::waysHead());
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(sums_, 1);
    column->addWidget(findWays_, 0, Qt::AlignLeft);
    column->addWidget(ways_);
    ways_->hide();
    return side;
}

QWidget* PlanPage::makeFoot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    const auto button = [&](const QString& words, auto&& act) {
        auto* made = new QPushButton(words);
        connect(made, &QPushButton::clicked, this, act);
        row->addWidget(made);
        return made;
    };
    auto* all = button(plan_text::tickAll(), [this] { tickAll(true); });
    auto* none = button(plan_text::tickNone(), [this] { tickAll(false); });
    row->addWidget(change_);
    row->addWidget(asPlanned_);
    row->addStretch(1);
    button(plan_text::forget(), [this] { forget(); });
    auto* chart = button(plan_text::showInChart(), [this] { Q_EMIT chartWanted(); });
    row->addWidget(takeOver_);
    ofBatches_ = {batches_, all, none, change_, asPlanned_, chart, takeOver_};
    return foot;
}

void PlanPage::connectParts() {
    connect(plan_, &QPushButton::clicked, this, &PlanPage::plan);
    connect(stop_, &QPushButton::clicked, this, &PlanPage::stop);
    connect(findWays_, &QPushButton::clicked, this, &PlanPage::findWays);
    connect(change_, &QPushButton::clicked, this, &PlanPage::change);
    connect(asPlanned_, &QPushButton::clicked, this, &PlanPage::backToPlanned);
    connect(takeOver_, &QPushButton::clicked, this, &PlanPage::takeOver);
    connect(steps_, &PlanSteps::planWanted, this, &PlanPage::plan);
    connect(steps_, &PlanSteps::ordersWanted, this, &PlanPage::ordersWanted);
    connect(steps_, &PlanSteps::setupWanted, this, &PlanPage::setupWanted);
    connect(steps_, &PlanSteps::seasonsWanted, this,
            [this] { Q_EMIT setupWanted(setup_text::Kind::Seasons); });
    connect(worker_, &PlanWorker::progressed, this, &PlanPage::tellProgress);
    connect(worker_, &PlanWorker::planned, this, &PlanPage::takeAnswer);
    connect(worker_, &PlanWorker::waysFound, this, &PlanPage::takeWays);
    connect(model_, &ProposalsModel::ticksChanged, this, &PlanPage::tryTicked);
    connect(table_, &QTableView::doubleClicked, this, &PlanPage::change);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &PlanPage::tellCurrent);
    connect(&desk_, &Desk::shown, this,
            [this](const OutlookPtr&, const Changes& changes) { follow(changes); });
}

bool PlanPage::showsSteps() const { return body_->currentWidget() == steps_; }
QString PlanPage::status() const { return status_->text(); }
QString PlanPage::gaps() const { return gaps_->text(); }
QString PlanPage::ways() const { return ways_->text(); }
QString PlanPage::told() const { return told_->text(); }

void PlanPage::toggleTick() {
    const auto at = table_->currentIndex();
    if (!at.isValid()) return;
    const bool ticked = model_->at(at.row()).ticked;
    model_->setData(model_->index(at.row(), ProposalsModel::Graft),
                    ticked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

bool PlanPage::key(int key, Qt::KeyboardModifiers with) {
    if (with != Qt::NoModifier) return false;
    switch (key) {
        case Qt::Key_Space:
            return toggleTick(), true;
        case Qt::Key_F2:
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return change(), true;
        case Qt::Key_A:
            return tickAll(true), true;
        case Qt::Key_N:
            return tickAll(false), true;
        case Qt::Key_P:
            return plan(), true;
        case Qt::Key_T:
            return takeOver(), true;
        case Qt::Key_C:
            Q_EMIT chartWanted();
            return true;
        case Qt::Key_Escape:
            return stop(), true;
        default:
            return false;
    }
}

bool PlanPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* press = static_cast<QKeyEvent*>(event);
        if (key(press->key(), press->modifiers() & ~Qt::KeypadModifier)) return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
