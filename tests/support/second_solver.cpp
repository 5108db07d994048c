#include "support/second_solver.h"

#include <glpk.h>

#include <chrono>
#include <cmath>
#include <memory>

namespace tenthday::test {
namespace {

using Problem = std::unique_ptr<glp_prob, decltype(&glp_delete_prob)>;

int boundKind(double lower, double upper) {
    const bool low = lower > -kUnbounded;
    const bool high = upper < kUnbounded;
    if (low && high) return lower == upper ? GLP_FX : GLP_DB;
    if (low) return GLP_LO;
    return high ? GLP_UP : GLP_FR;
}

void load(glp_prob* problem, const LinearProgram& program) {
    glp_set_obj_dir(problem, GLP_MIN);
    glp_add_cols(problem, static_cast<int>(program.columns().size()));
    for (std::size_t i = 0; i < program.columns().size(); ++i) {
        const auto& column = program.columns()[i];
        const int at = static_cast<int>(i) + 1;
        glp_set_col_bnds(problem, at, boundKind(column.lower, column.upper), column.lower,
                         column.upper);
        glp_set_obj_coef(problem, at, column.cost);
        if (column.isWhole) glp_set_col_kind(problem, at, GLP_IV);
    }
    glp_add_rows(problem, static_cast<int>(program.rows().size()));
    for (std::size_t i = 0; i < program.rows().size(); ++i) {
        const auto& row = program.rows()[i];
        std::vector<int> columns{0};
        std::vector<double> factors{0};
        for (const auto& term : row.terms) {
            columns.push_back(static_cast<int>(term.column) + 1);
            factors.push_back(term.factor);
        }
        const int at = static_cast<int>(i) + 1;
        glp_set_row_bnds(problem, at, boundKind(row.lower, row.upper), row.lower, row.upper);
        glp_set_mat_row(problem, at, static_cast<int>(row.terms.size()), columns.data(),
                        factors.data());
    }
}

glp_iocp paramsOf(const SolveOptions& options) {
    glp_iocp params;
    glp_init_iocp(&params);
    params.msg_lev = GLP_MSG_OFF;
    params.presolve = GLP_ON;
    params.mir_cuts = GLP_ON;
    params.gmi_cuts = GLP_ON;
    params.cov_cuts = GLP_ON;
    params.mip_gap = options.gapShare;
    if (options.seconds) params.tm_lim = static_cast<int>(*options.seconds * 1000) + 1;
    return params;
}

}  // namespace

Solved solveByGlpk(const LinearProgram& program, const SolveOptions& options) {
    const auto begun = std::chrono::steady_clock::now();
    glp_term_out(GLP_OFF);
    Solved solved;
    const Problem problem(glp_create_prob(), &glp_delete_prob);
    load(problem.get(), program);
    const auto params = paramsOf(options);
    const int ended = glp_intopt(problem.get(), &params);
    const int status = glp_mip_status(problem.get());
    if (ended == GLP_ENOPFS || ended == GLP_ENODFS || status == GLP_NOFEAS) {
        solved.status = SolveStatus::Infeasible;
    } else if (status == GLP_OPT || status == GLP_FEAS) {
        const bool whole = (status == GLP_OPT && ended == 0) || ended == GLP_EMIPGAP;
        solved.status = whole ? SolveStatus::Proven : SolveStatus::Stopped;
        for (std::size_t i = 0; i < program.columns().size(); ++i) {
            const double value = glp_mip_col_val(problem.get(), static_cast<int>(i) + 1);
            solved.values.push_back(program.columns()[i].isWhole ? std::round(value) : value);
        }
        solved.cost = program.costOf(solved.values);
        solved.bound = whole ? solved.cost : -kUnbounded;
    } else {
        solved.status = SolveStatus::Stopped;
    }
    solved.seconds =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
    return solved;
}

}  // namespace tenthday::test
