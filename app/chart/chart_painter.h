/// @file chart_painter.h  Paints a layout in a palette, on anything a QPainter paints on.
#pragma once
#include <QPainter>
#include <span>

#include "chart/chart_item.h"
#include "look/palette.h"

namespace tenthday {

/// Uses no clip, no pixmap and no pattern: window, picture, paper and vector file look the same.
class ChartPainter {
public:
    ChartPainter(const Palette& palette, const Typeface& face);
    /// The painter's units are the layout's logical px. Its state is left as found.
    void paint(QPainter& painter, const Layout& layout, const QRectF& page) const;
    /// The same in two parts: page and Layer::Ground, then all that lies over them.
    void paintGround(QPainter& painter, const Layout& layout, const QRectF& page) const;
    void paintOverGround(QPainter& painter, const Layout& layout) const;

private:
    using Items = std::span<const Item>;
    void paintItems(QPainter& painter, const Layout& layout, Items items) const;
    void paintItem(QPainter& painter, const Layout& layout, const Item& item) const;

    const Palette& palette_;
    std::array<QFont, kTypeCount> fonts_;
};

/// The items of Layer::Ground: the first of a layout.
[[nodiscard]] std::span<const Item> groundItems(const Layout& layout);

}  // namespace tenthday
