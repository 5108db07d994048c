#include "outlook/year_review.h"

#include <algorithm>
#include <set>

#include "outlook/plan_of.h"
#include "outlook/sky.h"
#include "records/counted.h"
#include "records/yard_state.h"
#include "timeline/late.h"

namespace tenthday {
namespace {

/// What is recorded of one batch, by stage; nothing where nobody wrote anything.
using Recorded = std::array<std::optional<std::int32_t>, kTokenCount<ReviewStage>>;

void add(std::optional<std::int32_t>& sum, std::int32_t count) { sum = sum.value_or(0) + count; }

/// Cells of the whole batch at a stage.
std::optional<std::int32_t> countOf(const Snapshot& snapshot, Id<Batch> batch, OutcomeKind kind) {
    const auto all = countedOf(snapshot.all<Outcome>().of(batch.uuid),
                               snapshot.all<BatchBar>().of(batch.uuid), kind);
    return all ? std::optional(all->cells) : std::nullopt;
}

bool speaksOfLaying(OutcomeKind kind) {
    return kind == OutcomeKind::FirstEggs || kind == OutcomeKind::Larvae ||
           kind == OutcomeKind::SealedBrood || kind == OutcomeKind::JudgedGood ||
           kind == OutcomeKind::Catch;
}
bool speaksOfFailure(OutcomeKind kind) {
    return kind == OutcomeKind::NoQueen || kind == OutcomeKind::DroneLayer;
}

Recorded recordedOf(const Snapshot& snapshot, Id<Batch> batch) {
    Recorded seen;
    const auto stage = [&](ReviewStage which) -> auto& {
        return seen[static_cast<std::size_t>(which)];
    };
    stage(ReviewStage::Grafted) = countOf(snapshot, batch, OutcomeKind::Graft);
    stage(ReviewStage::Started) = countOf(snapshot, batch, OutcomeKind::TakeCount);
    stage(ReviewStage::Sealed) = countOf(snapshot, batch, OutcomeKind::Sealed);
    stage(ReviewStage::Ripe) = countOf(snapshot, batch, OutcomeKind::Ripe);
    std::set<Id<NucSide>> laying;
    bool looked = false;
    for (const auto& row : snapshot.all<Outcome>().of(batch.uuid)) {
        if (row->side && speaksOfLaying(row->kind)) laying.insert(*row->side);
        looked = looked || (row->side && (speaksOfLaying(row->kind) || speaksOfFailure(row->kind)));
        if (row->kind == OutcomeKind::Catch)
            add(stage(ReviewStage::Caught), row->count ? row->count->value : 1);
    }
    if (looked) stage(ReviewStage::Laying) = static_cast<std::int32_t>(laying.size());
    return seen;
}

struct StagePlan {
    Event event;                  // by which it should be recorded
    double ChainCounts::*counts;  // what was expected
};
constexpr std::array<StagePlan, kTokenCount<ReviewStage>> kPlans{
    {{Event::Graft, &ChainCounts::grafted},
     {Event::TakeCount, &ChainCounts::accepted},
     {Event::Sealed, &ChainCounts::sealed},
     {Event::Ripe, &ChainCounts::ripe},
     {Event::FirstLook, &ChainCounts::laying},
     {Event::Catch, &ChainCounts::good}}};

bool isPast(const BatchTimeline& timeline, Event event, Day until) {
    const auto* dates = timeline.find(event);
    return dates != nullptr && dayOf(dates->likely) < until;
}

void addBatch(const Outlook& outlook, const BatchOutlook& batch, YearReview& review) {
    const auto plan = planOf(outlook, batch.batch->id);
    if (!plan) return;
    const auto seen = recordedOf(outlook.snapshot, batch.batch->id);
    for (std::size_t i = 0; i < kPlans.size(); ++i) {
        auto& stage = review.stages[i];
        if (seen[i]) {
            ++stage.batches;
            stage.planned += plan->counts.*kPlans[i].counts;
            stage.happened += *seen[i];
        } else if (isPast(batch.timeline, kPlans[i].event, review.until)) {
            ++stage.missing;
        }
    }
    const auto grafted = seen[static_cast<std::size_t>(ReviewStage::Grafted)].value_or(
        static_cast<std::int32_t>(batch.timeline.counts.grafted + 0.5));
    if (const auto started = seen[static_cast<std::size_t>(ReviewStage::Started)]) {
        review.takePlanned += plan->counts.accepted;
        review.takeSeen += *started;
        review.grafts += grafted;
        review.graftsPlanned += plan->counts.grafted;
    }
    review.hungryBatches += hungryBars(outlook.snapshot, *batch.batch).empty() ? 0 : 1;
    const auto late = lateByWeather(batch.timeline, *outlook.mating, outlook.snapshot.facts());
    review.lateBatches += late > 0 ? 1 : 0;
    review.lateDays += late;
    for (const auto& row : outlook.snapshot.all<Outcome>().of(batch.batch->id.uuid)) {
        review.noQueen += row->side && row->kind == OutcomeKind::NoQueen ? 1 : 0;
        review.droneLayer += row->side && row->kind == OutcomeKind::DroneLayer ? 1 : 0;
    }
}

void addWeather(const Outlook& outlook, YearReview& review) {
    const auto limits = flyingLimits(outlook.snapshot.facts());
    for (const auto& row : outlook.snapshot.all<WeatherDay>()) {
        if (row->date < review.season.first || row->date > review.until) continue;
        if (const auto flew = isFlyingDay(weatherOf(*row), limits))
            ++(*flew ? review.flyingDays : review.groundedDays);
    }
}

}  // namespace

YearReview yearReview(const Outlook& outlook) {
    YearReview review;
    review.season = outlook.season;
    review.until = std::min(outlook.season.last, outlook.snapshot.today());
    for (const auto& batch : outlook.batches) {
        if (batch->batch->day < review.season.first || batch->batch->day > review.until) continue;
        ++review.batches;
        addBatch(outlook, *batch, review);
    }
    if (review.graftsPlanned > 0) review.takePlanned /= review.graftsPlanned;
    if (review.grafts > 0) review.takeSeen /= review.grafts;
    addWeather(outlook, review);
    for (const auto& cells : outlook.nucs.cellsDays)
        if (cells.day >= review.season.first && cells.day < review.until)
            review.withoutNuc += std::max(cells.toNucs - cells.placed, 0);
    for (const auto& delivery : outlook.snapshot.all<Delivery>())
        if (outlook.season.contains(delivery->day)) {
            review.delivered += delivery->count;
            review.replaced += delivery->failed;
        }
    return review;
}

}  // namespace tenthday
