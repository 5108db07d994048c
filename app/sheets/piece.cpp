#include "sheets/piece.h"

namespace tenthday {

void Piece::text(const PaperRuler& ruler, Print type, const QString& words, qreal x, qreal top,
                 bool white) {
    if (words.isEmpty()) return;
    marks.push_back({white ? Mark::Shape::WhiteText : Mark::Shape::Text,
                     QRectF(x, top, ruler.width(words, type), ruler.ascent(type)), words, type, 0});
}

void Piece::textBefore(const PaperRuler& ruler, Print type, const QString& words, qreal end,
                       qreal top) {
    text(ruler, type, words, end - ruler.width(words, type), top);
}

void Piece::textAbout(const PaperRuler& ruler, Print type, const QString& words, qreal middle,
                      qreal top) {
    text(ruler, type, words, middle - ruler.width(words, type) / 2, top);
}

qreal Piece::lines(const PaperRuler& ruler, Print type, const QStringList& lines, qreal x,
                   qreal top) {
    qreal y = top;
    for (const auto& line : lines) {
        text(ruler, type, line, x, y);
        y += ruler.line(type);
    }
    return y - top;
}

qreal Piece::paragraph(const PaperRuler& ruler, Print type, const QString& words, qreal x,
                       qreal top, qreal room) {
    return lines(ruler, type, ruler.lines(words, type, room), x, top);
}

void Piece::fill(const QRectF& rect) { marks.push_back({Mark::Shape::Fill, rect, {}, {}, 0}); }

void Piece::frame(const QRectF& rect, qreal pen) {
    marks.push_back({Mark::Shape::Frame, rect, {}, {}, pen});
}

void Piece::line(const QRectF& rect, qreal pen) {
    marks.push_back({Mark::Shape::Line, rect, {}, {}, pen});
}

void Piece::append(const Piece& below) {
    for (auto mark : below.marks) {
        mark.rect.translate(0, height);
        marks.push_back(std::move(mark));
    }
    height += below.height;
}

}  // namespace tenthday
