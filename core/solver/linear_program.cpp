#include "solver/linear_program.h"

#include <algorithm>
#include <cmath>

namespace tenthday {

double LinearProgram::costOf(const std::vector<double>& values) const {
    double cost = 0;
    for (std::size_t i = 0; i < columns_.size(); ++i) cost += columns_[i].cost * values[i];
    return cost;
}

bool LinearProgram::isMetBy(const std::vector<double>& values, double tolerance) const {
    if (values.size() != columns_.size()) return false;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const auto& column = columns_[i];
        const double slack = tolerance * (1 + std::abs(values[i]));
        if (!(values[i] >= column.lower - slack && values[i] <= column.upper + slack)) return false;
        if (column.isWhole && std::abs(values[i] - std::round(values[i])) > slack) return false;
    }
    return std::all_of(rows_.begin(), rows_.end(), [&](const Row& row) {
        double sum = 0;
        double size = 1;
        for (const auto& term : row.terms) {
            sum += term.factor * values[term.column];
            size = std::max(size, std::abs(term.factor * values[term.column]));
        }
        return sum >= row.lower - tolerance * size && sum <= row.upper + tolerance * size;
    });
}

}  // namespace tenthday
