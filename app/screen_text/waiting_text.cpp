#include "screen_text/waiting_text.h"

#include <QLocale>
#include <cmath>

#include "outlook/sky.h"
#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"
#include "timeline/flying_wait.h"
#include "weather/record_only.h"

namespace tenthday::waiting_text {
namespace {

constexpr double kWorthTelling = 0.01;

QString percent(double share) {
    return Words::tr("%1 %").arg(QLocale().toString(static_cast<int>(std::lround(share * 100))));
}

/// How the first days of a wait are known.
QString knownBy(const DayWindow& days, Day today) {
    if (days.last <= today) return Words::tr("seen");
    return days.first > today ? Words::tr("forecast") : Words::tr("seen and forecast");
}

QString whyKnown(const DayWindow& days, Day today) {
    const auto by = knownBy(days, today);
    return days.size() == 1 ? Words::tr("no flying day on %1 (%2)").arg(shortDay(days.first), by)
                            : Words::tr("no flying day from %1 to %2 (%3)")
                                  .arg(shortDay(days.first), shortDay(days.last), by);
}

QString whyPossible(const FlyingWait& wait) {
    if (wait.years)
        return Words::tr("in %1 of %2 past years no flying day from %3 to %4")
            .arg(chart_text::number(wait.years->with), chart_text::number(wait.years->all),
                 shortDay(wait.days.first), shortDay(wait.days.last));
    return Words::tr("by the months' usual weather a chance of %1 of no flying day from %2 to %3")
        .arg(percent(wait.chance), shortDay(wait.days.first), shortDay(wait.days.last));
}

/// The days after those that are known.
QString whyLonger(const FlyingWait& wait) {
    const auto until = shortDay(wait.days.last);
    if (wait.years)
        return Words::tr("and in %1 of %2 past years none until %3")
            .arg(chart_text::number(wait.years->with), chart_text::number(wait.years->all), until);
    return Words::tr("and by the months' usual weather a chance of %1 of none until %2")
        .arg(percent(wait.chance), until);
}

/// What the day was reckoned from, where no days without flying stand behind it.
QString whyNoWait(const Outlook& outlook, const BatchOutlook& batch) {
    if (batch.batch->mating == Mating::Insemination)
        return Words::tr("inseminated: weather does not count");
    if (batch.batch->mating == Mating::Station) return Words::tr("by the days at the station");
    if (!batch.timeline.weather)
        return because::days(outlook.snapshot.facts(), Fact::FirstEggsD,
                             Words::tr("after emergence, whatever the weather"));
    return Words::tr("weather hardly keeps them from flying");
}

/// With past years, each of them once. None for a batch that does not fly at home.
std::shared_ptr<const FlyingSeasons> yearsFor(const Outlook& outlook, const BatchOutlook& batch) {
    if (batch.batch->mating != Mating::Open || !outlook.mating || !outlook.mating->seasons())
        return nullptr;
    // They lean on what the mating table leans on, and are asked for at each hover.
    thread_local std::weak_ptr<const MatingTable> of;
    thread_local std::shared_ptr<const FlyingSeasons> years;
    if (of.lock() != outlook.mating) {
        years = pastYears(outlook.snapshot);
        of = outlook.mating;
    }
    return years;
}

/// One part, or two where the days are known in part.
QStringList why(const Outlook& outlook, const BatchOutlook& batch) {
    if (batch.batch->mating != Mating::Open || !outlook.mating) return {whyNoWait(outlook, batch)};
    const auto years = yearsFor(outlook, batch);
    const auto wait =
        flyingWait(batch.timeline, *outlook.mating, years.get(), outlook.snapshot.facts());
    if (!wait) return {whyNoWait(outlook, batch)};
    if (wait->known == 0) return {whyPossible(*wait)};
    const DayWindow known{wait->days.first, wait->days.first + Days{wait->known - 1}};
    QStringList parts{whyKnown(known, outlook.snapshot.today())};
    if (!wait->isKnown()) parts += whyLonger(*wait);
    return parts;
}

QString neverWhy(const Outlook& outlook, const BatchOutlook& batch) {
    const auto years = yearsFor(outlook, batch);
    const auto never =
        years ? neverMated(batch.timeline, *years, outlook.snapshot.facts()) : std::nullopt;
    if (never)
        return Words::tr("in %1 of %2 past years %3 or more")
            .arg(chart_text::number(never->years.with), chart_text::number(never->years.all),
                 percent(std::floor(never->least * 100) / 100));
    if (batch.batch->mating == Mating::Station) return Words::tr("by the days at the station");
    if (outlook.mating->seasons()) return Words::tr("counted with the past years");
    return outlook.mating->chain() && isRecordOnly(*outlook.mating->chain())
               ? Words::tr("by the days recorded and forecast")
               : Words::tr("by the months' usual weather");
}

QString byDay(const Outlook& outlook, const BatchOutlook& batch) {
    return Words::tr("%1 by %2")
        .arg(percent(outlook.snapshot.facts()[Fact::LikelyLevel]),
             shortDay(dayOf(batch.timeline.levelEggs)));
}

}  // namespace

std::vector<CardLine> level(const Outlook& outlook, const BatchOutlook& batch) {
    const auto parts = why(outlook, batch);
    std::vector<CardLine> lines{
        {Words::tr("of those that will lay"), byDay(outlook, batch), parts.front()}};
    if (parts.size() > 1) lines.push_back({{}, {}, parts.back()});
    return lines;
}

std::optional<CardLine> never(const Outlook& outlook, const BatchOutlook& batch) {
    const double share = batch.timeline.neverMates;
    if (share < kWorthTelling || !outlook.mating) return std::nullopt;
    return CardLine{Words::tr("never mate for weather"), percent(share), neverWhy(outlook, batch)};
}

QString sentence(const Outlook& outlook, const BatchOutlook& batch) {
    return Words::tr("Of those that will lay, %1: %2.")
        .arg(byDay(outlook, batch), why(outlook, batch).join(QStringLiteral(", ")));
}

}  // namespace tenthday::waiting_text
