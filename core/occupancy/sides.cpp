#include "occupancy/sides.h"

#include <algorithm>
#include <unordered_map>

#include "base/natural_order.h"

namespace tenthday {
namespace {

Days days(const Facts& facts, Fact fact) { return Days{static_cast<int>(facts[fact])}; }
/// Days in which a nuc must be queenless: hours known by the day only mean from the next day.
Days queenlessDays(const Facts& facts) {
    return Days{(static_cast<int>(facts[Fact::NucQueenlessH]) + 23) / 24};
}

std::optional<NucState> stateSeen(OutcomeKind kind) {
    switch (kind) {
        case OutcomeKind::Emergence:
            return NucState::Virgin;
        case OutcomeKind::FirstEggs:
            return NucState::Laying;
        case OutcomeKind::SealedBrood:
            return NucState::Laying;
        case OutcomeKind::JudgedGood:
            return NucState::JudgedGood;
        case OutcomeKind::NoQueen:
            return NucState::NoQueen;
        case OutcomeKind::DroneLayer:
            return NucState::DroneLayer;
        case OutcomeKind::Catch:
            return NucState::Caught;
        case OutcomeKind::Spent:
            return NucState::Spent;
        default:
            return std::nullopt;
    }
}

/// An outcome ends or explains the newest round that began before or on its day.
void see(SideOutlook& side, const Outcome& outcome) {
    const auto state = stateSeen(outcome.kind);
    if (!state) return;
    SideRound* round = nullptr;
    for (auto& candidate : side.rounds)
        if (candidate.batch == outcome.batch && candidate.transferDay <= outcome.day)
            round = &candidate;
    if (round == nullptr || (round->seenDay && *round->seenDay > outcome.day)) return;
    round->seen = state;
    round->seenDay = outcome.day;
    const bool ends =
        *state == NucState::NoQueen || *state == NucState::Caught || *state == NucState::Spent;
    if (ends) round->catchDay = outcome.day;
    if (ends || *state == NucState::Laying) round->lookDay = outcome.day;
    if (*state == NucState::DroneLayer) round->catchDay = kLastDay;
}

std::vector<SideOutlook> bareSides(const Snapshot& snapshot) {
    std::unordered_map<Id<Box>, std::vector<Ptr<BoxLayout>>> layouts;
    for (const auto& layout : snapshot.all<BoxLayout>()) layouts[layout->box].push_back(layout);
    std::unordered_map<Id<BoxLayout>, std::vector<Ptr<NucSide>>> sidesOf;
    for (const auto& side : snapshot.all<NucSide>()) sidesOf[side->layout].push_back(side);
    std::vector<SideOutlook> sides;
    for (const auto& box : snapshot.all<Box>()) {
        auto& own = layouts[box->id];
        std::sort(own.begin(), own.end(),
                  [](const auto& a, const auto& b) { return a->from < b->from; });
        std::vector<std::pair<Day, std::optional<Id<Yard>>>> stays;
        for (const auto& stay : snapshot.all<BoxStay>().of(box->id.uuid))
            stays.emplace_back(stay->from, stay->yard);
        std::sort(stays.begin(), stays.end());
        for (std::size_t i = 0; i < own.size(); ++i) {
            const Day last = i + 1 < own.size() ? own[i + 1]->from - Days{1} : kLastDay;
            for (const auto& side : sidesOf[own[i]->id]) {
                const auto stocked = snapshot.all<Stocking>().of(side->id.uuid);
                sides.push_back({side,
                                 box,
                                 {own[i]->from, last},
                                 stays,
                                 {stocked.begin(), stocked.end()},
                                 {},
                                 {}});
            }
        }
    }
    return sides;
}

/// Makes the stretches of one side, event by event.
class Divider {
public:
    Divider(SideOutlook& side, const Facts& facts) : side_(side), facts_(facts) {}

    void run() {
        side_.segments.clear();
        current_.days.first = side_.stands.first;
        auto stocking = side_.stockings.begin();
        for (std::size_t i = 0; i < side_.rounds.size(); ++i) {
            while (stocking != side_.stockings.end() &&
                   (*stocking)->day <= side_.rounds[i].transferDay)
                stock(**stocking++);
            hold(static_cast<std::int32_t>(i));
        }
        while (stocking != side_.stockings.end()) stock(**stocking++);
        close(side_.stands.last);
    }

private:
    using Kind = SideSegment::Kind;

    /// An empty stretch is kept when asked: freed and filled again on one day, it is what the side
    /// is at that day's start.
    void close(Day last, bool keepEmpty = false) {
        if (last < current_.days.first - Days{keepEmpty ? 1 : 0}) return;
        current_.days.last = last;
        side_.segments.push_back(current_);
    }
    void begin(Kind kind, Day first) {
        current_ = SideSegment{};
        current_.kind = kind;
        current_.days.first = first;
    }
    /// Bees come in during a day: the side is what it was until that evening.
    void stock(const Stocking& stocking) {
        const Day brood =
            stocking.day + (stocking.openBrood ? days(facts_, Fact::OpenBroodD) : Days{0});
        const Day needs = brood + days(facts_, Fact::NoBroodD);
        const bool wasEmpty = current_.kind == Kind::NotStocked || current_.kind == Kind::Spent;
        if (!wasEmpty && stocking.day < current_.days.first - Days{1})
            return;  // bees added to a held nuc
        const SideSegment before = current_;
        close(stocking.day);
        begin(wasEmpty ? Kind::Empty : before.kind,
              std::max(stocking.day, before.days.first - Days{1}) + Days{1});
        current_.round = before.round;
        current_.certain = before.certain;
        current_.readyFrom = wasEmpty ? stocking.day + queenlessDays(facts_) : before.readyFrom;
        current_.needsBroodFrom = wasEmpty ? needs : std::max(needs, before.needsBroodFrom);
    }
    void hold(std::int32_t index) {
        const auto& round = side_.rounds[static_cast<std::size_t>(index)];
        close(round.transferDay - Days{1}, current_.kind == Kind::Freed);
        if (!side_.segments.empty() && side_.segments.back().days.last >= round.transferDay)
            side_.segments.back().days.last = round.transferDay - Days{1};
        begin(Kind::Held, round.transferDay);
        current_.round = index;
        const Day last = std::min(round.catchDay, side_.stands.last);
        close(last);
        begin(round.seen == NucState::Spent ? Kind::Spent : Kind::Freed, last + Days{1});
        current_.round = index;
        current_.certain = round.seen == NucState::Caught || round.seen == NucState::NoQueen;
        current_.readyFrom = freedReady(round, last);
        current_.needsBroodFrom = freedNeedsBrood(round, last);
    }
    [[nodiscard]] Day freedReady(const SideRound& round, Day last) const {
        // Looked at and empty: queenless since the virgin was lost. Caught: since the catch.
        return round.seen == NucState::NoQueen ? last + Days{1}
                                               : last + std::max(queenlessDays(facts_), Days{1});
    }
    [[nodiscard]] Day freedNeedsBrood(const SideRound& round, Day last) const {
        const Day lastAlive = round.seen == NucState::NoQueen
                                  ? std::min(last, round.timeline->hold.lostDay)
                                  : last + days(facts_, Fact::OpenBroodD);
        return std::max(lastAlive + days(facts_, Fact::NoBroodD), last + Days{1});
    }

    SideOutlook& side_;
    const Facts& facts_;
    SideSegment current_;
};

}  // namespace

double SideRound::layingShare() const {
    return seen == NucState::Laying || seen == NucState::JudgedGood ? 1
                                                                    : timeline->hold.layingShare;
}

StateShares SideRound::sharesOn(Day day) const {
    StateShares shares = timeline->hold.on(day);
    if (!seen || !seenDay || day <= *seenDay) {
        // Nobody has looked though the day came: the failed ones still pass for due to fly.
        auto& none = shares[static_cast<std::size_t>(NucState::NoQueen)];
        if (day <= lookDay && none > 0) {
            shares[static_cast<std::size_t>(NucState::DueToFly)] += none;
            none = 0;
        }
        return shares;
    }
    if (*seen == NucState::Virgin) return shares;
    StateShares sure{};
    if (*seen == NucState::Laying) {
        // Seen laying: judged good as her brood gets sealed, by the plan's share of that.
        const float good = shares[static_cast<std::size_t>(NucState::JudgedGood)] /
                           static_cast<float>(timeline->hold.layingShare);
        sure[static_cast<std::size_t>(NucState::JudgedGood)] = good;
        sure[static_cast<std::size_t>(NucState::Laying)] = 1 - good;
    } else {
        sure[static_cast<std::size_t>(*seen)] = 1;
    }
    return sure;
}

SideRound plannedRound(Id<Batch> batch, const BatchTimeline& timeline, Day transfer, Day today) {
    return {batch,
            &timeline,
            transfer,
            false,
            std::max({timeline.hold.lookDay, transfer, today}),
            std::max({timeline.hold.catchDay, transfer, today}),
            {},
            {}};
}

std::vector<SideOutlook> storedSides(const Snapshot& snapshot, const Timelines& timelines) {
    auto sides = bareSides(snapshot);
    std::sort(sides.begin(), sides.end(), [](const auto& a, const auto& b) {
        if (a.box != b.box)
            return a.box->label != b.box->label ? naturalLess(a.box->label, b.box->label)
                                                : a.box->id < b.box->id;
        return a.stands.first != b.stands.first ? a.stands.first < b.stands.first
                                                : a.side->side < b.side->side;
    });
    std::unordered_map<Id<NucSide>, std::size_t> byId;
    for (std::size_t i = 0; i < sides.size(); ++i) byId[sides[i].side->id] = i;
    for (const auto& [batch, timeline] : timelines)
        for (const auto& placement : snapshot.all<Placement>().of(batch.uuid)) {
            const auto at = placement->side ? byId.find(*placement->side) : byId.end();
            if (at == byId.end()) continue;
            auto round = plannedRound(batch, *timeline, placement->day, snapshot.today());
            round.done = placement->done;
            sides[at->second].rounds.push_back(round);
        }
    for (auto& side : sides) {
        std::sort(side.stockings.begin(), side.stockings.end(),
                  [](const auto& a, const auto& b) { return a->day < b->day; });
        std::stable_sort(side.rounds.begin(), side.rounds.end(), [](const auto& a, const auto& b) {
            return a.transferDay < b.transferDay;
        });
    }
    for (const auto& [batch, timeline] : timelines)
        for (const auto& outcome : snapshot.all<Outcome>().of(batch.uuid))
            if (const auto at = outcome->side ? byId.find(*outcome->side) : byId.end();
                at != byId.end())
                see(sides[at->second], *outcome);
    return sides;
}

void divide(SideOutlook& side, const Facts& facts) { Divider(side, facts).run(); }

std::optional<FreeSide> freeOn(const SideOutlook& side, Day day, Day heldUntil) {
    for (const auto& round : side.rounds)
        if (round.transferDay >= day && round.transferDay <= heldUntil) return std::nullopt;
    const auto& segments = side.segments;
    // The last stretch that began before the day: a planned transfer that day comes after it.
    auto at = std::upper_bound(segments.begin(), segments.end(), day,
                               [](Day d, const SideSegment& s) { return d < s.days.first; });
    if (at == segments.begin()) return std::nullopt;
    --at;
    if (at->kind != SideSegment::Kind::Empty && at->kind != SideSegment::Kind::Freed)
        return std::nullopt;
    if (!at->days.contains(day) || day < at->readyFrom || day >= at->needsBroodFrom)
        return std::nullopt;
    return FreeSide{at->readyFrom, at->certain};
}

std::optional<Id<Yard>> SideOutlook::yardOn(Day day) const {
    std::optional<Id<Yard>> yard;
    for (const auto& [from, where] : stays)
        if (from <= day) yard = where;
    return yard;
}

}  // namespace tenthday
