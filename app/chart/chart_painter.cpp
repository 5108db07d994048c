#include "chart/chart_painter.h"

#include <QPaintEngine>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <numbers>

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

/// How far a texture's pattern repeats, along and down, in px.
qreal periodOf(const Item& item) {
    return item.shape == Shape::Hatch ? item.spacing * std::numbers::sqrt2 : item.spacing;
}

/// What is left of whole periods: where a point lies in a pattern that hangs on the plane.
int within(int at, int period) { return (at % period + period) % period; }

/// Neighbours that share an edge share it in pixels too.
QRect devicePixels(const QRectF& rect, qreal ratio) {
    const QPoint topLeft(qRound(rect.left() * ratio), qRound(rect.top() * ratio));
    const QPoint past(qRound(rect.right() * ratio), qRound(rect.bottom() * ratio));
    return {topLeft, past - QPoint(1, 1)};
}

/// Pixel on pixel: in logical px a tile's place would be rounded to whole ones.
void putTiles(QPainter& painter, const QRect& pixels, const QPixmap& tile, QPoint into,
              qreal ratio) {
    const auto before = painter.worldTransform();
    painter.setRenderHint(QPainter::Antialiasing, false);
    if (ratio != 1) painter.setWorldTransform(QTransform::fromScale(1 / ratio, 1 / ratio) * before);
    painter.drawTiledPixmap(pixels, tile, into);
    if (ratio != 1) painter.setWorldTransform(before);
}

/// What a tile hangs on, in one number.
quint64 tileName(const Item& item, int pixels, qreal pixelRatio) {
    quint64 name = static_cast<quint64>(item.role);
    name = name << 4 | static_cast<quint64>(item.shape);
    name = name << 1 | static_cast<quint64>(item.slope);
    name = name << 12 | static_cast<quint64>(pixels);
    name = name << 12 | static_cast<quint64>(qRound(item.pen * 64));
    return name << 12 | static_cast<quint64>(qRound(pixelRatio * 64));
}

/// Whether it makes pixels, one to one: there what was painted once can be put again.
bool makesPixels(const QPainter& painter) {
    return painter.paintEngine()->type() == QPaintEngine::Raster &&
           painter.worldTransform().type() <= QTransform::TxTranslate;
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
        case Shape::Dots:
            return paintTexture(painter, item);
        case Shape::Dotted:
            return paintDotted(painter, item, colour);
        case Shape::Path:
            painter.setRenderHint(QPainter::Antialiasing);
            return painter.fillPath(layout.paths[detail], colour);
        case Shape::Stroke:
            painter.setRenderHint(QPainter::Antialiasing);
            return painter.strokePath(layout.paths[detail], QPen(colour, item.pen, Qt::SolidLine,
                                                                 Qt::RoundCap, Qt::RoundJoin));
        case Shape::Text:
            return paintText(painter, layout.texts[detail], colour);
    }
}

void ChartPainter::paintTexture(QPainter& painter, const Item& item) const {
    const auto& colour = palette_[item.role];
    const qreal ratio = painter.device()->devicePixelRatioF();
    const bool isHatch = item.shape == Shape::Hatch;
    const auto dots = isHatch ? QList<QPointF>() : dotGrid(item.rect, item.spacing, item.pen / 2);
    if (!isHatch && dots.isEmpty()) return;
    const int pixels = qRound(periodOf(item) * ratio);
    // Dots are counted out into their place: they must not drift.
    if (!makesPixels(painter) || pixels < 1 || (!isHatch && pixels != item.spacing * ratio))
        return isHatch ? paintHatch(painter, item, colour)
                       : paintDots(painter, dots, item.pen, colour);
    const auto& tile = tileOf(item, pixels, ratio);
    if (isHatch) {
        const auto rect = devicePixels(item.rect, ratio);
        return putTiles(painter, rect, tile,
                        {within(rect.left(), pixels), within(rect.top(), pixels)}, ratio);
    }
    const QPoint half(pixels / 2, pixels / 2);
    const QPoint first = (dots.front() * ratio).toPoint() - half;
    const QPoint last = (dots.back() * ratio).toPoint() - half;
    putTiles(painter, QRect(first, last + QPoint(pixels - 1, pixels - 1)), tile, {}, ratio);
}

const QPixmap& ChartPainter::tileOf(const Item& item, int pixels, qreal pixelRatio) const {
    auto& tile = tiles_[tileName(item, pixels, pixelRatio)];
    if (!tile.isNull()) return tile;
    tile = QPixmap(pixels, pixels);
    tile.fill(Qt::transparent);
    QPainter painter(&tile);
    painter.scale(pixelRatio, pixelRatio);
    if (item.shape == Shape::Dots) {
        const qreal centre =
            pixels / 2 / pixelRatio;  // where a whole pixel begins, as on the plane
        paintDots(painter, {{centre, centre}}, item.pen, palette_[item.role]);
    } else {
        const qreal side = pixels / pixelRatio;
        auto around = item;  // one period more on each side: ends of lines lie outside
        around.rect = QRectF(-side, -side, 3 * side, 3 * side);
        around.spacing = side / std::numbers::sqrt2;
        paintHatch(painter, around, palette_[item.role]);
    }
    return tile;
}

void ChartPainter::paintText(QPainter& painter, const TextRun& text, const QColor& colour) const {
    const auto type = static_cast<std::size_t>(text.type);
    painter.setPen(colour);
    painter.setFont(fonts_[type]);
    if (!makesPixels(painter)) return painter.drawText(text.baseline, text.text);
    const auto& words = shaped(text);
    painter.drawStaticText(text.baseline - QPointF(0, words.ascent), words.text);
}

/// Shaped once for each text: the same words stand in picture after picture.
const ChartPainter::Shaped& ChartPainter::shaped(const TextRun& text) const {
    constexpr qsizetype kMost = 4000;  // a season holds some hundred words
    constexpr qreal kWideEnough = 1e5;
    const auto type = static_cast<std::size_t>(text.type);
    auto& known = shaped_[type];
    if (known.size() > kMost) known.clear();
    auto& made = known[text.text];
    if (!made.text.text().isEmpty()) return made;
    made.text.setTextFormat(Qt::PlainText);
    made.text.setText(text.text);
    made.text.setPerformanceHint(QStaticText::AggressiveCaching);
    made.text.prepare({}, fonts_[type]);
    QTextLayout layout(text.text, fonts_[type]);
    layout.beginLayout();
    auto line = layout.createLine();
    line.setLineWidth(kWideEnough);
    layout.endLayout();
    made.ascent = line.ascent();
    return made;
}

}  // namespace tenthday
