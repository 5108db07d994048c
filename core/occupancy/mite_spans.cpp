#include "occupancy/mite_spans.h"

#include <algorithm>

#include "occupancy/brood_run.h"
#include "occupancy/caged.h"
#include "occupancy/nuc_upkeep.h"

namespace tenthday {
namespace {

/// The days on which a round's queen lays in the nuc; none where she does not, or not known when.
std::optional<DayWindow> layingDays(const SideRound& round) {
    const bool none = round.seen == NucState::NoQueen || round.seen == NucState::Spent;
    const auto* eggs = round.timeline->find(Event::FirstEggs);
    if (none || eggs == nullptr) return std::nullopt;
    Day first = dayOf(eggs->earliest) + behindBatch(*round.timeline, round.transferDay);
    if (!round.isOpen() && round.seenDay) first = std::min(first, *round.seenDay);
    first = std::max(first, round.transferDay);
    if (first > round.catchDay) return std::nullopt;
    return DayWindow{first, round.catchDay};
}

std::vector<BroodGiven> broodOf(const Snapshot& snapshot, const SideOutlook& side) {
    std::vector<BroodGiven> all;
    for (const auto& row : side.stockings)
        all.push_back(
            {row->day, row->day, row->openBrood, row->broodFrames.value_or(Frames{0}).value > 0});
    for (const auto& care : snapshot.all<NucCare>().of(side.side->id.uuid)) {
        const bool sealed = care->kind != NucCareKind::Thin && care->kind != NucCareKind::Feed &&
                            care->broodFrames.value_or(Frames{0}).value > 0;
        if (sealed || bringsOpenBrood(*care))
            all.push_back({care->day, care->day, bringsOpenBrood(*care), sealed});
    }
    for (const auto& round : side.rounds)
        if (const auto laying = layingDays(round))
            all.push_back({laying->first, laying->last, true, true});
    // When she rests over the winter nobody notes: she counts as laying all the time.
    for (const auto& queen : side.wintered) all.push_back({queen.from, queen.last, true, true});
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.from < b.from; });
    return all;
}

/// Stretches of days over which it has bees.
std::vector<DayWindow> stockedDays(const SideOutlook& side) {
    std::vector<DayWindow> all;
    for (const auto& segment : side.segments) {
        const bool bees = segment.kind != SideSegment::Kind::NotStocked &&
                          segment.kind != SideSegment::Kind::Spent;
        if (!bees || segment.days.isEmpty()) continue;
        if (!all.empty() && all.back().last + Days{1} >= segment.days.first)
            all.back().last = segment.days.last;
        else
            all.push_back(segment.days);
    }
    return all;
}

class Finder {
public:
    Finder(const Snapshot& snapshot) : snapshot_(snapshot), season_(snapshot.season()) {
        for (const auto& work : snapshot.all<MiteWork>()) work_.push_back(work);
        std::stable_sort(work_.begin(), work_.end(),
                         [](const auto& a, const auto& b) { return a->day < b->day; });
    }

    void add(const SideOutlook& side) {
        add(nucBroodlessSpans(snapshot_, side), {&side, nullptr, {}, false, {}},
            [&](const MiteWork& work) { return work.side == side.side->id; });
    }
    void add(const BuilderOutlook& builder) {
        if (!builder.builder) return;
        add(broodlessSpans(snapshot_, builder), {nullptr, &builder, {}, false, {}},
            [&](const MiteWork& work) { return work.builder == builder.builder->id; });
    }
    std::vector<MiteSpan> run() {
        std::stable_sort(all_.begin(), all_.end(),
                         [](const auto& a, const auto& b) { return a.span.from < b.span.from; });
        return std::move(all_);
    }

private:
    template <class IsIts>
    void add(const std::vector<BroodlessSpan>& spans, const MiteSpan& bare, IsIts isIts) {
        std::vector<Ptr<MiteWork>> its;
        std::copy_if(work_.begin(), work_.end(), std::back_inserter(its),
                     [&](const auto& work) { return isIts(*work); });
        for (const auto& span : spans) {
            const DayWindow days{span.from, span.until.value_or(kLastDay)};
            auto one = bare;
            one.span = span;
            for (const auto& work : its)
                if (days.contains(work->day)) one.work.push_back(work);
            std::erase_if(its, [&](const auto& work) { return days.contains(work->day); });
            if (days.last >= season_.first && days.first <= season_.last)
                all_.push_back(std::move(one));
        }
        for (const auto& work : its) {
            if (!season_.contains(work->day)) continue;
            auto one = bare;
            one.span = {work->day, work->day, {}};
            one.outside = true;
            one.work = {work};
            all_.push_back(std::move(one));
        }
    }

    const Snapshot& snapshot_;
    DayWindow season_;
    std::vector<Ptr<MiteWork>> work_;
    std::vector<MiteSpan> all_;
};

}  // namespace

std::vector<BroodlessSpan> nucBroodlessSpans(const Snapshot& snapshot, const SideOutlook& side) {
    const Days worker{static_cast<int>(snapshot.facts()[Fact::WorkerD])};
    const auto brood = broodOf(snapshot, side);
    std::vector<BroodlessSpan> all;
    for (const auto& days : stockedDays(side)) {
        std::vector<BroodGiven> its;
        // Bees come in during the day before the first one they count for.
        for (const auto& given : brood)
            if (given.from >= days.first - Days{1} && given.from <= days.last) its.push_back(given);
        const auto end = days.last < kLastDay ? std::optional(days.last) : std::nullopt;
        for (const auto& span : spansBetween(its, worker, end))
            if (span.from <= days.last) all.push_back(span);
    }
    return all;
}

std::vector<MiteSpan> miteSpans(const Snapshot& snapshot, const NucOutlook& nucs,
                                const SharedList<BuilderOutlook>& builders) {
    Finder finder(snapshot);
    for (const auto& side : nucs.sides) finder.add(side);
    for (const auto& builder : builders) finder.add(builder);
    return finder.run();
}

Result<ChangeSet> recordMiteWork(const Snapshot& snapshot, const std::vector<MitePlace>& places,
                                 Day day, const std::string& what, const std::string& note,
                                 const IdSource& newId) {
    if (what.find_first_not_of(' ') == std::string::npos) return Error{"what was done is needed"};
    if (day > snapshot.today()) return Error{"that day is still to come: " + toText(day)};
    ChangeSet changes{Verb::AddRow, what, day, {}};
    for (const auto& place : places) {
        MiteWork work;
        work.id = {newId()};
        work.side = place.side;
        work.builder = place.builder;
        work.day = day;
        work.what = what;
        work.note = note;
        changes.add(std::move(work));
    }
    return changes;
}

}  // namespace tenthday
