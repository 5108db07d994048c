#include "occupancy/waiting_virgins.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>

#include "mating/mating_days.h"
#include "occupancy/nuc_upkeep.h"
#include "occupancy/sides.h"

namespace tenthday {
namespace {

/// A cell is listed from so many days before it emerges (common practice).
constexpr Days kAboutToEmerge{2};

/// A batch as its virgins need it; kept, for its nucs ask alike.
struct BatchSky {
    const BatchTimeline* timeline = nullptr;
    bool inseminated = false;
    std::shared_ptr<const MatingTable> station;  ///< of the days there
    const MatingTable* mating = nullptr;
    Moment outLikely;
    Day outEarliest, outLatest;
    std::vector<EmergenceShare> out;
};

/// Lists the virgins of one day.
class Virgins {
public:
    Virgins(const Snapshot& snapshot, const NucOutlook& nucs, const MatingTable& mating, Day day)
        : snapshot_(snapshot), facts_(snapshot.facts()), nucs_(nucs), mating_(mating), day_(day) {}

    WaitingVirgins list() {
        all_.day = day_;
        for (const auto& yard : nucs_.yards)
            for (const auto& side : nucs_.sides)
                if (side.yardOn(day_) == yard.yard->id)
                    if (const auto* round = roundIn(side)) add(side, *round, yard.yard->id);
        group();
        count();
        std::stable_sort(all_.nucs.begin(), all_.nucs.end(),
                         [](const auto& a, const auto& b) { return a.age > b.age; });
        sky();
        return std::move(all_);
    }

private:
    /// The round that holds the side, unless something was seen that ends the wait.
    [[nodiscard]] const SideRound* roundIn(const SideOutlook& side) const {
        const auto* segment = segmentOn(side, day_);
        if (segment == nullptr || segment->kind != SideSegment::Kind::Held) return nullptr;
        const auto& round = side.rounds[static_cast<std::size_t>(segment->round)];
        const bool seen = !round.isOpen() && round.seenDay && *round.seenDay < day_;
        return seen || round.timeline->find(Event::Emergence) == nullptr ? nullptr : &round;
    }

    [[nodiscard]] const BatchSky& skyOf(const SideRound& round) {
        auto [at, isNew] = batches_.try_emplace(round.batch);
        auto& sky = at->second;
        if (!isNew) return sky;
        const auto& timeline = *round.timeline;
        const auto batch = snapshot_.find(round.batch);
        const auto stays = snapshot_.all<MatingStay>().of(round.batch.uuid);
        sky.timeline = &timeline;
        sky.inseminated = batch && batch->mating == Mating::Insemination;
        sky.mating = &mating_;
        if (batch && batch->mating == Mating::Station && !stays.empty()) {
            std::vector<DayWindow> there;
            for (const auto& stay : stays) there.push_back({stay->from, stay->until});
            sky.station = std::make_shared<const MatingTable>(mating_.atStation(there, facts_));
            sky.mating = sky.station.get();
        }
        const auto& dates = *timeline.find(Event::Emergence);
        sky.outLikely = dates.likely;
        sky.outEarliest = dayOf(dates.earliest);
        sky.outLatest = dayOf(dates.latest);
        sky.out = emergenceShares(timeline.clock.emerged(), timeline.graft);
        return sky;
    }

    void add(const SideOutlook& side, const SideRound& round, Id<Yard> yard) {
        const auto& sky = skyOf(round);
        if (sky.inseminated) return;
        WaitingVirgin virgin;
        virgin.side = &side;
        virgin.round = &round;
        virgin.yard = yard;
        emergence(sky, virgin);
        if (virgin.outEarliest - kAboutToEmerge > day_) return;
        flights(*sky.mating, virgin);
        chances(sky, virgin);
        virgin.needsBroodFrom = needsBrood(side, virgin);
        nextCells(virgin);
        advise(virgin);
        all_.nucs.push_back(virgin);
    }

    /// Seen while her batch came out, it is that day; a virgin seen later tells only that she had
    /// not laid.
    void emergence(const BatchSky& sky, WaitingVirgin& virgin) const {
        virgin.outEarliest = sky.outEarliest;
        virgin.outLikely = dayOf(sky.outLikely);
        virgin.outLatest = sky.outLatest;
        virgin.outSeen = sky.outEarliest == sky.outLatest && sky.out.size() == 1;
        std::optional<Day> first;
        for (const auto& outcome : snapshot_.all<Outcome>().of(virgin.round->batch.uuid)) {
            const bool none = outcome->kind == OutcomeKind::NoneYet;
            if (outcome->side != virgin.side->side->id ||
                (outcome->kind != OutcomeKind::Emergence && !none) ||
                outcome->day < virgin.round->transferDay)
                continue;
            if (!none) first = std::min(first.value_or(outcome->day), outcome->day);
            if (outcome->day < day_)
                virgin.seen = std::max(virgin.seen.value_or(outcome->day), outcome->day);
        }
        if (first && *first <= sky.outLatest) {
            virgin.outEarliest = virgin.outLikely = virgin.outLatest = *first;
            virgin.outSeen = true;
        }
        virgin.age = static_cast<std::int32_t>((day_ - virgin.outLikely).count());
        const Day due = virgin.outLikely + days(facts_, Fact::FirstFlightD);
        virgin.dueDay = std::max(due, virgin.round->transferDay);
        virgin.lastDay = virgin.outLikely + days(facts_, Fact::LastMatingD);
        virgin.firstLook =
            virgin.outLikely + days(facts_, Fact::FirstLookD) + (virgin.dueDay - due);
    }

    /// Days behind her on which she could have flown.
    void flights(const MatingTable& mating, WaitingVirgin& virgin) const {
        const Day until = std::min(day_ - Days{1}, virgin.lastDay);
        for (Day day = virgin.dueDay; day <= until; day += Days{1}) {
            if (const auto known = mating.knownToFly(day)) {
                ++(*known ? virgin.flew : virgin.idle);
                continue;
            }
            ++virgin.unknown;
            const auto chance = mating.chanceToFly(day);
            if (chance && virgin.flewMaybe)
                *virgin.flewMaybe += *chance;
            else
                virgin.flewMaybe.reset();
        }
    }

    /// The last day on which she surely had not laid: seen, or too soon after her cage, in which
    /// she could not mate.
    [[nodiscard]] std::optional<Day> noEggsOn(const WaitingVirgin& virgin) const {
        const bool caged = virgin.dueDay > virgin.outLikely + days(facts_, Fact::FirstFlightD);
        if (!caged) return virgin.seen;
        const Day barren = virgin.dueDay + days(facts_, Fact::EggsAfterFlightD) - Days{1};
        return std::max(virgin.seen.value_or(barren), barren);
    }

    /// Chances, and when enough of such virgins have eggs.
    void chances(const BatchSky& sky, WaitingVirgin& virgin) {
        const std::vector<EmergenceShare> seen{{virgin.outLikely, 1}};
        const auto& out = virgin.outSeen ? seen : sky.out;
        const auto mates = matingDays(*sky.mating, out, facts_, noEggsOn(virgin));
        const Day again =
            virgin.seen ? *virgin.seen + days(facts_, Fact::LookAgainD) : virgin.firstLook;
        virgin.look = std::max(virgin.firstLook, again);
        if (mates) {
            virgin.mated = mates->before(day_);
            virgin.still = mates->from(day_);
            const auto level = mates->eggsBy(facts_[Fact::LikelyLevel]);
            virgin.reason = VirginReason::EggsDue;
            if (level && *level > *virgin.look) {
                virgin.look = level;
                virgin.reason = VirginReason::FewFlyingDays;
            }
            return;
        }
        virgin.reason = VirginReason::WeatherUnknown;
        if (!virgin.seen) {
            virgin.look = std::max(virgin.firstLook, sky.timeline->hold.lookDay);
            return;
        }
        if (matingDays(*sky.mating, out, facts_)) virgin.reason = VirginReason::SeenAgainstRule;
        virgin.look = std::max(virgin.firstLook, again);
    }

    /// No cell is taken so long after the last open brood, or after she was last alive.
    [[nodiscard]] Day needsBrood(const SideOutlook& side, const WaitingVirgin& virgin) const {
        Day last = virgin.outLikely + days(facts_, Fact::LostVirginD);
        if (virgin.seen) last = std::max(last, *virgin.seen);
        for (const auto& stocking : side.stockings)
            if (stocking->openBrood && stocking->day <= day_)
                last = std::max(last, stocking->day + days(facts_, Fact::OpenBroodD));
        for (const auto& care : snapshot_.all<NucCare>().of(side.side->id.uuid))
            if (bringsOpenBrood(*care) && care->day <= day_)
                last = std::max(last, care->day + days(facts_, Fact::OpenBroodD));
        return last + days(facts_, Fact::NoBroodD);
    }

    void nextCells(WaitingVirgin& virgin) const {
        for (const auto& cells : nucs_.cellsDays) {
            if (cells.day < day_ || cells.ripe <= cells.placed) continue;
            virgin.cellDay = cells.day;
            virgin.cellBatch = cells.batches.front();
            return;
        }
    }

    void advise(WaitingVirgin& virgin) const {
        const bool old = day_ > virgin.lastDay;
        const bool hopeless = virgin.mated
                                  ? *virgin.mated + *virgin.still < facts_[Fact::GiveUpChance]
                                  : virgin.seen && *virgin.seen > virgin.lastDay;
        if (hopeless && day_ >= virgin.dueDay) {
            virgin.reason = old ? VirginReason::TooOld : VirginReason::SmallChance;
            const bool cells = virgin.cellDay && *virgin.cellDay < virgin.needsBroodFrom;
            virgin.advice = cells ? VirginAdvice::Recell : VirginAdvice::Combine;
            virgin.look.reset();
            return;
        }
        virgin.look = std::max(*virgin.look, day_);
        virgin.advice = day_ < virgin.firstLook ? VirginAdvice::Wait : VirginAdvice::Look;
        if (virgin.advice == VirginAdvice::Wait && virgin.reason == VirginReason::EggsDue)
            virgin.reason = VirginReason::LookNotDue;
    }

    void group() {
        std::map<std::pair<Day, Id<Batch>>, VirginGroup> inYard;
        const auto close = [&] {
            for (auto& [key, group] : inYard) all_.groups.push_back(finished(group));
            inYard.clear();
        };
        for (const auto& virgin : all_.nucs) {
            if (!inYard.empty() && inYard.begin()->second.yard != virgin.yard) close();
            const auto& timeline = *virgin.round->timeline;
            auto [at, isNew] = inYard.try_emplace({dayOf(timeline.graft), virgin.round->batch});
            auto& group = at->second;
            if (isNew)
                group = {
                    virgin.round->batch, virgin.yard, 0, virgin.age, virgin.age, 0.0, 0.0, 0.0, {}};
            ++group.nucs;
            group.youngest = std::min(group.youngest, virgin.age);
            group.oldest = std::max(group.oldest, virgin.age);
            addTo(group.flown, virgin.flown());
            addTo(group.mated, virgin.mated);
            addTo(group.still, virgin.still);
            ++group.advised[static_cast<std::size_t>(virgin.advice)];
        }
        close();
    }

    static void addTo(std::optional<double>& sum, std::optional<double> more) {
        sum = sum && more ? std::optional(*sum + *more) : std::nullopt;
    }
    /// Sums become means.
    static VirginGroup finished(VirginGroup group) {
        for (auto* sum : {&group.flown, &group.mated, &group.still})
            if (*sum) **sum /= group.nucs;
        return group;
    }

    void count() {
        for (const auto& virgin : all_.nucs) {
            if (!virgin.isWaiting(day_)) continue;
            ++all_.waiting;
            if (all_.firstLastDay && *all_.firstLastDay < virgin.lastDay) continue;
            if (all_.firstLastDay != virgin.lastDay) all_.untilThen = 0;
            all_.firstLastDay = virgin.lastDay;
            ++all_.untilThen;
        }
    }

    /// The run of days without flying up to the day before, and the next flying day.
    void sky() {
        Day day = day_ - Days{1};
        for (; mating_.knownToFly(day) == false; day -= Days{1}) ++all_.idleDays;
        if (mating_.knownToFly(day) == true) all_.lastFlying = day;
        for (day = day_; mating_.knownToFly(day) == false;) day += Days{1};
        if (mating_.knownToFly(day) == true) all_.nextFlying = day;
    }

    const Snapshot& snapshot_;
    const Facts& facts_;
    const NucOutlook& nucs_;
    const MatingTable& mating_;
    Day day_;
    std::unordered_map<Id<Batch>, BatchSky> batches_;
    WaitingVirgins all_;
};

}  // namespace

WaitingVirgins waitingVirgins(const Snapshot& snapshot, const NucOutlook& nucs,
                              const MatingTable& mating, Day day) {
    return Virgins(snapshot, nucs, mating, day).list();
}

}  // namespace tenthday
