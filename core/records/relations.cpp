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

Day graftDay(const Snapshot& snapshot, const Batch& batch) {
    if (batch.start != Start::Confined) return batch.day;
    return dayOf(
        hoursAfter(momentOf(batch.day, batch.hour), snapshot.facts()[Fact::ConfineBeforeH]));
}

std::vector<Id<Builder>> firstBuilders(const Snapshot& snapshot, Id<Batch> batch) {
    std::vector<Id<Builder>> builders;
    for (const auto& load : snapshot.all<BatchLoad>().of(batch.uuid))
        if (load->step == 1 &&
            std::find(builders.begin(), builders.end(), load->builder) == builders.end())
            builders.push_back(load->builder);
    return builders;
}

namespace {

/// Whether another batch is grafted into the builder between a make-up and this batch's graft:
/// then the make-up was for that one.
bool servesAnother(const Snapshot& snapshot, const MakeUp& makeUp, const Batch& batch) {
    const Day own = graftDay(snapshot, batch);
    const auto& loads = snapshot.all<BatchLoad>();
    return std::any_of(loads.begin(), loads.end(), [&](const Ptr<BatchLoad>& load) {
        if (load->step != 1 || load->builder != makeUp.builder || load->batch == batch.id)
            return false;
        const auto other = snapshot.find(load->batch);
        const Day graft = other ? graftDay(snapshot, *other) : own;
        return makeUp.day <= graft && graft < own;
    });
}

}  // namespace

std::vector<Ptr<MakeUp>> makeUpsFor(const Snapshot& snapshot, const Batch& batch) {
    const Day graft = graftDay(snapshot, batch);
    std::vector<Ptr<MakeUp>> own;
    for (const auto builder : firstBuilders(snapshot, batch.id))
        for (const auto& makeUp : snapshot.all<MakeUp>().of(builder.uuid))
            if (isMadeUpFor(makeUp->day, graft) && !servesAnother(snapshot, *makeUp, batch))
                own.push_back(makeUp);
    return own;
}

}  // namespace tenthday
