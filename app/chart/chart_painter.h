/// @file chart_painter.h  Paints a layout in a palette, on anything a QPainter paints on.
#pragma once
#include <QHash>
#include <QPainter>
#include <QStaticText>
#include <span>

#include "chart/chart_item.h"
#include "look/palette.h"

namespace tenthday {

/// Window, picture, paper and vector file look the same. Where pixels are made, dots,
/// hatches and glyphs are put as tiles of whole pixels and words are shaped once: only faster.
class ChartPainter {
public:
    ChartPainter(const Palette& palette, const Typeface& face);
    /// The painter's units are the layout's logical px. Its state is left as found.
    void paint(QPainter& painter, const Layout& layout, const QRectF& page) const;
    /// The same in two parts: page and Layer::Ground, then all that lies over them.
    void paintGround(QPainter& painter, const Layout& layout, const QRectF& page) const;
    void paintOverGround(QPainter& painter, const Layout& layout) const;

private:
    struct Shaped {
        QStaticText text;
        qreal ascent = 0;  ///< of its line: signs of another font may stand higher
    };
    using Items = std::span<const Item>;
    void paintItems(QPainter& painter, const Layout& layout, Items items) const;
    void paintItem(QPainter& painter, const Layout& layout, const Item& item) const;
    void paintDots(QPainter& painter, const Item& item) const;
    void paintDotted(QPainter& painter, const Item& item) const;
    void paintHatch(QPainter& painter, const Item& item) const;
    void paintGlyph(QPainter& painter, const Item& item) const;
    void paintText(QPainter& painter, const TextRun& text, const QColor& colour) const;
    [[nodiscard]] const QPixmap& tileOf(const Item& item, int pixels, qreal pixelRatio) const;
    [[nodiscard]] const Shaped& shaped(const TextRun& text) const;

    const Palette& palette_;
    mutable QHash<quint64, QPixmap> tiles_;
    mutable QHash<quint64, QPixmap> glyphs_;
    mutable std::array<QHash<QString, Shaped>, kTypeCount> shaped_;
    std::array<QFont, kTypeCount> fonts_;
};

/// The items of Layer::Ground: the first of a layout.
[[nodiscard]] std::span<const Item> groundItems(const Layout& layout);

}  // namespace tenthday
