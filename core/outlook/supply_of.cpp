#include "outlook/supply_of.h"

#include <algorithm>

namespace tenthday {
namespace {

Timelines timelinesOf(const Outlook& outlook) {
    Timelines timelines;
    timelines.reserve(outlook.batches.size());
    for (const auto& batch : outlook.batches)
        timelines.emplace_back(batch->batch->id, &batch->timeline);
    return timelines;
}

bool knowsWeather(const MatingTable& mating) {
    return (mating.seasons() && mating.seasons()->size() > 0) || mating.chain();
}

}  // namespace

SeasonSupply supplyOf(const Outlook& outlook) {
    return {outlook.snapshot, timelinesOf(outlook), outlook.nucs, *outlook.mating};
}

OwnRates ownRatesOf(const Outlook& outlook) {
    return ownRates(outlook.snapshot, timelinesOf(outlook), outlook.nucs, *outlook.mating);
}

void addOutcomes(const Outlook& outlook, EarlierOutcomes& earlier) {
    auto& all = earlier.batches;
    for (auto& batch :
         outcomesOfSeason(outlook.snapshot, timelinesOf(outlook), outlook.nucs, *outlook.mating)) {
        const auto isIt = [&](const auto& other) { return other.batch == batch.batch; };
        if (std::none_of(all.begin(), all.end(), isIt)) all.push_back(std::move(batch));
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
}

Result<WhatIfAnswer> whatIf(const Outlook& outlook, const WhatIf& what) {
    const auto supposed = snapshotIf(outlook.snapshot, timelinesOf(outlook), outlook.nucs, what);
    if (!supposed) return supposed.error();
    OutlookMemo memo;
    const auto then = outlookOf(supposed.value(), memo);
    auto before = supplyOf(outlook);
    auto after = supplyOf(*then);
    auto answer = compared(before, after);
    answer.coldUnknown = what.cold && !knowsWeather(*outlook.mating);
    return answer;
}

}  // namespace tenthday
