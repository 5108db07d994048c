#include "week/tick_delegate.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

namespace tenthday {

QSize TickDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int box = option.fontMetrics.height();
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({box + 12, box + 8});
}

void TickDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    QStyleOptionViewItem ground = option;
    initStyleOption(&ground, index);
    ground.features &= ~QStyleOptionViewItem::HasCheckIndicator;
    ground.text.clear();
    const auto* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &ground, painter, option.widget);
    const auto state = index.data(Qt::CheckStateRole);
    if (!state.isValid()) return;
    const bool chosen = option.state & QStyle::State_Selected;
    const auto ink = ground.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text);
    const qreal side = option.fontMetrics.ascent();
    QRectF box(0, 0, side, side);
    box.moveCenter(QRectF(option.rect).center());
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(ink, 1.2));
    painter->drawRoundedRect(box, 2, 2);
    if (state.toInt() == Qt::Checked) {
        QPainterPath mark(box.topLeft() + QPointF(0.2, 0.52) * side);
        mark.lineTo(box.topLeft() + QPointF(0.42, 0.75) * side);
        mark.lineTo(box.topLeft() + QPointF(0.82, 0.24) * side);
        painter->setPen(QPen(ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter->drawPath(mark);
    }
    painter->restore();
}

bool TickDelegate::editorEvent(QEvent* event, QAbstractItemModel* model,
                               const QStyleOptionViewItem& option, const QModelIndex& index) {
    if (!(index.flags() & Qt::ItemIsUserCheckable)) return false;
    if (event->type() != QEvent::MouseButtonRelease) return false;
    const auto* mouse = static_cast<QMouseEvent*>(event);
    if (mouse->button() != Qt::LeftButton || !option.rect.contains(mouse->pos())) return false;
    const bool checked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
    return model->setData(index, checked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

}  // namespace tenthday
