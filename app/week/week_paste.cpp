#include "week/week_paste.h"

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
    return {{}, true, !task.done};
}

LineJudged judgeGiven(const Snapshot& book, const Task& task, const QString& who,
                      ChangeSet& changes) {
    if (who == plain(givenTo(book, task.key))) return {};
    const auto given = giveTasks(book, {task}, who.toStdString(), [] { return idMaker().next(); });
    if (!given) return {plain(given.error().text)};
    if (given.value().isEmpty()) return {};
    append(changes, given.value());
    return {{}, true, false};
}

LineJudged judge(Shown& shown, const PastedLine& line, ChangeSet& changes) {
    const QStringList name{line["day"], line["task"], line["about"], line["yard"]};
    const auto row = shown.rows.take(name);
    if (!row) return {shown.rows.whyNone(name)};
    const auto& task = shown.tasks[static_cast<std::size_t>(*row)];
    const auto& book = shown.outlook->snapshot;
    LineJudged ticked;
    LineJudged given;
    if (line.has("done")) ticked = judgeTick(book, task, line["done"], changes);
    if (line.has("who")) given = judgeGiven(book, task, line["who"], changes);
    return {ticked.trouble.isEmpty() ? given.trouble : ticked.trouble,
            ticked.changes || given.changes, ticked.isNew};
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
    kind.columns = {plainColumn("day", week_text::dayHead(), true),
                    plainColumn("task", head(WeekModel::What), true),
                    plainColumn("about", head(WeekModel::About)),
                    plainColumn("yard", head(WeekModel::Yard)),
                    plainColumn("done", head(WeekModel::Done)),
                    plainColumn("who", week_text::givenHead())};
    kind.edit = [shown = std::move(shown)](const auto& columns, const auto& lines) {
        auto now = shown;  // each look at the lines begins anew
        return editLineByLine(columns, lines, [&](const PastedLine& line, ChangeSet& changes) {
            return judge(now, line, changes);
        });
    };
    return kind;
}

QString weekPasteText(const WeekModel& model, int fromRow, const QString& pasted) {
    std::vector<QStringList> names;
    for (const int row : taskRows(model))
        if (row >= fromRow) names.push_back(nameOf(model, row));
    const auto first = pasted.section(u'\n', 0, 0).simplified();
    const bool areTicks = first.compare(head(WeekModel::Done), Qt::CaseInsensitive) == 0;
    return besideNames(
        pasted,
        {week_text::dayHead(), head(WeekModel::What), head(WeekModel::About), head(WeekModel::Yard),
         areTicks ? head(WeekModel::Done) : week_text::givenHead()},
        names);
}

}  // namespace tenthday
