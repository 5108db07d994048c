/// @file ground_cache.h  The ground of the days as a picture, kept while it stays as it is: a drag
/// changes what stands on the days and not the days. While the days themselves move, from one
/// picture to the next, they are painted straight: nothing would be gained by keeping them.
#pragma once
#include <QPixmap>

#include "chart/chart_painter.h"

namespace tenthday {

class GroundCache {
public:
    /// Paints page and ground; out of the kept picture from the second time on that axis, chosen
    /// day, size and pixel ratio are the same, and always where pixels are no whole logical ones.
    void paint(QPainter& painter, const ChartPainter& by, const Layout& layout, QSize size,
               qreal pixelRatio);
    /// Colours have changed.
    void forget() { isMade_ = false; }
    /// How often the picture that is kept was made.
    [[nodiscard]] int timesMade() const { return made_; }

private:
    QPixmap picture_;
    bool isMade_ = false;  ///< of what stands below
    std::vector<Item> of_;
    QSize wanted_;
    qreal pixelRatio_ = 0;
    int made_ = 0;
};

}  // namespace tenthday
