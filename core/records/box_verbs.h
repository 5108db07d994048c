/// @file box_verbs.h  Edits of nuc boxes: where they stand and how they are divided, by date.
#pragma once
#include "base/id_source.h"
#include "records/change_set.h"

namespace tenthday {

/// What new boxes are like.
struct BoxPlan {
    std::optional<Id<Yard>> yard;  ///< empty: stands nowhere yet
    std::string layout;            ///< "7", "3+3"; empty: none yet
    Day from;                      ///< stands and is laid out so from this day on
    std::string note;
};

/// "Q1", 12 -> Q1 ... Q12; "N07" keeps its zeros: N07 ... N18. Refused when more than one is wanted
/// and the first does not end in a number of at most 9 digits. @param count  1 to 999
[[nodiscard]] Result<std::vector<std::string>> countedLabels(const std::string& first,
                                                             std::int32_t count);

/// New boxes whose labels count up from the first. Refused as a whole where a label is taken.
[[nodiscard]] Result<ChangeSet> addBoxes(const Snapshot& snapshot, const std::string& firstLabel,
                                         std::int32_t count, const BoxPlan& plan,
                                         const IdSource& newId);

/// A wrong day put right: what holds since `row`'s day held since `from`.
template <class Row>
struct OtherDay {
    Id<Row> row;
    Day from;
};

/// What becomes of boxes; what is empty stays as it is.
struct BoxChange {
    struct Move {
        std::optional<Id<Yard>> yard;  ///< empty: stands nowhere, retired
        Day from;
    };
    struct Layout {
        std::string layout;
        Day from;
    };
    std::optional<std::string> label;  ///< of one box alone
    std::optional<std::string> note;
    std::optional<Move> move;
    std::optional<Layout> layout;
    std::optional<OtherDay<BoxStay>> stayDay;
    std::optional<OtherDay<BoxLayout>> layoutDay;
};

/// Changes boxes alike. A box that stands or is divided so already is left alone. A layout is
/// refused while nucs of the one before have bees, cells or looks on or after its day, and cannot
/// change in place once its nucs have a record.
[[nodiscard]] Result<ChangeSet> changeBoxes(const Snapshot& snapshot,
                                            const std::vector<Id<Box>>& boxes,
                                            const BoxChange& change, const IdSource& newId);

/// Boxes stand nowhere from a day on; later stays go. Refused while a nuc of theirs has bees, cells
/// or looks on or after that day; a look on the very day is fine.
[[nodiscard]] Result<ChangeSet> retireBoxes(const Snapshot& snapshot,
                                            const std::vector<Id<Box>>& boxes, Day from,
                                            const IdSource& newId);

/// The last day, on or after `from`, with a record of a nuc of the box under layouts that began
/// before `laidOutBefore`. A nuc may be looked through on the very day `from`.
[[nodiscard]] std::optional<Day> lastUseOfNucs(const Snapshot& snapshot, Id<Box> box, Day from,
                                               Day laidOutBefore);

/// A layout with its sides.
void addLayout(ChangeSet& changes, const BoxLayout& layout, const IdSource& newId);

}  // namespace tenthday
