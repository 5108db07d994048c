/// @file queen_source_text.h  Where queens come from that no batch of the season gives.
#pragma once
#include <QString>

namespace tenthday::order_text {

[[nodiscard]] QString boughtIn();
[[nodiscard]] QString earlierSeason();

}  // namespace tenthday::order_text
