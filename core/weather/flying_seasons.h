/// @file flying_seasons.h  The possible seasons: on which days virgins could fly, in each of them.
#pragma once
#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "calendar/window.h"
#include "weather/flying_day.h"

namespace tenthday {

/// A day of a record, and whether it was a flying day.
struct FlyingRecordDay {
    Day day;
    bool flying;
};

/// Each past year of the record makes possible seasons: its days by month and day, and the same
/// shifted by up to so many days either way, as long as the record holds them. Days of the season
/// itself that are recorded or forecast stand in every one of them. All are equally likely.
class FlyingSeasons {
public:
    /// @param record  in any order; the last of double days counts
    /// @param season  a past year serves where nine days in ten of its season are recorded; a day
    ///        that is not is taken from the year next to it that has it
    /// @param window  days that can be asked about: the season and more on either side
    /// @param shift   most days shifted, 0..60 (the fact season_shift_d)
    FlyingSeasons(std::span<const FlyingRecordDay> record, DayWindow season, DayWindow window,
                  std::int32_t shift);

    /// 0 where no past year serves.
    [[nodiscard]] std::size_t size() const { return flying_.size(); }
    [[nodiscard]] const DayWindow& window() const { return window_; }
    /// The past years that serve, in order; seasons stand year by year, by shift.
    [[nodiscard]] const std::vector<int>& years() const { return years_; }

    /// @param season  0..size()-1
    [[nodiscard]] bool flies(std::size_t season, Day day) const {
        return flying_[season][index(day)] != 0;
    }
    /// The flags of a season's days, from the window's first on.
    [[nodiscard]] std::span<const std::uint8_t> days(std::size_t season) const {
        return flying_[season];
    }
    /// The day is recorded or forecast; then whether it is a flying day.
    [[nodiscard]] std::optional<bool> known(Day day) const;
    /// Share of seasons in which the day is a flying day; nothing without seasons, unless known.
    [[nodiscard]] std::optional<double> chance(Day day) const;

    /// The same seasons for virgins who can fly on some days only (their nucs stand at a mating
    /// station then): no other day is a flying day, and that is certain.
    /// @param days  that can be asked about; cut to the window
    [[nodiscard]] FlyingSeasons onlyIn(std::span<const DayWindow> stays, DayWindow days) const;

private:
    [[nodiscard]] std::size_t index(Day day) const {
        return static_cast<std::size_t>((day - window_.first).count());
    }

    DayWindow window_;
    std::vector<int> years_;
    std::vector<std::vector<std::uint8_t>> flying_;
    std::vector<std::int8_t> known_;  ///< per day: -1 unknown, 0, 1
};

[[nodiscard]] bool isInOneOf(std::span<const DayWindow> stays, Day day);

/// The same month and day so many years earlier; 29 February becomes the 28th where there is none.
[[nodiscard]] Day yearsBefore(Day day, int years);

}  // namespace tenthday
