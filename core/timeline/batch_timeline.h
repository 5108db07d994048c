/// @file batch_timeline.h  One batch on the calendar: its dates, its stays in builders, its counts
/// and how long it holds nucs. A pure function of the batch and what it leans on.
#pragma once
#include <array>
#include <span>
#include <vector>

#include "biology/queen_clock.h"
#include "facts/facts.h"
#include "mating/first_eggs.h"
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
    std::span<const Ptr<Step>> steps;  ///< of the batch's method
    CatchRule catchRule = CatchRule::SealedBrood;
    const Facts* facts = nullptr;
    const MatingTable* mating = nullptr;
};

/// Expected counts along the chain; an observed count replaces its expectation and carries the
/// rest.
struct BatchCounts {
    double grafted = 0;
    double accepted = 0;
    double sealed = 0;
    double ripe = 0;
    double emerged = 0;
    double laying = 0;
    double good = 0;
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
    Moment transfer;  ///< cells into nucs
    Day transferDay;
    Day lookDay;             ///< first look: a failure becomes known
    Day catchDay;            ///< a good queen frees her nuc; the last day held
    double layingShare = 0;  ///< of cells placed, chance of a laying queen at the first look
    std::vector<StateShares> shares;  ///< per day from transferDay to catchDay + 1
};

struct BatchTimeline {
    Moment graft;          ///< day 0; reckoned back for other starts
    bool grafted = false;  ///< an outcome says so: what is observed no longer moves
    QueenClock clock;
    std::vector<EventDates> events;  ///< in the order of Event; some methods lack some
    BatchCounts counts;
    std::vector<LoadSpan> loads;
    NucHold hold;
    /// Moment at which the risk of a queen out reaches the fact `first_out_risk`, least over boxes.
    Moment latestMove;

    /// The event's dates, or null where this batch has none.
    [[nodiscard]] const EventDates* find(Event event) const;
    /// Calendar days from the graft's day.
    [[nodiscard]] std::int32_t dayNumber(Moment moment) const {
        return static_cast<std::int32_t>((dayOf(moment) - dayOf(graft)).count());
    }
};

/// Dates, stays, counts and hold of one batch. `trace`, when given, is told how each came to be.
[[nodiscard]] BatchTimeline timelineOf(const BatchInputs& inputs, Trace* trace = nullptr);

}  // namespace tenthday
