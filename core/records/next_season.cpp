#include "records/next_season.h"

#include <algorithm>

#include "base/natural_order.h"
#include "records/relations.h"
#include "records/validity.h"

namespace tenthday {
namespace {

template <class Row>
std::vector<Ptr<Row>> sorted(std::vector<Ptr<Row>> rows) {
    std::sort(rows.begin(), rows.end(),
              [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    return rows;
}

template <class Row>
bool isAmong(const std::vector<Id<Row>>& ids, Id<Row> id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

/// Stands nowhere from the day on; where it was to go later is given up.
void retireBox(const Snapshot& snapshot, Id<Box> box, Day from, const IdSource& newId,
               ChangeSet& changes) {
    bool leaves = false;
    for (const auto& stay : snapshot.all<BoxStay>().of(box.uuid)) {
        if (stay->from < from) continue;
        if (stay->from > from) {
            changes.erase(stay);
            continue;
        }
        BoxStay nowhere = *stay;
        nowhere.yard.reset();
        changes.edit(stay, nowhere);
        leaves = true;
    }
    if (!leaves) changes.add(BoxStay{Id<BoxStay>{newId()}, 1, box, std::nullopt, from});
}

Day aYearLater(Day day) {
    const date::year_month_day is{day};
    const date::year_month_day next = (is.year() + date::years{1}) / is.month() / is.day();
    if (next.ok()) return Day{next};
    return Day{next.year() / next.month() / date::last};  // the 29th of February
}

/// "2027" gives "2028"; "2027/28" and other words get a year added behind.
std::string labelAfter(const Snapshot& snapshot, const std::string& label, Day from) {
    const auto year = [](Day day) { return static_cast<int>(date::year_month_day{day}.year()); };
    auto next = std::to_string(year(from));
    const bool isYear =
        label.size() == 4 && label.find_first_not_of("0123456789") == std::string::npos;
    if (!isYear) next = label + " " + next;
    const auto bare = next;
    for (int n = 2; findByLabel<Season>(snapshot, next); ++n) next = bare + " " + std::to_string(n);
    return next;
}

}  // namespace

NextSeason nextSeasonAfter(const Snapshot& snapshot) {
    const auto season = snapshot.season();
    const auto row = snapshot.find(snapshot.seasonId());
    NextSeason next;
    next.from = std::max(aYearLater(season.first), season.last + Days{1});
    next.until = std::max(aYearLater(season.last), next.from);
    next.label = labelAfter(snapshot, row ? row->label : std::string("2000"), next.from);
    return next;
}

std::vector<Ptr<Box>> standingBoxes(const Snapshot& snapshot) {
    std::vector<Ptr<Box>> boxes;
    for (const auto& box : snapshot.all<Box>())
        if (yardOn(snapshot, box->id, snapshot.season().last)) boxes.push_back(box);
    return sorted(std::move(boxes));
}

std::vector<Ptr<Builder>> standingBuilders(const Snapshot& snapshot) {
    std::vector<Ptr<Builder>> builders;
    const Day last = snapshot.season().last;
    for (const auto& builder : snapshot.all<Builder>())
        if (builder->from <= last && builder->until.value_or(last) >= last)
            builders.push_back(builder);
    return sorted(std::move(builders));
}

std::vector<Ptr<Queen>> servingBreeders(const Snapshot& snapshot) {
    std::vector<Ptr<Queen>> breeders;
    const Day last = snapshot.season().last;
    for (const auto& queen : snapshot.all<Queen>())
        if (queen->breederFrom && *queen->breederFrom <= last &&
            queen->breederUntil.value_or(last) >= last)
            breeders.push_back(queen);
    return sorted(std::move(breeders));
}

Result<ChangeSet> carryOver(const Snapshot& snapshot, const NextSeason& next,
                            const IdSource& newId) {
    const Day last = snapshot.season().last;
    if (next.from <= last) return Error{"season.from_day: the season shown has not ended by then"};
    const Season season{Id<Season>{newId()}, 1, next.label, next.from, next.until};
    if (const auto valid = checkRow(season); !valid) return valid.error();
    ChangeSet changes{Verb::CarrySeason, next.label, {}, {}};
    changes.add(season);
    const Day before = next.from - Days{1};
    for (const auto& box : standingBoxes(snapshot))
        if (isAmong(next.retiredBoxes, box->id))
            retireBox(snapshot, box->id, next.from, newId, changes);
    for (const auto& builder : standingBuilders(snapshot)) {
        Builder after = *builder;
        if (isAmong(next.retiredBuilders, builder->id))
            after.until = std::min(builder->until.value_or(before), before);
        else if (builder->until == last)
            after.until.reset();
        changes.edit(builder, after);
    }
    for (const auto& queen : servingBreeders(snapshot)) {
        Queen after = *queen;
        if (isAmong(next.retiredBreeders, queen->id))
            after.breederUntil = std::min(queen->breederUntil.value_or(before), before);
        else if (queen->breederUntil == last)
            after.breederUntil.reset();
        changes.edit(queen, after);
    }
    return changes;
}

}  // namespace tenthday
