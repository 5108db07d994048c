#include "weather/flying_chain.h"

#include "weather/flying_seasons.h"
#include "weather/record_only.h"

namespace tenthday {

FlyingChain::FlyingChain(Day first, std::vector<FlyingChainDay> days, double persistence)
    : window_{first, first + Days{static_cast<int>(days.size()) - 1}} {
    steps_.reserve(days.size());
    const Step* before = nullptr;
    for (const auto& [chance, known] : days) {
        Step step{!chance && !known, known, 0, 0, 0};
        if (known) {
            step.chance = step.afterFlying = step.afterNone = *known ? 1 : 0;
        } else if (chance) {
            step.afterFlying = *chance + persistence * (1 - *chance);
            step.afterNone = *chance * (1 - persistence);
            step.chance =
                before == nullptr || before->gap
                    ? *chance
                    : before->chance * step.afterFlying + (1 - before->chance) * step.afterNone;
        }
        steps_.push_back(step);
        before = &steps_.back();
    }
}

const FlyingChain::Step* FlyingChain::find(Day day) const {
    if (!window_.contains(day)) return nullptr;
    const auto& step = steps_[static_cast<std::size_t>((day - window_.first).count())];
    return step.gap ? nullptr : &step;
}

bool FlyingChain::covers(const DayWindow& days) const {
    for (Day day = days.first; day <= days.last; day += Days{1})
        if (find(day) == nullptr) return false;
    return true;
}

std::optional<bool> FlyingChain::known(Day day) const {
    const auto* step = find(day);
    return step != nullptr ? step->known : std::nullopt;
}

std::optional<double> FlyingChain::chance(Day day) const {
    const auto* step = find(day);
    return step != nullptr ? std::optional(step->chance) : std::nullopt;
}

std::vector<double> FlyingChain::waitFrom(Day day, std::int32_t days) const {
    const auto* step = find(day);
    return wait(day, step != nullptr ? step->chance : 0, days);
}

std::vector<double> FlyingChain::waitAfterFlying(Day day, std::int32_t days) const {
    const auto* step = find(day + Days{1});
    return wait(day + Days{1}, step != nullptr ? step->afterFlying : 0, days);
}

std::vector<double> FlyingChain::wait(Day first, double chanceOfFirst, std::int32_t days) const {
    std::vector<double> waiting{1};
    double chance = chanceOfFirst;
    for (std::int32_t k = 0; k < days; ++k) {
        if (find(first + Days{k}) == nullptr) break;
        waiting.push_back(waiting.back() * (1 - chance));
        // Who still waits saw no flying day.
        if (const auto* next = find(first + Days{k + 1})) chance = next->afterNone;
    }
    return waiting;
}

FlyingChain FlyingChain::onlyIn(std::span<const DayWindow> stays) const {
    FlyingChain only = *this;
    const bool recordOnly = isRecordOnly(*this);
    bool away = false;
    for (Day day = window_.first; day <= window_.last; day += Days{1}) {
        auto& step = only.steps_[static_cast<std::size_t>((day - window_.first).count())];
        if (!isInOneOf(stays, day)) {
            step = Step{false, false, 0, 0, 0};
            away = false;
            continue;
        }
        if (step.gap && recordOnly) step = Step{false, true, 1, 1, 1};
        // Flights that could not be flown at home tell nothing of the first day away.
        if (!away) step.afterFlying = step.afterNone = step.chance;
        away = true;
    }
    return only;
}

}  // namespace tenthday
