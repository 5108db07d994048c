#include "supply/own_rates.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "mating/virgin_rules.h"
#include "records/relations.h"
#include "supply/counted_bars.h"

namespace tenthday {
namespace {

/// What is known of one cell's stay in a nuc.
struct RoundSeen {
    bool isOut = false;     ///< the virgin, or what she became, was seen
    bool early = false;     ///< she was looked for before she could fly ...
    bool neverOut = false;  ///< ... and there was none
    bool laid = false;
    bool good = false;
    bool lost = false;  ///< no queen, or one that lays drones
    Day lastDay;        ///< of what was seen last
};

/// Rounds of one batch in the nucs.
using Rounds = std::vector<std::pair<const SideOutlook*, const SideRound*>>;

void see(const Outcome& outcome, Day canFly, RoundSeen& seen) {
    seen.lastDay = outcome.day;
    const bool isEarly = outcome.day < canFly;
    switch (outcome.kind) {
        case OutcomeKind::Emergence:
            seen.isOut = true;
            seen.early = seen.early || isEarly;
            break;
        case OutcomeKind::FirstEggs:
        case OutcomeKind::Larvae:
        case OutcomeKind::SealedBrood:
            seen.isOut = seen.laid = true;
            break;
        case OutcomeKind::JudgedGood:
        case OutcomeKind::Catch:
            seen.isOut = seen.laid = seen.good = true;
            break;
        case OutcomeKind::NoQueen:
            seen.neverOut = isEarly && !seen.isOut;
            seen.early = seen.early || isEarly;
            seen.lost = !seen.good;
            break;
        case OutcomeKind::DroneLayer:
            seen.isOut = true;
            seen.lost = !seen.good;
            break;
        default:
            break;
    }
}

/// What one batch says, stage by stage.
class BatchRecord {
public:
    BatchRecord(const Snapshot& snapshot, const Ptr<Batch>& batch, const BatchTimeline& timeline,
                const MatingTable& mating, const VirginRules& rules)
        : snapshot_(snapshot), batch_(batch), timeline_(timeline), mating_(mating), rules_(rules) {}

    PerStage<StageCount> counts(const Rounds& rounds) {
        countBars();
        for (const auto& [side, round] : rounds)
            if (round->done) countRound(*side, *round);
        const double untold = static_cast<double>(unseenLost_) * shareOut();
        counts_[LossStage::Mated].tried += static_cast<std::int32_t>(std::lround(untold));
        return counts_;
    }

private:
    void countBars() {
        const auto counted = countedBars(snapshot_, batch_, timeline_);
        given_ = counted.given;
        if (batch_->start >= Start::SealedFound) return;
        const bool grafted = isGrafted(snapshot_, batch_->id);
        for (const auto& bar : counted.bars) {
            const auto seen = standing(bar.bar->cells.value, bar.seen, counted.given).seen;
            if (grafted && !bar.isHungry) add(LossStage::Accepted, seen[LossStage::Accepted]);
            add(LossStage::Sealed, seen[LossStage::Sealed]);
        }
    }

    void countRound(const SideOutlook& side, const SideRound& round) {
        const auto seen = seenOf(side, round);
        if (given_ == Given::Sealed && seen.early)
            add(LossStage::Emerged, {1, seen.neverOut ? 0 : 1});
        if (seen.laid || (seen.lost && !seen.neverOut)) countMating(seen);
        if (timeline_.hold.catchRule != CatchRule::Eggs && seen.laid && (seen.good || seen.lost))
            add(LossStage::JudgedGood, {1, seen.good ? 1 : 0});
    }

    void countMating(const RoundSeen& seen) {
        if (seen.laid)
            add(LossStage::Mated, {1, 1});
        else if (!metWeather(seen.lastDay))
            return;
        else if (seen.isOut || given_ == Given::Virgin)
            add(LossStage::Mated, {1, 0});
        else
            ++unseenLost_;
    }

    [[nodiscard]] RoundSeen seenOf(const SideOutlook& side, const SideRound& round) const {
        Day until = kLastDay;  // the next cell in the same nuc may be of the same batch
        for (const auto& other : side.rounds)
            if (other.transferDay > round.transferDay) until = std::min(until, other.transferDay);
        std::vector<Ptr<Outcome>> outcomes;
        for (const auto& outcome : snapshot_.all<Outcome>().of(batch_->id.uuid))
            if (outcome->side == side.side->id && outcome->day >= round.transferDay &&
                outcome->day < until)
                outcomes.push_back(outcome);
        std::stable_sort(outcomes.begin(), outcomes.end(),
                         [](const auto& a, const auto& b) { return a->day < b->day; });
        RoundSeen seen;
        for (const auto& outcome : outcomes)
            see(*outcome, outDay() + Days{rules_.firstFlight}, seen);
        return seen;
    }

    [[nodiscard]] Day outDay() const {
        const auto* out = timeline_.find(Event::Emergence);
        return out == nullptr ? timeline_.hold.transferDay : dayOf(out->likely);
    }

    /// Whether she can have met a flying day by then.
    [[nodiscard]] bool metWeather(Day until) const {
        if (batch_->mating == Mating::Insemination) return true;
        const auto stays = snapshot_.all<MatingStay>().of(batch_->id.uuid);
        const auto couldFlyFrom = [&](Day day) {
            return stays.empty() || std::any_of(stays.begin(), stays.end(), [&](const auto& stay) {
                       return stay->from <= day && day <= stay->until;
                   });
        };
        const Day last = std::min(until, outDay() + Days{rules_.lastAge});
        for (Day day = outDay() + Days{rules_.firstFlight}; day <= last; day += Days{1})
            if (couldFlyFrom(day) && mating_.knownToFly(day).value_or(true)) return true;
        return false;
    }

    /// Of nucs found without a queen, those in which one came out, by the facts.
    [[nodiscard]] double shareOut() const {
        const auto& facts = snapshot_.facts();
        const double out =
            facts[Fact::Emerged] * (given_ == Given::Open ? facts[Fact::Sealed] : 1.0);
        const double lost = 1 - out * facts[Fact::Mated];
        return lost <= 0 ? 0 : out * (1 - facts[Fact::Mated]) / lost;
    }

    void add(LossStage stage, const StageCount& count) {
        counts_[stage].tried += count.tried;
        counts_[stage].passed += count.passed;
    }

    const Snapshot& snapshot_;
    const Ptr<Batch>& batch_;
    const BatchTimeline& timeline_;
    const MatingTable& mating_;
    const VirginRules& rules_;
    Given given_ = Given::Sealed;
    PerStage<StageCount> counts_;
    std::int32_t unseenLost_ = 0;
};

std::unordered_map<Id<Batch>, Rounds> roundsOf(const NucOutlook& nucs) {
    std::unordered_map<Id<Batch>, Rounds> all;
    for (const auto& side : nucs.sides)
        for (const auto& round : side.rounds) all[round.batch].emplace_back(&side, &round);
    return all;
}

std::vector<OwnOutcome> outcomesOf(const std::vector<BatchOutcome>& batches) {
    std::vector<OwnOutcome> outcomes;
    outcomes.reserve(batches.size());
    for (const auto& batch : batches) outcomes.push_back(batch.outcome);
    return outcomes;
}

/// Set by hand: the user knows better.
bool isSet(const Snapshot& snapshot, Fact fact) {
    const auto& all = snapshot.all<FactOverride>();
    return std::any_of(all.begin(), all.end(),
                       [&](const auto& row) { return row->fact == token(fact); });
}

bool speaks(const Snapshot& snapshot, LossStage stage, std::int32_t batches) {
    return batches >= kBatchesToSpeak && !isSet(snapshot, rateFact(stage));
}

/// The spread goes with the rate, unless it is set by hand.
void use(const Snapshot& snapshot, LossStage stage, const StageRate& fitted, StageRate& rate) {
    rate.mean = fitted.mean;
    if (!isSet(snapshot, spreadFact(stage))) rate.sd = fitted.sd;
}

}  // namespace

std::vector<EarlierOutcome> outcomesOfSeason(const Snapshot& snapshot, const Timelines& timelines,
                                             const NucOutlook& nucs, const MatingTable& mating) {
    std::vector<EarlierOutcome> all;
    const auto rounds = roundsOf(nucs);
    const auto rules = virginRules(snapshot.facts());
    for (const auto& [id, timeline] : timelines) {
        const auto batch = snapshot.find(id);
        if (!batch) continue;
        const auto found = rounds.find(id);
        BatchRecord record(snapshot, batch, *timeline, mating, rules);
        all.push_back({id, batch->label, batch->day,
                       record.counts(found == rounds.end() ? Rounds{} : found->second)});
    }
    return all;
}

PerStage<std::vector<BatchOutcome>> ownOutcomes(const Snapshot& snapshot,
                                                const Timelines& timelines, const NucOutlook& nucs,
                                                const MatingTable& mating) {
    PerStage<std::vector<BatchOutcome>> all;
    const auto put = [&](const EarlierOutcome& batch) {
        const auto odd = snapshot.all<LeftOut>().of(batch.batch.uuid);
        const auto why = odd.empty() ? std::string() : odd.front()->reason;
        for (const auto stage : kAllLossStages)
            if (batch.counts[stage].tried > 0)
                all[stage].push_back(
                    {batch.batch, batch.label, batch.day, {batch.counts[stage], why}});
    };
    // Late batches of the season before are read with this one: they speak as they are now.
    if (const auto& earlier = snapshot.earlier())
        for (const auto& batch : earlier->batches)
            if (!snapshot.find(batch.batch)) put(batch);
    for (const auto& batch : outcomesOfSeason(snapshot, timelines, nucs, mating)) put(batch);
    return all;
}

OwnRates ownRates(const Snapshot& snapshot, const Timelines& timelines, const NucOutlook& nucs,
                  const MatingTable& mating) {
    OwnRates rates;
    rates.outcomes = ownOutcomes(snapshot, timelines, nucs, mating);
    for (const auto stage : kAllLossStages)
        rates.fits[stage] =
            fitRate(priorOf(snapshot.facts(), stage), outcomesOf(rates.outcomes[stage]));
    return rates;
}

bool isOwnRateInForce(const Snapshot& snapshot, const OwnRates& rates, LossStage stage) {
    return speaks(snapshot, stage, rates.fits[stage].batches);
}

ChainRates ratesInForce(const Snapshot& snapshot, const OwnRates& rates) {
    auto chain = chainRates(snapshot.facts());
    for (const auto stage : kAllLossStages)
        if (isOwnRateInForce(snapshot, rates, stage))
            use(snapshot, stage, rates.fits[stage].use(), chain[stage]);
    return chain;
}

ChainRates ratesInForce(const Snapshot& snapshot,
                        const PerStage<std::vector<BatchOutcome>>& outcomes) {
    auto chain = chainRates(snapshot.facts());
    for (const auto stage : kAllLossStages) {
        const auto own = outcomesOf(outcomes[stage]);
        if (speaks(snapshot, stage, batchesThatCount(own)))
            use(snapshot, stage, fittedRate(priorOf(snapshot.facts(), stage), own), chain[stage]);
    }
    return chain;
}

}  // namespace tenthday
