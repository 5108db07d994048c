#include <algorithm>
#include <span>

#include "occupancy/nuc_upkeep.h"
#include "occupancy/sides.h"

namespace tenthday {
namespace {

/// Stretches beside those of rounds: room for a first round too, so that a side seldom moves.
constexpr std::size_t kRoom = 4;

/// Makes the stretches of one side, event by event.
class Divider {
public:
    Divider(SideOutlook& side, const Snapshot& snapshot) : side_(side), facts_(snapshot.facts()) {
        readInputs(snapshot);
    }

    void run() {
        side_.segments.clear();
        current_.days.first = side_.stands.first;
        side_.segments.reserve(kRoom + 2 * side_.rounds.size());
        std::size_t wintered = 0;
        for (std::size_t i = 0; i < side_.rounds.size(); ++i) {
            const Day transfer = side_.rounds[i].transferDay;
            for (; wintered < side_.wintered.size() && side_.wintered[wintered].from < transfer;
                 ++wintered)
                winter(wintered);
            stockUntil(transfer);
            hold(static_cast<std::int32_t>(i));
        }
        for (; wintered < side_.wintered.size(); ++wintered) winter(wintered);
        stockUntil(kLastDay);
        close(side_.stands.last);
    }

private:
    using Kind = SideSegment::Kind;

    /// Bees, or open brood alone, that come into the side.
    struct Input {
        Day day;
        bool bees;
        bool openBrood;
    };
    void readInputs(const Snapshot& snapshot) {
        std::span<const Ptr<NucCare>> cares;
        if (!snapshot.all<NucCare>().empty())
            cares = snapshot.all<NucCare>().of(side_.side->id.uuid);
        if (side_.stockings.size() == 1 && cares.empty()) {  // most are: without an allocation
            const auto& stocking = side_.stockings.front();
            only_ = {stocking->day, true, stocking->openBrood};
            inputs_ = {&only_, 1};
            return;
        }
        for (const auto& stocking : side_.stockings)
            several_.push_back({stocking->day, true, stocking->openBrood});
        for (const auto& care : cares)
            if (bringsOpenBrood(*care)) several_.push_back({care->day, false, true});
        std::stable_sort(several_.begin(), several_.end(),
                         [](const auto& a, const auto& b) { return a.day < b.day; });
        inputs_ = several_;
    }

    void stockUntil(Day day) {
        while (next_ < inputs_.size() && inputs_[next_].day <= day) stock(inputs_[next_++]);
    }

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
    /// They come in during a day: the side is what it was until that evening.
    void stock(const Input& input) {
        const Day brood = input.day + (input.openBrood ? days(facts_, Fact::OpenBroodD) : Days{0});
        const Day needs = brood + days(facts_, Fact::NoBroodD);
        const bool wasEmpty = current_.kind == Kind::NotStocked || current_.kind == Kind::Spent;
        if (wasEmpty && !input.bees) return;  // brood alone makes no nuc
        if (!wasEmpty && input.day < current_.days.first - Days{1}) return;  // given to a held nuc
        const SideSegment before = current_;
        close(input.day);
        begin(wasEmpty ? Kind::Empty : before.kind,
              std::max(input.day, before.days.first - Days{1}) + Days{1});
        current_.round = before.round;
        current_.wintered = wasEmpty ? -1 : before.wintered;
        current_.certain = before.certain;
        current_.readyFrom = wasEmpty ? input.day + queenlessDays(facts_) : before.readyFrom;
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
    /// A queen of a season before stays in it.
    void winter(std::size_t index) {
        const auto& queen = side_.wintered[index];
        const Day from = std::max(queen.from, side_.stands.first);
        stockUntil(from);
        close(from - Days{1});
        begin(Kind::Wintered, from);
        current_.wintered = static_cast<std::int32_t>(index);
        const Day last = std::min(queen.last, side_.stands.last);
        close(last);
        begin(Kind::Freed, last + Days{1});
        current_.wintered = static_cast<std::int32_t>(index);
        current_.readyFrom =
            last + (queen.lost ? Days{1} : std::max(queenlessDays(facts_), Days{1}));
        // Lost over the winter, nobody knows when: her bees want brood at once.
        current_.needsBroodFrom =
            last + Days{1} +
            (queen.lost ? Days{0}
                        : days(facts_, Fact::OpenBroodD) + days(facts_, Fact::NoBroodD) - Days{1});
    }
    [[nodiscard]] Day freedReady(const SideRound& round, Day last) const {
        // Looked at and empty: queenless since the virgin was lost. Caught: since the catch.
        return round.seen == NucState::NoQueen ? last + Days{1}
                                               : last + std::max(queenlessDays(facts_), Days{1});
    }
    [[nodiscard]] Day freedNeedsBrood(const SideRound& round, Day last) const {
        Day lastAlive = round.seen == NucState::NoQueen
                            ? std::min(last, round.timeline->hold.lostDay)
                            : last + days(facts_, Fact::OpenBroodD);
        for (const auto& input : inputs_)
            if (input.openBrood && round.transferDay <= input.day && input.day <= last)
                lastAlive = std::max(lastAlive, input.day + days(facts_, Fact::OpenBroodD));
        return std::max(lastAlive + days(facts_, Fact::NoBroodD), last + Days{1});
    }

    SideOutlook& side_;
    const Facts& facts_;
    Input only_{};
    std::vector<Input> several_;
    std::span<const Input> inputs_;  ///< by day: the one, or several
    std::size_t next_ = 0;           ///< of the inputs
    SideSegment current_;
};

}  // namespace

void divide(SideOutlook& side, const Snapshot& snapshot) { Divider(side, snapshot).run(); }

void divideAs(const SideOutlook& bare, SideOutlook& side) {
    side.segments.reserve(kRoom + 2);
    side.segments = bare.segments;
}

}  // namespace tenthday
