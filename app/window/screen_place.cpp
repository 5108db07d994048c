#include "window/screen_place.h"

namespace tenthday {
namespace {

qint64 areaOf(const QRect& rect) {
    return rect.isEmpty() ? 0 : qint64{rect.width()} * rect.height();
}

QRect screenOf(const QRect& wanted, const QList<QRect>& screens) {
    QRect best = screens.front();
    for (const auto& screen : screens)
        if (areaOf(screen & wanted) > areaOf(best & wanted)) best = screen;
    return best;
}

}  // namespace

QRect placeOnScreen(const QRect& wanted, const QList<QRect>& screens) {
    constexpr QSize kComfortable{1280, 800};
    const auto screen = wanted.isEmpty() ? screens.front() : screenOf(wanted, screens);
    const auto room = screen.size() - kFrameRoom;
    const auto size = (wanted.isEmpty() ? kComfortable : wanted.size())
                          .expandedTo(kSmallestWindow)
                          .boundedTo(room);
    const auto outer = size + kFrameRoom;
    QPoint corner = wanted.topLeft();
    if (wanted.isEmpty())
        corner = screen.topLeft() + QPoint((screen.width() - outer.width()) / 2,
                                           (screen.height() - outer.height()) / 2);
    const int right = screen.x() + screen.width() - outer.width();
    const int bottom = screen.y() + screen.height() - outer.height();
    return {QPoint(qBound(screen.x(), corner.x(), qMax(screen.x(), right)),
                   qBound(screen.y(), corner.y(), qMax(screen.y(), bottom))),
            size};
}

}  // namespace tenthday
