/// Pointer, wheel and keys of the season chart.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <cmath>

#include "chart/season_chart.h"

namespace tenthday {

void SeasonChart::mousePressEvent(QMouseEvent* event) {
    pointer_ = event->position();
    card_->hide();
    hoverTimer_.stop();
    if (event->button() != Qt::LeftButton) return event->ignore();
    goTo(gesture_->press(*this, event->position()));
}

void SeasonChart::mouseMoveEvent(QMouseEvent* event) {
    pointer_ = event->position();
    goTo(gesture_->moved(*this, event->position()));
}

void SeasonChart::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return event->ignore();
    card_->hide();
    const auto target = under(event->position());
    // Pressed again and again, page by page.
    if (target.hit == Hit::LanesAbove || target.hit == Hit::LanesBelow)
        return mousePressEvent(event);
    if (!target.batch.isNone())
        Q_EMIT editRequested(target.batch);
    else if (target.hit == Hit::CellsDay && target.day)
        Q_EMIT cellsDayRequested(*target.day);
    else if (target.hit == Hit::OrderFlag && options_.orders)
        Q_EMIT orderRequested(
            options_.orders->orders[static_cast<std::size_t>(target.index)].order->id);
    else if (target.day)
        Q_EMIT planRequested(*target.day);
}

void SeasonChart::mouseReleaseEvent(QMouseEvent* event) {
    pointer_ = event->position();
    if (event->button() != Qt::LeftButton) return event->ignore();
    goTo(gesture_->release(*this, event->position()));
}

void SeasonChart::wheelEvent(QWheelEvent* event) {
    constexpr qreal kNotch = 120;
    card_->hide();
    QPointF turn = event->angleDelta();
    if (event->modifiers() & Qt::ControlModifier) {
        const qreal factor = std::pow(1.2, (turn.y() != 0 ? turn.y() : turn.x()) / kNotch);
        return showAxis(axis_.zoomedAt(event->position().x(), factor), scrollY());
    }
    const auto& layout = layoutNow();
    const bool alongDays = (event->modifiers() & Qt::ShiftModifier) || turn.x() != 0 ||
                           layout.contentHeight <= layout.plot.height();
    const qreal px = (turn.x() != 0 ? turn.x() : turn.y()) / kNotch * 64;
    if (alongDays)
        showAxis(axis_.scrolledBy(-px), scrollY());
    else
        showAxis(axis_, scrollY() - px);
}

void SeasonChart::leaveEvent(QEvent* event) {
    hoverTimer_.stop();
    if (!gesture_->isBusy()) card_->hide();
    QWidget::leaveEvent(event);
}

void SeasonChart::focusOutEvent(QFocusEvent* event) {
    // A drag must not go on unseen behind another window.
    if (event->reason() == Qt::ActiveWindowFocusReason) goTo(gesture_->cancel(*this));
    QWidget::focusOutEvent(event);
}

bool SeasonChart::event(QEvent* event) {
    // While a drag is on, Esc is the chart's, whatever shortcut the window has for it.
    if (event->type() == QEvent::ShortcutOverride && gesture_->isBusy() &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

bool SeasonChart::focusNextPrevChild(bool next) {
    // Tab walks the batches, and leaves the chart after the last.
    if (shown_ && !shown_->batches.empty() && hasFocus()) {
        const auto& batches = shown_->batches;
        const auto& end = next ? batches.back() : batches.front();
        if (options_.selected != end->batch->id) {
            stepBatch(next ? 1 : -1);
            return true;
        }
    }
    return QWidget::focusNextPrevChild(next);
}

void SeasonChart::keyPressEvent(QKeyEvent* event) {
    card_->hide();
    const int key = event->key();
    const auto with = event->modifiers();
    if (key == Qt::Key_Escape ? cancelKey()
                              : placeKey(key, with) || changeKey(key, with) || moveKey(key, with) ||
                                    findKey(key, with) || viewKey(key, with))
        return event->accept();
    QWidget::keyPressEvent(event);
}

bool SeasonChart::cancelKey() {
    if (gesture_->isBusy()) {
        goTo(gesture_->cancel(*this));
        return true;
    }
    if (!options_.selected) return false;
    setSelectedBatch(std::nullopt);
    return true;
}

bool SeasonChart::moveKey(int key, Qt::KeyboardModifiers with) {
    if (with & (Qt::ControlModifier | Qt::AltModifier)) return false;
    const bool extend = with & Qt::ShiftModifier;
    switch (key) {
        case Qt::Key_Left:
            return stepDay(-1), true;
        case Qt::Key_Right:
            return stepDay(1), true;
        case Qt::Key_PageUp:
            return stepDay(-7), true;
        case Qt::Key_PageDown:
            return stepDay(7), true;
        case Qt::Key_Up:
            return stepBatch(-1, extend), true;
        case Qt::Key_Down:
            return stepBatch(1, extend), true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (!options_.selected) return false;
            Q_EMIT editRequested(*options_.selected);
            return true;
        case Qt::Key_Insert:
            if (options_.chosenDay) Q_EMIT planRequested(*options_.chosenDay);
            return true;
        default:
            return false;
    }
}

bool SeasonChart::viewKey(int key, Qt::KeyboardModifiers with) {
    if (key >= Qt::Key_1 && key <= Qt::Key_9 && shown_) {
        if (with & Qt::AltModifier) return false;  // a lane that is not there is no yard
        const auto place = static_cast<std::size_t>(key - Qt::Key_1);
        if (place >= shown_->nucs.yards.size()) return false;
        return openOrClose(shown_->nucs.yards[place].yard->id), true;
    }
    switch (key) {
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return zoomIn(), true;
        case Qt::Key_Minus:
            return zoomOut(), true;
        case Qt::Key_Home:
            return goToToday(), true;
        case Qt::Key_0:
            return showWholeSeason(), true;
        case Qt::Key_L:
            return foldOrUnfoldLegend(), true;
        default:
            return false;
    }
}

void SeasonChart::stepBatch(int by, bool extend) {
    if (!shown_ || shown_->batches.empty()) return;
    const auto& batches = shown_->batches;
    const auto at = std::find_if(batches.begin(), batches.end(), [&](const auto& batch) {
        return options_.selected == batch->batch->id;
    });
    const int last = static_cast<int>(batches.size()) - 1;
    const int next =
        at == batches.end() ? (by > 0 ? 0 : last) : static_cast<int>(at - batches.begin()) + by;
    if (next < 0 || next > last) return;
    const auto& batch = batches[static_cast<std::size_t>(next)];
    const auto before = selectedBatches();
    setSelectedBatch(batch->batch->id);
    if (extend)
        for (const auto other : before)
            if (other != batch->batch->id) options_.alsoSelected.push_back(other);
    showAxis(axis_.showing(dayOf(batch->timeline.graft), 40)
                 .showing(batch->timeline.hold.transferDay, 40),
             scrollY());
}

void SeasonChart::stepDay(int by) {
    if (!shown_) return;
    setChosenDay(options_.chosenDay.value_or(shown_->snapshot.today()) + Days{by});
    showAxis(axis_.showing(*options_.chosenDay, axis_.dayWidth()), scrollY());
}

}  // namespace tenthday
