/// @file plan_model.h  A season to be planned as a linear program, aim by aim.
///
/// Days, holds and rates of each option are known beforehand, so all is linear. Whole numbers are
/// the graft days, the builders taken and what is short; grafts, cells and queens are continuous
/// (whole ones make the proof hopeless; they are repaired afterwards). Queens go by the days on
/// which orders fall due, not batch by batch: an order that is due earlier takes none of the later
/// ones' days. As in the season's supply an order keeps its place: what it lacks on its day stays
/// owed and goes before orders due later.
#pragma once
#include <map>
#include <span>
#include <tuple>
#include <vector>

#include "planning/plan_problem.h"
#include "solver/linear_program.h"

namespace tenthday {

/// In the order in which they are met; each holds while the next is sought.
enum class PlanAim : std::uint8_t {
    Short,      ///< sum of weight times what orders lack, margins included
    GraftDays,  ///< days on which is grafted
    Grafts,     ///< grafts, later ones costing up to a tenth more
};

/// A demand for queens is not sure enough with so many cells of a plan; it is where some batch
/// gives more.
struct PlanCut {
    std::size_t demand = 0;
    std::map<std::size_t, std::vector<double>> cells;  ///< by option used: in nucs, by line
};

class PlanModel {
public:
    /// @param margins  by demand: what is to be there beyond what it and those before it want;
    ///                 below 0: less does
    /// @param own      by demand of a line or of proven queens: the same of those that fit it
    ///                 alone; empty: by the numbers' roots, as numbers spread
    PlanModel(const PlanProblem& problem, const std::vector<double>& margins,
              const std::vector<PlanCut>& cuts = {}, const std::vector<double>& own = {});

    /// The program with the costs of one aim.
    [[nodiscard]] LinearProgram forAim(PlanAim aim) const;
    /// From now on the aim's cost is no more than that.
    void hold(PlanAim aim, double most);
    /// What is short is settled: so many graft days are needed at the least, by what a day can
    /// give. @param weighed  sum of weight times what is short
    void addDayCounts(double weighed);

    [[nodiscard]] std::int32_t shortOf(const std::vector<double>& values, std::size_t demand) const;
    /// Grafts, cells and orders of each option; not whole yet.
    struct Load {
        std::size_t option = 0;
        struct Bar {
            std::size_t pool = 0;
            std::size_t line = 0;
            double grafts = 0;
        };
        std::vector<Bar> first;                            ///< where they are started
        std::vector<std::map<std::size_t, double>> later;  ///< grafts by step after, by pool
        std::vector<std::vector<std::int32_t>> taken;  ///< builders by step, by pool of the step
        std::vector<double> nucCells;                  ///< by yard class
        std::vector<std::vector<double>> toOrders;     ///< by line, by demand
    };
    [[nodiscard]] std::vector<Load> loadsOf(const std::vector<double>& values) const;

    [[nodiscard]] const PlanProblem& problem() const { return problem_; }

private:
    struct OptionColumns {
        std::vector<std::vector<std::size_t>>
            start;  ///< by pool of the first step, by line of the option
        std::vector<std::vector<std::size_t>> later;  ///< by step after the first, by its pools
        std::vector<std::vector<std::size_t>> taken;  ///< by step, by pool: builders
        std::vector<std::size_t> inNucs;              ///< by line of the option
        std::vector<std::size_t> byYard;              ///< by yard of the option
        std::vector<std::vector<std::pair<std::size_t, std::size_t>>>
            given;  ///< by line: demand, column
    };
    void addDays();
    /// How many graft days fall into a span of days, into its halves, and so on: settled from the
    /// whole season down. One day more or less says little; whether three or four of them lie in
    /// spring says much, and the proof is many times shorter.
    void addSpan(std::span<const std::size_t> days);
    void addOption(std::size_t at);
    void addBuilders(std::size_t at);
    void addCells(std::size_t at);
    void addPools();
    void addHours();
    /// 1 where the option is grafted at all.
    [[nodiscard]] std::size_t usedColumn(std::size_t option);
    void addNucs();
    void addDemands(const std::vector<double>& own);
    void addFlows();
    void addSum(std::size_t demand, bool all, double margin);
    /// What of its margin queens are to have that fit it.
    [[nodiscard]] double ownMargin(std::size_t demand) const;
    void addCut(const PlanCut& cut);
    void addCellDemand(std::size_t demand, double margin);
    [[nodiscard]] std::size_t bucketOf(std::size_t option) const;
    /// Builders that are there on all days of the use.
    [[nodiscard]] std::int32_t standingFor(const PlanProblem::PoolUse& use) const;
    [[nodiscard]] double mostGrafts(const PlanProblem::Option& option) const;
    [[nodiscard]] double mostQueens(std::int32_t day, const PlanProblem::Demand& demand) const;

    const PlanProblem& problem_;
    LinearProgram program_;
    std::map<std::int32_t, std::size_t> days_;  ///< graft day to its column
    std::vector<OptionColumns> options_;
    std::vector<std::size_t> short_;  ///< by demand
    std::vector<double> margins_;
    std::vector<double> own_;         ///< margins of those that fit, of demands of a line or proven
    std::vector<std::int32_t> dues_;  ///< different due days of demands for queens, rising
};

}  // namespace tenthday
