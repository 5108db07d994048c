/// @file linear_program.h  A linear program with some whole-number unknowns, as plain data.
#pragma once
#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace tenthday {

/// No bound.
inline constexpr double kUnbounded = std::numeric_limits<double>::infinity();

/// Least cost subject to rows. Columns and rows are named by the order in which they are added.
class LinearProgram {
public:
    struct Column {
        double lower = 0;
        double upper = kUnbounded;
        double cost = 0;
        bool isWhole = false;
        std::int32_t rank = 0;  ///< of whole ones: those of a higher rank are settled first
    };
    struct Term {
        std::size_t column;
        double factor;
    };
    /// lower <= sum of terms <= upper
    struct Row {
        double lower = -kUnbounded;
        double upper = kUnbounded;
        std::vector<Term> terms;  ///< each column once at the most
    };

    std::size_t addColumn(const Column& column) {
        columns_.push_back(column);
        return columns_.size() - 1;
    }
    std::size_t addRow(Row row) {
        rows_.push_back(std::move(row));
        return rows_.size() - 1;
    }
    [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] Column& column(std::size_t at) { return columns_[at]; }
    [[nodiscard]] Row& row(std::size_t at) { return rows_[at]; }

    /// Sum of cost times value.
    [[nodiscard]] double costOf(const std::vector<double>& values) const;
    /// Bounds, rows and whole numbers hold, to a tolerance that grows with the size of the terms.
    [[nodiscard]] bool isMetBy(const std::vector<double>& values, double tolerance = 1e-5) const;

private:
    std::vector<Column> columns_;
    std::vector<Row> rows_;
};

}  // namespace tenthday
