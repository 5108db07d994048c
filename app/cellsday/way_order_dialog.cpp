#include "cellsday/way_order_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "screen_text/cells_text.h"
#include "screen_text/derived_text.h"
#include "screen_text/window_text.h"
#include "week/tick_delegate.h"

namespace tenthday {
namespace {

constexpr int kWayRole = Qt::UserRole + 1;
enum Column { Used, Name, Most, ColumnCount };

}  // namespace

WayOrderDialog::WayOrderDialog(const WayOrder& order, QWidget* parent)
    : QDialog(parent),
      table_(new QTableWidget(0, ColumnCount)),
      up_(new QPushButton(cells_text::up())),
      down_(new QPushButton(cells_text::down())) {
    setWindowTitle(cells_text::orderTitle());
    auto* explained = new QLabel(cells_text::orderExplained());
    explained->setWordWrap(true);
    makeList(*table_, cells_text::orderTitle());
    sayNoPaste(*table_, derived_text::wayOrder);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setHorizontalHeaderLabels({QString(), cells_text::use(), cells_text::atMost()});
    table_->horizontalHeader()->setSectionResizeMode(Name, QHeaderView::Stretch);
    table_->setItemDelegateForColumn(Used, new TickDelegate(table_));
    table_->setTabKeyNavigation(false);
    table_->installEventFilter(this);
    for (auto* button : {up_, down_}) button->setAutoDefault(false);
    connect(up_, &QPushButton::clicked, this, [this] { move(-1); });
    connect(down_, &QPushButton::clicked, this, [this] { move(1); });
    auto* buttons = new QDialogButtonBox;
    auto* keep = buttons->addButton(cells_text::keep(), QDialogButtonBox::AcceptRole);
    buttons->addButton(window_text::cancel(), QDialogButtonBox::RejectRole);
    keep->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* moves = new QVBoxLayout;
    moves->addWidget(up_);
    moves->addWidget(down_);
    moves->addStretch();
    auto* middle = new QHBoxLayout;
    middle->addWidget(table_, 1);
    middle->addLayout(moves);
    auto* column = new QVBoxLayout(this);
    column->addWidget(explained);
    column->addLayout(middle, 1);
    column->addWidget(buttons);
    resize(460, 380);

    std::vector<std::pair<WayStep, bool>> all;
    for (const auto& step : order) all.emplace_back(step, true);
    for (std::size_t i = 0; i < kTokenCount<Way>; ++i) {
        const auto way = static_cast<Way>(i);
        const bool named = std::any_of(order.begin(), order.end(),
                                       [&](const auto& step) { return step.way == way; });
        if (!named) all.emplace_back(WayStep{way, {}}, false);
    }
    fill(all);
    table_->setCurrentCell(0, Name);
}

void WayOrderDialog::fill(const std::vector<std::pair<WayStep, bool>>& ways) {
    table_->setRowCount(0);
    for (const auto& [step, used] : ways) {
        const int row = table_->rowCount();
        table_->insertRow(row);
        auto* name = new QTableWidgetItem(cells_text::wayOf(step.way));
        name->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        table_->setItem(row, Name, name);
        auto* item = new QTableWidgetItem;
        item->setData(Qt::AccessibleTextRole, cells_text::wayOf(step.way));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(used ? Qt::Checked : Qt::Unchecked);
        item->setData(kWayRole, static_cast<int>(step.way));
        table_->setItem(row, Used, item);
        auto* most = new QSpinBox;
        most->setRange(0, 9999);
        most->setSpecialValueText(cells_text::asMany());
        most->setValue(step.most.value_or(0));
        most->setAccessibleName(
            cells_text::field(cells_text::atMost(), cells_text::wayOf(step.way)));
        table_->setCellWidget(row, Most, most);
    }
    table_->resizeRowsToContents();
}

std::vector<std::pair<WayStep, bool>> WayOrderDialog::ways() const {
    std::vector<std::pair<WayStep, bool>> ways;
    for (int row = 0; row < table_->rowCount(); ++row) {
        const auto* item = table_->item(row, Used);
        const int most = qobject_cast<QSpinBox*>(table_->cellWidget(row, Most))->value();
        WayStep step{static_cast<Way>(item->data(kWayRole).toInt()),
                     most > 0 ? std::optional(most) : std::nullopt};
        ways.emplace_back(step, item->checkState() == Qt::Checked);
    }
    return ways;
}

WayOrder WayOrderDialog::order() const {
    WayOrder order;
    for (const auto& [step, used] : ways())
        if (used) order.push_back(step);
    return order;
}

void WayOrderDialog::move(int by) {
    auto all = ways();
    const int from = table_->currentRow();
    const int to = from + by;
    if (from < 0 || to < 0 || to >= static_cast<int>(all.size())) return;
    std::swap(all[static_cast<std::size_t>(from)], all[static_cast<std::size_t>(to)]);
    fill(all);
    table_->setCurrentCell(to, Name);
}

/// Space ticks the way, whichever of its cells is the current one.
bool WayOrderDialog::eventFilter(QObject* watched, QEvent* event) {
    const bool space =
        event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
    auto* item = space ? table_->item(table_->currentRow(), Used) : nullptr;
    if (item == nullptr) return QDialog::eventFilter(watched, event);
    item->setCheckState(item->checkState() == Qt::Checked ? Qt::Unchecked : Qt::Checked);
    return true;
}

}  // namespace tenthday
