#include "screen_text/cells_sum_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/words.h"

namespace tenthday::cells_sum_text {

QString ripe(int ripe, int toNucs, bool brief) {
    if (ripe == toNucs) return brief ? chart_text::number(ripe) : chart_text::ripe(ripe);
    const auto some = chart_text::number(toNucs);
    const auto all = chart_text::number(ripe);
    return brief ? Words::tr("%1 of %2").arg(some, all) : Words::tr("%1 of %2 ripe").arg(some, all);
}

}  // namespace tenthday::cells_sum_text
