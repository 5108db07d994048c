/// @file week_pieces.h  The parts of a week's sheet, each as high as it needs.
#pragma once
#include "sheets/piece.h"
#include "sheets/week_content.h"

namespace tenthday {

/// Least room for the notes of a yard.
inline constexpr qreal kNotes = millimetres(22);

/// Where the parts are made for: the width between the margins.
struct WeekRoom {
    const PaperRuler& ruler;
    qreal width;
};

/// The seven days at a glance.
[[nodiscard]] Piece dayStrip(const WeekRoom& room, const std::vector<WeekDay>& days);
[[nodiscard]] Piece emptyDay(const WeekRoom& room, Day day);
/// Day and yard, white on black.
[[nodiscard]] Piece blockHead(const WeekRoom& room, const QString& words);
[[nodiscard]] Piece takeAlong(const WeekRoom& room, const QString& things);
/// A row and the lines of its grid: usually one piece, more where it is long.
[[nodiscard]] std::vector<Piece> rowPieces(const WeekRoom& room, const WeekRow& row);
/// out ____ = Home ____ + Mill ____ + sold ____ ...
[[nodiscard]] Piece sumLine(const WeekRoom& room, const QStringList& parts);
/// Room to write, for one yard or two beside each other.
/// @param height  of the room to write in, at least kNotes
[[nodiscard]] Piece notesFor(const WeekRoom& room, const QStringList& yards, qreal height);

}  // namespace tenthday
