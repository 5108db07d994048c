#include "phone/phone_calendar.h"

#include <QFileInfo>

#include "book/finished_file.h"
#include "exchange/calendar_history.h"
#include "exchange/task_event.h"
#include "screen_text/phone_text.h"
#include "screen_text/week_text.h"

namespace tenthday {
namespace {

EventWords wordsOf(const Outlook& outlook, const Task& task) {
    const auto yard = task.yard ? outlook.snapshot.find(*task.yard) : nullptr;
    return {phone_text::summary(outlook, task).toStdString(),
            phone_text::details(outlook, task).toStdString(), yard ? yard->label : std::string(),
            week_text::kind(task.key.rule).toStdString()};
}

/// What the file holds; nothing new is put in place of something that is not understood.
Result<Calendar> before(const QString& path, const std::string& text, const Uuid& book) {
    const auto left = [&](const std::string& why) {
        return Error{path.toStdString() + ": " + why + "; it is left as it is"};
    };
    auto calendar = readCalendar(text);
    if (!calendar)
        return left("is no calendar that this program wrote, or it is damaged (" +
                    calendar.error().text + ")");
    if (calendar.value().book != book) return left("is the calendar of another book");
    return calendar;
}

}  // namespace

Calendar calendarOf(const Outlook& outlook, const CalendarWish& wish) {
    const auto& book = outlook.snapshot.book();
    Calendar calendar{book.id.uuid, book.label, {}};
    for (const auto& task : tasksOf(outlook))
        if (wish.wants(task.key.rule))
            calendar.events.push_back(eventOf(task, wish.allDay, wordsOf(outlook, task)));
    return calendar;
}

Result<OutlookPtr> outlookOfToday(const OutlookPtr& shown, BookFile& file) {
    const auto& snapshot = shown->snapshot;
    const auto season = seasonOf(snapshot.all<Season>(), snapshot.today());
    if (season == snapshot.seasonId()) return shown;
    auto other = file.read({season, false});
    if (!other) return other.error();
    OutlookMemo memo;
    return outlookOf(other.value(), memo);
}

Result<void> updateCalendarFile(const KeptCalendar& kept, const Outlook& outlook, UtcSecond stamp) {
    const auto& path = kept.path;
    const auto now = calendarOf(outlook, kept.wish);
    std::string text;
    Calendar old;
    if (const QFileInfo info(path); info.exists() && (info.isDir() || info.size() > 0)) {
        auto whole = readWhole(path);
        if (!whole) return whole.error();
        text = std::move(whole).value();
        auto calendar = before(path, text, now.book);
        if (!calendar) return calendar.error();
        old = std::move(calendar).value();
    }
    const auto next = writeCalendar(continued(old, now, outlook.snapshot.today(), stamp));
    if (next == text) return {};
    return writeWhole(path, QByteArray::fromStdString(next));
}

}  // namespace tenthday
