#include "chart/yard_stack.h"

#include <algorithm>
#include <cmath>
#include <numeric>

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

/// Pours bands into free places, lowest first.
class Pourer {
public:
    Pourer(std::vector<std::pair<double, double>> gaps, std::vector<BandRun>& runs)
        : gaps_(std::move(gaps)), runs_(runs) {}

    void pour(Band band, double height, std::optional<Id<Batch>> batch) {
        while (height > kNothing && next_ < gaps_.size()) {
            auto& [from, to] = gaps_[next_];
            const double taken = std::min(height, to - from);
            if (taken > kNothing)
                runs_.push_back(
                    {band, static_cast<float>(from), static_cast<float>(from + taken), batch});
            from += taken;
            height -= taken;
            if (to - from <= kNothing) ++next_;
        }
        spill_ = height;
    }
    [[nodiscard]] double spill() const { return spill_; }
    /// Gaps still to fill.
    [[nodiscard]] std::vector<std::pair<double, double>> rest() const {
        return {gaps_.begin() + static_cast<std::ptrdiff_t>(next_), gaps_.end()};
    }

private:
    std::vector<std::pair<double, double>> gaps_;
    std::vector<BandRun>& runs_;
    std::size_t next_ = 0;
    double spill_ = 0;
};

std::vector<std::pair<double, double>> gapsOf(const std::vector<int>& places) {
    std::vector<std::pair<double, double>> gaps;
    for (const int place : places) {
        if (!gaps.empty() && gaps.back().second >= place)
            gaps.back().second = place + 1;
        else
            gaps.push_back({place, place + 1});
    }
    return gaps;
}

/// Queenless nucs that are ready turn white, whatever they were before: those without a queen of
/// any kind first, then those where none was found.
void splitReady(const YardDay& day, Heights& free, std::vector<Heights>& held) {
    const double queenless = countOf(day, NucState::Ready) + countOf(day, NucState::Caught);
    const double ready = day.numbers.ready;
    at(free, Band::Ready) = std::min(ready, queenless);
    at(free, Band::Waiting) = std::max(0.0, queenless - ready);
    const double noQueen = countOf(day, NucState::NoQueen);
    const double share = noQueen > 0 ? std::clamp((ready - queenless) / noQueen, 0.0, 1.0) : 0;
    const auto turn = [share](Heights& heights) {
        at(heights, Band::Ready) += at(heights, Band::NoQueen) * share;
        at(heights, Band::NoQueen) *= 1 - share;
    };
    turn(free);
    for (auto& heights : held) turn(heights);
}

}  // namespace

YardStack::YardStack(const Outlook& outlook, const YardOutlook& yard)
    : outlook_(outlook), yard_(yard) {
    for (const auto& block : yard.blocks) {
        const auto* batch = outlook.find(block.batch);
        blocks_.push_back({&block, batch ? &batch->timeline : nullptr, {}});
    }
    givePlaces();
}

void YardStack::givePlaces() {
    const auto count = static_cast<std::size_t>(std::max(yard_.mostSides, 0));
    std::vector<Day> freeFrom(count, kFirstDay);
    for (auto& block : blocks_) {
        auto wanted = block.block->cells;
        for (std::size_t place = 0; place < count && wanted > 0; ++place) {
            if (freeFrom[place] > block.block->days.first) continue;
            freeFrom[place] = block.block->days.last + Days{1};
            block.places.push_back(static_cast<int>(place));
            --wanted;
        }
    }
}

std::vector<BandRun> YardStack::on(Day day) const {
    const auto index = (day - outlook_.season.first).count();
    std::vector<BandRun> runs;
    if (index < 0 || index >= static_cast<int>(yard_.days.size())) return runs;
    const auto& yardDay = yard_.days[static_cast<std::size_t>(index)];

    std::vector<const Block*> here;
    for (const auto& block : blocks_)
        if (block.block->days.contains(day)) here.push_back(&block);
    std::vector<Heights> held(here.size(), Heights{});
    Heights free{};
    for (const auto& [state, band] : kHeld) {
        const double total = countOf(yardDay, state);
        double claims = 0;
        for (const auto* block : here) claims += claim(*block->block, block->timeline, day, state);
        for (std::size_t i = 0; i < here.size(); ++i)
            at(held[i], band) =
                total * claim(*here[i]->block, here[i]->timeline, day, state) / claims;
        if (here.empty()) at(free, band) = total;
    }
    at(free, Band::Spent) = countOf(yardDay, NucState::Spent);
    at(free, Band::NotStocked) = countOf(yardDay, NucState::NotStocked);
    splitReady(yardDay, free, held);

    std::vector<bool> taken(static_cast<std::size_t>(std::max<int>(yardDay.sides, 0)), false);
    std::vector<std::pair<double, double>> gaps;
    std::vector<std::pair<std::size_t, std::pair<Band, double>>> spilled;
    for (std::size_t i = 0; i < here.size(); ++i) {
        std::vector<int> places;
        for (const int place : here[i]->places)
            if (place < yardDay.sides) {
                places.push_back(place);
                taken[static_cast<std::size_t>(place)] = true;
            }
        Pourer pourer(gapsOf(places), runs);
        for (std::size_t band = 0; band < kBandCount; ++band) {
            pourer.pour(static_cast<Band>(band), held[i][band], here[i]->block->batch);
            if (pourer.spill() > kNothing)
                spilled.push_back({i, {static_cast<Band>(band), pourer.spill()}});
        }
        for (const auto& gap : pourer.rest()) gaps.push_back(gap);
    }
    std::vector<int> open;
    for (std::size_t place = 0; place < taken.size(); ++place)
        if (!taken[place]) open.push_back(static_cast<int>(place));
    for (const auto& gap : gapsOf(open)) gaps.push_back(gap);
    std::sort(gaps.begin(), gaps.end());

    Pourer pourer(std::move(gaps), runs);
    for (const auto& [i, part] : spilled)
        pourer.pour(part.first, part.second, here[i]->block->batch);
    for (std::size_t band = 0; band < kBandCount; ++band)
        pourer.pour(static_cast<Band>(band), free[band], std::nullopt);
    std::sort(runs.begin(), runs.end(),
              [](const BandRun& a, const BandRun& b) { return a.from < b.from; });
    return runs;
}

}  // namespace tenthday
