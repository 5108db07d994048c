/// @file named_rows.h  Rows of a table that pasted lines are meant for, found by what names them.
#pragma once
#include <QStringList>
#include <map>
#include <optional>
#include <vector>

namespace tenthday {

/// What a pasted line says of the row it is meant for.
struct NamedLine {
    QStringList name;
    QString number = {};  ///< of the row, as NamedRows counts them; empty: the name alone counts
};

/// The row a line is meant for, or why there is none.
struct RowOfLine {
    std::optional<int> row = {};
    QString why = {};
};

/// Spaces make no difference, upper or lower case only where rows differ in nothing else. Where
/// rows share a name, the number of the row decides; lines without one are put beside them in their
/// order, but only where there is a line for each: which of them is meant is not guessed.
class NamedRows {
public:
    /// @return the number of the row, from 1
    int add(const QStringList& name, int row);
    [[nodiscard]] std::vector<RowOfLine> rowsOf(const std::vector<NamedLine>& lines) const;

private:
    struct Row {
        QString name;
        int row = 0;
    };
    class Search;

    std::vector<Row> rows_;
};

}  // namespace tenthday
