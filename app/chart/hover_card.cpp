#include "chart/hover_card.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

constexpr qreal kPad = 10;
constexpr qreal kBetween = 12;
constexpr int kFromPointer = 16;

}  // namespace

HoverCard::HoverCard(QWidget* parent) : QWidget(parent), face_(systemTypeface()) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    hide();
}

void HoverCard::setLook(Look look, const Typeface& face) {
    look_ = look;
    face_ = face;
    update();
}

QSize HoverCard::wantedSize() {
    const QFontMetricsF label(face_.font(Type::Label));
    const QFontMetricsF body(face_.font(Type::Body));
    const QFontMetricsF strong(face_.font(Type::Strong));
    const QFontMetricsF small(face_.font(Type::Small));
    qreal because = 0;
    qreal sentence = 0;
    names_ = values_ = 0;
    for (const auto& line : card_.lines) {
        if (line.value.isEmpty() && line.because.isEmpty()) {  // runs over all columns
            sentence = std::max(sentence, body.horizontalAdvance(line.name));
            continue;
        }
        names_ = std::max(names_, body.horizontalAdvance(line.name));
        values_ = std::max(values_, strong.horizontalAdvance(line.value));
        because = std::max(because, small.horizontalAdvance(line.because));
    }
    const qreal table = names_ + kBetween + values_ + (because > 0 ? kBetween + because : 0);
    const qreal width =
        std::max({label.horizontalAdvance(card_.title), table, sentence}) + 2 * kPad;
    const qreal height = 2 * kPad + face_.linePx(Type::Label) + 2 +
                         static_cast<qreal>(card_.lines.size()) * (face_.linePx(Type::Body) + 2);
    return {static_cast<int>(std::ceil(width)), static_cast<int>(std::ceil(height))};
}

void HoverCard::showCard(const CardText& card, QPointF beside) {
    card_ = card;
    if (card_.title.isEmpty()) return hide();
    resize(wantedSize());
    const auto room = parentWidget()->size();
    int x = static_cast<int>(beside.x()) + kFromPointer;
    int y = static_cast<int>(beside.y()) + kFromPointer;
    if (x + width() > room.width() - 4) x = static_cast<int>(beside.x()) - kFromPointer - width();
    if (y + height() > room.height() - 4)
        y = static_cast<int>(beside.y()) - kFromPointer - height();
    move(std::clamp(x, 4, std::max(4, room.width() - width() - 4)),
         std::clamp(y, 4, std::max(4, room.height() - height() - 4)));
    setAccessibleName(card_.title);
    show();
    raise();
    update();
}

void HoverCard::paintEvent(QPaintEvent* /*event*/) {
    const auto& colours = paletteOf(look_);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours[Role::CardEdge], 1));
    painter.setBrush(colours[Role::CardGround]);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
    qreal y = kPad + face_.linePx(Type::Label) * 0.78;
    painter.setPen(colours[Role::Ink]);
    painter.setFont(face_.font(Type::Label));
    painter.drawText(QPointF(kPad, y), card_.title);
    y += 2 + face_.linePx(Type::Body);
    for (const auto& line : card_.lines) {
        const auto role = line.tone == CardTone::Danger    ? Role::Danger
                          : line.tone == CardTone::Caution ? Role::Caution
                                                           : Role::Ink;
        painter.setFont(face_.font(Type::Body));
        painter.setPen(colours[line.value.isEmpty() ? role : Role::InkSoft]);
        painter.drawText(QPointF(kPad, y), line.name);
        painter.setFont(face_.font(Type::Strong));
        painter.setPen(colours[role]);
        painter.drawText(QPointF(kPad + names_ + kBetween, y), line.value);
        painter.setFont(face_.font(Type::Small));
        painter.setPen(colours[Role::InkSoft]);
        painter.drawText(QPointF(kPad + names_ + kBetween + values_ + kBetween, y), line.because);
        y += face_.linePx(Type::Body) + 2;
    }
}

}  // namespace tenthday
