#include "cellsday/cells_day_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

#include "book/new_id.h"
#include "cellsday/way_order_dialog.h"
#include "look/page_parts.h"
#include "screen_text/cells_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/window_text.h"
#include "sheets/day_lists.h"
#include "sheets/print_dialog.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

bool sameWays(const CellsDraft& a, const CellsDraft& b) {
    if (a.batches.size() != b.batches.size()) return false;
    for (std::size_t i = 0; i < a.batches.size(); ++i) {
        auto x = a.batches[i].nucs;
        auto y = b.batches[i].nucs;
        std::sort(x.begin(), x.end());
        std::sort(y.begin(), y.end());
        if (x != y || a.batches[i].others != b.batches[i].others ||
            a.batches[i].ripe() != b.batches[i].ripe())
            return false;
    }
    return true;
}

}  // namespace

Day cellsDayNear(const Outlook& outlook, Day day) {
    if (!cellsDraft(outlook, day).batches.empty()) return day;
    const auto& days = outlook.nucs.cellsDays;
    for (const auto& cells : days)
        if (cells.day >= day) return cells.day;
    return days.empty() ? day : days.back().day;
}

CellsDayDialog::CellsDayDialog(Desk& desk, Settings& settings, Day day, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      settings_(settings),
      grid_(new WaysGrid),
      ticks_(new NucsTicks),
      head_(new QLabel),
      sum_(new QLabel),
      told_(new QLabel),
      batchLabel_(new QLabel(cells_text::ticksFor())),
      batch_(new QComboBox),
      listed_(new QComboBox),
      propose_(new QPushButton(cells_text::propose())),
      clear_(new QPushButton(cells_text::clear())),
      order_(new QPushButton(cells_text::order())),
      print_(new QPushButton(cells_text::print())),
      plan_(new QPushButton(cells_text::planIt())),
      done_(new QPushButton(cells_text::done())) {
    setWindowTitle(window_text::asTitle(cells_text::menuEntry()));
    ask_ = [this](const QString& question) {
        return QMessageBox::question(this, windowTitle(), question) == QMessageBox::Yes;
    };
    auto* parts = new QSplitter(Qt::Horizontal);
    parts->addWidget(makeLeft());
    parts->addWidget(makeRight());
    parts->setStretchFactor(0, 4);
    parts->setStretchFactor(1, 5);
    parts->setChildrenCollapsible(false);
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(parts, 1);
    column->addWidget(makeFoot());
    connectAll();
    addKeys();
    resize(1180, 640);
    showDay(day);
    ticks_->setFocus();
}

/// The list outlives the draft it looks into.
CellsDayDialog::~CellsDayDialog() { ticks_->rows().drop(); }

QWidget* CellsDayDialog::makeTop() {
    auto* top = new QWidget;
    makeStrong(*sum_);
    auto* first = stepRow({cells_text::dayBefore(), cells_text::dayAfter(), {}}, *head_,
                          [this](int days) { step(days); });
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addWidget(sum_);
    return top;
}

QWidget* CellsDayDialog::makeLeft() {
    auto* part = new QWidget;
    auto* buttons = new QHBoxLayout;
    for (auto* button : {propose_, clear_, order_}) {
        button->setAutoDefault(false);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 8, 0);
    column->addWidget(scrolling(grid_), 1);
    column->addLayout(buttons);
    part->setMinimumWidth(380);
    return part;
}

QWidget* CellsDayDialog::makeRight() {
    auto* part = new QWidget;
    for (int i = 0; i < cells_text::kFilters; ++i) listed_->addItem(cells_text::filter(i));
    listed_->setAccessibleName(cells_text::nucsHead());
    batchLabel_->setBuddy(batch_);
    batch_->setAccessibleName(cells_text::ticksFor());
    auto* top = new QHBoxLayout;
    top->addWidget(listed_);
    top->addStretch();
    top->addWidget(batchLabel_);
    top->addWidget(batch_);
    auto* hint = new QLabel(cells_text::tickHint());
    hint->setWordWrap(true);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(8, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(ticks_, 1);
    column->addWidget(hint);
    return part;
}

QWidget* CellsDayDialog::makeFoot() {
    auto* foot = new QWidget;
    told_->setWordWrap(true);
    told_->setMinimumHeight(2 * told_->fontMetrics().lineSpacing());
    auto* close = new QPushButton(cells_text::close());
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    plan_->setToolTip(cells_text::planHint());
    done_->setToolTip(cells_text::doneHint());
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(told_, 1);
    for (auto* button : {print_, plan_, done_, close}) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    return foot;
}

void CellsDayDialog::connectAll() {
    connect(propose_, &QPushButton::clicked, this, &CellsDayDialog::propose);
    connect(clear_, &QPushButton::clicked, this, &CellsDayDialog::clear);
    connect(order_, &QPushButton::clicked, this, &CellsDayDialog::orderWays);
    connect(print_, &QPushButton::clicked, this, [this] {
        PaperWish wish;
        wish.choice.kind = PaperKind::Placements;
        wish.day = draft_.day;
        wish.placements = std::make_shared<const ListPaper>(sheet());
        auto* dialog = new PrintDialog(outlook_, settings_, wish, this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->open();
    });
    connect(plan_, &QPushButton::clicked, this, [this] { keep(CellsKept::Planned); });
    connect(done_, &QPushButton::clicked, this, [this] { keep(CellsKept::Done); });
    connect(ticks_, &NucsTicks::ticksWished, this, &CellsDayDialog::setTicks);
    connect(listed_, &QComboBox::currentIndexChanged, this, [this](int entry) {
        ticks_->rows().list(static_cast<NucsTicksModel::Listed>(std::max(entry, 0)));
    });
    const auto of = [this](int batch) -> BatchCells& {
        return draft_.batches[static_cast<std::size_t>(batch)];
    };
    connect(grid_, &WaysGrid::ripeCounted, this, [this, of](int batch, int cells) {
        of(batch).counted = cells;
        refresh();
    });
    connect(grid_, &WaysGrid::nucsWished, this, [this](int batch, Id<Yard> yard, int cells) {
        setCellsIn(draft_, nucs_, static_cast<std::size_t>(batch), yard, cells);
        refresh();
    });
    connect(grid_, &WaysGrid::wayWished, this, [this, of](int batch, CellTarget way, int cells) {
        of(batch).others[static_cast<std::size_t>(way)] = cells;
        refresh();
    });
    // Another day began, or an edit was undone: what was not kept yet gives way.
    connect(&desk_, &Desk::shown, this, [this](const OutlookPtr&, const Changes& changes) {
        if (!changes.isPreview() && changes.cause != Cause::Learnt) showDay(draft_.day);
    });
}

void CellsDayDialog::addKeys() {
    const auto key = [this](const QKeySequence& keys, auto&& act) {
        auto* action = new QAction(this);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, std::forward<decltype(act)>(act));
        addAction(action);
    };
    key(QKeySequence(Qt::ALT | Qt::Key_Left), [this] { step(-1); });
    key(QKeySequence(Qt::ALT | Qt::Key_Right), [this] { step(1); });
    key(QKeySequence(Qt::CTRL | Qt::Key_Z), [this] {
        if (edits_ > 0) --edits_, undoOrRedo(&Desk::undo);
    });
    key(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), [this] {
        if (desk_.canRedo()) ++edits_, undoOrRedo(&Desk::redo);
    });
}

void CellsDayDialog::showDay(Day day) {
    outlook_ = desk_.outlook();
    draft_ = cellsDraft(*outlook_, day);
    opened_ = draft_;
    nucs_ = nucsOf(*outlook_, draft_);
    const bool editable = !desk_.isReadOnly();
    head_->setText(cells_text::head(day));
    ticks_->rows().setEditable(editable && !draft_.batches.empty());
    ticks_->rows().show(outlook_, &draft_, &nucs_);
    grid_->show(*outlook_, draft_, nucs_, editable);
    const int chosen = batch_->currentIndex();
    batch_->clear();
    for (const auto& cells : draft_.batches) {
        const auto batch = outlook_->snapshot.find(cells.batch);
        batch_->addItem(cells_text::batch(batch ? plain(batch->label) : QString()));
    }
    batch_->setCurrentIndex(std::clamp(chosen, 0, std::max(batch_->count() - 1, 0)));
    batch_->setVisible(batch_->count() > 1);
    batchLabel_->setVisible(batch_->count() > 1);
    propose_->setToolTip(cells_text::proposeHint(settings_.wayOrder()));
    refresh();
}

void CellsDayDialog::refresh() {
    const bool none = draft_.batches.empty();
    grid_->refresh(draft_, nucs_);
    ticks_->rows().refresh();
    if (outlook_->nucs.cellsDays.empty() && none)
        sum_->setText(cells_text::noCellsAnywhere());
    else
        sum_->setText(none ? cells_text::noCells(draft_.day) : cells_text::sum(draft_));
    const auto trouble = [&](CellsKept how) { return whyNotKept(*outlook_, nucs_, draft_, how); };
    const bool mayEdit = !desk_.isReadOnly() && !none;
    const auto notPlanned = trouble(CellsKept::Planned);
    const auto notDone = trouble(CellsKept::Done);
    plan_->setEnabled(mayEdit && !notPlanned && isChanged());
    const bool anyDrafted = std::any_of(draft_.batches.begin(), draft_.batches.end(),
                                        [](const auto& cells) { return cells.drafted() > 0; });
    done_->setEnabled(mayEdit && !notDone && (anyDrafted || isChanged()));
    propose_->setEnabled(mayEdit && draft_.left() > 0);
    clear_->setEnabled(mayEdit && anyDrafted);
    print_->setEnabled(draft_.toNucs() > 0);
    if (desk_.isReadOnly()) return told_->setText(cells_text::readOnly());
    const auto& why = notPlanned ? notPlanned : notDone;
    const auto batch = why ? outlook_->snapshot.find(why->batch) : nullptr;
    told_->setText(why && !none ? cells_text::refusal(*why, batch ? plain(batch->label) : QString())
                                : cells_text::virginsWait(draft_));
}

bool CellsDayDialog::isChanged() const { return !sameWays(draft_, opened_); }
QString CellsDayDialog::sumText() const { return sum_->text(); }
QString CellsDayDialog::told() const { return told_->text(); }

void CellsDayDialog::propose() {
    draft_ = proposeWays(*outlook_, nucs_, std::move(draft_), settings_.wayOrder());
    refresh();
}

void CellsDayDialog::clear() {
    for (auto& cells : draft_.batches) cells.nucs.clear(), cells.others.fill(0);
    refresh();
}

void CellsDayDialog::setTicks(const std::vector<Id<NucSide>>& sides, bool ticked) {
    if (draft_.batches.empty()) return;
    const auto batch = static_cast<std::size_t>(std::max(batch_->currentIndex(), 0));
    for (const auto side : sides) ticked ? give(draft_, batch, side) : takeOut(draft_, side);
    refresh();
}

void CellsDayDialog::keep(CellsKept how) {
    if (desk_.isReadOnly()) return;
    const auto kept = draft_;
    const auto changes = changesOf(*outlook_, draft_, how, [] { return idMaker().next(); });
    const bool any = changes && !changes.value().isEmpty();
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (!done)
        return told_->setText(window_text::cannotSaveEdit() + u' ' + plain(done.error().text));
    if (any) ++edits_;
    told_->setText(how == CellsKept::Done ? cells_text::recordedNow(kept)
                                          : cells_text::planned(kept));
}

void CellsDayDialog::undoOrRedo(Result<void> (Desk::*act)()) {
    if (const auto done = (desk_.*act)(); !done)
        told_->setText(window_text::cannotSaveEdit() + u' ' + plain(done.error().text));
}

void CellsDayDialog::step(int by) {
    const auto& days = outlook_->nucs.cellsDays;
    std::optional<Day> to;
    for (const auto& cells : days) {
        if (by < 0 && cells.day < draft_.day) to = cells.day;
        if (by > 0 && cells.day > draft_.day && !to) to = cells.day;
    }
    if (to && mayLeave()) showDay(*to);
}

void CellsDayDialog::orderWays() {
    WayOrderDialog dialog(settings_.wayOrder(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    settings_.setWayOrder(dialog.order());
    propose_->setToolTip(cells_text::proposeHint(settings_.wayOrder()));
}

ListPaper CellsDayDialog::sheet() const { return placementPaper(*outlook_, draft_, nucs_); }

bool CellsDayDialog::mayLeave() {
    return desk_.isReadOnly() || !isChanged() || ask_(cells_text::leaveDraft());
}

void CellsDayDialog::reject() {
    if (mayLeave()) QDialog::reject();
}

}  // namespace tenthday
