#include "chart/chart_painter.h"

#include <QFontMetricsF>
#include <QPaintEngine>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "chart/changed_area.h"

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

constexpr qreal kDottedStep = 4.5;

void paintDotted(QPainter& painter, const Item& item, const QColor& colour) {
    QList<QPointF> dots;
    for (qreal x = item.rect.left() + item.pen / 2; x <= item.rect.right(); x += kDottedStep)
        dots.append({x, item.rect.center().y()});
    paintDots(painter, dots, item.pen, colour);
}

void paintHatch(QPainter& painter, const Item& item, const QColor& colour) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, item.pen, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(hatchLines(item.rect, item.spacing, item.slope));
}

void paintGlyph(QPainter& painter, Glyph glyph, QPointF centre, qreal size, const QColor& colour) {
    painter.setRenderHint(QPainter::Antialiasing);
    const auto shape = glyphPath(glyph, centre, size);
    if (isFilled(glyph)) return painter.fillPath(shape, colour);
    painter.strokePath(shape, QPen(colour, size / 6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

constexpr int kTileWidth = 512;  ///< device px, at least

/// Pixel on pixel: in logical px a tile's place would be rounded to whole ones.
/// @param from  the pixel of the tile that comes first
void putTiles(QPainter& painter, const QRect& pixels, const QPixmap& tile, qreal ratio,
              QPoint from = {}) {
    const auto before = painter.worldTransform();
    painter.setRenderHint(QPainter::Antialiasing, false);
    if (ratio != 1) painter.setWorldTransform(QTransform::fromScale(1 / ratio, 1 / ratio) * before);
    painter.drawTiledPixmap(pixels, tile, from);
    if (ratio != 1) painter.setWorldTransform(before);
}

/// As wide as many periods: tiles are put line by line, and short pieces would cost most of the
/// time.
int periodsInTile(int pixels) { return (kTileWidth + pixels - 1) / pixels; }

/// Dots in their middle, all across.
void paintDotTile(QPainter& painter, const Item& item, int pixels, qreal pixelRatio,
                  const QColor& colour) {
    painter.scale(pixelRatio, pixelRatio);
    const int middle = pixels / 2;  // where a whole pixel begins, as on the plane
    const qreal centre = middle / pixelRatio;
    QList<QPointF> dots;
    for (int i = 0; i < periodsInTile(pixels); ++i)
        dots.append({centre + i * item.spacing, centre});
    paintDots(painter, dots, item.pen, colour);
}

/// Lines through the tile's corners and on beyond them, so that what comes in from a neighbour is
/// there too.
void paintHatchTile(QPainter& painter, const Item& item, int pixels, qreal pixelRatio,
                    const QColor& colour) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, item.pen * pixelRatio, Qt::SolidLine, Qt::FlatCap));
    const int rise = item.slope == Slope::Rising ? -pixels : pixels;
    for (int i = -2; i <= periodsInTile(pixels) + 1; ++i) {
        const QPointF corner(i * pixels, item.slope == Slope::Rising ? pixels : 0);
        const QPointF step(pixels, rise);
        painter.drawLine(QLineF(corner - step, corner + 2 * step));
    }
}

/// What a tile hangs on, in one number.
quint64 tileName(const Item& item, int pixels, qreal pixelRatio) {
    quint64 name = static_cast<quint64>(item.role);
    name = name << 2 | (item.shape == Shape::Hatch ? 2U : 0U) |
           (item.slope == Slope::Falling ? 1U : 0U);
    name = name << 12 | static_cast<quint64>(pixels);
    name = name << 12 | static_cast<quint64>(qRound(item.pen * 64));
    return name << 12 | static_cast<quint64>(qRound(pixelRatio * 64));
}

/// What a text takes about its first pen place, signs of other fonts and overhang as well.
QRectF wordsRect(const QString& text, const QFont& font) {
    const QFontMetricsF metrics(font);
    const QRectF line(0, -metrics.ascent(), metrics.horizontalAdvance(text), metrics.height());
    return line.united(metrics.boundingRect(text));
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

namespace {

bool meet(const QRectF& a, const QRectF& b) {
    return a.left() < b.right() && b.left() < a.right() && a.top() < b.bottom() &&
           b.top() < a.bottom();
}

}  // namespace

void ChartPainter::paintOverGround(QPainter& painter, const Layout& layout,
                                   const QRegion& within) const {
    struct Piece {
        QRectF rect;
        std::vector<const Item*> items;
    };
    std::vector<Piece> pieces;
    for (const auto& rect : within) pieces.push_back({rect, {}});
    const QRectF about = within.boundingRect();
    for (const auto& item : Items(layout.items).subspan(groundItems(layout).size())) {
        const auto reach = reachOf(item);
        if (!meet(reach, about)) continue;
        for (auto& piece : pieces)
            if (meet(reach, piece.rect)) piece.items.push_back(&item);
    }
    painter.save();
    for (const auto& piece : pieces) {
        painter.setClipRect(piece.rect);
        for (const auto* item : piece.items) paintItem(painter, layout, *item);
    }
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
            return paintHatch(painter, item);
        case Shape::Dots:
            return paintDots(painter, item);
        case Shape::Dotted:
            return paintDotted(painter, item);
        case Shape::Path:
            painter.setRenderHint(QPainter::Antialiasing);
            return painter.fillPath(layout.paths[detail], colour);
        case Shape::Stroke:
            painter.setRenderHint(QPainter::Antialiasing);
            return painter.strokePath(layout.paths[detail], QPen(colour, item.pen, Qt::SolidLine,
                                                                 Qt::RoundCap, Qt::RoundJoin));
        case Shape::Glyph:
            return paintGlyph(painter, item);
        case Shape::Text:
            return paintText(painter, layout.texts[detail], item.role);
    }
}

void ChartPainter::paintDots(QPainter& painter, const Item& item) const {
    const auto dots = dotGrid(item.rect, item.spacing, item.pen / 2);
    if (dots.isEmpty()) return;
    const qreal ratio = painter.device()->devicePixelRatioF();
    const int pixels = qRound(item.spacing * ratio);
    // Dots are counted out into their place: they must not drift.
    if (!makesPixels(painter) || pixels != item.spacing * ratio)
        return tenthday::paintDots(painter, dots, item.pen, palette_[item.role]);
    const QPoint half(pixels / 2, pixels / 2);
    const QPoint first = (dots.front() * ratio).toPoint() - half;
    const QPoint last = (dots.back() * ratio).toPoint() - half;
    putTiles(painter, QRect(first, last + QPoint(pixels - 1, pixels - 1)),
             tileOf(item, pixels, ratio), ratio);
}

/// A row of the same tiles as a grid of dots: the first dot where it is asked for.
void ChartPainter::paintDotted(QPainter& painter, const Item& item) const {
    const qreal ratio = painter.device()->devicePixelRatioF();
    const int pixels = qRound(kDottedStep * ratio);
    if (!makesPixels(painter)) return tenthday::paintDotted(painter, item, palette_[item.role]);
    Item grid = item;
    grid.shape = Shape::Dots;
    grid.spacing = pixels / ratio;
    const QPointF first(item.rect.left() + item.pen / 2, item.rect.center().y());
    const qreal room = item.rect.right() - first.x();
    if (room < 0) return;
    const int count = static_cast<int>(room * ratio / pixels) + 1;
    const QPoint corner = (first * ratio).toPoint() - QPoint(pixels / 2, pixels / 2);
    putTiles(painter, QRect(corner, QSize(count * pixels, pixels)), tileOf(grid, pixels, ratio),
             ratio);
}

/// Where pixels are made each is painted once, and put on whole ones.
void ChartPainter::paintGlyph(QPainter& painter, const Item& item) const {
    const auto glyph = static_cast<Glyph>(item.detail);
    const auto& colour = palette_[item.role];
    const qreal size = item.rect.width();
    if (!makesPixels(painter))
        return tenthday::paintGlyph(painter, glyph, item.rect.center(), size, colour);
    const qreal ratio = painter.device()->devicePixelRatioF();
    const int half = static_cast<int>(std::ceil(size * ratio / 2)) + 2;  // strokes reach beyond
    quint64 name = static_cast<quint64>(item.role) << 8 | static_cast<quint64>(item.detail);
    name = name << 16 | static_cast<quint64>(qRound(size * 64));
    auto& made = glyphs_[name << 12 | static_cast<quint64>(qRound(ratio * 64))];
    if (made.isNull()) {
        made = QPixmap(2 * half, 2 * half);
        made.fill(Qt::transparent);
        made.setDevicePixelRatio(ratio);
        QPainter on(&made);
        tenthday::paintGlyph(on, glyph, QPointF(half, half) / ratio, size, colour);
    }
    const QPoint corner = (item.rect.center() * ratio).toPoint() - QPoint(half, half);
    painter.drawPixmap(QPointF(corner) / ratio, made);
}

/// Where pixels are made its lines come at whole ones, each like the others: the nearest to their
/// spacing.
void ChartPainter::paintHatch(QPainter& painter, const Item& item) const {
    const qreal ratio = painter.device()->devicePixelRatioF();
    const int pixels = qRound(item.spacing * std::numbers::sqrt2 * ratio);
    if (!makesPixels(painter) || pixels < 2)
        return tenthday::paintHatch(painter, item, palette_[item.role]);
    const QPoint first = (item.rect.topLeft() * ratio).toPoint();
    const QPoint end = (item.rect.bottomRight() * ratio).toPoint();
    const auto& tile = tileOf(item, pixels, ratio);
    const auto within = [](int pixel, int size) { return (pixel % size + size) % size; };
    putTiles(painter, QRect(first, end - QPoint(1, 1)), tile, ratio,
             {within(first.x(), tile.width()), within(first.y(), tile.height())});
}

const QPixmap& ChartPainter::tileOf(const Item& item, int pixels, qreal pixelRatio) const {
    auto& tile = tiles_[tileName(item, pixels, pixelRatio)];
    if (!tile.isNull()) return tile;
    tile = QPixmap(periodsInTile(pixels) * pixels, pixels);
    tile.fill(Qt::transparent);
    QPainter painter(&tile);
    const auto paint = item.shape == Shape::Hatch ? paintHatchTile : paintDotTile;
    paint(painter, item, pixels, pixelRatio, palette_[item.role]);
    return tile;
}

void ChartPainter::paintText(QPainter& painter, const TextRun& text, Role role) const {
    if (!makesPixels(painter)) {
        painter.setPen(palette_[role]);
        painter.setFont(fonts_[static_cast<std::size_t>(text.type)]);
        return painter.drawText(text.baseline, text.text);
    }
    const qreal ratio = painter.device()->devicePixelRatioF();
    const auto& words = wordsOf(text, role, ratio);
    const QPoint corner = (text.baseline * ratio).toPoint() - words.start;
    painter.drawPixmap(QPointF(corner) / ratio, words.pixels);
}

/// The same words stand in picture after picture: shaping and blending each letter would take most
/// of the time.
const ChartPainter::Words& ChartPainter::wordsOf(const TextRun& text, Role role,
                                                 qreal pixelRatio) const {
    // A season holds some hundred words; a card's sentences are ever new ones.
    constexpr qint64 kMostPixels = 4'000'000;
    if (wordPixels_ > kMostPixels) words_.clear(), wordPixels_ = 0;
    quint64 name = static_cast<quint64>(text.type) << 16 | static_cast<quint64>(role);
    name = name << 16 | static_cast<quint64>(qRound(pixelRatio * 64));
    auto& made = words_[{text.text, name}];
    if (!made.pixels.isNull()) return made;
    const auto& font = fonts_[static_cast<std::size_t>(text.type)];
    const auto takes = wordsRect(text.text, font);
    const auto room = QRectF(takes.topLeft() * pixelRatio, takes.size() * pixelRatio)
                          .toAlignedRect()
                          .adjusted(-1, -1, 1, 1);
    made.pixels = QPixmap(room.size());
    wordPixels_ += qint64{room.width()} * room.height();
    made.pixels.fill(Qt::transparent);
    made.pixels.setDevicePixelRatio(pixelRatio);
    made.start = -room.topLeft();
    QPainter on(&made.pixels);
    on.setPen(palette_[role]);
    on.setFont(font);
    on.drawText(QPointF(made.start) / pixelRatio, text.text);
    return made;
}

}  // namespace tenthday
