#include "virgins/advice_delegate.h"

#include <QApplication>
#include <QPainter>

#include "look/glyph.h"
#include "look/palette.h"
#include "virgins/virgins_model.h"

namespace tenthday {
namespace {

constexpr int kAir = 8;

Glyph glyphOf(VirginAdvice advice) {
    switch (advice) {
        case VirginAdvice::Wait:
            return Glyph::Wait;
        case VirginAdvice::Look:
            return Glyph::Look;
        case VirginAdvice::Recell:
            return Glyph::Recell;
        default:
            return Glyph::Combine;
    }
}

/// What has to be given up stands out.
Role roleOf(VirginAdvice advice) {
    switch (advice) {
        case VirginAdvice::Wait:
            return Role::InkSoft;
        case VirginAdvice::Look:
            return Role::Ink;
        case VirginAdvice::Recell:
            return Role::Caution;
        default:
            return Role::Danger;
    }
}

int glyphSize(const QStyleOptionViewItem& option) { return option.fontMetrics.ascent(); }

}  // namespace

QSize AdviceDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return QStyledItemDelegate::sizeHint(option, index) + QSize(3 * kAir + glyphSize(option), 0);
}

void AdviceDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyleOptionViewItem ground = option;
    initStyleOption(&ground, index);
    ground.text.clear();
    const auto* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &ground, painter, option.widget);
    const auto advice = static_cast<VirginAdvice>(index.data(VirginsModel::kAdviceRole).toInt());
    const bool chosen = option.state & QStyle::State_Selected;
    const auto ink = chosen ? ground.palette.color(QPalette::HighlightedText)
                            : paletteOf(lookOf(QApplication::palette()))[roleOf(advice)];
    const int size = glyphSize(option);
    const QRect inside = option.rect.adjusted(kAir, 0, -kAir, 0);
    const QPointF centre(inside.left() + size / 2.0, QRectF(inside).center().y());
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(ink, size / 7.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPath(glyphPath(glyphOf(advice), centre, size * 0.85));
    painter->setFont(ground.font);
    painter->drawText(inside.adjusted(size + kAir, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                      index.data().toString());
    painter->restore();
}

}  // namespace tenthday
