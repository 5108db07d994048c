/// @file kept_folds.h  What of the chart is folded, kept between runs of the program.
#pragma once
#include "chart/season_chart.h"
#include "options/settings.h"

namespace tenthday {

template <>
struct TokensOf<LaneName> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"flying_days", "builders", "cells_days", "queens", "promise"});
};

/// Folds as they were left last, and keeps what is folded from now on. Both must live as long as
/// the chart.
void keepFolds(SeasonChart& chart, Settings& settings);

}  // namespace tenthday
