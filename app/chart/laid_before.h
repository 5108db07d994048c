/// @file laid_before.h  What was laid out last, to be used again where nothing it hangs on differs.
/// Lives with whoever shows the chart; only faster.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// A lane in its place, with what it gave.
struct PlacedLane {
    std::unique_ptr<Lane> lane;
    std::optional<LaneName> name;  ///< where it can be folded
    QString title;
    bool isRowsOfBefore = false;
    QRectF area{};
    std::unique_ptr<Sheet> laid{};
    std::unique_ptr<Sheet> written{};
    Ribbon ends{};          ///< of the ribbon, as laid
    bool isUnseen = false;  ///< not laid now: what it gave is of another time
    Ribbon endsUnseen{};    ///< of now
};
using Lanes = std::vector<PlacedLane>;

/// What any lane may lean on, beside batches, builders, nucs, findings and the season of before.
/// All of it is held, but for the ruler: where that goes, call LaidBefore::forget().
struct LaidUnder {
    DayAxis axis;
    const TextRuler* ruler;
    qreal pixelRatio;
    std::optional<Day> chosenDay;
    std::optional<Id<Batch>> selected;
    std::vector<Id<Batch>> alsoSelected;
    std::vector<Id<Yard>> openYards;
    std::vector<LaneName> foldedLanes;
    bool canFold;
    bool isPicture;
    ChartProposalsPtr proposals;
    Day today;
    DayWindow season;
    std::shared_ptr<const Facts> facts;
    std::shared_ptr<const MatingTable> mating;

    LaidUnder(const Outlook& outlook, const DayAxis& days, const ChartOptions& options,
              const TextRuler& by);
    friend bool operator==(const LaidUnder&, const LaidUnder&) = default;
};

struct LaidBefore {
    YardStacks stacks;
    Lanes lanes;  ///< from top to bottom
    std::optional<LaidUnder> under;

    /// Words are measured otherwise from now on.
    void forget() {
        lanes.clear();
        under.reset();
    }
};

}  // namespace tenthday
