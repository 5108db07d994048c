#include "screen_text/fact_text.h"

#include <QLocale>

#include "facts/sources.h"
#include "screen_text/words.h"

namespace tenthday::fact_text {
namespace {

/// In the order of Fact; a test compares them with the facts revision.
constexpr const char* kNames[] = {
    QT_TRANSLATE_NOOP("Words", "Egg, from laying to hatching"),
    QT_TRANSLATE_NOOP("Words", "Queen emerges, from the egg at 34.5 °C"),
    QT_TRANSLATE_NOOP("Words", "Spread (standard deviation) of emergence among queens of one age"),
    QT_TRANSLATE_NOOP("Words", "Cell is sealed, from the egg"),
    QT_TRANSLATE_NOOP("Words", "Youngest larva grafted when no age is given, since hatching"),
    QT_TRANSLATE_NOOP("Words", "Oldest larva grafted when no age is given, since hatching"),
    QT_TRANSLATE_NOOP("Words", "Temperature of the brood nest and of the incubator unless set"),
    QT_TRANSLATE_NOOP("Words", "Lower end of the measured temperatures"),
    QT_TRANSLATE_NOOP("Words",
                      "Later emergence when sealed cells are kept at the lower end throughout"),
    QT_TRANSLATE_NOOP("Words", "Breeder queen is confined to the comb so long before the graft"),
    QT_TRANSLATE_NOOP("Words", "Breeder queen stays confined so long"),
    QT_TRANSLATE_NOOP("Words", "Builder is made up and queenless so long before the graft"),
    QT_TRANSLATE_NOOP("Words", "Started cells stay so long in a closed starter"),
    QT_TRANSLATE_NOOP("Words", "Started cells can be counted from here after the graft"),
    QT_TRANSLATE_NOOP("Words", "Started cells should be counted by here after the graft"),
    QT_TRANSLATE_NOOP("Words", "A bar can be topped up until here after the graft"),
    QT_TRANSLATE_NOOP("Words", "Cells are fragile from here after the graft"),
    QT_TRANSLATE_NOOP("Words", "Cells are fragile until here after the graft"),
    QT_TRANSLATE_NOOP("Words",
                      "Sealed cells go to an incubator, a careful step, here after the graft"),
    QT_TRANSLATE_NOOP("Words",
                      "Nursery cages are put over cells in place from here after the graft"),
    QT_TRANSLATE_NOOP("Words",
                      "Cells are ripe and leave the box by road from here after the graft"),
    QT_TRANSLATE_NOOP("Words", "Risk of a queen out in the box at the latest move"),
    QT_TRANSLATE_NOOP("Words", "Virgin is mature, from emergence"),
    QT_TRANSLATE_NOOP("Words", "Earliest age of first flights"),
    QT_TRANSLATE_NOOP("Words", "Share of virgins due to fly from the earliest age"),
    QT_TRANSLATE_NOOP("Words", "Share of virgins due to fly a day later"),
    QT_TRANSLATE_NOOP("Words", "Share of virgins due to fly two days later"),
    QT_TRANSLATE_NOOP("Words", "Share of queens that fly on a second day"),
    QT_TRANSLATE_NOOP("Words", "First eggs, from the last mating flight"),
    QT_TRANSLATE_NOOP("Words", "Last age at which a virgin can still mate"),
    QT_TRANSLATE_NOOP("Words", "Age at first egg, where no weather is known"),
    QT_TRANSLATE_NOOP("Words",
                      "Spread (standard deviation) of age at first egg, where no weather is known"),
    QT_TRANSLATE_NOOP("Words", "First look into the nuc, from emergence"),
    QT_TRANSLATE_NOOP("Words", "Sealed worker brood after the first eggs"),
    QT_TRANSLATE_NOOP("Words", "Age at catching under the rule by age"),
    QT_TRANSLATE_NOOP("Words", "Nuc is queenless so long before it takes a cell"),
    QT_TRANSLATE_NOOP(
        "Words", "Nuc needs open brood first after so long without open brood, virgin or queen"),
    QT_TRANSLATE_NOOP("Words", "Open brood of a stocked or dequeened colony is all sealed after"),
    QT_TRANSLATE_NOOP("Words", "A virgin not found at the first look is taken as lost at this age"),
    QT_TRANSLATE_NOOP("Words", "Grafts that are started"),
    QT_TRANSLATE_NOOP("Words", "Started cells that are sealed"),
    QT_TRANSLATE_NOOP("Words", "Ripe cells from which a queen emerges"),
    QT_TRANSLATE_NOOP("Words", "Virgins that mate and lay, in fair weather"),
    QT_TRANSLATE_NOOP("Words", "Laying queens judged good"),
    QT_TRANSLATE_NOOP("Words",
                      "Spread (standard deviation) between batches: grafts that are started"),
    QT_TRANSLATE_NOOP("Words",
                      "Spread (standard deviation) between batches: started cells that are sealed"),
    QT_TRANSLATE_NOOP(
        "Words",
        "Spread (standard deviation) between batches: ripe cells from which a queen emerges"),
    QT_TRANSLATE_NOOP(
        "Words",
        "Spread (standard deviation) between batches: virgins that mate and lay, in fair weather"),
    QT_TRANSLATE_NOOP("Words",
                      "Spread (standard deviation) between batches: laying queens judged good"),
    QT_TRANSLATE_NOOP("Words", "Started cells in a box that finishes"),
    QT_TRANSLATE_NOOP("Words", "Started cells in a starter"),
    QT_TRANSLATE_NOOP("Words", "From one batch into a starter to the next"),
    QT_TRANSLATE_NOOP("Words", "From one batch into a finisher to the next"),
    QT_TRANSLATE_NOOP("Words", "From one batch into a box that starts and finishes to the next"),
    QT_TRANSLATE_NOOP("Words", "Wild queen of a 96 h larva is out, from dequeening"),
    QT_TRANSLATE_NOOP("Words", "Wild queen of a 72 h larva is out, from dequeening"),
    QT_TRANSLATE_NOOP("Words", "Wild queen of a 36 h larva is out, from dequeening"),
    QT_TRANSLATE_NOOP("Words", "Wild cells of a dequeening have all run out"),
    QT_TRANSLATE_NOOP("Words", "All wild cells are begun, from dequeening"),
    QT_TRANSLATE_NOOP("Words", "First look for wild cells, from dequeening"),
    QT_TRANSLATE_NOOP("Words", "First look for wild cells, last day"),
    QT_TRANSLATE_NOOP("Words", "Second look for wild cells, from dequeening"),
    QT_TRANSLATE_NOOP("Words", "Second look for wild cells, last day"),
    QT_TRANSLATE_NOOP("Words", "Share of queens that should have eggs by the first look"),
    QT_TRANSLATE_NOOP("Words", "Hour at which the work of a day starts"),
    QT_TRANSLATE_NOOP("Words", "A flying day is as warm as this at least"),
    QT_TRANSLATE_NOOP("Words", "A flying day has no more wind than this"),
    QT_TRANSLATE_NOOP("Words", "A flying day has less rain than this"),
    QT_TRANSLATE_NOOP("Words", "Past years also serve shifted by up to so many days"),
    QT_TRANSLATE_NOOP("Words", "Worker emerges, from the egg"),
    QT_TRANSLATE_NOOP("Words", "Drone brood is sealed, from the egg"),
    QT_TRANSLATE_NOOP("Words", "Drone emerges, from the egg"),
    QT_TRANSLATE_NOOP("Words", "Drone is mature, from emergence"),
    QT_TRANSLATE_NOOP("Words", "Drone comb is put in so long before the first flights of virgins"),
    QT_TRANSLATE_NOOP("Words", "Strong drone colonies within reach, at least"),
    QT_TRANSLATE_NOOP("Words", "Virgins that fly at one time for each drone colony"),
    QT_TRANSLATE_NOOP("Words", "Last graft, before drones are thrown out"),
    QT_TRANSLATE_NOOP("Words", "From emergence to eggs, counted back from winter"),
    QT_TRANSLATE_NOOP("Words",
                      "Virgins that should find flying weather within the season of grafts"),
    QT_TRANSLATE_NOOP("Words",
                      "Spread (standard deviation) of the daily maximum around its monthly mean"),
    QT_TRANSLATE_NOOP("Words", "Share of days that keep the weather of the day before"),
    QT_TRANSLATE_NOOP("Words", "Age at instrumental insemination, where no day is given"),
    QT_TRANSLATE_NOOP("Words", "Started cells in a builder in a dearth"),
    QT_TRANSLATE_NOOP("Words", "Grafts that are started in a dearth, where no feed is noted"),
    QT_TRANSLATE_NOOP("Words", "A builder in a dearth is fed so long before the graft"),
    QT_TRANSLATE_NOOP("Words", "A feed noted for a builder serves so long"),
    QT_TRANSLATE_NOOP("Words", "Hour of the day from which virgins fly: nucs are left alone"),
    QT_TRANSLATE_NOOP("Words", "Hour of the day until which virgins fly"),
    QT_TRANSLATE_NOOP("Words", "Hour from which no box is opened while robbing is noted"),
    QT_TRANSLATE_NOOP("Words", "Hour until which no box is opened while robbing is noted"),
    QT_TRANSLATE_NOOP("Words", "Look again after a look that found neither queen nor eggs"),
    QT_TRANSLATE_NOOP("Words", "First eggs before larvae are seen, at least"),
    QT_TRANSLATE_NOOP("Words",
                      "A virgin less likely than this to be mated or to mate yet is given up"),
    QT_TRANSLATE_NOOP("Words", "Worker bees a builder wants for each cell"),
    QT_TRANSLATE_NOOP("Words", "Bees a nuc is stocked with where nothing else is said"),
    QT_TRANSLATE_NOOP("Words", "Rounds after which a nuc's bees are worn"),
    QT_TRANSLATE_NOOP("Words", "Queens that one bank colony keeps"),
    QT_TRANSLATE_NOOP("Words", "Longest a queen stays in a bank"),
    QT_TRANSLATE_NOOP("Words", "Coldest that queens on the way should have it"),
    QT_TRANSLATE_NOOP("Words", "Warmest that queens on the way should have it"),
    QT_TRANSLATE_NOOP("Words", "Cold that can kill half of a queen's sperm"),
    QT_TRANSLATE_NOOP("Words", "Heat that can kill half of a queen's sperm"),
    QT_TRANSLATE_NOOP("Words", "Days a breeder queen lays freely between two confinements"),
    QT_TRANSLATE_NOOP("Words", "Frames of brood a colony may give within one brood cycle"),
    QT_TRANSLATE_NOOP("Words", "Bees a colony may give within one brood cycle"),
};
static_assert(std::size(kNames) == kTokenCount<Fact>);

bool isShare(const FactEntry& entry) { return entry.unit == "share"; }

}  // namespace

QString name(Fact fact) { return Words::tr(kNames[static_cast<std::size_t>(fact)]); }

QString unit(const FactEntry& entry) {
    if (isShare(entry)) return QStringLiteral("%");
    if (entry.unit == "cells") return Words::tr("cells");
    if (entry.unit == "colonies") return Words::tr("colonies");
    if (entry.unit == "queens") return Words::tr("queens");
    if (entry.unit == "workers") return Words::tr("workers");
    if (entry.unit == "rounds") return Words::tr("rounds");
    return QString::fromUtf8(entry.unit.data(), static_cast<qsizetype>(entry.unit.size()));
}

QString value(const FactEntry& entry, double value) {
    return QLocale().toString(isShare(entry) ? value * 100 : value, 'g', 6);
}

std::optional<double> fromTyped(const FactEntry& entry, const QString& typed) {
    bool good = false;
    auto text = typed.trimmed();
    if (text.endsWith(u'%')) text = text.chopped(1).trimmed();
    const double number = QLocale().toDouble(text, &good);
    if (!good) return std::nullopt;
    return isShare(entry) ? number / 100 : number;
}

QString range(const FactEntry& entry, double inForce) {
    const auto span = Words::tr("%1 to %2").arg(value(entry, entry.low), value(entry, entry.high));
    const bool inside = inForce >= entry.low && inForce <= entry.high;
    return inside ? span : Words::tr("outside %1").arg(span);
}

QString sources(const FactEntry& entry) {
    QStringList lines;
    for (const auto& line : sourceLines(entry.source)) lines += QString::fromStdString(line);
    return lines.join(u'\n');
}

QString head() { return Words::tr("Trade numbers"); }
QString intro() {
    return Words::tr(
        "Everything is reckoned from these. Type over a number to use your own; the published "
        "range and source stand beside it.");
}
QString find() { return Words::tr("Find a number"); }
QString useDefault() { return Words::tr("Use the default"); }

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("What it is");
        case 1:
            return Words::tr("In use");
        case 2:
            return Words::tr("Unit");
        case 3:
            return Words::tr("Default");
        case 4:
            return Words::tr("Range");
        case 5:
            return Words::tr("Source");
        default:
            return {};
    }
}

QString notANumber(const QString& typed) { return Words::tr("\"%1\" is not a number.").arg(typed); }
QString outOfBounds(const FactEntry& entry) {
    const auto bounds = boundsOf(entry);
    return Words::tr("A number from %1 to %2 %3 is needed.")
        .arg(value(entry, bounds.least), value(entry, bounds.most), unit(entry));
}
QString own() { return Words::tr("your own"); }

}  // namespace tenthday::fact_text
