#include "sheets/week_pieces.h"

#include <QLocale>
#include <algorithm>

#include "screen_text/dates.h"
#include "screen_text/sheet_text.h"
#include "sheets/look_grid.h"

namespace tenthday {
namespace {

const qreal kTick = millimetres(7);
const qreal kRow = millimetres(10);
const qreal kHead = millimetres(8);
const qreal kMustBar = millimetres(2.5);
const qreal kNumber = millimetres(4);
const qreal kTickLeft = millimetres(12);
const qreal kTextLeft = millimetres(22);
const qreal kBlankLine = millimetres(20);
constexpr int kMostLines = 22;  ///< of a row in one piece: less than half a page of any paper

/// The words of a row, line by line.
struct RowLine {
    Print type;
    QString text;
};

qreal headTop(const PaperRuler& ruler) { return (kHead - ruler.ascent(Print::Strong)) / 2 - 1; }

/// The line to write on, and what is written there.
class Blank {
public:
    Blank(const WeekRoom& room, const QString& words)
        : room_(room),
          words_(words),
          width_(words.isEmpty() ? 0 : kBlankLine + 6 + room.ruler.width(words, Print::Small)),
          // On a narrow page it goes below the words of the row.
          beside_(room.width - kTextLeft - width_ > room.width * 0.45) {}

    [[nodiscard]] qreal roomForWords() const {
        return room_.width - kTextLeft - (beside_ && width_ > 0 ? width_ + 8 : 0);
    }
    /// Gives where the row's text ends.
    qreal put(Piece& piece, qreal end) const {
        if (width_ == 0) return end;
        const auto& ruler = room_.ruler;
        const qreal x = beside_ ? room_.width - width_ : kTextLeft;
        const qreal top = beside_ ? 4 : end + 3;
        const qreal ascent = ruler.ascent(Print::Strong);
        piece.line({x, top, kBlankLine, ascent}, kThin);
        piece.text(ruler, Print::Small, words_, x + kBlankLine + 6,
                   top + ascent - ruler.ascent(Print::Small));
        return beside_ ? end : top + ruler.line(Print::Strong);
    }

private:
    const WeekRoom& room_;
    const QString& words_;
    qreal width_;
    bool beside_;
};

qreal putLines(Piece& piece, const PaperRuler& ruler, const std::vector<RowLine>& lines, int first,
               int count) {
    qreal y = 3;
    for (int i = first; i < first + count; ++i) {
        const auto& line = lines[static_cast<std::size_t>(i)];
        piece.text(ruler, line.type, line.text, kTextLeft, y);
        y += ruler.line(line.type);
    }
    return y;
}

void putMust(Piece& piece, const WeekRow& row) {
    if (row.must) piece.fill({0, 1, kMustBar, piece.height - 2});
}

void putTick(Piece& piece, const PaperRuler& ruler, const WeekRow& row) {
    piece.text(ruler, Print::Small, QLocale().toString(row.number), kNumber, 5);
    const QRectF box(kTickLeft, (kRow - kTick) / 2, kTick, kTick);
    piece.frame(box, kThick);
    if (row.done) piece.marks.push_back({Mark::Shape::Tick, box, {}, {}, kThick});
}

std::vector<Piece> wordPieces(const WeekRoom& room, const WeekRow& row) {
    const Blank blank(room, row.blank);
    std::vector<RowLine> lines;
    for (const auto& text : room.ruler.lines(row.what, Print::Strong, blank.roomForWords()))
        lines.push_back({Print::Strong, text});
    for (const auto& text : room.ruler.lines(row.how, Print::Small, blank.roomForWords()))
        lines.push_back({Print::Small, text});
    std::vector<Piece> pieces;
    const int all = static_cast<int>(lines.size());
    for (int first = 0; first == 0 || first < all; first += kMostLines) {
        Piece piece;
        qreal end = putLines(piece, room.ruler, lines, first, std::min(kMostLines, all - first));
        if (first == 0) end = blank.put(piece, end);
        piece.height = std::max(first == 0 ? kRow : 0, end + 3);
        if (first == 0) putTick(piece, room.ruler, row);
        putMust(piece, row);
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

}  // namespace

Piece dayStrip(const WeekRoom& room, const std::vector<WeekDay>& days) {
    const qreal cell = room.width / 7;
    Piece piece;
    qreal tallest = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const qreal x = static_cast<qreal>(i) * cell + kPad;
        const qreal inside = cell - 2 * kPad;
        const auto name = weekdayName(days[i].day) + u' ' + dayNumber(days[i].day);
        qreal y = kPad;
        y += piece.paragraph(room.ruler, Print::SmallStrong, name, x, y, inside);
        // On a narrow paper smaller, before its words stand on two lines.
        const bool isWide = room.ruler.lines(days[i].hours, Print::Small, inside).size() <= 1;
        y += piece.paragraph(room.ruler, isWide ? Print::Small : Print::Tiny, days[i].hours, x, y,
                             inside);
        const auto works =
            days[i].works.isEmpty() ? QStringList{sheet_text::nothingShort()} : days[i].works;
        for (const auto& work : works)
            y += piece.paragraph(room.ruler, Print::Small, work, x, y, inside);
        tallest = std::max(tallest, y);
    }
    tallest += kPad;
    for (int i = 0; i < 7; ++i) piece.frame({i * cell, 0, cell, tallest}, kThin);
    piece.height = tallest + 8;
    return piece;
}

Piece emptyDay(const WeekRoom& room, Day day) {
    const auto& ruler = room.ruler;
    Piece piece;
    const auto head = sheet_text::head(day, {});
    const qreal top = headTop(ruler);
    piece.text(ruler, Print::Strong, head, kPad, top);
    const qreal x = kPad + ruler.width(head, Print::Strong) + 12;
    qreal height = kHead;
    if (x + ruler.width(sheet_text::nothing(), Print::Text) <= room.width - kPad)
        piece.text(ruler, Print::Text, sheet_text::nothing(), x, top);
    else
        height += piece.paragraph(ruler, Print::Text, sheet_text::nothing(), kPad, kHead - 2,
                                  room.width - 2 * kPad);
    piece.frame({0, 0, room.width, height}, kThin);
    piece.height = height + 5;
    return piece;
}

Piece blockHead(const WeekRoom& room, const QString& words) {
    const auto& ruler = room.ruler;
    const auto lines = ruler.atMost(3, words, Print::Strong, room.width - 2 * kPad);
    Piece piece;
    const qreal height = kHead + static_cast<qreal>(lines.size() - 1) * ruler.line(Print::Strong);
    piece.fill({0, 0, room.width, height});
    qreal y = headTop(ruler);
    for (const auto& line : lines) {
        piece.text(ruler, Print::Strong, line, kPad, y, true);
        y += ruler.line(Print::Strong);
    }
    piece.height = height + 4;
    return piece;
}

Piece takeAlong(const WeekRoom& room, const QString& things) {
    Piece piece;
    if (things.isEmpty()) return piece;
    const auto head = sheet_text::takeAlongHead();
    piece.text(room.ruler, Print::SmallStrong, head, 0, 0);
    const qreal x = room.ruler.width(head, Print::SmallStrong) + 8;
    piece.height = piece.paragraph(room.ruler, Print::Small, things, x, 0, room.width - x) + 3;
    return piece;
}

std::vector<Piece> rowPieces(const WeekRoom& room, const WeekRow& row) {
    auto pieces = wordPieces(room, row);
    if (row.grid.isEmpty()) return pieces;
    const auto lines = gridLines(room, row.grid);
    // The first line of boxes stays with the words that explain it.
    pieces.back().append(lines.front());
    pieces.insert(pieces.end(), lines.begin() + 1, lines.end());
    return pieces;
}

Piece sumLine(const WeekRoom& room, const QStringList& parts) {
    const qreal blank = millimetres(13);
    Piece piece;
    piece.text(room.ruler, Print::Strong, sheet_text::sumHead(), kTickLeft, 3);
    qreal x = kTickLeft;
    qreal y = 3 + kRow * 0.75;
    for (int i = 0; i < parts.size(); ++i) {
        const auto sign = i == 0 ? QString() : i == 1 ? QStringLiteral("= ") : QStringLiteral("+ ");
        const auto words =
            room.ruler.atMost(1, sign + parts[i], Print::Text, room.width / 3).value(0);
        const qreal wide = room.ruler.width(words, Print::Text);
        const qreal takes = wide + 4 + blank + 10;
        if (x > kTickLeft && x + takes > room.width) {
            x = kTickLeft;
            y += kRow;
        }
        piece.text(room.ruler, Print::Text, words, x, y);
        piece.line({x + wide + 4, y, blank, room.ruler.ascent(Print::Text) + 1}, kThin);
        x += takes;
    }
    piece.height = y + kRow * 0.8;
    return piece;
}

Piece notesFor(const WeekRoom& room, const QStringList& yards, qreal height) {
    Piece piece;
    const qreal cell = room.width / static_cast<qreal>(yards.size());
    for (int i = 0; i < yards.size(); ++i) {
        piece.frame({i * cell, 2, cell, height}, kThin);
        const auto name =
            room.ruler.atMost(2, sheet_text::notes(yards[i]), Print::Small, cell - 2 * kPad);
        piece.lines(room.ruler, Print::Small, name, i * cell + kPad, 5);
    }
    piece.height = height + 2;
    return piece;
}

}  // namespace tenthday
