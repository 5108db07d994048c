#include "records/yard_state.h"

#include <algorithm>
#include <string>

#include "records/relations.h"

namespace tenthday {
namespace {

/// Days before a graft on which a feed counts for it.
DayWindow feedDays(const Snapshot& snapshot, Day graft) {
    const auto serves = static_cast<std::int32_t>(snapshot.facts()[Fact::FeedServesD]);
    return {graft - Days{serves}, graft + Days{1}};
}

std::optional<Day> feedIn(const Snapshot& snapshot, Id<Builder> builder, const DayWindow& days) {
    std::optional<Day> fed;
    for (const auto& note : snapshot.all<BuilderNote>().of(builder.uuid))
        if (note->kind == BuilderNoteKind::Feed && days.contains(note->day))
            fed = std::max(fed.value_or(note->day), note->day);
    return fed;
}

}  // namespace

Ptr<YardNote> yardNoteOn(const Snapshot& snapshot, Id<Yard> yard, YardNoteKind kind, Day day) {
    Ptr<YardNote> found;
    for (const auto& note : snapshot.all<YardNote>().of(yard.uuid))
        if (note->kind == kind && note->from <= day && day <= note->until &&
            (!found || note->from >= found->from))
            found = note;
    return found;
}

Ptr<YardNote> dearthOn(const Snapshot& snapshot, Id<Yard> yard, Day day) {
    auto dearth = yardNoteOn(snapshot, yard, YardNoteKind::Dearth, day);
    return dearth && !yardNoteOn(snapshot, yard, YardNoteKind::Flow, day) ? dearth : nullptr;
}

bool isFedOn(const Snapshot& snapshot, Id<Builder> builder, Day day) {
    const auto serves = static_cast<std::int32_t>(snapshot.facts()[Fact::FeedServesD]);
    return feedIn(snapshot, builder, {day - Days{serves}, day}).has_value();
}

std::optional<Day> feedTicked(const Snapshot& snapshot, Id<Batch> batch, Id<Builder> builder) {
    std::string subject, place;  // written out only once there is a tick to compare with
    for (const auto& tick : snapshot.all<TaskDone>()) {
        if (tick->rule != TaskRule::Feed) continue;
        if (subject.empty()) subject = toText(batch.uuid), place = toText(builder.uuid);
        if (tick->subject == subject && tick->place == place) return tick->day;
    }
    return std::nullopt;
}

std::vector<HungryBuilder> inDearth(const Snapshot& snapshot, const Batch& batch) {
    std::vector<HungryBuilder> all;
    if (snapshot.all<YardNote>().empty() || !hasGraft(batch.start)) return all;
    const Day graft = graftedOrPlanned(snapshot, batch);
    for (const auto& load : snapshot.all<BatchLoad>().of(batch.id.uuid)) {
        if (load->step != 1) continue;
        const auto known = std::find_if(all.begin(), all.end(), [&](const HungryBuilder& other) {
            return other.builder->id == load->builder;
        });
        if (known != all.end()) {
            known->bars.push_back(load->bar);
            continue;
        }
        const auto builder = snapshot.find(load->builder);
        const auto dearth = builder ? dearthOn(snapshot, builder->yard, graft) : nullptr;
        if (!dearth) continue;
        auto fed = feedIn(snapshot, builder->id, feedDays(snapshot, graft));
        if (!fed) fed = feedTicked(snapshot, batch.id, builder->id);
        all.push_back({builder, dearth, {load->bar}, fed});
    }
    return all;
}

std::vector<std::int32_t> hungryBars(const Snapshot& snapshot, const Batch& batch) {
    std::vector<std::int32_t> bars;
    for (const auto& hungry : inDearth(snapshot, batch))
        if (!hungry.fed) bars.insert(bars.end(), hungry.bars.begin(), hungry.bars.end());
    std::sort(bars.begin(), bars.end());
    return bars;
}

}  // namespace tenthday
