/// @file batch_timeline.h  One batch on the calendar: its dates, its stays in builders, its counts
/// and how long it holds nucs. A pure function of the batch and what it leans on.
#pragma once
#include <array>
#include <span>
#include <utility>
#include <vector>

#include "biology/queen_clock.h"
#include "calendar/window.h"
#include "facts/facts.h"
#include "losses/chain.h"
#include "mating/mating_table.h"
#include "records/rows.h"
#include "timeline/event.h"
#include "timeline/nuc_state.h"
#include "timeline/trace.h"

namespace tenthday {

/// What one batch's timeline leans on, and nothing else. Spans must outlive the call.
struct BatchInputs {
    Ptr<Batch> batch;
    std::span<const Ptr<BatchBar>> bars;
    std::span<const Ptr<BatchLoad>> loads;
    std::span<const Ptr<BatchShare>> shares;
    std::span<const Ptr<Placement>> placements;
    std::span<const Ptr<Outcome>> outcomes;
    std::span<const Ptr<MatingStay>> stays;
    std::span<const Ptr<Step>> steps;  ///< of the batch's method
    /// Bars that rear in a dearth without feed: fewer of their grafts are started.
    std::span<const std::int32_t> hungryBars;
    CatchRule catchRule = CatchRule::SealedBrood;
    const Facts* facts = nullptr;
    const MatingTable* mating = nullptr;  ///< for a station, of its days there
};

/// Cells of one batch standing in one builder (or in none yet) during one step.
struct LoadSpan {
    std::optional<Id<Builder>> builder;
    BuilderKind where{};
    std::int32_t step = 1;
    std::vector<std::int32_t> bars;  ///< bar numbers standing there
    MomentSpan span;
    Day restUntil;  ///< last day of rest after it; the day it ends when there is no rest
    /// Cells over time: each from its moment on; the first is span.from.
    struct Thickness {
        Moment from;
        double cells;
        bool sealed;
    };
    std::vector<Thickness> thickness;
};

/// Shares of the states of one placed cell's nuc at the start of work on one day; sums to 1.
using StateShares = std::array<float, kTokenCount<NucState>>;

/// How the batch's nucs go from the transfer on.
struct NucHold {
    Moment transfer;  ///< first cells into nucs
    Moment leaves;    ///< last cells out of the builder
    Day transferDay;
    Day lookDay;   ///< first look: a failure becomes known
    Day catchDay;  ///< a good queen frees her nuc; the last day held
    Day lostDay;   ///< a virgin not found at the look is taken as lost by then
    CatchRule catchRule = CatchRule::SealedBrood;
    /// Last day held under each catch rule, in the order of CatchRule: what each costs.
    std::array<Day, kTokenCount<CatchRule>> catchBy{};
    double layingShare = 0;  ///< of cells placed, chance of a laying queen at the first look;
                             ///< weather that never lets her mate is in it
    double virginShare = 0;  ///< the same once her virgin was seen
    std::vector<StateShares>
        shares;  ///< at the start of work, per day from transferDay to catchDay

    /// Shares on a day of the hold; the last day's for any later one.
    [[nodiscard]] const StateShares& on(Day day) const;
    /// Days a nuc is held, transfer and catch both counted.
    [[nodiscard]] std::int32_t nucDays() const { return DayWindow{transferDay, catchDay}.size(); }
    /// The same, were the queens caught by this rule.
    [[nodiscard]] std::int32_t nucDays(CatchRule rule) const {
        return DayWindow{transferDay, catchBy[static_cast<std::size_t>(rule)]}.size();
    }
};

struct BatchTimeline {
    Moment graft;          ///< day 0; reckoned back for other starts
    bool grafted = false;  ///< an outcome says so: what is observed no longer moves
    QueenClock clock;
    std::vector<EventDates> events;  ///< in the order of Event; some methods lack some
    ChainCounts counts;
    std::vector<LoadSpan> loads;
    NucHold hold;
    double neverMates = 0;  ///< chance of never mating for weather, 0..1
    bool weather = false;   ///< possible seasons stand behind the first eggs
    Moment levelEggs;       ///< the share `likely_level` of queens that will lay has eggs
    /// Moment at which the risk of a queen out reaches the fact `first_out_risk`, least over boxes.
    Moment latestMove = Moment::max();

    /// The event's dates, or null where this batch has none.
    [[nodiscard]] const EventDates* find(Event event) const;
    /// Calendar days from the graft's day.
    [[nodiscard]] std::int32_t dayNumber(Moment moment) const {
        return static_cast<std::int32_t>((dayOf(moment) - dayOf(graft)).count());
    }
};

/// Batches with their timelines; where nothing else is said, in the order of graft.
using Timelines = std::vector<std::pair<Id<Batch>, const BatchTimeline*>>;

/// What dates hang on, apart from any book.
struct DatePlan {
    Start start = Start::Graft;
    Moment begin;                      ///< moment of the start
    std::optional<double> larvaFromH;  ///< h since hatching; both or none
    std::optional<double> larvaToH;
    std::vector<Step> steps;           ///< of the method, in order
    double cellsInBox = 40;            ///< living sealed cells in the fullest box, >= 1
    std::optional<double> incubatorC;  ///< temperature of incubator steps; empty: the brood nest's
    CatchRule catchRule = CatchRule::SealedBrood;
    std::optional<Moment> graftSeen;
    std::optional<Moment> emergenceSeen;
    std::optional<Moment> transfer;  ///< first cells into nucs, where it is not the method's
    std::optional<Moment> leaves;    ///< last cells into nucs, where they go in turns
    Mating mating = Mating::Open;
    std::optional<Day> inseminated;  ///< the last day of it; none: at the usual age
    bool stationDays = false;        ///< the mating table holds those of its stays only
};

struct BatchDates {
    Given given = Given::Sealed;
    Moment graft;
    QueenClock clock;
    Moment transfer;  ///< first cells into nucs
    Moment leaves;    ///< last cells out of the builder
    Moment latestMove = Moment::max();
    std::vector<EventDates> events;
    std::array<Moment, kTokenCount<CatchRule>> catchBy{};  ///< likely, under each rule
    Spread dueToFly;                                       ///< h after the graft
    EggHours firstEggs;     ///< of those that will lay, h after the graft
    double neverMates = 0;  ///< chance of never mating for weather, 0..1
    bool weather = false;   ///< possible seasons stand behind the first eggs
    Moment levelEggs;       ///< the share `likely_level` of queens that will lay has eggs
};

/// About when the cells of a grafted batch are sealed; the first of all moments for other starts.
[[nodiscard]] Moment sealingOf(const DatePlan& plan, const Facts& facts);

/// What goes into the nucs: by the start, and by whether it leaves before sealing.
[[nodiscard]] Given givenAs(const DatePlan& plan, const Facts& facts);

/// The dates alone. `trace`, when given, is told how each came to be.
[[nodiscard]] BatchDates datesOf(const DatePlan& plan, const Facts& facts,
                                 const MatingTable& mating, Trace* trace = nullptr);

/// Dates, stays, counts and hold of one batch. `trace`, when given, is told how each came to be.
[[nodiscard]] BatchTimeline timelineOf(const BatchInputs& inputs, Trace* trace = nullptr);

}  // namespace tenthday
