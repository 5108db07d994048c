#include "sheets/list_row.h"

#include <algorithm>

namespace tenthday {
namespace {

const qreal kTick = millimetres(6);
const qreal kMustBar = millimetres(2.5);
const qreal kBesideTick = 6;
const qreal kBetween = 8;  ///< two columns
constexpr int kMostLines = 8;

struct Place {
    qreal left;
    qreal width;
};

qreal tickLeft(const RowRoom& room) { return room.sideBySide ? 0 : kMustBar + 3; }

/// Where each column's words stand.
std::vector<Place> placesOf(const RowRoom& room, const std::vector<PaperColumn>& columns) {
    qreal shares = 0;
    for (const auto& column : columns) shares += column.share;
    const qreal left = room.ticks ? tickLeft(room) + kTick + kBesideTick : 0;
    std::vector<Place> places;
    qreal x = left;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const qreal width = (room.width - left) * columns[i].share / std::max(shares, 0.001);
        // A number ends where the words after it begin: they stand further apart.
        const bool meets = columns[i].number && i + 1 < columns.size() && !columns[i + 1].number;
        places.push_back({x, width - (meets ? 2 : 1) * kBetween});
        x += width;
    }
    return places;
}

/// Numbers stand at the right of their place, words at the left; gives the height they take.
qreal putLines(Piece& piece, const PaperRuler& ruler, Print type, const QStringList& lines,
               const Place& place, bool atRight, qreal top) {
    if (!atRight) return piece.lines(ruler, type, lines, place.left, top);
    qreal y = top;
    for (const auto& line : lines) {
        piece.textBefore(ruler, type, line, place.left + place.width, y);
        y += ruler.line(type);
    }
    return y - top;
}

void putTick(Piece& piece, const RowRoom& room, const PaperRow& row) {
    if (row.must) piece.fill({0, 1, kMustBar, piece.height - 2});
    if (!room.ticks) return;
    const QRectF box(tickLeft(room), (room.row - kTick) / 2, kTick, kTick);
    piece.frame(box, kThick);
    if (row.done) piece.marks.push_back({Mark::Shape::Tick, box, {}, {}, kThick});
}

}  // namespace

Piece rowPiece(const RowRoom& room, const std::vector<PaperColumn>& columns, const PaperRow& row) {
    const auto& ruler = room.ruler;
    const auto places = placesOf(room, columns);
    const qreal baseline = (room.row + ruler.ascent(Print::Text)) / 2 - 1;
    Piece piece;
    qreal end = room.row;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto& [type, place] = std::pair{columns[i].type, places[i]};
        const auto words = row.cells.value(static_cast<qsizetype>(i));
        if (words.isEmpty() && columns[i].blank) {
            piece.line({place.left, baseline - 4, place.width, 5}, kThin);
            continue;
        }
        const auto lines = ruler.atMost(room.sideBySide ? 1 : kMostLines, words, type, place.width);
        const qreal top = baseline - ruler.ascent(type);
        end = std::max(
            end, top + putLines(piece, ruler, type, lines, place, columns[i].number, top) + 3);
    }
    piece.height = end;
    putTick(piece, room, row);
    if (!room.sideBySide) piece.line({0, piece.height - 1, room.width, 0.6}, 0.4);
    return piece;
}

Piece columnHeads(const RowRoom& room, const std::vector<PaperColumn>& columns) {
    Piece piece;
    const bool any = std::any_of(columns.begin(), columns.end(),
                                 [](const auto& column) { return !column.head.isEmpty(); });
    if (!any) return piece;
    const auto places = placesOf(room, columns);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto lines =
            room.ruler.atMost(2, columns[i].head, Print::SmallStrong, places[i].width);
        piece.height = std::max(piece.height, putLines(piece, room.ruler, Print::SmallStrong, lines,
                                                       places[i], columns[i].number, 0));
    }
    piece.line({0, 0, room.width, piece.height + 1}, kThin);
    piece.height += 4;
    return piece;
}

}  // namespace tenthday
