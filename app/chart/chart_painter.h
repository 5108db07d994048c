/// @file chart_painter.h  Paints a layout in a palette, on anything a QPainter paints on.
#pragma once
#include <QPainter>

#include "chart/chart_item.h"
#include "look/palette.h"

namespace tenthday {

/// Uses no clip, no pixmap and no pattern: window, picture, paper and vector file look the same.
class ChartPainter {
public:
    ChartPainter(const Palette& palette, const Typeface& face);
    /// The painter's units are the layout's logical px. Its state is left as found.
    void paint(QPainter& painter, const Layout& layout, const QRectF& page) const;

private:
    void paintItem(QPainter& painter, const Layout& layout, const Item& item) const;

    const Palette& palette_;
    std::array<QFont, kTypeCount> fonts_;
};

}  // namespace tenthday
