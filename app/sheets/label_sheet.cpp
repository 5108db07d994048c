#include "sheets/label_sheet.h"

#include <algorithm>
#include <optional>

#include "sheets/piece.h"

namespace tenthday {
namespace {

const qreal kInside = millimetres(2.5);
constexpr double kLeastWidth = 30;   // mm
constexpr double kLeastHeight = 15;  // mm

QSizeF labelSize(const LabelGrid& grid, const PaperForm& form) {
    const auto sheet = sizeOf({form.paper, form.landscape});
    const auto part = [](qreal all, double margins, double gap, int count) {
        return (all - millimetres(margins + gap * (count - 1))) / count;
    };
    return {part(sheet.width(), grid.left + grid.right, grid.gapAcross, grid.columns),
            part(sheet.height(), grid.top + grid.bottom, grid.gapDown, grid.rows)};
}

/// The words of a card in one type.
struct CardLines {
    Print type;
    QStringList lines;
};

qsizetype mostLines(Print type, const QSizeF& room, const PaperRuler& ruler) {
    return static_cast<qsizetype>(std::max(room.height() / ruler.line(type), 0.0));
}

QString runTogether(const QStringList& lines) { return lines.join(QStringLiteral("; ")); }

/// The largest setting all these lines go in with, or null.
std::optional<CardLines> allOf(const QStringList& lines, const QSizeF& room,
                               const PaperRuler& ruler) {
    const auto setIn = [&](Print type, const QStringList& wanted) {
        CardLines set{type, {}};
        for (const auto& words : wanted) set.lines += ruler.lines(words, type, room.width());
        return set;
    };
    for (const auto& set : {setIn(Print::Small, lines), setIn(Print::Tiny, lines),
                            setIn(Print::Tiny, {runTogether(lines)})})
        if (set.lines.size() <= mostLines(set.type, room, ruler)) return set;
    return std::nullopt;
}

/// Whole words as far as they go.
CardLines shortened(const QStringList& lines, const QSizeF& room, const PaperRuler& ruler) {
    constexpr auto kType = Print::Tiny;
    CardLines set{
        kType,
        ruler.lines(runTogether(lines), kType, room.width()).mid(0, mostLines(kType, room, ruler))};
    if (set.lines.empty()) return set;
    auto words = set.lines.back().split(u' ');
    const QString more(QChar(0x2026));
    while (words.size() > 1 && ruler.width(words.join(u' ') + u' ' + more, kType) > room.width())
        words.removeLast();
    set.lines.back() =
        ruler.atMost(1, words.join(u' ') + u' ' + more, kType, room.width()).value(0);
    return set;
}

CardLines linesOf(const LabelCard& card, const QSizeF& room, const PaperRuler& ruler) {
    auto lines = card.lines;
    if (const auto set = allOf(lines, room, ruler)) return *set;
    for (const auto& spare : card.spare) {
        lines.removeOne(spare);
        if (const auto set = allOf(lines, room, ruler)) return *set;
    }
    return shortened(lines, room, ruler);
}

Piece cardPiece(const LabelCard& card, const QSizeF& size, bool cutLines, const PaperRuler& ruler) {
    Piece piece;
    if (cutLines) piece.frame(QRectF(QPointF(0, 0), size), 0.4);
    const qreal width = size.width() - 2 * kInside;
    const auto title = ruler.atMost(1, card.title, Print::Strong, width).value(0);
    piece.text(ruler, Print::Strong, title, kInside, kInside);
    const qreal taken = ruler.width(title, Print::Strong) + 8;
    if (taken < width) {
        const auto beside = ruler.atMost(1, card.beside, Print::Small, width - taken).value(0);
        piece.textBefore(ruler, Print::Small, beside, kInside + width,
                         kInside + ruler.ascent(Print::Strong) - ruler.ascent(Print::Small));
    }
    const qreal top = kInside + ruler.line(Print::Strong) + 1;
    const QSizeF room(width, size.height() - top - kInside);
    const auto set = linesOf(card, room, ruler);
    piece.lines(ruler, set.type, set.lines, kInside, top);
    return piece;
}

}  // namespace

Result<void> checkLabels(const LabelGrid& grid, const PaperForm& form) {
    if (grid.columns < 1 || grid.columns > 12 || grid.rows < 1 || grid.rows > 30)
        return Error{"labels: 1 to 12 columns and 1 to 30 rows are needed"};
    for (const double mm :
         {grid.left, grid.top, grid.right, grid.bottom, grid.gapAcross, grid.gapDown})
        if (!(mm >= 0 && mm <= 100)) return Error{"labels: margins and gaps are 0 to 100 mm"};
    if (grid.first < 1 || grid.first > grid.columns * grid.rows)
        return Error{"labels: the first one must be on the sheet"};
    const auto size = labelSize(grid, form);
    if (size.width() < millimetres(kLeastWidth) || size.height() < millimetres(kLeastHeight))
        return Error{"labels: each must be 30 by 15 mm or more"};
    return {};
}

std::vector<QRectF> labelPlaces(const LabelGrid& grid, const PaperForm& form) {
    const auto size = labelSize(grid, form);
    std::vector<QRectF> places;
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column)
            places.emplace_back(
                QPointF(
                    millimetres(grid.left) + column * (size.width() + millimetres(grid.gapAcross)),
                    millimetres(grid.top) + row * (size.height() + millimetres(grid.gapDown))),
                size);
    return places;
}

std::vector<Page> layOutLabels(const std::vector<LabelCard>& cards, const LabelGrid& grid,
                               const PaperForm& form, const PaperRuler& ruler) {
    std::vector<Page> pages(1);
    if (!checkLabels(grid, form)) return pages;
    const auto places = labelPlaces(grid, form);
    auto place = static_cast<std::size_t>(grid.first - 1);
    for (const auto& card : cards) {
        if (place == places.size()) {
            pages.emplace_back();
            place = 0;
        }
        auto piece = cardPiece(card, places[place].size(), grid.cutLines, ruler);
        for (auto& mark : piece.marks) {
            mark.rect.translate(places[place].topLeft());
            pages.back().marks.push_back(std::move(mark));
        }
        ++place;
    }
    return pages;
}

}  // namespace tenthday
