/// @file builder_row.h  One builder's row. Loads that overlap in time stand in tracks of their own.
#pragma once
#include "chart/builder_tracks.h"
#include "chart/lane.h"

namespace tenthday {

/// What a row shows: a builder, or the loads that have none yet (builder null).
struct BuilderRow {
    const BuilderOutlook* builder = nullptr;
    QString name;
    std::vector<BuilderLoad> loads;
    std::vector<int> tracks;  ///< per load, 0 lowest
    int trackCount = 1;
};

/// All rows of a season, in order of label; last, where there are any, loads without a builder.
/// @param held  tracks that stay, whether a load stands in them or not
[[nodiscard]] std::vector<BuilderRow> builderRows(const Outlook& outlook,
                                                  const HeldTracks& held = {});
/// Raises what is held to what the season's rows take.
void holdTracks(const Outlook& outlook, HeldTracks& held);
/// Most cells standing in one load at a time; at least 1.
[[nodiscard]] double thickestLoad(const std::vector<BuilderRow>& rows);

/// All of a row but its troubles, which come after it: see layTrouble().
void layBuilderRow(const LaneInput& input, const BuilderRow& row, const QRectF& area,
                   BuilderTracks& tracks, Sheet& sheet);

}  // namespace tenthday
