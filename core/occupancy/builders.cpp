#include "occupancy/builders.h"

#include <algorithm>

#include "base/natural_order.h"

namespace tenthday {
namespace {

Days days(const Facts& facts, Fact fact) { return Days{static_cast<int>(facts[fact])}; }

WildClock clockFrom(Moment start, const Facts& facts) {
    const Day day = dayOf(start);
    WildClock clock;
    clock.start = start;
    clock.firstLook = {day + days(facts, Fact::Look1FromD), day + days(facts, Fact::Look1ToD)};
    clock.secondLook = {day + days(facts, Fact::Look2FromD), day + days(facts, Fact::Look2ToD)};
    clock.oldest = hoursAfter(start, facts[Fact::WildOldestH]);
    clock.old = hoursAfter(start, facts[Fact::WildOldH]);
    clock.young = hoursAfter(start, facts[Fact::WildYoungH]);
    clock.runsOut = hoursAfter(start, facts[Fact::WildLastH]);
    return clock;
}

/// A look once all wild cells are begun ends the clock; an earlier one is only ticked.
void tick(WildClock& clock, Day look, const Facts& facts) {
    const Day begun = dayOf(clock.start) + days(facts, Fact::WildBegunD);
    if (look >= begun && look <= dayOf(clock.runsOut)) {
        if (!clock.secondTicked) clock.secondTicked = look;
    } else if (look >= clock.firstLook.first && look < begun && !clock.firstTicked) {
        clock.firstTicked = look;
    }
}

std::vector<WildClock> clocksOf(const Snapshot& snapshot, const BuilderOutlook& outlook) {
    const auto& facts = snapshot.facts();
    const auto notes = snapshot.all<BuilderNote>().of(outlook.builder->id.uuid);
    std::vector<WildClock> clocks;
    for (const auto& makeUp : outlook.makeUps)
        if (makeUp->openBrood)
            clocks.push_back(clockFrom(momentOf(makeUp->day, makeUp->hour), facts));
    for (const auto& note : notes)
        if (note->kind == BuilderNoteKind::BroodIn && note->openBrood)
            clocks.push_back(clockFrom(momentOf(note->day, note->hour), facts));
    std::sort(clocks.begin(), clocks.end(),
              [](const auto& a, const auto& b) { return a.start < b.start; });
    for (auto& clock : clocks)
        for (const auto& note : notes)
            if (note->kind == BuilderNoteKind::Look) tick(clock, note->day, facts);
    return clocks;
}

/// Days on which the builder is made up and queenless but holds no cells: before its first load
/// after a make-up, and between loads.
std::vector<DayWindow> idleOf(const BuilderOutlook& outlook) {
    std::vector<DayWindow> idle;
    for (std::size_t i = 0; i < outlook.makeUps.size(); ++i) {
        Day since = outlook.makeUps[i]->day + Days{1};
        const Day end = i + 1 < outlook.makeUps.size() ? outlook.makeUps[i + 1]->day : kLastDay;
        for (const auto& load : outlook.loads) {
            const auto held = load.span->span.days();
            if (held.last < since || held.first >= end) continue;
            if (held.first > since) idle.push_back({since, held.first - Days{1}});
            since = std::max(since, load.span->restUntil + Days{1});
        }
    }
    return idle;
}

double roomOf(const Builder& builder, const Facts& facts) {
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
    return 1e9;
}

/// Started, still open cells of a stay at a moment after its take; none once sealed.
double openCells(const LoadSpan& load, Moment moment) {
    if (!load.span.contains(moment)) return 0;
    double started = 0;
    for (const auto& piece : load.thickness) {
        if (piece.sealed && piece.from <= moment) return 0;
        if (!piece.sealed) started = piece.cells;  // what the take left, not what was grafted
    }
    return started;
}

std::vector<BuilderOutlook::Overfull> overfullOf(const BuilderOutlook& outlook,
                                                 const Facts& facts) {
    const double room = roomOf(*outlook.builder, facts);
    std::vector<BuilderOutlook::Overfull> all;
    for (const auto& load : outlook.loads) {
        const Moment from = load.span->span.from;
        double cells = 0;
        for (const auto& other : outlook.loads) cells += openCells(*other.span, from);
        if (openCells(*load.span, from) > 0 && cells > room + 0.5)
            all.push_back({load.batch, from, cells, room});
    }
    return all;
}

}  // namespace

std::vector<BuilderOutlook> builderOutlooks(
    const Snapshot& snapshot,
    const std::vector<std::pair<Id<Batch>, const BatchTimeline*>>& timelines) {
    std::vector<BuilderOutlook> outlooks;
    for (const auto& builder : snapshot.all<Builder>()) {
        const auto season = snapshot.season();
        if (builder->from > season.last || (builder->until && *builder->until < season.first))
            continue;
        BuilderOutlook outlook;
        outlook.builder = builder;
        const auto made = snapshot.all<MakeUp>().of(builder->id.uuid);
        outlook.makeUps.assign(made.begin(), made.end());
        std::sort(outlook.makeUps.begin(), outlook.makeUps.end(), [](const auto& a, const auto& b) {
            return momentOf(a->day, a->hour) < momentOf(b->day, b->hour);
        });
        outlooks.push_back(std::move(outlook));
    }
    std::unordered_map<Id<Builder>, BuilderOutlook*> byId;
    for (auto& outlook : outlooks) byId[outlook.builder->id] = &outlook;
    for (const auto& [batch, timeline] : timelines)
        for (const auto& load : timeline->loads)
            if (const auto found = load.builder ? byId.find(*load.builder) : byId.end();
                found != byId.end())
                found->second->loads.push_back({batch, &load});
    for (auto& outlook : outlooks) {
        std::stable_sort(
            outlook.loads.begin(), outlook.loads.end(),
            [](const auto& a, const auto& b) { return a.span->span.from < b.span->span.from; });
        outlook.clocks = clocksOf(snapshot, outlook);
        outlook.idle = idleOf(outlook);
        outlook.overfull = overfullOf(outlook, snapshot.facts());
    }
    std::sort(outlooks.begin(), outlooks.end(), [](const auto& a, const auto& b) {
        return naturalLess(a.builder->label, b.builder->label);
    });
    return outlooks;
}

}  // namespace tenthday
