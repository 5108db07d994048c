#include "records/weather_verbs.h"

#include <algorithm>

#include "records/validity.h"

namespace tenthday {
namespace {

template <class Row, class Is>
Ptr<Row> findRow(const Snapshot& snapshot, Is&& is) {
    const auto& rows = snapshot.all<Row>();
    const auto found = std::find_if(rows.begin(), rows.end(), is);
    return found == rows.end() ? nullptr : *found;
}

}  // namespace

ChangeSet recordFlew(const Snapshot& snapshot, Day day, std::optional<bool> flew,
                     Id<WeatherDay> fresh) {
    ChangeSet changes{Verb::EditRow, std::string(ColumnsOf<WeatherDay>::table), {}, {}};
    const auto before =
        findRow<WeatherDay>(snapshot, [&](const auto& row) { return row->date == day; });
    WeatherDay row = before ? *before : WeatherDay{fresh, 1, day, {}, {}, {}, {}, {}};
    row.flew = flew;
    const bool isBare = !row.tmaxC && !row.tminC && !row.rainMm && !row.windMs && !row.flew;
    if (!before && !isBare)
        changes.add(row);
    else if (before && isBare)
        changes.erase(before);
    else if (before)
        changes.edit(before, row);
    return changes;
}

Result<ChangeSet> setClimateMonth(const Snapshot& snapshot, std::int32_t month,
                                  std::optional<Tenths> tmaxC, std::optional<Tenths> rainDays,
                                  Id<ClimateMonth> fresh) {
    ChangeSet changes{Verb::EditRow, std::string(ColumnsOf<ClimateMonth>::table), {}, {}};
    const auto before =
        findRow<ClimateMonth>(snapshot, [&](const auto& row) { return row->month == month; });
    if (!tmaxC) {
        if (!before && rainDays) return Error{"climate.rain_days: the maximum is needed first"};
        if (before) changes.erase(before);
        return changes;
    }
    const ClimateMonth row{before ? before->id : fresh, 1, month, *tmaxC, rainDays};
    if (auto valid = checkRow(row); !valid) return valid.error();
    before ? changes.edit(before, row) : changes.add(row);
    return changes;
}

}  // namespace tenthday
