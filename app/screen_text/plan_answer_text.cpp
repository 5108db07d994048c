/// The words of a season's plan once it is there: status, proposals, sums.

#include "screen_text/batch_text.h"
#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_text.h"
#include "screen_text/plan_text.h"
#include "screen_text/sheet_text.h"
#include "screen_text/words.h"

namespace tenthday::plan_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

template <class Row>
QString labelOf(const Outlook& outlook, Id<Row> id) {
    const auto row = outlook.snapshot.find(id);
    return row ? plain(row->label) : QString();
}

QString ripeOf(const Facts& facts) {
    return Words::tr("Of the grafts %1 are started, of these %2 are sealed.")
        .arg(because::share(facts, Fact::Accepted), because::share(facts, Fact::Sealed));
}

QString queensOf(const Facts& facts) {
    return Words::tr(
               "Of the ripe cells %1 emerge, %2 of these mate in fair weather, %3 of these are "
               "judged good; weather takes its share besides.")
        .arg(because::share(facts, Fact::Emerged), because::share(facts, Fact::Mated),
             because::share(facts, Fact::JudgedGood));
}

/// How near a plan is to the best there can be.
QString nearness(const PlanAnswer& answer) {
    if (answer.leastGraftDays == 0)
        return Words::tr("That fewer graft days do not do is not proven.");
    if (answer.graftDaysWithin > 0)
        return Words::tr("It is proven within %1: so sure with fewer was not found.")
            .arg(Words::tr("%Ln graft day(s)", nullptr, answer.graftDaysWithin));
    if (answer.graftsWithin > 0)
        return Words::tr("Fewer graft days do not do; grafts are proven within %1.")
            .arg(Words::tr("%Ln graft(s)", nullptr, answer.graftsWithin));
    return Words::tr("Fewer graft days do not do, nor do fewer grafts.");
}

/// Each once, in their order.
void addNew(QStringList& names, const QString& name) {
    if (!name.isEmpty() && !names.contains(name)) names += name;
}

}  // namespace

QString status(const Outlook& outlook, const PlanAnswer& answer) {
    const auto graftDays = Words::tr("%Ln graft day(s)", nullptr, answer.after.graftDays);
    switch (answer.status) {
        case PlanStatus::Proven:
            return (answer.leastGraftDays > 0
                        ? Words::tr("Proven: every order is met, with %1 in all. %2")
                        : Words::tr("Every order is met, with %1 in all. %2"))
                .arg(graftDays, nearness(answer));
        case PlanStatus::Short: {
            const auto orders =
                Words::tr("%Ln order(s)", nullptr, static_cast<int>(answer.shortOf.size()));
            if (answer.batches.empty())
                return answer.isShortProven
                           ? Words::tr("Not possible: no graft on these days helps. Short: %1.")
                                 .arg(orders)
                           : Words::tr("No graft on these days was found to help. Short: %1.")
                                 .arg(orders);
            return answer.isShortProven
                       ? Words::tr(
                             "Not possible: whatever is grafted on these days, not every order is "
                             "met. This plan leaves %1 short.")
                             .arg(orders)
                       : Words::tr(
                             "Not every order is met: this plan leaves %1 short, and asking for "
                             "more grafts brought no more. That no plan does better is not proven.")
                             .arg(orders);
        }
        case PlanStatus::Stopped:
            return Words::tr("Stopped: the best plan found so far; nothing is proven of it.");
        case PlanStatus::Nothing:
            return outlook.snapshot.all<Order>().size() == 0
                       ? Words::tr("Nothing is owed: there are no orders.")
                       : Words::tr(
                             "Nothing to plan: what is owed comes from the batches that are "
                             "in the book.");
        case PlanStatus::Checked:
            return Words::tr("Looked at again as it stands now; nothing was planned anew.");
    }
    return {};
}

QString statusBecause() {
    return Words::tr(
        "Which orders are met is told by their chances: over all possible seasons, with the luck "
        "that a batch's cells share.\n"
        "What is proven is proven of plans as they are reckoned here: batches on the days asked "
        "for, by the book's methods, and no more cells planned than there are nucs. The proof lets "
        "each cell go by itself, in the best of the possible seasons; shared luck and other "
        "weather only ask for more.");
}

QStringList gaps(const Outlook& outlook, const PlanAnswer& answer) {
    QStringList lines;
    for (const auto& each : answer.shortOf)
        if (const auto order = outlook.snapshot.find(each.order))
            lines += Words::tr("%1: %2 short of %3 %4, due %5 (%6 sure, must be %7)")
                         .arg(plain(order->label), chart_text::number(each.lacking),
                              chart_text::number(order->count), order_text::kind(order->kind),
                              weekdayAndDay(order->due), order_text::chance(each.reached),
                              order_text::chance(each.wanted));
    for (const auto& day : answer.longDays)
        lines += Words::tr("▲ %1 takes %2 with all that is to be done, longer than you asked for")
                     .arg(weekdayAndDay(day.day), sheet_text::hours(day.minutes));
    return lines;
}

QStringList whatNext() {
    return {
        Words::tr("Queens of these grafts are ready only after the orders are due, or no builder "
                  "or nucs are free for them."),
        Words::tr("What to do: find ways to fix it, let grafts begin earlier, or give these "
                  "orders a later due day.")};
}

QString proposals() { return Words::tr("Proposed batches"); }
QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Graft");
        case 1:
            return Words::tr("Breeder queen");
        case 2:
            return Words::tr("Builder");
        case 3:
            return Words::tr("Grafts");
        case 4:
            return Words::tr("Ripe cells");
        case 5:
            return Words::tr("Cells out");
        case 6:
            return Words::tr("Where to");
        case 7:
            return Words::tr("Queens ready");
        default:
            return Words::tr("For");
    }
}

QString graftOn(Day graft, bool changed) {
    return changed ? Words::tr("%1, changed").arg(weekdayAndDay(graft)) : weekdayAndDay(graft);
}

QString because(const Outlook& outlook, const ProposedBatch& batch, int column) {
    const auto& facts = outlook.snapshot.facts();
    switch (column) {
        case 1:
            return batch.bars.empty() || batch.bars.front().breeder
                       ? Words::tr("A breeder queen of the line asked for that is one on that day.")
                       : Words::tr("The book has no breeder queen on that day.");
        case 2:
            return Words::tr(
                "A builder that is there and free for each step of the method, rest included.");
        case 3:
            return Words::tr(
                       "As many as builders, nucs and the most grafts a day let, and orders "
                       "want.\n%1")
                .arg(ripeOf(facts));
        case 4:
            return ripeOf(facts);
        case 6:
            return Words::tr(
                "Nucs that are free from the cells day until the catch; the rest for "
                "orders for cells and virgins.");
        case 7:
            return Words::tr(
                "The day its queens are caught, by the book's rule and the weather to "
                "be expected. Below stands why.");
        case 8:
            return Words::tr("What each order is expected to have of it.\n%1").arg(queensOf(facts));
        default:
            return {};
    }
}

QString breeders(const Outlook& outlook, const ProposedBatch& batch) {
    QStringList names;
    for (const auto& bar : batch.bars)
        if (bar.breeder) addNew(names, labelOf(outlook, *bar.breeder));
    return names.join(QStringLiteral(", "));
}

QString builders(const Outlook& outlook, const ProposedBatch& batch) {
    QStringList names;
    for (const auto& bar : batch.bars) {
        QStringList steps;
        for (const auto& builder : bar.builders)
            if (builder) addNew(steps, labelOf(outlook, *builder));
        addNew(names, steps.join(QStringLiteral(" → ")));
    }
    return names.join(QStringLiteral(", "));
}

QString yards(const Outlook& outlook, const ProposedBatch& batch) {
    QStringList parts;
    for (const auto& [yard, cells] : batch.shares)
        parts += Words::tr("%1 %2").arg(labelOf(outlook, yard), chart_text::number(cells));
    if (batch.sold > 0) parts += Words::tr("%1 sold").arg(chart_text::number(batch.sold));
    if (batch.caged > 0) parts += Words::tr("%1 caged").arg(chart_text::number(batch.caged));
    return parts.join(QStringLiteral(", "));
}

QString serves(const Outlook& outlook, const ProposedBatch& batch) {
    QStringList parts;
    for (const auto& order : batch.orders)
        if (order.count >= 0.05)
            parts += Words::tr("%1: %2").arg(labelOf(outlook, order.order),
                                             chart_text::expected(order.count));
    return parts.isEmpty() ? Words::tr("to be sure") : parts.join(QStringLiteral(", "));
}

QString ghost(Day graft) { return Words::tr("plan: graft %1").arg(shortDay(graft)); }
QString chooseBatch() {
    return Words::tr("Choose a proposed batch to see why its queens are ready that day.");
}

QStringList warnings(const std::vector<Finding>& findings) {
    constexpr std::size_t kMost = 6;
    QStringList lines;
    for (std::size_t i = 0; i < std::min(kMost, findings.size()); ++i)
        lines += batch_text::clash(findings[i]);
    if (findings.size() > kMost)
        lines +=
            Words::tr("%Ln more warning(s)", nullptr, static_cast<int>(findings.size() - kMost));
    return lines;
}

QString sumsHead() { return Words::tr("The season before and after"); }
QStringList sumsColumns() {
    return {Words::tr("Season"), Words::tr("As the book is"), Words::tr("With the ticked")};
}

QString sumName(Sum sum) {
    switch (sum) {
        case Sum::GraftDays:
            return Words::tr("Graft days");
        case Sum::Grafts:
            return Words::tr("Grafts");
        case Sum::Trips:
            return Words::tr("Trips to mating yards");
        case Sum::NucDays:
            return Words::tr("Nuc days");
        case Sum::SpareQueens:
            return Words::tr("Spare queens");
    }
    return {};
}

QString sumBecause(Sum sum) {
    switch (sum) {
        case Sum::GraftDays:
            return Words::tr("Days on which is grafted, of all batches of the season.");
        case Sum::Grafts:
            return Words::tr("Larvae grafted, of all batches of the season.");
        case Sum::Trips:
            return Words::tr("Days, yard by yard, on which cells are brought or queens caught.");
        case Sum::NucDays:
            return Words::tr(
                "Days that nucs are held, from the cells day to the catch, both "
                "counted.");
        case Sum::SpareQueens:
            return Words::tr(
                "Queens expected by the season's end, less all that is owed; below 0: "
                "too few.");
    }
    return {};
}

QString sumValue(Sum sum, const PlanSums& sums) {
    switch (sum) {
        case Sum::GraftDays:
            return chart_text::number(sums.graftDays);
        case Sum::Grafts:
            return chart_text::number(sums.grafts);
        case Sum::Trips:
            return chart_text::number(sums.trips);
        case Sum::NucDays:
            return chart_text::number(sums.nucDays);
        case Sum::SpareQueens:
            return chart_text::expected(sums.spareQueens);
    }
    return {};
}

QString orderName(const Order& order) {
    return Words::tr("%1: %2 %3 by %4")
        .arg(plain(order.label), chart_text::number(order.count), order_text::kind(order.kind),
             weekdayAndDay(order.due));
}
QString orderBecause(const Order& order) {
    return Words::tr(
               "Chance that it is whole on its day, over all possible seasons. It must be "
               "%1 %.")
        .arg(chart_text::expected(order.sure.value / 10.0));
}
QString orderChance(const OrderChance* chance) {
    return chance == nullptr ? Words::tr("—") : order_text::chance(chance->chance);
}

}  // namespace tenthday::plan_text
