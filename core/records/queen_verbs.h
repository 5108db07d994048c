/// @file queen_verbs.h  Queens that were caught: whose daughters they are, where they are, and the
/// edits that move them.
#pragma once
#include <functional>

#include "base/id_source.h"
#include "records/change_set.h"
#include "records/queen_numbers.h"
#include "records/winter_note.h"

namespace tenthday {

/// Whose daughters a batch's queens are, as far as all its bars agree.
struct Lineage {
    std::optional<Id<Queen>> mother;
    std::optional<Id<Line>> line;
};
[[nodiscard]] Lineage lineageOf(const Snapshot& snapshot, Id<Batch> batch);

/// A queen out of a nuc, taken into the hand; or left in it for the winter.
struct CatchMade {
    Id<Batch> batch;
    std::optional<Id<NucSide>> side;
    Day day;
    std::int32_t year = 0;                ///< of her birth
    QueenPlace place = QueenPlace::Bank;  ///< where she goes, or stays
};

/// Adds a queen with her number, mother and line, and where she is from that day on.
/// @return  her number
std::string addCaughtQueen(const Snapshot& snapshot, const CatchMade& made, QueenNumbers& numbers,
                           const IdSource& newId, ChangeSet& changes);

/// The queen of a catch, or of one that stays for the winter; null where it gave her no number.
[[nodiscard]] Ptr<CaughtQueen> caughtBy(const Snapshot& snapshot, const Outcome& caught);

/// A catch is taken back: its queen goes with it. Refused where she was moved since, or is in use
/// elsewhere. Adds to `changes`; nothing where the catch gave no number.
/// @param snapshot  of all seasons that could use her, or of the one shown
[[nodiscard]] Result<void> eraseCaughtBy(const Snapshot& snapshot, const Outcome& caught,
                                         ChangeSet& changes);

/// Her stays by day.
[[nodiscard]] std::vector<Ptr<QueenStay>> staysOf(const Snapshot& snapshot, Id<Queen> queen);
/// Where she is on a day; null before her first stay.
[[nodiscard]] Ptr<QueenStay> stayOn(const Snapshot& snapshot, Id<Queen> queen, Day day);

/// A queen that was caught, or stays in her nuc with a number of her own.
[[nodiscard]] bool isCaughtQueen(const Snapshot& snapshot, Id<Queen> queen);
/// One to graft from, now or once: any that was not caught, and of those who were, whoever has a
/// span as breeder queen.
[[nodiscard]] bool isBreederQueen(const Snapshot& snapshot, const Queen& queen);

/// The stay of each queen that is in a bank on a day.
void forEachInBank(const Snapshot& snapshot, Day day,
                   const std::function<void(const QueenStay&)>& visit);
/// Queens that are in a bank on a day.
[[nodiscard]] std::int32_t queensInBank(const Snapshot& snapshot, Day day);

/// Queens go to a place on a day; what was noted for that day is replaced. Refused where a queen
/// does not exist, before she was caught, and back into a nuc where hers is not known.
/// @param note  which bank or colony, to whom, how lost
[[nodiscard]] Result<ChangeSet> moveQueens(const Snapshot& snapshot,
                                           const std::vector<Id<Queen>>& queens, QueenPlace place,
                                           Day from, const std::string& note,
                                           const IdSource& newId);

}  // namespace tenthday
