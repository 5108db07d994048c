/// @file changed_area.h  Where a picture differs from the one before: only that is painted again.
#pragma once
#include <QRegion>
#include <QSize>
#include <vector>

#include "chart/chart_item.h"

namespace tenthday {

/// Logical px about all that an item may put pixels on, and one or two beyond.
[[nodiscard]] QRectF reachOf(const Item& item);

/// A picture in numbers: of each tile of the page, what is painted on it and in which order. Equal
/// numbers mean equal pixels, in the same colours and type.
class PictureMarks {
public:
    /// @param page  logical px
    PictureMarks(const Layout& layout, QSize page);

    /// All tiles whose numbers differ, in few rectangles; all of the page where the ground does, or
    /// where it is of another size.
    [[nodiscard]] QRegion changedSince(const PictureMarks& before) const;

private:
    void add(const Item& item, size_t mark);
    [[nodiscard]] std::size_t placeOf(int row, int column) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
               static_cast<std::size_t>(column);
    }

    QSize page_;
    int columns_;
    int rows_;
    size_t ground_ = 0;
    std::vector<size_t> tiles_;  ///< row by row
};

}  // namespace tenthday
