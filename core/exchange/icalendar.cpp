#include "exchange/icalendar.h"

#include "exchange/content_lines.h"
#include "exchange/icalendar_parts.h"

namespace tenthday {
namespace {

/// Writes lines in the order in which they are asked for.
class Writer {
public:
    void line(std::string_view line) { appendContentLine(text_, line); }
    void text(std::string_view name, std::string_view text) {
        line(std::string(name) + ":" + escapedText(text));
    }
    void textIfAny(std::string_view name, std::string_view value) {
        if (!value.empty()) text(name, value);
    }
    [[nodiscard]] std::string done() { return std::move(text_); }

private:
    std::string text_;
};

/// 3.6.1: an all-day event ends on the next day, which is no part of it.
void writeTimes(Writer& writer, const CalendarEvent& event) {
    if (!event.hour) {
        writer.line("DTSTART;VALUE=DATE:" + icalDate(event.day));
        writer.line("DTEND;VALUE=DATE:" + icalDate(event.day + Days{1}));
        return;
    }
    const auto start = momentOf(event.day, event.hour);
    writer.line("DTSTART:" + icalTime(start));
    writer.line("DTEND:" + icalTime(start + std::chrono::minutes{event.minutes}));
}

void writeCategories(Writer& writer, const std::vector<std::string>& categories) {
    std::string line;
    for (const auto& category : categories)
        line += (line.empty() ? "CATEGORIES:" : ",") + escapedText(category);
    if (!line.empty()) writer.line(line);
}

/// 3.6.6: a display alarm needs a text of its own.
void writeAlarm(Writer& writer, const CalendarEvent& event) {
    if (!event.alarm) return;
    writer.line("BEGIN:VALARM");
    writer.line("ACTION:DISPLAY");
    writer.text("DESCRIPTION", event.summary);
    writer.line("TRIGGER:" + icalDuration(*event.alarm));
    writer.line("END:VALARM");
}

void writeEvent(Writer& writer, const CalendarEvent& event) {
    writer.line("BEGIN:VEVENT");
    writer.text("UID", event.uid);
    writer.line("DTSTAMP:" + icalUtc(event.stamp));
    writer.line("SEQUENCE:" + std::to_string(event.sequence));
    writeTimes(writer, event);
    writer.text("SUMMARY", event.summary);
    writer.textIfAny("DESCRIPTION", event.description);
    writer.textIfAny("LOCATION", event.location);
    writeCategories(writer, event.categories);
    writer.line(event.cancelled ? "STATUS:CANCELLED" : "STATUS:CONFIRMED");
    // What lasts all day, or is off, keeps nobody from anything else (3.8.2.7).
    writer.line(event.hour && !event.cancelled ? "TRANSP:OPAQUE" : "TRANSP:TRANSPARENT");
    writeAlarm(writer, event);
    writer.line("END:VEVENT");
}

}  // namespace

std::string writeCalendar(const Calendar& calendar) {
    Writer writer;
    writer.line("BEGIN:VCALENDAR");
    writer.line("VERSION:2.0");
    writer.line("PRODID:" + std::string(kProductId));
    writer.line("CALSCALE:GREGORIAN");
    writer.line("UID:" + toText(calendar.book));  // RFC 7986, 5.3
    writer.text("NAME", calendar.name);           // RFC 7986, 5.1
    writer.text("X-WR-CALNAME", calendar.name);   // the same for phones that know no NAME
    for (const auto& event : calendar.events) writeEvent(writer, event);
    writer.line("END:VCALENDAR");
    return writer.done();
}

bool saySame(const CalendarEvent& a, const CalendarEvent& b) {
    // As they are written, so that what cannot be written makes no difference.
    const auto written = [](CalendarEvent event) {
        event.sequence = 0;
        event.stamp = {};
        event.cancelled = false;
        Writer writer;
        writeEvent(writer, event);
        return writer.done();
    };
    return written(a) == written(b);
}

}  // namespace tenthday
