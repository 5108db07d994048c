// Each batch that could be: a probe of every method on every day allowed.
#include <algorithm>
#include <cmath>

#include "base/natural_order.h"
#include "drafting/batch_draft.h"
#include "drafting/job_days.h"
#include "occupancy/builder_rhythm.h"
#include "occupancy/builder_room.h"
#include "outlook/supply_of.h"
#include "planning/plan_site.h"
#include "records/yard_state.h"

namespace tenthday {
namespace {

/// Grafts of a probe: rates are its counts by this.
constexpr std::int32_t kProbe = 1000;
/// No builder gets more, where nothing bounds it.
constexpr std::int32_t kMostInOne = 400;
/// Days after the graft on which cells are open and fed.
constexpr Days kOpenDays{4};

/// Probes stand in a snapshot that is never kept.
Id<Batch> probeId(std::size_t at) { return {Uuid{0xFFFFFFFF0000E000ULL, at + 1}}; }

class Options {
public:
    Options(const Outlook& outlook, const PlanQuestion& question, PlanSite& site)
        : outlook_(outlook),
          snapshot_(outlook.snapshot),
          question_(question),
          site_(site),
          rates_(ratesInForce(outlook.snapshot, ownRatesOf(outlook))) {}

    Result<void> add() {
        methods();
        if (site_.methods.empty())
            return Error{"the book has no method whose steps all have a builder"};
        const auto probed = probe();
        if (!probed) return probed.error();
        OutlookMemo memo;
        for (std::size_t i = 0; i < plans_.size(); ++i)
            if (const auto batch = probed.value().find(probeId(i)))
                option(plans_[i].first, plans_[i].second,
                       memo.batch(probed.value(), batch)->timeline);
        return {};
    }

private:
    /// Those that can be done at all, by label.
    void methods() {
        std::vector<Ptr<Method>> all(snapshot_.all<Method>().begin(),
                                     snapshot_.all<Method>().end());
        std::sort(all.begin(), all.end(),
                  [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
        for (const auto& method : all) {
            const auto steps = snapshot_.all<Step>().of(method->id.uuid);
            const bool served = std::all_of(steps.begin(), steps.end(), [&](const auto& step) {
                return std::any_of(outlook_.builders.begin(), outlook_.builders.end(),
                                   [&](const auto& b) { return b.builder->kind == step->where; });
            });
            if (served && !steps.empty()) site_.methods.push_back(method->id);
        }
    }

    [[nodiscard]] DayWindow days() const {
        DayWindow days{site_.first, std::min(outlook_.season.last, question_.grafts.last)};
        const auto& ready = outlook_.limits[Limit::DronesReady].day;
        const auto& out = outlook_.limits[Limit::DronesOut].day;
        if (ready) days.first = std::max(days.first, *ready);
        if (out) days.last = std::min(days.last, *out);
        return days;
    }

    /// One batch per day and method, all in one snapshot: each is looked at by itself.
    Result<Snapshot> probe() {
        ChangeSet changes;
        const auto free = freeDays(snapshot_, question_.freeWeekdays);
        const auto all = days();
        const auto like = newDraft(snapshot_, all.first, {});
        for (Day day = all.first; day <= all.last; day += Days{1}) {
            if (free.contains(day)) continue;
            for (std::size_t m = 0; m < site_.methods.size(); ++m) {
                Batch batch;
                batch.id = probeId(plans_.size());
                batch.label = "plan " + std::to_string(plans_.size());
                batch.day = day;
                batch.hour = like.hour;
                batch.larvaFromH = like.start == Start::Graft ? like.larvaFromH : std::nullopt;
                batch.larvaToH = like.start == Start::Graft ? like.larvaToH : std::nullopt;
                batch.method = site_.methods[m];
                changes.add(batch);
                BatchBar bar;
                bar.id = {probeId(plans_.size()).uuid};
                bar.batch = batch.id;
                bar.cells = Cells{kProbe};
                changes.add(bar);
                plans_.emplace_back(day, m);
            }
        }
        return applied(snapshot_, changes);
    }

    void option(Day day, std::size_t method, const BatchTimeline& timeline) {
        const auto free = freeDays(snapshot_, question_.freeWeekdays);
        const auto& hold = timeline.hold;
        if (free.contains(hold.transferDay)) return;
        PlanProblem::Option option;
        option.day = site_.index(day);
        option.method = method;
        option.cellsDay = site_.index(hold.transferDay);
        const auto* out = timeline.find(Event::Emergence);
        option.outDay = out == nullptr ? option.cellsDay : site_.index(dayOf(out->likely));
        option.ready = site_.index(hold.catchDay);
        const auto* sealed = timeline.find(Event::Sealed);
        option.givesRipe = sealed != nullptr && sealed->likely <= hold.transfer;
        const auto rest = std::max(queenlessDays(snapshot_.facts()), Days{1});
        option.lastHeld = option.ready + static_cast<std::int32_t>(rest.count()) - 1;
        if (option.lastHeld >= site_.problem.horizon) return;
        rate(option, timeline);
        for (std::size_t yard = 0; yard < site_.problem.yards.size(); ++yard)
            option.yards.push_back(yard);
        lines(option, day);
        if (!option.lines.empty() && builders(option, timeline))
            site_.problem.options.push_back(std::move(option));
    }

    /// By the rates in force, of a cell as the season counts it by the facts.
    void rate(PlanProblem::Option& option, const BatchTimeline& timeline) const {
        const double ripe = timeline.counts.ripe / kProbe;
        const double out = rates_[LossStage::Accepted].mean * rates_[LossStage::Sealed].mean *
                           rates_[LossStage::Emerged].mean;
        double good = out * rates_[LossStage::Mated].mean;
        if (snapshot_.book().catchRule != CatchRule::Eggs)
            good *= rates_[LossStage::JudgedGood].mean;
        option.virginsPerCell = out / ripe;
        option.bestPerCell = good / ripe;
        option.queensPerCell = option.bestPerCell * (1 - timeline.neverMates);
    }

    void lines(PlanProblem::Option& option, Day day) const {
        const auto& queens = snapshot_.all<Queen>();
        const bool keepsBreeders = std::any_of(queens.begin(), queens.end(), [](const auto& queen) {
            return queen->breederFrom.has_value();
        });
        for (std::size_t line = 0; line < site_.lines.size(); ++line)
            if (breederFor(snapshot_, site_, line, day) || (line == 0 && !keepsBreeders))
                option.lines.push_back(line);
    }

    /// False: a step finds no builder.
    bool builders(PlanProblem::Option& option, const BatchTimeline& timeline) const {
        for (const auto& load : timeline.loads) {
            auto& uses = option.steps.emplace_back();
            for (std::size_t pool = 0; pool < site_.pools.size(); ++pool) {
                const auto builder = snapshot_.find(site_.pools[pool].front());
                if (builder->kind != load.where) continue;
                if (const auto use = useOf(*builder, pool, option, timeline, load))
                    uses.push_back(*use);
            }
            if (uses.empty()) return false;
        }
        return !option.steps.empty();
    }

    [[nodiscard]] std::optional<PlanProblem::PoolUse> useOf(const Builder& builder,
                                                            std::size_t pool,
                                                            const PlanProblem::Option& option,
                                                            const BatchTimeline& timeline,
                                                            const LoadSpan& load) const {
        const Day comes = dayOf(load.span.from);
        const Day last = dayOf(load.span.until);
        if (!standsOn(builder, comes) || !standsOn(builder, last)) return std::nullopt;
        const auto rhythm = rhythmOf(builder.kind, snapshot_.facts());
        const Day free = freeAfter(comes, last, load.restUntil, rhythm);
        PlanProblem::PoolUse use;
        use.pool = pool;
        use.from = site_.index(comes);
        use.until = rhythm > Days{0} ? site_.index(free) - 1 : use.from - 1;
        if (use.until >= site_.problem.horizon) return std::nullopt;
        const bool isFirst = option.steps.size() == 1;
        const double started = startedShare(builder, isFirst ? comes : dayOf(timeline.graft));
        const double sealed = started * timeline.counts.sealed / timeline.counts.accepted;
        use.room = roomFor(builder, load, started, sealed);
        if (use.room < 1) return std::nullopt;
        const double usual = timeline.counts.accepted / kProbe;
        if (isFirst) use.ripe = timeline.counts.ripe / kProbe * started / usual;
        return use;
    }

    /// Of its grafts: fewer in a dearth without feed.
    [[nodiscard]] double startedShare(const Builder& builder, Day day) const {
        const auto& facts = snapshot_.facts();
        const bool isHungry = raisesCells(builder.kind) && dearthOn(snapshot_, builder.yard, day) &&
                              !isFedOn(snapshot_, builder.id, day);
        return isHungry ? std::min(facts[Fact::AcceptedDearth], facts[Fact::Accepted])
                        : facts[Fact::Accepted];
    }

    /// Most grafts whose cells it takes: open ones by their days there, sealed ones by its own
    /// room.
    [[nodiscard]] std::int32_t roomFor(const Builder& builder, const LoadSpan& load, double started,
                                       double sealed) const {
        double grafts = kMostInOne;
        const bool isOpen = !load.thickness.empty() && !load.thickness.front().sealed;
        if (isOpen) {
            const auto usual = usualRoom(builder, snapshot_.facts());
            double room = usual.value_or(kMostInOne);
            const Day last = std::min(dayOf(load.span.until), dayOf(load.span.from) + kOpenDays);
            for (Day day = dayOf(load.span.from); day <= last; day += Days{1})
                if (const auto there = openRoomOn(snapshot_, builder, day))
                    room = std::min(room, there->cells);
            if (usual) grafts = std::min(grafts, room / started);
        }
        if (builder.sealedRoom && sealed > 0)
            grafts = std::min(grafts, builder.sealedRoom->value / sealed);
        return static_cast<std::int32_t>(std::floor(grafts + 1e-9));
    }

    const Outlook& outlook_;
    const Snapshot& snapshot_;
    const PlanQuestion& question_;
    PlanSite& site_;
    ChainRates rates_;
    std::vector<std::pair<Day, std::size_t>> plans_;  ///< by probe
};

}  // namespace

Result<void> addOptions(const Outlook& outlook, const PlanQuestion& question, PlanSite& site) {
    return Options(outlook, question, site).add();
}

}  // namespace tenthday
