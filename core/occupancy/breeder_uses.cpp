#include "occupancy/breeder_uses.h"

#include <algorithm>

#include "base/natural_order.h"

namespace tenthday {
namespace {

bool isBreeder(const Queen& queen) { return queen.breederFrom || queen.breederUntil; }

/// Over all these days.
bool isBreederOn(const Queen& queen, const DayWindow& days) {
    return isBreeder(queen) && queen.breederFrom.value_or(kFirstDay) <= days.first &&
           days.last <= queen.breederUntil.value_or(kLastDay);
}

std::optional<Moment> graftSeen(const Snapshot& snapshot, Id<Batch> batch) {
    std::optional<Moment> first;
    for (const auto& outcome : snapshot.all<Outcome>().of(batch.uuid))
        if (outcome->kind == OutcomeKind::Graft) {
            const auto seen = momentOf(outcome->day, outcome->hour);
            first = std::min(first.value_or(seen), seen);
        }
    return first;
}

bool graftsFrom(const Snapshot& snapshot, const Batch& batch, Id<Queen> queen) {
    const auto bars = snapshot.all<BatchBar>().of(batch.id.uuid);
    return std::any_of(bars.begin(), bars.end(),
                       [&](const auto& bar) { return bar->breeder == queen; });
}

std::vector<BreederUse> usesOf(const Snapshot& snapshot, Id<Queen> queen) {
    std::vector<BreederUse> all;
    for (const auto& batch : snapshot.all<Batch>())
        if (hasGraft(batch->start) && snapshot.startDays().contains(batch->day) &&
            graftsFrom(snapshot, *batch, queen))
            all.push_back({confinementOf(snapshot, *batch), {batch}, {}, false, {}});
    std::sort(all.begin(), all.end(), [](const BreederUse& a, const BreederUse& b) {
        return std::tie(a.confined.from, a.batches[0]->label) <
               std::tie(b.confined.from, b.batches[0]->label);
    });
    std::vector<BreederUse> uses;
    for (auto& use : all) {
        if (uses.empty() || !uses.back().confined.overlaps(use.confined)) {
            uses.push_back(std::move(use));
            continue;
        }
        auto& one = uses.back();
        one.confined.until = std::max(one.confined.until, use.confined.until);
        one.batches.push_back(use.batches[0]);
    }
    for (std::size_t i = 1; i < uses.size(); ++i) {
        uses[i].free = dayOf(uses[i].confined.from) - dayOf(uses[i - 1].confined.until);
        uses[i].tooSoon =
            static_cast<double>(uses[i].free->count()) < snapshot.facts()[Fact::ConfineRestD];
    }
    return uses;
}

bool isFree(const BreederSeason& season, const MomentSpan& span) {
    return std::none_of(season.uses.begin(), season.uses.end(),
                        [&](const BreederUse& use) { return use.confined.overlaps(span); });
}

}  // namespace

MomentSpan confinementOf(const Snapshot& snapshot, const Batch& batch) {
    const auto& facts = snapshot.facts();
    const Moment begin = momentOf(batch.day, batch.hour);
    const Moment from = batch.start == Start::Confined
                            ? begin
                            : hoursAfter(graftSeen(snapshot, batch.id).value_or(begin),
                                         -facts[Fact::ConfineBeforeH]);
    return {from, hoursAfter(from, facts[Fact::ConfineH])};
}

std::vector<BreederSeason> breederSeasons(const Snapshot& snapshot) {
    std::vector<BreederSeason> all;
    for (const auto& queen : snapshot.all<Queen>()) {
        auto uses = usesOf(snapshot, queen->id);
        if (isBreeder(*queen) || !uses.empty()) all.push_back({queen, std::move(uses)});
    }
    std::sort(all.begin(), all.end(), [](const BreederSeason& a, const BreederSeason& b) {
        return naturalLess(a.queen->label, b.queen->label);
    });
    for (auto& season : all)
        for (auto& use : season.uses)
            for (const auto& other : all)
                if (season.queen->line && other.queen->line == season.queen->line &&
                    other.queen != season.queen && isBreederOn(*other.queen, use.confined.days()) &&
                    isFree(other, use.confined))
                    use.reserve.push_back(other.queen);
    return all;
}

}  // namespace tenthday
