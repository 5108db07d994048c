#include "occupancy/yard_days.h"

#include <algorithm>
#include <map>
#include <unordered_map>

#include "base/natural_order.h"
#include "base/side_by_side.h"
#include "occupancy/caged.h"

namespace tenthday {
namespace {

using Kind = SideSegment::Kind;
constexpr std::size_t kStates = kTokenCount<NucState>;

/// A number per day, built from spans: first differences, summed once at the end.
class DaySums {
public:
    explicit DaySums(DayWindow season)
        : season_(season), change_(static_cast<std::size_t>(season.size()) + 1) {}

    void add(DayWindow days, float value) {
        const Day first = std::max(days.first, season_.first);
        const Day last = std::min(days.last, season_.last);
        if (last < first || value == 0) return;
        change_[index(first)] += value;
        change_[index(last) + 1] -= value;
    }
    void addDay(Day day, float value) { add({day, day}, value); }
    [[nodiscard]] std::vector<float> sums() const {
        std::vector<float> sums(change_.size() - 1);
        float sum = 0;
        for (std::size_t i = 0; i < sums.size(); ++i) sums[i] = sum += change_[i];
        return sums;
    }

private:
    [[nodiscard]] std::size_t index(Day day) const {
        return static_cast<std::size_t>((day - season_.first).count());
    }
    DayWindow season_;
    std::vector<float> change_;
};

DayWindow overlap(DayWindow a, DayWindow b) {
    return {std::max(a.first, b.first), std::min(a.last, b.last)};
}

/// Everything of one yard while it is summed.
class YardSums {
public:
    explicit YardSums(DayWindow season, Day today)
        : season_(season),
          today_(today),
          sides_(season),
          ready_(season),
          likely_(season),
          canStock_(season),
          needsBrood_(season),
          states_(kStates, DaySums(season)),
          daily_(static_cast<std::size_t>(season.size())) {}

    void addSide(const SideOutlook& side, DayWindow stay) {
        const DayWindow here = overlap(side.stands, stay);
        if (here.isEmpty()) return;
        sides_.add(here, 1);
        for (std::size_t i = 0; i < side.segments.size(); ++i) {
            const auto& segment = side.segments[i];
            const DayWindow days = overlap(segment.days, here);
            const bool empty = days.isEmpty() && !segment.days.isEmpty();
            if (empty || days.first > season_.last || days.last + Days{1} < season_.first) continue;
            if (segment.kind == Kind::Held)
                addHeld(side, segment, days);
            else
                addStill(side, i, days, here);
        }
    }

    YardOutlook finish(const Ptr<Yard>& yard) {
        for (const auto& [held, cells] : held_) addShares(held, static_cast<float>(cells));
        YardOutlook outlook{yard, {}, {}, 0};
        const auto sides = sides_.sums();
        const auto ready = ready_.sums();
        const auto likely = likely_.sums();
        const auto canStock = canStock_.sums();
        const auto needsBrood = needsBrood_.sums();
        std::vector<std::vector<float>> still;
        for (const auto& state : states_) still.push_back(state.sums());
        outlook.days.resize(sides.size());
        for (std::size_t i = 0; i < sides.size(); ++i) {
            auto& day = outlook.days[i];
            day.sides = static_cast<std::int16_t>(whole(sides[i]));
            day.numbers = {whole(ready[i]), std::max(0.0, static_cast<double>(likely[i])),
                           whole(canStock[i]), whole(needsBrood[i])};
            if (day.numbers.likely < 0.005) day.numbers.likely = 0;
            std::array<float, kStates> expected{};
            for (std::size_t s = 0; s < kStates; ++s) expected[s] = still[s][i] + daily_[i][s];
            roundInto(day, expected);
            outlook.mostSides = std::max<std::int32_t>(outlook.mostSides, day.sides);
        }
        outlook.blocks = blocks();
        return outlook;
    }

private:
    /// Of what is never below zero but by a float's error; a library's rounding takes a call.
    static std::int32_t whole(float value) { return static_cast<std::int32_t>(value + 0.5F); }

    /// Largest remainder: whole numbers that add up to the sides.
    static void roundInto(YardDay& day, const std::array<float, kStates>& expected) {
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

    void addState(NucState state, DayWindow days, float value) {
        states_[static_cast<std::size_t>(state)].add(days, value);
    }

    void addStill(const SideOutlook& side, std::size_t index, DayWindow days, DayWindow here) {
        const auto& segment = side.segments[index];
        if (segment.kind == Kind::Spent) return addState(NucState::Spent, days, 1);
        // At the start of work a cell only planned for the next day's first is not there yet.
        DayWindow open = days;
        if (index + 1 < side.segments.size() && days.last == segment.days.last &&
            here.contains(days.last + Days{1})) {
            const auto& next = side.segments[index + 1];
            if (next.kind == Kind::Held && !side.rounds[static_cast<std::size_t>(next.round)].done)
                open.last += Days{1};
        }
        if (segment.kind == Kind::NotStocked) {
            addState(NucState::NotStocked, days, 1);
            // It may have come from another yard, where it could be stocked the day before.
            const Day before = here.first - Days{1};
            const Day stoodSince =
                side.stands.contains(before) && side.yardOn(before) ? before : here.first;
            canStock_.add(
                {std::max({open.first, today_ + Days{1}, stoodSince + Days{1}}), open.last}, 1);
            return;
        }
        if (segment.kind == Kind::Wintered) return addState(NucState::JudgedGood, days, 1);
        auto state = NucState::Ready;
        if (segment.wintered >= 0)
            state = side.wintered[static_cast<std::size_t>(segment.wintered)].lost
                        ? NucState::NoQueen
                        : NucState::Caught;
        else if (segment.kind == Kind::Freed)
            state = side.rounds[static_cast<std::size_t>(segment.round)].seen == NucState::NoQueen
                        ? NucState::NoQueen
                        : NucState::Caught;
        addState(state, days, 1);
        const DayWindow free{std::max(open.first, segment.readyFrom),
                             std::min(open.last, segment.needsBroodFrom - Days{1})};
        (segment.certain ? ready_ : likely_).add(free, 1);
        needsBrood_.add({std::max(open.first, segment.needsBroodFrom), open.last}, 1);
    }

    /// Most nucs of a batch go alike: they are counted first and summed once.
    struct Held {
        const BatchTimeline* timeline;
        SideRound round;
        DayWindow days;

        friend bool operator==(const Held& a, const Held& b) {
            return a.timeline == b.timeline && a.days == b.days && a.round.seen == b.round.seen &&
                   a.round.seenDay == b.round.seenDay && a.round.lookDay == b.round.lookDay &&
                   a.round.transferDay == b.round.transferDay;
        }
    };
    struct HeldHash {
        std::size_t operator()(const Held& held) const {
            return std::hash<const void*>{}(held.timeline) ^
                   static_cast<std::size_t>(held.days.last.time_since_epoch().count()) * 31 ^
                   static_cast<std::size_t>(held.round.lookDay.time_since_epoch().count()) * 1009;
        }
    };

    void addHeld(const SideOutlook& side, const SideSegment& segment, DayWindow days) {
        const auto& round = side.rounds[static_cast<std::size_t>(segment.round)];
        ++held_[{round.timeline, round, days}];
    }

    void addShares(const Held& held, float count) {
        const Day last = std::min(held.days.last, season_.last);
        const auto behind = behindBatch(*held.timeline, held.round.transferDay);
        for (Day day = std::max(held.days.first, season_.first); day <= last; day += Days{1}) {
            const auto shares = sharesOf(held.round, day, behind);
            auto& sums = daily_[static_cast<std::size_t>((day - season_.first).count())];
            for (std::size_t s = 0; s < kStates; ++s) sums[s] += count * shares[s];
        }
        if (held.round.isOpen())
            likely_.add({std::max(held.days.first, held.round.lookDay + Days{1}), held.days.last},
                        count * static_cast<float>(1 - held.round.layingShare()));
    }

    /// A batch's stay in this yard, from each of its transfer days.
    [[nodiscard]] std::vector<BatchBlock> blocks() const {
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

    DayWindow season_;
    Day today_;
    DaySums sides_, ready_, likely_, canStock_, needsBrood_;
    std::vector<DaySums> states_;
    std::vector<std::array<float, kStates>> daily_;  ///< held nucs, per day of the season
    std::unordered_map<Held, std::int32_t, HeldHash> held_;
};

}  // namespace

std::vector<YardOutlook> yardOutlooks(const Snapshot& snapshot, const Timelines& /*timelines*/,
                                      const std::vector<SideOutlook>& sides) {
    const auto season = snapshot.season();
    std::vector<Ptr<Yard>> yards(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
    std::stable_sort(yards.begin(), yards.end(), [](const auto& a, const auto& b) {
        return a->driveOrder != b->driveOrder ? a->driveOrder < b->driveOrder
                                              : naturalLess(a->label, b->label);
    });
    std::unordered_map<Id<Yard>, std::size_t> index;
    for (std::size_t i = 0; i < yards.size(); ++i) index[yards[i]->id] = i;
    struct Stay {
        std::size_t side;
        DayWindow days;
    };
    std::vector<std::vector<Stay>> stays(yards.size());
    std::optional<Id<Yard>> known;
    auto at = index.end();
    for (std::size_t n = 0; n < sides.size(); ++n)
        for (std::size_t i = 0; i < sides[n].stays.size(); ++i) {
            const auto& [from, yard] = sides[n].stays[i];
            const Day last =
                i + 1 < sides[n].stays.size() ? sides[n].stays[i + 1].from - Days{1} : kLastDay;
            if (!yard || last < season.first || from > season.last) continue;
            if (yard != known)
                known = yard, at = index.find(*yard);  // boxes of a yard come together
            if (at != index.end()) stays[at->second].push_back({n, {from, last}});
        }
    std::vector<std::optional<YardOutlook>> made(yards.size());
    sideBySide(yards.size(), [&](std::size_t i) {
        if (stays[i].empty()) return;
        YardSums sums(season, snapshot.today());
        for (const auto& [side, days] : stays[i]) sums.addSide(sides[side], days);
        made[i] = sums.finish(yards[i]);
    });
    std::vector<YardOutlook> outlooks;
    for (auto& yard : made)
        if (yard) outlooks.push_back(std::move(*yard));
    return outlooks;
}

}  // namespace tenthday
