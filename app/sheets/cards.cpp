#include "sheets/cards.h"

#include <algorithm>

#include "occupancy/nucs.h"
#include "outlook/year_review.h"
#include "records/order_days.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_text.h"
#include "screen_text/paper_text.h"
#include "sheets/paper_names.h"

namespace tenthday {
namespace {

using paper_text::Head;

/// The round of a side that holds it on a day and is not over, or null.
const SideRound* roundOn(const SideOutlook& side, Day day) {
    for (const auto& round : side.rounds) {
        const bool failed = round.seen && round.seenDay && *round.seenDay < day &&
                            *round.seen != NucState::Virgin && *round.seen != NucState::Laying &&
                            *round.seen != NucState::JudgedGood;
        if (round.transferDay <= day && day <= round.catchDay && !failed) return &round;
    }
    return nullptr;
}

LabelCard cardOf(const Outlook& outlook, const SideOutlook& side, const SideRound& round, Day day) {
    const auto& facts = outlook.snapshot.facts();
    LabelCard card{nucOf(side), labelOf(outlook, side.yardOn(day)), {}, {}};
    card.lines +=
        paper_text::wentIn(labelOf(outlook, std::optional(round.batch)),
                           breedersOf(outlook, round.batch), round.transferDay, round.done);
    const auto* out = round.timeline ? round.timeline->find(Event::Emergence) : nullptr;
    if (out != nullptr) card.lines += paper_text::outAbout(dayOf(out->likely));
    if (round.transferDay < round.lookDay)
        card.lines += paper_text::leaveShut(round.transferDay + Days{1}, round.lookDay - Days{1});
    const auto shutHours = paper_text::shutHours(static_cast<int>(facts[Fact::FlightFromH]),
                                                 static_cast<int>(facts[Fact::FlightToH]));
    card.lines += shutHours;
    card.lines += paper_text::lookFrom(round.lookDay);
    card.lines += paper_text::catchFrom(round.catchDay);
    card.lines += paper_text::seenOn();
    // On a small label the dates of this nuc come before what holds for every nuc of the yard.
    card.spare = {shutHours};
    if (out != nullptr) card.spare += paper_text::outAbout(dayOf(out->likely));
    return card;
}

}  // namespace

std::vector<LabelCard> nucCards(const Outlook& outlook, Day day) {
    struct Found {
        std::int32_t drive;
        const SideOutlook* side;
        const SideRound* round;
    };
    std::vector<Found> found;
    for (const auto& side : outlook.nucs.sides) {
        const auto* round = roundOn(side, day);
        const auto yard = side.yardOn(day);
        const auto row = yard ? outlook.snapshot.find(*yard) : nullptr;
        if (round && row) found.push_back({row->driveOrder, &side, round});
    }
    const auto isNew = [&](const Found& one) { return one.round->transferDay == day; };
    if (std::any_of(found.begin(), found.end(), isNew))
        std::erase_if(found, [&](const Found& one) { return !isNew(one); });
    std::stable_sort(found.begin(), found.end(),
                     [](const Found& a, const Found& b) { return a.drive < b.drive; });
    std::vector<LabelCard> cards;
    for (const auto& one : found) cards.push_back(cardOf(outlook, *one.side, *one.round, day));
    return cards;
}

namespace {

PaperColumn column(Head head, qreal share, bool blank = false, Print type = Print::Text) {
    return {paper_text::head(head), share, type, blank, false};
}
PaperColumn numbers(Head head, qreal share, Print type = Print::Text) {
    return {paper_text::head(head), share, type, false, true};
}

PaperGroup barsOf(const Outlook& outlook, const BatchOutlook& batch) {
    PaperGroup group{paper_text::bars(),
                     {numbers(Head::Bar, 0.5, Print::Strong), column(Head::Breeder, 1.5),
                      numbers(Head::Grafts, 0.7), column(Head::Started, 0.8, true),
                      column(Head::Sealed, 0.8, true), column(Head::Ripe, 0.8, true)},
                     {},
                     {}};
    for (const auto& bar : batch.bars)
        group.rows.push_back({{chart_text::number(bar->bar),
                               labelOf(outlook, bar->breeder),
                               chart_text::number(bar->cells.value),
                               {},
                               {},
                               {}}});
    return group;
}

PaperGroup datesOf(const BatchOutlook& batch) {
    PaperGroup group{paper_text::dates(),
                     {column(Head::Event, 1.5, false, Print::Strong), column(Head::When, 1.6),
                      column(Head::Seen, 1, true)},
                     {},
                     {}};
    for (const auto& dates : batch.timeline.events) {
        const bool seen = dates.note == EventNote::Observed;
        const auto when = seen ? dayAndClock(dates.likely)
                               : paper_text::until(weekdayAndDay(dayOf(dates.earliest)),
                                                   weekdayAndDay(dayOf(dates.latest)));
        group.rows.push_back({{chart_text::event(dates.event), when}, seen});
    }
    return group;
}

PaperGroup buildersOf(const Outlook& outlook, const BatchOutlook& batch) {
    PaperGroup group{paper_text::builders(),
                     {column(Head::Builder, 1.5, false, Print::Strong), column(Head::Days, 1.6),
                      column(Head::Seen, 1, true)},
                     {},
                     {}};
    for (const auto& load : batch.timeline.loads) {
        const auto name = labelOf(outlook, load.builder);
        group.rows.push_back(
            {{name.isEmpty() ? chart_text::builderKind(load.where) : name,
              paper_text::until(dayAndClock(load.span.from), dayAndClock(load.span.until))}});
    }
    return group;
}

}  // namespace

ListPaper batchCard(const Outlook& outlook, const BatchOutlook& batch) {
    ListPaper card;
    card.title = paper_text::batchTitle(plainText(batch.batch->label));
    card.operation = plainText(outlook.snapshot.book().label);
    for (auto& group : {barsOf(outlook, batch), datesOf(batch), buildersOf(outlook, batch)})
        if (!group.rows.empty()) card.groups.push_back(group);
    if (!batch.batch->note.empty()) card.lead = {plainText(batch.batch->note)};
    card.notes = paper_text::workNotes();
    return card;
}

namespace {

/// "70 % planned, 64 % counted"; what a dearth had to do with it.
QString takeOf(const YearReview& review) {
    QStringList parts;
    if (review.at(ReviewStage::Started).batches > 0)
        parts += paper_text::takePlannedSeen(review.takePlanned, review.takeSeen);
    parts += paper_text::dearth(review.hungryBatches);
    return parts.join(QStringLiteral("; "));
}

}  // namespace

ListPaper orderPaper(const Outlook& outlook, const Order& order) {
    const auto terms = termsOf(outlook.snapshot, order.id);
    ListPaper paper;
    paper.title = paper_text::orderTitle(plainText(order.label));
    paper.operation = plainText(outlook.snapshot.book().label);
    paper.lead = {paper_text::orderLead(outlook.snapshot.today())};
    paper.ticks = false;
    PaperGroup group{paper_text::ordered(),
                     {column(Head::What, 1.4, false, Print::Strong), numbers(Head::Count, 0.6),
                      column(Head::Line, 1), column(Head::Due, 1.4)},
                     {},
                     {}};
    auto due = longDay(order.due);
    if (order.notBefore) due += QStringLiteral(", ") + paper_text::notBefore(*order.notBefore);
    due += QStringLiteral(", ") + (order.partOk ? paper_text::inParts() : paper_text::whole());
    group.rows.push_back(
        {{order_text::what(order.kind, terms.purpose), chart_text::number(order.count),
          order.line ? labelOf(outlook, order.line) : paper_text::anyLine(), due}});
    paper.groups.push_back(std::move(group));
    paper.notes = paper_text::orderNotes(isForQueens(order.kind));
    return paper;
}

ListPaper yearPaper(const Outlook& outlook) {
    const auto review = yearReview(outlook);
    ListPaper paper;
    paper.title = paper_text::yearTitle(review.season);
    paper.operation = plainText(outlook.snapshot.book().label);
    paper.lead = {paper_text::yearLead(review.batches, review.until)};
    paper.ticks = false;
    PaperGroup stages{paper_text::yearStages(),
                      {column(Head::Stage, 1.4, false, Print::Strong), numbers(Head::Planned, 0.8),
                       numbers(Head::Happened, 0.8), column(Head::Recorded, 1.2)},
                      {},
                      {}};
    for (std::size_t i = 0; i < review.stages.size(); ++i) {
        const auto& stage = review.stages[i];
        const bool any = stage.batches > 0;
        stages.rows.push_back({{paper_text::stage(static_cast<int>(i)),
                                any ? paper_text::whole(stage.planned) : QStringLiteral("–"),
                                any ? chart_text::number(stage.happened) : QStringLiteral("–"),
                                paper_text::recorded(stage.batches, stage.missing)}});
    }
    PaperGroup why{
        paper_text::yearWhy(), {{{}, 0.5, Print::Strong}, {{}, 1.5, Print::Text}}, {}, {}};
    why.rows.push_back({{paper_text::take(), takeOf(review)}});
    why.rows.push_back(
        {{paper_text::weather(),
          paper_text::flying(review.flyingDays, review.groundedDays) + QStringLiteral("; ") +
              paper_text::lateBatches(review.lateBatches, review.lateDays)}});
    why.rows.push_back(
        {{paper_text::nucs(),
          paper_text::nucTrouble(review.withoutNuc, review.noQueen, review.droneLayer)}});
    why.rows.push_back(
        {{paper_text::orders(), paper_text::deliveredOf(review.delivered, review.replaced)}});
    paper.groups = {std::move(stages), std::move(why)};
    paper.notes = {paper_text::yearNote()};
    return paper;
}

}  // namespace tenthday
