/// @file upkeep_text.h  The words of the bees of nucs: upkeep, the list of stockings a week ahead,
/// work against mites.
#pragma once
#include <QString>

#include "occupancy/mite_spans.h"
#include "occupancy/nuc_upkeep.h"
#include "occupancy/stocking_list.h"

namespace tenthday::upkeep_text {

/// What is done to the nucs that are chosen: 0 bees for a new nuc, then the kinds of upkeep.
/// Stock, the kinds of upkeep, and upkeep taken back.
inline constexpr int kTakeBack = 1 + static_cast<int>(kTokenCount<NucCareKind>);
inline constexpr int kWhats = kTakeBack + 1;
[[nodiscard]] QString what(int entry);
[[nodiscard]] QString whatHead();
/// The button: "Boost 3 nucs on Fri 11 Jun".
[[nodiscard]] QString enter(NucCareKind kind, int nucs, Day day);
[[nodiscard]] QString takeBack(int nucs, Day day);
[[nodiscard]] QString whatHint(int entry);

/// The column of a nuc's bees.
[[nodiscard]] QString beesHead();
/// "300 ml, 2 rounds"; "worn: 3 rounds"; empty where it is not stocked.
[[nodiscard]] QString strength(const NucStrength& strength);
[[nodiscard]] QString whyStrength(const NucStrength& strength);
[[nodiscard]] QString wornFilter();

/// The list of stockings.
[[nodiscard]] QString stockingButton();
[[nodiscard]] QString stockingTitle(const DayWindow& days);
[[nodiscard]] QString stockingHead(int column);
inline constexpr int kStockingColumns = 7;
[[nodiscard]] QString by(const StockingNeed& need);
[[nodiscard]] QString bees(const StockingNeed& need);
[[nodiscard]] QString frames(const StockingNeed& need);
[[nodiscard]] QString donor(const StockingNeed& need);
[[nodiscard]] QString why(const StockingNeed& need);
[[nodiscard]] QString whyBy(const StockingNeed& need, const Facts& facts);
[[nodiscard]] QString nothingToStock();
/// How many, and how many cells find no nuc even so.
[[nodiscard]] QString stockingSum(const StockingList& list);
/// What each donor gave; a line for each.
[[nodiscard]] QString donorsHead();
[[nodiscard]] QString gifts(const DonorGifts& donor, const Facts& facts);
/// The rule behind what donors may give.
[[nodiscard]] QString whyMayGive(const Facts& facts);
[[nodiscard]] QString stockingCaution();
[[nodiscard]] QString copy();
[[nodiscard]] QString copied();

/// Work against mites.
[[nodiscard]] QString mitesButton();
[[nodiscard]] QString mitesTitle();
[[nodiscard]] QString mitesHead(int column);
inline constexpr int kMiteColumns = 6;
[[nodiscard]] QString until(const MiteSpan& span);
[[nodiscard]] QString noBrood(const MiteSpan& span);
/// What was done and when; "none".
[[nodiscard]] QString done(const MiteSpan& span);
[[nodiscard]] QString whySpan(const MiteSpan& span, const Facts& facts);
[[nodiscard]] QString allOfSeason();
[[nodiscard]] QString noSpans();
[[nodiscard]] QString day();
[[nodiscard]] QString whatWasDone();
[[nodiscard]] QString note();
[[nodiscard]] QString enterWork(int places);
[[nodiscard]] QString takeBackWork();
[[nodiscard]] QString chooseSpans();
[[nodiscard]] QString mitesCaution();

}  // namespace tenthday::upkeep_text
