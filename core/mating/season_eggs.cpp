#include "mating/season_eggs.h"

#include <algorithm>

#include "weather/chain_seasons.h"

namespace tenthday {
namespace {

/// First eggs without weather are smooth: beyond this share the rest come on the last day.
constexpr double kNearlyAll = 1 - 1e-6;

}  // namespace

SeasonEggs::SeasonEggs(const Facts& facts, const MatingTable& mating)
    : mating_(&mating), rules_(virginRules(facts)) {
    if (const auto& seasons = mating.seasons()) {
        firstDay_ = seasons->window().first;
        for (std::size_t i = 0; i < seasons->size(); ++i) next_.emplace_back(seasons->days(i));
    } else if (const auto& chain = mating.chain()) {
        firstDay_ = chain->window().first;
        for (const auto& days : chainSeasons(*chain)) next_.emplace_back(days);
    }
}

EggDays SeasonEggs::eggs(const Spread& emerged, Moment graft) const {
    const auto out = emergenceShares(emerged, graft);
    const bool known = std::all_of(out.begin(), out.end(), [&](const auto& share) {
        return mating_->find(share.day) != nullptr;
    });
    if (next_.empty() || !known) return onTheWhole(emerged, graft);
    EggDays eggs;
    eggs.first = out.front().day;
    eggs.days = out.size() - 1 + rules_.eggAges();
    eggs.shares.resize(eggs.days * next_.size());
    const auto start = (eggs.first - firstDay_).count();
    EmergenceDay ahead;
    for (std::size_t season = 0; season < next_.size(); ++season) {
        float* row = &eggs.shares[season * eggs.days];
        for (std::size_t i = 0; i < out.size(); ++i) {
            ahead.eggsAtAge.assign(rules_.eggAges(), 0.0);
            addSeason(ahead, static_cast<std::int32_t>(start) + static_cast<std::int32_t>(i),
                      next_[season], rules_, out[i].share);
            for (std::size_t age = 0; age < ahead.eggsAtAge.size(); ++age)
                row[i + age] += static_cast<float>(ahead.eggsAtAge[age]);
        }
        for (std::size_t day = 1; day < eggs.days; ++day)
            row[day] = std::min(row[day] + row[day - 1], 1.0F);
    }
    return eggs;
}

EggDays SeasonEggs::onTheWhole(const Spread& emerged, Moment graft) const {
    const auto laying = mating_->laying(emerged, graft);
    EggDays eggs;
    eggs.first = dayOf(hoursAfter(graft, laying.eggs.at(1 - kNearlyAll)));
    const Day last = dayOf(hoursAfter(graft, laying.eggs.at(kNearlyAll)));
    for (Day day = eggs.first; day <= last; day += Days{1}) {
        const double by =
            day == last ? 1 : laying.eggs.by(hoursBetween(graft, Moment{day + Days{1}}));
        eggs.shares.push_back(static_cast<float>((1 - laying.neverMates) * by));
    }
    eggs.days = eggs.shares.size();
    return eggs;
}

EggDays eggsOn(Day day) { return {day, 1, {1.0F}}; }

}  // namespace tenthday
