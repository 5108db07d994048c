#include "chart/chart_painter.h"

#include <algorithm>

namespace tenthday {
namespace {

void paintFrame(QPainter& painter, const Item& item, const QColor& colour) {
    const qreal half = item.pen / 2;
    const auto edge = item.rect.adjusted(half, half, -half, -half);
    painter.setRenderHint(QPainter::Antialiasing, item.radius > 0);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, item.pen, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawRoundedRect(edge, item.radius, item.radius);
}

void paintFill(QPainter& painter, const Item& item, const QColor& colour) {
    painter.setRenderHint(QPainter::Antialiasing, item.radius > 0);
    if (item.radius <= 0) return painter.fillRect(item.rect, colour);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRoundedRect(item.rect, item.radius, item.radius);
}

void paintDots(QPainter& painter, const QList<QPointF>& dots, qreal across, const QColor& colour) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (const auto& dot : dots) path.addEllipse(dot, across / 2, across / 2);
    painter.drawPath(path);
}

void paintDotted(QPainter& painter, const Item& item, const QColor& colour) {
    constexpr qreal kStep = 4.5;
    QList<QPointF> dots;
    for (qreal x = item.rect.left() + item.pen / 2; x <= item.rect.right(); x += kStep)
        dots.append({x, item.rect.center().y()});
    paintDots(painter, dots, item.pen, colour);
}

void paintHatch(QPainter& painter, const Item& item, const QColor& colour) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, item.pen, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(hatchLines(item.rect, item.spacing, item.slope));
}

}  // namespace

ChartPainter::ChartPainter(const Palette& palette, const Typeface& face) : palette_(palette) {
    for (std::size_t i = 0; i < kTypeCount; ++i) fonts_[i] = face.font(static_cast<Type>(i));
}

void ChartPainter::paint(QPainter& painter, const Layout& layout, const QRectF& page) const {
    paintGround(painter, layout, page);
    paintOverGround(painter, layout);
}

void ChartPainter::paintGround(QPainter& painter, const Layout& layout, const QRectF& page) const {
    painter.save();
    painter.fillRect(page, palette_[Role::Ground]);
    paintItems(painter, layout, groundItems(layout));
    painter.restore();
}

void ChartPainter::paintOverGround(QPainter& painter, const Layout& layout) const {
    painter.save();
    paintItems(painter, layout, Items(layout.items).subspan(groundItems(layout).size()));
    painter.restore();
}

void ChartPainter::paintItems(QPainter& painter, const Layout& layout, Items items) const {
    for (const auto& item : items) paintItem(painter, layout, item);
}

std::span<const Item> groundItems(const Layout& layout) {
    const auto end = std::find_if(layout.items.begin(), layout.items.end(),
                                  [](const Item& item) { return item.layer != Layer::Ground; });
    return {layout.items.begin(), end};
}

void ChartPainter::paintItem(QPainter& painter, const Layout& layout, const Item& item) const {
    const auto& colour = palette_[item.role];
    const auto detail = static_cast<std::size_t>(item.detail);
    switch (item.shape) {
        case Shape::Fill:
            return paintFill(painter, item, colour);
        case Shape::Frame:
            return paintFrame(painter, item, colour);
        case Shape::Hatch:
            return paintHatch(painter, item, colour);
        case Shape::Dots:
            return paintDots(painter, dotGrid(item.rect, item.spacing, item.pen / 2), item.pen,
                             colour);
        case Shape::Dotted:
            return paintDotted(painter, item, colour);
        case Shape::Path:
            painter.setRenderHint(QPainter::Antialiasing);
            return painter.fillPath(layout.paths[detail], colour);
        case Shape::Stroke:
            painter.setRenderHint(QPainter::Antialiasing);
            return painter.strokePath(layout.paths[detail], QPen(colour, item.pen, Qt::SolidLine,
                                                                 Qt::RoundCap, Qt::RoundJoin));
        case Shape::Text: {
            const auto& text = layout.texts[detail];
            painter.setPen(colour);
            painter.setFont(fonts_[static_cast<std::size_t>(text.type)]);
            return painter.drawText(text.baseline, text.text);
        }
    }
}

}  // namespace tenthday
