/// @file cells_sum_text.h  The lines of a cells day's sum in the chart.
#pragma once
#include <QStringList>

namespace tenthday::cells_sum_text {

/// "22 cells"; "20 of 22 cells" where only 20 of them are for nucs, so that the nucs left are what
/// is ready less the first number. In the least room ("22", "20 of 22") without the word.
[[nodiscard]] QString ripe(int ripe, int toNucs, bool brief);

/// "11 left"; "9 too many"; where some nucs are likely to be ready too, "4 to 9 too many".
/// @param likely  whole nucs, 0 and above
[[nodiscard]] QString left(int left, int likely);
/// The same with what they are: "11 nucs left", "4 to 9 cells too many".
[[nodiscard]] QString leftInWords(int left, int likely);

/// "batch 705: 9 too many", of the batches whose cells are ripe that day.
[[nodiscard]] QString ofBatches(const QStringList& batches, const QString& left);

}  // namespace tenthday::cells_sum_text
