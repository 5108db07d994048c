#include "look/airy_cells.h"

#include <QAbstractItemView>
#include <QHelpEvent>
#include <QTableView>
#include <QToolTip>
#include <algorithm>

namespace tenthday {

AiryCells::AiryCells(int air, int more, int most, QObject* parent)
    : QStyledItemDelegate(parent), air_(air), more_(more), most_(most) {}

int AiryCells::widthOfLetters(int letters, const QFontMetrics& font) const {
    return letters * font.averageCharWidth() + 2 * air();
}

QSize AiryCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem words = option;  // lines are broken at what is left of the width
    words.rect.adjust(air(), 0, -air(), 0);
    const auto needed = QStyledItemDelegate::sizeHint(words, index);
    const auto column = static_cast<std::size_t>(index.column());
    const int most = column < rooms_.size() ? rooms_[column] : widthOfMost(option.fontMetrics);
    return {std::min(needed.width() + 2 * air(), most), needed.height() + more_};
}

namespace {

/// Whether a text does not stand whole in a cell with so much width for it, px.
bool isCut(const QString& text, const QStyleOptionViewItem& option, int width,
           const QAbstractItemView& view) {
    if (option.fontMetrics.horizontalAdvance(text) <= width) return false;
    const auto* table = qobject_cast<const QTableView*>(&view);
    if (table == nullptr || !table->wordWrap()) return true;
    const QRect lines = option.fontMetrics.boundingRect(QRect(0, 0, width, QWIDGETSIZE_MAX),
                                                        Qt::TextWordWrap, text);
    return lines.width() > width || lines.height() > option.rect.height();
}

}  // namespace

bool AiryCells::helpEvent(QHelpEvent* event, QAbstractItemView* view,
                          const QStyleOptionViewItem& option, const QModelIndex& index) {
    const auto text = index.data().toString();
    const auto tip = index.data(Qt::ToolTipRole).toString();
    if (event->type() != QEvent::ToolTip || tip.startsWith(text) ||
        !isCut(text, option, option.rect.width() - 2 * air(), *view))
        return QStyledItemDelegate::helpEvent(event, view, option, index);
    QToolTip::showText(event->globalPos(), tip.isEmpty() ? text : text + u'\n' + tip, view);
    return true;
}

void AiryCells::paint(QPainter* painter, const QStyleOptionViewItem& option,
                      const QModelIndex& index) const {
    QStyleOptionViewItem ground = option;
    initStyleOption(&ground, index);
    QStyleOptionViewItem words = ground;
    ground.text.clear();
    ground.icon = {};
    ground.features &= ~QStyleOptionViewItem::HasCheckIndicator;
    // What is inside is drawn once more, but no ground and no frame of its own.
    words.rect.adjust(air(), 0, -air(), 0);
    words.backgroundBrush = Qt::NoBrush;
    if (words.state & QStyle::State_Selected)
        words.palette.setBrush(QPalette::Text, words.palette.brush(QPalette::HighlightedText));
    words.state &= ~(QStyle::State_Selected | QStyle::State_HasFocus | QStyle::State_MouseOver);
    const auto* widget = option.widget;
    for (const auto* part : {&ground, &words})
        widget->style()->drawControl(QStyle::CE_ItemViewItem, part, painter, widget);
}

}  // namespace tenthday
