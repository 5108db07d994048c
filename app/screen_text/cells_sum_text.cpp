#include "screen_text/cells_sum_text.h"

#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/words.h"

namespace tenthday::cells_sum_text {

QString ripe(int ripe, int toNucs, bool brief) {
    if (ripe == toNucs) return brief ? chart_text::number(ripe) : chart_text::cells(ripe);
    const auto some = chart_text::number(toNucs);
    const auto all = chart_text::number(ripe);
    return brief ? Words::tr("%1 of %2").arg(some, all)
                 : Words::tr("%1 of %Ln cell(s)", nullptr, ripe).arg(some);
}

QString left(int left, int likely) {
    if (left >= 0 || likely <= 0) return chart_text::left(left);
    return Words::tr("%1 to %2 too many")
        .arg(chart_text::number(-left - likely), chart_text::number(-left));
}

QString leftInWords(int left, int likely) {
    if (left >= 0) return Words::tr("%Ln nuc(s) left", nullptr, left);
    if (likely <= 0) return Words::tr("%Ln cell(s) too many", nullptr, -left);
    return Words::tr("%1 to %Ln cell(s) too many", nullptr, -left)
        .arg(chart_text::number(-left - likely));
}

QString ofBatches(const QStringList& batches, const QString& left) {
    constexpr int kMostNames = 2;
    const int count = static_cast<int>(batches.size());
    const int named = count <= kMostNames ? count : 1;
    return Words::tr("%1: %2").arg(
        chart_hand_text::batchNames(batches.mid(0, named), count - named), left);
}

}  // namespace tenthday::cells_sum_text
