#include "sheets/day_lists.h"

#include <algorithm>

#include "occupancy/stocking_list.h"
#include "occupancy/waiting_virgins.h"
#include "screen_text/cells_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/paper_text.h"
#include "screen_text/sheet_text.h"
#include "screen_text/virgin_text.h"
#include "sheets/paper_names.h"
#include "tasks/work_time.h"

namespace tenthday {
namespace {

using paper_text::Head;

PaperColumn words(Head head, qreal share, Print type = Print::Text) {
    return {paper_text::head(head), share, type, false, false};
}
PaperColumn numbers(Head head, qreal share) {
    return {paper_text::head(head), share, Print::Text, false, true};
}
PaperColumn blank(Head head, qreal share) {
    return {paper_text::head(head), share, Print::Text, true, false};
}

ListPaper begin(const Outlook& outlook, PaperKind kind, Day day) {
    ListPaper list;
    list.title = paper_text::title(kind, day);
    list.operation = plainText(outlook.snapshot.book().label);
    list.none = paper_text::none(kind);
    return list;
}

/// The group of this name; a new one where the last is another.
PaperGroup& groupOf(ListPaper& list, const QString& name, const std::vector<PaperColumn>& columns) {
    if (list.groups.empty() || list.groups.back().name != name)
        list.groups.push_back({name, columns, {}, {}});
    return list.groups.back();
}

QString yardName(const Outlook& outlook, const std::optional<Id<Yard>>& yard) {
    const auto name = labelOf(outlook, yard);
    return name.isEmpty() ? paper_text::noYard() : name;
}

}  // namespace

ListPaper placementPaper(const Outlook& outlook, const CellsDraft& draft,
                         const std::vector<CellsNuc>& nucs) {
    ListPaper list;
    list.title = paper_text::title(PaperKind::Placements, draft.day);
    list.operation = plainText(outlook.snapshot.book().label);
    list.lead = {cells_text::sum(draft)};
    list.none = cells_text::noList();
    list.leastWidth = millimetres(58);
    const std::vector<PaperColumn> columns{{{}, 0.9, Print::Strong}, {{}, 1, Print::Small}};
    std::optional<Id<Yard>> last;
    for (const auto& stop : placementList(draft, nucs)) {
        if (last != stop.nuc->yard) list.groups.push_back({{}, columns, {}, {}});
        last = stop.nuc->yard;
        auto& group = list.groups.back();
        group.rows.push_back({{nucOf(*stop.nuc->side),
                               cells_text::batch(labelOf(outlook, std::optional(stop.batch)))},
                              stop.done});
        group.name = cells_text::stop(yardName(outlook, last), static_cast<int>(group.rows.size()));
    }
    list.notes = paper_text::workNotes();
    return list;
}

namespace {

CellsDraft draftedOn(const Outlook& outlook, Day day, const WayOrder& ways,
                     std::vector<CellsNuc>& nucs) {
    auto draft = cellsDraft(outlook, day);
    nucs = nucsOf(outlook, draft);
    return draft.left() > 0 ? proposeWays(outlook, nucs, std::move(draft), ways) : draft;
}

}  // namespace

ListPaper placementPaper(const Outlook& outlook, Day day, const WayOrder& ways) {
    std::vector<CellsNuc> nucs;
    const auto draft = draftedOn(outlook, day, ways, nucs);
    return placementPaper(outlook, draft, nucs);
}

ListPaper catchPaper(const Outlook& outlook, Day day) {
    auto list = begin(outlook, PaperKind::Catches, day);
    const std::vector<PaperColumn> columns{words(Head::Nuc, 1.1, Print::Strong),
                                           words(Head::Batch, 0.8), words(Head::Breeder, 1.3),
                                           blank(Head::Number, 1.1), blank(Head::GoesTo, 1.3)};
    auto tasks = tasksOf(outlook);
    std::erase_if(tasks, [&](const Task& task) {
        const bool open = task.day == day || (task.day < day && !task.done);
        return task.key.rule != TaskRule::CatchQueens || !open;
    });
    const auto order = [&](const Task& task) {
        const auto yard = task.yard ? outlook.snapshot.find(*task.yard) : nullptr;
        return std::pair{yard ? yard->driveOrder : -1, task.yard};
    };
    std::stable_sort(tasks.begin(), tasks.end(),
                     [&](const auto& a, const auto& b) { return order(a) < order(b); });
    int queens = 0;
    for (const auto& task : tasks) {
        queens += task.done ? 0 : task.count;
        auto& group = groupOf(list, yardName(outlook, task.yard), columns);
        const auto batch = labelOf(outlook, task.batch);
        const auto breeders = task.batch ? breedersOf(outlook, *task.batch) : QString();
        for (const auto* side : task.sides)
            group.rows.push_back({{nucOf(*side), batch, breeders}, task.done.has_value()});
    }
    std::erase_if(list.groups, [](const auto& group) { return group.rows.empty(); });
    if (!list.groups.empty()) list.lead = {paper_text::queens(queens), paper_text::markOf(day)};
    list.notes = paper_text::workNotes();
    return list;
}

namespace {

/// Why a nuc wants another cell at a day's start; nothing where it does not.
QString failureOf(const SideOutlook& side, Day day, Day today) {
    const auto now = sideOn(side, day, today);
    const auto* round = now.round;
    if (now.state == NucState::NoQueen || now.state == NucState::DroneLayer)
        return chart_text::state(now.state);
    if (round && round->seen &&
        (*round->seen == NucState::NoQueen || *round->seen == NucState::DroneLayer))
        return chart_text::state(*round->seen);
    return {};
}

}  // namespace

ListPaper recellPaper(const Outlook& outlook, Day day, const WayOrder& ways) {
    auto list = begin(outlook, PaperKind::Recells, day);
    const auto& days = outlook.nucs.cellsDays;
    const auto next =
        std::find_if(days.begin(), days.end(), [&](const auto& cells) { return cells.day >= day; });
    const Day on = next == days.end() ? day : next->day;
    list.lead = {next == days.end() ? paper_text::noCellsDay() : paper_text::cellsOn(on)};
    std::vector<CellsNuc> nucs;
    const auto draft = draftedOn(outlook, on, ways, nucs);
    const auto virgins = waitingVirgins(outlook.snapshot, outlook.nucs, *outlook.mating, day);
    const std::vector<PaperColumn> columns{words(Head::Nuc, 1, Print::Strong),
                                           words(Head::Why, 1.4, Print::Small),
                                           words(Head::Cell, 1.6)};
    for (const auto& nuc : nucs) {
        auto why = failureOf(*nuc.side, on, outlook.snapshot.today());
        for (const auto& virgin : virgins.nucs)
            if (virgin.side->side->id == nuc.id() && virgin.advice == VirginAdvice::Recell)
                why = virgin_text::advice(virgin);
        if (why.isEmpty()) continue;
        const auto* cells = draft.in(nuc.id());
        groupOf(list, yardName(outlook, nuc.yard), columns)
            .rows.push_back(
                {{nucOf(*nuc.side), why,
                  cells ? paper_text::cellOf(labelOf(outlook, std::optional(cells->batch)),
                                             breedersOf(outlook, cells->batch))
                        : paper_text::noCell()}});
    }
    list.notes = paper_text::workNotes();
    return list;
}

ListPaper stockingPaper(const Outlook& outlook, Day day) {
    auto list = begin(outlook, PaperKind::Stocking, day);
    const std::vector<PaperColumn> columns{
        words(Head::Nuc, 1, Print::Strong), words(Head::Bees, 0.8), words(Head::Brood, 0.9),
        words(Head::Donor, 1.1), words(Head::Why, 1.6, Print::Small)};
    const auto found = stockingList(outlook.snapshot, outlook.nucs, day);
    for (const auto& need : found.needs) {
        const auto name = sheet_text::head(need.dayBy, labelOf(outlook, std::optional(need.yard)));
        const auto why = token(need.why);
        auto words = paper_text::stockingWhy(
            QString::fromLatin1(why.data(), static_cast<qsizetype>(why.size())), need.cellsDay);
        if (need.late) words = sheet_text::with(paper_text::late(), words);
        groupOf(list, name, columns)
            .rows.push_back(
                {{nucOf(*need.side), need.bees ? paper_text::bees(need.bees->value) : QString(),
                  need.brood ? paper_text::openBrood(need.brood->value) : QString(),
                  plainText(need.donor), words},
                 false,
                 need.late});
    }
    if (found.withoutNuc > 0) list.lead = {paper_text::withoutNuc(found.withoutNuc)};
    list.notes = QStringList{paper_text::stockingNote()} + paper_text::workNotes();
    return list;
}

namespace {

/// What a task needs that is counted; empty where nothing is.
QString thingOf(const Outlook& outlook, const Task& task) {
    switch (task.key.rule) {
        case TaskRule::CellsIn: {
            const auto batch = task.batch ? outlook.snapshot.find(*task.batch) : nullptr;
            return batch && batch->start == Start::Virgin ? paper_text::virgins()
                                                          : paper_text::ripeCells();
        }
        case TaskRule::Graft:
            return paper_text::larvaeCups();
        case TaskRule::CatchQueens:
            return paper_text::queenCages();
        case TaskRule::CageQueens:
            return paper_text::shippingCages();
        case TaskRule::StockNucs:
            return paper_text::beesToShake();
        case TaskRule::ToStation:
        case TaskRule::FromStation:
            return paper_text::nucBoxes();
        case TaskRule::DroneComb:
            return paper_text::droneCombs();
        default:
            return {};
    }
}

}  // namespace

ListPaper loadingPaper(const Outlook& outlook, Day day) {
    auto list = begin(outlook, PaperKind::Loading, day);
    const std::vector<PaperColumn> columns{words(Head::Thing, 1.8, Print::Strong),
                                           numbers(Head::Amount, 0.7), words(Head::For, 1.5)};
    std::vector<TaskRule> rules;
    std::vector<Task> open;
    for (const auto& task : tasksOf(outlook))
        if (task.day == day && !task.done) open.push_back(task);
    for (const auto& task : open) {
        rules.push_back(task.key.rule);
        const auto thing = thingOf(outlook, task);
        if (thing.isEmpty()) continue;
        const auto label = plainText(task.subjectLabel);
        const bool isOfBatch = task.batch && label == labelOf(outlook, task.batch);
        const auto subject = isOfBatch ? paper_text::batch(label) : label;
        groupOf(list, yardName(outlook, task.yard), columns)
            .rows.push_back({{thing, chart_text::number(task.count),
                              sheet_text::with(sheet_text::work(task.key.rule), subject)}});
    }
    const auto tools =
        sheet_text::takeAlong(rules, day).split(QStringLiteral(", "), Qt::SkipEmptyParts);
    for (const auto& tool : tools)
        groupOf(list, paper_text::forAll(), columns).rows.push_back({{tool, {}, {}}});
    if (!open.empty())
        list.lead = {paper_text::workAndDriving(
            sheet_text::hours(dayWork(outlook.snapshot, open).minutes()))};
    list.notes = paper_text::workNotes();
    return list;
}

}  // namespace tenthday
