#include "screen_text/trouble_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/words.h"
#include "timeline/late.h"

namespace tenthday::trouble_text {

QString lateBriefly() { return Words::tr("late"); }
QString told(const QString& who, const QString& day, const QString& words) {
    const auto head = who.isEmpty() ? day : day.isEmpty() ? who : Words::tr("%1, %2").arg(who, day);
    if (head.isEmpty()) return words;
    // One colon is enough: "batch 707, late: 9 days", but "batch 702: builder free only from ..."
    return words.contains(QLatin1Char(':')) ? Words::tr("%1, %2").arg(head, words)
                                            : Words::tr("%1: %2").arg(head, words);
}
QString more(int count) { return Words::tr("and %1 more").arg(chart_text::number(count)); }

namespace {

/// They stand on one side of the season for grafts.
bool isEarly(const Finding& finding) {
    return finding.graftLimit && isFirst(finding.graftLimit->limit);
}

QString countedText(const Finding& one, int count) {
    switch (one.kind) {
        case FindingKind::BoxOverfull:
            return Words::tr("%Ln batch(es) overfull", nullptr, count);
        case FindingKind::TooManyCells:
            return Words::tr("%Ln batch(es) with too many cells", nullptr, count);
        case FindingKind::QueenOutBeforeMove:
            return Words::tr("%Ln batch(es) moved too late: a queen is out first", nullptr, count);
        case FindingKind::FragileMove:
            return Words::tr("%Ln batch(es) moved while fragile", nullptr, count);
        case FindingKind::WildQueenOverdue:
            return Words::tr("%Ln batch(es) to look through for wild cells", nullptr, count);
        case FindingKind::WorkOnDayOff:
            return Words::tr("%Ln batch(es) on a day off", nullptr, count);
        case FindingKind::BuilderNotFree:
            return Words::tr("%Ln batch(es) in a builder that is not free", nullptr, count);
        case FindingKind::NucNotFree:
            return Words::tr("%Ln batch(es) with a named nuc that is not ready", nullptr, count);
        case FindingKind::CatchHoldsNucs:
            return Words::tr("%Ln batch(es) waiting for a catch", nullptr, count);
        case FindingKind::BeyondLimits:
            return isEarly(one) ? Words::tr("%Ln batch(es) too early to graft", nullptr, count)
                                : Words::tr("%Ln batch(es) too late to graft", nullptr, count);
        case FindingKind::NoMatingDays:
            return Words::tr("%Ln batch(es) without a day to mate", nullptr, count);
        case FindingKind::HungryBuilder:
            return Words::tr("%Ln batch(es) to feed in the dearth", nullptr, count);
        case FindingKind::FewDrones:
            return Words::tr("%Ln batch(es) short of drones", nullptr, count);
        case FindingKind::LeavesHold:
            return Words::tr("%Ln batch(es) out of a yard held for disease", nullptr, count);
        case FindingKind::LarvaeNotSeen:
            return Words::tr("%Ln batch(es) without larvae seen", nullptr, count);
        case FindingKind::YardFull:
            return Words::tr("%Ln batch(es) with too few nucs", nullptr, count);
        case FindingKind::ShipWeather:
        case FindingKind::BankFull:
        case FindingKind::BankLong:
            break;  // of orders and banks
    }
    return Words::tr("%Ln batch(es) in trouble", nullptr, count);
}

}  // namespace

bool areOfAKind(const Finding* one, const Finding* other) {
    if (one == nullptr || other == nullptr) return one == other;
    return one->kind == other->kind && isEarly(*one) == isEarly(*other);
}

QString counted(const Finding* one, int count) {
    return one == nullptr ? Words::tr("%Ln batch(es) late", nullptr, count)
                          : countedText(*one, count);
}

QString inTrouble(int count) { return Words::tr("%Ln batch(es) in trouble", nullptr, count); }

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
