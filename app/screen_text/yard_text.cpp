#include "screen_text/yard_text.h"

#include <QLocale>

#include "biology/drones.h"
#include "screen_text/fact_text.h"
#include "screen_text/setup_text.h"
#include "screen_text/words.h"

namespace tenthday::yard_text {
namespace {

/// "S1, S2", or that the number is the user's own.
QString sourceKey(const Facts& facts, Fact fact) {
    const auto source = facts.entry(fact).source;
    return facts.isOverridden(fact)
               ? fact_text::own()
               : QString::fromUtf8(source.data(), static_cast<qsizetype>(source.size()));
}

QString days(double days) { return QLocale().toString(days, 'g', 3); }

/// Where the age of the youngest comes from.
QString ageSource(DroneStage stage, const Facts& facts) {
    switch (stage) {
        case DroneStage::Larvae:
            return sourceKey(facts, Fact::EggH);
        case DroneStage::Sealed:
            return sourceKey(facts, Fact::DroneSealingD);
        case DroneStage::PurpleEyes:
            return Words::tr("derived from S57");
        default:
            return sourceKey(facts, Fact::DroneEmergenceD);
    }
}

QString youngest(DroneStage stage, const Facts& facts) {
    if (stage == DroneStage::CombIn)
        return Words::tr("Comb that is put in is laid into from that day on (common practice).");
    if (stage == DroneStage::Eggs) return Words::tr("The youngest eggs are laid that day.");
    return Words::tr("The youngest are %1 days from the egg (%2).")
        .arg(days(droneAge(stage, facts).youngest), ageSource(stage, facts));
}

}  // namespace

QString droneStage(DroneStage stage) {
    switch (stage) {
        case DroneStage::CombIn:
            return Words::tr("drone comb put in");
        case DroneStage::Eggs:
            return Words::tr("eggs");
        case DroneStage::Larvae:
            return Words::tr("larvae");
        case DroneStage::Sealed:
            return Words::tr("sealed brood");
        case DroneStage::PurpleEyes:
            return Words::tr("pupae with purple eyes");
        case DroneStage::Emerging:
            return Words::tr("emerging");
        case DroneStage::Flying:
            return Words::tr("flying");
    }
    return {};
}

QString matureBy(Day day) { return Words::tr("All mature by %1.").arg(setup_text::day(day)); }

QString whyMature(DroneStage stage, const Facts& facts) {
    if (stage == DroneStage::Flying) return Words::tr("Flying drones are taken as mature.");
    const auto mature =
        Words::tr(
            "Drones are mature %1 days from the egg: %2 until they emerge (%3) and "
            "%4 more (%5).")
            .arg(days(droneMatureAge(facts)), days(facts[Fact::DroneEmergenceD]),
                 sourceKey(facts, Fact::DroneEmergenceD), days(facts[Fact::DroneMatureD]),
                 sourceKey(facts, Fact::DroneMatureD));
    return Words::tr("%1 %2").arg(youngest(stage, facts), mature);
}

QString matureSources(const Facts& facts) {
    return fact_text::sources(facts.entry(Fact::DroneEmergenceD)) + u'\n' +
           fact_text::sources(facts.entry(Fact::DroneMatureD));
}

QString noteKind(YardNoteKind kind) {
    switch (kind) {
        case YardNoteKind::Flow:
            return Words::tr("nectar flow");
        case YardNoteKind::Dearth:
            return Words::tr("dearth");
        case YardNoteKind::Robbing:
            return Words::tr("robbing");
        case YardNoteKind::Disease:
            return Words::tr("disease hold");
    }
    return {};
}

QString note(YardNoteKind kind, Day from, Day until) {
    return Words::tr("%1, %2").arg(noteKind(kind), setup_text::dayOff(from, until));
}

QString notOverHint() {
    return Words::tr("Not over yet: the day you expect it to end; put it right later.");
}

QString inYard(const QString& yard, const QString& what) {
    return Words::tr("%1, %2").arg(yard, what);
}

}  // namespace tenthday::yard_text
