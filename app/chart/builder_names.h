/// @file builder_names.h  Names beside the builders' rows: one each where rows are high enough,
/// else one for neighbours, with a bracket about what it names. None is left out.
#pragma once
#include "chart/builder_row.h"

namespace tenthday {

/// Rows with one name, from the first to the last, both in it.
struct JoinedRows {
    std::size_t first = 0;
    std::size_t last = 0;
    qreal height = 0;  ///< px
};

/// Neighbours joined until each name has its `line`; those alike but for their number first.
[[nodiscard]] std::vector<JoinedRows> joinedRows(const std::vector<BuilderRow>& rows, qreal track,
                                                 qreal line);

/// About all that a name beside them names, from top to bottom.
void layBracket(const LaneInput& input, qreal top, qreal bottom, Sheet& sheet);

/// @param top  of the first row
void layBuilderNames(const LaneInput& input, const std::vector<BuilderRow>& rows, qreal top,
                     const BuilderTracks& tracks, Sheet& sheet);

}  // namespace tenthday
