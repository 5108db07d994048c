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
        page_ = size;
        wanted_ = wanted;
        pixelRatio_ = pixelRatio;
        isMade_ = false;
    }
    // Between device pixels the picture and what is painted straight would round to others.
    if (!isMade_ && std::floor(pixelRatio) != pixelRatio) keep(by, layout);
    if (!isMade_) return by.paintGround(painter, layout, page);
    painter.drawPixmap(0, 0, picture_);
}

void GroundCache::keep(const ChartPainter& by, const Layout& layout) {
    const auto ground = groundItems(layout);
    if (!std::equal(ground.begin(), ground.end(), of_.begin(), of_.end())) return;
    if (picture_.size() != wanted_) picture_ = QPixmap(wanted_);
    picture_.setDevicePixelRatio(pixelRatio_);
    QPainter onPicture(&picture_);
    by.paintGround(onPicture, layout, QRectF{QPointF{}, QSizeF(page_)});
    isMade_ = true;
    ++made_;
}

}  // namespace tenthday
