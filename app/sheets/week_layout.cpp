#include "sheets/week_layout.h"

#include <QLocale>
#include <algorithm>

#include "screen_text/dates.h"
#include "screen_text/sheet_text.h"

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
const qreal kCircles = millimetres(9);
const qreal kNotes = millimetres(22);
constexpr qreal kPad = 4;
constexpr qreal kThin = 0.8;
constexpr qreal kThick = 1.6;

/// Things that must stay together, with the height they take. Marks count from their own top.
struct Piece {
    qreal height = 0;
    std::vector<Mark> marks;
};

void text(Piece& piece, const PaperRuler& ruler, Print type, const QString& words, qreal x,
          qreal top, bool white = false) {
    if (words.isEmpty()) return;
    piece.marks.push_back({white ? Mark::Shape::WhiteText : Mark::Shape::Text,
                           QRectF(x, top, ruler.width(words, type), ruler.ascent(type)), words,
                           type, 0});
}

void right(Piece& piece, const PaperRuler& ruler, Print type, const QString& words, qreal end,
           qreal top, bool white = false) {
    text(piece, ruler, type, words, end - ruler.width(words, type), top, white);
}

/// Lines of text from a top downwards; gives the height they take.
qreal paragraph(Piece& piece, const PaperRuler& ruler, Print type, const QString& words, qreal x,
                qreal top, qreal room) {
    qreal y = top;
    for (const auto& line : ruler.lines(words, type, room)) {
        text(piece, ruler, type, line, x, y);
        y += ruler.line(type);
    }
    return y - top;
}

class WeekPages {
public:
    WeekPages(const WeekContent& week, Paper paper, const PaperRuler& ruler)
        : week_(week), ruler_(ruler), area_(printable(paper)) {}

    std::vector<Page> lay() {
        beginPage();
        put(strip());
        for (const auto& day : week_.days) putDay(day);
        putNotes();
        numberPages();
        return std::move(pages_);
    }

private:
    [[nodiscard]] qreal width() const { return area_.width(); }
    [[nodiscard]] qreal foot() const {
        return area_.bottom() - (pages_.size() == 1 ? cautions_ : 0);
    }
    [[nodiscard]] bool fits(qreal height) const { return y_ + height <= foot() + 0.01; }

    void put(const Piece& piece) {
        for (auto mark : piece.marks) {
            mark.rect.translate(area_.left(), y_);
            pages_.back().marks.push_back(std::move(mark));
        }
        y_ += piece.height;
    }

    void beginPage() {
        pages_.emplace_back();
        y_ = area_.top();
        Piece head;
        const auto week = sheet_text::week(week_.week);
        const auto days = sheet_text::daysOfWeek(week_.week);
        text(head, ruler_, Print::Huge, week, 0, 0);
        const qreal besides = ruler_.width(week, Print::Huge) + 10;
        const qreal daysWidth = ruler_.width(days, Print::Large);
        const qreal operation = ruler_.width(week_.operation, Print::SmallStrong);
        const qreal baseline = ruler_.ascent(Print::Huge);
        const bool inOneLine = besides + daysWidth + 12 + operation <= width();
        text(head, ruler_, Print::Large, days, besides, baseline - ruler_.ascent(Print::Large));
        head.height = ruler_.line(Print::Huge);
        if (inOneLine) {
            right(head, ruler_, Print::SmallStrong, week_.operation, width(), 0);
        } else {
            // On a small page the name of the operation has a line of its own.
            head.height += paragraph(head, ruler_, Print::SmallStrong, week_.operation, 0,
                                     head.height, width() - pageNumberRoom());
        }
        pageNumberTop_ = head.height - ruler_.line(Print::Small);
        head.marks.push_back(
            {Mark::Shape::Line, QRectF(0, 0, width(), head.height + 2), {}, {}, kThick});
        head.height += 8;
        put(head);
        if (pages_.size() == 1) layCautions();
    }

    [[nodiscard]] qreal pageNumberRoom() const {
        return ruler_.width(sheet_text::page(88, 88), Print::Small) + 8;
    }

    /// At the foot of the first page.
    void layCautions() {
        Piece piece;
        qreal y = 8;
        for (const auto& caution : week_.cautions)
            y += paragraph(piece, ruler_, Print::Small, caution, 0, y, width());
        cautions_ = y + 6;
        piece.marks.push_back({Mark::Shape::Line, QRectF(0, 2, width(), 0), {}, {}, kThin});
        for (auto mark : piece.marks) {
            mark.rect.translate(area_.left(), area_.bottom() - y);
            pages_.back().marks.push_back(std::move(mark));
        }
    }

    /// The seven days at a glance.
    [[nodiscard]] Piece strip() const {
        const qreal cell = width() / 7;
        Piece piece;
        qreal tallest = 0;
        for (std::size_t i = 0; i < week_.days.size(); ++i) {
            const auto& day = week_.days[i];
            const qreal x = static_cast<qreal>(i) * cell + kPad;
            const qreal room = cell - 2 * kPad;
            qreal y = kPad;
            y += paragraph(piece, ruler_, Print::SmallStrong,
                           weekdayName(day.day) + u' ' + dayNumber(day.day), x, y, room);
            const auto works =
                day.works.isEmpty() ? QStringList{sheet_text::nothingShort()} : day.works;
            for (const auto& work : works)
                y += paragraph(piece, ruler_, Print::Small, work, x, y, room);
            tallest = std::max(tallest, y);
        }
        tallest += kPad;
        for (int i = 0; i < 7; ++i)
            piece.marks.push_back(
                {Mark::Shape::Frame, QRectF(i * cell, 0, cell, tallest), {}, {}, kThin});
        piece.height = tallest + 8;
        return piece;
    }

    void putDay(const WeekDay& day) {
        if (day.blocks.empty()) {
            const auto piece = emptyDay(day.day);
            if (!fits(piece.height)) beginPage();
            put(piece);
        }
        for (const auto& block : day.blocks) putBlock(block);
    }

    [[nodiscard]] Piece emptyDay(Day day) const {
        Piece piece;
        const auto head = sheet_text::head(day, {});
        const qreal top = (kHead - ruler_.ascent(Print::Strong)) / 2 - 1;
        text(piece, ruler_, Print::Strong, head, kPad, top);
        const qreal x = kPad + ruler_.width(head, Print::Strong) + 12;
        qreal height = kHead;
        if (x + ruler_.width(sheet_text::nothing(), Print::Text) <= width() - kPad)
            text(piece, ruler_, Print::Text, sheet_text::nothing(), x, top);
        else
            height += paragraph(piece, ruler_, Print::Text, sheet_text::nothing(), kPad, kHead - 2,
                                width() - 2 * kPad);
        piece.marks.push_back({Mark::Shape::Frame, QRectF(0, 0, width(), height), {}, {}, kThin});
        piece.height = height + 5;
        return piece;
    }

    [[nodiscard]] Piece blockHead(const QString& words) const {
        Piece piece;
        const auto lines = ruler_.lines(words, Print::Strong, width() - 2 * kPad);
        const qreal height =
            kHead + static_cast<qreal>(lines.size() - 1) * ruler_.line(Print::Strong);
        piece.marks.push_back({Mark::Shape::Fill, QRectF(0, 0, width(), height), {}, {}, 0});
        qreal y = (kHead - ruler_.ascent(Print::Strong)) / 2 - 1;
        for (const auto& line : lines) {
            text(piece, ruler_, Print::Strong, line, kPad, y, true);
            y += ruler_.line(Print::Strong);
        }
        piece.height = height + 4;
        return piece;
    }

    [[nodiscard]] Piece takeAlong(const QString& things) const {
        Piece piece;
        if (things.isEmpty()) return piece;
        const auto head = sheet_text::takeAlongHead();
        text(piece, ruler_, Print::SmallStrong, head, 0, 0);
        const qreal x = ruler_.width(head, Print::SmallStrong) + 8;
        piece.height = paragraph(piece, ruler_, Print::Small, things, x, 0, width() - x) + 3;
        return piece;
    }

    void putBlock(const WeekBlock& block) {
        const auto name = sheet_text::head(block.day, block.yard);
        const auto things = takeAlong(block.takeAlong);
        auto head = blockHead(name);
        const auto first = rowPieces(block.rows.front());
        if (!fits(head.height + things.height + first.front().height)) beginPage();
        put(head);
        put(things);
        const auto follow = [&](const Piece& piece) {
            if (!fits(piece.height)) {
                beginPage();
                put(blockHead(sheet_text::goesOn(name)));
            }
            put(piece);
        };
        for (const auto& row : block.rows)
            for (const auto& piece : rowPieces(row)) follow(piece);
        if (!block.sum.isEmpty()) follow(sumLine(block.sum));
        y_ += 5;
    }

    /// A row, and below it the lines of its grid.
    [[nodiscard]] std::vector<Piece> rowPieces(const WeekRow& row) const {
        std::vector<Piece> pieces{rowPiece(row)};
        if (row.grid.isEmpty()) return pieces;
        auto lines = gridLines(row.grid);
        // The first line of boxes stays with the words that explain it.
        for (auto& mark : lines.front().marks) {
            mark.rect.translate(0, pieces.front().height);
            pieces.front().marks.push_back(mark);
        }
        pieces.front().height += lines.front().height;
        pieces.insert(pieces.end(), lines.begin() + 1, lines.end());
        return pieces;
    }

    [[nodiscard]] Piece rowPiece(const WeekRow& row) const {
        Piece piece;
        const qreal blankWidth =
            row.blank.isEmpty() ? 0 : kBlankLine + 6 + ruler_.width(row.blank, Print::Small);
        // On a narrow page the line to write on goes below the words.
        const bool beside = blankWidth == 0 || width() - kTextLeft - blankWidth > width() * 0.45;
        const qreal room = width() - kTextLeft - (beside && blankWidth > 0 ? blankWidth + 8 : 0);
        qreal y = 3;
        y += paragraph(piece, ruler_, Print::Strong, row.what, kTextLeft, y, room);
        y += paragraph(piece, ruler_, Print::Small, row.how, kTextLeft, y, room);
        if (blankWidth > 0) {
            const qreal x = beside ? width() - blankWidth : kTextLeft;
            const qreal top = beside ? 4 : y + 3;
            piece.marks.push_back({Mark::Shape::Line,
                                   QRectF(x, top, kBlankLine, ruler_.ascent(Print::Strong)),
                                   {},
                                   {},
                                   kThin});
            text(piece, ruler_, Print::Small, row.blank, x + kBlankLine + 6,
                 top + ruler_.ascent(Print::Strong) - ruler_.ascent(Print::Small));
            if (!beside) y = top + ruler_.line(Print::Strong);
        }
        piece.height = std::max(kRow, y + 3);
        text(piece, ruler_, Print::Small, QLocale().toString(row.number), kNumber, 5);
        const QRectF box(kTickLeft, (kRow - kTick) / 2, kTick, kTick);
        piece.marks.push_back({Mark::Shape::Frame, box, {}, {}, kThick});
        if (row.done) piece.marks.push_back({Mark::Shape::Tick, box, {}, {}, kThick});
        if (row.must)
            piece.marks.push_back(
                {Mark::Shape::Fill, QRectF(0, 1, kMustBar, piece.height - 2), {}, {}, 0});
        return piece;
    }

    /// As many boxes beside each other as there is room for; a line of cells for each side.
    [[nodiscard]] std::vector<Piece> gridLines(const LookGrid& grid) const {
        const auto circles = sheet_text::circles();
        qreal cell = ruler_.width(circles, Print::Small) + 10;
        for (const auto& box : grid.boxes)
            cell = std::max(cell, ruler_.width(box.name, Print::SmallStrong) + 6);
        const qreal names = ruler_.width(QStringLiteral("M"), Print::SmallStrong) + 6;
        const qreal left = millimetres(8);
        const auto perLine =
            std::max<std::size_t>(1, static_cast<std::size_t>((width() - left - names) / cell));
        std::vector<Piece> lines;
        for (std::size_t from = 0; from < grid.boxes.size(); from += perLine)
            lines.push_back(gridLine(grid, from, std::min(from + perLine, grid.boxes.size()), cell,
                                     left, names));
        return lines;
    }

    [[nodiscard]] Piece gridLine(const LookGrid& grid, std::size_t from, std::size_t to, qreal cell,
                                 qreal left, qreal names) const {
        Piece piece;
        QStringList sides;
        for (std::size_t i = from; i < to; ++i)
            for (const auto& side : grid.boxes[i].sides)
                if (!sides.contains(side)) sides += side;
        std::sort(sides.begin(), sides.end());
        qreal y = 2;
        for (std::size_t i = from; i < to; ++i) {
            const auto& name = grid.boxes[i].name;
            const qreal middle = left + names + (static_cast<qreal>(i - from) + 0.5) * cell;
            text(piece, ruler_, Print::SmallStrong, name,
                 middle - ruler_.width(name, Print::SmallStrong) / 2, y);
        }
        y += ruler_.line(Print::SmallStrong);
        for (const auto& side : sides) {
            if (side != QStringLiteral("-"))
                text(piece, ruler_, Print::SmallStrong, side, left,
                     y + (kCircles - ruler_.ascent(Print::SmallStrong)) / 2 - 1);
            for (std::size_t i = from; i < to; ++i) {
                if (!grid.boxes[i].sides.contains(side)) continue;
                const QRectF rect(left + names + static_cast<qreal>(i - from) * cell, y, cell - 3,
                                  kCircles);
                piece.marks.push_back({Mark::Shape::Frame, rect, {}, {}, kThin});
                const auto circles = sheet_text::circles();
                text(piece, ruler_, Print::Small, circles,
                     rect.center().x() - ruler_.width(circles, Print::Small) / 2,
                     rect.center().y() - ruler_.ascent(Print::Small) / 2 - 1);
            }
            y += kCircles + 3;
        }
        piece.height = y + 2;
        return piece;
    }

    /// out ____ = Home ____ + Mill ____ + sold ____ ...
    [[nodiscard]] Piece sumLine(const QStringList& parts) const {
        Piece piece;
        const qreal blank = millimetres(13);
        text(piece, ruler_, Print::Strong, sheet_text::sumHead(), kTickLeft, 3);
        qreal x = kTickLeft;
        qreal y = 3 + kRow * 0.75;
        for (int i = 0; i < parts.size(); ++i) {
            const auto sign = i == 0   ? QString()
                              : i == 1 ? QStringLiteral("= ")
                                       : QStringLiteral("+ ");
            const auto words = sign + parts[i];
            const qreal takes = ruler_.width(words, Print::Text) + 4 + blank + 10;
            if (x > kTickLeft && x + takes > width()) {
                x = kTickLeft;
                y += kRow;
            }
            text(piece, ruler_, Print::Text, words, x, y);
            const qreal line = x + ruler_.width(words, Print::Text) + 4;
            piece.marks.push_back({Mark::Shape::Line,
                                   QRectF(line, y, blank, ruler_.ascent(Print::Text) + 1),
                                   {},
                                   {},
                                   kThin});
            x += takes;
        }
        piece.height = y + kRow * 0.8;
        return piece;
    }

    void putNotes() {
        if (week_.yards.isEmpty()) return;
        const int columns = week_.yards.size() > 1 ? 2 : 1;
        const qreal cell = width() / columns;
        for (int first = 0; first < week_.yards.size(); first += columns) {
            Piece piece;
            for (int i = 0; i < columns && first + i < week_.yards.size(); ++i) {
                piece.marks.push_back(
                    {Mark::Shape::Frame, QRectF(i * cell, 2, cell, kNotes), {}, {}, kThin});
                const auto name = ruler_.lines(sheet_text::notes(week_.yards[first + i]),
                                               Print::Small, cell - 2 * kPad);
                text(piece, ruler_, Print::Small, name.value(0), i * cell + kPad, 5);
            }
            piece.height = kNotes + 2;
            if (!fits(piece.height)) beginPage();
            put(piece);
        }
    }

    void numberPages() {
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            Piece piece;
            right(piece, ruler_, Print::Small,
                  sheet_text::page(static_cast<int>(i) + 1, static_cast<int>(pages_.size())),
                  width(), pageNumberTop_);
            for (auto mark : piece.marks) {
                mark.rect.translate(area_.left(), area_.top());
                pages_[i].marks.push_back(std::move(mark));
            }
        }
    }

    const WeekContent& week_;
    const PaperRuler& ruler_;
    QRectF area_;
    std::vector<Page> pages_;
    qreal y_ = 0;
    qreal cautions_ = 0;
    qreal pageNumberTop_ = 0;
};

}  // namespace

std::vector<Page> layOutWeek(const WeekContent& week, Paper paper, const PaperRuler& ruler) {
    return WeekPages(week, paper, ruler).lay();
}

}  // namespace tenthday
