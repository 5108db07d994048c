#include "mating/mating_days.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tenthday {
namespace {

/// Shares of emergence outside this part of the spread count to the days at its ends.
constexpr double kTail = 1e-6;

/// A share summed from many falls short of a round figure by a rounding's breadth.
constexpr double kRounding = 1e-12;

/// Less than this left of what was possible: she did what the rules rule out.
constexpr double kImpossible = 1e-9;

}  // namespace

std::vector<EmergenceShare> emergenceShares(const Spread& emerged, Moment graft) {
    const Day first = dayOf(hoursAfter(graft, emerged.at(kTail)));
    const Day last = dayOf(hoursAfter(graft, emerged.at(1 - kTail)));
    std::vector<EmergenceShare> shares;
    double before = 0;
    for (Day day = first; day <= last; day += Days{1}) {
        const double by = day == last ? 1 : emerged.by(hoursBetween(graft, Moment{day + Days{1}}));
        shares.push_back({day, by - before});
        before = by;
    }
    return shares;
}

double MatingDays::before(Day day) const {
    const auto days = std::clamp<std::int64_t>((day - first_).count(), 0,
                                               static_cast<std::int64_t>(onDay_.size()));
    return std::accumulate(onDay_.begin(), onDay_.begin() + days, 0.0);
}

double MatingDays::from(Day day) const { return std::max(1 - never_ - before(day), 0.0); }

std::optional<Day> MatingDays::eggsBy(double level) const {
    if (1 - never_ < kTail) return std::nullopt;
    const double wanted = level * (1 - never_) - kRounding;
    double sum = 0;
    for (std::size_t i = 0; i < onDay_.size(); ++i) {
        sum += onDay_[i];
        if (sum >= wanted && onDay_[i] > 0) return first_ + Days{static_cast<int>(i)} + eggsAfter_;
    }
    return std::nullopt;
}

std::optional<MatingDays> matingDays(const MatingTable& mating,
                                     std::span<const EmergenceShare> emerged, const Facts& facts,
                                     std::optional<Day> noEggsOn) {
    const auto eggsAfter = static_cast<std::size_t>(std::lround(facts[Fact::EggsAfterFlightD]));
    MatingDays days;
    days.first_ = emerged.front().day;
    days.eggsAfter_ = Days{static_cast<int>(eggsAfter)};
    for (const auto& [day, share] : emerged) {
        const auto* ahead = mating.find(day);
        if (ahead == nullptr) return std::nullopt;
        days.never_ += share * ahead->neverMates;
        const auto offset = static_cast<std::size_t>((day - days.first_).count());
        const auto ages = ahead->eggsAtAge.size() - eggsAfter;
        days.onDay_.resize(std::max(days.onDay_.size(), offset + ages));
        for (std::size_t age = 0; age < ages; ++age) {
            const Day eggs = day + Days{static_cast<int>(age + eggsAfter)};
            if (noEggsOn && eggs <= *noEggsOn) continue;
            days.onDay_[offset + age] += share * ahead->eggsAtAge[age + eggsAfter];
        }
    }
    const double left = std::accumulate(days.onDay_.begin(), days.onDay_.end(), days.never_);
    if (left < kImpossible) return std::nullopt;
    for (auto& chance : days.onDay_) chance /= left;
    days.never_ /= left;
    return days;
}

}  // namespace tenthday
