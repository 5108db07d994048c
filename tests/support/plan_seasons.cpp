#include "support/plan_seasons.h"

#include <algorithm>
#include <cmath>

namespace tenthday::test {
namespace {

/// Numbers that look random and are the same everywhere.
class Dice {
public:
    explicit Dice(std::uint32_t seed) : state_(seed * 2654435761U + 12345U) {}
    std::int32_t roll(std::int32_t from, std::int32_t to) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        const auto range = static_cast<std::uint64_t>(to - from + 1);
        return from + static_cast<std::int32_t>((state_ >> 33U) % range);
    }

private:
    std::uint64_t state_;
};

constexpr std::int32_t kCells = 10;   // ripe cells come out so many days after the graft
constexpr std::int32_t kHold = 28;    // and hold a nuc so long
constexpr std::int32_t kRhythm = 10;  // of a builder
constexpr std::int32_t kRoom = 32;    // grafts of a builder
constexpr double kRipe = 0.7;         // cells of a graft
constexpr double kGood = 0.64;        // queens of a cell

void addPools(PlanProblem& problem, const SeasonSize& size, Dice& dice) {
    const auto days = static_cast<std::size_t>(problem.horizon);
    // One is taken for a while, the others are alike.
    problem.pools.push_back({std::vector<std::int32_t>(days, size.builders - 1)});
    PlanProblem::Pool taken{std::vector<std::int32_t>(days, 1)};
    const auto from = dice.roll(0, size.days / 2);
    for (auto day = from; day < from + kRhythm; ++day)
        taken.standing[static_cast<std::size_t>(day)] = 0;
    problem.pools.push_back(std::move(taken));
}

void addOptions(PlanProblem& problem, const SeasonSize& size) {
    for (std::int32_t day = 0; day < size.days; day += size.every) {
        PlanProblem::Option option;
        option.day = day;
        for (std::size_t pool = 0; pool < problem.pools.size(); ++pool) {
            if (option.steps.empty()) option.steps.emplace_back();
            option.steps.front().push_back({pool, day, day + kRhythm - 1, kRoom, kRipe});
        }
        option.cellsDay = day + kCells;
        option.outDay = day + kCells + 2;
        // Early in the season weather keeps queens back.
        const auto late = std::max(0, 6 - day / 5);
        option.ready = day + kCells + kHold + late;
        option.lastHeld = option.ready;
        option.queensPerCell = kGood;
        option.virginsPerCell = 0.88;
        option.yards = {0};
        for (std::size_t line = 0; line < problem.lines; ++line)
            if (line == 0 || (day / 20) % 2 == 0 || line % 2 == 1) option.lines.push_back(line);
        problem.options.push_back(std::move(option));
    }
}

PlanProblem::Demand order(const PlanProblem& problem, const SeasonSize& size, Dice& dice,
                          std::int32_t share) {
    PlanProblem::Demand demand;
    demand.wanted = std::max(1, dice.roll(share / 2, share * 3 / 2));
    demand.weight = dice.roll(1, 3);
    demand.due = dice.roll(kCells + kHold + size.days / 4, problem.horizon - 2);
    if (problem.lines > 1 && dice.roll(0, 2) == 0)
        demand.line =
            static_cast<std::size_t>(dice.roll(1, static_cast<std::int32_t>(problem.lines) - 1));
    demand.proven = dice.roll(0, 4) == 0;
    if (dice.roll(0, 6) == 0) {
        demand.wants = PlanProblem::Wants::RipeCells;
        demand.proven = false;
        demand.wanted = std::max(1, demand.wanted / 3);
        demand.due = kCells + dice.roll(0, size.days - 1);
        for (auto day = demand.due - 3; day <= demand.due; ++day) demand.goDays.push_back(day);
        demand.inParts = dice.roll(0, 1) == 0;
    }
    return demand;
}

}  // namespace

PlanProblem madeUpSeason(std::uint32_t number, const SeasonSize& size) {
    Dice dice(number);
    PlanProblem problem;
    problem.horizon = size.days + kCells + kHold + 12;
    problem.lines = static_cast<std::size_t>(size.lines);
    addPools(problem, size, dice);
    const auto days = static_cast<std::size_t>(problem.horizon);
    PlanProblem::YardClass yard{std::vector<std::int32_t>(days, size.nucs), true};
    const auto held = dice.roll(0, size.nucs / 3);
    for (std::int32_t day = 0; day < dice.roll(5, 30); ++day)
        yard.nucs[static_cast<std::size_t>(day)] -= held;
    problem.yards.push_back(std::move(yard));
    addOptions(problem, size);
    const double rounds = 1 + size.days / static_cast<double>(kHold + 1);
    const double byNucs = size.nucs * rounds * kGood;
    const double byBuilders = size.builders * (1 + size.days / kRhythm) * kRoom * kRipe * kGood;
    const double all = std::min(byNucs, byBuilders) * size.plenty * 0.6;
    const auto share = std::max(2, static_cast<std::int32_t>(all / size.orders));
    for (std::int32_t i = 0; i < size.orders; ++i)
        problem.demands.push_back(order(problem, size, dice, share));
    std::stable_sort(problem.demands.begin(), problem.demands.end(),
                     [](const auto& a, const auto& b) { return a.due < b.due; });
    for (std::int32_t i = 0; i < dice.roll(0, 3); ++i)
        problem.sources.push_back({static_cast<std::size_t>(dice.roll(0, size.lines - 1)),
                                   dice.roll(0, 1) == 0, dice.roll(1, share) * 0.5,
                                   dice.roll(5, problem.horizon - 5)});
    std::stable_sort(problem.sources.begin(), problem.sources.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
    return problem;
}

}  // namespace tenthday::test
