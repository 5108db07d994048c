#include "screen_text/why_task.h"

#include <algorithm>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/nuc_text.h"
#include "screen_text/sheet_text.h"
#include "screen_text/words.h"
#include "tasks/event_behind.h"

namespace tenthday::why_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

const WildClock* clockOf(const Outlook& outlook, const Task& task) {
    for (const auto& builder : outlook.builders)
        for (const auto& clock : builder.clocks)
            if (clock.cause == task.key.subject) return &clock;
    return nullptr;
}

void wildLook(const Outlook& outlook, const Task& task, Link& link) {
    const auto& facts = outlook.snapshot.facts();
    const bool first = task.key.rule == TaskRule::FirstWildLook;
    link.rule = first ? Words::tr(
                            "Bees that have open brood and no queen begin wild cells. The "
                            "first look breaks down what was begun so far.")
                      : Words::tr(
                            "Only on the second look are all wild cells begun: after it none "
                            "can follow.");
    if (const auto* clock = clockOf(outlook, task)) {
        link.inputs.push_back(
            planned(Words::tr("Queenless with open brood from"), dayAndClock(clock->start)));
        link.inputs.back().from = Words::tr("the builder's make-up or diary");
        link.inputs.push_back({Words::tr("A wild queen can be out, seldom, from"),
                               dayAndClock(clock->oldest),
                               Words::tr("reckoned"),
                               {}});
    }
    for (const auto fact : first ? std::array{Fact::Look1FromD, Fact::Look1ToD, Fact::WildOldestH}
                                 : std::array{Fact::Look2FromD, Fact::Look2ToD, Fact::WildBegunD})
        link.inputs.push_back(number(facts, fact));
}

/// Cells leave when the method ends, unless they are placed for another day.
void cellsDay(const Outlook& outlook, const Task& task, const Batch& batch, Link& link) {
    link.inputs.push_back(endOfMethod(outlook, batch));
    bool placed = false;
    for (const auto& row : outlook.snapshot.all<Placement>().of(batch.id.uuid))
        placed = placed || (row->target == CellTarget::Nuc && row->day == task.day);
    link.rule = placed ? Words::tr("The cells go on the day for which you placed them.")
                       : Words::tr("The cells go when the last step of the method ends.");
    if (placed) link.inputs.push_back(setByYou(Words::tr("Placed for"), weekdayAndDay(task.day)));
}

/// The virgins the comb is for, and the drones they want.
void droneComb(const Outlook& outlook, const Task& task, Link& link) {
    const auto& facts = outlook.snapshot.facts();
    for (const auto& need : outlook.drones) {
        if (need.yard->id != task.yard) continue;
        link.inputs.push_back({Words::tr("First graft whose virgins fly here"),
                               weekdayAndDay(need.firstGraft),
                               Words::tr("reckoned"),
                               {}});
        link.inputs.push_back({Words::tr("Virgins due to fly at one time"),
                               Words::tr("about %1, %2")
                                   .arg(chart_text::number(static_cast<int>(need.virgins + 0.5)),
                                        weekdayAndDay(need.peak)),
                               Words::tr("reckoned"),
                               {}});
    }
    for (const auto fact : {Fact::DroneCombBeforeD, Fact::DroneEmergenceD, Fact::DroneMatureD,
                            Fact::DroneColoniesLeast, Fact::QueensPerDroneColony})
        link.inputs.push_back(number(facts, fact));
}

QString ruleOf(const Outlook& outlook, const Task& task) {
    switch (task.key.rule) {
        case TaskRule::CageCells:
            return Words::tr(
                "A queen can be out before the cells leave the builder, so they are "
                "caged where they hang.");
        case TaskRule::MakeUpBuilder:
            return outlook.snapshot.find(Id<MakeUp>{task.key.subject})
                       ? Words::tr("The make-up of this builder stands in the book for this day.")
                       : Words::tr(
                             "A builder without a make-up in the book is made up in time "
                             "for the graft.");
        case TaskRule::Feed:
            return Words::tr(
                "A dearth is noted for the builder's yard on the day of the graft. Bees that are "
                "not fed start few of the grafts.");
        case TaskRule::ToStation:
        case TaskRule::FromStation:
        case TaskRule::Inseminate:
            return Words::tr("The days for mating stand with the batch.");
        case TaskRule::DroneComb:
            return Words::tr(
                "Drones need longer than queens: comb goes in so long before the first virgins fly "
                "in this yard.");
        case TaskRule::MoveCells:
            return Words::tr("The method moves the cells into the next builder.");
        case TaskRule::FirstLook:
            return Words::tr("By the first look most queens that will lay have eggs.");
        case TaskRule::CatchQueens:
            return Words::tr("Good queens are caught, and their nucs are free again.");
        case TaskRule::CageQueens:
            return Words::tr("Queens are caged the day before they go.");
        case TaskRule::Deliver:
            return Words::tr("The last day the order can go by its due day and its weekdays.");
        case TaskRule::StockNucs:
            return Words::tr("Bees go into these nucs on the day that stands in the book.");
        case TaskRule::Own:
            return Words::tr("A task of your own, on the day you set.");
        default:
            return Words::tr("The day comes from a date of the batch.");
    }
}

/// What had to wait and was not done is planned for today.
bool isPutOff(const Outlook& outlook, const Task& task) {
    return !task.done && task.day == outlook.snapshot.today() && task.window.first < task.day;
}

void addNucs(const Task& task, Link& link) {
    if (task.sides.empty()) return;
    link.inputs.push_back({Words::tr("Nucs"), sheet_text::nucs(task), {}, {}});
}

void fill(const Outlook& outlook, const Task& task, const BatchOutlook* batch, Link& link) {
    switch (task.key.rule) {
        case TaskRule::FirstWildLook:
        case TaskRule::SecondWildLook:
            return wildLook(outlook, task, link);
        case TaskRule::CellsOut:
        case TaskRule::CellsIn:
            if (batch) return cellsDay(outlook, task, *batch->batch, link);
            break;
        case TaskRule::MoveCells:
            if (batch) link.inputs.push_back(endOfMethod(outlook, *batch->batch));
            break;
        case TaskRule::MakeUpBuilder:
            if (outlook.snapshot.find(Id<MakeUp>{task.key.subject}))
                link.inputs.push_back(setByYou(Words::tr("Make-up"), weekdayAndDay(task.day)));
            break;
        case TaskRule::Feed:
            for (const auto fact : {Fact::FeedBeforeD, Fact::AcceptedDearth})
                link.inputs.push_back(number(outlook.snapshot.facts(), fact));
            break;
        case TaskRule::DroneComb:
            droneComb(outlook, task, link);
            break;
        case TaskRule::ToStation:
        case TaskRule::FromStation:
        case TaskRule::Inseminate:
        case TaskRule::CageQueens:
        case TaskRule::Deliver:
        case TaskRule::StockNucs:
        case TaskRule::Own:
            link.inputs.push_back(setByYou(Words::tr("Day"), weekdayAndDay(task.day)));
            break;
        default:
            break;
    }
    link.rule = ruleOf(outlook, task);
}

/// Days a state of the nuc leans on: what was given, seen and planned.
void round(const Outlook& outlook, const SideDay& is, Link& link) {
    if (is.wintered != nullptr)
        link.inputs.push_back(
            seen(nuc_text::wintered(outlook.snapshot, *is.wintered),
                 Words::tr("left here %1").arg(weekdayAndDay(is.wintered->from))));
    if (is.round == nullptr) return;
    const auto& round = *is.round;
    const auto* batch = outlook.find(round.batch);
    const auto given = weekdayAndDay(round.transferDay);
    const auto name = batch ? Words::tr("Cell of batch %1 given").arg(plain(batch->batch->label))
                            : Words::tr("Cell given");
    link.inputs.push_back(round.done ? seen(name, given) : planned(name, given));
    if (round.seen && round.seenDay)
        link.inputs.push_back(seen(chart_text::state(*round.seen), weekdayAndDay(*round.seenDay)));
}

QString whyNotReady(NotReady why) {
    switch (why) {
        case NotReady::None:
            return Words::tr(
                "Ready: it has bees, no queen, and has been queenless long enough to "
                "take a cell.");
        case NotReady::NotStocked:
            return Words::tr("Not ready: there are no bees in it yet.");
        case NotReady::QueenlessTooShort:
            return Words::tr(
                "Not ready: bees take a cell only once they have been queenless for "
                "a while.");
        case NotReady::HoldsCell:
            return Words::tr("Not ready: a cell hangs in it.");
        case NotReady::HoldsVirgin:
            return Words::tr("Not ready: a virgin is in it.");
        case NotReady::DueToFly:
            return Words::tr("Not ready: her first flights are due; leave it shut.");
        case NotReady::Laying:
            return Words::tr("Not ready: a queen lays in it who is not caught yet.");
        case NotReady::AwaitingCatch:
            return Words::tr(
                "Not surely ready: nobody has caught the queen or looked yet. It "
                "counts as likely until then.");
        case NotReady::NeedsBrood:
            return Words::tr(
                "Not ready: too long without open brood; workers would lay. It needs "
                "open brood first, or is joined to another.");
        case NotReady::Retired:
            return Words::tr("Not ready: it is given up, laid out anew or stands in no yard.");
    }
    return {};
}

std::vector<Fact> factsBehind(NotReady why) {
    switch (why) {
        case NotReady::HoldsCell:
        case NotReady::HoldsVirgin:
            return {Fact::Emerged};
        case NotReady::DueToFly:
            return {Fact::FirstFlightD, Fact::Mated};
        case NotReady::Laying:
            return {Fact::Emerged, Fact::Mated, Fact::JudgedGood};
        case NotReady::AwaitingCatch:
            return {Fact::Emerged, Fact::Mated, Fact::NucQueenlessH};
        case NotReady::NeedsBrood:
            return {Fact::NoBroodD, Fact::OpenBroodD, Fact::LostVirginD};
        case NotReady::Retired:
            return {};
        default:
            return {Fact::NucQueenlessH};
    }
}

/// The date of its batch that decides when a held nuc is free again.
std::optional<Event> eventBehind(NotReady why) {
    switch (why) {
        case NotReady::HoldsCell:
        case NotReady::HoldsVirgin:
        case NotReady::DueToFly:
        case NotReady::Laying:
        case NotReady::AwaitingCatch:
            return Event::Catch;
        default:
            return std::nullopt;
    }
}

Link stateOf(const Outlook& outlook, const SideOutlook& side, const SideDay& is, Day day) {
    const auto since = stateSince(side, day, outlook.snapshot.today());
    Link link;
    link.what = chart_text::state(is.state);
    link.when = since ? Words::tr("since %1").arg(weekdayAndDay(*since)) : QString();
    link.rule = is.chance < 1
                    ? Words::tr(
                          "Nobody has looked: this is the likeliest of what it can be, with "
                          "%1 of 100.")
                          .arg(chart_text::number(static_cast<int>(is.chance * 100 + 0.5)))
                    : Words::tr("By what stands in the book.");
    Ptr<Stocking> last;
    for (const auto& row : side.stockings)
        if (row->day <= day && (!last || last->day <= row->day)) last = row;
    if (last)
        link.inputs.push_back(last->day <= outlook.snapshot.today()
                                  ? seen(Words::tr("Stocked"), weekdayAndDay(last->day))
                                  : planned(Words::tr("Stocked"), weekdayAndDay(last->day)));
    round(outlook, is, link);
    return link;
}

}  // namespace

std::vector<Link> task(const Outlook& outlook, const Task& task) {
    const auto* batch = task.batch ? outlook.find(*task.batch) : nullptr;
    Link link;
    link.what = sheet_text::what(outlook, task);
    link.when = weekdayAndDay(task.day);
    fill(outlook, task, batch, link);
    if (isPutOff(outlook, task)) {
        link.rule += u' ' + Words::tr(
                                "It was not done on its first day and can still be done, so "
                                "it is planned for today.");
        link.inputs.push_back(
            {Words::tr("First day"), weekdayAndDay(task.window.first), Words::tr("reckoned"), {}});
    }
    if (task.window.last > task.day)
        link.inputs.push_back({Words::tr("Can be done until"),
                               weekdayAndDay(task.window.last),
                               Words::tr("reckoned"),
                               {}});
    addNucs(task, link);
    std::vector<Link> links{link};
    const auto event = batch ? tenthday::eventBehind(task, batch->timeline) : std::nullopt;
    if (!event) return links;
    const auto chain = why_text::event(outlook, batch->batch->id, *event);
    links.insert(links.end(), chain.begin(), chain.end());
    return links;
}

std::vector<Link> nuc(const Outlook& outlook, const SideOutlook& side, Day day) {
    const auto is = sideOn(side, day, outlook.snapshot.today());
    std::vector<Link> links{stateOf(outlook, side, is, day)};
    Link ready;
    ready.what = Words::tr("For a cell");
    ready.rule = is.wintered != nullptr && is.state == NucState::JudgedGood
                     ? Words::tr(
                           "Not ready: a queen of a season before is in it. Say among the queens "
                           "in the set-up when she is caught, moved or lost.")
                     : whyNotReady(is.reason);
    if (!is.ready && is.readyFrom && *is.readyFrom < kLastDay)
        ready.when = Words::tr("ready from %1").arg(weekdayAndDay(*is.readyFrom));
    for (const auto fact : factsBehind(is.reason))
        ready.inputs.push_back(number(outlook.snapshot.facts(), fact));
    links.push_back(ready);
    const auto event = is.round ? eventBehind(is.reason) : std::nullopt;
    if (!event) return links;
    const auto chain = why_text::event(outlook, is.round->batch, *event);
    links.insert(links.end(), chain.begin(), chain.end());
    return links;
}

}  // namespace tenthday::why_text
