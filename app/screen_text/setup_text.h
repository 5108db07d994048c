/// @file setup_text.h  The words of the set-up page: kinds of things, their fields, what is
/// refused.
#pragma once
#include <QString>
#include <vector>

#include "calendar/day.h"
#include "facts/facts.h"
#include "records/uses.h"
#include "records/year_mark.h"

namespace tenthday::setup_text {

/// The kinds of things, in the order of the page.
enum class Kind : std::uint8_t {
    Yards,
    Boxes,
    Builders,
    Diary,
    Queens,
    Caught,
    Methods,
    Drones,
    YardNotes,
    DaysOff,
    Seasons
};
/// "Yards".
[[nodiscard]] QString kindName(Kind kind);
/// "Yards (3)".
[[nodiscard]] QString kindAndCount(Kind kind, int count);
/// "box Q7", within a sentence.
[[nodiscard]] QString thing(Kind kind, const QString& label);
/// "Box Q7", where a sentence begins.
[[nodiscard]] QString atStart(const QString& text);
/// "12 boxes".
[[nodiscard]] QString things(Kind kind, int count);
/// "New yard".
[[nodiscard]] QString newThing(Kind kind);
/// How to begin, where the list is empty.
[[nodiscard]] QString begin(Kind kind);
[[nodiscard]] QString nothingFound();

/// A column's head, and a field's name.
enum class Name : std::uint8_t {
    Label,
    FirstLabel,
    HowMany,
    Roles,
    Hemisphere,
    FrostDay,
    DronesOutDay,
    DriveOrder,
    Note,
    Boxes,
    Yard,
    YardFrom,
    Layout,
    LayoutFrom,
    From,
    Until,
    Kind,
    OpenRoom,
    SealedRoom,
    Born,
    Mother,
    Line,
    BreederFrom,
    BreederUntil,
    Steps,
    UsedBy,
    Days,
    Batches,
    Day,
    Stage,
    Colonies,
    MatureBy
};
[[nodiscard]] QString name(Name name);

/// Words in the cells and choices of lists.
[[nodiscard]] QString role(int index);  ///< in the order mating, builder, donor, drone
[[nodiscard]] QString north();
[[nodiscard]] QString south();
[[nodiscard]] QString unknown();
[[nodiscard]] QString nowhere();
[[nodiscard]] QString retiredFrom(Day day);
[[nodiscard]] QString comesOn(const QString& yard, Day day);
[[nodiscard]] QString unchanged();
/// "2025, blue".
[[nodiscard]] QString yearAndMark(int year);
[[nodiscard]] QString mark(YearMark mark);
[[nodiscard]] QString markHint(YearMark mark);
/// "day 0 to 10".
[[nodiscard]] QString daySpan(int fromHour, int toHour);
[[nodiscard]] QString batches(int count);
[[nodiscard]] QString cellsUnit();
[[nodiscard]] QString hours();
[[nodiscard]] QString days();
/// "Sat 26 Jun 2027".
[[nodiscard]] QString day(Day day);
[[nodiscard]] QString dayOff(Day from, Day until);

/// What stands under a field.
/// "Empty: 24 cells, the default (15 to 48; S74, S25)".
[[nodiscard]] QString emptyIs(const Facts& facts, Fact fact);
/// "In use: 24 h ..." for a number that steps of methods are usually made with.
[[nodiscard]] QString usual(const QString& what, const Facts& facts, Fact fact);
[[nodiscard]] QString emptyIsUnbounded();
[[nodiscard]] QString frostHint();
[[nodiscard]] QString orderHint();
[[nodiscard]] QString layoutHint();
[[nodiscard]] QString labelsHint(const QString& first, const QString& last);
[[nodiscard]] QString moveHint();
[[nodiscard]] QString lineHint();
[[nodiscard]] QString emptyUntil();
/// "3 batches use this method. With other steps it is kept as a copy under a label of its own."
[[nodiscard]] QString copyHint(int batches);
[[nodiscard]] QString starterStep();
[[nodiscard]] QString incubatorStep();
[[nodiscard]] QString ripeStep();

/// The table of steps.
[[nodiscard]] QString where();
[[nodiscard]] QString fromHour();
[[nodiscard]] QString toHour();
[[nodiscard]] QString rest();
[[nodiscard]] QString addStep();
[[nodiscard]] QString dropStep();
[[nodiscard]] QString stepNumber(int step);

/// What is wrong with a field.
[[nodiscard]] QString needed(const QString& field);
[[nodiscard]] QString wholeNumber(int low, int high);
[[nodiscard]] QString noDay(const QString& typed);
[[nodiscard]] QString taken(const QString& label);
[[nodiscard]] QString endsTooEarly();
/// @param most  days
[[nodiscard]] QString seasonTooLong(int most);
[[nodiscard]] QString batchesOutside(int batches);
[[nodiscard]] QString count(int number);
[[nodiscard]] QString noLayout(const QString& typed);
[[nodiscard]] QString noNumberAtTheEnd();
[[nodiscard]] QString stepsOverlap(int step);
[[nodiscard]] QString yardNeeded();

/// The page and its buttons.
[[nodiscard]] QString head();
[[nodiscard]] QString find(Kind kind);
[[nodiscard]] QString shownOf(int shown, int all);
[[nodiscard]] QString add();
[[nodiscard]] QString addTip();
[[nodiscard]] QString remove();
[[nodiscard]] QString removeTip();
[[nodiscard]] QString save();
[[nodiscard]] QString discard();
[[nodiscard]] QString numbers();
[[nodiscard]] QString calendar();
[[nodiscard]] QString notSavedYet();
[[nodiscard]] QString saved();
[[nodiscard]] QString deleted(const QString& thing);
[[nodiscard]] QString retired(const QString& thing);
[[nodiscard]] QString readOnly();
[[nodiscard]] QString chooseOne(Kind kind);

/// Leaving what is not saved.
[[nodiscard]] QString leaveHead();
[[nodiscard]] QString leaveText(const QString& thing);
[[nodiscard]] QString keepEditing();

/// Deleting what is in use.
[[nodiscard]] QString inUseHead();
/// "Box Q7 is in use: 3 bees put in, 2 cells."
[[nodiscard]] QString inUse(const QString& thing, const std::vector<Use>& uses);
[[nodiscard]] QString retireFrom();
[[nodiscard]] QString retire();
[[nodiscard]] QString retireHint(Kind kind);
[[nodiscard]] QString cannotRetire(Kind kind);

}  // namespace tenthday::setup_text
