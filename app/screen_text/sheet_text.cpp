#include "screen_text/sheet_text.h"

#include <QLocale>
#include <QTime>
#include <array>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
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

QString until(const Task& task) {
    return task.window.size() > 1 ? Words::tr("until %1").arg(weekdayAndDay(task.window.last))
                                  : QString();
}

QString at(const Task& task) {
    return task.hour ? Words::tr("at %1").arg(
                           QLocale().toString(QTime(task.hour->value, 0), QStringLiteral("H:mm")))
                     : QString();
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
        case TaskRule::StockNucs:
            return Words::tr("Stock nucs: %1").arg(count(task));
        case TaskRule::Own:
            return subject(task);
    }
    return {};
}

QString how(const Outlook& outlook, const Task& task) {
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
        case TaskRule::Graft:
            return joined({at(task), barsOf(outlook, task)});
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
        case TaskRule::Own:
            return {};
    }
    return {};
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
        case TaskRule::StockNucs:
            return Words::tr("stocked, of %1").arg(count(task));
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
        case TaskRule::StockNucs:
            return Words::tr("stock nucs");
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
        if (rule == TaskRule::StockNucs) add(Words::tr("feed"));
        if (rule == TaskRule::CatchQueens)
            add(Words::tr("queen cages, marking pen (%1)").arg(mark));
        if (rule == TaskRule::FirstLook) add(Words::tr("pencil"));
    }
    return things.join(QStringLiteral(", "));
}

QStringList sumOfCells(const QStringList& yards) {
    QStringList parts{Words::tr("out")};
    parts += yards;
    return parts + QStringList{Words::tr("sold"), Words::tr("caged"), Words::tr("given away"),
                               Words::tr("culled")};
}

QStringList cautions() {
    return {
        Words::tr("Stings: trouble breathing, faintness or a rash within minutes is an emergency: "
                  "call the emergency number, use the prescribed injector. Do not work alone."),
        Words::tr("Full boxes: two people. Smoker: never on dry grass. Treatments: follow the "
                  "label and the local rules. Before bees or queens are moved or sold: ask the bee "
                  "inspector."),
        Words::tr("Black bar: must be done this day. Leave nucs with virgins alone from 11:00 to "
                  "16:00.")};
}

QString cannotPrint() {
    return Words::tr(
        "This could not be printed whole. See whether the printer is ready, or whether "
        "the file can be written.");
}
QString week(IsoWeek week) { return Words::tr("Week %1").arg(chart_text::number(week.week)); }

QString daysOfWeek(IsoWeek week) {
    const auto days = daysOf(week);
    return Words::tr("%1 to %2 %3")
        .arg(shortDay(days.first), shortDay(days.last), yearNumber(days.last));
}

QString page(int number, int of) {
    return Words::tr("page %1 of %2").arg(chart_text::number(number), chart_text::number(of));
}

QString head(Day day, const QString& yard) {
    return yard.isEmpty() ? longDay(day) : Words::tr("%1 · %2").arg(longDay(day), yard);
}

QString goesOn(const QString& head) { return Words::tr("%1 (goes on)").arg(head); }
QString nothing() { return Words::tr("nothing: leave nucs shut"); }
QString nothingShort() { return Words::tr("nothing"); }
QString takeAlongHead() { return Words::tr("Take along"); }
QString notes(const QString& yard) { return Words::tr("Notes %1").arg(yard); }
QString box() { return Words::tr("box"); }
QString circles() { return Words::tr("E L S V – X"); }
QString circlesMean() {
    return Words::tr("E eggs, L larvae, S sealed brood, V virgin seen, – none yet, X gone or dead");
}
QString sumHead() { return Words::tr("Cells of this day must add up"); }
QString done() { return Words::tr("done"); }

}  // namespace tenthday::sheet_text
