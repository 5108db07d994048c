/// @file mating_table.h  From emergence to flights and first eggs, with the weather of the season.
#pragma once
#include <array>
#include <memory>
#include <span>
#include <vector>

#include "biology/spread.h"
#include "calendar/window.h"
#include "facts/facts.h"
#include "mating/egg_hours.h"
#include "weather/flying_chain.h"
#include "weather/flying_seasons.h"

namespace tenthday {

/// What lies ahead of virgins that emerged on one day.
struct EmergenceDay {
    /// Chance that no flying day comes while she can mate, or no second one where she needs it.
    double neverMates = 0;
    /// Chance of first eggs at each age in whole days, over all virgins: with neverMates they sum
    /// to 1. Index 0 is the day of emergence.
    std::vector<double> eggsAtAge;
};

/// How virgins go on from emergence; shared by all batches of a snapshot. With weather it counts
/// days on which they could fly: a virgin first flies at 6, 7 or 8 days of age, needs one flying
/// day (a share needs a second), lays 3 days after the last, and fails if she has not mated by 21
/// days of age. Weather is either possible seasons, all equally likely, or a chain of flying days;
/// both are summed exactly. Without: one fixed figure (S61). Sources: S47, S49, S52, S58, S17.
class MatingTable {
public:
    /// @param seasons  may be null, or hold none: no weather is known
    explicit MatingTable(const Facts& facts, std::shared_ptr<const FlyingSeasons> seasons = {});
    /// @param chain  may be null: no weather is known
    MatingTable(const Facts& facts, std::shared_ptr<const FlyingChain> chain);

    /// The same for virgins whose nucs stand at a mating station on these days and cannot fly on
    /// others. Without weather every day there is a flying day.
    [[nodiscard]] MatingTable atStation(std::span<const DayWindow> stays, const Facts& facts) const;

    /// Whether weather is reckoned with for virgins of that day: it lies in the window of the
    /// seasons or the chain, whose days reach to the end of her mating age; and the chain has no
    /// gap while she could fly.
    [[nodiscard]] bool knowsWeather(Day emergence) const;
    /// The figures of one emergence day; none where weather is not known.
    [[nodiscard]] const EmergenceDay* find(Day emergence) const;
    [[nodiscard]] const std::shared_ptr<const FlyingSeasons>& seasons() const { return seasons_; }
    [[nodiscard]] const std::shared_ptr<const FlyingChain>& chain() const { return chain_; }

    /// Whether a day is a flying day, where it is recorded or forecast.
    [[nodiscard]] std::optional<bool> knownToFly(Day day) const;
    /// Chance that it is one, 0..1; nothing where no weather is known of it.
    [[nodiscard]] std::optional<double> chanceToFly(Day day) const;

    /// When queens with this emergence first fly, were the weather fine (S47, shares from memory).
    [[nodiscard]] Spread dueToFly(const Spread& emerged) const;

    struct Laying {
        EggHours eggs;          ///< of those that will lay
        double neverMates = 0;  ///< for weather, 0..1
        bool weather = false;   ///< reckoned with
    };
    /// @param emerged  h after the graft
    [[nodiscard]] Laying laying(const Spread& emerged, Moment graft) const;

private:
    MatingTable(const Facts& facts, std::shared_ptr<const FlyingSeasons> seasons,
                std::shared_ptr<const FlyingChain> chain);
    void fillFromSeasons(const Facts& facts);
    void fillFromChain(const Facts& facts);
    [[nodiscard]] bool knowsWeather(const DayWindow& emergences) const;

    std::shared_ptr<const FlyingSeasons> seasons_;
    std::shared_ptr<const FlyingChain> chain_;
    std::array<double, 3> flightHours_{};
    std::array<double, 3> flightShares_{};
    double fixedMeanH_;
    double fixedSdH_;
    Day firstDay_{};                  ///< of days_
    std::vector<EmergenceDay> days_;  ///< no eggsAtAge: in or behind a gap
};

}  // namespace tenthday
