/// @file late_words.h  In the block of a batch that weather makes late: its number, and how late.
#pragma once
#include "chart/yard_picture.h"

namespace tenthday {

/// "702", "late: 9 days without flying".
struct LateWords {
    QString number;
    QString words;
};

/// Writes them, after a sign, on a plate over neighbouring days of the block: within one band, so
/// that it hides no edge between two, and clear of the lines of today and the chosen day. With
/// fewer words where there is less room; in the end the sign and the number alone, on any bands.
/// @return the plate; null where there is no room, or the ribbon runs through: nothing is written
QRectF writeLate(const LaneInput& input, const YardPicture& picture, Id<Batch> batch,
                 const LateWords& text, Sheet& sheet);

}  // namespace tenthday
