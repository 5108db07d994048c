/// @file changes.h  What the desk says along with a new picture.
#pragma once
#include <bitset>
#include <optional>
#include <string>

#include "records/change_set.h"

namespace tenthday {

/// Why there is something new to show.
enum class Cause {
    Opened,          ///< the book, or another season of it
    Edited,          ///< saved
    Undone,          ///< saved
    Redone,          ///< saved
    Previewed,       ///< not saved: a drag under way
    PreviewDropped,  ///< back to what is saved
    NewDay,          ///< the day or the clock moved on
    Learnt           ///< earlier seasons were read: rates of losses may differ
};

struct Changes {
    Cause cause = Cause::Opened;
    /// Row types touched, by their place in AllRows; all set when everything may differ.
    std::bitset<kTables> tables;

    [[nodiscard]] bool isPreview() const { return cause == Cause::Previewed; }
    template <class Row>
    [[nodiscard]] bool touches() const {
        return tables[kTable<Row>];
    }
};

/// What an edit did, for "Undo: move batch 17 to Tuesday 12 May". The window words it.
struct EditName {
    Verb verb{};
    std::string subject;
    std::optional<Day> day;
    friend bool operator==(const EditName&, const EditName&) = default;
};

}  // namespace tenthday
