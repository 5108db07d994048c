#include "screen_text/dates.h"

#include <QHash>
#include <QLocale>
#include <QTime>

#include "screen_text/words.h"

namespace tenthday {
namespace {

constexpr qint64 kJulianDayOfEpoch = 2440588;

/// The locale's order of day and month, without the year.
QString dayMonthFormat(const QLocale& locale) {
    const auto format = locale.dateFormat(QLocale::ShortFormat);
    return format.indexOf(QLatin1Char('M')) < format.indexOf(QLatin1Char('d'))
               ? QStringLiteral("MMM d")
               : QStringLiteral("d MMM");
}

QString partOfDay(Hour hour) {
    if (hour.value < 5) return Words::tr("night");
    if (hour.value < 11) return Words::tr("morning");
    if (hour.value < 14) return Words::tr("midday");
    if (hour.value < 18) return Words::tr("afternoon");
    if (hour.value < 22) return Words::tr("evening");
    return Words::tr("night");
}

QString clockOf(Moment moment) {
    const auto minutes = (moment - Moment{dayOf(moment)}).count();
    const QTime time(static_cast<int>(minutes / 60), static_cast<int>(minutes % 60));
    return QLocale().toString(time, QStringLiteral("H:mm"));
}

}  // namespace

QDate toQDate(Day day) {
    return QDate::fromJulianDay(day.time_since_epoch().count() + kJulianDayOfEpoch);
}

Day fromQDate(const QDate& date) {
    return Day{Days{static_cast<Days::rep>(date.toJulianDay() - kJulianDayOfEpoch)}};
}

QString shortDay(Day day) {
    // The chart asks for hundreds at each frame of a drag, its lanes side by side.
    struct Known {
        QLocale locale;
        QString format = dayMonthFormat(locale);
        QHash<Days::rep, QString> days;
    };
    constexpr int kMostDays = 1000;
    thread_local Known known;
    const QLocale locale;
    if (known.locale != locale) known = {locale, dayMonthFormat(locale), {}};
    if (known.days.size() > kMostDays) known.days.clear();
    auto& text = known.days[day.time_since_epoch().count()];
    if (text.isEmpty()) text = locale.toString(toQDate(day), known.format);
    return text;
}

QString weekdayAndDay(Day day) { return Words::tr("%1 %2").arg(weekdayName(day), shortDay(day)); }

QString weekdayName(Day day) { return QLocale().dayName(isoWeekday(day), QLocale::ShortFormat); }

QString longDay(Day day) {
    const QLocale locale;
    const bool monthFirst = dayMonthFormat(locale) == QStringLiteral("MMM d");
    const auto name = locale.dayName(isoWeekday(day), QLocale::LongFormat);
    const auto format = monthFirst ? QStringLiteral("MMMM d") : QStringLiteral("d MMMM");
    return Words::tr("%1 %2").arg(name, locale.toString(toQDate(day), format));
}

QString dayNumber(Day day) { return QLocale().toString(toQDate(day).day()); }

QString monthName(Day day) { return QLocale().standaloneMonthName(toQDate(day).month()); }

QString monthAndYear(Day day) { return Words::tr("%1 %2").arg(monthName(day), yearNumber(day)); }

QString yearNumber(Day day) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(toQDate(day).year());
}

QString weekLabel(Day day) { return Words::tr("W%1").arg(QLocale().toString(isoWeekOf(day).week)); }

QString clock(Moment moment) { return clockOf(moment); }

QString hourOfDay(int hour) { return clockOf(Moment{Day{}} + std::chrono::hours{hour}); }

QString dayAndClock(Moment moment) {
    return Words::tr("%1 %2").arg(weekdayAndDay(dayOf(moment)), clockOf(moment));
}

QString shortDayAndClock(Moment moment) {
    return Words::tr("%1 %2").arg(shortDay(dayOf(moment)), clockOf(moment));
}

QString dayAndPart(Moment moment) {
    return Words::tr("%1, %2").arg(weekdayAndDay(dayOf(moment)), partOfDay(hourOf(moment)));
}

}  // namespace tenthday
