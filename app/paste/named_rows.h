/// @file named_rows.h  Rows of a table that pasted lines are meant for, found by what names them.
#pragma once
#include <QStringList>
#include <map>
#include <optional>
#include <vector>

namespace tenthday {

/// Spaces and upper or lower case make no difference. Rows with one name are told apart by their
/// order alone: the second line of a name is meant for the second row.
class NamedRows {
public:
    void add(const QStringList& name, int row);
    /// The next row of the name that no line was meant for yet; none where there is no more.
    [[nodiscard]] std::optional<int> take(const QStringList& name);
    /// What is wrong with a line for which there was none.
    [[nodiscard]] QString whyNone(const QStringList& name) const;

private:
    struct Rows {
        std::vector<int> rows;
        std::size_t taken = 0;
    };
    [[nodiscard]] static QString keyOf(const QStringList& name);

    std::map<QString, Rows> rows_;
};

}  // namespace tenthday
