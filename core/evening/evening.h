/// @file evening.h  The evening page: a day's work in the sheet's order, with what can be entered
/// of it and what already was.
#pragma once
#include <string>
#include <vector>

#include "outlook/outlook.h"
#include "tasks/week.h"

namespace tenthday {

/// What one row takes.
enum class EveningEntry : std::uint8_t {
    None,    ///< the head of a task whose bars or nucs follow
    Tick,    ///< done or not
    Count,   ///< how many: grafts, started cells, ripe cells
    Placed,  ///< a nuc: the cell or virgin went in
    Look,    ///< a nuc: what was found
    Caught,  ///< a nuc: the queen was caught
};

/// What a look into a nuc finds: the circles of the week sheet.
enum class NucLook : std::uint8_t {
    Eggs,
    Larvae,
    SealedBrood,
    VirginSeen,
    NoneYet,  ///< neither queen nor eggs yet: look again
    Gone,     ///< no queen, or dead
};
template <>
struct TokensOf<NucLook> {
    static constexpr auto names =
        std::to_array<std::string_view>({"eggs", "larvae", "sealed", "virgin", "none_yet", "gone"});
};

/// What became of a queen that is gone. Kept as its token in the outcome's note.
enum class LossCause : std::uint8_t { NotKnown, Flight, Killed, DeadCell, BeesGone, ByHand };
template <>
struct TokensOf<LossCause> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"", "flight", "killed", "dead_cell", "bees_gone", "by_hand"});
};

/// One line of the page: a task, one of its bars, or one of its nucs.
struct EveningRow {
    EveningEntry entry{};
    std::int32_t number = 0;  ///< of the task in its week, as on the sheet; 0 on further lines
    Task task;                ///< sides point into the outlook
    bool isHead = false;      ///< a task; the lines of its bars or nucs follow
    bool late = false;        ///< of a day before
    std::optional<std::int32_t> bar;
    const SideOutlook* side = nullptr;
    std::optional<std::int32_t> expected;  ///< for Count
    /// What was entered: a count on whichever day; a look or a catch on the page's.
    Ptr<Outcome> seen;
    Ptr<Outcome> before;      ///< Look: what an earlier look found
    Ptr<Queen> queen;         ///< Caught: the one with a number of her own
    bool sure = true;         ///< Caught: she was seen laying
    Ptr<Placement> placed;    ///< what was entered, or is planned by name
    std::optional<Day> done;  ///< Tick: when

    /// Something was entered that the row holds.
    [[nodiscard]] bool isFilled() const;
    /// She stays in her nuc over the winter, for Caught.
    [[nodiscard]] bool stays() const;
    /// The look that was entered, for Look.
    [[nodiscard]] std::optional<NucLook> look() const;
    /// What an earlier look found, for Look.
    [[nodiscard]] std::optional<NucLook> lookBefore() const;
};

/// The page of one day: what is still open from days before comes first, then the day's tasks in
/// the sheet's order. What was entered on that day stays, even when it moved its task elsewhere.
struct EveningPage {
    Day day;
    std::vector<EveningRow> rows;
};
/// @param before  the page as it was filled until now: a nuc that a cell was meant for stays on it,
///                though the cells that went in elsewhere leave the plan without one for it
[[nodiscard]] EveningPage eveningOf(const Outlook& outlook, Day day,
                                    const EveningPage& before = {});

}  // namespace tenthday
