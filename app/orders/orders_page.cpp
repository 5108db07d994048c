#include "orders/orders_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include "look/glyph_delegate.h"
#include "look/page_parts.h"
#include "orders/orders_filter.h"
#include "reasons/reasons_view.h"
#include "screen_text/order_page_text.h"
#include "screen_text/why_order.h"

namespace tenthday {

OrdersPage::OrdersPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new OrdersModel(this)),
      shown_(new OrdersFilter(this)),
      table_(new QTableView),
      list_(new QStackedWidget),
      empty_(new QLabel),
      reasons_(new ReasonsView),
      head_(new QLabel(order_page_text::head())),
      totals_(new QLabel),
      counts_(new QLabel),
      told_(new QLabel),
      filter_(new QComboBox),
      find_(new QLineEdit),
      change_(new QPushButton(order_page_text::change())),
      deliver_(new QPushButton(order_page_text::deliver())),
      replace_(new QPushButton(order_page_text::replace())),
      earmark_(new QPushButton(order_page_text::earmark())),
      waiting_(new QPushButton(order_page_text::waitingList(OrderStanding::Open))),
      cancel_(new QPushButton(order_page_text::cancel(OrderStanding::Open))) {
    shown_->setSourceModel(model_);
    table_->setModel(shown_);
    makeList(*table_, order_page_text::head());
    table_->setItemDelegateForColumn(OrdersModel::State, new GlyphDelegate(table_));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->installEventFilter(this);
    table_->setSortingEnabled(true);
    table_->horizontalHeader()->setSortIndicatorClearable(true);
    table_->sortByColumn(-1, Qt::AscendingOrder);  // the order of filling until a head is pressed
    empty_->setWordWrap(true);
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setMargin(40);
    list_->addWidget(table_);
    list_->addWidget(empty_);
    auto* parts = new QSplitter(Qt::Horizontal);
    parts->addWidget(list_);
    parts->addWidget(reasons_);
    parts->setStretchFactor(0, 7);
    parts->setStretchFactor(1, 3);
    parts->setSizes({1000, 275});  // at 1280 px what is ordered stands whole beside its days
    parts->setChildrenCollapsible(false);
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addWidget(parts, 1);
    column->addWidget(makeFoot());
    setFocusProxy(table_);
    connectParts();
}

OrdersPage::~OrdersPage() = default;

QWidget* OrdersPage::makeTop() {
    auto* top = new QWidget;
    makeHead(*head_);
    makeStrong(*totals_);
    for (int i = 0; i < order_page_text::kFilters; ++i)
        filter_->addItem(order_page_text::filter(i));
    filter_->setAccessibleName(order_page_text::filter(0));
    makeSearch(*find_, order_page_text::find());
    auto* first = new QHBoxLayout;
    first->addWidget(head_, 1);
    first->addWidget(filter_);
    first->addWidget(find_);
    const auto button = [&](const QString& words, void (OrdersPage::*act)(), bool writes) {
        auto* made = new QPushButton(words);
        connect(made, &QPushButton::clicked, this, act);
        first->addWidget(made);
        if (writes) writing_.push_back(made);
    };
    button(order_page_text::newOrder(), &OrdersPage::addOrder, true);
    auto* paste = new QPushButton(order_page_text::paste());
    connect(paste, &QPushButton::clicked, this, [this] { pasteOrders(); });
    first->addWidget(paste);
    writing_.push_back(paste);
    button(order_page_text::bought(), &OrdersPage::addBought, true);
    button(order_page_text::whatIf(), &OrdersPage::askWhatIf, false);
    button(order_page_text::losses(), &OrdersPage::showLosses, false);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addWidget(totals_);
    column->addWidget(counts_);
    return top;
}

QWidget* OrdersPage::makeFoot() {
    auto* foot = new QWidget;
    told_->setWordWrap(true);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    for (auto* button : {change_, deliver_, replace_, earmark_, waiting_, cancel_})
        row->addWidget(button);
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(row);
    column->addWidget(told_);
    told_->hide();
    return foot;
}

void OrdersPage::connectParts() {
    const auto on = [this](QPushButton* button, void (OrdersPage::*act)()) {
        connect(button, &QPushButton::clicked, this, act);
    };
    on(change_, &OrdersPage::changeOrder);
    on(deliver_, &OrdersPage::deliver);
    on(replace_, &OrdersPage::replace);
    on(earmark_, &OrdersPage::earmark);
    on(waiting_, &OrdersPage::toggleWaiting);
    on(cancel_, &OrdersPage::toggleCancelled);
    connect(find_, &QLineEdit::textChanged, this, [this](const QString& text) {
        shown_->setFilterFixedString(text);
        tellEmpty();
    });
    connect(filter_, &QComboBox::currentIndexChanged, this, [this](int entry) {
        shown_->setEntry(entry);
        tellEmpty();
    });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &OrdersPage::tellCurrent);
    connect(table_, &QTableView::doubleClicked, this, &OrdersPage::changeOrder);
    connect(&desk_, &Desk::shown, &seen_, &WhileSeen::follow);
    seen_.follow();
}

QString OrdersPage::totals() const { return totals_->text(); }
QString OrdersPage::told() const { return told_->text(); }
QString OrdersPage::emptyText() const {
    return list_->currentWidget() == empty_ ? empty_->text() : QString();
}

const OrderRow* OrdersPage::chosen() const {
    const auto at = shown_->mapToSource(table_->currentIndex());
    return at.isValid() ? &model_->at(at.row()) : nullptr;
}

void OrdersPage::choose(Id<Order> order) {
    find_->clear();
    filter_->setCurrentIndex(order_page_text::kFilters - 1);
    for (int row = 0; row < model_->rowCount(); ++row)
        if (model_->at(row).order->id == order) {
            const auto index = shown_->mapFromSource(model_->index(row, 0));
            table_->setCurrentIndex(index);
            table_->scrollTo(index);
        }
}

DateOfBatch OrdersPage::chosenDate() const {
    const auto* row = chosen();
    if (row == nullptr || !row->outlook) return {};
    const OrderFill* most = nullptr;
    for (const auto& fill : row->outlook->fills)
        if (desk_.outlook()->find(fill.batch) != nullptr &&
            (most == nullptr || fill.count > most->count))
            most = &fill;
    if (most == nullptr) return {};
    return {most->batch, Event::Catch};
}

/// What the book says is shown at once; how orders stand comes when it is reckoned.
void OrdersPage::follow() {
    if (desk_.isPreviewing()) return seen_.putOff();
    const auto outlook = desk_.outlook();
    isReckoning_ = true;
    showRows(outlook, orderRows(*outlook, model_->rows()));
    if (totals_->text().isEmpty()) totals_->setText(order_page_text::reckoning());
    work_.ask([outlook] { return reckonOrders(outlook); },
              [this](const OrdersReckoned& made) { take(made); });
}

void OrdersPage::take(const OrdersReckoned& made) {
    isReckoning_ = false;
    showRows(made.of, made.rows);
    tellTotals(made.weeks);
}

void OrdersPage::showRows(const OutlookPtr& outlook, std::vector<OrderRow> rows) {
    const auto* before = chosen();
    const auto id = before ? std::optional(before->order->id) : std::nullopt;
    const int row = std::max(table_->currentIndex().row(), 0);
    model_->show(outlook, std::move(rows), isReckoning_);
    // Importance counts once something is short; until then it is one column less to read.
    table_->setColumnHidden(OrdersModel::Weight, !model_->isAnythingShort());
    int found = std::min(row, shown_->rowCount() - 1);
    for (int at = 0; id && at < shown_->rowCount(); ++at)
        if (model_->at(shown_->mapToSource(shown_->index(at, 0)).row()).order->id == *id)
            found = at;
    table_->setCurrentIndex(found < 0 ? QModelIndex() : shown_->index(found, 0));
    tellCounts();
    tellEmpty();
}

void OrdersPage::tellTotals(const std::vector<PromiseWeek>& weeks) {
    const auto today = desk_.snapshot().today();
    const auto week = [&](Day day) -> const PromiseWeek* {
        const auto found = std::find_if(weeks.begin(), weeks.end(), [&](const auto& each) {
            return each.week == isoWeekOf(day);
        });
        return found == weeks.end() ? nullptr : &*found;
    };
    totals_->setText(order_page_text::totals(week(today), week(today + Days{7})));
}

void OrdersPage::tellCounts() {
    int states[3] = {};
    int waiting = 0;
    for (const auto& row : model_->rows()) {
        if (row.outlook) ++states[static_cast<std::size_t>(row.outlook->state)];
        waiting += row.terms.standing == OrderStanding::Waiting ? 1 : 0;
    }
    counts_->setText(order_page_text::counts(states[0], states[1], states[2], waiting));
    counts_->setVisible(!counts_->text().isEmpty());
}

void OrdersPage::tellEmpty() {
    empty_->setText(model_->rowCount() == 0 ? order_page_text::noOrders()
                                            : order_page_text::noneOfThese());
    const bool none = shown_->rowCount() == 0;
    list_->setCurrentWidget(none ? static_cast<QWidget*>(empty_) : table_);
    setFocusProxy(none ? static_cast<QWidget*>(list_) : table_);
    tellCurrent();
}

void OrdersPage::tellCurrent() {
    const auto* row = chosen();
    const bool can = row != nullptr && !desk_.isReadOnly();
    const auto standing = row ? row->terms.standing : OrderStanding::Open;
    const bool owed = can && standing == OrderStanding::Open && row->rest > 0;
    for (auto* button : writing_) button->setEnabled(!desk_.isReadOnly());
    change_->setEnabled(can);
    deliver_->setEnabled(owed);
    earmark_->setEnabled(owed && isForQueens(row->order->kind));
    replace_->setEnabled(can && !desk_.snapshot().all<Delivery>().of(row->order->id.uuid).empty());
    waiting_->setText(order_page_text::waitingList(standing));
    waiting_->setEnabled(can && standing != OrderStanding::Cancelled);
    cancel_->setText(order_page_text::cancel(standing));
    cancel_->setEnabled(can);
    reasons_->showChain(row ? why_text::order(*desk_.outlook(), *row->order,
                                              row->outlook ? &*row->outlook : nullptr)
                            : std::vector<why_text::Link>{},
                        model_->rowCount() == 0 ? QString() : order_page_text::chooseOrder());
}

bool OrdersPage::key(int key, Qt::KeyboardModifiers with) {
    if (with == Qt::ControlModifier && key == Qt::Key_C) return copyOrders(), true;
    if (with == Qt::ControlModifier && key == Qt::Key_V) return pasteOrders(), true;
    if (with != Qt::NoModifier) return false;
    switch (key) {
        case Qt::Key_Insert:
            return addOrder(), true;
        case Qt::Key_F2:
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return changeOrder(), true;
        case Qt::Key_D:
            return deliver(), true;
        case Qt::Key_R:
            return replace(), true;
        case Qt::Key_M:
            return earmark(), true;
        case Qt::Key_L:
            return toggleWaiting(), true;
        case Qt::Key_C:
            return toggleCancelled(), true;
        case Qt::Key_B:
            return addBought(), true;
        case Qt::Key_I:
            return askWhatIf(), true;
        case Qt::Key_S:
            return showLosses(), true;
        case Qt::Key_Delete:
            return deleteOrder(), true;
        default:
            return false;
    }
}

bool OrdersPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* press = static_cast<QKeyEvent*>(event);
        if (key(press->key(), press->modifiers() & ~Qt::KeypadModifier)) return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
