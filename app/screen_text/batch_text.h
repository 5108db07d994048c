/// @file batch_text.h  The words of planning a batch.
#pragma once
#include <QString>
#include <vector>

#include "drafting/day_trials.h"

namespace tenthday::batch_text {

/// Menu entries.
[[nodiscard]] QString planEntry();
[[nodiscard]] QString editEntry();
/// "Plan a batch", "Batch 17".
[[nodiscard]] QString planTitle();
[[nodiscard]] QString editTitle(const QString& label);

/// Names of the fields; `&` marks the key.
[[nodiscard]] QString label();
[[nodiscard]] QString start();
[[nodiscard]] QString startName(Start start);
[[nodiscard]] QString direction();
[[nodiscard]] QString forward();
[[nodiscard]] QString backward();
/// Of the day field, by the start: "Graft on", "Confined on" ...
[[nodiscard]] QString dayOf(Start start);
[[nodiscard]] QString wanted();
[[nodiscard]] QString wantedEvent(Event event);
[[nodiscard]] QString sureness(Sureness sureness);
[[nodiscard]] QString hour();
[[nodiscard]] QString hourSuffix();
[[nodiscard]] QString hourNotGiven();
[[nodiscard]] QString larvae();
[[nodiscard]] QString larvaeTo();
[[nodiscard]] QString larvaeUsual(double hours);
[[nodiscard]] QString method();
/// "starter, day 0 to 1; finisher, day 1 to 10".
[[nodiscard]] QString steps(const std::vector<Ptr<Step>>& steps);
[[nodiscard]] QString mating();
[[nodiscard]] QString matingName(Mating mating);
[[nodiscard]] QString catchRule();
/// "on sealed brood: 30 nuc days"; without days while they are not known.
[[nodiscard]] QString catchRuleName(CatchRule rule, std::optional<int> nucDays);
[[nodiscard]] QString catchRuleOfBook(CatchRule rule);
[[nodiscard]] QString makeUp();
[[nodiscard]] QString makeUpName(MakeUpPlan plan);
[[nodiscard]] QString note();

/// Bars.
[[nodiscard]] QString bars();
[[nodiscard]] QString breeder();
[[nodiscard]] QString noBreeder();
[[nodiscard]] QString grafts(Start start);
[[nodiscard]] QString take();
[[nodiscard]] QString takeExpected(int cells);
[[nodiscard]] QString takeWhy(const QString& share);
[[nodiscard]] QString builderAt(BuilderKind where);
[[nodiscard]] QString noBuilder();
[[nodiscard]] QString addBar();
[[nodiscard]] QString removeBar();
[[nodiscard]] QString bar(int number);

/// Yards.
[[nodiscard]] QString yards();
[[nodiscard]] QString noYards();
[[nodiscard]] QString yardNumbers(const ReadyNumbers& numbers);
/// How ripe cells and planned ones go together.
[[nodiscard]] QString sum(int ripe, int given);

/// Dates.
[[nodiscard]] QString dates();
[[nodiscard]] QString dateHead(int column);
/// "day 12".
[[nodiscard]] QString dayNumber(int number);
[[nodiscard]] QString range(const QString& earliest, const QString& latest);
[[nodiscard]] QString seen();
/// "planned Sat 12 Jun".
[[nodiscard]] QString planned(Day day);
[[nodiscard]] QString seenNotAsPlanned(Day planned);

/// What speaks against it.
[[nodiscard]] QString clashes();
[[nodiscard]] QString noClash();
/// "▲ West, Thu 3 Jun: builder free only from 5 Jun".
[[nodiscard]] QString clash(const Finding& finding);
/// All that speaks against a day, a line each; none when nothing does.
[[nodiscard]] QStringList against(const DayTrial& trial);
[[nodiscard]] QString searching();

/// The week.
[[nodiscard]] QString weekHead();
[[nodiscard]] QString graftColumn();
[[nodiscard]] QString jobName(TaskRule rule);
/// "Sat 12 Jun, free day".
[[nodiscard]] QString onFreeDay(const QString& day);
[[nodiscard]] QString verdictHead();
[[nodiscard]] QString verdict(const DayTrial& trial, const FreeDays& free);
/// What stands behind the verdict, a line each: jobs on free days, clashes.
[[nodiscard]] QString reasons(const DayTrial& trial, const FreeDays& free);
/// The week in a sentence. @param own  the draft's day: named first of days as good
[[nodiscard]] QString weekSum(const std::vector<DayTrial>& week, const FreeDays& free, Day own);
[[nodiscard]] QString freeWeekdays();

/// Days near.
[[nodiscard]] QString nearestHead();
[[nodiscard]] QString nearest(Day day, int away);
[[nodiscard]] QString noneNear();

/// Again.
[[nodiscard]] QString repeatEvery();
[[nodiscard]] QString daysSuffix(int days);
[[nodiscard]] QString repeatMore(int batches);
[[nodiscard]] QString repeats(const QString& days);

[[nodiscard]] QString save();
[[nodiscard]] QString cancel();
[[nodiscard]] QString remove();
/// What goes with the batch.
[[nodiscard]] QString askRemove(const QString& label, int placements, int outcomes);
/// "Top up cups: 6 ...", for larvae that were not started.
[[nodiscard]] QString topUp(Cells cups);
[[nodiscard]] QString topUpHint(Day by);
[[nodiscard]] QString insure();
[[nodiscard]] QString insureHint();
[[nodiscard]] QString grafted();
/// Counts that a change takes out.
[[nodiscard]] QString countsGo(int counts);
[[nodiscard]] QString askLeave();
[[nodiscard]] QString readOnly();
[[nodiscard]] QString cannotWant();

}  // namespace tenthday::batch_text
