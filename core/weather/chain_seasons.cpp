#include "weather/chain_seasons.h"

#include <algorithm>
#include <numeric>

namespace tenthday {
namespace {

/// A number that looks like none other (the finaliser of SplitMix64, S. Vigna, public domain).
std::uint64_t mixed(std::uint64_t n) {
    n += 0x9E3779B97F4A7C15ULL;
    n = (n ^ (n >> 30)) * 0xBF58476D1CE4E5B9ULL;
    n = (n ^ (n >> 27)) * 0x94D049BB133111EBULL;
    return n ^ (n >> 31);
}

/// The step each season has on the n-th day.
std::vector<double> steps(std::size_t seasons, std::uint64_t n) {
    std::vector<std::size_t> order(seasons);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::vector<std::uint64_t> keys(seasons);
    for (std::size_t i = 0; i < seasons; ++i) keys[i] = mixed(mixed(n) + i);
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return keys[a] < keys[b]; });
    std::vector<double> all(seasons);
    for (std::size_t i = 0; i < seasons; ++i)
        all[order[i]] = (static_cast<double>(i) + 0.5) / static_cast<double>(seasons);
    return all;
}

/// Chances of a day, the day before being a flying day or not.
struct DayChances {
    double afterFlying = 0;
    double afterNone = 0;
};

DayChances chancesOf(const FlyingChain& chain, Day day) {
    const auto chance = chain.chance(day);
    if (!chance) return {};
    const auto before = chain.chance(day - Days{1});
    if (!before || chain.known(day)) return {*chance, *chance};
    const auto wait = chain.waitAfterFlying(day - Days{1}, 1);
    const double afterFlying = wait.size() > 1 ? 1 - wait[1] : *chance;
    // chance = before x afterFlying + (1 - before) x afterNone
    const double afterNone =
        *before < 1 ? (*chance - *before * afterFlying) / (1 - *before) : *chance;
    return {afterFlying, std::clamp(afterNone, 0.0, 1.0)};
}

}  // namespace

std::vector<std::vector<std::uint8_t>> chainSeasons(const FlyingChain& chain, std::size_t seasons) {
    const auto days = static_cast<std::size_t>(chain.window().size());
    std::vector<std::vector<std::uint8_t>> all(seasons, std::vector<std::uint8_t>(days));
    for (std::size_t i = 0; i < days; ++i) {
        const auto chances = chancesOf(chain, chain.window().first + Days{static_cast<int>(i)});
        const auto step = steps(seasons, i);
        for (std::size_t season = 0; season < seasons; ++season) {
            const bool flew = i > 0 && all[season][i - 1] != 0;
            all[season][i] = step[season] < (flew ? chances.afterFlying : chances.afterNone);
        }
    }
    return all;
}

}  // namespace tenthday
