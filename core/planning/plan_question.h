/// @file plan_question.h  What is asked of a season's plan.
#pragma once
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "planning/plan_answer.h"

namespace tenthday {

/// The orders, losses, nucs and builders are the book's; batches it holds are given and are never
/// changed. What the user can say besides:
struct PlanQuestion {
    /// Days on which may be grafted; those outside the season, or before today, are none.
    DayWindow grafts{kFirstDay, kLastDay};
    /// Weekdays, Monday first, on which nothing is grafted and no ripe cells come out. Neither is
    /// on the book's days off.
    std::array<bool, 7> freeWeekdays{};
    /// Most grafts on one day, >= 1; empty: as many as the builders take.
    std::optional<std::int32_t> mostGraftsADay;
    /// Most minutes of work, ways included, on days on which a proposed batch is grafted, its cells
    /// come out or its queens are caught, beside what the book has on them; >= 1. Empty: any.
    std::optional<std::int32_t> mostMinutesADay;
    /// No batch is meant to give more than half of an order of two or more.
    bool notOnOneBatch = false;
    /// Proposals held fast: they stand as they are, and the rest is planned around them.
    std::vector<ProposedBatch> keep;

    friend bool operator==(const PlanQuestion&, const PlanQuestion&) = default;
};

}  // namespace tenthday
