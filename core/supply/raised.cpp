#include "supply/raised.h"

#include <algorithm>
#include <cmath>

#include "occupancy/winter.h"
#include "supply/counted_bars.h"

namespace tenthday {
namespace {

/// Deals things one by one in proportion to weights (method of odd divisors, as graftsOf()).
class Deal {
public:
    explicit Deal(const std::vector<double>& weights) : weights_(weights), dealt_(weights.size()) {}
    std::size_t next() {
        std::size_t best = 0;
        const auto claim = [&](std::size_t i) { return weights_[i] / (2 * dealt_[i] + 1); };
        for (std::size_t i = 1; i < weights_.size(); ++i)
            if (claim(i) > claim(best)) best = i;
        ++dealt_[best];
        return best;
    }

private:
    const std::vector<double>& weights_;
    std::vector<double> dealt_;
};

/// The parts of one batch.
class BatchParts {
public:
    BatchParts(const Snapshot& snapshot, Id<Batch> id, const BatchTimeline& timeline,
               const BatchNucs& nucs, const ChainRates& rates)
        : snapshot_(snapshot),
          batch_(snapshot.find(id)),
          timeline_(timeline),
          nucs_(nucs),
          rates_(rates) {}

    std::vector<RaisedPart> make() {
        if (!batch_ || isGivenUp()) return {};
        raise();
        if (parts_.empty()) return {};
        dealElsewhere();
        dealNucs();
        return std::move(parts_);
    }

private:
    [[nodiscard]] bool isGivenUp() const {
        const auto outcomes = snapshot_.all<Outcome>().of(batch_->id.uuid);
        return std::any_of(outcomes.begin(), outcomes.end(), [](const auto& outcome) {
            return outcome->kind == OutcomeKind::Spent && !outcome->side;
        });
    }

    void raise() {
        const auto counted = countedBars(snapshot_, batch_, timeline_);
        std::vector<BatchStanding> standings;
        for (const auto& bar : counted.bars) {
            // What hunger does is a fact of its own, whatever the rate of one's own is.
            const double accepted =
                bar.isHungry ? bar.acceptedShare : rates_[LossStage::Accepted].mean;
            const auto at = partFor(lineOf(*bar.bar), accepted, counted.given);
            standings.resize(parts_.size());
            standings[at] += standing(bar.bar->cells.value, bar.seen, counted.given);
            weights_[at] += bar.expected.ripe;
        }
        for (std::size_t i = 0; i < parts_.size(); ++i) ripen(parts_[i], standings[i]);
    }

    [[nodiscard]] std::optional<Id<Line>> lineOf(const BatchBar& bar) const {
        const auto breeder = bar.breeder ? snapshot_.find(*bar.breeder) : nullptr;
        return breeder ? breeder->line : std::nullopt;
    }

    std::size_t partFor(std::optional<Id<Line>> line, double accepted, Given given) {
        const auto found = std::find_if(parts_.begin(), parts_.end(), [&](const auto& part) {
            return part.line == line && part.rates[LossStage::Accepted].mean == accepted;
        });
        if (found != parts_.end()) return static_cast<std::size_t>(found - parts_.begin());
        RaisedPart part;
        part.batch = batch_->id;
        part.line = line;
        part.timeline = &timeline_;
        part.given = given;
        part.rates = rates_;
        part.rates[LossStage::Accepted].mean = accepted;
        part.isSettled = nucs_.isSettled;
        parts_.push_back(std::move(part));
        weights_.push_back(0);
        return parts_.size() - 1;
    }

    static void ripen(RaisedPart& part, const BatchStanding& standing) {
        part.ripe = reached(standing, part.rates, ripePoint(part.given));
        for (const auto stage : kAllLossStages)
            part.rates[stage] = tenthday::given(part.rates[stage], standing.seen[stage]);
    }

    void dealElsewhere() {
        const auto cells = cellsElsewhere(snapshot_, batch_->id);
        Deal deal(weights_);
        for (std::int32_t i = 0; i < cells.sold; ++i) ++parts_[deal.next()].elsewhere.sold;
        for (std::int32_t i = 0; i < cells.kept; ++i) ++parts_[deal.next()].elsewhere.kept;
        for (std::int32_t i = 0; i < cells.other; ++i) ++parts_[deal.next()].elsewhere.other;
    }

    void dealNucs() {
        Deal deal(weights_);
        for (const auto& [side, round] : nucs_.rounds) {
            auto& part = parts_[deal.next()];
            ++part.room;
            const auto lookedOn = lastLook(side, *round);
            if (round->isOpen() && lookedOn)
                wait(part, *lookedOn, round->seen.has_value());
            else if (round->seen)
                see(part, *round);
            else if (part.isSettled)
                ++part.unseen;
        }
        const auto bound = std::numeric_limits<std::int32_t>::max();
        if (nucs_.room == bound) {
            for (auto& part : parts_) part.room = bound;
            return;
        }
        const auto more = nucs_.room - static_cast<std::int32_t>(nucs_.rounds.size());
        for (std::int32_t i = 0; i < more; ++i) ++parts_[deal.next()].room;
    }

    /// The last day on which her nuc was seen to be without eggs.
    [[nodiscard]] std::optional<Day> lastLook(Id<NucSide> side, const SideRound& round) const {
        std::optional<Day> last;
        for (const auto& outcome : snapshot_.all<Outcome>().of(batch_->id.uuid))
            if (outcome->side == side && outcome->day >= round.transferDay &&
                (outcome->kind == OutcomeKind::NoneYet || outcome->kind == OutcomeKind::Emergence))
                last = std::max(last.value_or(outcome->day), outcome->day);
        return last;
    }

    static void wait(RaisedPart& part, Day seen, bool isOut) {
        ++part.looked;
        for (auto& waiting : part.waiting)
            if (waiting.seen == seen && waiting.isOut == isOut) {
                ++waiting.nucs;
                return;
            }
        part.waiting.push_back({seen, isOut, 1});
    }

    void see(RaisedPart& part, const SideRound& round) const {
        ++part.looked;
        const bool byEggs = round.timeline->hold.catchRule == CatchRule::Eggs;
        switch (*round.seen) {
            case NucState::Laying:
                if (byEggs)
                    part.known.push_back({*round.seenDay, 0, 1});
                else
                    part.known.push_back({round.catchDay, 1, 0});
                break;
            case NucState::JudgedGood:
            case NucState::Caught:
                // Left in her nuc for the winter she fills no order of that season.
                if (!staysForWinter(round))
                    part.known.push_back({*round.seenDay, 0, 1});
                else if (const Day first = snapshot_.season().first; *round.seenDay < first)
                    part.known.push_back({std::max(snapshot_.today(), first), 0, 1});
                break;
            default:  // lost
                break;
        }
    }

    const Snapshot& snapshot_;
    Ptr<Batch> batch_;
    const BatchTimeline& timeline_;
    const BatchNucs& nucs_;
    const ChainRates& rates_;
    std::vector<RaisedPart> parts_;
    std::vector<double> weights_;  ///< ripe cells expected, by part
};

}  // namespace

CountSpread RaisedPart::emerged(const CountSpread& cells) const {
    if (given == Given::Virgin) return cells;
    const auto closed = given == Given::Open ? passed(cells, rates[LossStage::Sealed]) : cells;
    return passed(closed, rates[LossStage::Emerged]);
}

double RaisedPart::emergedShare() const {
    if (given == Given::Virgin) return 1;
    const double closed = given == Given::Open ? rates[LossStage::Sealed].mean : 1;
    return closed * rates[LossStage::Emerged].mean;
}

Day RaisedPart::outDay() const {
    const auto* out = timeline->find(Event::Emergence);
    return out == nullptr ? cellsDay() : dayOf(out->likely);
}

std::vector<RaisedPart> raisedParts(const Snapshot& snapshot, const Timelines& timelines,
                                    const NucOutlook& nucs, const ChainRates& rates) {
    const auto rooms = batchNucs(snapshot, timelines, nucs);
    std::vector<RaisedPart> all;
    for (const auto& [id, timeline] : timelines)
        for (auto& part : BatchParts(snapshot, id, *timeline, rooms.at(id), rates).make())
            all.push_back(std::move(part));
    return all;
}

}  // namespace tenthday
