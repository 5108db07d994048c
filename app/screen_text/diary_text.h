/// @file diary_text.h  The words of the diary of builders: what was done, what follows from it.
#pragma once
#include <QString>

#include "occupancy/builders.h"
#include "occupancy/workers.h"
#include "records/hold_guard.h"

namespace tenthday::diary_text {

/// What is entered: a make-up, or a note.
enum class What : std::uint8_t { MadeUp, Look, BroodIn, BeesIn, Feed, Pollen };
inline constexpr int kWhats = 6;
[[nodiscard]] What whatOf(BuilderNoteKind kind);
/// "made up", "look for wild cells".
[[nodiscard]] QString what(What what);
/// "open brood of all ages".
[[nodiscard]] QString age(BroodAge age);
/// "North, made up, Mon 3 May 2027".
[[nodiscard]] QString entry(const QString& builder, What what, Day day);
/// The same where the builder is not known.
[[nodiscard]] QString entry(What what, Day day);
/// "with open brood, 9,000 ml of bees, 4 brood frames, moved away"; donors are not in it.
[[nodiscard]] QString detail(const MakeUp& row);
[[nodiscard]] QString detail(const BuilderNote& row);

/// Heads and fields.
[[nodiscard]] QString builder();
[[nodiscard]] QString whatHead();
[[nodiscard]] QString hour();
[[nodiscard]] QString hourUnit();
[[nodiscard]] QString details();
[[nodiscard]] QString openBrood();
[[nodiscard]] QString openBroodTick();
[[nodiscard]] QString broodAge();
[[nodiscard]] QString donors();
[[nodiscard]] QString place();
[[nodiscard]] QString movedAwayTick();
[[nodiscard]] QString bees();
[[nodiscard]] QString beesUnit();
[[nodiscard]] QString broodFrames();
[[nodiscard]] QString framesUnit();

/// What stands under a field.
[[nodiscard]] QString builderNeeded();
[[nodiscard]] QString notThere(const Builder& builder);
/// What can hurt, or go wrong, in this work; empty where nothing does.
[[nodiscard]] QString caution(What what);
[[nodiscard]] QString hourHint();
[[nodiscard]] QString ageHint();
/// "For batch 701, graft Tue 4 May."
[[nodiscard]] QString serves(const Served& served);
/// "28 grafts want 8,400 workers, 300 a cell (S77): 5 to 6 full deep frames of bees."
[[nodiscard]] QString workers(Cells grafts, const Facts& facts);
[[nodiscard]] QString feedServes(Day until);
/// When wild queens can come, and when to look.
[[nodiscard]] QString wildQueens(const WildClock& clock);
/// The rules and sources behind that.
[[nodiscard]] QString whyWildQueens(const Facts& facts, BroodAge age);
[[nodiscard]] QString queenIsThere();
[[nodiscard]] QString noWildCells();
/// A clock that still runs: "Brood of Mon 3 May: look on 8 to 10 May and on 11 to 12 May."
[[nodiscard]] QString looksOf(const WildClock& clock);
[[nodiscard]] QString noLookWanted();
[[nodiscard]] QString donorsHint();
/// "Mill is held for disease until ...: nothing may leave it. Ask the bee inspector."
[[nodiscard]] QString held(const DonorHold& hold);
/// Why an edit is not kept: "Mill is held ...: nothing is planned out of it on Fri 11 Jun."
[[nodiscard]] QString notOutOfHold(const BrokenHold& broken);
[[nodiscard]] QString fliesBack();

}  // namespace tenthday::diary_text
