/// @file side_row.h  One nuc of an opened yard: its days joined where nothing changes.
#pragma once
#include "chart/bands.h"
#include "chart/lane.h"

namespace tenthday {

/// The band in which a single nuc is drawn on a day.
[[nodiscard]] Band bandOf(const SideDay& day);

/// Days in a row on which a batch's queen of one nuc is out and has no eggs for sure.
struct SideWait {
    struct Box {
        Band band{};
        QRectF rect;
    };
    Id<Batch> batch;
    std::vector<Box> boxes;
};

class LaySideRow {
public:
    /// @param place  in `outlook.nucs.sides`
    LaySideRow(const LaneInput& input, int place, Id<Yard> yard, const QRectF& area, Sheet& sheet);

    /// Where words about its queens could stand, clear of the row's own.
    [[nodiscard]] const std::vector<SideWait>& waits() const { return waits_; }

private:
    void add(Day day, const SideDay& is);
    void addToStretch(const SideDay& is, Band band, const QRectF& rect, int target);
    void end();
    void endStretch();
    void endStay();
    void writeBatch();

    const LaneInput& input_;
    const SideOutlook& side_;
    int place_;
    Id<Yard> yard_;
    QRectF area_;
    qreal gap_;
    Sheet& sheet_;
    const SideRound* round_ = nullptr;
    QRectF stay_;      ///< all days of the round in sight
    QRectF wordRoom_;  ///< its first band in sight, where its number can stand
    Band wordBand_{};
    QRectF stretch_;
    Band band_{};
    int target_ = -1;
    SideWait wait_;
    std::vector<SideWait> waits_;
};

/// Writes how late a batch is over days of one nuc on which its queen is due to fly.
/// @return false where there is no room, or the ribbon runs through: nothing is written then
bool writeLate(const LaneInput& input, const SideWait& wait, const QString& words, Sheet& sheet);

}  // namespace tenthday
