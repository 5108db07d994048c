/// @file nucs.h  Every nuc side over the season, and what that makes of each yard's days.
#pragma once
#include <array>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/shared_list.h"
#include "calendar/window.h"
#include "occupancy/numbers.h"
#include "records/snapshot.h"
#include "timeline/batch_timeline.h"

namespace tenthday {

/// Why a nuc is not ready.
enum class NotReady : std::uint8_t {
    None,
    NotStocked,
    QueenlessTooShort,
    HoldsCell,
    HoldsVirgin,
    DueToFly,
    Laying,
    AwaitingCatch,
    NeedsBrood,
    Retired
};
template <>
struct TokensOf<NotReady> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"", "not_stocked", "queenless_too_short", "holds_cell", "holds_virgin", "due_to_fly",
         "laying", "awaiting_catch", "needs_brood", "retired"});
};

/// One cell's stay in one side, planned or done.
struct SideRound {
    Id<Batch> batch;
    const BatchTimeline* timeline = nullptr;
    Day transferDay;
    bool done = false;   ///< the placement is recorded
    bool named = false;  ///< by a stored placement; else found by first fit
    Day lookDay;   ///< when a failure is or was known: not before today while nobody has looked
    Day catchDay;  ///< last day held: seen, or by plan, not before today
    /// Last outcome: NoQueen, DroneLayer, Laying, JudgedGood, Caught or Spent.
    std::optional<NucState> seen;
    std::optional<Day> seenDay;

    /// Chance of a laying queen at the look, 1 once one was seen.
    [[nodiscard]] double layingShare() const;
    /// Nobody knows yet whether she lays: nothing was seen, or only her virgin.
    [[nodiscard]] bool isOpen() const { return !seen || *seen == NucState::Virgin; }
    /// Shares of states on a day it holds.
    [[nodiscard]] StateShares sharesOn(Day day) const;
};

/// A queen of a season before that was left in her nuc for the winter.
struct WinteredQueen {
    Ptr<Queen> queen;
    Day from;           ///< left there
    Day last;           ///< last day in it: caught, moved or lost then; kLastDay: still there
    bool lost = false;  ///< on that day
};

/// A stretch of days in which a side is one thing.
struct SideSegment {
    enum class Kind : std::uint8_t {
        NotStocked,
        Empty,  ///< stocked, nothing in it yet
        Held,   ///< a cell or queen in it: `round`
        Freed,  ///< empty after `round`, or after `wintered`
        Spent,
        Wintered  ///< a queen of a season before in it: `wintered`
    };
    Kind kind{};
    DayWindow days;
    std::int32_t round = -1;        ///< index into SideOutlook::rounds; -1: none
    std::int32_t wintered = -1;     ///< index into SideOutlook::wintered; -1: none
    bool certain = true;            ///< Freed: seen to be so, not only planned
    Day readyFrom = kLastDay;       ///< Empty, Freed: queenless long enough from here
    Day needsBroodFrom = kLastDay;  ///< Empty, Freed: wants open brood or combining from here
};

/// A box stands in a yard, or nowhere, from a day on.
struct BoxStayFrom {
    Day from;
    std::optional<Id<Yard>> yard;
};

/// One side of a box with all that happens to it, in order of time.
struct SideOutlook {
    Ptr<NucSide> side;
    Ptr<Box> box;
    DayWindow stands;                          ///< its layout is in force
    std::span<const BoxStayFrom> stays;        ///< of its box, by day
    std::span<const Ptr<Stocking>> stockings;  ///< by id
    std::vector<SideRound> rounds;
    std::vector<WinteredQueen> wintered;  ///< by day; of batches that are not read
    std::vector<SideSegment> segments;    ///< cover `stands` without gaps; some are empty

    /// The yard it stands in on a day, or nothing.
    [[nodiscard]] std::optional<Id<Yard>> yardOn(Day day) const;
};

/// What a side is at the start of work on a day, before cells only planned for that day.
struct SideDay {
    NucState state{};
    double chance = 1;         ///< of `state`, 0..1
    std::optional<Day> since;  ///< first day of this stretch: a cell's whole stay is one
    bool ready = false;
    double likely = 0;  ///< chance to be ready if caught or looked at by the day before
    bool canStock = false;
    bool needsBrood = false;
    std::optional<Day> readyFrom;  ///< first day it is, or by plan will be, ready
    NotReady reason = NotReady::None;
    StateShares shares{};                     ///< sums to 1
    const SideRound* round = nullptr;         ///< the round it is in or comes from
    const WinteredQueen* wintered = nullptr;  ///< likewise
};
[[nodiscard]] SideDay sideOn(const SideOutlook& side, Day day, Day today);

/// What one nuc adds to the four numbers of a day.
[[nodiscard]] ReadyNumbers numbersOf(const SideDay& day);
/// First day of the run of days, up to this one, on which it is what it is now.
[[nodiscard]] std::optional<Day> stateSince(const SideOutlook& side, Day day, Day today);
/// Days a nuc must be queenless before it takes a cell: of hours known by the day only, a part of
/// a day counts as a whole one.
[[nodiscard]] Days queenlessDays(const Facts& facts);

/// One day of one yard.
struct YardDay {
    /// Sides per state, whole numbers by largest remainder; their sum is `sides`.
    std::array<std::int16_t, kTokenCount<NucState>> stack{};
    std::int16_t sides = 0;
    ReadyNumbers numbers;
};

/// A batch's stay in one yard's nucs, for its number on the chart.
struct BatchBlock {
    Id<Batch> batch;
    DayWindow days;          ///< transfer to catch
    std::int32_t cells = 0;  ///< placed or planned there
};

struct YardOutlook {
    Ptr<Yard> yard;
    std::vector<YardDay> days;       ///< one per day of the season, from its first
    std::vector<BatchBlock> blocks;  ///< by day
    std::int32_t mostSides = 0;      ///< most sides standing on any day of the season
};

/// A day on which ripe cells come out.
struct CellsDay {
    Day day;
    std::vector<Id<Batch>> batches;
    std::int32_t ripe = 0;    ///< expected or counted, rounded
    std::int32_t toNucs = 0;  ///< of these, for nucs
    ReadyNumbers numbers;     ///< of all mating yards
    std::int32_t placed = 0;  ///< found a nuc by stored placement or first fit
    [[nodiscard]] std::int32_t left() const { return numbers.ready - toNucs; }
};

class BareSides;
struct FittedNucs;
class NucMemo;

struct NucOutlook {
    std::shared_ptr<const BareSides> bare;  ///< whose stays the sides look into
    /// What they were told from; null where they were put together by hand.
    std::shared_ptr<const FittedNucs> fitted{};
    /// By box label, then side. Equal pointers mean that nothing about a side has changed.
    SharedList<SideOutlook> sides;
    std::vector<YardOutlook> yards;   ///< in driving order, those with a box in the season
    std::vector<CellsDay> cellsDays;  ///< by day
};

/// All nucs of the snapshot's season; the result points into the timelines.
/// @param owner  keeps the timelines alive: the memo holds on to them
/// @param memo   gives back what it kept of an earlier season as far as that holds: see there
[[nodiscard]] NucOutlook nucOutlook(const Snapshot& snapshot, const Timelines& timelines,
                                    std::shared_ptr<const void> owner, NucMemo& memo);

}  // namespace tenthday
