#include "screen_text/trouble_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/words.h"
#include "timeline/late.h"

namespace tenthday::trouble_text {

QString lateBriefly() { return Words::tr("late"); }
QString ofBatch(const QString& label, const QString& words) {
    return Words::tr("%1 %2").arg(label, words);
}
QString moreNamed(int count, const QStringList& first) {
    const auto names = first.join(QStringLiteral(", "));
    return (count > first.size() ? Words::tr("and %1 more: %2 ...") : Words::tr("and %1 more: %2"))
        .arg(chart_text::number(count), names);
}
QString more(int count) { return Words::tr("and %1 more").arg(chart_text::number(count)); }

CardText lateCard(const Outlook& outlook, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    if (batch == nullptr || flying_text::late(outlook, *batch).isEmpty()) return {};
    const auto& facts = outlook.snapshot.facts();
    const auto& line = batch->timeline;
    CardText card;
    card.title = Words::tr("Batch %1 is late").arg(QString::fromStdString(batch->batch->label));
    card.lines.push_back(
        {Words::tr("days without flying"),
         chart_text::number(lateByWeather(line, *outlook.mating, facts)),
         Words::tr("recorded or forecast, from the first day its virgins could fly to the day of "
                   "the first look"),
         CardTone::Caution});
    card.lines.push_back({Words::tr("first eggs"), weekdayAndDay(dayOf(line.levelEggs)),
                          Words::tr("%1 were every day a flying day (S47, S49, S58)")
                              .arg(weekdayAndDay(dayOf(fairFirstEggs(line, facts))))});
    card.lines.push_back({Words::tr("first look"), weekdayAndDay(line.hold.lookDay), {}});
    return card;
}

}  // namespace tenthday::trouble_text
