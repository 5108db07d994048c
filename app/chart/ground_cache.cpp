#include "chart/ground_cache.h"

#include <algorithm>
#include <cmath>

namespace tenthday {

void GroundCache::paint(QPainter& painter, const ChartPainter& by, const Layout& layout, QSize size,
                        qreal pixelRatio) {
    const auto ground = groundItems(layout);
    const QRectF page{QPointF{}, QSizeF(size)};
    const QSize wanted = (QSizeF(size) * pixelRatio).toSize();
    const bool isSame = wanted == wanted_ && pixelRatio == pixelRatio_ &&
                        std::equal(ground.begin(), ground.end(), of_.begin(), of_.end());
    if (!isSame) {
        of_.assign(ground.begin(), ground.end());
        wanted_ = wanted;
        pixelRatio_ = pixelRatio;
        isMade_ = false;
        // Between device pixels the picture and what is painted straight would round to others.
        if (std::floor(pixelRatio) == pixelRatio) return by.paintGround(painter, layout, page);
    }
    if (!isMade_) {
        if (picture_.size() != wanted) picture_ = QPixmap(wanted);
        picture_.setDevicePixelRatio(pixelRatio);
        QPainter onPicture(&picture_);
        by.paintGround(onPicture, layout, page);
        isMade_ = true;
        ++made_;
    }
    painter.drawPixmap(0, 0, picture_);
}

}  // namespace tenthday
