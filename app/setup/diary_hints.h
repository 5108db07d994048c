/// @file diary_hints.h  The form of the diary of builders: its fields, which of them belong to what
/// was done, what follows from them.
#pragma once
#include "screen_text/diary_text.h"
#include "setup/setup_kind.h"

namespace tenthday {

/// The fields, in the order of the form.
namespace diary_field {
enum : std::size_t {
    Of,
    Done,
    On,
    At,
    OpenBrood,
    Age,
    Donors,
    MovedAway,
    Bees,
    BroodFrames,
    Note,
    kCount
};
}  // namespace diary_field

/// The one value of a field that is ticked.
[[nodiscard]] QString diaryTick();
[[nodiscard]] bool isTicked(const QVariant& value);
[[nodiscard]] std::optional<Hour> diaryHour(const QVariant& value);
/// What was done; none: not said yet.
[[nodiscard]] std::optional<diary_text::What> diaryWhat(const Draft& draft);

[[nodiscard]] bool diaryFits(const Draft& draft, std::size_t field);
/// What follows from a draft, for under a field.
[[nodiscard]] Hint diaryHint(const Snapshot& book, const Draft& draft, std::size_t field);

}  // namespace tenthday
