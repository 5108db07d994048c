#include "planning/plan_site.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/natural_order.h"
#include "drafting/batch_draft.h"
#include "occupancy/builder_rhythm.h"
#include "planning/plan_hours.h"

namespace tenthday {
namespace {

/// Days after the last graft up to which stays are looked at: long enough for any catch.
constexpr Days kBeyond{120};

/// Days on which a builder is taken by batches in the book.
std::vector<DayWindow> takenDays(const BuilderOutlook& outlook, const Facts& facts) {
    const auto rhythm = rhythmOf(outlook.builder->kind, facts);
    std::map<Id<Batch>, std::tuple<Day, Day, Day>> stays;  // comes, last, rest
    for (const auto& load : outlook.loads) {
        const auto& span = *load.span;
        const Day last = dayOf(span.span.until);
        const auto [at, isNew] =
            stays.try_emplace(load.batch, dayOf(span.span.from), last, span.restUntil);
        if (isNew) continue;
        auto& [comes, leaves, rest] = at->second;
        comes = std::min(comes, dayOf(span.span.from));
        leaves = std::max(leaves, last);
        rest = std::max(rest, span.restUntil);
    }
    std::vector<DayWindow> taken;
    for (const auto& [batch, stay] : stays) {
        const auto& [comes, last, rest] = stay;
        const Day free = freeAfter(comes, last, rest, rhythm);
        if (rhythm > Days{0} && free > comes) taken.push_back({comes, free - Days{1}});
    }
    return taken;
}

/// What makes builders alike.
auto likeness(const Builder& builder) {
    return std::tuple(builder.kind, builder.openRoom, builder.sealedRoom, builder.from,
                      builder.until, builder.yard);
}

bool isFedAlone(const Snapshot& snapshot, Id<Builder> builder) {
    return !snapshot.all<BuilderNote>().of(builder.uuid).empty();
}

/// It could hold a new batch's cell on that day.
bool isFree(const SideOutlook& side, Day day, Day today) {
    using Kind = SideSegment::Kind;
    if (!side.stands.contains(day) || !side.yardOn(day)) return false;
    for (const auto& segment : side.segments) {
        if (!segment.days.contains(day)) continue;
        switch (segment.kind) {
            case Kind::NotStocked:
                return day > today;
            case Kind::Empty:
            case Kind::Freed:
                return segment.readyFrom <= day;
            case Kind::Held:
            case Kind::Spent:
            case Kind::Wintered:
                return false;
        }
    }
    return false;
}

}  // namespace

void addBuilders(const Outlook& outlook, PlanSite& site) {
    const auto& snapshot = outlook.snapshot;
    std::vector<const BuilderOutlook*> firsts;  // by pool
    for (const auto& builder : outlook.builders) {
        const auto taken = takenDays(builder, snapshot.facts());
        const bool alone = !taken.empty() || isFedAlone(snapshot, builder.builder->id);
        std::size_t pool = site.pools.size();
        if (!alone)
            for (std::size_t i = 0; i < site.pools.size(); ++i)
                if (firsts[i] != nullptr &&
                    likeness(*firsts[i]->builder) == likeness(*builder.builder))
                    pool = i;
        if (pool == site.pools.size()) {
            site.pools.emplace_back();
            firsts.push_back(alone ? nullptr : &builder);
            site.problem.pools.push_back(
                {std::vector<std::int32_t>(static_cast<std::size_t>(site.problem.horizon))});
        }
        site.pools[pool].push_back(builder.builder->id);
        auto& standing = site.problem.pools[pool].standing;
        for (std::int32_t i = 0; i < site.problem.horizon; ++i) {
            const Day day = site.day(i);
            const bool isTaken = std::any_of(taken.begin(), taken.end(),
                                             [&](const auto& days) { return days.contains(day); });
            if (!isTaken) ++standing[static_cast<std::size_t>(i)];
        }
    }
}

void addNucs(const Outlook& outlook, PlanSite& site) {
    const auto& snapshot = outlook.snapshot;
    const auto days = static_cast<std::size_t>(site.problem.horizon);
    auto& all = site.problem.yards.emplace_back();
    all.nucs.assign(days, 0);
    all.isBound = !outlook.nucs.sides.empty();
    std::vector<Ptr<Yard>> yards(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
    std::stable_sort(yards.begin(), yards.end(),
                     [](const auto& a, const auto& b) { return a->driveOrder < b->driveOrder; });
    std::map<Id<Yard>, std::size_t> places;
    for (const auto& yard : yards) {
        places[yard->id] = site.yards.size();
        site.yards.push_back(yard->id);
        site.nucs.emplace_back(days, 0);
    }
    for (const auto& side : outlook.nucs.sides)
        for (std::size_t i = 0; i < days; ++i) {
            const Day day = site.day(static_cast<std::int32_t>(i));
            if (!isFree(side, day, snapshot.today())) continue;
            ++all.nucs[i];
            ++site.nucs[places.at(*side.yardOn(day))][i];
        }
}

std::optional<Id<Queen>> breederFor(const Snapshot& snapshot, const PlanSite& site,
                                    std::size_t line, Day day) {
    std::vector<Ptr<Queen>> breeders;
    for (const auto& queen : snapshot.all<Queen>()) {
        if (!isBreederOn(*queen, day)) continue;
        const bool isAsked = queen->line && std::find(site.lines.begin() + 1, site.lines.end(),
                                                      queen->line) != site.lines.end();
        if (line == 0 ? !isAsked : queen->line == site.lines[line]) breeders.push_back(queen);
    }
    if (breeders.empty()) return std::nullopt;
    std::sort(breeders.begin(), breeders.end(),
              [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    const auto turn = static_cast<std::size_t>(day.time_since_epoch().count());
    return breeders[turn % breeders.size()]->id;
}

Result<PlanSite> planSite(const Outlook& outlook, const PlanQuestion& question) {
    const auto& snapshot = outlook.snapshot;
    const Day from = std::max({snapshot.today(), outlook.season.first, question.grafts.first});
    const Day last = std::min(outlook.season.last, question.grafts.last);
    PlanSite site;
    site.first = from;
    site.problem.horizon =
        std::max(DayWindow{from, last}.size(), 1) + static_cast<std::int32_t>(kBeyond.count());
    site.problem.mostGraftsADay = question.mostGraftsADay;
    site.problem.notOnOneBatch = question.notOnOneBatch;
    site.mostMinutesADay = question.mostMinutesADay;
    site.problem.provenQueens = snapshot.book().catchRule != CatchRule::Eggs;
    if (question.mostGraftsADay && *question.mostGraftsADay < 1)
        return Error{"the most grafts a day must be 1 or more"};
    if (question.mostMinutesADay && *question.mostMinutesADay < 1)
        return Error{"the most minutes of work a day must be 1 or more"};
    addBuilders(outlook, site);
    addNucs(outlook, site);
    addOrders(outlook, site);
    if (auto done = addOptions(outlook, question, site); !done) return done.error();
    if (question.mostMinutesADay)
        site.problem.hours = hoursOf(outlook, site, *question.mostMinutesADay);
    return site;
}

}  // namespace tenthday
