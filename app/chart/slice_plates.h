/// @file slice_plates.h  Numbers of slices of a yard that are too low to hold them: each once on a
/// plate over the slice, over the days on which it stays the same.
#pragma once
#include "chart/yard_picture.h"

namespace tenthday {

/// What a band counts, column by column.
struct BandNumbers {
    Band band{};
    std::vector<QString> texts;  ///< empty where there is nothing to count
    std::vector<bool> written;   ///< stands in the band already
};

/// @param taken  what is written in the yard: plates keep clear of it, and are added
void laySlicePlates(const LaneInput& input, const YardPicture& picture, const BandNumbers& numbers,
                    std::vector<QRectF>& taken, Sheet& sheet);

}  // namespace tenthday
