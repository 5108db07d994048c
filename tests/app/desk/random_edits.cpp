#include "app/desk/random_edits.h"

#include "support/small_book.h"

namespace tenthday::test {

std::size_t RandomEdits::below(std::size_t limit) {
    return std::uniform_int_distribution<std::size_t>(0, limit - 1)(random_);
}

template <class Row>
Ptr<Row> RandomEdits::any(const Snapshot& snapshot) {
    const auto& rows = snapshot.all<Row>();
    if (rows.empty()) return nullptr;
    return *(rows.begin() + static_cast<std::ptrdiff_t>(below(rows.size())));
}

template <class Row>
Id<Row> RandomEdits::freshId() {
    return id<Row>(++ids_);
}

ChangeSet RandomEdits::next(const Snapshot& snapshot) {
    using Make = void (RandomEdits::*)(const Snapshot&, ChangeSet&);
    static constexpr Make makers[] = {&RandomEdits::addBatch,      &RandomEdits::deleteBatch,
                                      &RandomEdits::moveBatch,     &RandomEdits::addOutcome,
                                      &RandomEdits::deleteOutcome, &RandomEdits::swapLabels,
                                      &RandomEdits::addBox,        &RandomEdits::setFact};
    ChangeSet changes;
    changes.subject = "random";
    (this->*makers[below(std::size(makers))])(snapshot, changes);
    return changes;
}

void RandomEdits::addBatch(const Snapshot&, ChangeSet& changes) {
    changes.verb = Verb::AddRow;
    Batch batch;
    batch.id = freshId<Batch>();
    batch.label = "b" + std::to_string(ids_);
    batch.day = day("2027-05-01") + Days{static_cast<int>(below(90))};
    batch.method = kMethod;
    changes.add(batch);
    for (std::int32_t bar = 1; bar <= 1 + static_cast<std::int32_t>(below(3)); ++bar) {
        const auto cells = Cells{static_cast<std::int32_t>(10 + below(20))};
        changes.add(BatchBar{freshId<BatchBar>(), 1, batch.id, bar, kQueen, cells});
        changes.add(BatchLoad{freshId<BatchLoad>(), 1, batch.id, bar, 1, kBuilder});
    }
}

void RandomEdits::deleteBatch(const Snapshot& snapshot, ChangeSet& changes) {
    const auto batch = any<Batch>(snapshot);
    if (!batch || snapshot.all<Batch>().size() < 3) return;
    changes.verb = Verb::DeleteRow;
    changes.erase(batch);
    const auto owner = batch->id.uuid;
    for (const auto& row : snapshot.all<BatchBar>().of(owner)) changes.erase(row);
    for (const auto& row : snapshot.all<BatchLoad>().of(owner)) changes.erase(row);
    for (const auto& row : snapshot.all<Outcome>().of(owner)) changes.erase(row);
}

void RandomEdits::moveBatch(const Snapshot& snapshot, ChangeSet& changes) {
    const auto batch = any<Batch>(snapshot);
    if (!batch) return;
    changes.verb = Verb::MoveBatch;
    auto after = *batch;
    after.day += Days{static_cast<int>(below(5)) - 2};  // at times not at all
    after.day = std::clamp(after.day, day("2027-04-10"), day("2027-09-20"));
    changes.edit(batch, after);
}

void RandomEdits::addOutcome(const Snapshot& snapshot, ChangeSet& changes) {
    const auto batch = any<Batch>(snapshot);
    if (!batch) return;
    changes.verb = Verb::RecordOutcome;
    Outcome outcome;
    outcome.id = freshId<Outcome>();
    outcome.batch = batch->id;
    outcome.kind = OutcomeKind::TakeCount;
    outcome.day = batch->day + Days{1};
    outcome.count = Cells{static_cast<std::int32_t>(below(10))};
    changes.add(outcome);
}

void RandomEdits::deleteOutcome(const Snapshot& snapshot, ChangeSet& changes) {
    changes.verb = Verb::DeleteRow;
    if (const auto outcome = any<Outcome>(snapshot)) changes.erase(outcome);
}

void RandomEdits::swapLabels(const Snapshot& snapshot, ChangeSet& changes) {
    const auto one = any<Batch>(snapshot);
    const auto other = any<Batch>(snapshot);
    if (!one || one == other) return;
    auto first = *one;
    auto second = *other;
    std::swap(first.label, second.label);
    changes.edit(one, first);
    changes.edit(other, second);
}

void RandomEdits::addBox(const Snapshot&, ChangeSet& changes) {
    changes.verb = Verb::AddRow;
    const auto layout = freshId<BoxLayout>();
    const auto box = freshId<Box>();
    changes.add(NucSide{freshId<NucSide>(), 1, layout, "-", Frames{5}});
    changes.add(BoxLayout{layout, 1, box, "5", day("2027-05-01")});
    changes.add(BoxStay{freshId<BoxStay>(), 1, box, kYard, day("2027-05-01")});
    changes.add(Box{box, 1, "x" + std::to_string(ids_), ""});
}

void RandomEdits::setFact(const Snapshot& snapshot, ChangeSet& changes) {
    changes.verb = Verb::SetFact;
    const auto milli = static_cast<std::int32_t>(500 + below(400));
    if (const auto known = any<FactOverride>(snapshot)) {
        auto after = *known;
        after.valueMilli = milli;
        changes.edit(known, after);
    } else {
        changes.add(
            FactOverride{freshId<FactOverride>(), 1, std::string(token(Fact::Accepted)), milli});
    }
}

}  // namespace tenthday::test
