#include "nucs/stocking_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "look/palette.h"
#include "look/table_copy.h"
#include "look/table_keys.h"
#include "screen_text/chart_text.h"
#include "screen_text/derived_text.h"
#include "screen_text/upkeep_text.h"

namespace tenthday {

StockingDialog::StockingDialog(const Outlook& outlook, Day from, QWidget* parent)
    : QDialog(parent),
      table_(new QTableWidget(0, upkeep_text::kStockingColumns)),
      sum_(new QLabel),
      donors_(new QLabel),
      copy_(new QPushButton(upkeep_text::copy())) {
    const auto title = upkeep_text::stockingTitle({from, from + kStockingAhead});
    setWindowTitle(title);
    auto* head = new QLabel(title);
    makeHead(*head);
    makeStrong(*sum_);
    makeList(*table_, title);
    sayNoPaste(*table_, derived_text::stockings);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    for (int column = 0; column < upkeep_text::kStockingColumns; ++column)
        table_->setHorizontalHeaderItem(column,
                                        new QTableWidgetItem(upkeep_text::stockingHead(column)));
    table_->horizontalHeader()->setStretchLastSection(true);
    auto* caution = new QLabel(upkeep_text::stockingCaution());
    for (auto* label : {donors_, caution}) label->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->addButton(copy_, QDialogButtonBox::ActionRole);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(copy_, &QPushButton::clicked, this, &StockingDialog::copy);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(head);
    column->addWidget(sum_);
    column->addWidget(table_, 1);
    column->addWidget(donors_);
    column->addWidget(caution);
    column->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 130, fontMetrics().lineSpacing() * 34);
    fill(outlook, from);
    table_->setFocus();
}

void StockingDialog::fill(const Outlook& outlook, Day from) {
    const auto list = stockingList(outlook.snapshot, outlook.nucs, from);
    const auto& facts = outlook.snapshot.facts();
    sum_->setText(list.needs.empty() && list.withoutNuc == 0 ? upkeep_text::nothingToStock()
                                                             : upkeep_text::stockingSum(list));
    table_->setRowCount(static_cast<int>(list.needs.size()));
    const auto& colours = paletteOf(lookOf(QApplication::palette()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const auto& need = list.needs[static_cast<std::size_t>(row)];
        const auto yard = outlook.snapshot.find(need.yard);
        const QStringList cells{upkeep_text::by(need),
                                yard ? QString::fromStdString(yard->label) : QString(),
                                chart_text::nuc(QString::fromStdString(need.side->box->label),
                                                QString::fromStdString(need.side->side->side)),
                                upkeep_text::bees(need),
                                upkeep_text::frames(need),
                                upkeep_text::donor(need),
                                upkeep_text::why(need)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(upkeep_text::whyBy(need, facts));
            if (need.late && column == 0) item->setForeground(colours[Role::Caution]);
            table_->setItem(row, column, item);
        }
    }
    copy_->setEnabled(!list.needs.empty());
    QStringList lines;
    for (const auto& donor : list.donors) lines += upkeep_text::gifts(donor, facts);
    donors_->setText(lines.isEmpty()
                         ? QString()
                         : upkeep_text::donorsHead() + QStringLiteral(":\n") + lines.join(u'\n'));
    donors_->setToolTip(upkeep_text::whyMayGive(facts));
    donors_->setVisible(!lines.isEmpty());
    table_->resizeColumnsToContents();
}

QString StockingDialog::sum() const { return sum_->text(); }
QString StockingDialog::donors() const { return donors_->text(); }

void StockingDialog::copy() {
    QApplication::clipboard()->setText(textOf(*table_));
    sum_->setText(upkeep_text::copied());
}

}  // namespace tenthday
