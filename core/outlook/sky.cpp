#include "outlook/sky.h"

#include <cmath>

namespace tenthday {
namespace {

constexpr Days kBefore{60};
constexpr Days kAfter{120};

std::optional<double> plain(const std::optional<Tenths>& tenths) {
    return tenths ? std::optional(tenths->value / 10.0) : std::nullopt;
}

}  // namespace

std::shared_ptr<const FlyingSeasons> flyingSeasons(const Snapshot& snapshot) {
    const auto& rows = snapshot.all<WeatherDay>();
    if (rows.empty()) return nullptr;
    const auto& facts = snapshot.facts();
    const auto limits = flyingLimits(facts);
    std::vector<FlyingRecordDay> record;
    record.reserve(rows.size());
    for (const auto& row : rows)
        if (const auto flying = isFlyingDay(
                {plain(row->tmaxC), plain(row->rainMm), plain(row->windMs), row->flew}, limits))
            record.push_back({row->date, *flying});
    const auto season = snapshot.season();
    auto seasons = std::make_shared<const FlyingSeasons>(
        record, season, DayWindow{season.first - kBefore, season.last + kAfter},
        static_cast<std::int32_t>(std::lround(facts[Fact::SeasonShiftD])));
    return seasons->size() > 0 ? seasons : nullptr;
}

std::shared_ptr<const MatingTable> matingTable(const Snapshot& snapshot) {
    return std::make_shared<const MatingTable>(snapshot.facts(), flyingSeasons(snapshot));
}

}  // namespace tenthday
