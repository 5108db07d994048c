/// @file load_bar.h  One load as a bar: thickness falls from grafted to accepted to sealed.
#pragma once
#include "chart/builder_row.h"
#include "chart/trouble_line.h"

namespace tenthday {

/// @param base  y on which the bar stands
/// @return its target; -1 where it is out of sight
int layLoadBar(const LaneInput& input, const BuilderRow& row, const BuilderLoad& load, qreal base,
               BuilderTracks& tracks, Sheet& sheet);

/// The batch's number, its cells and its hours, where they meet nothing.
/// @param target  as layLoadBar gave it
void writeLoad(const LaneInput& input, const BuilderLoad& load, qreal base, int target,
               BuilderTracks& tracks, Sheet& sheet);

/// Index of the worst finding about a load whose end is in sight; -1: there is none.
[[nodiscard]] int worstInSight(const LaneInput& input, const BuilderRow& row,
                               const BuilderLoad& load, const BuilderTracks& tracks);

/// What the lane's head tells of a load. @param index  of the finding
[[nodiscard]] Trouble troubleOf(const LaneInput& input, const BuilderLoad& load, int index);

/// A sign for each load in trouble, and words where they have room beside the bars; those that have
/// none are left to the lane's head.
void layTrouble(const LaneInput& input, const BuilderRow& row, const QRectF& area, bool hasOutlines,
                BuilderTracks& tracks, Sheet& sheet);

}  // namespace tenthday
