/// @file page.h  A page laid out: marks in points from its top left corner.
#pragma once
#include <QRectF>
#include <QString>
#include <vector>

#include "sheets/paper.h"

namespace tenthday {

/// Black on white, or white on black; nothing grey.
struct Mark {
    enum class Shape : std::uint8_t {
        Text,       ///< black; rect is what it takes, baseline at its foot
        WhiteText,  ///< on a black bar
        Fill,       ///< black
        Frame,      ///< its inner edge, `pen` wide
        Line,       ///< along the rect's foot, `pen` wide
        Tick,       ///< a tick over the rect
    };
    Shape shape{};
    QRectF rect;
    QString text;
    Print type{};
    qreal pen = 0;
};

struct Page {
    std::vector<Mark> marks;
};

}  // namespace tenthday
