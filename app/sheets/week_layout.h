/// @file week_layout.h  A week's content gets its places on pages. Pure: no printer.
#pragma once
#include <QRectF>
#include <QString>
#include <vector>

#include "sheets/paper.h"
#include "sheets/week_content.h"

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

/// Rows are never split, a head never stands alone at a page's foot, nothing is cut: what is too
/// long is broken into lines. At least one page.
[[nodiscard]] std::vector<Page> layOutWeek(const WeekContent& week, Paper paper,
                                           const PaperRuler& ruler);

}  // namespace tenthday
