/// @file grafts_for.h  How many grafts would do, split over batches as they are planned.
#pragma once
#include <cstdint>
#include <functional>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday {

/// What is hoped for: its chance by an outlook, 0..1.
using Aim = std::function<double(const Outlook&)>;

/// So many queens (>= 1) in hand by a day, since the season began; those for orders among them.
[[nodiscard]] Aim queensInHand(std::int32_t queens, Day by);
/// An order whole on its day; 0 where it is not of the season.
[[nodiscard]] Aim orderWhole(Id<Order> order);

/// A batch that is still to be grafted.
struct BatchGrafts {
    Ptr<Batch> batch;
    Day graft;
    std::int32_t planned = 0;
    std::int32_t needed = 0;
};

struct GraftsWanted {
    std::vector<BatchGrafts> batches;  ///< by graft
    double plannedChance = 0;          ///< of the aim with the grafts as they are planned
    double neededChance = 0;           ///< with `needed`
    /// `neededChance` is as high as was asked for. If not, `needed` are as many as were tried:
    /// weather, nucs or the number of batches bind, and no number of grafts helps.
    bool isEnough = false;

    [[nodiscard]] std::int32_t planned() const;
    [[nodiscard]] std::int32_t needed() const;
};

/// The fewest grafts, in proportion to those planned, with which the aim is reached; more or fewer
/// than are planned. Each bar keeps one at the least. All rules of the season hold: own rates,
/// weather, nucs that take the cells, earmarks. Only batches whose graft lies ahead of today and
/// whose queens are caught by then can have other numbers; where there is none the plan stands.
/// @param by     the day of the aim
/// @param level  chance asked for, above 0 and below 1
[[nodiscard]] GraftsWanted graftsWanted(const Snapshot& snapshot, const Aim& aim, Day by,
                                        double level);

}  // namespace tenthday
