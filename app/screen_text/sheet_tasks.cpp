#include "screen_text/sheet_text.h"

#include <QLocale>
#include <QTime>
#include <array>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/story_text.h"
#include "screen_text/words.h"

namespace tenthday::sheet_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString count(const Task& task) { return chart_text::number(task.count); }
QString subject(const Task& task) { return plain(task.subjectLabel); }

QString builderOf(const Outlook& outlook, const Task& task) {
    const auto row = task.builder ? outlook.snapshot.find(*task.builder) : nullptr;
    return row ? plain(row->label) : Words::tr("the builder");
}

QString batchOf(const Outlook& outlook, const Task& task) {
    const auto row = task.batch ? outlook.snapshot.find(*task.batch) : nullptr;
    return row ? plain(row->label) : QString();
}

bool areVirgins(const Outlook& outlook, const Task& task) {
    const auto row = task.batch ? outlook.snapshot.find(*task.batch) : nullptr;
    return row && row->start == Start::Virgin;
}

QString barsOf(const Outlook& outlook, const Task& task) {
    const auto* batch = task.batch ? outlook.find(*task.batch) : nullptr;
    if (!batch) return {};
    QStringList bars;
    for (const auto& bar : batch->bars) {
        const auto breeder = bar->breeder ? outlook.snapshot.find(*bar->breeder) : nullptr;
        const auto number = chart_text::number(bar->cells.value);
        bars += breeder ? Words::tr("bar %1: %2 from %3")
                              .arg(chart_text::number(bar->bar), number, plain(breeder->label))
                        : Words::tr("bar %1: %2").arg(chart_text::number(bar->bar), number);
    }
    return bars.join(QStringLiteral(", "));
}

/// Of breeder queens whose larvae nobody has seen yet, and of those without any.
QString larvaeOf(const Outlook& outlook, const Task& task) {
    if (task.done || !task.batch) return {};
    QStringList parts;
    for (const auto& look : larvaeLooks(outlook.snapshot, *task.batch))
        parts += story_text::larvae(outlook.snapshot, *task.batch, look);
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

QString until(const Task& task) {
    return task.window.size() > 1 ? Words::tr("until %1").arg(weekdayAndDay(task.window.last))
                                  : QString();
}

QString clockHour(Hour hour) {
    return QLocale().toString(QTime(hour.value, 0), QStringLiteral("H:mm"));
}

QString at(const Task& task) {
    return task.hour ? Words::tr("at %1").arg(clockHour(*task.hour)) : QString();
}

QString joined(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(QStringLiteral("; "));
}

}  // namespace

QString nucs(const Task& task) {
    QStringList boxes;
    const Box* last = nullptr;
    for (const auto* side : task.sides) {
        const auto name = plain(side->side->side);
        if (side->box.get() != last) boxes += plain(side->box->label);
        last = side->box.get();
        if (name != QStringLiteral("-")) boxes.back() += u' ' + name;
    }
    return boxes.join(QStringLiteral(", "));
}

QString what(const Outlook& outlook, const Task& task) {
    switch (task.key.rule) {
        case TaskRule::CellsOut:
            return Words::tr("Cells out of %1, batch %2: %3 expected")
                .arg(builderOf(outlook, task), subject(task), count(task));
        case TaskRule::CellsIn:
            return areVirgins(outlook, task)
                       ? Words::tr("Virgins into nucs, batch %1: %2")
                             .arg(subject(task), count(task))
                       : Words::tr("Cells into nucs, batch %1: %2").arg(subject(task), count(task));
        case TaskRule::CageCells:
            return Words::tr("Cage the cells in %1 in place, batch %2")
                .arg(builderOf(outlook, task), subject(task));
        case TaskRule::FreeBreeder:
            return Words::tr("Free the breeder queen, batch %1").arg(subject(task));
        case TaskRule::Confine:
            return Words::tr("Confine the breeder queen for batch %1").arg(subject(task));
        case TaskRule::MakeUpBuilder: {
            const auto batch = batchOf(outlook, task);
            const auto builder = builderOf(outlook, task);
            return batch.isEmpty() ? Words::tr("Make up %1").arg(builder)
                                   : Words::tr("Make up %1 for batch %2").arg(builder, batch);
        }
        case TaskRule::Feed:
            return Words::tr("Feed %1 for batch %2").arg(builderOf(outlook, task), subject(task));
        case TaskRule::Graft:
            return Words::tr("Graft batch %1: %2 larvae").arg(subject(task), count(task));
        case TaskRule::TakeCount:
            return Words::tr("Count the started cells, batch %1").arg(subject(task));
        case TaskRule::MoveCells:
            return Words::tr("Cells of batch %1 into %2: %3 expected")
                .arg(subject(task), builderOf(outlook, task), count(task));
        case TaskRule::FirstWildLook:
            return Words::tr("Look for wild cells in %1").arg(builderOf(outlook, task));
        case TaskRule::SecondWildLook:
            return Words::tr("Look again for wild cells in %1").arg(builderOf(outlook, task));
        case TaskRule::FirstLook:
            return task.done
                       ? Words::tr("First look, batch %1").arg(subject(task))
                       : Words::tr("First look, batch %1: circle what is there").arg(subject(task));
        case TaskRule::CatchQueens:
            return Words::tr("Catch queens of batch %1: about %2").arg(subject(task), count(task));
        case TaskRule::CageQueens:
            return Words::tr("Cage queens for order %1: %2").arg(subject(task), count(task));
        case TaskRule::Deliver:
            return Words::tr("Deliver order %1: %2").arg(subject(task), count(task));
        case TaskRule::StockNucs:
            return Words::tr("Stock nucs: %1").arg(count(task));
        case TaskRule::ToStation:
            return Words::tr("Nucs of batch %1 to the mating station: %2")
                .arg(subject(task), count(task));
        case TaskRule::FromStation:
            return Words::tr("Nucs of batch %1 back from the mating station: %2")
                .arg(subject(task), count(task));
        case TaskRule::Inseminate:
            return Words::tr("Inseminate queens of batch %1: %2").arg(subject(task), count(task));
        case TaskRule::DroneComb:
            return Words::tr("Drone comb into strong colonies: %1").arg(count(task));
        case TaskRule::Own:
            return subject(task);
    }
    return {};
}

namespace {

/// The hours at which it is not to be done, or nothing.
QString shutHours(const Task& task) {
    if (!task.shut) return {};
    const auto from = clockHour(task.shut->from);
    const auto until = clockHour(task.shut->until);
    if (!task.shut->robbing) return Words::tr("not from %1 to %2: virgins fly").arg(from, until);
    const auto robbing =
        Words::tr("robbing: only before %1 or after %2, quickly, nothing spilt").arg(from, until);
    return task.shut->flights ? Words::tr("%1; virgins fly").arg(robbing) : robbing;
}

QString wayOf(const Outlook& outlook, const Task& task) {
    switch (task.key.rule) {
        case TaskRule::CellsOut:
            return joined(
                {at(task), Words::tr("upright, never shake, 32 to 35 °C"),
                 task.deadline
                     ? Words::tr("a queen can be out from %1").arg(dayAndClock(*task.deadline))
                     : QString()});
        case TaskRule::CellsIn:
        case TaskRule::CatchQueens:
            return nucs(task);
        case TaskRule::CageCells:
            return Words::tr("not even day 10 is safe; do not move them until then");
        case TaskRule::FreeBreeder:
        case TaskRule::Confine:
            return at(task);
        case TaskRule::MakeUpBuilder:
            return joined({at(task), Words::tr("shake where bees cannot fly back to")});
        case TaskRule::Feed:
            return joined(
                {Words::tr("in the evening, shut feeder: there is a dearth"), until(task)});
        case TaskRule::Graft:
            return joined({at(task), barsOf(outlook, task), larvaeOf(outlook, task)});
        case TaskRule::TakeCount:
            return joined({Words::tr("brush the bees off gently"), until(task)});
        case TaskRule::MoveCells:
            return joined({at(task), Words::tr("brush, never shake")});
        case TaskRule::FirstWildLook:
            return joined({Words::tr("every comb; break down each wild cell"), until(task)});
        case TaskRule::SecondWildLook:
            return Words::tr("every comb; after this one none can be begun any more");
        case TaskRule::FirstLook:
            return task.done ? nucs(task) : circlesMean();
        case TaskRule::StockNucs:
            return Words::tr("shut, cool and dark until they are set out");
        case TaskRule::CageQueens:
            return Words::tr("each with young workers and candy; 15 to 38 °C on the way");
        case TaskRule::Deliver:
            return Words::tr("shaded and aired; papers as the bee inspector wants them");
        case TaskRule::ToStation:
        case TaskRule::FromStation:
            return joined({Words::tr("at dusk, shut and aired; ask the inspector's rules first"),
                           nucs(task)});
        case TaskRule::Inseminate:
            return joined({until(task), nucs(task)});
        case TaskRule::DroneComb:
            return joined({Words::tr("for the first flights"), until(task)});
        case TaskRule::Own:
            return {};
    }
    return {};
}

}  // namespace

QString how(const Outlook& outlook, const Task& task) {
    return joined({wayOf(outlook, task), shutHours(task)});
}

QString blank(const Task& task) {
    switch (task.key.rule) {
        case TaskRule::CellsOut:
            return Words::tr("out");
        case TaskRule::CellsIn:
            return Words::tr("in, of %1").arg(count(task));
        case TaskRule::CageCells:
            return Words::tr("caged");
        case TaskRule::Graft:
            return Words::tr("grafted");
        case TaskRule::TakeCount:
            return Words::tr("started, of %1").arg(count(task));
        case TaskRule::MoveCells:
            return Words::tr("moved");
        case TaskRule::CatchQueens:
            return Words::tr("caught");
        case TaskRule::CageQueens:
            return Words::tr("caged, of %1").arg(count(task));
        case TaskRule::Deliver:
            return Words::tr("delivered, of %1").arg(count(task));
        case TaskRule::StockNucs:
            return Words::tr("stocked, of %1").arg(count(task));
        case TaskRule::Feed:
            return Words::tr("fed");
        case TaskRule::Inseminate:
            return Words::tr("inseminated, of %1").arg(count(task));
        case TaskRule::DroneComb:
            return Words::tr("put in");
        default:
            return {};
    }
}

QString work(TaskRule rule) {
    switch (rule) {
        case TaskRule::CellsOut:
        case TaskRule::CellsIn:
            return Words::tr("cells");
        case TaskRule::CageCells:
            return Words::tr("cage");
        case TaskRule::FreeBreeder:
            return Words::tr("free breeder");
        case TaskRule::Confine:
            return Words::tr("confine");
        case TaskRule::MakeUpBuilder:
            return Words::tr("make up");
        case TaskRule::Feed:
            return Words::tr("feed");
        case TaskRule::Graft:
            return Words::tr("graft");
        case TaskRule::TakeCount:
            return Words::tr("count");
        case TaskRule::MoveCells:
            return Words::tr("move cells");
        case TaskRule::FirstWildLook:
        case TaskRule::SecondWildLook:
            return Words::tr("wild cells");
        case TaskRule::FirstLook:
            return Words::tr("first look");
        case TaskRule::CatchQueens:
            return Words::tr("catch");
        case TaskRule::CageQueens:
            return Words::tr("cage queens");
        case TaskRule::Deliver:
            return Words::tr("deliver");
        case TaskRule::StockNucs:
            return Words::tr("stock nucs");
        case TaskRule::ToStation:
        case TaskRule::FromStation:
            return Words::tr("station");
        case TaskRule::Inseminate:
            return Words::tr("inseminate");
        case TaskRule::DroneComb:
            return Words::tr("drone comb");
        case TaskRule::Own:
            return Words::tr("own");
    }
    return {};
}

QString takeAlong(const std::vector<TaskRule>& rules, Day day) {
    // International year marks (S105): white, yellow, red, green, blue from a year ending in 1
    // or 6.
    const std::array marks{Words::tr("blue"), Words::tr("white"), Words::tr("yellow"),
                           Words::tr("red"), Words::tr("green")};
    const auto mark = marks[static_cast<std::size_t>(toQDate(day).year() % 5)];
    QStringList things;
    const auto add = [&](const QString& thing) {
        if (!things.contains(thing)) things += thing;
    };
    for (const auto rule : rules) {
        if (rule == TaskRule::CellsOut) add(Words::tr("warm box"));
        if (rule == TaskRule::CellsOut || rule == TaskRule::CageCells)
            add(Words::tr("nursery cages"));
        if (rule == TaskRule::CellsIn) add(Words::tr("cell protectors"));
        if (rule == TaskRule::Confine) add(Words::tr("comb cage and an empty comb"));
        if (rule == TaskRule::Graft) add(Words::tr("cups, grafting tool, damp cloth"));
        if (rule == TaskRule::MakeUpBuilder || rule == TaskRule::StockNucs)
            add(Words::tr("brush, spray, ventilated box"));
        if (rule == TaskRule::StockNucs || rule == TaskRule::Feed) add(Words::tr("feed"));
        if (rule == TaskRule::DroneComb) add(Words::tr("drone comb"));
        if (rule == TaskRule::ToStation || rule == TaskRule::FromStation)
            add(Words::tr("straps, ventilated screens"));
        if (rule == TaskRule::CatchQueens)
            add(Words::tr("queen cages, marking pen (%1)").arg(mark));
        if (rule == TaskRule::CageQueens) add(Words::tr("shipping cages, candy"));
        if (rule == TaskRule::FirstLook) add(Words::tr("pencil"));
    }
    return things.join(QStringLiteral(", "));
}

}  // namespace tenthday::sheet_text
