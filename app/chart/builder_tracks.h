/// @file builder_tracks.h  How high things stand in builders' rows, and what stands in them.
#pragma once
#include <unordered_set>

#include "chart/lane.h"
#include "chart/load_troubles.h"
#include "chart/taken_places.h"

namespace tenthday {

/// Heights on the chart, px, both in it; empty until something is added.
struct Stripe {
    qreal top = 1;
    qreal bottom = 0;

    [[nodiscard]] bool isEmpty() const { return top > bottom; }
    void add(const QRectF& rect) {
        top = isEmpty() ? rect.top() : std::min(top, rect.top());
        bottom = std::max(bottom, rect.bottom());
    }
    [[nodiscard]] Stripe movedDown(qreal by) const {
        return isEmpty() ? *this : Stripe{top + by, bottom + by};
    }
    [[nodiscard]] bool meets(const Stripe& other) const {
        return !isEmpty() && !other.isEmpty() && top <= other.bottom && other.top <= bottom;
    }
};

/// What a row gives to those laid after it, and what it asked of those laid before it.
struct RowPlaces {
    std::vector<QRectF> bars;
    std::vector<QRectF> marks;
    std::vector<QRectF> words;
    std::vector<std::size_t> untold;  ///< loads whose words of trouble found no room in their row
    Stripe asked;                     ///< where it looked for what stands there

    [[nodiscard]] bool standsAs(const RowPlaces& other) const {
        return bars == other.bars && marks == other.marks && words == other.words;
    }
    /// All heights at which something of it stands.
    [[nodiscard]] Stripe stripe() const;
    void moveDown(qreal by);
};

/// What stands in the rows laid so far: no word may meet it.
class BuilderTracks {
public:
    explicit BuilderTracks(const LaneInput& input);

    LoadTroubles troubles;
    std::unordered_set<Id<Batch>> moved;  ///< by the preview
    qreal track = 0;                      ///< px
    qreal pxPerCell = 0;                  ///< thickness of one cell

    void addBar(const QRectF& rect);
    void addMark(const QRectF& rect);
    void addWord(const QRectF& rect);
    /// @param load  of the row laid now
    void leaveUntold(std::size_t load) { row_.untold.push_back(load); }
    /// What the row laid now gave; the next begins.
    [[nodiscard]] RowPlaces takeRow();
    /// A row that is as it was.
    void add(const RowPlaces& row);

    /// Bars alone: tracks are too low for marks and words.
    [[nodiscard]] bool isDense() const;
    /// Air under the bars of a track, for its marks.
    [[nodiscard]] qreal belowBar() const;
    /// Meets no mark and no word.
    [[nodiscard]] bool isClear(const QRectF& rect);
    /// Nor a bar.
    [[nodiscard]] bool isFree(const QRectF& rect);
    /// All that stands somewhere between two heights.
    [[nodiscard]] std::vector<QRectF> within(qreal top, qreal bottom) const;

private:
    TakenPlaces bars_;
    TakenPlaces marks_;
    TakenPlaces words_;
    RowPlaces row_;  ///< of the row laid now
};

}  // namespace tenthday
