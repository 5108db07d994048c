#include "records/relations.h"

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

}  // namespace tenthday
