#include "chart/hover_card.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "chart/sheet.h"

namespace tenthday {
namespace {

constexpr qreal kPad = 10;
constexpr qreal kBetween = 12;
constexpr int kFromPointer = 16;

}  // namespace

HoverCard::HoverCard(QWidget* parent) : QWidget(parent) {
    setLook(Look::Light, systemTypeface());
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    hide();
}

void HoverCard::setLook(Look look, const Typeface& face) {
    ruler_ = std::make_unique<FontRuler>(face);
    painter_ = std::make_unique<ChartPainter>(paletteOf(look), face);
    update();
}

HoverCard::Columns HoverCard::columns() const {
    Columns columns;
    for (const auto& line : card_.lines) {
        if (line.value.isEmpty() && line.because.isEmpty()) {  // runs over all columns
            columns.sentence = std::max(columns.sentence, ruler_->width(line.name, Type::Body));
            continue;
        }
        columns.names = std::max(columns.names, ruler_->width(line.name, Type::Body));
        columns.values = std::max(columns.values, ruler_->width(line.value, Type::Strong));
        columns.because = std::max(columns.because, ruler_->width(line.because, Type::Small));
    }
    return columns;
}

QSize HoverCard::wantedSize() const {
    const auto [names, values, because, sentence] = columns();
    const qreal table = names + kBetween + values + (because > 0 ? kBetween + because : 0);
    const qreal width =
        std::max({ruler_->width(card_.title, Type::Label), table, sentence}) + 2 * kPad;
    const qreal height = 2 * kPad + ruler_->line(Type::Label) + 2 +
                         static_cast<qreal>(card_.lines.size()) * (ruler_->line(Type::Body) + 2);
    return {static_cast<int>(std::ceil(width)), static_cast<int>(std::ceil(height))};
}

void HoverCard::showCard(const CardText& card, QPointF beside, CardSide side) {
    card_ = card;
    if (card_.title.isEmpty()) return hide();
    resize(wantedSize());
    const auto room = parentWidget()->size();
    const int right = static_cast<int>(beside.x()) + kFromPointer;
    const int left = static_cast<int>(beside.x()) - kFromPointer - width();
    const bool hasRight = right + width() <= room.width() - 4;
    const bool isRight = side == CardSide::Right ? hasRight : left < 4 && hasRight;
    const int x = isRight ? right : left;
    int y = static_cast<int>(beside.y()) + kFromPointer;
    if (y + height() > room.height() - 4)
        y = static_cast<int>(beside.y()) - kFromPointer - height();
    move(std::clamp(x, 4, std::max(4, room.width() - width() - 4)),
         std::clamp(y, 4, std::max(4, room.height() - height() - 4)));
    setAccessibleName(card_.title);
    show();
    raise();
    update();
}

Layout HoverCard::laidOut() const {
    constexpr qreal kCorner = 6;
    const QRectF card(rect());
    Sheet sheet(*ruler_, Snap{devicePixelRatioF()});
    sheet.fill(Layer::Body, Role::CardGround, card.adjusted(0.5, 0.5, -0.5, -0.5), -1, kCorner);
    sheet.frame(Layer::Body, Role::CardEdge, card, 1, kCorner);
    const auto write = [&](Role role, Type type, const QString& text, qreal x, qreal y) {
        sheet.text(Layer::Words, role, type, text, {x, y}, Align::Left);
    };
    const auto widths = columns();
    const qreal values = kPad + widths.names + kBetween;
    qreal y = kPad + ruler_->line(Type::Label) * 0.78;
    write(Role::Ink, Type::Label, card_.title, kPad, y);
    y += 2 + ruler_->line(Type::Body);
    for (const auto& line : card_.lines) {
        const auto role = line.tone == CardTone::Danger    ? Role::Danger
                          : line.tone == CardTone::Caution ? Role::Caution
                                                           : Role::Ink;
        write(line.value.isEmpty() ? role : Role::InkSoft, Type::Body, line.name, kPad, y);
        write(role, Type::Strong, line.value, values, y);
        write(Role::InkSoft, Type::Small, line.because, values + widths.values + kBetween, y);
        y += ruler_->line(Type::Body) + 2;
    }
    return std::move(sheet).finish({}, card, card.height());
}

void HoverCard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter_->paintOverGround(painter, laidOut());
}

}  // namespace tenthday
