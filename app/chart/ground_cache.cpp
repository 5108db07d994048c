#include "chart/ground_cache.h"

#include <algorithm>

namespace tenthday {

void GroundCache::paint(QPainter& painter, const ChartPainter& by, const Layout& layout, QSize size,
                        qreal pixelRatio) {
    const auto ground = groundItems(layout);
    const QSize wanted = (QSizeF(size) * pixelRatio).toSize();
    if (picture_.size() != wanted || picture_.devicePixelRatio() != pixelRatio ||
        !std::equal(ground.begin(), ground.end(), of_.begin(), of_.end())) {
        picture_ = QPixmap(wanted);
        picture_.setDevicePixelRatio(pixelRatio);
        QPainter onPicture(&picture_);
        by.paintGround(onPicture, layout, QRectF(QPointF(), QSizeF(size)));
        of_.assign(ground.begin(), ground.end());
        ++made_;
    }
    painter.drawPixmap(0, 0, picture_);
}

}  // namespace tenthday
