#include "sheets/look_grid.h"

#include <algorithm>

#include "screen_text/sheet_text.h"

namespace tenthday {
namespace {

const qreal kLeft = millimetres(8);
const qreal kHeight = millimetres(9);
constexpr qreal kWidestName = 90;

/// Boxes of one line.
struct GridLine {
    const WeekRoom& room;
    const LookGrid& grid;
    std::size_t from;
    std::size_t to;
    qreal cell;
    qreal sideNames;

    [[nodiscard]] qreal leftOf(std::size_t box) const {
        return kLeft + sideNames + static_cast<qreal>(box - from) * cell;
    }
    [[nodiscard]] QStringList sides() const {
        QStringList sides;
        for (std::size_t i = from; i < to; ++i)
            for (const auto& side : grid.boxes[i].sides)
                if (!sides.contains(side)) sides += side;
        std::sort(sides.begin(), sides.end());
        return sides;
    }

    void putSide(Piece& piece, const QString& side, qreal y) const {
        const auto& ruler = room.ruler;
        if (side != QStringLiteral("-"))
            piece.text(ruler, Print::SmallStrong, side, kLeft,
                       y + (kHeight - ruler.ascent(Print::SmallStrong)) / 2 - 1);
        for (std::size_t i = from; i < to; ++i) {
            if (!grid.boxes[i].sides.contains(side)) continue;
            const QRectF rect(leftOf(i), y, cell - 3, kHeight);
            piece.frame(rect, kThin);
            piece.textAbout(ruler, Print::Small, sheet_text::circles(), rect.center().x(),
                            rect.center().y() - ruler.ascent(Print::Small) / 2 - 1);
        }
    }

    [[nodiscard]] Piece lay() const {
        const auto& ruler = room.ruler;
        Piece piece;
        qreal y = 2;
        for (std::size_t i = from; i < to; ++i)
            piece.textAbout(
                ruler, Print::SmallStrong,
                ruler.atMost(1, grid.boxes[i].name, Print::SmallStrong, cell - 4).value(0),
                leftOf(i) + cell / 2, y);
        y += ruler.line(Print::SmallStrong);
        for (const auto& side : sides()) {
            putSide(piece, side, y);
            y += kHeight + 3;
        }
        piece.height = y + 2;
        return piece;
    }
};

}  // namespace

std::vector<Piece> gridLines(const WeekRoom& room, const LookGrid& grid) {
    qreal cell = room.ruler.width(sheet_text::circles(), Print::Small) + 10;
    for (const auto& box : grid.boxes)
        cell = std::max(cell,
                        std::min(room.ruler.width(box.name, Print::SmallStrong) + 6, kWidestName));
    const qreal sideNames = room.ruler.width(QStringLiteral("M"), Print::SmallStrong) + 6;
    const auto perLine =
        std::max<std::size_t>(1, static_cast<std::size_t>((room.width - kLeft - sideNames) / cell));
    std::vector<Piece> lines;
    for (std::size_t from = 0; from < grid.boxes.size(); from += perLine)
        lines.push_back(
            GridLine{room, grid, from, std::min(from + perLine, grid.boxes.size()), cell, sideNames}
                .lay());
    return lines;
}

}  // namespace tenthday
