#include "mating/mating_table.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "mating/mating_days.h"
#include "mating/virgin_rules.h"

namespace tenthday {
namespace {

/// Mating flights are flown about noon (11 to 16 h, S17), so eggs come about then.
constexpr double kFlightHour = 14;

/// Fewer than this share will lay: as good as none.
constexpr double kNone = 1e-6;

/// Days around a stay at a mating station for which virgins are reckoned: more than their age at
/// the last mating.
constexpr Days kAroundStay{60};

/// A chain's waits for the next flying day, from each day of its window.
struct Waits {
    std::vector<std::vector<double>> from;
    std::vector<std::vector<double>> afterFlying;
};

/// Once a flying day is certain to have come, a gap behind it does not matter.
std::vector<double> pastGaps(std::vector<double> wait, std::int32_t days) {
    if (wait.back() == 0) wait.resize(static_cast<std::size_t>(days) + 1, 0.0);
    return wait;
}

Waits waitsOf(const FlyingChain& chain, std::int32_t days) {
    Waits waits;
    for (Day day = chain.window().first; day <= chain.window().last; day += Days{1}) {
        waits.from.push_back(pastGaps(chain.waitFrom(day, days), days));
        waits.afterFlying.push_back(pastGaps(chain.waitAfterFlying(day, days), days));
    }
    return waits;
}

/// Hands a share of the virgins out over the days of a wait, and returns those left after them.
double handOut(double share, const std::vector<double>& wait, std::span<double> days) {
    for (std::size_t k = 0; k < days.size(); ++k) days[k] += share * (wait[k] - wait[k + 1]);
    return share * wait[days.size()];
}

/// The chances of virgins of one day; none where a chain has a gap that one of them may have to
/// wait in. Behind a day that is certain to be a flying day nothing has to be known.
EmergenceDay chancesOf(std::size_t emergence, const Waits& waits, const VirginRules& rules) {
    const auto eggsAfter = static_cast<std::size_t>(rules.eggsAfter);
    const auto end = static_cast<std::size_t>(rules.lastAge) + 1;
    EmergenceDay day{0, std::vector<double>(end + eggsAfter)};
    std::vector<double> firstAt(end);  // share with their first flying day at each age
    for (std::size_t i = 0; i < rules.flightShares.size(); ++i) {
        const auto due = std::min(static_cast<std::size_t>(rules.firstFlight) + i, end);
        const std::span ages = std::span(firstAt).subspan(due);
        if (ages.empty()) {
            day.neverMates += rules.flightShares[i];
            continue;
        }
        const auto& wait = waits.from[emergence + due];
        if (wait.size() <= ages.size()) return {};
        day.neverMates += handOut(rules.flightShares[i], wait, ages);
    }
    const std::span eggs(day.eggsAtAge);
    for (auto age = static_cast<std::size_t>(rules.firstFlight); age < end; ++age) {
        const double again = firstAt[age] * rules.secondShare;
        eggs[age + eggsAfter] += firstAt[age] * (1 - rules.secondShare);
        if (again == 0) continue;
        const auto& wait = waits.afterFlying[emergence + age];
        const std::span ages = eggs.subspan(age + 1 + eggsAfter);
        if (wait.size() <= ages.size()) return {};
        day.neverMates += handOut(again, wait, ages);
    }
    return day;
}

}  // namespace

MatingTable::MatingTable(const Facts& facts, std::shared_ptr<const FlyingSeasons> seasons)
    : MatingTable(facts, std::move(seasons), nullptr) {
    if (seasons_ && seasons_->size() > 0) fillFromSeasons(facts);
}

MatingTable::MatingTable(const Facts& facts, std::shared_ptr<const FlyingChain> chain)
    : MatingTable(facts, nullptr, std::move(chain)) {
    if (chain_) fillFromChain(facts);
}

MatingTable::MatingTable(const Facts& facts, std::shared_ptr<const FlyingSeasons> seasons,
                         std::shared_ptr<const FlyingChain> chain)
    : seasons_(std::move(seasons)),
      chain_(std::move(chain)),
      flightShares_{facts[Fact::FlightShare1], facts[Fact::FlightShare2],
                    facts[Fact::FlightShare3]},
      fixedMeanH_(facts[Fact::FirstEggsD] * 24),
      fixedSdH_(facts[Fact::FirstEggsSdD] * 24) {
    for (std::size_t i = 0; i < flightHours_.size(); ++i)
        flightHours_[i] = (facts[Fact::FirstFlightD] + static_cast<double>(i)) * 24;
}

MatingTable MatingTable::atStation(std::span<const DayWindow> stays, const Facts& facts) const {
    DayWindow around = stays.front();
    for (const auto& stay : stays)
        around = {std::min(around.first, stay.first), std::max(around.last, stay.last)};
    around = {around.first - kAroundStay, around.last + kAroundStay};
    if (seasons_)
        return MatingTable(facts,
                           std::make_shared<const FlyingSeasons>(seasons_->onlyIn(stays, around)));
    if (chain_)
        return MatingTable(facts, std::make_shared<const FlyingChain>(chain_->onlyIn(stays)));
    std::vector<FlyingChainDay> days;
    for (Day day = around.first; day <= around.last; day += Days{1})
        days.push_back({std::nullopt, isInOneOf(stays, day)});
    return MatingTable(facts,
                       std::make_shared<const FlyingChain>(around.first, std::move(days), 0.0));
}

void MatingTable::fillFromSeasons(const Facts& facts) {
    const auto rules = virginRules(facts);
    firstDay_ = seasons_->window().first;
    const auto days = std::max(seasons_->window().size() - rules.lastAge, 0);
    const std::int32_t ages = rules.lastAge + rules.eggsAfter + 1;
    days_.assign(static_cast<std::size_t>(days),
                 {0, std::vector<double>(static_cast<std::size_t>(ages))});
    const double weight = 1.0 / static_cast<double>(seasons_->size());
    for (std::size_t season = 0; season < seasons_->size(); ++season) {
        const NextFlight next(seasons_->days(season));
        for (std::size_t day = 0; day < days_.size(); ++day)
            addSeason(days_[day], static_cast<std::int32_t>(day), next, rules, weight);
    }
}

void MatingTable::fillFromChain(const Facts& facts) {
    const auto rules = virginRules(facts);
    const auto& window = chain_->window();
    firstDay_ = window.first;
    const auto waits = waitsOf(*chain_, rules.lastAge + 1);
    days_.resize(static_cast<std::size_t>(std::max(window.size() - rules.lastAge, 0)));
    for (std::size_t i = 0; i < days_.size(); ++i) days_[i] = chancesOf(i, waits, rules);
}

const EmergenceDay* MatingTable::find(Day emergence) const {
    const auto at = (emergence - firstDay_).count();
    if (at < 0 || at >= static_cast<std::int64_t>(days_.size())) return nullptr;
    const auto& day = days_[static_cast<std::size_t>(at)];
    return day.eggsAtAge.empty() ? nullptr : &day;
}

std::optional<bool> MatingTable::knownToFly(Day day) const {
    return seasons_ ? seasons_->known(day) : chain_ ? chain_->known(day) : std::nullopt;
}

std::optional<double> MatingTable::chanceToFly(Day day) const {
    return seasons_ ? seasons_->chance(day) : chain_ ? chain_->chance(day) : std::nullopt;
}

bool MatingTable::knowsWeather(Day emergence) const { return find(emergence) != nullptr; }

bool MatingTable::knowsWeather(const DayWindow& emergences) const {
    for (Day day = emergences.first; day <= emergences.last; day += Days{1})
        if (!knowsWeather(day)) return false;
    return true;
}

Spread MatingTable::dueToFly(const Spread& emerged) const {
    return emerged.plusOneOf(flightHours_, flightShares_);
}

MatingTable::Laying MatingTable::laying(const Spread& emerged, Moment graft) const {
    const EggHours fixed(emerged.plusNormal(fixedMeanH_, fixedSdH_));
    if (days_.empty()) return {fixed, 0, false};
    const auto emergences = emergenceShares(emerged, graft);
    const Day first = emergences.front().day;
    if (!knowsWeather(DayWindow{first, emergences.back().day})) return {fixed, 0, false};
    std::vector<double> onDay;  // chance of first eggs on each day from `first` on
    double never = 0;
    for (const auto& [day, share] : emergences) {
        const auto& ahead = *find(day);
        never += share * ahead.neverMates;
        const auto offset = static_cast<std::size_t>((day - first).count());
        onDay.resize(offset + ahead.eggsAtAge.size());
        for (std::size_t age = 0; age < ahead.eggsAtAge.size(); ++age)
            onDay[offset + age] += share * ahead.eggsAtAge[age];
    }
    const double lays = 1 - never;
    if (lays < kNone)  // none will lay: the figure for fine weather, so that dates remain
        return {fixed, never, true};
    std::vector<EggHours::Step> steps;
    double sum = 0;
    for (std::size_t i = 0; i < onDay.size(); ++i) {
        if (onDay[i] <= 0) continue;
        sum += onDay[i];
        steps.push_back(
            {hoursBetween(graft, Moment{first + Days{static_cast<int>(i)}}) + kFlightHour,
             sum / lays});
    }
    return {EggHours(std::move(steps)), never, true};
}

}  // namespace tenthday
