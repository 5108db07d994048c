#include "screen_text/diary_text.h"

#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/setup_text.h"
#include "screen_text/words.h"

namespace tenthday::diary_text {
namespace {

QString joined(const QStringList& parts) { return parts.join(Words::tr(", ")); }
QString plain(const std::string& text) { return QString::fromStdString(text); }

QString looks(const WildClock& clock) {
    return Words::tr("look for wild cells on %1 to %2 and again on %3 to %4")
        .arg(weekdayAndDay(clock.firstLook.first), weekdayAndDay(clock.firstLook.last),
             weekdayAndDay(clock.secondLook.first), weekdayAndDay(clock.secondLook.last));
}

}  // namespace

What whatOf(BuilderNoteKind kind) {
    switch (kind) {
        case BuilderNoteKind::Look:
            return What::Look;
        case BuilderNoteKind::BroodIn:
            return What::BroodIn;
        case BuilderNoteKind::BeesIn:
            return What::BeesIn;
        case BuilderNoteKind::Feed:
            return What::Feed;
        case BuilderNoteKind::Pollen:
            break;
    }
    return What::Pollen;
}

QString what(What what) {
    switch (what) {
        case What::MadeUp:
            return Words::tr("made up");
        case What::Look:
            return Words::tr("look for wild cells");
        case What::BroodIn:
            return Words::tr("brood put in");
        case What::BeesIn:
            return Words::tr("bees added");
        case What::Feed:
            return Words::tr("feed");
        case What::Pollen:
            return Words::tr("pollen");
    }
    return {};
}

QString age(BroodAge age) {
    switch (age) {
        case BroodAge::All:
            return Words::tr("larvae of all ages");
        case BroodAge::Young:
            return Words::tr("none older than 36 h");
        case BroodAge::Eggs:
            return Words::tr("eggs only");
    }
    return {};
}

QString entry(const QString& builder, What kind, Day day) {
    return Words::tr("%1, %2, %3").arg(builder, what(kind), setup_text::day(day));
}

QString entry(What kind, Day day) {
    return Words::tr("%1, %2").arg(what(kind), setup_text::day(day));
}

QString detail(const MakeUp& row) {
    QStringList parts{row.openBrood ? Words::tr("with open brood")
                                    : Words::tr("without open brood")};
    if (row.beesMl) parts += Words::tr("%1 ml of bees").arg(chart_text::number(row.beesMl->value));
    if (row.broodFrames) parts += Words::tr("%Ln brood frame(s)", nullptr, row.broodFrames->value);
    if (row.movedAway) parts += Words::tr("moved away");
    return joined(parts);
}

QString detail(const BuilderNote& row) {
    if (row.kind != BuilderNoteKind::BroodIn) return {};
    return row.openBrood ? Words::tr("open brood: %1").arg(age(row.broodAge))
                         : Words::tr("without open brood");
}

QString builder() { return Words::tr("Builder"); }
QString whatHead() { return Words::tr("What"); }
QString hour() { return Words::tr("Hour"); }
QString hourUnit() { return Words::tr("o'clock"); }
QString details() { return Words::tr("Details"); }
QString openBrood() { return Words::tr("Open brood"); }
QString openBroodTick() { return Words::tr("There are eggs or larvae among it"); }
QString broodAge() { return Words::tr("How old at the most"); }
QString donors() { return Words::tr("Donors"); }
QString place() { return Words::tr("Place"); }
QString movedAwayTick() { return Words::tr("Stands out of flight range of its donors"); }
QString bees() { return Words::tr("Bees"); }
QString beesUnit() { return Words::tr("ml"); }
QString broodFrames() { return Words::tr("Brood frames"); }
QString framesUnit() { return Words::tr("frames"); }

QString builderNeeded() {
    return Words::tr("A builder is needed first: add one under \"Builders\".");
}

QString notThere(const Builder& builder) {
    const auto label = plain(builder.label);
    return builder.until
               ? Words::tr("%1 is there from %2 to %3 only.")
                     .arg(label, setup_text::day(builder.from), setup_text::day(*builder.until))
               : Words::tr("%1 is there from %2 on only.")
                     .arg(label, setup_text::day(builder.from));
}

QString caution(What what) {
    switch (what) {
        case What::MadeUp:
            return Words::tr(
                "Take care: full boxes weigh 20 to 40 kg, two people lift them. Never light a "
                "smoker on dry grass. Find the donor's queen first, so that she stays.");
        case What::BroodIn:
        case What::BeesIn:
            return Words::tr("Find the donor's queen first, so that she stays.");
        case What::Look:
            return Words::tr(
                "Shake or brush the bees off every comb but those with your cells, and break down "
                "each wild cell.");
        case What::Feed:
            return Words::tr("In the evening, in a shut feeder: spilt feed brings robbers.");
        case What::Pollen:
            break;
    }
    return {};
}

QString hourHint() { return Words::tr("Empty: 12 o'clock"); }
QString ageHint() { return Words::tr("Empty: larvae of all ages"); }

QString serves(const Served& served) {
    if (served.batches.empty())
        return Words::tr("No batch is grafted in it on this day or the four days after.");
    QStringList labels;
    for (const auto& batch : served.batches) labels += plain(batch->label);
    return labels.size() == 1
               ? Words::tr("For batch %1, graft %2.").arg(labels[0], weekdayAndDay(served.graft))
               : Words::tr("For batches %1, graft %2.")
                     .arg(joined(labels), weekdayAndDay(served.graft));
}

QString workers(Cells grafts, const Facts& facts) {
    const auto wanted = workersFor(grafts, facts);
    const auto frames = wanted.fewest == wanted.most
                            ? chart_text::number(wanted.most.value)
                            : Words::tr("%1 to %2")
                                  .arg(chart_text::number(wanted.fewest.value),
                                       chart_text::number(wanted.most.value));
    return Words::tr("Its %Ln graft(s) want(s) %1 workers at %2 a cell (S77).", nullptr,
                     grafts.value)
               .arg(chart_text::number(wanted.workers),
                    chart_text::number(static_cast<int>(facts[Fact::WorkersPerCell]))) +
           u' ' +
           Words::tr("Deep frames full of bees, %1 to %2 on each: %3.")
               .arg(chart_text::number(kFewestOnFrame), chart_text::number(kMostOnFrame), frames);
}

QString feedServes(Day until) {
    return Words::tr("Serves until %1: no dearth counts for its cells until then.")
        .arg(weekdayAndDay(until));
}

QString wildQueens(const WildClock& clock) {
    const auto out =
        clock.oldest < clock.old
            ? Words::tr("A wild queen can be out from %1, seldom, and from %2 more often")
                  .arg(dayAndClock(clock.oldest), dayAndClock(clock.old))
            : Words::tr("A wild queen can be out from %1").arg(dayAndClock(clock.oldest));
    return Words::tr("%1; %2.").arg(out, looks(clock));
}

QString whyWildQueens(const Facts& facts, BroodAge age) {
    const auto after = Words::tr("after it came in");
    QStringList lines;
    if (age == BroodAge::All)
        lines += {because::hours(facts, Fact::WildOldestH, after),
                  because::hours(facts, Fact::WildOldH, after)};
    if (age == BroodAge::Young) lines += because::hours(facts, Fact::WildYoungH, after);
    if (age == BroodAge::Eggs)
        lines += Words::tr("A queen takes %1 from the egg, less %2.")
                     .arg(because::hours(facts, Fact::EmergenceH, {}).simplified(),
                          because::hours(facts, Fact::EggH, Words::tr("as an egg")));
    lines += because::days(facts, Fact::Look1FromD, Words::tr("to the first look"));
    lines += because::days(facts, Fact::Look2FromD, Words::tr("to the second look"));
    return lines.join(u'\n');
}

QString queenIsThere() {
    return Words::tr("Its bees have a queen: brood put in begins no wild cells.");
}
QString noWildCells() { return Words::tr("Without eggs and larvae no wild cells are begun."); }

QString looksOf(const WildClock& clock) {
    return Words::tr("Open brood of %1: %2.").arg(weekdayAndDay(dayOf(clock.start)), looks(clock));
}
QString noLookWanted() { return Words::tr("No open brood of it wants a look on this day."); }

QString donorsHint() {
    return Words::tr("Yards or colonies of yards with a comma between: Mill 3, Heath.");
}
QString held(const DonorHold& hold) {
    return Words::tr(
               "Warning: %1 is held for disease until %2, no bees or brood may leave it. Ask the "
               "bee inspector.")
        .arg(plain(hold.yard->label), weekdayAndDay(hold.note->until));
}
QString notOutOfHold(const BrokenHold& broken) {
    return Words::tr(
               "Not kept: %1 is held for disease until %2, so no bees, brood or nucs may leave it "
               "on %3. What was really done can be entered once its day has come. Ask the bee "
               "inspector.")
        .arg(plain(broken.hold.yard->label), weekdayAndDay(broken.hold.note->until),
             weekdayAndDay(broken.day));
}
QString fliesBack() {
    return Words::tr(
        "Bees that stay within flight range fly back to their donors; young bees stay "
        "(common practice). Moving colonies can need a certificate: ask the bee inspector.");
}

}  // namespace tenthday::diary_text
