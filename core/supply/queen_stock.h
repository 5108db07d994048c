/// @file queen_stock.h  The queens that batches will give: how many by each day, season by season.
#pragma once
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "mating/season_eggs.h"
#include "supply/raised.h"

namespace tenthday {

/// The queens of one line of a batch. Under the rule by eggs a queen is caught once she has laid;
/// under the others once her brood is sealed and she is judged good, so she is proven.
struct QueenPart {
    Id<Batch> batch;  ///< none (isNone()): bought in
    std::optional<Id<Line>> line;
    bool isProven = false;
    Day from;                ///< first day on which queens nobody has seen laying yet can be caught
    Days toCatch{};          ///< from first eggs to the catch
    CountSpread mated{0};    ///< of those: would mate in fair weather
    StageRate judged{1, 0};  ///< laying queens judged good; all under the rule by eggs
    std::vector<KnownQueens> known;       ///< by day
    std::shared_ptr<const EggDays> eggs;  ///< share of virgins with first eggs

    /// Share of `mated` that weather lets be caught by a day, in one season.
    [[nodiscard]] double shareOn(Day day, std::size_t season) const {
        return day < from ? 0 : eggs->by(day - toCatch, season);
    }
    /// The same of all seasons.
    [[nodiscard]] EggDays::OnDay sharesOn(Day day) const {
        return day < from ? EggDays::OnDay() : eggs->on(day - toCatch);
    }
    /// Their mean.
    [[nodiscard]] double meanShareOn(Day day) const;
    /// Queens seen by a day.
    [[nodiscard]] KnownQueens knownOn(Day day) const;
    /// Queens caught by a day of a season with that share.
    [[nodiscard]] CountSpread caught(double share, Day day) const;
    /// The mean of that. It is linear in the share: the mean share gives that of all seasons.
    [[nodiscard]] double meanCaught(double share, Day day) const;
    /// None come after this day.
    [[nodiscard]] Day lastDay() const;
    /// Nothing of it hangs on luck by that day: all was seen, or none can be there.
    [[nodiscard]] bool isCertainOn(Day day) const;
};

/// Cells and virgins taken from a part before its queens mate.
struct TakenCells {
    std::int32_t cells = 0;
    std::int32_t virgins = 0;
};

/// What becomes queens of a part when so many are taken before. Cells that are planned to be sold
/// or caged go first; what more is taken is missing in the nucs.
[[nodiscard]] CountSpread matedOf(const RaisedPart& part, const TakenCells& taken);

/// What is ahead of queens that had no eggs on a day: those that would have laid by then did not.
/// The shares then hold the losses of mating too (Bayes' rule).
/// @param lays  chance that such a nuc's queen lays at all in fair weather
[[nodiscard]] EggDays eggsAfter(const EggDays& eggs, Day noEggsOn, double lays);

struct QueenStock {
    std::size_t seasons = 1;  ///< possible ones, all equally likely
    std::vector<QueenPart> parts;
};

/// Queens bought in, each lot a part without a batch, sure from its day on: lots of the season or
/// up to kLeadIn before or after it, where no other season holds their day.
[[nodiscard]] std::vector<QueenPart> boughtQueens(const Snapshot& snapshot);

/// Makes the queens of parts: eggs by season for each batch, and what a catch rule makes of them.
class QueenMaker {
public:
    QueenMaker(const Snapshot& snapshot, const MatingTable& mating);

    /// @param taken  by part, as many as there are
    /// @param rule   for all batches; none: each has its own
    [[nodiscard]] QueenStock stock(std::span<const RaisedPart> raised,
                                   std::span<const TakenCells> taken,
                                   std::optional<CatchRule> rule = {});

private:
    [[nodiscard]] std::shared_ptr<const EggDays> eggsOf(const RaisedPart& part);
    [[nodiscard]] QueenPart queensOf(const RaisedPart& part, CatchRule rule) const;

    const Snapshot* snapshot_;
    const MatingTable* mating_;
    SeasonEggs open_;
    /// Of open mating: batches whose queens come out alike share them.
    using Out = std::pair<Moment, std::vector<std::pair<Day, double>>>;
    std::map<Out, std::shared_ptr<const EggDays>> alike_;
};

}  // namespace tenthday
