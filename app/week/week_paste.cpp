#include "week/week_paste.h"

#include <algorithm>
#include <map>
#include <set>

#include "book/new_id.h"
#include "paste/named_rows.h"
#include "paste/table_lines.h"
#include "screen_text/evening_text.h"
#include "screen_text/paste_text.h"
#include "screen_text/week_text.h"
#include "setup/day_edit.h"
#include "tasks/given.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString head(WeekModel::Column column) { return week_text::columnHead(column); }
QString iso(Day day) { return plain(toText(day)); }

QString cell(const WeekModel& model, int row, WeekModel::Column column) {
    return model.index(row, column).data().toString();
}

/// Rows of the week's tasks, each once: one that is still open from this week stands twice.
std::vector<int> taskRows(const WeekModel& model) {
    std::vector<int> rows;
    std::set<TaskKey> seen;
    for (int row = 0; row < model.rowCount(); ++row)
        if (const auto* task = model.taskAt(row); task != nullptr && seen.insert(task->key).second)
            rows.push_back(row);
    return rows;
}

/// Of a task: its day, what it is, what it is about, its yard.
QStringList nameOf(const WeekModel& model, int row) {
    const auto& task = *model.taskAt(row);
    return {iso(task.day), cell(model, row, WeekModel::What),
            week_text::subject(*model.outlook(), task), cell(model, row, WeekModel::Yard)};
}

/// The tasks as they were when the dialog opened.
struct Shown {
    OutlookPtr outlook;
    std::vector<Task> tasks;  ///< sides point into the outlook
    NamedRows rows;
};

/// How many tasks stand before a task in what is pasted, by its key.
std::map<TaskKey, int> placesOf(const WeekModel& model) {
    std::map<TaskKey, int> places;
    for (const int row : taskRows(model))
        places.emplace(model.taskAt(row)->key, static_cast<int>(places.size()));
    return places;
}

std::optional<Day> dayTyped(const QString& typed) {
    const auto day = dayFromTyped(typed);
    return day.isValid() ? dayFromText(day.toString(Qt::ISODate).toStdString()) : std::nullopt;
}

void append(ChangeSet& changes, const ChangeSet& more) {
    changes.rows.insert(changes.rows.end(), more.rows.begin(), more.rows.end());
}

/// The tick that a cell asks for.
LineJudged judgeTick(const Snapshot& book, const Task& task, const QString& typed,
                     ChangeSet& changes) {
    const auto answer = tickTyped(typed, {evening_text::done()});
    auto wanted = answer == TickTyped::Yes  ? std::optional(task.done.value_or(book.today()))
                  : answer == TickTyped::No ? std::nullopt
                                            : dayTyped(typed);
    if (answer == TickTyped::Other && !wanted) return {paste_text::notADay(typed)};
    if (wanted == task.done) return {};
    if (wanted && *wanted > book.today())
        return {evening_text::refusal({Impossible::AfterToday, 0, book.today(), {}})};
    const bool byRecord = task.done && tick(book, task, std::nullopt, {}).isEmpty();
    if (byRecord) return {week_text::doneByRecord()};
    append(changes, tick(book, task, wanted, newId<TaskDone>()));
    return {{}, true, !task.done, !wanted};
}

LineJudged judgeGiven(const Snapshot& book, const Task& task, const QString& who,
                      ChangeSet& changes) {
    if (who == plain(givenTo(book, task.key))) return {};
    const auto given = giveTasks(book, {task}, who.toStdString(), [] { return idMaker().next(); });
    if (!given) return {plain(given.error().text)};
    if (given.value().isEmpty()) return {};
    append(changes, given.value());
    return {{}, true, false, who.isEmpty()};
}

LineJudged judge(const Snapshot& book, const Task& task, const PastedLine& line,
                 ChangeSet& changes) {
    LineJudged ticked;
    LineJudged given;
    if (line.has("done")) ticked = judgeTick(book, task, line["done"], changes);
    if (line.has("who")) given = judgeGiven(book, task, line["who"], changes);
    return {ticked.trouble.isEmpty() ? given.trouble : ticked.trouble,
            ticked.changes || given.changes, ticked.isNew, ticked.takesBack || given.takesBack};
}

/// Found by its head alone, read as a day where it is one.
PasteColumn dayColumn(std::string token, QString name, bool needed) {
    auto column = plainColumn(std::move(token), std::move(name), needed);
    column.read = dayToken;
    return column;
}

bool isTick(const QString& typed) {
    return tickTyped(typed, {evening_text::done()}) != TickTyped::Other;
}

bool isHead(const QString& typed, const QString& head) {
    return typed.compare(head, Qt::CaseInsensitive) == 0;
}

/// What a column alone says of the tasks beside it; empty: neither of the two, by its head.
QString meantBy(const QStringList& values) {
    const auto& first = values.front();
    for (const auto& own : {head(WeekModel::Done), week_text::givenHead()})
        if (isHead(first, own)) return own;
    for (const auto& other : {week_text::dayHead(), head(WeekModel::What), head(WeekModel::About),
                              head(WeekModel::Yard), head(WeekModel::Number),
                              head(WeekModel::Count), head(WeekModel::Must), head(WeekModel::When)})
        if (isHead(first, other)) return {};
    const bool anyDay = std::any_of(values.begin(), values.end(), [](const QString& value) {
        return dayTyped(value).has_value();
    });
    const bool areTicks = std::all_of(values.begin(), values.end(), [](const QString& value) {
        return isTick(value) || dayTyped(value);
    });
    if (anyDay) return head(WeekModel::Done);
    if (!areTicks) return week_text::givenHead();
    // "no" alone could be somebody's initials: it takes no tick back unasked.
    const bool anyYes = std::any_of(values.begin(), values.end(), [](const QString& value) {
        return tickTyped(value, {evening_text::done()}) == TickTyped::Yes;
    });
    return anyYes ? head(WeekModel::Done) : QString();
}

}  // namespace

QString copiedWeek(const WeekModel& model) {
    std::string text;
    appendCells(text, {week_text::dayHead(), head(WeekModel::What), head(WeekModel::About),
                       head(WeekModel::Yard), head(WeekModel::Number), head(WeekModel::Count),
                       head(WeekModel::Must), head(WeekModel::When), head(WeekModel::Done),
                       week_text::givenHead()});
    for (const int row : taskRows(model)) {
        const auto& task = *model.taskAt(row);
        appendCells(text,
                    nameOf(model, row)
                        << cell(model, row, WeekModel::Number) << cell(model, row, WeekModel::Count)
                        << cell(model, row, WeekModel::Must) << cell(model, row, WeekModel::When)
                        << (task.done ? iso(*task.done) : QString())
                        << plain(givenTo(model.outlook()->snapshot, task.key)));
    }
    return plain(text);
}

PasteKind weekToPaste(const WeekModel& model) {
    Shown shown{model.outlook(), {}, {}};
    for (const int row : taskRows(model)) {
        shown.rows.add(nameOf(model, row), static_cast<int>(shown.tasks.size()));
        shown.tasks.push_back(*model.taskAt(row));
    }
    PasteKind kind;
    kind.head = week_text::head(model.week());
    kind.named = week_text::pastedName().toStdString();
    kind.takeIn = paste_text::takeInLines;
    kind.columns = {dayColumn("day", week_text::dayHead(), true),
                    plainColumn("task", head(WeekModel::What), true),
                    plainColumn("about", head(WeekModel::About)),
                    plainColumn("yard", head(WeekModel::Yard)),
                    dayColumn("done", head(WeekModel::Done), false),
                    plainColumn("who", week_text::givenHead()),
                    rowColumn()};
    kind.edit = [shown = std::move(shown)](const auto& columns, const auto& lines) {
        return editNamedLines(columns, lines, shown.rows, {"day", "task", "about", "yard"},
                              [&](int row, const PastedLine& line, ChangeSet& changes) {
                                  return judge(shown.outlook->snapshot,
                                               shown.tasks[static_cast<std::size_t>(row)], line,
                                               changes);
                              });
    };
    return kind;
}

QString weekPasteText(const WeekModel& model, int fromRow, const QString& pasted) {
    const auto values = columnAlone(pasted);
    const auto meant = values.isEmpty() ? QString() : meantBy(values);
    if (meant.isEmpty()) return pasted;  // the dialog asks for what is not there
    const auto places = placesOf(model);
    std::set<TaskKey> seen;
    std::vector<QStringList> names;
    for (int row = std::max(fromRow, 0); row < model.rowCount(); ++row)
        if (const auto* task = model.taskAt(row); task != nullptr && seen.insert(task->key).second)
            names.push_back(QStringList(QString::number(places.at(task->key) + 1)) +
                            nameOf(model, row));
    return besideNames(pasted,
                       {paste_text::row(), week_text::dayHead(), head(WeekModel::What),
                        head(WeekModel::About), head(WeekModel::Yard), meant},
                       names);
}

}  // namespace tenthday
