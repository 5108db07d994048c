/// @file chain_runs.h  Generated climates, and the weather of a chain drawn day by day.
#pragma once
#include <cmath>
#include <random>
#include <vector>

#include "weather/climate.h"
#include "weather/flying_chain.h"

namespace tenthday::test {

/// Numbers from 0 to under 1, the same with every library.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : engine_(seed) {}
    double operator()() { return static_cast<double>(engine_() >> 11) * 0x1p-53; }
    double between(double low, double high) { return low + (high - low) * (*this)(); }

private:
    std::mt19937_64 engine_;
};

/// A climate with a warm and a cold half, rain as it comes.
inline Climate someClimate(Draws& draw) {
    Climate climate;
    const double mean = draw.between(12, 22);
    const double swing = draw.between(3, 11);
    for (std::size_t m = 0; m < climate.months.size(); ++m)
        climate.months[m] = {mean - swing * std::cos((static_cast<double>(m) - 0.5) * 0.5236),
                             draw.between(0, 20)};
    return climate;
}

struct SomeChain {
    Day first;
    std::vector<FlyingChainDay> days;
    double persistence;
    [[nodiscard]] FlyingChain chain() const { return {first, days, persistence}; }
};
/// So many days of a generated climate between March and November; of a few days it is known
/// whether they are flying days.
inline SomeChain someChain(Draws& draw, int size) {
    const Day first = Day{date::local_days{date::year{2027} / 3 / 1}} +
                      Days{static_cast<int>(draw.between(0, 200))};
    const auto chances = flyingChances(someClimate(draw), {first, first + Days{size - 1}},
                                       {18, 6.7, 1}, draw.between(2, 7));
    SomeChain some{first, {}, draw.between(0, 0.8)};
    for (const auto& chance : chances) {
        const bool known = draw() < 0.1;
        some.days.push_back({chance, known ? std::optional(draw() < 0.5) : std::nullopt});
    }
    return some;
}

/// One run of the weather: a day is as the day before with chance r, else it falls out by p.
inline std::vector<bool> weatherOf(const SomeChain& some, Draws& draw) {
    std::vector<bool> flies;
    for (const auto& [chance, known] : some.days) {
        const bool stays = draw() < some.persistence && !flies.empty();
        const bool fresh = draw() < chance.value();
        flies.push_back(known.value_or(stays ? flies.back() : fresh));
    }
    return flies;
}

/// Four and a half standard errors of a share q counted in so many runs, and one run more for
/// shares next to none: of a thousand comparisons less than one in a hundred fails by chance.
inline double tolerance(double q, int runs) {
    return 4.5 * std::sqrt(q * (1 - q) / runs) + 1.0 / runs;
}

}  // namespace tenthday::test
