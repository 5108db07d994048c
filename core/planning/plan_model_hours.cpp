// Hours of work a day as a limit of a plan.
#include <algorithm>

#include "planning/plan_model.h"

namespace tenthday {
namespace {

/// Pieces that whole grafts and whole cells may be more than what the solver says.
constexpr double kRoundedUp = 2;

}  // namespace

std::size_t PlanModel::usedColumn(std::size_t at) {
    const auto& option = problem_.options[at];
    const auto day = days_.at(option.day);
    const auto others = std::count_if(problem_.options.begin(), problem_.options.end(),
                                      [&](const auto& each) { return each.day == option.day; });
    if (others == 1) return day;
    const auto used = program_.addColumn({0, 1, 0, true});
    LinearProgram::Row grafts{-kUnbounded, 0, {{used, -mostGrafts(option)}}};
    for (const auto& lines : options_[at].start)
        for (const auto start : lines) grafts.terms.push_back({start, 1});
    program_.addRow(std::move(grafts));
    program_.addRow({-kUnbounded, 0, {{used, 1}, {day, -1}}});
    return used;
}

/// All that new batches bring to a day takes no more than is left of it.
void PlanModel::addHours() {
    if (!problem_.hours) return;
    std::map<std::int32_t, std::map<std::size_t, double>> days;  // day, column, minutes
    for (std::size_t i = 0; i < options_.size(); ++i) {
        const auto& option = problem_.options[i];
        const auto& hours = *problem_.hours;
        const auto used = usedColumn(i);
        const auto begin = [&](std::int32_t on, const PlanProblem::Work& work) -> auto& {
            auto& day = days[on];
            day[used] += work.once + kRoundedUp * work.each;
            return day;
        };
        auto& graft = begin(option.day, hours.graft);
        for (const auto& lines : options_[i].start)
            for (const auto start : lines) graft[start] += hours.graft.each;
        auto& cells = begin(option.cellsDay, hours.cells);
        for (std::size_t p = 0; p < options_[i].start.size(); ++p)
            for (const auto start : options_[i].start[p])
                cells[start] += hours.cells.each * option.steps.front()[p].ripe;
        auto& caught = begin(option.ready, hours.caught);
        for (const auto inNucs : options_[i].inNucs) caught[inNucs] += hours.caught.each;
    }
    for (const auto& [day, minutes] : days) {
        LinearProgram::Row row;
        row.upper = std::max(problem_.hours->left[static_cast<std::size_t>(day)], 0);
        for (const auto& [column, factor] : minutes)
            if (factor != 0) row.terms.push_back({column, factor});
        if (!row.terms.empty()) program_.addRow(std::move(row));
    }
}

}  // namespace tenthday
