#include "nucs/nucs_paste.h"

#include <QLocale>
#include <QTableView>
#include <algorithm>
#include <array>

#include "book/new_id.h"
#include "look/table_copy.h"
#include "paste/named_rows.h"
#include "paste/table_lines.h"
#include "records/hold_guard.h"
#include "records/verbs.h"
#include "screen_text/diary_text.h"
#include "screen_text/nuc_text.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

enum Part { Bees, Brood, Open, Donor, PartCount };
constexpr std::array<const char*, PartCount> kTokens{"bees_ml", "brood_frames", "open_brood",
                                                     "donor"};

QString plain(const std::string& text) { return QString::fromStdString(text); }

Ptr<Stocking> stockingOn(const Snapshot& book, Id<NucSide> side, Day day) {
    for (const auto& row : book.all<Stocking>())
        if (row->side == side && row->day == day) return row;
    return nullptr;
}

/// What of a stocking is typed.
StockingPlan planOf(const Ptr<Stocking>& row, Day day) {
    if (!row) return {day, {}, {}, {}, false, {}};
    return {day, row->hour, row->beesMl, row->broodFrames, row->openBrood, row->donor};
}

template <class Count>
QString countText(const std::optional<Count>& count) {
    return count ? QString::number(count->value) : QString();
}

QStringList cellsOf(const Ptr<Stocking>& row) {
    if (!row) return {QString(), QString(), QString(), QString()};
    return {countText(row->beesMl), countText(row->broodFrames),
            row->openBrood ? paste_text::yesWords().at(2) : QString(), plain(row->donor)};
}

template <class Count>
bool readCount(const QString& typed, std::optional<Count>& count) {
    count.reset();
    if (typed.isEmpty()) return true;
    bool isWhole = false;
    int number = typed.toInt(&isWhole);
    if (!isWhole) number = QLocale().toInt(typed, &isWhole);
    if (isWhole && number > 0) count = Count{number};
    return isWhole && number >= 0;
}

/// Lays the cells that are there over the plan. @return what is wrong
QString readPlan(const PastedLine& line, StockingPlan& plan) {
    if (line.has(kTokens[Bees]) && !readCount(line[kTokens[Bees]], plan.beesMl))
        return paste_text::notANumber(line[kTokens[Bees]]);
    if (line.has(kTokens[Brood]) && !readCount(line[kTokens[Brood]], plan.broodFrames))
        return paste_text::notANumber(line[kTokens[Brood]]);
    if (line.has(kTokens[Open])) {
        const auto answer = tickTyped(line[kTokens[Open]]);
        if (answer == TickTyped::Other)
            return paste_text::notKnown(line[kTokens[Open]],
                                        paste_text::yesWords() + paste_text::noWords());
        plan.openBrood = answer == TickTyped::Yes;
    }
    if (line.has(kTokens[Donor])) plan.donor = line[kTokens[Donor]].toStdString();
    return {};
}

bool saysNothing(const PastedLine& line) {
    return std::all_of(kTokens.begin(), kTokens.end(),
                       [&](const char* token) { return line[token].isEmpty(); });
}

/// A stocking of the day is changed, else there is a new one.
Result<ChangeSet> stocked(const Snapshot& book, Id<NucSide> side, const Ptr<Stocking>& before,
                          const StockingPlan& plan) {
    if (!before) return stockNucs(book, {side}, plan, {newId<Stocking>()});
    auto after = *before;
    after.beesMl = plan.beesMl;
    after.broodFrames = plan.broodFrames;
    after.openBrood = plan.openBrood;
    after.donor = plan.donor;
    ChangeSet changes;
    changes.edit(before, std::move(after));
    return changes;
}

/// A line without any cell filled leaves its nuc alone; what the cells were emptied of is deleted
/// elsewhere. @param plan  of the stocking that is there
LineJudged judgeEmptied(const Ptr<Stocking>& before, const PastedLine& line, StockingPlan plan) {
    if (!before) return {};
    static_cast<void>(readPlan(line, plan));  // no cell, no trouble
    const bool isEmptied = plan.beesMl != before->beesMl ||
                           plan.broodFrames != before->broodFrames ||
                           plan.openBrood != before->openBrood || plan.donor != before->donor;
    return {isEmptied ? nuc_text::deletedInList() : QString()};
}

LineJudged judge(const Snapshot& book, Id<NucSide> side, Day day, const PastedLine& line,
                 ChangeSet& changes) {
    const auto before = stockingOn(book, side, day);
    auto plan = planOf(before, day);
    if (saysNothing(line)) return judgeEmptied(before, line, plan);
    if (const auto trouble = readPlan(line, plan); !trouble.isEmpty()) return {trouble};
    const auto edit = stocked(book, side, before, plan);
    if (!edit) return {plain(edit.error().text)};
    if (const auto next = applied(book, edit.value()); !next) return {plain(next.error().text)};
    if (const auto broken = brokenHold(book, edit.value()))
        return {diary_text::notOutOfHold(*broken)};
    const auto& rows = edit.value().rows;
    changes.rows.insert(changes.rows.end(), rows.begin(), rows.end());
    return {{}, !rows.empty(), !before};
}

}  // namespace

QString copiedNucs(const QTableView& table, const NucsModel& model,
                   const std::function<int(int)>& rowOf) {
    std::string text;
    QStringList heads;
    for (int column = 0; column < model.columnCount(); ++column)
        heads += model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    for (int part = 0; part < PartCount; ++part) heads += nuc_text::stockedHead(part);
    appendCells(text, heads);
    for (const int shown : copiedRows(table)) {
        const int row = rowOf(shown);
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column)
            cells += model.index(row, column).data().toString();
        appendCells(text, cells + cellsOf(stockingOn(model.outlook()->snapshot, model.sideAt(row),
                                                     model.day())));
    }
    return plain(text);
}

PasteKind nucsToPaste(const NucsModel& model) {
    std::vector<Id<NucSide>> sides;
    NamedRows rows;
    for (int row = 0; row < model.rowCount(); ++row) {
        rows.add({model.index(row, NucsModel::Nuc).data().toString()}, row);
        sides.push_back(model.sideAt(row));
    }
    PasteKind kind;
    kind.head = nuc_text::head(model.day());
    kind.named = nuc_text::pastedName(model.day()).toStdString();
    kind.takeIn = paste_text::takeInLines;
    kind.columns = {plainColumn("nuc", nuc_text::columnHead(NucsModel::Nuc), true)};
    for (int part = 0; part < PartCount; ++part)
        kind.columns.push_back(
            plainColumn(kTokens[static_cast<std::size_t>(part)], nuc_text::stockedHead(part)));
    kind.edit = [sides = std::move(sides), rows = std::move(rows), outlook = model.outlook(),
                 day = model.day()](const auto& columns, const auto& lines) {
        return editNamedLines(columns, lines, rows, {"nuc"},
                              [&](int row, const PastedLine& line, ChangeSet& changes) {
                                  return judge(outlook->snapshot,
                                               sides[static_cast<std::size_t>(row)], day, line,
                                               changes);
                              });
    };
    return kind;
}

}  // namespace tenthday
