#include "occupancy/builders.h"

#include <algorithm>

#include "base/natural_order.h"
#include "occupancy/builder_rhythm.h"
#include "occupancy/builder_room.h"
#include "occupancy/top_up.h"
#include "occupancy/wild_clock.h"
#include "records/yard_state.h"

namespace tenthday {
namespace {

Days days(const Facts& facts, Fact fact) { return Days{static_cast<int>(facts[fact])}; }

/// A look once all wild cells are begun ends the clock; an earlier one is only ticked.
void tick(WildClock& clock, Day look, const Facts& facts) {
    const Day begun = dayOf(clock.start) + days(facts, Fact::WildBegunD);
    if (look >= begun && look <= dayOf(clock.runsOut)) {
        if (!clock.secondTicked) clock.secondTicked = look;
    } else if (look >= clock.firstLook.first && look < begun && !clock.firstTicked) {
        clock.firstTicked = look;
    }
}

/// A look ticked off as a task counts for its own clock. When it is ticked is not when it was made:
/// the first one never stands for the second.
void tickTasks(const Snapshot& snapshot, WildClock& clock) {
    const auto cause = toText(clock.cause);
    const Day begun = dayOf(clock.start) + days(snapshot.facts(), Fact::WildBegunD);
    for (const auto& done : snapshot.all<TaskDone>()) {
        if (done->subject != cause) continue;
        if (done->rule == TaskRule::FirstWildLook && !clock.firstTicked)
            clock.firstTicked = done->day;
        if (done->rule == TaskRule::SecondWildLook && done->day >= begun && !clock.secondTicked)
            clock.secondTicked = done->day;
    }
}

std::vector<WildClock> clocksOf(const Snapshot& snapshot, const BuilderOutlook& outlook) {
    const auto& facts = snapshot.facts();
    const auto notes = snapshot.all<BuilderNote>().of(outlook.builder->id.uuid);
    std::vector<WildClock> clocks;
    for (const auto& makeUp : outlook.makeUps)
        if (makeUp->openBrood)
            clocks.push_back(
                wildClockFrom(makeUp->id.uuid, momentOf(makeUp->day, makeUp->hour), facts));
    for (const auto& note : notes)
        if (note->kind == BuilderNoteKind::BroodIn && note->openBrood &&
            isQueenless(snapshot, *outlook.builder))
            clocks.push_back(wildClockFrom(note->id.uuid, momentOf(note->day, note->hour), facts,
                                           note->broodAge));
    std::sort(clocks.begin(), clocks.end(),
              [](const auto& a, const auto& b) { return a.start < b.start; });
    for (auto& clock : clocks) {
        for (const auto& note : notes)
            if (note->kind == BuilderNoteKind::Look) tick(clock, note->day, facts);
        tickTasks(snapshot, clock);
    }
    return clocks;
}

/// Days on which the builder is made up and queenless but holds no cells: before its first load
/// after a make-up, and between loads.
std::vector<DayWindow> idleOf(const BuilderOutlook& outlook, Day today) {
    std::vector<DayWindow> idle;
    for (std::size_t i = 0; i < outlook.makeUps.size(); ++i) {
        Day since = outlook.makeUps[i]->day + Days{1};
        const Day end = i + 1 < outlook.makeUps.size() ? outlook.makeUps[i + 1]->day : kLastDay;
        bool served = false;
        for (const auto& load : outlook.loads) {
            const auto held = load.span->span.days();
            if (held.last < since || held.first >= end) continue;
            if (held.first > since) idle.push_back({since, held.first - Days{1}});
            since = std::max(since, load.span->restUntil + Days{1});
            served = true;
        }
        // No batch came at all: idle until it is made up anew or ends, as far as days have gone by.
        const Day gone =
            std::min({end - Days{1}, outlook.builder->until.value_or(kLastDay), today});
        if (!served && since <= gone) idle.push_back({since, gone});
    }
    return idle;
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

/// Sealed cells of a stay at a moment.
double sealedCells(const LoadSpan& load, Moment moment) {
    double cells = 0;
    if (load.span.contains(moment))
        for (const auto& piece : load.thickness)
            if (piece.from <= moment) cells = piece.sealed ? piece.cells : 0;
    return cells;
}

/// When a stay's cells are sealed, or come in sealed.
std::optional<Moment> sealedFrom(const LoadSpan& load) {
    for (const auto& piece : load.thickness)
        if (piece.sealed) return std::max(piece.from, load.span.from);
    return std::nullopt;
}

using CellsAt = double (*)(const LoadSpan&, Moment);

double cellsAt(const BuilderOutlook& outlook, CellsAt count, Moment moment) {
    double cells = 0;
    for (const auto& load : outlook.loads) cells += count(*load.span, moment);
    return cells;
}

/// When its room is to be looked at: as the cells come, and as a dearth, the end of a flow or the
/// end of a feed changes it while they stand there.
std::vector<Moment> roomMoments(const Snapshot& snapshot, const Builder& builder,
                                const MomentSpan& span) {
    std::vector<Moment> moments{span.from};
    const auto offer = [&](Day day) {
        if (const Moment at = momentOf(day, Hour{0}); at > span.from && at < span.until)
            moments.push_back(at);
    };
    for (const auto& note : snapshot.all<YardNote>().of(builder.yard.uuid)) {
        offer(note->from);
        offer(note->until + Days{1});
    }
    for (const auto& note : snapshot.all<BuilderNote>().of(builder.id.uuid))
        if (note->kind == BuilderNoteKind::Feed)
            offer(note->day + days(snapshot.facts(), Fact::FeedServesD) + Days{1});
    std::sort(moments.begin(), moments.end());
    return moments;
}

std::vector<BuilderOutlook::Overfull> overfullOf(const Snapshot& snapshot,
                                                 const BuilderOutlook& outlook) {
    const auto& builder = *outlook.builder;
    std::vector<BuilderOutlook::Overfull> all;
    const auto isOver = [&](const BuilderLoad& load, CellsAt count, Moment from, OpenRoom room) {
        const double cells = cellsAt(outlook, count, from);
        if (count(*load.span, from) <= 0 || cells <= room.cells + 0.5) return false;
        all.push_back({load.batch, from, cells, room.cells, count == sealedCells, room.dearth});
        return true;
    };
    for (const auto& load : outlook.loads) {
        const bool fed = feedTicked(snapshot, load.batch, builder.id).has_value();
        for (const auto from : roomMoments(snapshot, builder, load.span->span))
            if (const auto room = openRoomOn(snapshot, builder, dayOf(from));
                room && !fed && isOver(load, openCells, from, *room))
                break;
        if (const auto from = sealedFrom(*load.span); from && builder.sealedRoom)
            isOver(load, sealedCells, *from, {static_cast<double>(builder.sealedRoom->value)});
    }
    return all;
}

/// One batch's whole stay in a builder, its steps taken together.
struct Stay {
    Id<Batch> batch;
    Moment from;
    Day last;  ///< on which its cells leave
    Day restUntil;
};

std::vector<Stay> staysOf(const BuilderOutlook& outlook) {
    std::vector<Stay> stays;
    for (const auto& load : outlook.loads) {
        const auto& span = *load.span;
        const Day last = dayOf(span.span.until);
        const auto known = std::find_if(stays.begin(), stays.end(),
                                        [&](const Stay& s) { return s.batch == load.batch; });
        if (known == stays.end()) {
            stays.push_back({load.batch, span.span.from, last, span.restUntil});
        } else {
            known->last = std::max(known->last, last);
            known->restUntil = std::max(known->restUntil, span.restUntil);
        }
    }
    return stays;
}

std::vector<BuilderOutlook::TooSoon> tooSoonOf(const BuilderOutlook& outlook,
                                               const Snapshot& snapshot) {
    const auto& facts = snapshot.facts();
    const Days inTime{static_cast<int>(facts[Fact::TopUpByH]) / 24};
    const Days rhythm = rhythmOf(outlook.builder->kind, facts);
    const auto stays = staysOf(outlook);
    const auto& until = outlook.builder->until;
    const Day begins = outlook.builder->from;
    std::vector<BuilderOutlook::TooSoon> all;
    for (std::size_t i = 0; i < stays.size(); ++i) {
        const Day comes = dayOf(stays[i].from);
        BuilderOutlook::TooSoon worst{stays[i].batch, stays[i].from, {}, comes};
        for (std::size_t k = 0; k < i && rhythm > Days{0}; ++k) {
            // A top-up graft is part of the load before it.
            if (comes <= dayOf(stays[k].from) + inTime &&
                isTopUpOf(snapshot, stays[k].batch, stays[i].batch))
                continue;
            const Day free =
                freeAfter(dayOf(stays[k].from), stays[k].last, stays[k].restUntil, rhythm);
            if (free > worst.freeFrom) worst.after = stays[k].batch, worst.freeFrom = free;
        }
        if (begins > worst.freeFrom) worst.after = {}, worst.freeFrom = begins;
        if (worst.freeFrom > comes) all.push_back(worst);
        if (until && stays[i].last > *until)
            all.push_back({stays[i].batch,
                           std::max(stays[i].from, momentOf(*until, Hour{23})),
                           {},
                           std::nullopt});
    }
    return all;
}

/// Builders of the season by label, with make-ups and loads by time: all that the rest is made of.
std::vector<BuilderOutlook> usedBuilders(const Snapshot& snapshot, const Timelines& timelines) {
    std::unordered_map<Id<Builder>, std::vector<BuilderLoad>> loads;
    for (const auto& [batch, timeline] : timelines)
        for (const auto& load : timeline->loads)
            if (load.builder) loads[*load.builder].push_back({batch, &load});
    const auto season = snapshot.season();
    std::vector<BuilderOutlook> builders;
    for (const auto& builder : snapshot.all<Builder>()) {
        const auto used = loads.find(builder->id);  // out of its days or not: that is to be told
        const bool outside =
            builder->from > season.last || (builder->until && *builder->until < season.first);
        if (outside && used == loads.end()) continue;
        auto& outlook = builders.emplace_back();
        outlook.builder = builder;
        const auto made = snapshot.all<MakeUp>().of(builder->id.uuid);
        outlook.makeUps.assign(made.begin(), made.end());
        std::sort(outlook.makeUps.begin(), outlook.makeUps.end(), [](const auto& a, const auto& b) {
            return momentOf(a->day, a->hour) < momentOf(b->day, b->hour);
        });
        if (used == loads.end()) continue;
        outlook.loads = std::move(used->second);
        std::stable_sort(
            outlook.loads.begin(), outlook.loads.end(),
            [](const auto& a, const auto& b) { return a.span->span.from < b.span->span.from; });
    }
    std::sort(builders.begin(), builders.end(), [](const auto& a, const auto& b) {
        return naturalLess(a.builder->label, b.builder->label);
    });
    return builders;
}

/// Made of the very same.
bool isMadeAlike(const BuilderOutlook& a, const BuilderOutlook& b) {
    const auto isSameLoad = [](const BuilderLoad& x, const BuilderLoad& y) {
        return x.span == y.span;
    };
    return a.builder == b.builder && a.makeUps == b.makeUps &&
           std::equal(a.loads.begin(), a.loads.end(), b.loads.begin(), b.loads.end(), isSameLoad);
}

}  // namespace

SharedList<BuilderOutlook> builderOutlooks(const Snapshot& snapshot, const Timelines& timelines,
                                           const SharedList<BuilderOutlook>& before) {
    std::unordered_map<Id<Builder>, std::size_t> known;
    for (std::size_t i = 0; i < before.size(); ++i) known[before[i].builder->id] = i;
    SharedList<BuilderOutlook> outlooks;
    for (auto& outlook : usedBuilders(snapshot, timelines)) {
        if (const auto at = known.find(outlook.builder->id);
            at != known.end() && isMadeAlike(before[at->second], outlook)) {
            outlooks.push_back(before.pointer(at->second));
            continue;
        }
        outlook.clocks = clocksOf(snapshot, outlook);
        outlook.idle = idleOf(outlook, snapshot.today());
        outlook.overfull = overfullOf(snapshot, outlook);
        outlook.tooSoon = tooSoonOf(outlook, snapshot);
        outlooks.push_back(std::move(outlook));
    }
    return outlooks;
}

}  // namespace tenthday
