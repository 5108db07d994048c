#include "occupancy/yard_days.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "base/natural_order.h"
#include "base/side_by_side.h"
#include "occupancy/caged.h"

namespace tenthday {
namespace {

using Kind = SideSegment::Kind;
constexpr std::size_t kStates = kTokenCount<NucState>;

DayWindow overlap(DayWindow a, DayWindow b) {
    return {std::max(a.first, b.first), std::min(a.last, b.last)};
}

std::size_t indexIn(DayWindow season, Day day) {
    return static_cast<std::size_t>((day - season.first).count());
}

/// Largest remainder: whole numbers that add up to the sides.
void roundInto(YardDay& day, const std::array<float, kStates>& expected) {
    std::array<float, kStates> rest{};
    int left = day.sides;
    for (std::size_t s = 0; s < kStates; ++s) {
        day.stack[s] = static_cast<std::int16_t>(expected[s] + 1e-3F);
        rest[s] = expected[s] - static_cast<float>(day.stack[s]);
        left -= day.stack[s];
    }
    while (left > 0) {
        const auto most = std::max_element(rest.begin(), rest.end()) - rest.begin();
        ++day.stack[static_cast<std::size_t>(most)];
        rest[static_cast<std::size_t>(most)] -= 1;
        --left;
    }
}

/// Nucs of one place go alike. The timeline comes last: two of one batch meet only while sides are
/// being exchanged.
auto placeOf(const SideRound& round, DayWindow days) {
    return std::tuple(days.first, round.batch, days.last, round.lookDay, round.transferDay,
                      round.seen, round.seenDay, round.timeline);
}

}  // namespace

void DaySums::add(DayWindow days, std::int32_t value) {
    const Day first = std::max(days.first, season_.first);
    const Day last = std::min(days.last, season_.last);
    if (last < first) return;
    change_[indexIn(season_, first)] += value;
    change_[indexIn(season_, last) + 1] -= value;
}

std::vector<std::int32_t> DaySums::sums() const {
    std::vector<std::int32_t> sums(change_.size() - 1);
    std::int32_t sum = 0;
    for (std::size_t i = 0; i < sums.size(); ++i) sums[i] = sum += change_[i];
    return sums;
}

YardSums::YardSums(DayWindow season, Day today)
    : season_(season),
      today_(today),
      sides_(season),
      ready_(season),
      likely_(season),
      canStock_(season),
      needsBrood_(season),
      states_(kStates, DaySums(season)) {}

void YardSums::add(const SideOutlook& side, DayWindow stay, std::int32_t by) {
    stays_ += by;
    const DayWindow here = overlap(side.stands, stay);
    if (here.isEmpty()) return;
    sides_.add(here, by);
    for (std::size_t i = 0; i < side.segments.size(); ++i) {
        const auto& segment = side.segments[i];
        const DayWindow days = overlap(segment.days, here);
        const bool empty = days.isEmpty() && !segment.days.isEmpty();
        if (empty || days.first > season_.last || days.last + Days{1} < season_.first) continue;
        if (segment.kind == Kind::Held)
            addHeld(side.rounds[static_cast<std::size_t>(segment.round)], days, by);
        else
            addStill(side, i, days, here, by);
    }
}

void YardSums::addState(NucState state, DayWindow days, std::int32_t by) {
    states_[static_cast<std::size_t>(state)].add(days, by);
}

void YardSums::addStill(const SideOutlook& side, std::size_t index, DayWindow days, DayWindow here,
                        std::int32_t by) {
    const auto& segment = side.segments[index];
    if (segment.kind == Kind::Spent) return addState(NucState::Spent, days, by);
    // At the start of work a cell only planned for the next day's first is not there yet.
    DayWindow open = days;
    if (index + 1 < side.segments.size() && days.last == segment.days.last &&
        here.contains(days.last + Days{1})) {
        const auto& next = side.segments[index + 1];
        if (next.kind == Kind::Held && !side.rounds[static_cast<std::size_t>(next.round)].done)
            open.last += Days{1};
    }
    if (segment.kind == Kind::NotStocked) {
        addState(NucState::NotStocked, days, by);
        // It may have come from another yard, where it could be stocked the day before.
        const Day before = here.first - Days{1};
        const Day stoodSince =
            side.stands.contains(before) && side.yardOn(before) ? before : here.first;
        canStock_.add({std::max({open.first, today_ + Days{1}, stoodSince + Days{1}}), open.last},
                      by);
        return;
    }
    if (segment.kind == Kind::Wintered) return addState(NucState::JudgedGood, days, by);
    auto state = NucState::Ready;
    if (segment.wintered >= 0)
        state = side.wintered[static_cast<std::size_t>(segment.wintered)].lost ? NucState::NoQueen
                                                                               : NucState::Caught;
    else if (segment.kind == Kind::Freed)
        state = side.rounds[static_cast<std::size_t>(segment.round)].seen == NucState::NoQueen
                    ? NucState::NoQueen
                    : NucState::Caught;
    addState(state, days, by);
    const DayWindow free{std::max(open.first, segment.readyFrom),
                         std::min(open.last, segment.needsBroodFrom - Days{1})};
    (segment.certain ? ready_ : likely_).add(free, by);
    needsBrood_.add({std::max(open.first, segment.needsBroodFrom), open.last}, by);
}

void YardSums::addHeld(const SideRound& round, DayWindow days, std::int32_t by) {
    const auto place = placeOf(round, days);
    const auto at = std::partition_point(held_.begin(), held_.end(), [&](const auto& held) {
        return placeOf(held.first.round, held.first.days) < place;
    });
    if (at == held_.end() || placeOf(at->first.round, at->first.days) != place) {
        held_.insert(at, {{round, days}, by});
        return;
    }
    at->second += by;
    if (at->second == 0) held_.erase(at);
}

YardOutlook YardSums::finish(const Ptr<Yard>& yard) const {
    std::vector<std::array<float, kStates>> expected(static_cast<std::size_t>(season_.size()));
    std::vector<float> failed(expected.size() + 1);  // nucs held in vain: first differences
    for (const auto& [held, count] : held_) {
        const auto cells = static_cast<float>(count);
        const Day last = std::min(held.days.last, season_.last);
        const auto behind = behindBatch(*held.round.timeline, held.round.transferDay);
        for (Day day = std::max(held.days.first, season_.first); day <= last; day += Days{1}) {
            const auto shares = sharesOf(held.round, day, behind);
            auto& sums = expected[indexIn(season_, day)];
            for (std::size_t s = 0; s < kStates; ++s) sums[s] += cells * shares[s];
        }
        const Day known = std::max({held.days.first, held.round.lookDay + Days{1}, season_.first});
        if (!held.round.isOpen() || last < known) continue;
        const float none = cells * static_cast<float>(1 - held.round.layingShare());
        failed[indexIn(season_, known)] += none;
        failed[indexIn(season_, last) + 1] -= none;
    }
    for (std::size_t s = 0; s < kStates; ++s) {
        const auto still = states_[s].sums();
        for (std::size_t i = 0; i < still.size(); ++i)
            expected[i][s] += static_cast<float>(still[i]);
    }
    YardOutlook outlook{yard, {}, blocks(), 0};
    const auto sides = sides_.sums();
    const auto ready = ready_.sums();
    const auto likely = likely_.sums();
    const auto canStock = canStock_.sums();
    const auto needsBrood = needsBrood_.sums();
    outlook.days.resize(sides.size());
    float none = 0;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        auto& day = outlook.days[i];
        none += failed[i];
        day.sides = static_cast<std::int16_t>(sides[i]);
        day.numbers = {ready[i],
                       std::max(0.0, static_cast<double>(static_cast<float>(likely[i]) + none)),
                       canStock[i], needsBrood[i]};
        if (day.numbers.likely < 0.005) day.numbers.likely = 0;
        roundInto(day, expected[i]);
        outlook.mostSides = std::max<std::int32_t>(outlook.mostSides, day.sides);
    }
    return outlook;
}

/// A batch's stay in this yard, from each of its transfer days.
std::vector<BatchBlock> YardSums::blocks() const {
    std::map<std::pair<Day, Id<Batch>>, BatchBlock> byDay;
    for (const auto& [held, cells] : held_) {
        if (held.days.first != held.round.transferDay) continue;
        auto& block = byDay
                          .try_emplace({held.days.first, held.round.batch},
                                       BatchBlock{held.round.batch, held.days, 0})
                          .first->second;
        block.days.last = std::max(block.days.last, held.days.last);
        block.cells += cells;
    }
    std::vector<BatchBlock> blocks;
    for (const auto& [key, block] : byDay) blocks.push_back(block);
    return blocks;
}

std::vector<YardOutlook> yardOutlooks(const std::vector<Ptr<Yard>>& yards,
                                      const std::vector<YardSums>& sums) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < yards.size(); ++i)
        if (!sums[i].isEmpty()) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return yards[a]->driveOrder != yards[b]->driveOrder
                   ? yards[a]->driveOrder < yards[b]->driveOrder
                   : naturalLess(yards[a]->label, yards[b]->label);
    });
    std::vector<YardOutlook> outlooks(order.size());
    sideBySide(order.size(),
               [&](std::size_t i) { outlooks[i] = sums[order[i]].finish(yards[order[i]]); });
    return outlooks;
}

}  // namespace tenthday
