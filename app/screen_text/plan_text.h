/// @file plan_text.h  The words of the season plan: what is asked, what is proposed, how sure.
#pragma once
#include <QString>
#include <QStringList>

#include "planning/ways.h"

namespace tenthday::plan_text {

// The page.
[[nodiscard]] QString pageEntry();
[[nodiscard]] QString head();
[[nodiscard]] QString planNow();
[[nodiscard]] QString planAnew();
[[nodiscard]] QString stop();
[[nodiscard]] QString findWays();
[[nodiscard]] QString change();
[[nodiscard]] QString asPlanned();
[[nodiscard]] QString tickAll();
[[nodiscard]] QString tickNone();
[[nodiscard]] QString showInChart();
[[nodiscard]] QString forget();
/// "Take over 4 batches".
[[nodiscard]] QString takeOver(int batches);
/// "4 batches taken over. Undo takes them back in one step."
[[nodiscard]] QString takenOver(int batches);
[[nodiscard]] QString bookChanged();
[[nodiscard]] QString droppedByEdit();
[[nodiscard]] QString cannotPlan(const QString& why);
[[nodiscard]] QString cannotTry(const QString& why);
[[nodiscard]] QString readOnly();

// What is asked.
[[nodiscard]] QString graftFrom();
[[nodiscard]] QString graftUntil();
[[nodiscard]] QString graftDaysTip(const Outlook& outlook);
[[nodiscard]] QString mostGrafts();
[[nodiscard]] QString mostGraftsUnit();
[[nodiscard]] QString noLimit();
[[nodiscard]] QString mostHours();
[[nodiscard]] QString mostHoursUnit();
[[nodiscard]] QString anyHours();
[[nodiscard]] QString mostHoursTip();
[[nodiscard]] QString notOnOneBatch();
[[nodiscard]] QString notOnOneBatchTip();
[[nodiscard]] QString freeWeekdays();
[[nodiscard]] QString freeWeekdaysTip();
[[nodiscard]] QString keepTicked();
[[nodiscard]] QString keepTickedTip();
[[nodiscard]] QString howSureTip();

// While it is planned.
/// "Fewest graft days: 5 found, at least 4 needed".
[[nodiscard]] QString progress(const PlanProgress& progress);
[[nodiscard]] QString beginning();
[[nodiscard]] QString lookingAgain();

// The answer.
/// "Proven: ..."; one sentence or two.
[[nodiscard]] QString status(const Outlook& outlook, const PlanAnswer& answer);
/// Of what it is proven, and what is told by chances.
[[nodiscard]] QString statusBecause();
/// Orders that are short, and days that take too long, a line each.
[[nodiscard]] QStringList gaps(const Outlook& outlook, const PlanAnswer& answer);
/// Of a plan that proposes nothing though orders are short: why that can be, and what to do.
[[nodiscard]] QStringList whatNext();
[[nodiscard]] QString proposals();
[[nodiscard]] QString columnHead(int column);
/// "Wed 12 May"; a changed one says so.
[[nodiscard]] QString graftOn(Day graft, bool changed);
[[nodiscard]] QString because(const Outlook& outlook, const ProposedBatch& batch, int column);
[[nodiscard]] QString breeders(const Outlook& outlook, const ProposedBatch& batch);
[[nodiscard]] QString builders(const Outlook& outlook, const ProposedBatch& batch);
/// "Heath 14, Mill 6; 4 sold".
[[nodiscard]] QString yards(const Outlook& outlook, const ProposedBatch& batch);
/// "K-07: 12, K-09: 3".
[[nodiscard]] QString serves(const Outlook& outlook, const ProposedBatch& batch);
/// "graft Wed 12 May": what a ghost is called.
[[nodiscard]] QString ghost(Day graft);
[[nodiscard]] QString chooseBatch();
/// What new warnings the ticked batches bring; none.
[[nodiscard]] QStringList warnings(const std::vector<Finding>& findings);

// Sums before and after.
enum class Sum : std::uint8_t { GraftDays, Grafts, Trips, NucDays, SpareQueens };
inline constexpr int kSums = 5;
[[nodiscard]] QString sumsHead();
[[nodiscard]] QStringList sumsColumns();
[[nodiscard]] QString sumName(Sum sum);
[[nodiscard]] QString sumBecause(Sum sum);
[[nodiscard]] QString sumValue(Sum sum, const PlanSums& sums);
/// "12 mated queens for K-07, by Fri 18 Jun".
[[nodiscard]] QString orderName(const Order& order);
[[nodiscard]] QString orderBecause(const Order& order);
/// "97 %"; a dash where it is not known.
[[nodiscard]] QString orderChance(const OrderChance* chance);

// Changing a proposal.
[[nodiscard]] QString changeHead(Day graft);
[[nodiscard]] QString changeDone();
[[nodiscard]] QString graftDay();
[[nodiscard]] QString graftsOf(const Outlook& outlook, const ProposedBar& bar, bool alone);
[[nodiscard]] QString graftsUnit();
[[nodiscard]] QString changeHint();

// Ways to fix a shortfall.
[[nodiscard]] QString waysHead();
[[nodiscard]] QString searchingWays(int tried);
/// "12 more nucs from Mon 24 May"; two joined by "and"; or that it fixes nothing alone.
[[nodiscard]] QString way(const Outlook& outlook, const WayToFix& way);
[[nodiscard]] QString noWay();
[[nodiscard]] QString wayBecause();

}  // namespace tenthday::plan_text
