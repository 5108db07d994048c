/// @file yard_stacks.h  Stacks kept from picture to picture: a day of a yard is reckoned again only
/// once something on it has changed.
#pragma once
#include <atomic>
#include <memory>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "chart/yard_stack.h"

namespace tenthday {

/// What all yards' stacks ask of a season, gathered in one go.
struct StackFacts {
    explicit StackFacts(const Outlook& outlook);

    std::unordered_map<Id<Batch>, std::shared_ptr<const BatchOutlook>> batches;
    /// Batches of which somebody has seen in one of their nucs whether she lays.
    std::unordered_set<Id<Batch>> seen;
    /// Days of each queen of a season before, by the yard she is in.
    std::unordered_map<Id<Yard>, std::vector<DayWindow>> wintered;
};

class YardStacks {
public:
    /// A season to ask about, held until the next is shown. The same one again costs nothing.
    void show(const OutlookPtr& outlook);

    /// As YardStack::on(), of a yard of that season. Different yards may be asked at one time.
    [[nodiscard]] const std::vector<BandRun>& on(const YardOutlook& yard, Day day);
    /// Reckons now, on all cores, what on() would reckon once it is asked: one yard may have many
    /// such days, and others none.
    void reckon(const std::vector<const YardOutlook*>& yards, const DayWindow& days);
    /// As YardStack::places().
    [[nodiscard]] const std::vector<YardStack::Places>& places(const YardOutlook& yard);
    /// As Outlook::find(), at once.
    [[nodiscard]] const BatchOutlook* batch(Id<Batch> id) const { return held(id).get(); }
    [[nodiscard]] const std::shared_ptr<const BatchOutlook>& held(Id<Batch> id) const;
    /// A number that is another one once anything of the yard has changed: its days, its blocks or
    /// their batches. Never the same for two states, not even of different yards.
    [[nodiscard]] int stateOf(const YardOutlook& yard) const;
    /// How many days were reckoned, ever.
    [[nodiscard]] int reckoned() const { return reckoned_; }

private:
    /// All that a yard's stack hangs on. Batches are held, so that equal pointers are equal ones.
    struct Inputs {
        Day first;
        std::int32_t mostSides = 0;
        std::vector<YardDay> days;
        std::vector<BatchBlock> blocks;
        std::vector<std::shared_ptr<const BatchOutlook>> batches;  ///< of the blocks
        std::vector<bool> seen;                                    ///< likewise
        std::vector<DayWindow> wintered;
    };
    struct Kept {
        int state = 0;
        Inputs inputs;
        std::optional<YardStack> stack;  ///< of the season shown; made when a day is missing
        std::vector<YardStack::Places> places;
        std::vector<YardStack::Runs> placesOfBlocks;
        std::vector<std::optional<std::vector<BandRun>>> runs;  ///< by day of the season
    };
    [[nodiscard]] Inputs inputsOf(const YardOutlook& yard) const;
    [[nodiscard]] bool isAsKept(const Inputs& kept, const YardOutlook& yard) const;
    /// A yard of the season shown, with what is kept of the one before.
    [[nodiscard]] Kept keptOf(const YardOutlook& yard);
    /// Takes over the days on which nothing differs.
    static void keepDays(Kept& before, Kept& fresh);
    [[nodiscard]] YardStack& stackOf(Kept& kept, const YardOutlook& yard) const;

    OutlookPtr outlook_;
    std::optional<StackFacts> facts_;
    std::unordered_map<Id<Yard>, Kept> kept_;
    std::atomic<int> states_ = 0;  ///< given so far
    std::atomic<int> reckoned_ = 0;
};

}  // namespace tenthday
