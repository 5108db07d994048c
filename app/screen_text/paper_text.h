/// @file paper_text.h  The words on lists and cards on paper, and of choosing what to print.
#pragma once
#include <QString>
#include <QStringList>

#include "options/print_choice.h"
#include "outlook/outlook.h"

namespace tenthday::paper_text {

/// "Catch list".
[[nodiscard]] QString kind(PaperKind kind);
/// "Catch list · Monday 21 June".
[[nodiscard]] QString title(PaperKind kind, Day day);
/// What is said where the list of a day is empty.
[[nodiscard]] QString none(PaperKind kind);
[[nodiscard]] QString noYard();

enum class Head : std::uint8_t {
    Nuc,
    Batch,
    Breeder,
    Number,
    GoesTo,
    Why,
    Cell,
    Bees,
    Brood,
    Donor,
    By,
    Thing,
    Amount,
    For,
    Bar,
    Grafts,
    Started,
    Sealed,
    Ripe,
    Event,
    When,
    Seen,
    Builder,
    Days,
    What,
    Count,
    Due,
    Line,
    Stage,
    Planned,
    Happened,
    Recorded
};
[[nodiscard]] QString head(Head head);

/// "24 queens".
[[nodiscard]] QString queens(int count);
/// "300 ml".
[[nodiscard]] QString bees(int millilitres);
[[nodiscard]] QString openBrood(int frames);
[[nodiscard]] QString batch(const QString& label);
/// "cell of batch 17 (Rosa)".
[[nodiscard]] QString cellOf(const QString& batch, const QString& breeders);
[[nodiscard]] QString noCell();
[[nodiscard]] QString cellsOn(Day day);
[[nodiscard]] QString noCellsDay();
[[nodiscard]] QString late();
[[nodiscard]] QString stockingWhy(const QString& token, const std::optional<Day>& cellsDay);
[[nodiscard]] QString withoutNuc(int cells);
[[nodiscard]] QString markOf(Day day);

/// Things to load, each with its amount.
[[nodiscard]] QString ripeCells();
[[nodiscard]] QString larvaeCups();
[[nodiscard]] QString queenCages();
[[nodiscard]] QString shippingCages();
[[nodiscard]] QString beesToShake();
[[nodiscard]] QString nucBoxes();
[[nodiscard]] QString droneCombs();
[[nodiscard]] QString virgins();
[[nodiscard]] QString forAll();

/// Lines of a nuc's card.
[[nodiscard]] QString wentIn(const QString& batch, const QString& breeders, Day day, bool done);
[[nodiscard]] QString outAbout(Day day);
[[nodiscard]] QString leaveShut(Day from, Day until);
[[nodiscard]] QString shutHours(int from, int until);
[[nodiscard]] QString lookFrom(Day day);
[[nodiscard]] QString catchFrom(Day day);
[[nodiscard]] QString seenOn();

/// Of a batch's card.
[[nodiscard]] QString batchTitle(const QString& label);
[[nodiscard]] QString bars();
[[nodiscard]] QString dates();
[[nodiscard]] QString builders();
[[nodiscard]] QString until(const QString& from, const QString& to);

/// Of an order's confirmation.
[[nodiscard]] QString orderTitle(const QString& label);
[[nodiscard]] QString orderLead(Day written);
[[nodiscard]] QString ordered();
[[nodiscard]] QString inParts();
[[nodiscard]] QString whole();
[[nodiscard]] QString notBefore(Day day);
[[nodiscard]] QString anyLine();
[[nodiscard]] QStringList orderNotes(bool queens);
/// Of the review of a season.
[[nodiscard]] QString yearTitle(const DayWindow& season);
[[nodiscard]] QString yearLead(int batches, Day until);
[[nodiscard]] QString yearStages();
[[nodiscard]] QString yearWhy();
[[nodiscard]] QString stage(int stage);
/// "14 of 16 batches": with a record, of those whose day is past.
[[nodiscard]] QString recorded(int batches, int missing);
[[nodiscard]] QString whole(double number);
[[nodiscard]] QString take();
/// "70 % planned, 64 % counted".
[[nodiscard]] QString takePlannedSeen(double planned, double seen);
[[nodiscard]] QString dearth(int batches);
[[nodiscard]] QString weather();
[[nodiscard]] QString flying(int days, int grounded);
[[nodiscard]] QString lateBatches(int batches, int days);
[[nodiscard]] QString nucs();
[[nodiscard]] QString nucTrouble(int withoutNuc, int noQueen, int droneLayer);
[[nodiscard]] QString orders();
[[nodiscard]] QString deliveredOf(int delivered, int replaced);
[[nodiscard]] QString yearNote();

/// Cautions of moving bees and cells, for lists one works from.
[[nodiscard]] QStringList workNotes();
[[nodiscard]] QString stockingNote();

}  // namespace tenthday::paper_text
