#include "look/glyph_delegate.h"

#include <QApplication>
#include <QPainter>

#include "look/glyph.h"
#include "look/palette.h"

namespace tenthday {
namespace {

constexpr int kAir = 8;

int glyphSize(const QStyleOptionViewItem& option) { return option.fontMetrics.ascent(); }

}  // namespace

QSize GlyphDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return QStyledItemDelegate::sizeHint(option, index) + QSize(3 * kAir + glyphSize(option), 0);
}

void GlyphDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    QStyleOptionViewItem ground = option;
    initStyleOption(&ground, index);
    ground.text.clear();
    const auto* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &ground, painter, option.widget);
    const auto glyph = index.data(kGlyphRole);
    const bool chosen = option.state & QStyle::State_Selected;
    const auto role = index.data(kInkRole);
    const auto ink =
        chosen ? ground.palette.color(QPalette::HighlightedText)
        : role.isValid()
            ? paletteOf(lookOf(QApplication::palette()))[static_cast<Role>(role.toInt())]
            : ground.palette.color(QPalette::Text);
    const int size = glyphSize(option);
    const QRect inside = option.rect.adjusted(kAir, 0, -kAir, 0);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(ink, size / 7.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    if (glyph.isValid()) {
        const QPointF centre(inside.left() + size / 2.0, QRectF(inside).center().y());
        const auto which = static_cast<Glyph>(glyph.toInt());
        const auto path = glyphPath(which, centre, size * 0.85);
        isFilled(which) ? painter->fillPath(path, ink) : painter->drawPath(path);
    }
    painter->setFont(ground.font);
    painter->drawText(inside.adjusted(size + kAir, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                      index.data().toString());
    painter->restore();
}

}  // namespace tenthday
