/// @file chart_painter.h  Paints a layout in a palette, on anything a QPainter paints on.
#pragma once
#include <QHash>
#include <QPainter>
#include <QPixmap>
#include <span>

#include "chart/chart_item.h"
#include "look/palette.h"

namespace tenthday {

/// Window, picture, paper and vector file look the same. Where pixels are made, dots,
/// hatches, glyphs and words are painted once each and put on whole pixels: only faster.
class ChartPainter {
public:
    ChartPainter(const Palette& palette, const Typeface& face);
    /// The painter's units are the layout's logical px. Its state is left as found.
    void paint(QPainter& painter, const Layout& layout, const QRectF& page) const;
    /// The same in two parts: page and Layer::Ground, then all that lies over them.
    void paintGround(QPainter& painter, const Layout& layout, const QRectF& page) const;
    void paintOverGround(QPainter& painter, const Layout& layout) const;
    /// Only what lies within a region, piece by piece: clipped to one rectangle, words and hatches
    /// are still put as they are.
    void paintOverGround(QPainter& painter, const Layout& layout, const QRegion& within) const;

private:
    /// A text in one colour, painted once.
    struct Words {
        QPixmap pixels;
        QPoint start;  ///< its first pen place, in the pixels
    };
    using Items = std::span<const Item>;
    void paintItems(QPainter& painter, const Layout& layout, Items items) const;
    void paintItem(QPainter& painter, const Layout& layout, const Item& item) const;
    void paintDots(QPainter& painter, const Item& item) const;
    void paintDotted(QPainter& painter, const Item& item) const;
    void paintHatch(QPainter& painter, const Item& item) const;
    void paintGlyph(QPainter& painter, const Item& item) const;
    void paintText(QPainter& painter, const TextRun& text, Role role) const;
    [[nodiscard]] const QPixmap& tileOf(const Item& item, int pixels, qreal pixelRatio) const;
    [[nodiscard]] const Words& wordsOf(const TextRun& text, Role role, qreal pixelRatio) const;

    const Palette& palette_;
    mutable QHash<quint64, QPixmap> tiles_;
    mutable QHash<quint64, QPixmap> glyphs_;
    mutable QHash<std::pair<QString, quint64>, Words> words_;  ///< by text and what it hangs on
    mutable qint64 wordPixels_ = 0;                            ///< of all words
    std::array<QFont, kTypeCount> fonts_;
};

/// The items of Layer::Ground: the first of a layout.
[[nodiscard]] std::span<const Item> groundItems(const Layout& layout);

}  // namespace tenthday
