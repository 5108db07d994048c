#include "outlook/outlook.h"

#include <algorithm>

#include "base/natural_order.h"
#include "base/side_by_side.h"
#include "occupancy/nuc_memo.h"
#include "outlook/plan_of.h"
#include "outlook/sky.h"
#include "records/same_tables.h"
#include "records/yard_state.h"

namespace tenthday {

namespace {

/// All tables a batch's timeline may lean on: while they are the same, no row has to be compared.
struct Leaning {
    Table<BatchBar> bars;
    Table<BatchLoad> loads;
    Table<BatchShare> shares;
    Table<Placement> placements;
    Table<Outcome> outcomes;
    Table<MatingStay> stays;
    Table<Step> steps;
    Table<Book> book;
    // What makes bars go hungry.
    Table<YardNote> yardNotes;
    Table<Builder> builders;
    Table<BuilderNote> builderNotes;
    Table<TaskDone> ticks;
    std::shared_ptr<const Facts> facts;
    std::shared_ptr<const MatingTable> mating;

    Leaning() = default;
    Leaning(const Snapshot& snapshot, const std::shared_ptr<const MatingTable>& table)
        : bars(snapshot.all<BatchBar>()),
          loads(snapshot.all<BatchLoad>()),
          shares(snapshot.all<BatchShare>()),
          placements(snapshot.all<Placement>()),
          outcomes(snapshot.all<Outcome>()),
          stays(snapshot.all<MatingStay>()),
          steps(snapshot.all<Step>()),
          book(snapshot.all<Book>()),
          yardNotes(snapshot.all<YardNote>()),
          builders(snapshot.all<Builder>()),
          builderNotes(snapshot.all<BuilderNote>()),
          ticks(snapshot.all<TaskDone>()),
          facts(snapshot.factsPtr()),
          mating(table) {}

    [[nodiscard]] bool isOf(const Snapshot& snapshot,
                            const std::shared_ptr<const MatingTable>& table) const {
        return mating == table && facts == snapshot.factsPtr() &&
               bars.isSame(snapshot.all<BatchBar>()) && loads.isSame(snapshot.all<BatchLoad>()) &&
               shares.isSame(snapshot.all<BatchShare>()) &&
               placements.isSame(snapshot.all<Placement>()) &&
               outcomes.isSame(snapshot.all<Outcome>()) &&
               stays.isSame(snapshot.all<MatingStay>()) && steps.isSame(snapshot.all<Step>()) &&
               book.isSame(snapshot.all<Book>()) && yardNotes.isSame(snapshot.all<YardNote>()) &&
               builders.isSame(snapshot.all<Builder>()) &&
               builderNotes.isSame(snapshot.all<BuilderNote>()) &&
               ticks.isSame(snapshot.all<TaskDone>());
    }
};

/// What the weather's share in mating hangs on.
struct MatingLeaning {
    Table<WeatherDay> weather;
    Table<ClimateMonth> climate;
    std::shared_ptr<const Facts> facts;
    DayWindow season{};

    MatingLeaning() = default;
    explicit MatingLeaning(const Snapshot& snapshot)
        : weather(snapshot.all<WeatherDay>()),
          climate(snapshot.all<ClimateMonth>()),
          facts(snapshot.factsPtr()),
          season(snapshot.season()) {}

    [[nodiscard]] bool isOf(const Snapshot& snapshot) const {
        return weather.isSame(snapshot.all<WeatherDay>()) &&
               climate.isSame(snapshot.all<ClimateMonth>()) && facts == snapshot.factsPtr() &&
               season == snapshot.season();
    }
};

using Batches = std::vector<std::shared_ptr<const BatchOutlook>>;
std::shared_ptr<const Batches> ownerOf(const Batches& batches) {
    return std::make_shared<const Batches>(batches);
}

}  // namespace

struct BatchLeaning {
    /// Held, so that an equal address means an equal row.
    std::vector<std::shared_ptr<const void>> rows;
    std::vector<std::int32_t> hungryBars;

    friend bool operator==(const BatchLeaning&, const BatchLeaning&) = default;
};

/// Of the last outlook, but for `nucs`, which may lean on an earlier one.
struct OutlookMemo::Kept {
    Leaning tables;              ///< of the batches
    std::uint64_t tablesNo = 0;  ///< counts on when they change
    MatingLeaning matingOf;
    std::shared_ptr<const MatingTable> mating;
    NucMemo nucs;
    Snapshot snapshot;
    std::shared_ptr<const void> batches;  ///< whose timelines the builders point into
    SharedList<BuilderOutlook> builders;
};

OutlookMemo::OutlookMemo() : kept_(std::make_unique<Kept>()) {}
OutlookMemo::~OutlookMemo() = default;

OutlookMemo::OutlookMemo(const Outlook& last) : OutlookMemo() {
    const auto& snapshot = last.snapshot;
    kept_->mating = last.mating;
    kept_->matingOf = MatingLeaning(snapshot);
    kept_->tables = Leaning(snapshot, last.mating);
    kept_->nucs = NucMemo(last.nucs);
    kept_->snapshot = snapshot;
    kept_->batches = ownerOf(last.batches);
    kept_->builders = last.builders;
    for (const auto& batch : last.batches)
        if (batch->leaning) entries_[batch->batch->id] = {batch, kept_->tablesNo, round_};
}

namespace {

template <class Row>
void hold(std::vector<std::shared_ptr<const void>>& held, std::span<const Ptr<Row>> rows) {
    held.insert(held.end(), rows.begin(), rows.end());
}

/// A batch's inputs, and what they look into.
struct Gathered {
    std::vector<Ptr<BatchBar>> bars;
    std::vector<Ptr<Step>> steps;
    std::vector<std::int32_t> hungryBars;
    std::shared_ptr<const MatingTable> station;  ///< of the days there, for a batch that goes
    BatchInputs inputs;
};

Gathered gather(const Snapshot& snapshot, const Ptr<Batch>& batch, const MatingTable& mating) {
    const auto owner = batch->id.uuid;
    const auto bars = snapshot.all<BatchBar>().of(owner);
    const auto steps = snapshot.all<Step>().of(batch->method.uuid);
    Gathered all{{bars.begin(), bars.end()},
                 {steps.begin(), steps.end()},
                 hungryBars(snapshot, *batch),
                 {},
                 {}};
    std::sort(all.bars.begin(), all.bars.end(),
              [](const auto& a, const auto& b) { return a->bar < b->bar; });
    std::sort(all.steps.begin(), all.steps.end(),
              [](const auto& a, const auto& b) { return a->step < b->step; });
    all.inputs.batch = batch;
    all.inputs.loads = snapshot.all<BatchLoad>().of(owner);
    all.inputs.shares = snapshot.all<BatchShare>().of(owner);
    all.inputs.placements = snapshot.all<Placement>().of(owner);
    all.inputs.outcomes = snapshot.all<Outcome>().of(owner);
    all.inputs.catchRule = batch->catchRule.value_or(snapshot.book().catchRule);
    all.inputs.facts = &snapshot.facts();
    all.inputs.stays = snapshot.all<MatingStay>().of(owner);
    all.inputs.mating = &mating;
    return all;
}

/// The inputs look into what the caller keeps.
void lookInto(Gathered& all) {
    all.inputs.bars = all.bars;
    all.inputs.steps = all.steps;
    all.inputs.hungryBars = all.hungryBars;
}

/// A batch whose days at a mating station are given mates on those days only.
void goToStation(Gathered& all) {
    if (all.inputs.batch->mating != Mating::Station || all.inputs.stays.empty()) return;
    std::vector<DayWindow> days;
    for (const auto& stay : all.inputs.stays) days.push_back({stay->from, stay->until});
    all.station =
        std::make_shared<const MatingTable>(all.inputs.mating->atStation(days, *all.inputs.facts));
    all.inputs.mating = all.station.get();
}

BatchLeaning leaningOn(const Snapshot& snapshot, const Gathered& all,
                       const std::shared_ptr<const MatingTable>& mating) {
    BatchLeaning leaning{{}, all.hungryBars};
    auto& held = leaning.rows;
    held.reserve(all.bars.size() + all.steps.size() + all.inputs.loads.size() +
                 all.inputs.placements.size() + all.inputs.outcomes.size() + 5);
    held.push_back(all.inputs.batch);
    hold<BatchBar>(held, all.bars);
    hold<Step>(held, all.steps);
    hold<BatchLoad>(held, all.inputs.loads);
    hold<BatchShare>(held, all.inputs.shares);
    hold<Placement>(held, all.inputs.placements);
    hold<Outcome>(held, all.inputs.outcomes);
    hold<MatingStay>(held, all.inputs.stays);
    held.push_back(snapshot.factsPtr());
    held.push_back(mating);
    // The book matters only through its catch rule, and only where the batch has none.
    if (!all.inputs.batch->catchRule && !snapshot.all<Book>().empty())
        held.push_back(*snapshot.all<Book>().begin());
    return leaning;
}

}  // namespace

const BatchOutlook* Outlook::find(Id<Batch> id) const {
    for (const auto& outlook : batches)
        if (outlook->batch->id == id) return outlook.get();
    return nullptr;
}

std::shared_ptr<const BatchOutlook> OutlookMemo::batch(const Snapshot& snapshot,
                                                       const Ptr<Batch>& batch) {
    const auto& mating = this->mating(snapshot);
    if (!kept_->tables.isOf(snapshot, mating)) {
        kept_->tables = Leaning(snapshot, mating);
        ++kept_->tablesNo;
    }
    auto& entry = entries_[batch->id];
    entry.round = round_;
    if (entry.result && entry.result->batch == batch && entry.tables == kept_->tablesNo)
        return entry.result;
    auto all = gather(snapshot, batch, *mating);
    lookInto(all);
    auto leaning = leaningOn(snapshot, all, mating);
    if (entry.result && *entry.result->leaning == leaning) {
        entry.tables = kept_->tablesNo;
        return entry.result;
    }
    auto result = std::make_shared<BatchOutlook>();
    result->batch = batch;
    goToStation(all);
    result->timeline = timelineOf(all.inputs);
    result->bars = std::move(all.bars);
    result->leaning = std::make_shared<const BatchLeaning>(std::move(leaning));
    entry.result = std::move(result);
    entry.tables = kept_->tablesNo;
    return entry.result;
}

const std::shared_ptr<const MatingTable>& OutlookMemo::mating(const Snapshot& snapshot) {
    if (!kept_->mating || !kept_->matingOf.isOf(snapshot)) {
        kept_->mating = matingTable(snapshot);
        kept_->matingOf = MatingLeaning(snapshot);
    }
    return kept_->mating;
}

void OutlookMemo::sweep() {
    std::erase_if(entries_, [&](const auto& item) { return item.second.round != round_; });
    ++round_;
}

namespace {

Timelines timelinesOf(const Outlook& outlook) {
    Timelines timelines;
    timelines.reserve(outlook.batches.size());
    for (const auto& batch : outlook.batches)
        timelines.emplace_back(batch->batch->id, &batch->timeline);
    return timelines;
}

}  // namespace

void OutlookMemo::deriveOccupancy(Outlook& outlook) {
    const auto timelines = timelinesOf(outlook);
    const auto owner = ownerOf(outlook.batches);
    const bool onlyBatches = sameTablesBut<Batch, BatchBar, BatchLoad, BatchShare, MakeUp>(
        kept_->snapshot, outlook.snapshot);
    sideBySide(2, [&](std::size_t part) {
        if (part == 0) {
            outlook.nucs = nucOutlook(outlook.snapshot, timelines, owner, kept_->nucs);
        } else {
            outlook.builders =
                builderOutlooks(outlook.snapshot, timelines,
                                onlyBatches ? kept_->builders : SharedList<BuilderOutlook>());
            outlook.limits = seasonLimits(outlook.snapshot, *outlook.mating);
        }
    });
    kept_->snapshot = outlook.snapshot;
    kept_->batches = owner;
    kept_->builders = outlook.builders;
}

OutlookPtr outlookOf(const Snapshot& snapshot, OutlookMemo& memo) {
    auto outlook = std::make_shared<Outlook>();
    outlook->snapshot = snapshot;
    outlook->mating = memo.mating(snapshot);
    outlook->season = snapshot.season();
    for (const auto& batch : snapshot.all<Batch>())
        outlook->batches.push_back(memo.batch(snapshot, batch));
    memo.sweep();
    std::sort(outlook->batches.begin(), outlook->batches.end(), [](const auto& a, const auto& b) {
        if (a->timeline.graft != b->timeline.graft) return a->timeline.graft < b->timeline.graft;
        return a->batch->label != b->batch->label ? naturalLess(a->batch->label, b->batch->label)
                                                  : a->batch->id < b->batch->id;
    });
    memo.deriveOccupancy(*outlook);
    const auto timelines = timelinesOf(*outlook);
    outlook->drones = droneNeeds(outlook->snapshot, outlook->nucs.yards, timelines);
    outlook->findings = findingsOf(outlook->snapshot, timelines, outlook->builders, outlook->nucs,
                                   outlook->limits, outlook->drones);
    return outlook;
}

std::vector<Task> tasksOf(const Outlook& outlook) {
    return tasksOf(outlook.snapshot, timelinesOf(outlook), outlook.builders, outlook.nucs,
                   outlook.drones, *outlook.mating);
}

std::optional<BatchTimeline> planOf(const Outlook& outlook, Id<Batch> id) {
    const auto batch = outlook.snapshot.find(id);
    if (!batch) return std::nullopt;
    auto all = gather(outlook.snapshot, batch, *outlook.mating);
    lookInto(all);
    goToStation(all);
    std::vector<Ptr<Placement>> planned;
    for (const auto& placement : all.inputs.placements)
        if (!placement->done) planned.push_back(placement);
    all.inputs.placements = planned;
    all.inputs.outcomes = {};
    return timelineOf(all.inputs);
}

std::optional<Day> plannedElse(const BatchTimeline& plan, const BatchTimeline& now, Event event) {
    const auto* before = plan.find(event);
    const auto* after = now.find(event);
    if (before == nullptr || after == nullptr) return std::nullopt;
    const Day day = dayOf(before->likely);
    return day == dayOf(after->likely) ? std::nullopt : std::optional(day);
}

std::vector<Reason> why(const Snapshot& snapshot, Id<Batch> id, Event event) {
    const auto batch = snapshot.find(id);
    if (!batch) return {};
    const auto mating = matingTable(snapshot);
    auto all = gather(snapshot, batch, *mating);
    lookInto(all);
    Trace trace;
    goToStation(all);
    (void)timelineOf(all.inputs, &trace);
    std::vector<Reason> reasons;
    std::optional<Event> wanted = event;
    while (wanted) {
        const auto found = std::find_if(trace.reasons.begin(), trace.reasons.end(),
                                        [&](const Reason& r) { return r.event == *wanted; });
        if (found == trace.reasons.end()) break;
        reasons.push_back(*found);
        wanted = found->from;
    }
    return reasons;
}

}  // namespace tenthday
