/// @file plan_problem.h  A season to be planned, in plain numbers: nothing of a book, so that
/// seasons can be made up as well as read. Days count from the first day of the horizon, 0.
#pragma once
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace tenthday {

struct PlanProblem {
    /// Builders that are alike and stand free. Where some are taken for a while, each is a pool of
    /// its own: so counts by day are enough, whole stays always find a builder.
    struct Pool {
        std::vector<std::int32_t> standing;  ///< by day of the horizon
    };
    /// One builder for one step of a method.
    struct PoolUse {
        std::size_t pool = 0;
        std::int32_t from = 0;  ///< first day on which no other batch can come
        std::int32_t until =
            0;                  ///< last such day, rest included; below `from`: it takes any number
        std::int32_t room = 0;  ///< most grafts whose cells it takes at that step
        double ripe = 0;        ///< ripe cells of one graft; of the first step only
    };
    /// A batch that could be: one method on one day.
    struct Option {
        std::int32_t day = 0;
        std::size_t method = 0;
        std::vector<std::vector<PoolUse>> steps;  ///< by step, the pools that could take it
        std::int32_t cellsDay = 0;
        std::int32_t outDay = 0;         ///< virgins are out
        std::int32_t lastHeld = 0;       ///< last day on which its nucs take no other cell
        std::int32_t ready = 0;          ///< good queens are caught
        bool givesRipe = true;           ///< sealed ones leave the builder, not young ones
        double queensPerCell = 0;        ///< by then, of one ripe cell in a nuc
        double bestPerCell = 0;          ///< in a season whose weather keeps none back; 0: no more
        double virginsPerCell = 0;       ///< of one ripe cell that is caged
        std::vector<std::size_t> yards;  ///< yard classes in which drones serve its virgins
        std::vector<std::size_t> lines;  ///< lines with a breeder queen on that day; 0: any other
    };
    /// Yards in which nucs go alike.
    struct YardClass {
        std::vector<std::int32_t> nucs;  ///< by day of the horizon: could hold a new batch's cell
        bool isBound = true;             ///< false: a book that keeps no nucs
    };
    enum class Wants : std::uint8_t { Queens, RipeCells, Virgins };
    struct Demand {
        Wants wants = Wants::Queens;
        std::optional<std::size_t> line;  ///< none: any
        bool proven = false;
        std::int32_t wanted = 0;  ///< >= 0
        std::int32_t weight = 1;  ///< >= 1
        double sure = 0.5;        ///< chance with which it must be whole, 0..1
        bool isMet = false;       ///< by what is in the book: it only takes its part
        std::int32_t due = 0;     ///< whole by then (queens), or the last day on which it can go
        std::vector<std::int32_t> goDays;  ///< of cells and virgins
        bool inParts = true;               ///< cells and virgins: from several batches
    };
    /// Minutes that work takes: once, the way there with it, and for each piece.
    struct Work {
        double once = 0;
        double each = 0;
    };
    /// What a new batch adds to its days, where hours are limited.
    struct Hours {
        Work graft;                      ///< pieces are grafts
        Work cells;                      ///< out and in; pieces are ripe cells
        Work caught;                     ///< pieces are cells in nucs
        std::vector<std::int32_t> left;  ///< minutes for new batches, by day of the horizon
    };
    /// Queens of batches in the book, expected, or bought in.
    struct Source {
        std::size_t line = 0;
        bool proven = false;
        double count = 0;
        std::int32_t day = 0;
        double best = 0;  ///< `count` in the season that gives most by that day; 0: no more
    };

    std::int32_t horizon = 0;  ///< days
    std::size_t lines = 1;     ///< 0: any line no order asks for
    std::vector<Pool> pools;
    std::vector<Option> options;  ///< by day, then method
    std::vector<YardClass> yards;
    std::vector<Demand> demands;  ///< in the order of filling
    std::vector<Source> sources;
    bool provenQueens = true;  ///< queens of new batches are caught with brood sealed, judged
    std::optional<std::int32_t> mostGraftsADay;
    bool notOnOneBatch = false;
    std::optional<Hours> hours;
};

/// How many days a virgin serves an order after she is out (see cell_orders.h).
inline constexpr std::int32_t kVirginDays = 7;

/// The option's cells or virgins can go to that order, by day.
[[nodiscard]] bool servesCells(const PlanProblem::Option& option,
                               const PlanProblem::Demand& demand);
/// Queens of that line fit the order.
[[nodiscard]] bool fits(const PlanProblem::Demand& demand, std::size_t line, bool proven);
/// Whatever serves `other` serves this too.
[[nodiscard]] bool includes(const PlanProblem::Demand& demand, const PlanProblem::Demand& other);
/// More than this of one order no batch gives where none is to lie on one batch alone.
[[nodiscard]] double mostOfOneBatch(const PlanProblem::Demand& demand);

/// Some seasons' weather gives more queens than the mean of them all.
[[nodiscard]] bool hangsOnWeather(const PlanProblem& problem);
/// The problem as no season's weather makes it better. What is short there, is short in a mixture
/// of seasons too; in their mean it need not be: a plan can be sure by its good seasons alone.
[[nodiscard]] PlanProblem inBestSeason(const PlanProblem& problem);

/// A plan of whole grafts.
struct WholeBatch {
    std::size_t option = 0;
    struct Bar {
        std::size_t line = 0;
        std::int32_t grafts = 0;
        std::vector<std::size_t> pools;   ///< by step
        std::vector<std::int32_t> slots;  ///< by step: which builder of the pool, 0 the first
        friend bool operator==(const Bar&, const Bar&) = default;
    };
    std::vector<Bar> bars;
    std::vector<double> nucCells;               ///< by yard class
    std::vector<std::vector<double>> toOrders;  ///< by line, by demand: cells or virgins given
    friend bool operator==(const WholeBatch&, const WholeBatch&) = default;
};
using WholePlan = std::vector<WholeBatch>;

[[nodiscard]] std::int32_t graftsOf(const WholeBatch& batch);
/// Ripe cells expected of all lines.
[[nodiscard]] double ripeOf(const PlanProblem& problem, const WholeBatch& batch);
/// Cells placed in nucs, of all yards.
[[nodiscard]] double placedOf(const WholeBatch& batch);
/// Minutes a plan adds to a day; 0 where hours are not limited.
[[nodiscard]] double minutesOn(const PlanProblem& problem, const WholePlan& plan, std::int32_t day);
/// Ripe cells expected of one line of it.
[[nodiscard]] double ripeOf(const PlanProblem& problem, const WholeBatch& batch, std::size_t line);
/// Of these, expected to go into nucs: those not given to orders for cells and virgins.
[[nodiscard]] double nucCellsOf(const PlanProblem& problem, const WholeBatch& batch,
                                std::size_t line);

}  // namespace tenthday
