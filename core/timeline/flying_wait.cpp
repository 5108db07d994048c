#include "timeline/flying_wait.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

constexpr std::int32_t kLeastDays = 2;
constexpr double kWorthTelling = 0.05;
constexpr double kRounding = 1e-9;

/// Days that virgins can be asked about around their emergence: its tails are under a week, and
/// those who mate last do so at 28 days of age at most.
constexpr Days kBefore{7};
constexpr Days kAfter{60};

bool fliesNever(const FlyingSeasons& seasons, std::size_t season, const DayWindow& days) {
    for (Day day = days.first; day <= days.last; day += Days{1})
        if (seasons.flies(season, day)) return false;
    return true;
}

/// How likely it is that none of some days is a flying day.
class NoFlying {
public:
    NoFlying(const MatingTable& mating, const FlyingSeasons* pastYears)
        : mating_(mating), pastYears_(pastYears) {}

    [[nodiscard]] FlyingWait on(const DayWindow& days) const {
        FlyingWait wait{days, 0, 0, std::nullopt};
        for (Day day = days.first; day <= days.last && mating_.knownToFly(day) == false;
             day += Days{1})
            ++wait.known;
        if (pastYears_ != nullptr)
            countYears(wait);
        else if (mating_.chain())
            wait.chance = chanceOf(days);
        return wait;
    }

private:
    void countYears(FlyingWait& wait) const {
        const auto& window = pastYears_->window();
        OfYears years{0, static_cast<std::int32_t>(pastYears_->size())};
        if (years.all == 0 || !window.contains(wait.days.first) || !window.contains(wait.days.last))
            return;
        for (std::size_t year = 0; year < pastYears_->size(); ++year)
            years.with += fliesNever(*pastYears_, year, wait.days) ? 1 : 0;
        wait.years = years;
        wait.chance = static_cast<double>(years.with) / years.all;
    }
    [[nodiscard]] double chanceOf(const DayWindow& days) const {
        const auto waits = mating_.chain()->waitFrom(days.first, days.size());
        const auto at = static_cast<std::size_t>(days.size());
        return at < waits.size() ? waits[at] : 0;
    }

    const MatingTable& mating_;
    const FlyingSeasons* pastYears_;
};

bool isBetter(const FlyingWait& wait, const std::optional<FlyingWait>& best) {
    if (!best || wait.days.size() != best->days.size())
        return !best || wait.days.size() > best->days.size();
    return wait.chance > best->chance + kRounding;
}

/// One past year alone, as a chain of days that are all known.
MatingTable tableOf(const FlyingSeasons& pastYears, std::size_t year, const DayWindow& days,
                    const Facts& facts) {
    std::vector<FlyingChainDay> known;
    for (Day day = days.first; day <= days.last; day += Days{1})
        known.push_back({std::nullopt, pastYears.flies(year, day)});
    return MatingTable(facts, std::make_shared<const FlyingChain>(days.first, std::move(known), 0));
}

}  // namespace

DayWindow daysOfWaiting(const BatchTimeline& timeline, const Facts& facts) {
    const auto* due = timeline.find(Event::DueToFly);
    const Day first = due != nullptr ? dayOf(due->earliest) : dayOf(timeline.levelEggs);
    const Days toEggs{std::lround(facts[Fact::EggsAfterFlightD])};
    return {first, dayOf(timeline.levelEggs) - toEggs};
}

std::optional<FlyingWait> flyingWait(const BatchTimeline& timeline, const MatingTable& mating,
                                     const FlyingSeasons* pastYears, const Facts& facts) {
    if (!timeline.weather) return std::nullopt;
    const auto days = daysOfWaiting(timeline, facts);
    const double leftAside = 1 - facts[Fact::LikelyLevel] - kRounding;
    const NoFlying noFlying(mating, pastYears);
    std::optional<FlyingWait> best;
    for (Day first = days.first; first <= days.last; first += Days{1})
        for (Day last = first + Days{kLeastDays - 1}; last <= days.last; last += Days{1}) {
            auto wait = noFlying.on({first, last});
            if (wait.chance < leftAside) break;  // more days only lower it
            if (isBetter(wait, best)) best = std::move(wait);
        }
    return best;
}

std::optional<NeverMated> neverMated(const BatchTimeline& timeline, const FlyingSeasons& pastYears,
                                     const Facts& facts) {
    const auto* emergence = timeline.find(Event::Emergence);
    if (!timeline.weather || emergence == nullptr) return std::nullopt;
    const DayWindow days{std::max(dayOf(emergence->earliest) - kBefore, pastYears.window().first),
                         std::min(dayOf(emergence->latest) + kAfter, pastYears.window().last)};
    NeverMated never{{0, static_cast<std::int32_t>(pastYears.size())}, 1};
    double most = 0;
    double least = 1;
    for (std::size_t year = 0; year < pastYears.size(); ++year) {
        const auto share = tableOf(pastYears, year, days, facts)
                               .laying(timeline.clock.emerged(), timeline.graft)
                               .neverMates;
        most = std::max(most, share);
        least = std::min(least, share);
        if (share < kWorthTelling) continue;
        ++never.years.with;
        never.least = std::min(never.least, share);
    }
    if (never.years.with == 0 || most - least < kRounding) return std::nullopt;
    return never;
}

}  // namespace tenthday
