/// @file solve.h  The small door behind which the solver stands: a program in, an answer out.
/// Nothing of the solver shows outside this room.
#pragma once
#include <cstdint>
#include <functional>
#include <optional>

#include "solver/linear_program.h"

namespace tenthday {

enum class SolveStatus : std::uint8_t {
    Proven,      ///< no answer is better by more than the gap asked for
    Infeasible,  ///< proven that there is none
    Stopped,     ///< told to stop, or a limit reached; `values` hold the best found, if any
    Failed,      ///< the solver gave an answer that does not hold, and gave none that does
};

struct SolveOptions {
    double gap = 0;              ///< of the cost, absolute: good enough, >= 0
    double gapShare = 0;         ///< of the cost, as a share: good enough too, 0..1
    std::int32_t nodes = 20000;  ///< most nodes of the search; the same on every machine
    std::optional<double> seconds;
    /// An answer known to hold: the search begins with it.
    std::vector<double> start;
    /// Best cost found so far, if any, and what no cost can be below; false: stop. Asked often.
    std::function<bool(std::optional<double> best, double bound)> goOn;
};

struct Solved {
    SolveStatus status = SolveStatus::Failed;
    std::vector<double> values;  ///< empty where none was found; whole numbers are whole
    double cost = 0;             ///< of the values
    double bound = -kUnbounded;  ///< no answer costs less
    double seconds = 0;          ///< it took so long
};

/// Least cost. Every answer is checked against the program before it is given. The same program
/// with the same options, without seconds, gives the same answer.
[[nodiscard]] Solved solve(const LinearProgram& program, const SolveOptions& options = {});

}  // namespace tenthday
