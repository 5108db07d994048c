#include "limits/season_limits.h"

#include <algorithm>
#include <cmath>

#include "base/natural_order.h"
#include "biology/drones.h"
#include "records/yard_roles.h"
#include "weather/flying_seasons.h"
#include "weather/record_only.h"

namespace tenthday {
namespace {

/// Whole days of the facts that count from the graft.
struct Spans {
    explicit Spans(const Facts& facts) {
        const auto whole = [](double days) { return static_cast<std::int32_t>(std::lround(days)); };
        const double larva = (facts[Fact::LarvaFromH] + facts[Fact::LarvaToH]) / 2;
        emergence = whole((facts[Fact::EmergenceH] - facts[Fact::EggH] - larva) / 24);
        firstFlight = emergence + whole(facts[Fact::FirstFlightD]);
        dronesOut = whole(facts[Fact::DronesBeforeOutD]);
        oneRound = emergence + whole(facts[Fact::WinterEggsD]) + whole(facts[Fact::WorkerD]);
        twoRounds = oneRound + whole(facts[Fact::WorkerD]);
    }
    std::int32_t emergence;
    std::int32_t firstFlight;
    std::int32_t dronesOut;
    std::int32_t oneRound;
    std::int32_t twoRounds;
};

class Finder {
public:
    Finder(const Snapshot& snapshot, const MatingTable& mating)
        : snapshot_(snapshot), mating_(mating), season_(snapshot.season()), spans_(facts()) {
        for (std::size_t i = 0; i < kTokenCount<Limit>; ++i)
            limits_.all.push_back({static_cast<Limit>(i), {}, false, {}, 0, {}, false});
        yards_.assign(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
        std::sort(yards_.begin(), yards_.end(),
                  [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    }

    SeasonLimits run() {
        const bool mated = std::any_of(yards_.begin(), yards_.end(), [](const auto& yard) {
            return hasRole(yard->roles, "mating");
        });
        for (const auto& yard : yards_) {
            winter(yard);
            if (mated && !hasRole(yard->roles, "mating")) continue;
            dronesReady(yard);
            if (yard->dronesOutDay)
                offer(Limit::DronesOut, yard, inSeason(*yard->dronesOutDay, season_),
                      spans_.dronesOut);
        }
        weather();
        bind({Limit::DronesReady, Limit::FlyingWeatherFrom}, true);
        bind({Limit::DronesOut, Limit::FlyingWeatherUntil, Limit::WinterBeesTwoRounds}, false);
        return std::move(limits_);
    }

private:
    [[nodiscard]] const Facts& facts() const { return snapshot_.facts(); }
    SeasonLimit& at(Limit limit) { return limits_.all[static_cast<std::size_t>(limit)]; }

    /// Takes a yard's day where it allows a longer season than those before.
    void offer(Limit limit, const Ptr<Yard>& yard, Day cause, std::int32_t days) {
        auto& known = at(limit);
        const Day day = cause - Days{days};
        const bool longer = !known.day || (isFirst(limit) ? day < *known.day : day > *known.day);
        if (longer) known = {limit, day, false, cause, days, yard, false};
    }

    /// The first drones of the season that are mature there.
    void dronesReady(const Ptr<Yard>& yard) {
        for (const auto& seen : snapshot_.all<DroneSighting>().of(yard->id.uuid)) {
            const Day mature = dronesMatureBy(seen->stage, seen->day, facts());
            if (season_.contains(seen->day) || season_.contains(mature))
                offer(Limit::DronesReady, yard, mature, spans_.firstFlight);
        }
    }

    void winter(const Ptr<Yard>& yard) {
        if (!yard->frostDay) return;
        const Day frost = inSeason(*yard->frostDay, season_);
        offer(Limit::WinterBeesTwoRounds, yard, frost, spans_.twoRounds);
        offer(Limit::WinterBeesOneRound, yard, frost, spans_.oneRound);
    }

    /// Enough of the virgins of a graft on that day find flying weather; nothing where it is not
    /// known.
    [[nodiscard]] std::optional<bool> flies(Day graft) const {
        const auto* ahead = mating_.find(graft + Days{spans_.emergence});
        if (ahead == nullptr) return std::nullopt;
        return 1 - ahead->neverMates >= facts()[Fact::SeasonMatingShare];
    }

    void weather() {
        // Single days of this year alone say nothing of a season.
        if (mating_.chain() && isRecordOnly(*mating_.chain())) return;
        const DayWindow days{snapshot_.startDays().first - Days{1}, season_.last + Days{1}};
        std::optional<Day> first;
        std::optional<Day> last;
        for (Day day = days.first; day <= days.last; day += Days{1})
            if (flies(day) == true) {
                if (!first) first = day;
                last = day;
            }
        // What is fine already before all grafts, or still after them, sets no limit.
        auto& from = at(Limit::FlyingWeatherFrom);
        auto& until = at(Limit::FlyingWeatherUntil);
        from.open = first == days.first;
        until.open = last == days.last;
        if (!from.open) from.day = first;
        if (!until.open) until.day = last;
    }

    /// Of these, the latest first graft or the earliest last one binds; several on one day all do.
    void bind(std::initializer_list<Limit> limits, bool first) {
        std::optional<Day> day;
        for (const auto limit : limits)
            if (const auto its = at(limit).day;
                its && (!day || (first ? *its > *day : *its < *day)))
                day = its;
        for (const auto limit : limits) at(limit).binds = day && at(limit).day == day;
    }

    const Snapshot& snapshot_;
    const MatingTable& mating_;
    DayWindow season_;
    Spans spans_;
    std::vector<Ptr<Yard>> yards_;
    SeasonLimits limits_;
};

std::optional<Day> bindingDay(const std::vector<SeasonLimit>& all, bool first) {
    for (const auto& limit : all)
        if (limit.binds && isFirst(limit.limit) == first) return limit.day;
    return std::nullopt;
}

}  // namespace

std::optional<Day> SeasonLimits::firstGraft() const { return bindingDay(all, true); }
std::optional<Day> SeasonLimits::lastGraft() const { return bindingDay(all, false); }

SeasonLimits seasonLimits(const Snapshot& snapshot, const MatingTable& mating) {
    return Finder(snapshot, mating).run();
}

Day droneCombBy(Day graft, const Facts& facts) {
    const Spans spans(facts);
    const auto before = static_cast<int>(std::lround(facts[Fact::DroneCombBeforeD]));
    return graft + Days{spans.firstFlight - before};
}

Day droneCombLast(Day graft, const Facts& facts) {
    const auto age = static_cast<int>(std::ceil(droneMatureAge(facts)));
    return graft + Days{Spans(facts).firstFlight - age};
}

Day inSeason(Day yearly, const DayWindow& season) {
    const auto yearOf = [](Day day) { return int{date::year_month_day{day}.year()}; };
    const int back = yearOf(yearly) - yearOf(season.first);
    const Day there = yearsBefore(yearly, back);
    return there < season.first ? yearsBefore(yearly, back - 1) : there;
}

}  // namespace tenthday
