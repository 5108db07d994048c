/// @file column_fit.h  All columns of a list in sight, as long as that can be.
#pragma once
#include <vector>

class QTableView;

namespace tenthday {

/// What a column asks for, px.
struct ColumnWish {
    int least = 0;   ///< it never has less
    int wanted = 0;  ///< all of its words
};

/// The widest a column may be so that all of them have room; none is asked to have less than its
/// least. Wide columns give way before narrow ones.
/// @param narrowest  px; no column is cut below it, even where there is no room then
[[nodiscard]] int roomOfColumns(const std::vector<ColumnWish>& columns, int width, int narrowest);

/// px that all columns of a list take with all of their words, whatever room they have.
[[nodiscard]] int widthOfColumns(const QTableView& table);

/// Where a list's columns are wider than its place, first there is less air, then heads break into
/// two lines, then the widest cells are cut short. Days, numbers and columns with a delegate of
/// their own stay whole.
void fitColumns(QTableView& table);

}  // namespace tenthday
