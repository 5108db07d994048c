#include "screen_text/trouble_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/words.h"
#include "timeline/late.h"

namespace tenthday::trouble_text {

QString lateBriefly() { return Words::tr("late"); }
QString ofBatch(const QString& label, const QString& words) {
    // One colon is enough: "707 late: 9 days without flying", but "702: builder free only from ..."
    return words.contains(QLatin1Char(':')) ? Words::tr("%1 %2").arg(label, words)
                                            : Words::tr("%1: %2").arg(label, words);
}
QString more(int count) { return Words::tr("and %1 more").arg(chart_text::number(count)); }

namespace {

/// They stand on one side of the season for grafts.
bool isEarly(const Finding& finding) {
    return finding.graftLimit && isFirst(finding.graftLimit->limit);
}

QString countedText(const Finding& one) {
    switch (one.kind) {
        case FindingKind::BoxOverfull:
            return Words::tr("%1 overfull");
        case FindingKind::TooManyCells:
            return Words::tr("%1 with too many cells");
        case FindingKind::QueenOutBeforeMove:
            return Words::tr("%1 moved too late: a queen is out first");
        case FindingKind::FragileMove:
            return Words::tr("%1 moved while fragile");
        case FindingKind::WildQueenOverdue:
            return Words::tr("%1 to look through for wild cells");
        case FindingKind::WorkOnDayOff:
            return Words::tr("%1 on a day off");
        case FindingKind::BuilderNotFree:
            return Words::tr("%1 in a builder that is not free");
        case FindingKind::NucNotFree:
            return Words::tr("%1 with a named nuc that is not ready");
        case FindingKind::CatchHoldsNucs:
            return Words::tr("%1 waiting for a catch");
        case FindingKind::BeyondLimits:
            return isEarly(one) ? Words::tr("%1 too early to graft")
                                : Words::tr("%1 too late to graft");
        case FindingKind::NoMatingDays:
            return Words::tr("%1 without a day to mate");
        case FindingKind::HungryBuilder:
            return Words::tr("%1 to feed in the dearth");
        case FindingKind::FewDrones:
            return Words::tr("%1 short of drones");
        case FindingKind::LeavesHold:
            return Words::tr("%1 out of a yard held for disease");
        case FindingKind::LarvaeNotSeen:
            return Words::tr("%1 without larvae seen");
        case FindingKind::YardFull:
            return Words::tr("%1 with too few nucs");
        case FindingKind::ShipWeather:
        case FindingKind::BankFull:
        case FindingKind::BankLong:
            break;  // of orders and banks
    }
    return Words::tr("%1 in trouble");
}

}  // namespace

bool areOfAKind(const Finding* one, const Finding* other) {
    if (one == nullptr || other == nullptr) return one == other;
    return one->kind == other->kind && isEarly(*one) == isEarly(*other);
}

QString counted(const Finding* one, int count) {
    return (one == nullptr ? Words::tr("%1 late") : countedText(*one))
        .arg(chart_text::number(count));
}

QString inTrouble(int count) { return Words::tr("%1 in trouble").arg(chart_text::number(count)); }

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
