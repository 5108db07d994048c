#include "tasks/work_time.h"

#include <algorithm>
#include <array>

#include "records/validity.h"

namespace tenthday {
namespace {

struct Usual {
    std::int32_t once;    // min
    std::int32_t tenths;  // of a minute, each
};
/// Common practice, from memory; in the order of TaskRule.
constexpr std::array<Usual, kTokenCount<TaskRule>> kUsual{{
    {15, 3},    // cells out
    {10, 10},   // cells in
    {15, 5},    // cage cells
    {10, 0},    // free the breeder queen
    {15, 0},    // confine her
    {40, 0},    // make up a builder
    {10, 0},    // feed
    {20, 5},    // graft
    {15, 0},    // take count
    {20, 0},    // move cells
    {25, 0},    // first look for wild cells
    {25, 0},    // second
    {10, 30},   // first look into nucs
    {10, 40},   // catch
    {10, 20},   // cage queens
    {20, 0},    // deliver
    {20, 40},   // stock nucs
    {30, 20},   // to the station
    {30, 20},   // and back
    {30, 100},  // inseminate
    {10, 30},   // drone comb
    {15, 0},    // the user's own
}};

Ptr<WorkTime> rowOf(const Snapshot& snapshot, TaskRule rule) {
    for (const auto& row : snapshot.all<WorkTime>())
        if (row->rule == rule) return row;
    return nullptr;
}

Ptr<DriveTime> rowBetween(const Snapshot& snapshot, std::optional<Id<Yard>> from, Id<Yard> to) {
    for (const auto& row : snapshot.all<DriveTime>()) {
        const std::optional<Id<Yard>> end = row->to;
        if ((row->from == from && row->to == to) || (from && row->from == to && end == from))
            return row;
    }
    return nullptr;
}

}  // namespace

TaskMinutes taskMinutes(const Snapshot& snapshot, TaskRule rule) {
    if (const auto row = rowOf(snapshot, rule)) return {row->minutes, row->each, true};
    return usualMinutes(rule);
}

TaskMinutes usualMinutes(TaskRule rule) {
    const auto& usual = kUsual[static_cast<std::size_t>(rule)];
    return {usual.once, Tenths{usual.tenths}, false};
}

std::int32_t workMinutes(const Snapshot& snapshot, TaskRule rule, std::int32_t pieces) {
    const auto minutes = taskMinutes(snapshot, rule);
    return minutes.once + (minutes.each.value * std::max(pieces, 0) + 9) / 10;
}

std::int32_t workMinutes(const Snapshot& snapshot, const Task& task) {
    return workMinutes(snapshot, task.key.rule,
                       std::max(task.count, static_cast<std::int32_t>(task.sides.size())));
}

std::optional<std::int32_t> driveMinutes(const Snapshot& snapshot, std::optional<Id<Yard>> from,
                                         Id<Yard> to) {
    if (from == to) return 0;
    const auto row = rowBetween(snapshot, from, to);
    return row ? std::optional(row->minutes) : std::nullopt;
}

DayWork roundThrough(const Snapshot& snapshot, std::vector<Id<Yard>> yards) {
    const auto place = [&](Id<Yard> id) {
        const auto yard = snapshot.find(id);
        return std::pair{yard ? yard->driveOrder : 0, id};
    };
    std::sort(yards.begin(), yards.end(),
              [&](Id<Yard> a, Id<Yard> b) { return place(a) < place(b); });
    yards.erase(std::unique(yards.begin(), yards.end()), yards.end());
    DayWork day;
    const auto drive = [&](std::optional<Id<Yard>> from, Id<Yard> to) {
        const auto minutes = driveMinutes(snapshot, from, to);
        day.drive += minutes.value_or(0);
        day.unknownWays += minutes ? 0 : 1;
    };
    std::optional<Id<Yard>> from;
    for (const auto yard : yards) {
        drive(from, yard);
        from = yard;
    }
    if (from) drive(std::nullopt, *from);
    day.round = std::move(yards);
    return day;
}

DayWork dayWork(const Snapshot& snapshot, std::span<const Task> tasks) {
    std::vector<Id<Yard>> yards;
    std::int32_t work = 0;
    for (const auto& task : tasks) {
        work += workMinutes(snapshot, task);
        if (task.yard) yards.push_back(*task.yard);
    }
    auto day = roundThrough(snapshot, std::move(yards));
    day.work = work;
    return day;
}

namespace {

template <class Row>
Result<void> keep(const Ptr<Row>& before, Row row, const IdSource& newId, ChangeSet& changes) {
    row.id = before ? before->id : Id<Row>{newId()};
    if (const auto valid = checkRow(row); !valid) return valid;
    if (before)
        changes.edit(before, std::move(row));
    else
        changes.add(std::move(row));
    return {};
}

}  // namespace

Result<ChangeSet> setTimes(const Snapshot& snapshot, const std::vector<WorkTime>& works,
                           const std::vector<DriveTime>& drives, const IdSource& newId) {
    ChangeSet changes{Verb::SetMinutes, {}, {}, {}};
    for (const auto& work : works)
        if (const auto kept = keep(rowOf(snapshot, work.rule), work, newId, changes); !kept)
            return kept.error();
    for (const auto& drive : drives) {
        if (!snapshot.find(drive.to) || (drive.from && !snapshot.find(*drive.from)))
            return Error{"drive_time: there is no yard with this id"};
        const auto before = rowBetween(snapshot, drive.from, drive.to);
        if (const auto kept = keep(before, drive, newId, changes); !kept) return kept.error();
    }
    return changes;
}

ChangeSet dropTimes(const Snapshot& snapshot, const std::vector<TaskRule>& rules,
                    const std::vector<DrivenWay>& ways) {
    ChangeSet changes{Verb::SetMinutes, {}, {}, {}};
    for (const auto rule : rules)
        if (const auto row = rowOf(snapshot, rule)) changes.erase(row);
    for (const auto& way : ways)
        if (const auto row = rowBetween(snapshot, way.from, way.to)) changes.erase(row);
    return changes;
}

}  // namespace tenthday
