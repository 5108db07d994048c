#include "sheets/week_content.h"

#include <algorithm>

#include "screen_text/sheet_text.h"
#include "tasks/given.h"
#include "tasks/week.h"
#include "tasks/work_time.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

QString labelOf(const Outlook& outlook, const std::optional<Id<Yard>>& yard) {
    const auto row = yard ? outlook.snapshot.find(*yard) : nullptr;
    return row ? plain(row->label) : QString();
}

LookGrid gridOf(const Task& task) {
    LookGrid grid;
    if (task.key.rule != TaskRule::FirstLook || task.done) return grid;
    for (const auto* side : task.sides) {
        const auto box = plain(side->box->label);
        if (grid.boxes.empty() || grid.boxes.back().name != box) grid.boxes.push_back({box, {}});
        grid.boxes.back().sides += plain(side->side->side);
    }
    return grid;
}

WeekRow rowOf(const Outlook& outlook, const Task& task, int number) {
    WeekRow row;
    row.number = number;
    row.must = task.must;
    row.done = task.done.has_value();
    row.what = sheet_text::what(outlook, task);
    row.who = plain(givenTo(outlook.snapshot, task.key));
    row.how = sheet_text::with(sheet_text::how(outlook, task), sheet_text::givenTo(row.who));
    row.blank = row.done ? QString() : sheet_text::blank(task);
    row.grid = gridOf(task);
    return row;
}

/// Cells come out on this day: into these yards they may go.
QStringList sumOf(const Outlook& outlook, const std::vector<const NumberedTask*>& numbered) {
    QStringList yards;
    bool cellsOut = false;
    for (const auto* entry : numbered) {
        const auto* task = &entry->task;
        cellsOut = cellsOut || task->key.rule == TaskRule::CellsOut;
        const auto yard = labelOf(outlook, task->yard);
        if (task->key.rule == TaskRule::CellsIn && !yards.contains(yard)) yards += yard;
    }
    return cellsOut ? sheet_text::sumOfCells(yards) : QStringList();
}

QString hoursOf(const Outlook& outlook, const std::vector<const NumberedTask*>& numbered) {
    if (numbered.empty()) return {};
    std::vector<Task> tasks;
    for (const auto* entry : numbered) tasks.push_back(entry->task);
    return sheet_text::hours(dayWork(outlook.snapshot, tasks).minutes());
}

/// How the hours come: what is set in the book, what is not.
QString explained(const Outlook& outlook, const std::vector<NumberedTask>& tasks) {
    bool own = true;
    bool driven = true;
    std::vector<Id<Yard>> yards;
    for (const auto& entry : tasks) {
        own = own && taskMinutes(outlook.snapshot, entry.task.key.rule).own;
        if (entry.task.yard) yards.push_back(*entry.task.yard);
    }
    driven = roundThrough(outlook.snapshot, std::move(yards)).unknownWays == 0;
    return tasks.empty() ? QString() : sheet_text::hoursExplained(own, driven);
}

/// Those of the week that are this person's; all of them where nobody is named.
std::vector<NumberedTask> tasksFor(const Outlook& outlook, IsoWeek week, const QString& who,
                                   int& toNobody) {
    auto tasks = ofWeek(tasksOf(outlook), week);
    if (who.isEmpty()) return tasks;
    std::vector<NumberedTask> own;
    for (auto& entry : tasks) {
        const auto given = plain(givenTo(outlook.snapshot, entry.task.key));
        toNobody += given.isEmpty() ? 1 : 0;
        if (given.compare(who, Qt::CaseInsensitive) == 0) own.push_back(std::move(entry));
    }
    return own;
}

WeekDay contentOf(const Outlook& outlook, Day day,
                  const std::vector<const NumberedTask*>& numbered) {
    WeekDay content{day, hoursOf(outlook, numbered), {}, {}};
    std::vector<std::vector<TaskRule>> rules;
    const std::optional<Id<Yard>>* last = nullptr;
    for (const auto* entry : numbered) {
        const auto* task = &entry->task;
        if (last == nullptr || *last != task->yard) {
            content.blocks.push_back({day, labelOf(outlook, task->yard), {}, {}, {}});
            rules.emplace_back();
            last = &task->yard;
        }
        content.blocks.back().rows.push_back(rowOf(outlook, *task, entry->number));
        if (!task->done) rules.back().push_back(task->key.rule);
        const auto work = sheet_text::work(task->key.rule);
        if (!content.works.contains(work)) content.works += work;
    }
    for (std::size_t i = 0; i < content.blocks.size(); ++i)
        content.blocks[i].takeAlong = sheet_text::takeAlong(rules[i], day);
    if (!content.blocks.empty()) content.blocks.back().sum = sumOf(outlook, numbered);
    return content;
}

}  // namespace

WeekContent weekContent(const Outlook& outlook, IsoWeek week, const QString& who) {
    WeekContent content;
    content.week = week;
    content.operation = plain(outlook.snapshot.book().label);
    content.cautions = sheet_text::cautions();
    const auto days = daysOf(week);
    int toNobody = 0;
    const auto tasks = tasksFor(outlook, week, who, toNobody);
    content.hours = explained(outlook, tasks);
    content.who = who;
    if (toNobody > 0) content.cautions.prepend(sheet_text::toNobody(toNobody));
    for (Day day = days.first; day <= days.last; day += Days{1}) {
        std::vector<const NumberedTask*> some;
        for (const auto& entry : tasks)
            if (entry.task.day == day) some.push_back(&entry);
        content.days.push_back(contentOf(outlook, day, some));
        for (const auto& block : content.days.back().blocks)
            if (!block.yard.isEmpty() && !content.yards.contains(block.yard))
                content.yards += block.yard;
    }
    return content;
}

}  // namespace tenthday
