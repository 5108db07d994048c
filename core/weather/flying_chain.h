/// @file flying_chain.h  Flying days as a chain: good days follow good ones more often than not.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "calendar/window.h"

namespace tenthday {

/// What a chain is told of one day.
struct FlyingChainDay {
    std::optional<double> chance;  ///< that it is a flying day, were no day before it known, 0..1
    std::optional<bool> known;     ///< recorded or forecast; counts before the chance
};

/// A two-state Markov chain of days that are flying days or not. With chance r, the persistence, a
/// day is as the day before it; else it falls out by its own chance p:
///
///     P(flies | the day before flew)     = p + r (1 - p)
///     P(flies | the day before did not)  = p (1 - r)
///
/// so the chance f of a day, whatever came before, goes f(d) = (1 - r) p(d) + r f(d - 1). With p
/// the same every day f = p, and days k apart have the correlation r to the power k. Where p
/// changes, f is not p: it is a mean of p over the days so far, the last ones weighing most, and
/// trails a steady rise or fall by r / (1 - r) days: under one at the default, little beside what
/// monthly means can tell.
///
/// A known day is certain, whatever came before it, and the days after it follow from it; of days
/// before it, it tells nothing. A day with neither chance nor knowledge is a gap: the day after it
/// begins the chain anew with f = p, as the first day does.
class FlyingChain {
public:
    /// @param first  the day of days[0]; those that follow stand one by one
    /// @param persistence  r, 0..1 (the fact fly_persistence)
    FlyingChain(Day first, std::vector<FlyingChainDay> days, double persistence);

    [[nodiscard]] const DayWindow& window() const { return window_; }
    /// All these days lie in the window, and none is a gap. True of an empty window.
    [[nodiscard]] bool covers(const DayWindow& days) const;
    /// The day is recorded or forecast; then whether it is a flying day.
    [[nodiscard]] std::optional<bool> known(Day day) const;
    /// Chance f that the day is a flying day; nothing in a gap and outside the window.
    [[nodiscard]] std::optional<double> chance(Day day) const;

    /// The wait for the first flying day on `day` or after it. Entry k is the chance that none
    /// comes in the first k days, `day` being the first of them: entry 0 is 1, and entry k less
    /// entry k + 1 the chance that it comes k days after `day`.
    /// @param days  at most so many; fewer where the window or a gap ends them
    [[nodiscard]] std::vector<double> waitFrom(Day day, std::int32_t days) const;
    /// The same for the next flying day after `day`, were that a flying day: entry k less entry
    /// k + 1 is the chance that it comes k + 1 days after `day`.
    [[nodiscard]] std::vector<double> waitAfterFlying(Day day, std::int32_t days) const;

    /// The same chain for virgins who can fly on some days only (their nucs stand at a mating
    /// station then): no other day is a flying day. Days of a stay follow the weather before it.
    [[nodiscard]] FlyingChain onlyIn(std::span<const DayWindow> stays) const;

private:
    struct Step {
        bool gap = true;
        std::optional<bool> known;
        double chance = 0;       ///< f
        double afterFlying = 0;  ///< chance, the day before being a flying day
        double afterNone = 0;    ///< chance, the day before being none
    };
    [[nodiscard]] const Step* find(Day day) const;
    [[nodiscard]] std::vector<double> wait(Day first, double chanceOfFirst,
                                           std::int32_t days) const;

    DayWindow window_;
    std::vector<Step> steps_;
};

}  // namespace tenthday
