/// @file chart_text.h  The words on the season chart.
#pragma once
#include <QString>

#include "findings/finding.h"
#include "occupancy/nucs.h"
#include "timeline/event.h"

namespace tenthday::chart_text {

[[nodiscard]] QString seasonChart();
[[nodiscard]] QString today();
/// "today, Thu 17 Jun".
[[nodiscard]] QString todayOn(const QString& day);
[[nodiscard]] QString noBuilderYet();
/// Names of the lines of a cells day, after the day itself.
[[nodiscard]] QString forNucsHead();
[[nodiscard]] QString readyHead();
[[nodiscard]] QString leftHead();
[[nodiscard]] QString builders();
[[nodiscard]] QString matingNucs();
[[nodiscard]] QString nucs(int count);
/// "Q18 A"; the box alone where it is undivided.
[[nodiscard]] QString nuc(const QString& box, const QString& side);
[[nodiscard]] QString notReady(NotReady why);
[[nodiscard]] QString cells(int count);
[[nodiscard]] QString number(int count);
/// How many are expected: tenths, but none of a whole number.
[[nodiscard]] QString expected(double count);
/// "+13".
[[nodiscard]] QString more(int count);

/// The lines of a cells day, after the day itself.
/// "ready 22", with the likely ones after it: "ready 22 +27".
[[nodiscard]] QString ready(int count, int likely);
/// "17 Jun: ready 22 +27".
[[nodiscard]] QString readyOn(const QString& day, int count, int likely);
/// "left 20", or "9 too many".
[[nodiscard]] QString left(int count);
/// "17 nucs to free": so many cells hang on nucs that a catch or a look has to free.
[[nodiscard]] QString nucsToFree(int count);
/// The same of a day that is over.
[[nodiscard]] QString nucsShort(int count);
/// In place of all three where not even the least has room: the day can be asked.
[[nodiscard]] QString noRoom();
/// The same in the least room, under the names of the lines: "22 +27"; "-9".
[[nodiscard]] QString readyShort(int count, int likely);
[[nodiscard]] QString leftShort(int count);
/// "catch 17".
[[nodiscard]] QString nucsToFreeShort(int count);

/// "batch 18, graft Mon 7 Jun, cells out Thu 17 Jun", to be heard.
[[nodiscard]] QString batchBrief(const QString& label, const QString& graft,
                                 const QString& cellsOut);
/// A few words for a batch or box in trouble: "overfull: 30 cells, room for 24".
[[nodiscard]] QString trouble(const Finding& finding);
/// A state in the reader's words.
[[nodiscard]] QString state(NucState state);
[[nodiscard]] QString event(Event event);
[[nodiscard]] QString builderKind(BuilderKind kind);

enum class LegendEntry : std::uint8_t {
    OpenCells,
    SealedCells,
    Virgin,
    DueToFly,
    FirstEggs,
    Laying,
    JudgedGood,
    NoQueen,
    Ready,
    Likely,
    Waiting,
    NotStocked,
    LookDue,
    LookDone,
    Rest,
    FlyingDay,
    NoFlyingDay,
    FlyingChance,
    DronesMature,
    OutsideLimits
};
[[nodiscard]] QString legend(LegendEntry entry);

}  // namespace tenthday::chart_text
