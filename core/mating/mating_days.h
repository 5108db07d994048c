/// @file mating_days.h  On which days virgins mate: what lies behind them and what is still ahead.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "mating/mating_table.h"

namespace tenthday {

/// A share of virgins that came out on one day.
struct EmergenceShare {
    Day day;
    double share = 1;  ///< 0..1
};

/// The days on which queens of this spread come out, one by one; shares sum to 1. Less than one in
/// a million beyond either end counts to the day at that end.
/// @param emerged  h after the graft
[[nodiscard]] std::vector<EmergenceShare> emergenceShares(const Spread& emerged, Moment graft);

/// The days on which virgins have flown as often as they need, exactly by the mating table: days
/// that are recorded or forecast are certain in it, all others possible.
class MatingDays {
public:
    /// Chance that she was mated at the start of that day, 0..1.
    [[nodiscard]] double before(Day day) const;
    /// Chance that she mates on that day or on a later one, 0..1. With before() and never() it
    /// sums to 1.
    [[nodiscard]] double from(Day day) const;
    /// Chance that no flying day, or no second one where she needs it, comes in time.
    [[nodiscard]] double never() const { return never_; }
    /// First day by which this share of those that will lay has eggs; nothing where none will.
    /// @param level  0..1
    [[nodiscard]] std::optional<Day> eggsBy(double level) const;

private:
    friend std::optional<MatingDays> matingDays(const MatingTable& mating,
                                                std::span<const EmergenceShare> emerged,
                                                const Facts& facts, std::optional<Day> noEggsOn);
    Day first_{};
    std::vector<double> onDay_;  ///< chance to have flown enough on each day, from first_ on
    double never_ = 0;
    Days eggsAfter_{};
};

/// @param emerged   shares that sum to 1
/// @param noEggsOn  she was seen on that day and had not laid: what would have given eggs by then
///        did not happen, and the rest makes the whole
/// @return nothing where the weather of her flying age is not known, and where by the rules she had
///         surely laid by `noEggsOn`: then they cannot tell
[[nodiscard]] std::optional<MatingDays> matingDays(const MatingTable& mating,
                                                   std::span<const EmergenceShare> emerged,
                                                   const Facts& facts,
                                                   std::optional<Day> noEggsOn = {});

}  // namespace tenthday
