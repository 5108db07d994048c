#include "records/queen_verbs.h"

#include <algorithm>

#include "records/uses.h"

namespace tenthday {
namespace {

/// The one thing all have alike; none where they differ, or one has none.
template <class Value>
class Agreed {
public:
    void take(const std::optional<Value>& value) {
        if (first_)
            value_ = value;
        else if (value_ != value)
            value_.reset();
        first_ = false;
    }
    [[nodiscard]] const std::optional<Value>& value() const { return value_; }

private:
    bool first_ = true;
    std::optional<Value> value_;
};

std::string labelOf(const Snapshot& snapshot, Id<Queen> id) {
    const auto queen = snapshot.find(id);
    return queen ? queen->label : std::string();
}

/// Her first stay alone, as the catch made it.
bool isWhereCaught(const std::vector<Ptr<QueenStay>>& stays) {
    return stays.empty() ||
           (stays.size() == 1 && stays[0]->version == 1 &&
            (stays[0]->place == QueenPlace::Bank || stays[0]->place == QueenPlace::Nuc));
}

Ptr<CaughtQueen> catchOf(const Snapshot& snapshot, Id<Queen> queen) {
    for (const auto& caught : snapshot.all<CaughtQueen>())
        if (caught->queen == queen) return caught;
    return nullptr;
}

}  // namespace

Lineage lineageOf(const Snapshot& snapshot, Id<Batch> batch) {
    Agreed<Id<Queen>> mother;
    Agreed<Id<Line>> line;
    for (const auto& bar : snapshot.all<BatchBar>().of(batch.uuid)) {
        const auto breeder = bar->breeder ? snapshot.find(*bar->breeder) : nullptr;
        mother.take(bar->breeder);
        line.take(breeder ? breeder->line : std::nullopt);
    }
    return {mother.value(), line.value()};
}

std::string addCaughtQueen(const Snapshot& snapshot, const CatchMade& made, QueenNumbers& numbers,
                           const IdSource& newId, ChangeSet& changes) {
    const auto lineage = lineageOf(snapshot, made.batch);
    const auto line = lineage.line ? snapshot.find(*lineage.line) : nullptr;
    const auto batch = snapshot.find(made.batch);
    Queen queen;
    queen.id = {newId()};
    queen.label =
        numbers.next({made.year, line ? line->label : "", batch ? batch->label : std::string()});
    queen.year = made.year;
    queen.mother = lineage.mother;
    queen.line = lineage.line;
    CaughtQueen caught;
    caught.id = {newId()};
    caught.queen = queen.id;
    caught.batch = made.batch;
    caught.side = made.side;
    caught.day = made.day;
    QueenStay stay;
    stay.id = {newId()};
    stay.queen = queen.id;
    stay.place = made.place;
    stay.from = made.day;
    const auto label = queen.label;
    changes.add(std::move(queen));
    changes.add(std::move(caught));
    changes.add(std::move(stay));
    return label;
}

Ptr<CaughtQueen> caughtBy(const Snapshot& snapshot, const Outcome& caught) {
    if (caught.kind != OutcomeKind::Catch && !staysForWinter(caught)) return nullptr;
    for (const auto& row : snapshot.all<CaughtQueen>().of(caught.batch.uuid))
        if (row->side == caught.side && row->day == caught.day) return row;
    return nullptr;
}

Result<void> eraseCaughtBy(const Snapshot& snapshot, const Outcome& caught, ChangeSet& changes) {
    const auto row = caughtBy(snapshot, caught);
    if (!row) return {};
    const auto label = labelOf(snapshot, row->queen);
    if (!isWhereCaught(staysOf(snapshot, row->queen)))
        return Error{"queen " + label + " was moved since she was caught: delete her first"};
    if (!usesOf(snapshot, row->queen).empty())
        return Error{"queen " + label + " has daughters or bars: the catch stays"};
    for (auto& change : erasures(snapshot, row->queen)) changes.rows.push_back(std::move(change));
    return {};
}

std::vector<Ptr<QueenStay>> staysOf(const Snapshot& snapshot, Id<Queen> queen) {
    const auto rows = snapshot.all<QueenStay>().of(queen.uuid);
    std::vector<Ptr<QueenStay>> stays(rows.begin(), rows.end());
    std::stable_sort(stays.begin(), stays.end(),
                     [](const auto& a, const auto& b) { return a->from < b->from; });
    return stays;
}

Ptr<QueenStay> stayOn(const Snapshot& snapshot, Id<Queen> queen, Day day) {
    Ptr<QueenStay> found;
    for (const auto& stay : snapshot.all<QueenStay>().of(queen.uuid))
        if (stay->from <= day && (!found || stay->from >= found->from)) found = stay;
    return found;
}

bool isCaughtQueen(const Snapshot& snapshot, Id<Queen> queen) {
    // Every caught queen has a stay; catches of other seasons may not be in the snapshot.
    return !snapshot.all<QueenStay>().of(queen.uuid).empty();
}

bool isBreederQueen(const Snapshot& snapshot, const Queen& queen) {
    return queen.breederFrom || queen.breederUntil || !isCaughtQueen(snapshot, queen.id);
}

void forEachInBank(const Snapshot& snapshot, Day day,
                   const std::function<void(const QueenStay&)>& visit) {
    const auto& stays = snapshot.all<QueenStay>();
    for (auto at = stays.begin(); at != stays.end();) {
        const auto queen = (*at)->queen;
        const auto stay = stayOn(snapshot, queen, day);
        if (stay && stay->place == QueenPlace::Bank) visit(*stay);
        while (at != stays.end() && (*at)->queen == queen) ++at;  // rows of a queen stand together
    }
}

std::int32_t queensInBank(const Snapshot& snapshot, Day day) {
    std::int32_t count = 0;
    forEachInBank(snapshot, day, [&](const QueenStay&) { ++count; });
    return count;
}

Result<ChangeSet> moveQueens(const Snapshot& snapshot, const std::vector<Id<Queen>>& queens,
                             QueenPlace place, Day from, const std::string& note,
                             const IdSource& newId) {
    ChangeSet changes{Verb::EditRow, {}, from, {}};
    for (const auto queen : queens) {
        const auto label = labelOf(snapshot, queen);
        if (label.empty()) return Error{"queen: there is none with this id"};
        const auto caught = catchOf(snapshot, queen);
        if (caught && from < caught->day)
            return Error{"queen " + label + ": was caught only on " + toText(caught->day)};
        if (place == QueenPlace::Nuc && (!caught || !caught->side))
            return Error{"queen " + label + ": the nuc she was raised in is not known"};
        changes.subject += (changes.subject.empty() ? "" : ", ") + label;
        QueenStay stay;
        stay.queen = queen;
        stay.place = place;
        stay.from = from;
        stay.note = note;
        const auto there = stayOn(snapshot, queen, from);
        if (there && there->from == from) {
            changes.edit(there, std::move(stay));
            continue;
        }
        stay.id = {newId()};
        changes.add(std::move(stay));
    }
    return changes;
}

}  // namespace tenthday
