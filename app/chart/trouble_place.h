/// @file trouble_place.h  Where on the chart stands what a trouble is about.
#pragma once
#include "chart/chart_item.h"
#include "chart/chart_options.h"

namespace tenthday {

/// A kind of place, and what of it is known.
struct TroublePlace {
    Hit hit = Hit::None;
    Id<Batch> batch{};
    Id<Builder> builder{};
    Id<Yard> yard{};
    std::optional<Day> day{};

    [[nodiscard]] bool is(const TargetKey& key) const;
    /// Its lane, where that can be folded.
    [[nodiscard]] std::optional<LaneName> lane() const;
};

/// The batch's cells in the builder, else in any; the yard; the cells day; Hit::None where nothing
/// of it is on the chart.
[[nodiscard]] TroublePlace placeOf(const Finding& finding);
/// @param trouble  a Hit::Trouble; a late batch stands in its yards
[[nodiscard]] TroublePlace placeOf(const Outlook& outlook, const TargetKey& trouble);

}  // namespace tenthday
