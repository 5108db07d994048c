#include "records/relations.h"

namespace tenthday {

std::string nucName(const Box& box, const NucSide& side) {
    return side.side == "-" ? box.label : box.label + " " + side.side;
}

std::optional<Id<Yard>> yardOn(const Snapshot& snapshot, Id<Box> box, Day day) {
    std::optional<Id<Yard>> yard;
    Day since = kFirstDay;
    for (const auto& stay : snapshot.all<BoxStay>().of(box.uuid))
        if (stay->from <= day && stay->from >= since) since = stay->from, yard = stay->yard;
    return yard;
}

bool isMadeUpFor(Day makeUp, Day graft) { return makeUp <= graft && graft - makeUp <= Days{4}; }

}  // namespace tenthday
