#include "weather/chain_seasons.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

/// A number that looks like none other (the finaliser of SplitMix64, S. Vigna, public domain).
std::uint64_t mixed(std::uint64_t n) {
    n += 0x9E3779B97F4A7C15ULL;
    n = (n ^ (n >> 30)) * 0xBF58476D1CE4E5B9ULL;
    n = (n ^ (n >> 27)) * 0x94D049BB133111EBULL;
    return n ^ (n >> 31);
}

/// Of some seasons, those in which the n-th day flies: as near to the chance as whole seasons can
/// be.
void fly(std::vector<std::vector<std::uint8_t>>& all, std::vector<std::size_t> some, double chance,
         std::size_t n) {
    const auto key = [&](std::size_t season) { return mixed(mixed(n) + season); };
    std::sort(some.begin(), some.end(), [&](auto a, auto b) { return key(a) < key(b); });
    const auto flying = std::lround(chance * static_cast<double>(some.size()));
    for (std::size_t i = 0; i < static_cast<std::size_t>(flying); ++i) all[some[i]][n] = 1;
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
        std::vector<std::size_t> flew;
        std::vector<std::size_t> none;
        for (std::size_t season = 0; season < seasons; ++season)
            (i > 0 && all[season][i - 1] != 0 ? flew : none).push_back(season);
        fly(all, std::move(flew), chances.afterFlying, i);
        fly(all, std::move(none), chances.afterNone, i);
    }
    return all;
}

}  // namespace tenthday
