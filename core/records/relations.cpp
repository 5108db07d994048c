#include "records/relations.h"

#include <algorithm>

namespace tenthday {

std::string nucName(const Box& box, const NucSide& side) {
    return side.side == "-" ? box.label : box.label + " " + side.side;
}

Ptr<BoxStay> stayOn(const Snapshot& snapshot, Id<Box> box, Day day) {
    Ptr<BoxStay> found;
    for (const auto& stay : snapshot.all<BoxStay>().of(box.uuid))
        if (stay->from <= day && (!found || stay->from >= found->from)) found = stay;
    return found;
}

Ptr<BoxLayout> layoutOn(const Snapshot& snapshot, Id<Box> box, Day day) {
    Ptr<BoxLayout> found;
    for (const auto& layout : snapshot.all<BoxLayout>())
        if (layout->box == box && layout->from <= day && (!found || layout->from >= found->from))
            found = layout;
    return found;
}

std::optional<Id<Yard>> yardOn(const Snapshot& snapshot, Id<Box> box, Day day) {
    const auto stay = stayOn(snapshot, box, day);
    return stay ? stay->yard : std::nullopt;
}

bool isMadeUpFor(Day makeUp, Day graft) { return makeUp <= graft && graft - makeUp <= Days{4}; }

bool isGrafted(const Snapshot& snapshot, Id<Batch> batch) {
    const auto outcomes = snapshot.all<Outcome>().of(batch.uuid);
    return std::any_of(outcomes.begin(), outcomes.end(),
                       [](const auto& o) { return o->kind == OutcomeKind::Graft; });
}

Moment reckonedGraft(Start start, Moment begin, const Facts& facts) {
    const double sealed = facts[Fact::EmergenceH] - facts[Fact::SealingH];
    const double likelyAge = (facts[Fact::LarvaFromH] + facts[Fact::LarvaToH]) / 2;
    const double toLarva = facts[Fact::EggH] + likelyAge;
    switch (start) {
        case Start::Graft:
            return begin;
        case Start::Confined:
            return hoursAfter(begin, facts[Fact::ConfineBeforeH]);
        case Start::SealedFound:
            // Somewhere between sealing and emergence: the middle is taken as likely.
            return hoursAfter(begin, -(facts[Fact::SealingH] + sealed / 2 - toLarva));
        case Start::Ripe:
            return hoursAfter(begin, -facts[Fact::RipeH]);
        case Start::Virgin:
            return hoursAfter(begin, -(facts[Fact::EmergenceH] - toLarva));
    }
    return begin;
}

Day graftDay(const Snapshot& snapshot, const Batch& batch) {
    return dayOf(reckonedGraft(batch.start, momentOf(batch.day, batch.hour), snapshot.facts()));
}

Day graftedOrPlanned(const Snapshot& snapshot, const Batch& batch) {
    std::optional<Day> recorded;
    for (const auto& outcome : snapshot.all<Outcome>().of(batch.id.uuid))
        if (outcome->kind == OutcomeKind::Graft && (!recorded || outcome->day < *recorded))
            recorded = outcome->day;
    return recorded.value_or(graftDay(snapshot, batch));
}

std::vector<Id<Builder>> firstBuilders(const Snapshot& snapshot, Id<Batch> batch) {
    std::vector<Id<Builder>> builders;
    for (const auto& load : snapshot.all<BatchLoad>().of(batch.uuid))
        if (load->step == 1 &&
            std::find(builders.begin(), builders.end(), load->builder) == builders.end())
            builders.push_back(load->builder);
    return builders;
}

std::vector<Ptr<Batch>> batchesServed(const Snapshot& snapshot, const MakeUp& makeUp) {
    std::vector<Ptr<Batch>> served;
    Day first = kLastDay;
    for (const auto& load : snapshot.all<BatchLoad>()) {
        if (load->step != 1 || load->builder != makeUp.builder) continue;
        const auto batch = snapshot.find(load->batch);
        if (!batch || !hasGraft(batch->start)) continue;
        const Day graft = graftDay(snapshot, *batch);
        if (graft < makeUp.day || graft > first) continue;
        if (graft < first) served.clear();
        first = graft;
        if (std::find(served.begin(), served.end(), batch) == served.end()) served.push_back(batch);
    }
    return isMadeUpFor(makeUp.day, first) ? served : std::vector<Ptr<Batch>>{};
}

namespace {

bool holds(const std::vector<Ptr<Batch>>& batches, Id<Batch> id) {
    return std::any_of(batches.begin(), batches.end(), [&](const auto& b) { return b->id == id; });
}

/// The make-ups of a batch's first builders that serve it and for which `mine` holds of all batches
/// they serve. Only those of the days before its graft can: the others are not looked into.
template <class Mine>
std::vector<Ptr<MakeUp>> makeUpsWhere(const Snapshot& snapshot, const Batch& batch, Mine mine) {
    std::vector<Ptr<MakeUp>> found;
    const Day graft = graftDay(snapshot, batch);
    for (const auto builder : firstBuilders(snapshot, batch.id))
        for (const auto& makeUp : snapshot.all<MakeUp>().of(builder.uuid)) {
            if (!isMadeUpFor(makeUp->day, graft)) continue;
            const auto served = batchesServed(snapshot, *makeUp);
            if (holds(served, batch.id) && mine(served)) found.push_back(makeUp);
        }
    return found;
}

}  // namespace

std::vector<Ptr<MakeUp>> makeUpsFor(const Snapshot& snapshot, const Batch& batch) {
    return makeUpsWhere(snapshot, batch, [](const auto&) { return true; });
}

std::vector<Ptr<MakeUp>> ownMakeUps(const Snapshot& snapshot, const Batch& batch) {
    return makeUpsWhere(snapshot, batch, [](const auto& served) { return served.size() == 1; });
}

}  // namespace tenthday
