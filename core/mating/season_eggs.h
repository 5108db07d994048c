/// @file season_eggs.h  First eggs in each possible season by itself: its weather is shared by all
/// batches, so chances of several together must be reckoned season by season.
#pragma once
#include <map>
#include <memory>
#include <span>
#include <vector>

#include "mating/mating_days.h"
#include "mating/virgin_rules.h"

namespace tenthday {

/// Share of virgins with first eggs by each day: a row for each possible season, or one for all
/// where no seasons are known of those virgins.
struct EggDays {
    Day first{};                ///< of the columns
    std::size_t days = 0;       ///< columns, one at least
    std::vector<float> shares;  ///< row by row, each rising to the share that ever lays

    [[nodiscard]] std::size_t rows() const { return shares.size() / days; }
    /// Share with eggs by a day, 0..1.
    /// @param season  a row; the only one serves all seasons
    [[nodiscard]] double by(Day day, std::size_t season) const {
        if (day < first) return 0;
        const auto column = std::min(static_cast<std::size_t>((day - first).count()), days - 1);
        return static_cast<double>(shares[(rows() == 1 ? 0 : season) * days + column]);
    }
    /// The shares of one day, season by season: by(day, season) without asking for the day again.
    class OnDay {
    public:
        OnDay() = default;  ///< none has eggs
        OnDay(const float* first, std::size_t step) : first_(first), step_(step) {}
        [[nodiscard]] double in(std::size_t season) const {
            return first_ == nullptr ? 0 : static_cast<double>(first_[season * step_]);
        }

    private:
        const float* first_ = nullptr;
        std::size_t step_ = 0;
    };
    [[nodiscard]] OnDay on(Day day) const {
        if (day < first) return {};
        const auto column = std::min(static_cast<std::size_t>((day - first).count()), days - 1);
        return {&shares[column], rows() == 1 ? 0 : days};
    }
    [[nodiscard]] Day last() const { return first + Days{static_cast<int>(days) - 1}; }
};

/// Reckons them by the rules of the mating table, whose figures are their mean: exactly so with the
/// seasons of past years, nearly with those that stand for a chain.
class SeasonEggs {
public:
    SeasonEggs(const Facts& facts, const MatingTable& mating);

    /// How many possible seasons there are; 1 where none are known.
    [[nodiscard]] std::size_t seasons() const { return next_.empty() ? 1 : next_.size(); }
    /// Of open mating.
    /// @param emerged  h after the graft
    [[nodiscard]] EggDays eggs(const Spread& emerged, Moment graft);

private:
    /// What the mating table tells of all seasons together, or a fixed figure.
    [[nodiscard]] EggDays onTheWhole(const Spread& emerged, Moment graft) const;

    /// Share with first eggs at each age that can have them, of virgins of one day, by season.
    [[nodiscard]] const std::vector<float>& ofDay(Day emergence);

    const MatingTable* mating_;
    VirginRules rules_;
    std::size_t ages_;              ///< with eggs, the last ones
    Day firstDay_{};                ///< of next_
    std::vector<NextFlight> next_;  ///< by season
    std::map<Day, std::vector<float>> byEmergence_;
};

/// Queens that all have eggs by that day: inseminated ones.
[[nodiscard]] EggDays eggsOn(Day day);

}  // namespace tenthday
