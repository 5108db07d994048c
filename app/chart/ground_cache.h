/// @file ground_cache.h  The ground of the days as a picture, kept while it stays as it is: a drag
/// changes what stands on the days and not the days. While the days themselves move they are
/// painted straight: nothing would be gained by keeping them.
#pragma once
#include <QPixmap>

#include "chart/chart_painter.h"

namespace tenthday {

class GroundCache {
public:
    /// Paints page and ground, as far as the painter is not clipped; out of the kept picture where
    /// there is one of them, and always where pixels are no whole logical ones.
    void paint(QPainter& painter, const ChartPainter& by, const Layout& layout, QSize size,
               qreal pixelRatio);
    /// The ground painted last is kept as a picture.
    [[nodiscard]] bool isKept() const { return isMade_; }
    /// Makes that picture: takes a while, so when nobody waits for a frame. @param layout  that was
    /// painted last; with another ground than that nothing is made
    void keep(const ChartPainter& by, const Layout& layout);
    /// Colours have changed.
    void forget() { isMade_ = false; }
    /// How often the picture that is kept was made.
    [[nodiscard]] int timesMade() const { return made_; }

private:
    QPixmap picture_;
    bool isMade_ = false;  ///< of what stands below
    std::vector<Item> of_;
    QSize page_;  ///< logical px
    QSize wanted_;
    qreal pixelRatio_ = 0;
    int made_ = 0;
};

}  // namespace tenthday
