#include "reasons/why_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "reasons/reasons_view.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/derived_text.h"

namespace tenthday {
namespace {

constexpr int kColumns = 5;

QStringList rowOf(const BatchTimeline& timeline, const EventDates& dates) {
    return {chart_text::event(dates.event),
            why_text::dayFromGraft(timeline.dayNumber(dates.likely)), dayAndClock(dates.earliest),
            dayAndClock(dates.likely), dayAndClock(dates.latest)};
}

}  // namespace

WhyDialog::WhyDialog(Desk& desk, Id<Batch> batch, std::optional<Event> event, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      batch_(batch),
      events_(new QTableWidget(0, kColumns)),
      reasons_(new ReasonsView) {
    setModal(false);
    makeList(*events_, why_text::dates());
    sayNoPaste(*events_, derived_text::datesOfBatch);
    events_->setSelectionMode(QAbstractItemView::SingleSelection);
    events_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    events_->setTabKeyNavigation(false);
    events_->horizontalHeader()->setStretchLastSection(true);
    for (int column = 0; column < kColumns; ++column)
        events_->setHorizontalHeaderItem(column,
                                         new QTableWidgetItem(why_text::columnHead(column)));
    auto* parts = new QSplitter(Qt::Vertical);
    parts->addWidget(events_);
    parts->addWidget(reasons_);
    parts->setChildrenCollapsible(false);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(parts, 1);
    column->addWidget(buttons);
    const auto letter = fontMetrics().averageCharWidth();
    resize(letter * 122, fontMetrics().lineSpacing() * 38);
    connect(events_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &WhyDialog::tellChosen);
    connect(&desk_, &Desk::shown, this, &WhyDialog::follow);
    showBatch(batch, event);
    events_->setFocus();
}

void WhyDialog::showBatch(Id<Batch> batch, std::optional<Event> event) {
    batch_ = batch;
    follow();
    choose(event);
}

std::optional<Event> WhyDialog::chosen() const {
    const auto* item = events_->item(events_->currentRow(), 0);
    return item ? std::optional(static_cast<Event>(item->data(Qt::UserRole).toInt()))
                : std::nullopt;
}

void WhyDialog::follow() {
    const auto event = chosen();
    const auto* batch = desk_.outlook()->find(batch_);
    setWindowTitle(batch ? why_text::head(QString::fromStdString(batch->batch->label))
                         : why_text::head());
    filling_ = true;
    events_->setRowCount(0);
    if (batch)
        for (const auto& dates : batch->timeline.events) {
            const int row = events_->rowCount();
            events_->insertRow(row);
            const auto cells = rowOf(batch->timeline, dates);
            for (int column = 0; column < kColumns; ++column)
                events_->setItem(row, column, new QTableWidgetItem(cells[column]));
            events_->item(row, 0)->setData(Qt::UserRole, static_cast<int>(dates.event));
        }
    filling_ = false;
    choose(event);
}

void WhyDialog::choose(std::optional<Event> event) {
    int row = events_->rowCount() > 0 ? 0 : -1;
    for (int at = 0; at < events_->rowCount(); ++at)
        if (event && events_->item(at, 0)->data(Qt::UserRole).toInt() == static_cast<int>(*event))
            row = at;
    events_->setCurrentCell(row, 0);
    tellChosen();
}

void WhyDialog::tellChosen() {
    if (filling_) return;
    const auto event = chosen();
    reasons_->showChain(
        event ? why_text::event(*desk_.outlook(), batch_, *event) : std::vector<why_text::Link>{},
        why_text::batchIsGone());
}

}  // namespace tenthday
