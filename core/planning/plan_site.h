/// @file plan_site.h  A book's season as a problem in numbers, and what its numbers stand for.
#pragma once
#include "outlook/outlook.h"
#include "planning/plan_problem.h"
#include "planning/plan_question.h"

namespace tenthday {

/// A problem with the names of its parts.
struct PlanSite {
    PlanProblem problem;
    Day first{};                                  ///< day 0 of the horizon
    std::vector<std::optional<Id<Line>>> lines;   ///< 0: none
    std::vector<std::vector<Id<Builder>>> pools;  ///< builders, by pool
    std::vector<Id<Method>> methods;
    std::vector<Id<Order>> orders;                ///< by demand
    std::vector<Id<Yard>> yards;                  ///< with nucs, in driving order
    std::vector<std::vector<std::int32_t>> nucs;  ///< by yard, by day: free for a new batch
    std::optional<std::int32_t> mostMinutesADay;  ///< as it was asked

    [[nodiscard]] Day day(std::int32_t index) const { return first + Days{index}; }
    [[nodiscard]] std::int32_t index(Day day) const {
        return static_cast<std::int32_t>((day - first).count());
    }
};

/// What stands, by day, beside the batches in the book: builders, nucs, breeder queens; what is
/// owed and not given by them; and each batch that could be grafted on the days asked for. Grafts
/// keep to the days on which drones fly for their queens, where those are known.
[[nodiscard]] Result<PlanSite> planSite(const Outlook& outlook, const PlanQuestion& question);

/// A breeder queen of the line on that day (none: of one that no order asks for), in turn by day;
/// nothing where there is none.
[[nodiscard]] std::optional<Id<Queen>> breederFor(const Snapshot& snapshot, const PlanSite& site,
                                                  std::size_t line, Day day);

/// Parts of planSite(), in this order. Inner to the room.
void addBuilders(const Outlook& outlook, PlanSite& site);
void addNucs(const Outlook& outlook, PlanSite& site);
void addOrders(const Outlook& outlook, PlanSite& site);
[[nodiscard]] Result<void> addOptions(const Outlook& outlook, const PlanQuestion& question,
                                      PlanSite& site);

}  // namespace tenthday
