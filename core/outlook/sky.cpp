#include "outlook/sky.h"

#include <cmath>

#include "weather/climate.h"

namespace tenthday {
namespace {

constexpr Days kBefore{60};
constexpr Days kAfter{120};

std::optional<double> plain(const std::optional<Tenths>& tenths) {
    return tenths ? std::optional(tenths->value / 10.0) : std::nullopt;
}

DayWindow daysAround(const DayWindow& season) {
    return {season.first - kBefore, season.last + kAfter};
}

std::shared_ptr<const FlyingSeasons> seasonsShifted(const Snapshot& snapshot, std::int32_t shift) {
    const auto& rows = snapshot.all<WeatherDay>();
    if (rows.empty()) return nullptr;
    const auto limits = flyingLimits(snapshot.facts());
    std::vector<FlyingRecordDay> record;
    record.reserve(rows.size());
    for (const auto& row : rows)
        if (const auto flying = isFlyingDay(weatherOf(*row), limits))
            record.push_back({row->date, *flying});
    const auto season = snapshot.season();
    auto seasons = std::make_shared<const FlyingSeasons>(record, season, daysAround(season), shift);
    return seasons->size() > 0 ? seasons : nullptr;
}

/// Marks the days of a window, of its first on, that are recorded or forecast.
/// @return whether there is any
bool addKnown(const Snapshot& snapshot, const DayWindow& window,
              std::vector<FlyingChainDay>& days) {
    const auto limits = flyingLimits(snapshot.facts());
    bool any = false;
    for (const auto& row : snapshot.all<WeatherDay>()) {
        if (!window.contains(row->date)) continue;
        const auto known = isFlyingDay(weatherOf(*row), limits);
        days[static_cast<std::size_t>((row->date - window.first).count())].known = known;
        any = any || known;
    }
    return any;
}

}  // namespace

DayWeather weatherOf(const WeatherDay& row) {
    return {plain(row.tmaxC), plain(row.rainMm), plain(row.windMs), row.flew};
}

std::shared_ptr<const FlyingSeasons> flyingSeasons(const Snapshot& snapshot) {
    return seasonsShifted(
        snapshot, static_cast<std::int32_t>(std::lround(snapshot.facts()[Fact::SeasonShiftD])));
}

std::shared_ptr<const FlyingSeasons> pastYears(const Snapshot& snapshot) {
    return seasonsShifted(snapshot, 0);
}

std::shared_ptr<const FlyingChain> flyingChain(const Snapshot& snapshot) {
    const auto& months = snapshot.all<ClimateMonth>();
    if (months.empty()) return nullptr;
    const auto& facts = snapshot.facts();
    Climate climate;
    for (const auto& row : months)
        climate.months[static_cast<std::size_t>(row->month - 1)] = {plain(row->tmaxC),
                                                                    plain(row->rainDays)};
    const auto window = daysAround(snapshot.season());
    const auto limits = flyingLimits(facts);
    const auto chances = flyingChances(climate, window, limits, facts[Fact::TmaxSdC]);
    std::vector<FlyingChainDay> days;
    days.reserve(chances.size());
    for (const auto& chance : chances) days.push_back({chance, {}});
    addKnown(snapshot, window, days);
    return std::make_shared<const FlyingChain>(window.first, std::move(days),
                                               facts[Fact::FlyPersistence]);
}

std::shared_ptr<const FlyingChain> recordedDays(const Snapshot& snapshot) {
    const auto window = daysAround(snapshot.season());
    std::vector<FlyingChainDay> days(static_cast<std::size_t>(window.size()));
    if (!addKnown(snapshot, window, days)) return nullptr;
    return std::make_shared<const FlyingChain>(window.first, std::move(days), 0);
}

std::shared_ptr<const MatingTable> matingTable(const Snapshot& snapshot) {
    if (auto seasons = flyingSeasons(snapshot))
        return std::make_shared<const MatingTable>(snapshot.facts(), std::move(seasons));
    if (auto chain = flyingChain(snapshot))
        return std::make_shared<const MatingTable>(snapshot.facts(), std::move(chain));
    if (auto chain = recordedDays(snapshot))
        return std::make_shared<const MatingTable>(snapshot.facts(), std::move(chain));
    return std::make_shared<const MatingTable>(snapshot.facts());
}

}  // namespace tenthday
