#include "chart/yard_stack.h"

#include <algorithm>
#include <cmath>

#include "chart/first_eggs.h"
#include "chart/yard_stacks.h"

namespace tenthday {
namespace {

using Heights = std::array<double, kBandCount>;
constexpr double kNothing = 1e-4;

double& at(Heights& heights, Band band) { return heights[static_cast<std::size_t>(band)]; }

/// States that a batch's nuc can be in, and their bands.
constexpr std::pair<NucState, Band> kHeld[] = {
    {NucState::JudgedGood, Band::JudgedGood},
    {NucState::Laying, Band::Laying},
    {NucState::DueToFly, Band::DueToFly},
    {NucState::Virgin, Band::Virgin},
    {NucState::Cell, Band::Cell},
    {NucState::DroneLayer, Band::DroneLayer},
    {NucState::NoQueen, Band::NoQueen},
};

double countOf(const YardDay& day, NucState state) {
    return day.stack[static_cast<std::size_t>(state)];
}

/// How much of a state's count a batch claims: its expectation, never quite nothing.
double claim(const BatchBlock& block, const BatchTimeline* timeline, Day day, NucState state) {
    constexpr double kTrace = 1e-6;
    double share = kTrace;
    if (timeline) {
        const auto& shares = timeline->hold.shares;
        const auto index = (day - timeline->hold.transferDay).count();
        if (index >= 0 && index < static_cast<int>(shares.size()))
            share += static_cast<double>(
                shares[static_cast<std::size_t>(index)][static_cast<std::size_t>(state)]);
    }
    return share * block.cells;
}

using Gaps = std::vector<std::pair<double, double>>;

/// A batch's share of a day.
struct Holder {
    const BatchBlock* block;
    const BatchTimeline* timeline;
    bool unseen;
    Heights heights;
};

/// What found no room among its batch's own places.
struct Spill {
    Band band;
    double height;
    Id<Batch> batch;
};

/// Pours bands into free places, lowest first; fills them up as it does.
class Pourer {
public:
    Pourer(Gaps& gaps, std::vector<BandRun>& runs) : gaps_(gaps), runs_(runs) {}

    /// @return what found no room
    double pour(Band band, double height, std::optional<Id<Batch>> batch) {
        while (height > kNothing && next_ < gaps_.size()) {
            auto& [from, to] = gaps_[next_];
            const double poured = std::min(height, to - from);
            if (poured > kNothing)
                runs_.push_back(
                    {band, static_cast<float>(from), static_cast<float>(from + poured), batch});
            from += poured;
            height -= poured;
            if (to - from <= kNothing) ++next_;
        }
        return height;
    }
    void pourAll(const Heights& heights, std::optional<Id<Batch>> batch,
                 std::vector<Spill>* spilled) {
        for (std::size_t i = 0; i < kBandCount; ++i) {
            const auto band = static_cast<Band>(i);
            const double over = pour(band, heights[i], batch);
            if (spilled && over > kNothing) spilled->push_back({band, over, *batch});
        }
    }
    /// Adds the gaps still to fill.
    void giveRest(Gaps& rest) const {
        rest.insert(rest.end(), gaps_.begin() + static_cast<std::ptrdiff_t>(next_), gaps_.end());
    }

private:
    Gaps& gaps_;
    std::vector<BandRun>& runs_;
    std::size_t next_ = 0;
};

Gaps gapsOf(const std::vector<int>& places) {
    Gaps gaps;
    for (const int place : places) {
        if (!gaps.empty() && gaps.back().second >= place)
            gaps.back().second = place + 1;
        else
            gaps.push_back({place, place + 1});
    }
    return gaps;
}

/// What stands of them where so many sides do, into `standing`.
void takeBelow(const Gaps& gaps, double sides, Gaps& standing) {
    standing.clear();
    for (const auto& [from, to] : gaps)
        if (from < sides) standing.push_back({from, std::min(to, sides)});
}

/// What lies between them, up to so many sides. @param taken  rising, none over another
Gaps between(const Gaps& taken, double sides) {
    Gaps open;
    double next = 0;
    for (const auto& [from, to] : taken) {
        if (from > next) open.push_back({next, from});
        next = to;
    }
    if (next < sides) open.push_back({next, sides});
    return open;
}

double sumOf(const Heights& heights) {
    double sum = 0;
    for (const double height : heights) sum += height;
    return sum;
}

/// Whole nucs that add up to as many, by largest remainder.
std::vector<double> wholeTotals(const std::vector<Holder>& holders) {
    std::vector<double> whole;
    std::vector<std::pair<double, std::size_t>> rests;
    double all = 0;
    double given = 0;
    for (std::size_t i = 0; i < holders.size(); ++i) {
        const double sum = sumOf(holders[i].heights);
        whole.push_back(std::floor(sum + kNothing));
        rests.push_back({whole.back() - sum, i});
        all += sum;
        given += whole.back();
    }
    std::stable_sort(rests.begin(), rests.end());
    const auto left = static_cast<std::size_t>(std::max(0L, std::lround(all - given)));
    for (std::size_t i = 0; i < std::min(left, rests.size()); ++i) whole[rests[i].second] += 1;
    return whole;
}

/// Makes each batch's bands whole nucs, by rounding where one ends and the next begins.
void makeWhole(std::vector<Holder>& holders) {
    const auto totals = wholeTotals(holders);
    for (std::size_t i = 0; i < holders.size(); ++i) {
        const double sum = sumOf(holders[i].heights);
        const double scale = sum > kNothing ? totals[i] / sum : 0;
        double upTo = 0;
        double before = 0;
        for (double& height : holders[i].heights) {
            if (height == 0) continue;  // most are
            upTo += height * scale;
            const double edge = std::round(upTo);
            height = edge - before;
            before = edge;
        }
    }
}

/// While nobody has looked, and first eggs are due about now, the edge between due to fly and
/// laying stands at their chance: over the days a slope, not a step of whole nucs.
void softenFirstEggs(std::vector<Holder>& holders, Day day) {
    for (auto& holder : holders) {
        if (!holder.unseen || !holder.timeline || !unsureEggs(holder.timeline->hold, day)) continue;
        const auto& shares = holder.timeline->hold.on(day);
        const auto eggs = shares[static_cast<std::size_t>(NucState::Laying)];
        const auto none = shares[static_cast<std::size_t>(NucState::DueToFly)];
        auto& laying = at(holder.heights, Band::Laying);
        auto& due = at(holder.heights, Band::DueToFly);
        const double both = laying + due;
        laying = both * static_cast<double>(eggs) / static_cast<double>(eggs + none);
        due = both - laying;
    }
}

/// Queenless nucs that are ready turn white, whatever they were before: those without a queen of
/// any kind first, then those where none was found. Of the rest, some are likely to be ready.
void splitReady(const YardDay& day, Heights& free, std::vector<Holder>& holders) {
    const double queenless = countOf(day, NucState::Ready) + countOf(day, NucState::Caught);
    const double ready = day.numbers.ready;
    const double rest = std::max(0.0, queenless - ready);
    at(free, Band::Ready) = std::min(ready, queenless);
    at(free, Band::Likely) =
        std::clamp(std::round(day.numbers.likely), 0.0,
                   std::max(0.0, rest - static_cast<double>(day.numbers.needsBrood)));
    at(free, Band::Waiting) = rest - at(free, Band::Likely);
    double wanted = std::max(0.0, ready - queenless);
    const auto turn = [&wanted](Heights& heights) {
        const double turned = std::min(wanted, at(heights, Band::NoQueen));
        at(heights, Band::NoQueen) -= turned;
        at(heights, Band::Ready) += turned;
        wanted -= turned;
    };
    turn(free);
    for (auto& holder : holders) turn(holder.heights);
}

/// Shares a day's counts out among the batches there. @return what belongs to none
/// @param wintered  queens of a season before that are there
Heights shareOut(const YardDay& yardDay, Day day, std::vector<Holder>& holders, double wintered) {
    Heights free{};
    std::vector<double> claimed(holders.size());
    for (const auto& [state, band] : kHeld) {
        const double all = countOf(yardDay, state);
        const double own = state == NucState::JudgedGood ? std::min(all, wintered) : 0;
        const double total = all - own;
        at(free, band) = own;
        double claims = 0;
        for (std::size_t i = 0; i < holders.size(); ++i) {
            claimed[i] = claim(*holders[i].block, holders[i].timeline, day, state);
            claims += claimed[i];
        }
        if (claims <= 0) at(free, band) = all;
        for (std::size_t i = 0; i < holders.size() && claims > 0; ++i)
            at(holders[i].heights, band) = total * claimed[i] / claims;
    }
    at(free, Band::Spent) = countOf(yardDay, NucState::Spent);
    at(free, Band::NotStocked) = countOf(yardDay, NucState::NotStocked);
    makeWhole(holders);
    softenFirstEggs(holders, day);
    splitReady(yardDay, free, holders);
    return free;
}

}  // namespace

YardStack::YardStack(const Outlook& outlook, const YardOutlook& yard)
    : YardStack(outlook, yard, StackFacts(outlook)) {}

YardStack::YardStack(const Outlook& outlook, const YardOutlook& yard, const StackFacts& facts)
    : outlook_(&outlook), yard_(&yard) {
    for (const auto& block : yard.blocks) {
        const auto batch = facts.batches.find(block.batch);
        const auto* timeline = batch == facts.batches.end() ? nullptr : &batch->second->timeline;
        blocks_.push_back({&block, timeline, !facts.seen.contains(block.batch), {}});
    }
    const auto wintered = facts.wintered.find(yard.yard->id);
    if (wintered != facts.wintered.end()) wintered_ = wintered->second;
    givePlaces();
}

void YardStack::givePlaces() {
    const auto count = static_cast<std::size_t>(std::max(yard_->mostSides, 0));
    std::vector<Day> freeFrom(count, kFirstDay);
    for (auto& block : blocks_) {
        auto wanted = block.block->cells;
        std::vector<int> given;
        for (std::size_t place = 0; place < count && wanted > 0; ++place) {
            if (freeFrom[place] > block.block->days.first) continue;
            freeFrom[place] = block.block->days.last + Days{1};
            given.push_back(static_cast<int>(place));
            --wanted;
        }
        block.places = gapsOf(given);
    }
}

std::vector<YardStack::Places> YardStack::places() const {
    std::vector<Places> all;
    for (const auto& block : blocks_)
        for (const auto& [from, to] : block.places) all.push_back({block.block->batch, from, to});
    return all;
}

std::vector<YardStack::Runs> YardStack::placesOfBlocks() const {
    std::vector<Runs> all;
    all.reserve(blocks_.size());
    for (const auto& block : blocks_) all.push_back(block.places);
    return all;
}

std::vector<const YardStack::Block*> YardStack::blocksOn(Day day) const {
    std::vector<const Block*> here;
    for (const auto& block : blocks_)
        if (block.block->days.contains(day)) here.push_back(&block);
    return here;
}

std::vector<BandRun> YardStack::on(Day day) const {
    const auto index = (day - outlook_->season.first).count();
    if (index < 0 || index >= static_cast<int>(yard_->days.size())) return {};
    const auto& yardDay = yard_->days[static_cast<std::size_t>(index)];
    const auto here = blocksOn(day);
    std::vector<Holder> holders;
    holders.reserve(here.size());
    for (const auto* block : here)
        holders.push_back({block->block, block->timeline, block->unseen, {}});
    const auto wintered = std::count_if(wintered_.begin(), wintered_.end(),
                                        [&](const auto& days) { return days.contains(day); });
    const auto free = shareOut(yardDay, day, holders, static_cast<double>(wintered));

    const double sides = std::max<int>(yardDay.sides, 0);
    std::vector<BandRun> runs;
    runs.reserve(4 * here.size() + 4);
    Gaps taken;
    Gaps gaps;
    std::vector<Spill> spilled;
    Gaps mine;
    for (std::size_t i = 0; i < here.size(); ++i) {
        takeBelow(here[i]->places, sides, mine);
        taken.insert(taken.end(), mine.begin(), mine.end());
        Pourer pourer(mine, runs);
        pourer.pourAll(holders[i].heights, holders[i].block->batch, &spilled);
        pourer.giveRest(gaps);
    }
    std::sort(taken.begin(), taken.end());
    const auto open = between(taken, sides);
    gaps.insert(gaps.end(), open.begin(), open.end());
    std::sort(gaps.begin(), gaps.end());
    Pourer pourer(gaps, runs);
    for (const auto& spill : spilled) pourer.pour(spill.band, spill.height, spill.batch);
    pourer.pourAll(free, std::nullopt, nullptr);
    std::sort(runs.begin(), runs.end(),
              [](const BandRun& a, const BandRun& b) { return a.from < b.from; });
    return runs;
}

}  // namespace tenthday
