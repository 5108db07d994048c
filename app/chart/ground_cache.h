/// @file ground_cache.h  The ground of the days as a picture, kept while it stays as it is: a drag
/// changes what stands on the days and not the days.
#pragma once
#include <QPixmap>

#include "chart/chart_painter.h"

namespace tenthday {

class GroundCache {
public:
    /// Paints page and ground; anew only where axis, chosen day, size or pixel ratio changed them.
    void paint(QPainter& painter, const ChartPainter& by, const Layout& layout, QSize size,
               qreal pixelRatio);
    /// Colours have changed.
    void forget() { picture_ = {}; }
    /// How often it was painted anew.
    [[nodiscard]] int timesMade() const { return made_; }

private:
    QPixmap picture_;
    std::vector<Item> of_;
    int made_ = 0;
};

}  // namespace tenthday
