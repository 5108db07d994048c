#include "occupancy/builder_room.h"

#include "records/yard_state.h"

namespace tenthday {
bool raisesCells(BuilderKind kind) {
    return kind != BuilderKind::Incubator && kind != BuilderKind::Holding;
}

std::optional<double> usualRoom(const Builder& builder, const Facts& facts) {
    if (builder.openRoom) return builder.openRoom->value;
    switch (builder.kind) {
        case BuilderKind::Starter:
            return facts[Fact::RoomStarter];
        case BuilderKind::Finisher:
        case BuilderKind::StarterFinisher:
            return facts[Fact::RoomFinisher];
        case BuilderKind::Incubator:
        case BuilderKind::Holding:
            break;
    }
    return std::nullopt;
}

std::optional<OpenRoom> openRoomOn(const Snapshot& snapshot, const Builder& builder, Day day) {
    const auto& facts = snapshot.facts();
    const auto own = usualRoom(builder, facts);
    if (!own) return std::nullopt;
    if (snapshot.all<YardNote>().empty() && snapshot.all<BuilderNote>().empty())
        return OpenRoom{*own};
    if (yardNoteOn(snapshot, builder.yard, YardNoteKind::Flow, day) ||
        isFedOn(snapshot, builder.id, day))
        return std::nullopt;
    const double dearth = facts[Fact::RoomDearth];
    const bool less =
        raisesCells(builder.kind) && dearth < *own && dearthOn(snapshot, builder.yard, day);
    return less ? OpenRoom{dearth, true} : OpenRoom{*own};
}

}  // namespace tenthday
