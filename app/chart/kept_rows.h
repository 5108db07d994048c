/// @file kept_rows.h  Builders' rows as they were laid last: one on which nothing differs is not
/// laid again.
#pragma once
#include "chart/builder_row.h"
#include "chart/trouble_line.h"

namespace tenthday {

/// A row of now with all that its layout hangs on, beside what LaneInput::isAsBefore tells of and
/// other rows' places. All of it is held, so that equal pointers are equal ones.
struct RowLeaning {
    struct Load {
        std::shared_ptr<const BatchOutlook> batch;  ///< null where it is of no batch of the season
        const LoadSpan* span = nullptr;             ///< in its timeline
        int track = 0;
        friend bool operator==(const Load&, const Load&) = default;
    };
    /// What is wrong with a load in sight, as it is told in the row.
    struct Told {
        std::size_t load = 0;
        int index = -1;  ///< in the findings: what is told stays the same where it differs
        Day day;
        Severity severity{};
        QString words;  ///< empty where tracks are too low for words
    };
    QRectF area;
    qreal track = 0;      ///< px
    qreal pxPerCell = 0;  ///< thickness of one cell
    Ptr<Builder> builder;
    std::vector<Load> loads;
    std::vector<Told> told;
    std::vector<Ptr<MakeUp>> makeUps;
    std::vector<WildClock> clocks;
    std::vector<DayWindow> idle;
    bool hasGhosts = false;  ///< of what the preview moves: it is laid afresh
    bool showsPlan = false;  ///< where loads were planned; not in a preview

    RowLeaning(const LaneInput& input, const BuilderRow& row, const QRectF& rowArea,
               const BuilderTracks& tracks);
    /// Of the finding about a load; -1: none in sight.
    [[nodiscard]] int indexOf(std::size_t load) const;
    /// Its loads and marks are to be laid as they were, wherever the row lies.
    [[nodiscard]] bool standsAs(const RowLeaning& before) const;
    /// Its troubles are to be told as they were, where it stands as it did.
    [[nodiscard]] bool tellsAs(const RowLeaning& before) const;
};

class KeptRows {
public:
    /// Lays row under row in a lane, each as layBuilderRow() and layTrouble() do. @param top  of
    /// the first
    void lay(const LaneInput& input, const std::vector<BuilderRow>& rows, const QRectF& lane,
             qreal top, BuilderTracks& tracks, Sheet& sheet);
    /// Troubles without room in their rows, each once.
    [[nodiscard]] std::vector<Trouble> untold(const LaneInput& input,
                                              const std::vector<BuilderRow>& rows) const;
    /// How many rows' loads were laid afresh, ever.
    [[nodiscard]] int laidAfresh() const { return laid_; }

private:
    struct Part {
        Sheet sheet;
        RowPlaces places;
    };
    struct Kept {
        std::optional<RowLeaning> leaning;
        std::unique_ptr<Part> loads;
        std::vector<Ribbon::Out> outs;  ///< of the loads
        std::unique_ptr<Part> troubles;
    };
    /// Lays one row after another.
    class Laying;
    std::vector<Kept> rows_;
    int laid_ = 0;
};

}  // namespace tenthday
