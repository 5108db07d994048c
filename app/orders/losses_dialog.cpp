#include "orders/losses_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "orders/order_asks.h"
#include "outlook/supply_of.h"
#include "screen_text/derived_text.h"
#include "screen_text/loss_text.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

void makeTable(QTableWidget& table, const QStringList& heads, const QString& name,
               QString (*noPaste)()) {
    table.setColumnCount(static_cast<int>(heads.size()));
    table.setHorizontalHeaderLabels(heads);
    makeList(table, name);
    sayNoPaste(table, noPaste);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setTabKeyNavigation(false);
    table.horizontalHeader()->setStretchLastSection(true);
}

void fillRow(QTableWidget& table, int row, const QStringList& cells, const QString& tip) {
    for (int column = 0; column < cells.size(); ++column) {
        auto* item = new QTableWidgetItem(cells[column]);
        item->setToolTip(tip);
        table.setItem(row, column, item);
    }
}

/// Fills a table anew and keeps the row the user was on.
template <class Fill>
void refill(QTableWidget& table, int rows, Fill&& fill) {
    const int row = table.currentRow();
    table.setRowCount(rows);
    for (int at = 0; at < rows; ++at) fill(at);
    table.setCurrentCell(std::clamp(row, 0, std::max(rows - 1, 0)), 0);
}

}  // namespace

LossesDialog::LossesDialog(Desk& desk, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      stages_(new QTableWidget),
      batches_(new QTableWidget),
      batchesHead_(new QLabel),
      told_(new QLabel),
      leaveOut_(new QPushButton(loss_text::leaveOut())),
      takeIn_(new QPushButton(loss_text::takeIn())) {
    setWindowTitle(loss_text::head());
    auto* intro = new QLabel(loss_text::intro());
    intro->setWordWrap(true);
    makeTable(*stages_, loss_text::stageHeads(), loss_text::head(), derived_text::rates);
    makeTable(*batches_, loss_text::batchHeads(), loss_text::batches(), derived_text::ownOutcomes);
    makeStrong(*batchesHead_);
    told_->setWordWrap(true);
    auto* lower = new QWidget;
    auto* below = new QVBoxLayout(lower);
    below->setContentsMargins(0, 0, 0, 0);
    below->addWidget(batchesHead_);
    below->addWidget(batches_, 1);
    auto* parts = new QSplitter(Qt::Vertical);
    parts->addWidget(stages_);
    parts->addWidget(lower);
    parts->setChildrenCollapsible(false);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->addButton(leaveOut_, QDialogButtonBox::ActionRole);
    buttons->addButton(takeIn_, QDialogButtonBox::ActionRole);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(intro);
    column->addWidget(parts, 1);
    column->addWidget(told_);
    column->addWidget(buttons);
    resize(980, 620);
    connect(stages_, &QTableWidget::currentCellChanged, this, &LossesDialog::showBatches);
    connect(batches_, &QTableWidget::currentCellChanged, this, &LossesDialog::tellCurrent);
    connect(batches_, &QTableWidget::cellActivated, this, &LossesDialog::leaveOutCurrent);
    connect(leaveOut_, &QPushButton::clicked, this, &LossesDialog::leaveOutCurrent);
    connect(takeIn_, &QPushButton::clicked, this, &LossesDialog::takeInCurrent);
    connect(&desk_, &Desk::shown, this, &LossesDialog::follow);
    follow();
}

QString LossesDialog::told() const { return told_->text(); }

void LossesDialog::follow() {
    if (desk_.isPreviewing()) return;
    isReckoning_ = true;
    if (stages_->rowCount() == 0) {
        batchesHead_->setText(order_text::reckoning());
        tellCurrent();
    }
    const auto outlook = desk_.outlook();
    work_.ask([outlook] { return ownRatesOf(*outlook); },
              [this](const OwnRates& rates) { take(rates); });
}

void LossesDialog::take(const OwnRates& rates) {
    isReckoning_ = false;
    rates_ = rates;
    showStages();
    showBatches();
}

LossStage LossesDialog::stage() const {
    return kAllLossStages[static_cast<std::size_t>(std::max(stages_->currentRow(), 0))];
}

void LossesDialog::showStages() {
    const auto& book = desk_.snapshot();
    refill(*stages_, static_cast<int>(kLossStages), [&](int row) {
        const auto which = kAllLossStages[static_cast<std::size_t>(row)];
        fillRow(*stages_, row,
                loss_text::stageCells(book.facts(), which, rates_.fits[which],
                                      isOwnRateInForce(book, rates_, which)),
                loss_text::because(book.facts(), which));
    });
}

void LossesDialog::showBatches() {
    const auto& outcomes = rates_.outcomes[stage()];
    batchesHead_->setText(loss_text::batchesOf(stage(), static_cast<int>(outcomes.size())));
    refill(*batches_, static_cast<int>(outcomes.size()), [&](int row) {
        const auto& each = outcomes[static_cast<std::size_t>(row)];
        fillRow(*batches_, row, loss_text::batchCells(each), plain(each.outcome.leftOut));
    });
    tellCurrent();
}

const BatchOutcome* LossesDialog::current() const {
    const auto& outcomes = rates_.outcomes[stage()];
    const int row = batches_->currentRow();
    return row >= 0 && row < static_cast<int>(outcomes.size())
               ? &outcomes[static_cast<std::size_t>(row)]
               : nullptr;
}

void LossesDialog::tellCurrent() {
    const auto* batch = current();
    const bool can = batch != nullptr && !desk_.isReadOnly();
    const bool out = batch != nullptr && !batch->outcome.leftOut.empty();
    leaveOut_->setEnabled(can);
    leaveOut_->setText(out ? loss_text::changeReason() : loss_text::leaveOut());
    takeIn_->setEnabled(can && out);
}

QString LossesDialog::save(const Result<ChangeSet>& changes) {
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return {};
    return window_text::cannotSaveEdit() + u' ' + plain(done.error().text);
}

void LossesDialog::leaveOutCurrent() {
    const auto* batch = current();
    if (batch == nullptr || desk_.isReadOnly()) return;
    asking_ = new FieldsDialog(
        askLeaveOut(desk_, batch->batch, [this](const auto& changes) { return save(changes); }),
        desk_.snapshot().today(), this);
    asking_->setAttribute(Qt::WA_DeleteOnClose);
    asking_->open();
}

void LossesDialog::takeInCurrent() {
    const auto* batch = current();
    if (batch == nullptr || desk_.isReadOnly()) return;
    auto changes = tenthday::takeIn(desk_.snapshot(), batch->batch);
    if (changes) {
        changes.value().verb = Verb::RecordOutcome;
        changes.value().subject = order_page_text::takenInName(plain(batch->label)).toStdString();
    }
    told_->setText(save(changes));
}

}  // namespace tenthday
