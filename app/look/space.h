/// @file space.h  What a distance is for, in logical px. Sizes of type are in type.h.
#pragma once
#include <QtGlobal>

namespace tenthday::space {

inline constexpr qreal kPage = 14;     ///< from the edge of a page or window
inline constexpr qreal kLane = 12;     ///< air between lanes, and between entries of a line
inline constexpr qreal kName = 10;     ///< from a name to what it names
inline constexpr qreal kPart = 6;      ///< between parts of one thing; from a mark to its word
inline constexpr qreal kInset = 4;     ///< from an edge to the word inside it
inline constexpr qreal kPlate = 2;     ///< of a word's own ground around it
inline constexpr qreal kLeastHit = 8;  ///< what a hand can hit: never less, each way

}  // namespace tenthday::space
