/// @file evening_verbs.h  What the evening page keeps: one edit for each stroke, and what cannot be
/// true.
#pragma once
#include <functional>
#include <optional>
#include <string>

#include "base/id_source.h"
#include "evening/evening.h"
#include "records/change_set.h"

namespace tenthday {

/// What was entered in a row; what does not belong to its kind of entry is not looked at.
struct EveningInput {
    Day day;                            ///< on which it was done or seen
    std::optional<Hour> hour;           ///< where it is known
    std::optional<std::int32_t> count;  ///< for Count, 0 to 9999
    std::optional<NucLook> look;        ///< for Look
    std::string note;                   ///< of a queen that is gone: why
    std::string queenNumbers;           ///< for Caught: pattern of the number she gets; empty: none
    bool stays = false;                 ///< for Caught: she stays in her nuc over the winter
};

/// Why an entry cannot be true.
enum class Impossible : std::uint8_t {
    AfterToday,       ///< the day is still to come
    OutOfRange,       ///< a count is 0 to 9999
    BeforeGraft,      ///< day = of the graft
    MoreThanBefore,   ///< count = of the stage before
    FewerThanAfter,   ///< count = of the stage after
    BeforePlaced,     ///< day = the cell went in
    BeforeEmergence,  ///< day = the first queens can be out
    TooYoung,         ///< day = the first can have flown
    NucHeld,          ///< another batch's cell or queen is in it
    QueenStays,       ///< the queen of a season before is in it since day
};
struct Refusal {
    Impossible why{};
    std::int32_t count = 0;
    Day day{};
    std::string queen{};  ///< of QueenStays: her number
};

/// Nothing where the entry can be true.
[[nodiscard]] std::optional<Refusal> whyImpossible(const Outlook& outlook, const EveningRow& row,
                                                   const EveningInput& input);
/// The refusal as one plain English line.
[[nodiscard]] std::string englishText(const Refusal& refusal);

/// Keeps an entry, in place of what the row holds for that day already: a count, a look and a catch
/// are outcomes, a cell that went in a placement, all else a tick. A catch brings the queen with
/// her number, where numbers are given. Refused where it cannot be true.
[[nodiscard]] Result<ChangeSet> enter(const Outlook& outlook, const EveningRow& row,
                                      const EveningInput& input, const IdSource& newId);

/// The same for several rows as one edit; refused as a whole where one cannot be true.
[[nodiscard]] Result<ChangeSet> enterAll(const Outlook& outlook,
                                         const std::vector<const EveningRow*>& rows,
                                         const EveningInput& input, const IdSource& newId);

/// What a filled row holds, as it would be entered again: to correct its hour or note.
[[nodiscard]] EveningInput inputOf(const EveningRow& row);

/// Takes back what the row holds. Empty where it holds nothing. A cell that went in is planned for
/// its nuc again, where it was planned for it by name; a virgin is in her cage again. A queen goes
/// with her catch: refused where she was moved since.
[[nodiscard]] Result<ChangeSet> takeBack(const Outlook& outlook, const EveningRow& row);

}  // namespace tenthday
