#include "screen_text/chart_text.h"

#include <QLocale>
#include <cmath>

#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::chart_text {
namespace {

int rounded(double count) { return static_cast<int>(std::lround(count)); }

}  // namespace

QString number(int count) { return QLocale().toString(count); }
QString expected(double count) {
    const double tenths = std::round(count * 10) + 0.0;  // no "-0"
    const bool isWhole = std::fmod(tenths, 10) == 0;
    return QLocale().toString(tenths / 10, 'f', isWhole ? 0 : 1);
}
QString seasonChart() { return Words::tr("Season chart"); }
QString batchBrief(const QString& label, const QString& graft, const QString& cellsOut) {
    return Words::tr("batch %1, graft %2, cells out %3").arg(label, graft, cellsOut);
}
QString more(int count) { return Words::tr("+%1").arg(number(count)); }
QString today() { return Words::tr("today"); }
QString todayOn(const QString& day) { return Words::tr("today, %1").arg(day); }
QString noBuilderYet() { return Words::tr("no builder yet"); }
QString forNucsHead() { return Words::tr("cells for nucs"); }
QString readyHead() { return Words::tr("ready nucs"); }
QString leftHead() { return Words::tr("left or too many"); }
QString builders() { return Words::tr("Builders"); }
QString matingNucs() { return Words::tr("Mating nucs"); }
QString nucs(int count) { return Words::tr("%Ln nuc(s)", nullptr, count); }
QString cells(int count) { return Words::tr("%Ln cell(s)", nullptr, count); }

QString ready(int count, int likely) {
    return likely > 0 ? Words::tr("%1 ready +%2").arg(number(count), number(likely))
                      : Words::tr("%1 ready").arg(number(count));
}

QString readyOn(const QString& day, int count, int likely) {
    return Words::tr("%1: %2").arg(day, ready(count, likely));
}

QString left(int count) {
    return count < 0 ? Words::tr("%1 too many").arg(number(-count))
                     : Words::tr("%1 left").arg(number(count));
}

QString nucsToFree(int count) { return Words::tr("%Ln nuc(s) to free", nullptr, count); }
QString nucsShort(int count) { return Words::tr("%Ln nuc(s) short", nullptr, count); }

QString noRoom() { return QChar(0x2026); }

QString readyShort(int count, int likely) {
    return likely > 0 ? Words::tr("%1 +%2").arg(number(count), number(likely)) : number(count);
}

QString nucsToFreeShort(int count) { return Words::tr("free %1").arg(number(count)); }

QString leftShort(int count) { return count < 0 ? QChar(0x2212) + number(-count) : number(count); }

QString trouble(const Finding& finding) {
    switch (finding.kind) {
        case FindingKind::BoxOverfull:
            if (finding.dearth)
                return Words::tr("dearth: %1 cells, room for %2")
                    .arg(number(rounded(finding.count)), number(rounded(finding.limit)));
            return finding.sealed
                       ? Words::tr("overfull: %1 sealed, room for %2")
                             .arg(number(rounded(finding.count)), number(rounded(finding.limit)))
                       : Words::tr("overfull: %1 cells, room for %2")
                             .arg(number(rounded(finding.count)), number(rounded(finding.limit)));
        case FindingKind::TooManyCells:
            return Words::tr("too many cells");
        case FindingKind::QueenOutBeforeMove:
            return Words::tr("queen out first");
        case FindingKind::FragileMove:
            return Words::tr("moved while fragile");
        case FindingKind::WildQueenOverdue:
            return Words::tr("wild cells: look today");
        case FindingKind::WorkOnDayOff:
            return Words::tr("on a day off");
        case FindingKind::BuilderNotFree:
            return finding.freeFrom
                       ? Words::tr("builder free only from %1").arg(shortDay(*finding.freeFrom))
                       : Words::tr("after the builder's last day");
        case FindingKind::NucNotFree:
            return Words::tr("%1: %2").arg(QString::fromStdString(finding.nucs),
                                           notReady(finding.why));
        case FindingKind::CatchHoldsNucs:
            return Words::tr("%Ln wait(s) for the catch", nullptr, rounded(finding.count));
        case FindingKind::BeyondLimits:
            return isFirst(finding.graftLimit->limit)
                       ? Words::tr("too early: first graft on %1")
                             .arg(shortDay(*finding.graftLimit->day))
                       : Words::tr("too late: last graft on %1")
                             .arg(shortDay(*finding.graftLimit->day));
        case FindingKind::NoMatingDays:
            return finding.count > 0 ? Words::tr("no day on which they can mate")
                                     : Words::tr("days at the station not given");
        case FindingKind::HungryBuilder:
            return Words::tr("dearth: feed, or %1 % take")
                .arg(number(rounded(finding.limit * 100)));
        case FindingKind::LeavesHold:
            return (finding.count > 0
                        ? Words::tr("left %1, held for disease until %2: tell the bee inspector")
                        : Words::tr("out of %1, which is held for disease until %2: ask the bee "
                                    "inspector"))
                .arg(QString::fromStdString(finding.otherLabel), shortDay(dayOf(finding.until)));
        case FindingKind::ShipWeather:
            return finding.count < finding.limit
                       ? Words::tr(
                             "%1 °C on the way, queens should have %2 °C or more: wait, or "
                             "pack for it")
                             .arg(number(rounded(finding.count)), number(rounded(finding.limit)))
                       : Words::tr(
                             "%1 °C on the way, queens should have %2 °C or less: wait, or "
                             "pack for it")
                             .arg(number(rounded(finding.count)), number(rounded(finding.limit)));
        case FindingKind::BankFull:
            return Words::tr("%1 queens in a bank that keeps up to %2: set up another bank colony")
                .arg(number(rounded(finding.count)), number(rounded(finding.limit)));
        case FindingKind::BankLong:
            return Words::tr("%1 in the bank for longer than %2 days: use these queens first")
                .arg(number(rounded(finding.count)), number(rounded(finding.limit)));
        case FindingKind::LarvaeNotSeen:
            return (finding.count > 0
                        ? Words::tr("%1 has no larvae fit to graft: take a queen in reserve")
                        : Words::tr("look whether %1 has larvae fit to graft"))
                .arg(QString::fromStdString(finding.otherLabel));
        case FindingKind::YardFull:
            return Words::tr("room for %1 of %Ln cell(s) in %2", nullptr, rounded(finding.count))
                .arg(number(rounded(finding.limit)), QString::fromStdString(finding.otherLabel));
        case FindingKind::FewDrones:
            if (finding.freeFrom)
                return Words::tr("drones mature only from %1").arg(shortDay(*finding.freeFrom));
            return Words::tr("drone colonies: %1 of %2")
                .arg(number(rounded(finding.count)), number(rounded(finding.limit)));
    }
    return {};
}

QString nuc(const QString& box, const QString& side) {
    return side == QStringLiteral("-") ? box : Words::tr("%1 %2").arg(box, side);
}

QString notReady(NotReady why) {
    switch (why) {
        case NotReady::None:
            return Words::tr("ready");
        case NotReady::NotStocked:
            return Words::tr("not stocked");
        case NotReady::QueenlessTooShort:
            return Words::tr("queenless too short");
        case NotReady::HoldsCell:
            return Words::tr("holds a cell");
        case NotReady::HoldsVirgin:
            return Words::tr("holds a virgin");
        case NotReady::DueToFly:
            return Words::tr("her queen is due to fly");
        case NotReady::Laying:
            return Words::tr("her queen lays");
        case NotReady::AwaitingCatch:
            return Words::tr("her queen is to be caught");
        case NotReady::NeedsBrood:
            return Words::tr("needs open brood first");
        case NotReady::Retired:
            return Words::tr("given up or not standing");
    }
    return {};
}

QString state(NucState state) {
    switch (state) {
        case NucState::NotStocked:
            return Words::tr("not stocked");
        case NucState::Ready:
            return Words::tr("no cell, no queen");
        case NucState::Cell:
            return Words::tr("ripe cell");
        case NucState::Virgin:
            return Words::tr("virgin");
        case NucState::DueToFly:
            return Words::tr("due to fly");
        case NucState::Laying:
            return Words::tr("laying, not judged");
        case NucState::JudgedGood:
            return Words::tr("judged good");
        case NucState::NoQueen:
            return Words::tr("no queen found");
        case NucState::DroneLayer:
            return Words::tr("drone layer");
        case NucState::Caught:
            return Words::tr("queen caught");
        case NucState::Spent:
            return Words::tr("spent");
    }
    return {};
}

QString event(Event event) {
    switch (event) {
        case Event::Confine:
            return Words::tr("confine breeder queen");
        case Event::FreeBreeder:
            return Words::tr("free breeder queen");
        case Event::MakeUpBuilder:
            return Words::tr("make up builder");
        case Event::Graft:
            return Words::tr("graft");
        case Event::TakeCount:
            return Words::tr("take count");
        case Event::TopUp:
            return Words::tr("top-up day");
        case Event::ToFinisher:
            return Words::tr("starter to finisher");
        case Event::Sealed:
            return Words::tr("sealed");
        case Event::FragileFrom:
            return Words::tr("fragile from");
        case Event::FragileUntil:
            return Words::tr("fragile until");
        case Event::CageFrom:
            return Words::tr("cage from");
        case Event::Ripe:
            return Words::tr("ripe");
        case Event::LatestMove:
            return Words::tr("latest move");
        case Event::FirstOut:
            return Words::tr("first queen out");
        case Event::Emergence:
            return Words::tr("emergence");
        case Event::Mature:
            return Words::tr("mature");
        case Event::DueToFly:
            return Words::tr("due to fly");
        case Event::FirstEggs:
            return Words::tr("first eggs");
        case Event::FirstLook:
            return Words::tr("first look");
        case Event::SealedBrood:
            return Words::tr("sealed brood");
        case Event::Catch:
            return Words::tr("catch");
    }
    return {};
}

QString builderKind(BuilderKind kind) {
    switch (kind) {
        case BuilderKind::Starter:
            return Words::tr("starter");
        case BuilderKind::Finisher:
            return Words::tr("finisher");
        case BuilderKind::StarterFinisher:
            return Words::tr("starter and finisher");
        case BuilderKind::Incubator:
            return Words::tr("incubator");
        case BuilderKind::Holding:
            return Words::tr("holding");
    }
    return {};
}

QString legend(LegendEntry entry) {
    switch (entry) {
        case LegendEntry::OpenCells:
            return Words::tr("open cells");
        case LegendEntry::SealedCells:
            return Words::tr("sealed, ripe");
        case LegendEntry::Virgin:
            return Words::tr("virgin");
        case LegendEntry::DueToFly:
            return Words::tr("due to fly");
        case LegendEntry::FirstEggs:
            return Words::tr("first eggs due, as high as their chance");
        case LegendEntry::Laying:
            return Words::tr("laying, not judged");
        case LegendEntry::JudgedGood:
            return Words::tr("judged good");
        case LegendEntry::NoQueen:
            return Words::tr("no queen found");
        case LegendEntry::Ready:
            return Words::tr("ready for a cell");
        case LegendEntry::Likely:
            return Words::tr("likely, once caught (+5)");
        case LegendEntry::Waiting:
            return Words::tr("needs brood, or too soon");
        case LegendEntry::NotStocked:
            return Words::tr("not stocked");
        case LegendEntry::LookDue:
            return Words::tr("look for wild cells");
        case LegendEntry::LookDone:
            return Words::tr("looked");
        case LegendEntry::Rest:
            return Words::tr("rest");
        case LegendEntry::FlyingDay:
            return Words::tr("flying day");
        case LegendEntry::NoFlyingDay:
            return Words::tr("no flying day");
        case LegendEntry::FlyingChance:
            return Words::tr("chance of a flying day");
        case LegendEntry::DronesMature:
            return Words::tr("drones mature");
        case LegendEntry::OutsideLimits:
            return Words::tr("outside the season for grafts");
    }
    return {};
}

}  // namespace tenthday::chart_text
