#include "mating/season_eggs.h"

#include <algorithm>

#include "weather/chain_seasons.h"

namespace tenthday {
namespace {

/// First eggs without weather are smooth: beyond this share the rest come on the last day.
constexpr double kNearlyAll = 1 - 1e-6;

}  // namespace

SeasonEggs::SeasonEggs(const Facts& facts, const MatingTable& mating)
    : mating_(&mating),
      rules_(virginRules(facts)),
      ages_(static_cast<std::size_t>(std::max(rules_.lastAge - rules_.firstFlight, 0)) + 1) {
    if (const auto& seasons = mating.seasons()) {
        firstDay_ = seasons->window().first;
        for (std::size_t i = 0; i < seasons->size(); ++i) next_.emplace_back(seasons->days(i));
    } else if (const auto& chain = mating.chain()) {
        firstDay_ = chain->window().first;
        for (const auto& days : chainSeasons(*chain)) next_.emplace_back(days);
    }
}

const std::vector<float>& SeasonEggs::ofDay(Day emergence) {
    auto& rows = byEmergence_[emergence];
    if (!rows.empty()) return rows;
    rows.reserve(ages_ * next_.size());
    const auto place = static_cast<std::int32_t>((emergence - firstDay_).count());
    EmergenceDay ahead;
    for (const auto& next : next_) {
        ahead.eggsAtAge.assign(rules_.eggAges(), 0.0);
        addSeason(ahead, place, next, rules_, 1);
        for (auto age = rules_.eggAges() - ages_; age < rules_.eggAges(); ++age)
            rows.push_back(static_cast<float>(ahead.eggsAtAge[age]));
    }
    return rows;
}

EggDays SeasonEggs::eggs(const Spread& emerged, Moment graft) {
    const auto out = emergenceShares(emerged, graft);
    const bool known = std::all_of(out.begin(), out.end(), [&](const auto& share) {
        return mating_->find(share.day) != nullptr;
    });
    if (next_.empty() || !known) return onTheWhole(emerged, graft);
    EggDays eggs;
    eggs.first = out.front().day + Days{static_cast<int>(rules_.eggAges() - ages_)};
    eggs.days = out.size() - 1 + ages_;
    eggs.shares.resize(eggs.days * next_.size());
    for (std::size_t i = 0; i < out.size(); ++i) {
        const float* from = ofDay(out[i].day).data();
        const auto share = static_cast<float>(out[i].share);
        for (std::size_t season = 0; season < next_.size(); ++season, from += ages_) {
            float* row = &eggs.shares[season * eggs.days + i];
            for (std::size_t age = 0; age < ages_; ++age) row[age] += share * from[age];
        }
    }
    for (auto* row = eggs.shares.data(); row < eggs.shares.data() + eggs.shares.size();
         row += eggs.days)
        for (std::size_t day = 1; day < eggs.days; ++day)
            row[day] = std::min(row[day] + row[day - 1], 1.0F);
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
