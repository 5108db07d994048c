#include "screen_text/nuc_text.h"

#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::nuc_text {

QString head(Day day) { return Words::tr("Nucs on %1 %2").arg(longDay(day), yearNumber(day)); }

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Yard");
        case 1:
            return Words::tr("Nuc");
        case 2:
            return Words::tr("State");
        case 3:
            return Words::tr("Since");
        case 4:
            return Words::tr("For a cell");
        case 5:
            return Words::tr("Ready from");
        case 6:
            return Words::tr("Batch");
        case 7:
            return Words::tr("Chance");
        default:
            return {};
    }
}

QString stockedHead(int part) {
    switch (part) {
        case 0:
            return Words::tr("Stocked: bees (ml)");
        case 1:
            return Words::tr("Stocked: brood frames");
        case 2:
            return Words::tr("Stocked: open brood");
        default:
            return Words::tr("Stocked: from");
    }
}
QString pastedName(Day day) { return Words::tr("stockings of %1").arg(longDay(day)); }

QString percent(double chance) {
    return Words::tr("%1 %").arg(chart_text::number(static_cast<int>(std::lround(chance * 100))));
}

QString ready(const ReadyNumbers& numbers) {
    return Words::tr("%1 ready").arg(chart_text::number(numbers.ready));
}
QString likely(const ReadyNumbers& numbers) {
    return Words::tr("likely %1 more if caught or looked at the day before")
        .arg(chart_text::expected(numbers.likely));
}
QString canStock(const ReadyNumbers& numbers) {
    return Words::tr("%1 can be stocked").arg(chart_text::number(numbers.canStock));
}
QString needsBrood(const ReadyNumbers& numbers) {
    return Words::tr("%Ln need(s) open brood first", nullptr, numbers.needsBrood);
}

QString filter(int entry) {
    switch (entry) {
        case 0:
            return Words::tr("All nucs");
        case 1:
            return Words::tr("Ready");
        case 2:
            return Words::tr("Likely");
        case 3:
            return Words::tr("Can be stocked");
        case 4:
            return Words::tr("Need open brood");
        case 5:
            return Words::tr("Not free");
        default:
            return {};
    }
}

QString find() { return Words::tr("Find a yard, nuc or batch"); }
QString dayBefore() { return Words::tr("The day before (Left)"); }
QString dayAfter() { return Words::tr("The day after (Right)"); }
QString today() { return Words::tr("Today"); }
QString bees() { return Words::tr("Bees"); }
QString millilitres() { return Words::tr(" ml"); }
QString broodFrames() { return Words::tr("Brood frames"); }
QString openBrood() { return Words::tr("with open brood"); }
QString donor() { return Words::tr("Donor yard"); }
QString stock(int nucs, Day day) {
    return Words::tr("Stock %Ln nuc(s) on %1", nullptr, nucs).arg(weekdayAndDay(day));
}
QString chooseNucs() { return Words::tr("Choose the nucs to stock in the table."); }
QString chooseAll() { return Words::tr("Choose all shown"); }
QString yardLine(const QString& yard, const ReadyNumbers& numbers) {
    QStringList parts{ready(numbers)};
    if (numbers.likely >= 0.05)
        parts += Words::tr("likely %1 more").arg(chart_text::expected(numbers.likely));
    if (numbers.canStock > 0) parts += canStock(numbers);
    if (numbers.needsBrood > 0) parts += needsBrood(numbers);
    return Words::tr("%1: %2").arg(yard, parts.join(QStringLiteral(", ")));
}
QString deletedInList() {
    return Words::tr(
        "a stocking is not deleted by empty cells: delete it in the list of stockings");
}
QString noNucs() { return Words::tr("No nuc stands in a yard on this day."); }

QString wintered(const Snapshot& snapshot, const WinteredQueen& queen) {
    if (!queen.queen) return {};
    const auto label = QString::fromStdString(queen.queen->label);
    const auto line = queen.queen->line ? snapshot.find(*queen.queen->line) : nullptr;
    return line ? Words::tr("%1 (%2), wintered").arg(label, QString::fromStdString(line->label))
                : Words::tr("%1, wintered").arg(label);
}

}  // namespace tenthday::nuc_text
