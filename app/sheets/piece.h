/// @file piece.h  Marks that must stay together on a page, counted from their own top left.
#pragma once
#include <vector>

#include "sheets/page.h"
#include "sheets/paper.h"

namespace tenthday {

constexpr qreal kThin = 0.8;
constexpr qreal kThick = 1.6;
constexpr qreal kPad = 4;

struct Piece {
    qreal height = 0;
    std::vector<Mark> marks;

    void text(const PaperRuler& ruler, Print type, const QString& words, qreal x, qreal top,
              bool white = false);
    /// Ends at `end`.
    void textBefore(const PaperRuler& ruler, Print type, const QString& words, qreal end,
                    qreal top);
    void textAbout(const PaperRuler& ruler, Print type, const QString& words, qreal middle,
                   qreal top);
    /// Lines from a top downwards; gives the height they take.
    qreal lines(const PaperRuler& ruler, Print type, const QStringList& lines, qreal x, qreal top);
    qreal paragraph(const PaperRuler& ruler, Print type, const QString& words, qreal x, qreal top,
                    qreal room);
    void fill(const QRectF& rect);
    void frame(const QRectF& rect, qreal pen);
    /// Along the rect's foot.
    void line(const QRectF& rect, qreal pen);
    /// Puts another piece below.
    void append(const Piece& below);
};

}  // namespace tenthday
