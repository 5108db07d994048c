#include "screen_text/weather_text.h"

#include <QLocale>
#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/words.h"
#include "weather/record_only.h"

namespace tenthday::weather_text {
namespace {

QString decimal(double value) { return QLocale().toString(value, 'f', 1); }

QString year(int year) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(year);
}

}  // namespace

QString pageEntry() { return Words::tr("Weathe&r"); }
QString head() { return Words::tr("Weather"); }

QString source(const MatingTable& mating) {
    if (const auto& seasons = mating.seasons(); seasons && seasons->size() > 0) {
        const auto& years = seasons->years();
        return Words::tr("Reckoned with %Ln past year(s) of the daily record, from %1 to %2.",
                         nullptr, static_cast<int>(years.size()))
            .arg(year(years.front()), year(years.back()));
    }
    if (mating.chain() && isRecordOnly(*mating.chain()))
        return Words::tr(
            "Only the days of this year are known: they count where they tell all of a batch's "
            "mating, else first eggs come at one fixed figure. Import a daily record of past "
            "years, or type the usual weather of the months.");
    if (mating.chain())
        return Words::tr(
            "Reckoned with the usual weather of the months: no past year holds the season whole. A "
            "daily record of past years would do better.");
    return Words::tr(
        "No weather is reckoned with yet: first eggs come at one fixed figure. Import a daily "
        "record of past years, or type the usual weather of the months.");
}

QString limit(const Facts& facts, Fact fact) {
    const auto& entry = facts.entry(fact);
    const auto value = fact_text::value(entry, facts[fact]);
    const auto source =
        facts.isOverridden(fact)
            ? fact_text::own()
            : QString::fromUtf8(entry.source.data(), static_cast<qsizetype>(entry.source.size()));
    return Words::tr("%1: %2 %3 (%4)")
        .arg(fact_text::name(fact), value, fact_text::unit(entry), source);
}

QString lastDays() { return Words::tr("Did queens fly? The last 14 days"); }

QString dayColumn(int column) {
    switch (column) {
        case 0:
            return Words::tr("Day");
        case 1:
            return Words::tr("Maximum, °C");
        case 2:
            return Words::tr("Seen");
        default:
            return Words::tr("Counts as");
    }
}

QString day(Day day, bool isToday) {
    return isToday ? Words::tr("%1, today").arg(weekdayAndDay(day)) : weekdayAndDay(day);
}

QString tenths(std::optional<Tenths> value) {
    return value ? decimal(value->value / 10.0) : QString();
}

QString flew(std::optional<bool> flew) {
    if (!flew) return Words::tr("not said");
    return *flew ? Words::tr("flew") : Words::tr("did not fly");
}

QString countsAs(std::optional<bool> flying) {
    if (!flying) return Words::tr("not known");
    return *flying ? Words::tr("a flying day") : Words::tr("no flying day");
}

QString flewButton() { return Words::tr("Flew (F)"); }
QString notButton() { return Words::tr("Did not fly (N)"); }
QString unsaidButton() { return Words::tr("Not said (Del)"); }
QString flightsOn(Day day) { return Words::tr("flights on %1").arg(weekdayAndDay(day)); }

QString fit(const std::optional<FlyFit>& fit, double inForce, int flew, int didNot) {
    if (!fit)
        return Words::tr(
                   "Once 20 days are ticked whose maximum is known, at least 3 each way, the limit "
                   "of warmth can be fitted to them. So far: %1 flew, %2 did not.")
            .arg(chart_text::number(flew), chart_text::number(didNot));
    const auto wrong = chart_text::number(fit->wrong);
    if (std::abs(fit->tmaxC - inForce) < 0.05)
        return Words::tr("Your %Ln tick(s) agree best with the %1 °C in force; against it: %2.",
                         nullptr, fit->ticks)
            .arg(decimal(inForce), wrong);
    return Words::tr("Your %Ln tick(s) say %1 °C; against it: %2, against the %3 °C in force: %4.",
                     nullptr, fit->ticks)
        .arg(decimal(fit->tmaxC), wrong, decimal(inForce), chart_text::number(fit->wrongNow));
}
QString useIt() { return Words::tr("&Use it"); }

QString months(bool inUse, bool pastYears) {
    if (pastYears)
        return Words::tr("Usual weather of the months (not in use: past years are recorded)");
    return inUse ? Words::tr("Usual weather of the months (in use)")
                 : Words::tr("Usual weather of the months");
}

QString monthColumn(int column) {
    switch (column) {
        case 0:
            return Words::tr("Month");
        case 1:
            return Words::tr("Mean maximum, °C");
        default:
            return Words::tr("Rain days");
    }
}

QString month(int month) { return QLocale().standaloneMonthName(month); }
QString usualWeather(int m) { return Words::tr("usual weather of %1").arg(month(m)); }

std::optional<std::optional<Tenths>> fromTyped(const QString& typed) {
    const auto text = typed.trimmed();
    if (text.isEmpty()) return std::optional<Tenths>();
    bool good = false;
    const double number = QLocale().toDouble(text, &good);
    if (!good || std::abs(number) > 1000) return std::nullopt;
    return std::optional(Tenths{static_cast<std::int32_t>(std::lround(number * 10))});
}

QString notANumber(const QString& typed) { return Words::tr("\"%1\" is no number.").arg(typed); }
QString maximumFirst() { return Words::tr("Type the mean maximum of the month first."); }
QString maximumBounds() { return Words::tr("A mean maximum is from -60 to 59.9 °C."); }
QString rainDayBounds() { return Words::tr("A month has from 0 to 31 rain days."); }

}  // namespace tenthday::weather_text
