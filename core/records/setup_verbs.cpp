#include "records/setup_verbs.h"

#include <algorithm>

#include "records/task_marks.h"
#include "records/uses.h"
#include "records/validity.h"

namespace tenthday {
namespace {

template <class Row>
std::string nameOf(const Row& row) {
    if constexpr (requires { row.label; })
        return row.label;
    else if constexpr (requires { row.from; })
        return toText(row.from);
    else
        return toText(row.day);
}

template <class Row>
Result<void> put(const Snapshot& snapshot, Row row, ChangeSet& changes) {
    if (const auto valid = checkRow(row); !valid) return valid;
    const auto before = snapshot.find(row.id);
    before ? changes.edit(before, std::move(row)) : changes.add(std::move(row));
    return {};
}

bool isAncestor(const Snapshot& snapshot, Id<Queen> elder, std::optional<Id<Queen>> of) {
    // No longer than there are queens: a book from elsewhere may hold a ring.
    for (std::size_t i = 0; of && i <= snapshot.all<Queen>().size(); ++i) {
        if (*of == elder) return true;
        const auto queen = snapshot.find(*of);
        of = queen ? queen->mother : std::nullopt;
    }
    return false;
}

std::vector<Ptr<Step>> stepsOf(const Snapshot& snapshot, Id<Method> method) {
    const auto rows = snapshot.all<Step>().of(method.uuid);
    std::vector<Ptr<Step>> steps(rows.begin(), rows.end());
    std::sort(steps.begin(), steps.end(),
              [](const auto& a, const auto& b) { return a->step < b->step; });
    return steps;
}

bool sameSteps(const std::vector<Ptr<Step>>& before, const std::vector<Step>& after) {
    return std::equal(before.begin(), before.end(), after.begin(), after.end(),
                      [](const Ptr<Step>& a, const Step& b) {
                          return a->where == b.where && a->fromHour == b.fromHour &&
                                 a->toHour == b.toHour && a->restDays == b.restDays;
                      });
}

Result<void> checkSteps(const std::vector<Step>& steps) {
    if (steps.empty()) return Error{"a method needs a step"};
    for (std::size_t i = 1; i < steps.size(); ++i)
        if (steps[i].fromHour < steps[i - 1].toHour)
            return Error{"step " + std::to_string(i + 1) + " begins before step " +
                         std::to_string(i) + " has ended"};
    return {};
}

Result<void> putSteps(Id<Method> method, const std::vector<Ptr<Step>>& before,
                      const std::vector<Step>& after, const IdSource& newId, ChangeSet& changes) {
    for (std::size_t i = 0; i < after.size(); ++i) {
        Step step = after[i];
        step.method = method;
        step.step = static_cast<std::int32_t>(i) + 1;
        step.id = i < before.size() ? before[i]->id : Id<Step>{newId()};
        if (const auto valid = checkRow(step); !valid) return valid;
        if (i < before.size())
            changes.edit(before[i], step);
        else
            changes.add(step);
    }
    for (std::size_t i = after.size(); i < before.size(); ++i) changes.erase(before[i]);
    return {};
}

}  // namespace

template <class Row>
Result<ChangeSet> saveRow(const Snapshot& snapshot, Row row) {
    ChangeSet changes{snapshot.find(row.id) ? Verb::EditRow : Verb::AddRow, nameOf(row), {}, {}};
    if (const auto done = put(snapshot, std::move(row), changes); !done) return done.error();
    return changes;
}

Result<ChangeSet> saveQueen(const Snapshot& snapshot, Queen queen, const std::string& line,
                            Id<Line> fresh) {
    if (isAncestor(snapshot, queen.id, queen.mother))
        return Error{"queen.mother: " + queen.label + " would be her own ancestor"};
    const auto known = findByLabel<Line>(snapshot, line);
    queen.line = line.empty() ? std::nullopt : std::optional(known ? known->id : fresh);
    auto changes = saveRow(snapshot, std::move(queen));
    if (changes && !line.empty() && !known) changes.value().add(Line{fresh, 1, line});
    return changes;
}

Result<ChangeSet> saveMethod(const Snapshot& snapshot, Method method, std::vector<Step> steps,
                             const IdSource& newId) {
    if (const auto good = checkSteps(steps); !good) return good.error();
    const auto known = snapshot.find(method.id);
    auto before = stepsOf(snapshot, method.id);
    const bool copied = known && !sameSteps(before, steps) && !usesOf(snapshot, method.id).empty();
    if (copied) {
        if (method.label == known->label) method.label = freeLabel<Method>(snapshot, method.label);
        method.id = {newId()};
        before.clear();
    }
    ChangeSet changes{known && !copied ? Verb::EditRow : Verb::AddRow, method.label, {}, {}};
    if (const auto done = put(snapshot, method, changes); !done) return done.error();
    if (const auto done = putSteps(method.id, before, steps, newId, changes); !done)
        return done.error();
    return changes;
}

template <class Row>
std::string freeLabel(const Snapshot& snapshot, const std::string& label) {
    auto free = label;
    for (int number = 2; findByLabel<Row>(snapshot, free); ++number)
        free = label + " " + std::to_string(number);
    return free;
}

template <class Row>
Result<ChangeSet> deleteWhole(const Snapshot& snapshot, Id<Row> id) {
    const auto row = snapshot.find(id);
    const std::string table(ColumnsOf<Row>::table);
    if (!row) return Error{table + ": there is none with this id"};
    const auto uses = usesOf(snapshot, id);
    if (!uses.empty())
        return Error{table + " " + nameOf(*row) + ": still in use by " +
                     std::string(uses.front().table)};
    ChangeSet changes{Verb::DeleteRow, nameOf(*row), {}, erasures(snapshot, id)};
    eraseTaskMarks(snapshot, id.uuid, changes);
    return changes;
}

Result<ChangeSet> retireBuilder(const Snapshot& snapshot, Id<Builder> id, Day from) {
    const auto builder = snapshot.find(id);
    if (!builder) return Error{"builder: there is none with this id"};
    Builder retired = *builder;
    retired.until = std::min(from - Days{1}, builder->until.value_or(kLastDay));
    return saveRow(snapshot, retired);
}

Result<ChangeSet> retireBreeder(const Snapshot& snapshot, Id<Queen> id, Day from) {
    const auto queen = snapshot.find(id);
    if (!queen) return Error{"queen: there is none with this id"};
    Queen retired = *queen;
    retired.breederUntil = std::min(from - Days{1}, queen->breederUntil.value_or(kLastDay));
    return saveRow(snapshot, retired);
}

template Result<ChangeSet> saveRow(const Snapshot&, Yard);
template Result<ChangeSet> saveRow(const Snapshot&, Builder);
template Result<ChangeSet> saveRow(const Snapshot&, Queen);
template Result<ChangeSet> saveRow(const Snapshot&, DayOff);
template Result<ChangeSet> saveRow(const Snapshot&, Season);
template Result<ChangeSet> saveRow(const Snapshot&, DroneSighting);
template Result<ChangeSet> saveRow(const Snapshot&, YardNote);
template Result<ChangeSet> saveRow(const Snapshot&, MakeUp);
template Result<ChangeSet> saveRow(const Snapshot&, BuilderNote);
template std::string freeLabel<Method>(const Snapshot&, const std::string&);
template std::string freeLabel<Season>(const Snapshot&, const std::string&);
template std::string freeLabel<Yard>(const Snapshot&, const std::string&);
template std::string freeLabel<Builder>(const Snapshot&, const std::string&);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<Yard>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<Box>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<Builder>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<Queen>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<Method>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<DayOff>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<Season>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<DroneSighting>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<YardNote>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<MakeUp>);
template Result<ChangeSet> deleteWhole(const Snapshot&, Id<BuilderNote>);

}  // namespace tenthday
