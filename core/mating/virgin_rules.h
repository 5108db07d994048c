/// @file virgin_rules.h  A virgin's way to mating in days, in one season whose flying days are
/// known.
#pragma once
#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "facts/facts.h"
#include "mating/mating_table.h"

namespace tenthday {

/// The ages, in whole days, and shares of a virgin's way to mating.
struct VirginRules {
    std::int32_t firstFlight;
    std::array<double, 3> flightShares;  ///< sum 1
    double secondShare;
    std::int32_t eggsAfter;
    std::int32_t lastAge;

    /// Ages at which first eggs can come: 0 to one less than this.
    [[nodiscard]] std::size_t eggAges() const {
        return static_cast<std::size_t>(lastAge) + static_cast<std::size_t>(eggsAfter) + 1;
    }
};

[[nodiscard]] VirginRules virginRules(const Facts& facts);

/// For each day of a season the next flying day on it or after it.
class NextFlight {
public:
    explicit NextFlight(std::span<const std::uint8_t> days);
    [[nodiscard]] std::int32_t from(std::int32_t day) const {
        return static_cast<std::size_t>(day) < next_.size() ? next_[static_cast<std::size_t>(day)]
                                                            : kNever;
    }
    static constexpr std::int32_t kNever = 1'000'000;

private:
    std::vector<std::int32_t> next_;
};

/// Adds one season's chances for virgins of one day.
/// @param emergence  the day's place among those of `next`
/// @param weight     of the season, 0..1
void addSeason(EmergenceDay& day, std::int32_t emergence, const NextFlight& next,
               const VirginRules& rules, double weight);

}  // namespace tenthday
