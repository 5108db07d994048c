/// @file builder_row.h  One builder's row. Loads that overlap in time stand in tracks of their own.
#pragma once
#include "chart/lane.h"
#include "chart/load_troubles.h"
#include "chart/taken_places.h"
#include "chart/trouble_line.h"

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
[[nodiscard]] std::vector<BuilderRow> builderRows(const Outlook& outlook);
/// Most cells standing in one load at a time; at least 1.
[[nodiscard]] double thickestLoad(const std::vector<BuilderRow>& rows);

/// How high things stand in a track, and what stands in the rows laid so far: no word may meet it.
struct BuilderTracks {
    explicit BuilderTracks(const std::vector<Finding>& findings) : troubles(findings) {}

    LoadTroubles troubles;
    qreal track = 0;      ///< px
    qreal pxPerCell = 0;  ///< thickness of one cell
    TakenPlaces bars;
    TakenPlaces marks;
    TakenPlaces words;
    std::vector<Trouble> untold;  ///< whose words found no room in their row

    /// Bars alone: tracks are too low for marks and words.
    [[nodiscard]] bool isDense() const;
    /// Air under the bars of a track, for its marks.
    [[nodiscard]] qreal belowBar() const;
    /// Meets no mark and no word.
    [[nodiscard]] bool isClear(const QRectF& rect) const;
    /// Nor a bar.
    [[nodiscard]] bool isFree(const QRectF& rect) const;
};

void layBuilderRow(const LaneInput& input, const BuilderRow& row, const QRectF& area,
                   BuilderTracks& tracks, Sheet& sheet);

}  // namespace tenthday
