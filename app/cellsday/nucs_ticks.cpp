#include "cellsday/nucs_ticks.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>

#include "look/page_parts.h"
#include "look/table_keys.h"
#include "screen_text/cells_text.h"
#include "screen_text/derived_text.h"
#include "week/tick_delegate.h"

namespace tenthday {

NucsTicks::NucsTicks(QWidget* parent) : QTableView(parent), model_(new NucsTicksModel(this)) {
    setModel(model_);
    makeList(*this, cells_text::nucsHead());
    sayNoPaste(*this, derived_text::nucsToTick);
    setItemDelegateForColumn(NucsTicksModel::Cell, new TickDelegate(this));
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setMinimumSectionSize(1);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setAlternatingRowColors(false);
    horizontalHeader()->setStretchLastSection(true);
}

void NucsTicks::wish(const std::vector<int>& rows, bool ticked) {
    std::vector<Id<NucSide>> sides;
    for (const int row : rows)
        if (model_->flags(model_->index(row, NucsTicksModel::Cell)) & Qt::ItemIsUserCheckable)
            sides.push_back(model_->at(row).id());
    if (!sides.empty()) Q_EMIT ticksWished(sides, ticked);
}

void NucsTicks::toggleChosen() {
    const auto current = currentIndex();
    if (!current.isValid()) return;
    std::vector<int> rows;
    for (const auto& index : selectionModel()->selectedRows()) rows.push_back(index.row());
    if (std::find(rows.begin(), rows.end(), current.row()) == rows.end()) rows = {current.row()};
    std::sort(rows.begin(), rows.end());
    wish(rows, !model_->isTicked(current.row()));
}

void NucsTicks::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && event->modifiers() == Qt::NoModifier)
        return toggleChosen();
    QTableView::keyPressEvent(event);
}

bool NucsTicks::isTick(const QMouseEvent& event) const {
    return event.button() == Qt::LeftButton && event.modifiers() == Qt::NoModifier &&
           indexAt(event.pos()).isValid() &&
           columnAt(event.pos().x()) == static_cast<int>(NucsTicksModel::Cell);
}

void NucsTicks::mousePressEvent(QMouseEvent* event) {
    if (!isTick(*event)) return QTableView::mousePressEvent(event);
    const int row = rowAt(event->pos().y());
    setCurrentIndex(model_->index(row, NucsTicksModel::Cell));
    drawing_ = !model_->isTicked(row);
    drawnTo_ = row;
    wish({row}, *drawing_);
}

void NucsTicks::mouseMoveEvent(QMouseEvent* event) {
    if (!drawing_) return QTableView::mouseMoveEvent(event);
    const int row = rowAt(event->pos().y());
    if (row >= 0) draw(row);
}

/// A quick hand leaves no row out.
void NucsTicks::draw(int untilRow) {
    std::vector<int> rows;
    const int by = untilRow > drawnTo_ ? 1 : -1;
    for (int row = drawnTo_; row != untilRow;) rows.push_back(row += by);
    drawnTo_ = untilRow;
    wish(rows, *drawing_);
}

void NucsTicks::mouseReleaseEvent(QMouseEvent* event) {
    if (!drawing_) return QTableView::mouseReleaseEvent(event);
    drawing_.reset();
}

/// Two clicks on a tick are two clicks.
void NucsTicks::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

}  // namespace tenthday
