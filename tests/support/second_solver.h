/// @file second_solver.h  GLPK, to check the solver's answers by. A test's only.
#pragma once
#include "solver/solve.h"

namespace tenthday::test {

/// The same program solved by GLPK: branch and cut, to the end or to the seconds.
[[nodiscard]] Solved solveByGlpk(const LinearProgram& program, const SolveOptions& options = {});

}  // namespace tenthday::test
