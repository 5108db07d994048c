/// @file yard_picture.h  A yard's stack in pixels: what columns, numbers and the ribbon all read.
#pragma once
#include "chart/lane.h"
#include "chart/yard_stack.h"

namespace tenthday {

struct BandBox {
    BandRun run;
    QRectF rect;  ///< whole column
};

struct DayColumn {
    Day day;
    std::vector<BandBox> boxes;  ///< from the foot up
    ReadyNumbers numbers;
};

/// Part of a batch's places in a yard, over all its stay.
struct BlockSpan {
    Id<Batch> batch;
    qreal top;
    qreal bottom;
    qreal nucs;
};

/// Columns of the days to be seen.
struct YardPicture {
    const YardOutlook* yard = nullptr;
    std::vector<DayColumn> columns;
    std::vector<BlockSpan> blocks;

    /// The tallest box of a column in a band, of a batch where one is given; null where none is.
    [[nodiscard]] QRectF tallest(std::size_t column, Band band,
                                 std::optional<Id<Batch>> batch = {}) const;
    void moveDown(qreal by);
};

/// @param days  to be seen, or some of them
[[nodiscard]] YardPicture yardPicture(const LaneInput& input, const YardOutlook& yard,
                                      const DayWindow& days, const QRectF& area, const Snap& snap);

/// Fills and hatches, and the places to hit.
void layColumns(const LaneInput& input, const YardPicture& picture, Sheet& sheet);
/// Ready numbers and batch numbers, each inside what it counts and clear of the ribbon, or not at
/// all.
void writeYardNumbers(const LaneInput& input, const YardPicture& picture, Sheet& sheet);

}  // namespace tenthday
