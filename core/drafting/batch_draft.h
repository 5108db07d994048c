/// @file batch_draft.h  A batch as it is being planned: all that is typed, as one value, and the
/// edit it makes.
#pragma once
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/id_source.h"
#include "records/change_set.h"
#include "records/relations.h"

namespace tenthday {

/// Whether the builders of the first step are made up for the batch.
enum class MakeUpPlan : std::uint8_t {
    None,
    WithoutOpenBrood,
    WithOpenBrood,  ///< wild cells can be begun: two looks
};

/// One bar: larvae of one breeder queen.
struct BarDraft {
    std::int32_t number = 0;  ///< as in the book; 0: not there yet, gets the next free one
    std::optional<Id<Queen>> breeder;
    Cells cells{24};                                ///< grafts, or cells where the start has none
    std::vector<std::optional<Id<Builder>>> steps;  ///< the builder of each step, from step 1
    std::optional<Cells> taken;                     ///< counted started cells
    friend bool operator==(const BarDraft&, const BarDraft&) = default;
};

/// A stay at a mating station, or days of insemination. Its days count from the graft's, so that
/// they move with the batch.
struct StayDraft {
    Id<MatingStay> id;             ///< as in the book; none: not there yet
    std::optional<Id<Yard>> yard;  ///< the station; none for insemination
    Days from{0};                  ///< brought there; first insemination
    Days until{0};                 ///< fetched back; last insemination; not before `from`
    friend bool operator==(const StayDraft&, const StayDraft&) = default;
};

struct BatchDraft {
    Id<Batch> id;  ///< of a batch there is, or of the one to come
    std::string label;
    Start start = Start::Graft;
    Day day;  ///< of the start
    std::optional<Hour> hour;
    std::optional<std::int32_t> larvaFromH;  ///< h since hatching, 0..72; both or none
    std::optional<std::int32_t> larvaToH;
    Id<Method> method;
    Mating mating = Mating::Open;
    std::optional<CatchRule> catchRule;  ///< empty: the book's
    std::string note;
    std::vector<BarDraft> bars;
    MakeUpPlan makeUp = MakeUpPlan::None;
    std::vector<std::pair<Id<Yard>, Cells>> shares;  ///< planned cells by yard
    std::vector<StayDraft> stays;                    ///< in the order of their days
    friend bool operator==(const BatchDraft&, const BatchDraft&) = default;
};

/// A further batch: the next free label, the method, bars, builders, yards, days for mating and
/// make-up of the newest batch before the day; in a book without batches the first method and the
/// first builders that serve it.
[[nodiscard]] BatchDraft newDraft(const Snapshot& snapshot, Day day, Id<Batch> id);
/// A batch there is, as a draft. Its id must be one of the snapshot's. Once the graft is recorded
/// (isGrafted), start, hour, larvae and method no longer change, and a new day moves only what is
/// planned ahead.
[[nodiscard]] BatchDraft draftOf(const Snapshot& snapshot, Id<Batch> batch);

/// The day from which the days of a draft's stays count: its graft as planned.
[[nodiscard]] Day plannedGraft(const Snapshot& snapshot, const BatchDraft& draft);

/// Days that serve the draft's way of mating. At a station: from the day before the earliest
/// virgins are due to fly until a week after the latest are, a week to spare for weather (common
/// practice), but no longer than they can mate; the yard is that of the newest stay in the book. By
/// insemination: the day on which half the virgins are as old as `insemination_age_d`. None for
/// open mating, and where the draft is refused.
[[nodiscard]] std::vector<StayDraft> usualStays(const Snapshot& snapshot, const BatchDraft& draft);

/// The newest count of started cells of one bar, or null; `alone`: one of the whole batch counts
/// as its lone bar's.
[[nodiscard]] Ptr<Outcome> takeCountOf(const Snapshot& snapshot, Id<Batch> batch, std::int32_t bar,
                                       bool alone);
/// The numbers of a draft's bars in the book, one for each. A number that a bar of the batch has or
/// had in the snapshot is given to no other bar: what was counted stays with its breeder queen.
[[nodiscard]] std::vector<std::int32_t> barNumbers(const Snapshot& snapshot,
                                                   const BatchDraft& draft);

[[nodiscard]] bool standsOn(const Builder& builder, Day day);
/// A queen to graft from.
[[nodiscard]] bool isBreederOn(const Queen& queen, Day day);
/// A builder of that kind that stands there on the day, the first by label.
[[nodiscard]] std::optional<Id<Builder>> builderFor(const Snapshot& snapshot, BuilderKind kind,
                                                    Day day);

/// A label no batch has yet: counted on from the last one, "17" -> "18", "N09" -> "N10".
[[nodiscard]] std::string nextLabel(const Snapshot& snapshot);

/// The same batch again, so many days apart.
struct Repeat {
    Days every{4};
    std::int32_t more = 0;  ///< batches after the first, 0..60
};

/// The edit that makes the book say what the draft says: a new batch, or a changed one; with its
/// bars, builders, yards, days for mating, planned make-ups and counted takes, and the batches that
/// repeat it.
/// What is planned around it moves along with its graft. A bar that is gone takes its counts with
/// it; takes counted bar by bar replace a count of the whole batch. A start without a graft has no
/// make-up. Empty when the book says so already. Refused where the records refuse it, in their
/// words, and where a take is counted before the day after the graft.
[[nodiscard]] Result<ChangeSet> changesOf(const Snapshot& snapshot, const BatchDraft& draft,
                                          const Repeat& repeat, const IdSource& newId);

/// The edit that takes a batch out with all that was planned and recorded of it, and the planned
/// make-ups that serve no other batch.
[[nodiscard]] Result<ChangeSet> deleteBatch(const Snapshot& snapshot, Id<Batch> batch);

}  // namespace tenthday
