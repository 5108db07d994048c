/// @file chart_hand_text.h  Words of what a hand does on the season chart, and of what is heard.
#pragma once
#include <QString>

#include "occupancy/nucs.h"
#include "screen_text/chart_cards.h"

namespace tenthday::chart_hand_text {

/// Head of the legend: "What the colours and marks mean".
[[nodiscard]] QString legend();
/// Name of the strip: "Whole season".
[[nodiscard]] QString wholeSeason();
/// In lanes that have nothing yet: what belongs there.
[[nodiscard]] QString noWeather();
[[nodiscard]] QString noOrders();
[[nodiscard]] QString noBuilderLoads();

/// "in 14:00", "out 9:00": of cells in a builder.
[[nodiscard]] QString in(const QString& clock);
[[nodiscard]] QString out(const QString& clock);

/// While it is dragged: "28 grafts", with what they were; "to East"; "to yard Orchard".
[[nodiscard]] QString grafts(int count);
[[nodiscard]] QString were(int count);
[[nodiscard]] QString toBuilder(const QString& name);
[[nodiscard]] QString toYard(const QString& name);
[[nodiscard]] QString batches(int count);
/// "batch 705"; "batches 705, 706 and 3 more". A number beside it can then be none of a batch.
[[nodiscard]] QString batchNames(const QStringList& first, int more = 0);
[[nodiscard]] QString byDays(int days);
/// What the freeing key does.
[[nodiscard]] QString magnetHint();

/// Names and values for a screen reader.
[[nodiscard]] QString yardOn(const QString& yard, const QString& day);
[[nodiscard]] QString numbers(const ReadyNumbers& numbers);
[[nodiscard]] QString batch(const QString& label);
/// "below: Heath, Queens and 2 more"; lanes that are scrolled out of sight.
[[nodiscard]] QString lanesBelow(const QStringList& first, int more);
[[nodiscard]] QString lanesAbove(const QStringList& first, int more);
/// "not in this picture: Heath, Queens and 2 more".
[[nodiscard]] QString lanesLacking(const QStringList& first, int more);
/// Their card: each by its name, the first dozen, and how to see them.
[[nodiscard]] CardText lanesBelowCard(const QStringList& lanes);
[[nodiscard]] CardText lanesAboveCard(const QStringList& lanes);
/// For a screen reader: name and action, and the key that does the same.
[[nodiscard]] QString lanesBelowName();
[[nodiscard]] QString lanesAboveName();
[[nodiscard]] QString scrollThere();
[[nodiscard]] QString lanesBelowKey();
[[nodiscard]] QString lanesAboveKey();
/// "more nucs of Heath".
[[nodiscard]] QString moreNucsOf(const QString& yard);
[[nodiscard]] QString loadIn(const QString& batch, const QString& builder);
[[nodiscard]] QString batchValue(const QString& graft, const QString& out, const QString& caught);
[[nodiscard]] QString orderDue(const QString& label, const QString& day);
/// Actions: their names are shown by assistive programs.
[[nodiscard]] QString choose();
[[nodiscard]] QString change();
[[nodiscard]] QString earlier();
[[nodiscard]] QString later();
/// Nothing is ahead: no clash, no work that must be done on its day.
[[nodiscard]] QString noClash();
[[nodiscard]] QString noMust();

}  // namespace tenthday::chart_hand_text
