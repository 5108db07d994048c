#include "chart/chart_selection.h"

#include <algorithm>
#include <tuple>

namespace tenthday {
namespace {

struct LoadPlace {
    TargetKey key;
    Moment from;
};

/// In order of time, then of builder.
std::vector<LoadPlace> loadsInTime(const Outlook& outlook) {
    std::vector<LoadPlace> loads;
    for (const auto& batch : outlook.batches)
        for (const auto& span : batch->timeline.loads)
            loads.push_back({{.hit = Hit::Load,
                              .batch = batch->batch->id,
                              .builder = span.builder.value_or(Id<Builder>{}),
                              .day = dayOf(span.span.from),
                              .index = span.step},
                             span.span.from});
    std::stable_sort(loads.begin(), loads.end(), [](const auto& a, const auto& b) {
        return std::tie(a.from, a.key.builder) < std::tie(b.from, b.key.builder);
    });
    return loads;
}

/// The element `by` places on from one, or the first or last where it is not among them.
template <class T, class Is>
const T* stepped(const std::vector<T>& all, int by, Is&& is) {
    if (all.empty()) return nullptr;
    const auto at = std::find_if(all.begin(), all.end(), is);
    if (at == all.end()) return by > 0 ? &all.front() : &all.back();
    const auto next = (at - all.begin()) + by;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(all.size())) return nullptr;
    return &all[static_cast<std::size_t>(next)];
}

}  // namespace

std::optional<TargetKey> nextLoad(const Outlook& outlook, const TargetKey& from, int by) {
    const auto loads = loadsInTime(outlook);
    const auto* next =
        stepped(loads, by, [&](const LoadPlace& place) { return place.key == from; });
    return next != nullptr ? std::optional(next->key) : std::nullopt;
}

std::optional<TargetKey> nextYard(const Outlook& outlook, const TargetKey& from, int by) {
    const auto* next = stepped(outlook.nucs.yards, by,
                               [&](const YardOutlook& yard) { return yard.yard->id == from.yard; });
    if (next == nullptr) return std::nullopt;
    return TargetKey{.hit = Hit::YardRow, .yard = next->yard->id};
}

std::optional<int> nextClash(const Outlook& outlook, Day from, int index, int by) {
    const auto& all = outlook.findings;
    std::vector<int> order;
    for (int i = 0; i < static_cast<int>(all.size()); ++i)
        if (all[static_cast<std::size_t>(i)].severity != Severity::Note) order.push_back(i);
    const auto dayAt = [&](int i) { return all[static_cast<std::size_t>(i)].day; };
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return dayAt(a) < dayAt(b); });
    if (const auto at = std::find(order.begin(), order.end(), index);
        index >= 0 && at != order.end() && dayAt(index) == from) {
        const auto next = (at - order.begin()) + by;
        if (next < 0 || next >= static_cast<std::ptrdiff_t>(order.size())) return std::nullopt;
        return order[static_cast<std::size_t>(next)];
    }
    if (by > 0) {
        const auto at =
            std::find_if(order.begin(), order.end(), [&](int i) { return dayAt(i) > from; });
        return at != order.end() ? std::optional(*at) : std::nullopt;
    }
    const auto at =
        std::find_if(order.rbegin(), order.rend(), [&](int i) { return dayAt(i) < from; });
    return at != order.rend() ? std::optional(*at) : std::nullopt;
}

std::optional<Id<Batch>> batchOf(const Finding& finding) {
    const auto* batch = std::get_if<Id<Batch>>(&finding.subject);
    return batch != nullptr ? std::optional(*batch) : std::nullopt;
}

std::optional<Day> nextMust(const Outlook& outlook, Day from, int by) {
    std::optional<Day> best;
    for (const auto& task : tasksOf(outlook)) {
        if (!task.must || task.done) continue;
        if (by > 0 ? task.day <= from : task.day >= from) continue;
        if (!best || (by > 0 ? task.day < *best : task.day > *best)) best = task.day;
    }
    return best;
}

std::vector<Id<Builder>> buildersFor(const Outlook& outlook, const LoadSpan& load) {
    std::vector<Id<Builder>> able;
    for (const auto& row : outlook.builders) {
        const auto& builder = *row.builder;
        const Day first = dayOf(load.span.from);
        const Day last = dayOf(load.span.until);
        const bool stands = builder.from <= first && (!builder.until || *builder.until >= last);
        if (builder.kind == load.where && stands) able.push_back(builder.id);
    }
    return able;
}

const LoadSpan* loadAt(const Outlook& outlook, const TargetKey& load) {
    const auto* batch = outlook.find(load.batch);
    if (batch == nullptr) return nullptr;
    for (const auto& span : batch->timeline.loads)
        if (span.step == load.index && span.builder.value_or(Id<Builder>{}) == load.builder)
            return &span;
    return nullptr;
}

}  // namespace tenthday
