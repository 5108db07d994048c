#include "exchange/field_text.h"
#include "headless/verb.h"
#include "phone/calendar_keeper.h"
#include "phone/phone_calendar.h"

namespace tenthday {
namespace {

/// "graft,cells_out".
Result<std::vector<TaskRule>> readKinds(std::string_view text) {
    std::vector<TaskRule> kinds;
    for (bool more = true; more;) {
        const auto comma = text.find(',');
        more = comma != std::string_view::npos;
        TaskRule kind{};
        if (const auto complaint = readField(text.substr(0, comma), kind))
            return optionError("--kinds", *complaint);
        kinds.push_back(kind);
        if (more) text.remove_prefix(comma + 1);
    }
    return kinds;
}

Result<KeptCalendar> readWish(const Arguments& arguments) {
    KeptCalendar calendar;
    const auto path = arguments.value("--out");
    if (!path) return optionError("--out", "is missing");
    calendar.path = QString::fromStdString(*path);
    if (!calendar.path.endsWith(QStringLiteral(".ics"), Qt::CaseInsensitive))
        return optionError("--out", "a name that ends in .ics is needed, not " + inQuotes(*path));
    if (const auto text = arguments.value("--kinds")) {
        auto kinds = readKinds(*text);
        if (!kinds) return kinds.error();
        calendar.wish.kinds = std::move(kinds).value();
    }
    calendar.wish.allDay = arguments.has("--all-day");
    return calendar;
}

/// A day that is given stands for the whole clock, so that the same call gives the same bytes.
UtcSecond stampFor(const Call& call, Day today) {
    if (call.arguments.has("--today")) return UtcSecond{today.time_since_epoch()};
    return stampOf(QDateTime::currentDateTimeUtc());
}

Answer run(const Call& call) {
    const auto calendar = readWish(call.arguments);
    if (!calendar) return Answer::wrongUse(calendar.error());
    const auto outlook = readOutlook(call);
    if (!outlook) return Answer::failed(outlook.error());
    const auto stamp = stampFor(call, outlook.value()->snapshot.today());
    const auto done = updateCalendarFile(calendar.value(), *outlook.value(), stamp);
    return done ? Answer{} : Answer::failed(done.error());
}

}  // namespace

const HeadlessVerb& icsVerb() {
    static const HeadlessVerb verb{"ics",
                                   {{"BOOK"}, {{"--out"}, {"--kinds"}, {"--all-day", false}}},
                                   "BOOK --out FILE.ics [--kinds TASK,TASK...] [--all-day]",
                                   "the season's tasks as a calendar; FILE goes on where it is one",
                                   false,
                                   run};
    return verb;
}

}  // namespace tenthday
