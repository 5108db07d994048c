#include "screen_text/chart_cards.h"
#include "outlook/mixed_ages.h"
#include "records/yard_state.h"

#include <algorithm>
#include <cmath>

#include "screen_text/because.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/nuc_text.h"
#include "screen_text/waiting_text.h"
#include "screen_text/words.h"

namespace tenthday::chart_cards {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString count(double number) { return chart_text::number(static_cast<int>(std::lround(number))); }

QString batchTitle(const Outlook& outlook, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    return batch ? Words::tr("Batch %1").arg(plain(batch->batch->label)) : QString();
}

CardTone toneOf(Severity severity) {
    return severity == Severity::Danger    ? CardTone::Danger
           : severity == Severity::Warning ? CardTone::Caution
                                           : CardTone::Plain;
}

void addTroubles(const Outlook& outlook, Id<Batch> batch, CardText& card) {
    for (const auto& finding : outlook.findings) {
        const auto* subject = std::get_if<Id<Batch>>(&finding.subject);
        if (subject && *subject == batch)
            card.lines.push_back({chart_text::trouble(finding), {}, {}, toneOf(finding.severity)});
    }
}

/// The batch's count of a kind was seen: when.
QString seenOn(const Outlook& outlook, Id<Batch> batch, OutcomeKind kind) {
    for (const auto& outcome : outlook.snapshot.all<Outcome>().of(batch.uuid))
        if (outcome->kind == kind && outcome->count)
            return Words::tr("counted %1").arg(weekdayAndDay(outcome->day));
    return {};
}

QString orElse(const QString& first, const QString& second) {
    return first.isEmpty() ? second : first;
}

/// The rate that grafts are started by: less in a dearth without feed.
Fact acceptedBy(const Outlook& outlook, const Batch& batch) {
    return hungryBars(outlook.snapshot, batch).empty() ? Fact::Accepted : Fact::AcceptedDearth;
}

void addCounts(const Outlook& outlook, const BatchOutlook& batch, CardText& card) {
    const auto& counts = batch.timeline.counts;
    const auto& facts = outlook.snapshot.facts();
    const auto id = batch.batch->id;
    card.lines.push_back({Words::tr("grafts"), count(counts.grafted),
                          orElse(seenOn(outlook, id, OutcomeKind::Graft), Words::tr("planned"))});
    card.lines.push_back({Words::tr("accepted"), count(counts.accepted),
                          orElse(seenOn(outlook, id, OutcomeKind::TakeCount),
                                 because::share(facts, acceptedBy(outlook, *batch.batch)))});
    card.lines.push_back(
        {Words::tr("sealed"), count(counts.sealed),
         orElse(seenOn(outlook, id, OutcomeKind::Sealed), because::share(facts, Fact::Sealed))});
}

void addDates(const Outlook& outlook, const BatchOutlook& batch, CardText& card) {
    const auto& line = batch.timeline;
    const auto& facts = outlook.snapshot.facts();
    card.lines.push_back({Words::tr("cells out"), dayAndClock(line.hold.transfer),
                          because::hours(facts, Fact::RipeH, Words::tr("after the graft"))});
    if (line.latestMove != Moment::max())
        card.lines.push_back(
            {Words::tr("at the latest before"), dayAndPart(line.latestMove),
             because::chance(facts, Fact::FirstOutRisk, Words::tr("a queen is out by then"))});
    if (const auto* out = line.find(Event::FirstOut))
        card.lines.push_back({Words::tr("first queen out"), dayAndClock(out->likely),
                              because::hours(facts, Fact::EmergenceH, Words::tr("from the egg"))});
}

/// By when its queens have eggs, and what weather does to them.
void addEggs(const Outlook& outlook, const BatchOutlook& batch, CardText& card) {
    for (auto& line : waiting_text::level(outlook, batch)) card.lines.push_back(std::move(line));
    if (auto never = waiting_text::never(outlook, batch)) card.lines.push_back(std::move(*never));
    if (const auto late = flying_text::late(outlook, batch); !late.isEmpty())
        card.lines.push_back({late, {}, {}, CardTone::Caution});
}

/// Her cell, or she, is in there, and nobody has seen yet whether she lays.
bool awaitsEggs(const SideDay& is) {
    return is.round->isOpen() && (is.state == NucState::Cell || is.state == NucState::Virgin ||
                                  is.state == NucState::DueToFly || is.state == NucState::Laying);
}

const YardDay* yardDayOf(const Outlook& outlook, const YardOutlook& yard, Day day) {
    const auto index = (day - outlook.season.first).count();
    if (index < 0 || index >= static_cast<int>(yard.days.size())) return nullptr;
    return &yard.days[static_cast<std::size_t>(index)];
}

/// @param byYard  which of the ready ones stand where
void addReady(const Facts& facts, const ReadyNumbers& numbers, CardText& card,
              const std::vector<CardLine>& byYard = {}) {
    card.lines.push_back(
        {Words::tr("ready for a cell"), count(numbers.ready),
         because::hours(facts, Fact::NucQueenlessH, Words::tr("queenless at least"))});
    card.lines.insert(card.lines.end(), byYard.begin(), byYard.end());
    if (numbers.likely > 0)
        card.lines.push_back({Words::tr("likely more"), chart_text::expected(numbers.likely),
                              Words::tr("if caught or looked at by the day before")});
    if (numbers.canStock > 0)
        card.lines.push_back(
            {Words::tr("can be stocked"), count(numbers.canStock), Words::tr("stand there empty")});
    if (numbers.needsBrood > 0)
        card.lines.push_back(
            {Words::tr("need open brood first"), count(numbers.needsBrood),
             because::days(facts, Fact::NoBroodD, Words::tr("without open brood or queen"))});
}

QString catchWords(CatchRule rule) {
    switch (rule) {
        case CatchRule::Eggs:
            return Words::tr("caught on eggs");
        case CatchRule::SealedBrood:
            return Words::tr("caught on sealed brood");
        case CatchRule::Age:
            return Words::tr("caught by age");
    }
    return {};
}

/// What each catch rule would cost, so that the choice can be weighed.
QString catchPrices(const BatchOutlook& batch) {
    const auto& hold = batch.timeline.hold;
    return Words::tr("on eggs %1, on sealed brood %2, by age %3")
        .arg(chart_text::number(hold.nucDays(CatchRule::Eggs)),
             chart_text::number(hold.nucDays(CatchRule::SealedBrood)),
             chart_text::number(hold.nucDays(CatchRule::Age)));
}

void addStay(const Outlook& outlook, const YardOutlook& yard, Day day, Id<Batch> id,
             CardText& card) {
    const auto* batch = outlook.find(id);
    if (!batch) return;
    for (const auto& block : yard.blocks) {
        if (block.batch != id || !block.days.contains(day)) continue;
        const auto rule = batch->batch->catchRule.value_or(outlook.snapshot.book().catchRule);
        card.lines.push_back(
            {batchTitle(outlook, id), chart_text::cells(block.cells),
             Words::tr("%1 to %2, %3: %4 nuc days each")
                 .arg(shortDay(block.days.first), shortDay(block.days.last), catchWords(rule),
                      chart_text::number(batch->timeline.hold.nucDays()))});
        card.lines.push_back({Words::tr("nuc days by catch rule"), catchPrices(*batch),
                              Words::tr("cells day and catch day both count")});
        addEggs(outlook, *batch, card);
    }
}

/// Cells of several ages in one box.
void addOldest(const Outlook& outlook, Id<Batch> id, Id<Builder> builder, CardText& card) {
    const auto oldest = oldestCells(outlook, builder, id);
    if (!oldest) return;
    const bool isOther = oldest->batch != id;
    card.lines.push_back({Words::tr("cells of several ages in the box"),
                          dayAndPart(oldest->latestMove),
                          isOther ? Words::tr("by the oldest, those of %1: none may still stand "
                                              "there then")
                                        .arg(batchTitle(outlook, oldest->batch))
                                  : Words::tr("by the oldest, which are these"),
                          isOther ? CardTone::Caution : CardTone::Plain});
}

QString dayRange(const DayWindow& days) {
    return days.size() <= 1
               ? weekdayAndDay(days.first)
               : Words::tr("%1 to %2").arg(weekdayAndDay(days.first), weekdayAndDay(days.last));
}

/// Where the ready ones of a day are, if in more than one yard.
std::vector<CardLine> readyByYard(const Outlook& outlook, Day day) {
    std::vector<CardLine> lines;
    for (const auto& yard : outlook.nucs.yards)
        if (const auto* found = yardDayOf(outlook, yard, day); found && found->numbers.ready > 0)
            lines.push_back({Words::tr("of these in %1").arg(plain(yard.yard->label)),
                             count(found->numbers.ready),
                             {}});
    return lines.size() < 2 ? std::vector<CardLine>() : lines;
}

/// What is left of a cells day or lacks, with the numbers it comes from.
void addSum(const CellsDay& day, Day today, CardText& card) {
    const auto likely = std::floor(day.numbers.likely + 1e-6);
    const auto cells = chart_text::number(day.toNucs);
    const auto ready = chart_text::number(day.numbers.ready);
    if (day.left() >= 0) {
        card.lines.push_back({Words::tr("nucs left"), count(day.left()),
                              Words::tr("%1 ready less %2 cells for nucs").arg(ready, cells)});
        return;
    }
    const bool covered = day.left() + likely >= 0;
    const bool isOver = day.day < today;
    card.lines.push_back({!covered ? Words::tr("cells too many")
                          : isOver ? Words::tr("nucs short")
                                   : Words::tr("nucs to free"),
                          count(-day.left()),
                          Words::tr("%1 cells for nucs less %2 ready").arg(cells, ready),
                          !covered ? CardTone::Danger
                          : isOver ? CardTone::Plain
                                   : CardTone::Caution});
    if (covered && isOver) return;
    if (covered)
        card.lines.push_back({Words::tr("the likely ones would do"), {}, {}});
    else if (likely > 0)
        card.lines.push_back({Words::tr("still too many with the likely ones"),
                              count(-day.left() - likely),
                              {},
                              CardTone::Danger});
}

}  // namespace

CardText load(const Outlook& outlook, Id<Batch> id, Id<Builder> builder) {
    const auto* batch = outlook.find(id);
    if (!batch) return {};
    const auto row = outlook.snapshot.find(builder);
    CardText card;
    card.title = Words::tr("%1 · %2").arg(batchTitle(outlook, id),
                                          row ? plain(row->label) : chart_text::noBuilderYet());
    card.lines.push_back({Words::tr("graft"), dayAndClock(batch->timeline.graft),
                          batch->timeline.grafted ? Words::tr("done") : Words::tr("planned")});
    addCounts(outlook, *batch, card);
    addDates(outlook, *batch, card);
    addOldest(outlook, id, builder, card);
    addEggs(outlook, *batch, card);
    addTroubles(outlook, id, card);
    return card;
}

CardText yardDay(const Outlook& outlook, Id<Yard> id, Day day, Id<Batch> batch) {
    for (const auto& yard : outlook.nucs.yards) {
        if (yard.yard->id != id) continue;
        const auto* found = yardDayOf(outlook, yard, day);
        if (!found) return {};
        CardText card;
        card.title = Words::tr("%1 · %2").arg(plain(yard.yard->label), weekdayAndDay(day));
        addReady(outlook.snapshot.facts(), found->numbers, card);
        for (std::size_t state = 0; state < found->stack.size(); ++state)
            if (found->stack[state] > 0)
                card.lines.push_back({chart_text::state(static_cast<NucState>(state)),
                                      count(found->stack[state]),
                                      {}});
        addStay(outlook, yard, day, batch, card);
        return card;
    }
    return {};
}

CardText yardName(const Outlook& outlook, Id<Yard> id) {
    CardText card;
    for (const auto& yard : outlook.nucs.yards)
        if (yard.yard->id == id) card.title = plain(yard.yard->label);
    card.lines.push_back({Words::tr("press to show or hide each nuc"), {}, {}});
    return card;
}

CardText nuc(const Outlook& outlook, const SideOutlook& side, Day day) {
    const auto is = sideOn(side, day, outlook.snapshot.today());
    const auto since = stateSince(side, day, outlook.snapshot.today());
    CardText card;
    card.title = Words::tr("%1 · %2").arg(
        chart_text::nuc(plain(side.box->label), plain(side.side->side)), weekdayAndDay(day));
    card.lines.push_back(
        {chart_text::state(is.state),
         is.chance < 1 ? Words::tr("%1 % likely").arg(count(is.chance * 100)) : QString(),
         since ? Words::tr("since %1").arg(weekdayAndDay(*since)) : QString()});
    if (is.round != nullptr) {
        const auto& round = *is.round;
        card.lines.push_back({batchTitle(outlook, round.batch),
                              round.done ? Words::tr("done") : Words::tr("planned"),
                              Words::tr("cell given %1").arg(weekdayAndDay(round.transferDay))});
        if (round.seen && round.seenDay && *round.seenDay <= day)
            card.lines.push_back(
                {Words::tr("seen"), chart_text::state(*round.seen), weekdayAndDay(*round.seenDay)});
        if (const auto* batch = outlook.find(round.batch); batch && awaitsEggs(is))
            addEggs(outlook, *batch, card);
    }
    if (is.wintered != nullptr)
        card.lines.push_back({nuc_text::wintered(outlook.snapshot, *is.wintered),
                              {},
                              Words::tr("left here %1").arg(weekdayAndDay(is.wintered->from))});
    if (is.ready) {
        card.lines.push_back({Words::tr("ready for a cell"),
                              {},
                              because::hours(outlook.snapshot.facts(), Fact::NucQueenlessH,
                                             Words::tr("queenless at least"))});
        return card;
    }
    card.lines.push_back({Words::tr("not ready"), chart_text::notReady(is.reason),
                          is.readyFrom && *is.readyFrom < kLastDay
                              ? Words::tr("ready from %1").arg(weekdayAndDay(*is.readyFrom))
                              : QString()});
    return card;
}

CardText cellsDay(const Outlook& outlook, const CellsDay& day) {
    CardText card;
    card.title = Words::tr("Cells out %1").arg(weekdayAndDay(day.day));
    for (const auto id : day.batches)
        if (const auto* batch = outlook.find(id))
            card.lines.push_back(
                {batchTitle(outlook, id),
                 chart_text::cells(static_cast<int>(std::lround(batch->timeline.counts.ripe))),
                 Words::tr("grafted %1").arg(weekdayAndDay(dayOf(batch->timeline.graft)))});
    card.lines.push_back({Words::tr("ripe"), count(day.ripe), {}});
    if (day.toNucs != day.ripe)
        card.lines.push_back({Words::tr("of these for nucs"), count(day.toNucs), {}});
    addReady(outlook.snapshot.facts(), day.numbers, card, readyByYard(outlook, day.day));
    addSum(day, outlook.snapshot.today(), card);
    return card;
}

CardText makeUp(const Outlook& outlook, const BuilderOutlook& builder, const MakeUp& row) {
    CardText card;
    card.title = Words::tr("Make up %1").arg(plain(builder.builder->label));
    card.lines.push_back({Words::tr("made up"), dayAndClock(momentOf(row.day, row.hour)),
                          because::hours(outlook.snapshot.facts(), Fact::MakeUpBeforeH,
                                         Words::tr("before the graft"))});
    card.lines.push_back({row.openBrood ? Words::tr("with open brood: wild cells can be begun")
                                        : Words::tr("without open brood"),
                          {},
                          {}});
    return card;
}

CardText look(const Outlook& outlook, const BuilderOutlook& builder, const WildClock& clock,
              bool second) {
    const auto& facts = outlook.snapshot.facts();
    const auto ticked = second ? clock.secondTicked : clock.firstTicked;
    CardText card;
    card.title = Words::tr("Look for wild cells · %1").arg(plain(builder.builder->label));
    card.lines.push_back({Words::tr("due"), dayRange(second ? clock.secondLook : clock.firstLook),
                          Words::tr("queenless since %1").arg(dayAndClock(clock.start))});
    card.lines.push_back(
        {Words::tr("looked"), ticked ? weekdayAndDay(*ticked) : Words::tr("not yet"), {}});
    card.lines.push_back({Words::tr("wild queen out, seldom"), dayAndClock(clock.oldest),
                          because::hours(facts, Fact::WildOldestH, Words::tr("after that"))});
    card.lines.push_back({Words::tr("wild queen out"), dayAndClock(clock.old),
                          because::hours(facts, Fact::WildOldH, Words::tr("after that"))});
    return card;
}

CardText rest(const Outlook& outlook, Id<Builder> builder, Id<Batch> batch, Day until) {
    const auto row = outlook.snapshot.find(builder);
    CardText card;
    card.title = row ? plain(row->label) : chart_text::noBuilderYet();
    card.lines.push_back({Words::tr("rests until"), weekdayAndDay(until),
                          Words::tr("after %1, by its method").arg(batchTitle(outlook, batch))});
    return card;
}

CardText idle(const BuilderOutlook& builder, const DayWindow& days) {
    CardText card;
    card.title = plain(builder.builder->label);
    card.lines.push_back({Words::tr("queenless without cells"), dayRange(days), {}});
    return card;
}

CardText trouble(const Finding& finding) {
    CardText card;
    const auto day = weekdayAndDay(finding.day);
    card.title = finding.subjectLabel.empty()
                     ? day
                     : Words::tr("%1 · %2").arg(plain(finding.subjectLabel), day);
    card.lines.push_back({chart_text::trouble(finding), {}, {}, toneOf(finding.severity)});
    return card;
}

CardText dragged(const Outlook& outlook, Id<Batch> id, Day saved) {
    const auto* batch = outlook.find(id);
    if (!batch) return {};
    const auto moved = static_cast<int>((batch->batch->day - saved).count());
    const auto by = (moved > 0 ? QStringLiteral("+") : QString()) + chart_text::number(moved);
    CardText card;
    card.title = Words::tr("%1 to %2 (%3 d)")
                     .arg(batchTitle(outlook, id), weekdayAndDay(batch->batch->day), by);
    if (batch->batch->day < outlook.snapshot.today())
        card.lines.push_back({Words::tr("before today"), {}, {}, CardTone::Caution});
    const Day cellsOut = batch->timeline.hold.transferDay;
    card.lines.push_back({Words::tr("cells out"), weekdayAndDay(cellsOut), {}});
    for (const auto& day : outlook.nucs.cellsDays)
        if (day.day == cellsOut)
            for (const auto& line : cellsDay(outlook, day).lines) card.lines.push_back(line);
    card.lines.push_back(
        {Words::tr("queens from"), weekdayAndDay(batch->timeline.hold.catchDay), {}});
    addTroubles(outlook, id, card);
    return card;
}

CardText refused(const QString& why) {
    CardText card;
    card.title = Words::tr("This cannot be moved there");
    card.lines.push_back({why, {}, {}, CardTone::Danger});
    return card;
}

QString asPlainText(const CardText& card) {
    QStringList lines{card.title};
    for (const auto& line : card.lines) {
        QStringList parts{line.name, line.value, line.because};
        parts.removeAll(QString());
        lines += parts.join(QStringLiteral(" · "));
    }
    return lines.join(u'\n');
}

}  // namespace tenthday::chart_cards
