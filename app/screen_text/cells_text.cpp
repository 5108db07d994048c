#include "screen_text/cells_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::cells_text {
namespace {

QString number(int count) { return chart_text::number(count); }

/// A part of the sum.
QString part(CellTarget way, int count) {
    const auto n = number(count);
    switch (way) {
        case CellTarget::Nuc:
            return Words::tr("%1 into nucs").arg(n);
        case CellTarget::Split:
            return Words::tr("%1 into splits").arg(n);
        case CellTarget::Sold:
            return Words::tr("%1 sold").arg(n);
        case CellTarget::Caged:
            return Words::tr("%1 caged").arg(n);
        case CellTarget::Incubator:
            return Words::tr("%1 into the incubator").arg(n);
        case CellTarget::GivenAway:
            return Words::tr("%1 given away").arg(n);
        case CellTarget::Culled:
            return Words::tr("%1 culled").arg(n);
    }
    return {};
}

}  // namespace

QString menuEntry() { return Words::tr("Ce&lls day ..."); }
QString head(Day day) { return Words::tr("Cells day: %1").arg(longDay(day)); }

QString sum(const CellsDraft& draft) {
    QStringList parts;
    for (std::size_t way = 0; way < kTokenCount<CellTarget>; ++way)
        if (const int count = draft.on(static_cast<CellTarget>(way)); count > 0 || way == 0)
            parts += part(static_cast<CellTarget>(way), count);
    const int left = draft.left();
    if (left > 0) parts += Words::tr("%1 without a place yet").arg(number(left));
    const auto all = parts.join(Words::tr(" + "));
    return left < 0 ? Words::tr("%1 ripe, but %2: %3 too many")
                          .arg(number(draft.ripe()), all, number(-left))
                    : Words::tr("%1 ripe = %2").arg(number(draft.ripe()), all);
}

QString noCells(Day day) {
    return Words::tr("No ripe cells come out on %1.").arg(weekdayAndDay(day));
}
QString noCellsAnywhere() {
    return Words::tr("No batch of this season has cells to come out. Plan a batch first (Ctrl+B).");
}

QString ripe() { return Words::tr("Ripe"); }

QString ripeHint(const Outlook& outlook, const BatchCells& cells) {
    const auto* batch = outlook.find(cells.batch);
    if (batch == nullptr) return {};
    const auto& counts = batch->timeline.counts;
    const auto away = cells.onOtherDays == 0
                          ? QString()
                          : u' ' + Words::tr(
                                       "%Ln more cell(s) of this batch have their place on "
                                       "other days.",
                                       nullptr, cells.onOtherDays);
    if (sumOf(cells.caged) > 0)
        return Words::tr(
                   "%1 virgins of this batch wait in cages or in the incubator. Take them out of "
                   "these ways and give them nucs: dates of those nucs run from the day they fly.")
                   .arg(number(sumOf(cells.caged))) +
               away;
    if (cells.wasCounted)
        return Words::tr("%1 ripe cells, as counted. Type another count if it was wrong.")
                   .arg(number(cells.expected)) +
               away;
    return Words::tr(
               "%1 ripe cells are expected of %2 grafts, by the trade numbers for cells started, "
               "sealed and emerging, or by what was counted so far. Type the number once you have "
               "counted.")
               .arg(number(cells.expected), number(static_cast<int>(counts.grafted + 0.5))) +
           away;
}

QString nucsAt(const QString& yard) { return Words::tr("Nucs at %1").arg(yard); }
QString openIn(int ready, int likely) {
    return likely == 0
               ? Words::tr("%1 ready").arg(number(ready))
               : Words::tr("%1 ready, %2 more if caught before").arg(number(ready), number(likely));
}
QString nucsHint() {
    return Words::tr(
        "So many cells go to this yard: the nucs that are ready longest are ticked in the list. "
        "Ready is stocked, queenless long enough, and free until the catch.");
}

QString way(CellTarget way) {
    switch (way) {
        case CellTarget::Nuc:
            return Words::tr("Nucs");
        case CellTarget::Split:
            return Words::tr("Splits");
        case CellTarget::Sold:
            return Words::tr("Sold");
        case CellTarget::Caged:
            return Words::tr("Caged");
        case CellTarget::Incubator:
            return Words::tr("Incubator");
        case CellTarget::GivenAway:
            return Words::tr("Given away");
        case CellTarget::Culled:
            return Words::tr("Culled");
    }
    return {};
}

QString wayHint(CellTarget way) {
    switch (way) {
        case CellTarget::Nuc:
            return nucsHint();
        case CellTarget::Split:
            return Words::tr("Cells for splits and colonies that are no mating nucs.");
        case CellTarget::Sold:
            return Words::tr(
                "Ripe cells for buyers. What may be sold, and with which papers, is a matter of "
                "local rules and the bee inspector.");
        case CellTarget::Caged:
            return Words::tr("Each in a nursery cage: her virgin emerges there and waits.");
        case CellTarget::Incubator:
            return Words::tr("Back into the incubator until there is a place.");
        case CellTarget::GivenAway:
            return Words::tr("To other beekeepers, for nothing. Local rules on moving bees hold.");
        case CellTarget::Culled:
            return Words::tr("Too small, damaged, or more than are needed.");
    }
    return {};
}

QString recorded() { return Words::tr("Recorded"); }
QString recordedHint() {
    return Words::tr("Recorded as done on this day already: this page leaves them as they are.");
}
QString left() { return Words::tr("Left"); }
QString leftWords(int left) {
    if (left == 0) return Words::tr("adds up");
    return left > 0 ? Words::tr("%Ln cell(s) have no place yet", nullptr, left)
                    : Words::tr("%Ln cell(s) too many", nullptr, -left);
}
QString batch(const QString& label) { return Words::tr("Batch %1").arg(label); }
QString field(const QString& line, const QString& batch) {
    return Words::tr("%1, %2").arg(line, batch);
}

QString nucsHead() { return Words::tr("Nucs in walking order"); }
QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Cell");
        case 1:
            return Words::tr("Yard");
        case 2:
            return Words::tr("Nuc");
        case 3:
            return Words::tr("For a cell");
        case 4:
            return Words::tr("Since");
        case 5:
            return Words::tr("Gets");
        default:
            return {};
    }
}
QString fit(const CellsNuc& nuc) {
    switch (nuc.fit) {
        case NucFit::Ready:
            return Words::tr("ready");
        case NucFit::Likely:
            return Words::tr("if caught before");
        case NucFit::NotReady:
            return nuc.why == NotReady::None ? Words::tr("another cell comes too soon")
                                             : chart_text::notReady(nuc.why);
        case NucFit::Held:
            return nuc.why == NotReady::None ? Words::tr("held") : chart_text::notReady(nuc.why);
    }
    return {};
}
QString cellOf(const QString& batch, bool done) {
    return done ? Words::tr("batch %1, done").arg(batch) : Words::tr("batch %1").arg(batch);
}
QString filter(int entry) {
    switch (entry) {
        case 0:
            return Words::tr("Nucs that can take a cell");
        case 1:
            return Words::tr("The placement list");
        case 2:
            return Words::tr("All nucs");
        default:
            return {};
    }
}
QString ticksFor() { return Words::tr("Ticks are cells of"); }
QString tickHint() {
    return Words::tr(
        "Space ticks the chosen nucs; or press on a tick and draw over several. Shift and arrows "
        "choose more.");
}

QString dayBefore() { return Words::tr("The cells day before (Alt+Left)"); }
QString dayAfter() { return Words::tr("The cells day after (Alt+Right)"); }
QString propose() { return Words::tr("P&ropose"); }
QString proposeHint(const WayOrder& order) {
    QStringList ways;
    for (const auto& step : order)
        ways += step.most ? Words::tr("%1 (at most %2)").arg(wayOf(step.way), number(*step.most))
                          : wayOf(step.way);
    const auto rule = Words::tr(
        "Gives the cells that are left a place: the yards their batch names, else as few yards as "
        "can be; there the nucs that are ready longest.");
    return ways.isEmpty()
               ? rule
               : rule + u' ' +
                     Words::tr("The rest, in your order: %1.").arg(ways.join(Words::tr(", then ")));
}
QString clear() { return Words::tr("C&lear"); }
QString order() { return Words::tr("&Order of ways ..."); }
QString print() { return Words::tr("Pr&int the list ..."); }
QString planIt() { return Words::tr("&Plan it"); }
QString planHint() {
    return Words::tr(
        "Keeps the places as planned, instead of what was planned for this day. What is done "
        "stays. Ctrl+Z takes it back.");
}
QString done() { return Words::tr("&Done"); }
QString doneHint() {
    return Words::tr(
        "Records all places as done on this day. It must add up. Ctrl+Z takes it back.");
}
QString close() { return Words::tr("Close"); }
QString leaveDraft() {
    return Words::tr("The places are not kept yet. Shall they be left as they were?");
}

QString refusal(const CellsRefusal& refusal, const QString& batch) {
    const int count = refusal.count;
    switch (refusal.why) {
        case CellsTrouble::TooMany:
            return Words::tr("Batch %1: %Ln cell(s) more than are ripe have a place.", nullptr,
                             count)
                .arg(batch);
        case CellsTrouble::NoPlaceYet:
            return Words::tr(
                       "Batch %1: %Ln cell(s) have no place yet. Count those thrown away as "
                       "culled.",
                       nullptr, count)
                .arg(batch);
        case CellsTrouble::AfterToday:
            return Words::tr("This day is still to come: it can be planned, not recorded.");
        case CellsTrouble::NucHeld:
            return Words::tr(
                       "Another cell or queen is in nuc %1 by record. Enter first what became of "
                       "her.")
                .arg(chart_text::nuc(QString::fromStdString(refusal.side->box->label),
                                     QString::fromStdString(refusal.side->side->side)));
        case CellsTrouble::QueenStays:
            return Words::tr(
                       "Queen %1 stays in nuc %2. Enter first where she is now, or that she is "
                       "lost: Set-up, Queens caught.")
                .arg(QString::fromStdString(refusal.queen),
                     chart_text::nuc(QString::fromStdString(refusal.side->box->label),
                                     QString::fromStdString(refusal.side->side->side)));
        case CellsTrouble::BelowRecord:
            return Words::tr("Batch %1: %Ln cell(s) of this day are recorded, so many were ripe.",
                             nullptr, count)
                .arg(batch);
        case CellsTrouble::VirginsLater:
            return Words::tr(
                       "Batch %1: virgins out of cages are recorded once they are in their nucs: "
                       "press Done.")
                .arg(batch);
    }
    return {};
}
QString virginsWait(const CellsDraft& draft) {
    QStringList parts;
    for (const auto& cells : draft.batches)
        if (sumOf(cells.caged) > 0 && !cells.takesVirgins()) parts += number(sumOf(cells.caged));
    if (parts.isEmpty()) return {};
    return Words::tr(
               "Virgins that wait in cages: %1. Clear takes them out, Propose gives them nucs that "
               "are ready; what is left stays caged.")
        .arg(parts.join(Words::tr(" + ")));
}
QString planned(const CellsDraft& draft) {
    return Words::tr("Planned: %1. Ctrl+Z takes it back.").arg(sum(draft));
}
QString recordedNow(const CellsDraft& draft) {
    return Words::tr("Recorded: %1. Ctrl+Z takes it back.").arg(sum(draft));
}
QString readOnly() { return Words::tr("The book is open for reading only: nothing can be kept."); }

QString orderTitle() { return Words::tr("Order of ways"); }
QString orderExplained() {
    return Words::tr(
        "Where cells go that find no nuc where they were meant to, tried from top to bottom. A "
        "way that is not ticked is not proposed; 0 is as many as there are.");
}
QString wayOf(Way way) {
    switch (way) {
        case Way::OtherYards:
            return Words::tr("nearest ready nucs");
        case Way::Split:
            return Words::tr("splits");
        case Way::Sold:
            return Words::tr("sold");
        case Way::Caged:
            return Words::tr("caged");
        case Way::Incubator:
            return Words::tr("incubator");
        case Way::GivenAway:
            return Words::tr("given away");
        case Way::Culled:
            return Words::tr("culled");
    }
    return {};
}
QString atMost() { return Words::tr("At most"); }
QString asMany() { return Words::tr("all"); }
QString use() { return Words::tr("Way"); }
QString up() { return Words::tr("&Up"); }
QString down() { return Words::tr("Do&wn"); }
QString keep() { return Words::tr("&Keep"); }

QString stop(const QString& yard, int cells) {
    return Words::tr("%1: %2").arg(yard, Words::tr("%Ln cell(s)", nullptr, cells));
}
QString noList() { return Words::tr("No cell has a nuc yet."); }

}  // namespace tenthday::cells_text
