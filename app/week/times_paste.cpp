#include "week/times_paste.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "book/new_id.h"
#include "paste/named_rows.h"
#include "paste/table_lines.h"
#include "screen_text/paste_text.h"
#include "screen_text/times_text.h"
#include "screen_text/week_text.h"
#include "tasks/work_time.h"
#include "week/ways.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

IdSource freshIds() {
    return [] { return idMaker().next(); };
}

/// With a point or with the locale's sign; a unit behind it is no matter.
std::optional<double> numberTyped(QString typed) {
    typed.remove(times_text::minutes().trimmed(), Qt::CaseInsensitive);
    bool isGood = false;
    double number = QLocale().toDouble(typed.trimmed(), &isGood);
    if (!isGood) number = typed.trimmed().toDouble(&isGood);
    return isGood ? std::optional(number) : std::nullopt;
}

/// What is no number at all ("nan" reads as one) is out of reach too.
bool isInReach(double number) { return std::abs(number) <= 1e6; }

std::optional<std::int32_t> minutesTyped(const QString& typed) {
    const auto number = numberTyped(typed);
    if (!number || !isInReach(*number) || *number != std::floor(*number)) return std::nullopt;
    return static_cast<std::int32_t>(*number);
}

LineJudged take(const Result<ChangeSet>& edit, bool isNew, ChangeSet& changes) {
    if (!edit) return {plain(edit.error().text)};
    const auto& rows = edit.value().rows;
    changes.rows.insert(changes.rows.end(), rows.begin(), rows.end());
    return {{}, !rows.empty(), isNew && !rows.empty()};
}

LineJudged takenBack(LineJudged dropped) {
    dropped.takesBack = dropped.changes;
    return dropped;
}

/// Minutes of one part of the work, as a cell says them: none where nothing is said of it.
template <class Minutes>
struct Said {
    bool isThere = false;
    std::optional<Minutes> minutes;  ///< none: it cannot be read
};

Said<std::int32_t> onceSaid(const PastedLine& line) {
    const auto typed = line["once"];
    return {line.has("once"), typed.isEmpty() ? std::optional(0) : minutesTyped(typed)};
}

Said<Tenths> eachSaid(const PastedLine& line) {
    const auto typed = line["each"];
    const auto number = typed.isEmpty() ? std::optional(0.0) : numberTyped(typed);
    if (!number || !isInReach(*number) || !areTenths(*number)) return {line.has("each"), {}};
    return {line.has("each"), Tenths{static_cast<std::int32_t>(std::lround(*number * 10))}};
}

/// A line whose cells are all empty takes the user's own times back, as far as they are there.
LineJudged judgeEmpty(const Snapshot& book, TaskRule rule, const PastedLine& line,
                      ChangeSet& changes) {
    if (!taskMinutes(book, rule).own) return {};
    if (!line.has("once") || !line.has("each")) return {times_text::bothToTakeBack()};
    return takenBack(take(dropTimes(book, {rule}, {}), false, changes));
}

LineJudged judgeWork(const Snapshot& book, TaskRule rule, const PastedLine& line,
                     ChangeSet& changes) {
    if (!line.has("once") && !line.has("each")) return {times_text::noTimes()};
    if (line["once"].isEmpty() && line["each"].isEmpty())
        return judgeEmpty(book, rule, line, changes);
    const auto now = taskMinutes(book, rule);
    const auto once = onceSaid(line);
    const auto each = eachSaid(line);
    if (!once.minutes) return {paste_text::notANumber(line["once"])};
    if (!each.minutes) return {paste_text::notANumber(line["each"])};
    const WorkTime time{{},
                        1,
                        rule,
                        once.isThere ? *once.minutes : now.once,
                        each.isThere ? *each.minutes : now.each};
    if (time.minutes == now.once && time.each == now.each) return {};
    return take(setTimes(book, {time}, {}, freshIds()), !now.own, changes);
}

LineJudged judgeWay(const Snapshot& book, const DrivenWay& way, const QString& typed,
                    ChangeSet& changes) {
    const auto now = driveMinutes(book, way.from, way.to);
    if (typed.isEmpty() || typed.compare(times_text::notSet(), Qt::CaseInsensitive) == 0)
        return takenBack(take(dropTimes(book, {}, {way}), false, changes));
    const auto minutes = minutesTyped(typed);
    if (!minutes) return {paste_text::notANumber(typed)};
    if (minutes == now) return {};
    return take(setTimes(book, {}, {{{}, 1, way.from, way.to, *minutes}}, freshIds()),
                !now.has_value(), changes);
}

template <class Judge>
PasteKind kindOf(std::vector<PasteColumn> columns, NamedRows rows, std::vector<std::string> names,
                 Judge judge) {
    PasteKind kind;
    kind.head = times_text::head();
    kind.named = times_text::head().toStdString();
    kind.takeIn = paste_text::takeInLines;
    kind.columns = std::move(columns);
    kind.edit = [rows = std::move(rows), names = std::move(names), judge](const auto& heads,
                                                                          const auto& lines) {
        return editNamedLines(heads, lines, rows, names, judge);
    };
    return kind;
}

}  // namespace

QString copiedWorks(const Snapshot& book) {
    std::string text;
    appendCells(text, {times_text::workHead(0), times_text::workHead(1), times_text::workHead(2)});
    for (std::size_t i = 0; i < kTokenCount<TaskRule>; ++i) {
        const auto rule = static_cast<TaskRule>(i);
        const auto minutes = taskMinutes(book, rule);
        appendCells(text, {week_text::kind(rule), QString::number(minutes.once),
                           QLocale().toString(minutes.each.value / 10.0, 'f', 1)});
    }
    return plain(text);
}

QString copiedWays(const Snapshot& book) {
    std::string text;
    appendCells(text, {times_text::wayHead(0), times_text::wayHead(1), times_text::wayHead(2)});
    for (const auto& way : waysOf(book)) {
        const auto minutes = driveMinutes(book, way.from, way.to);
        appendCells(text, {placeName(book, way.from), placeName(book, way.to),
                           minutes ? QString::number(*minutes) : QString()});
    }
    return plain(text);
}

PasteKind worksToPaste(const Snapshot& book) {
    NamedRows rows;
    for (std::size_t i = 0; i < kTokenCount<TaskRule>; ++i)
        rows.add({week_text::kind(static_cast<TaskRule>(i))}, static_cast<int>(i));
    return kindOf({plainColumn("task", times_text::workHead(0), true),
                   plainColumn("once", times_text::workHead(1)),
                   plainColumn("each", times_text::workHead(2))},
                  std::move(rows), {"task"},
                  [book](int row, const PastedLine& line, ChangeSet& changes) {
                      return judgeWork(book, static_cast<TaskRule>(row), line, changes);
                  });
}

PasteKind waysToPaste(const Snapshot& book) {
    const auto ways = waysOf(book);
    NamedRows rows;
    for (std::size_t i = 0; i < ways.size(); ++i)
        rows.add({placeName(book, ways[i].from), placeName(book, ways[i].to)}, static_cast<int>(i));
    return kindOf({plainColumn("from", times_text::wayHead(0), true),
                   plainColumn("to", times_text::wayHead(1), true),
                   plainColumn("minutes", times_text::wayHead(2), true)},
                  std::move(rows), {"from", "to"},
                  [book, ways](int row, const PastedLine& line, ChangeSet& changes) {
                      return judgeWay(book, ways[static_cast<std::size_t>(row)], line["minutes"],
                                      changes);
                  });
}

bool areWays(const QString& pasted) {
    const auto read = readPasted(pasted.toStdString());
    if (!read || read.value().isEmpty()) return false;
    const auto& heads = read.value().lines.front();
    const auto has = [&](const QString& head) {
        return std::any_of(heads.begin(), heads.end(), [&](const std::string& cell) {
            return plain(cell).compare(head, Qt::CaseInsensitive) == 0;
        });
    };
    return has(times_text::wayHead(1)) || has(QStringLiteral("to"));
}

}  // namespace tenthday
