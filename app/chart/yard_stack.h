/// @file yard_stack.h  A yard's day as a stack of bands, batch by batch. No pixels.
#pragma once
#include <optional>
#include <utility>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday {

/// What a part of a yard's nucs looks like. From the foot of a batch's block upwards.
enum class Band : std::uint8_t {
    JudgedGood,
    Laying,
    DueToFly,
    Virgin,
    Cell,
    DroneLayer,
    NoQueen,
    Waiting,  ///< no cell, no queen, yet not ready: needs brood, or queenless too short
    Likely,   ///< ready if caught or looked at by the day before
    Ready,
    Spent,
    NotStocked
};
inline constexpr std::size_t kBandCount = static_cast<std::size_t>(Band::NotStocked) + 1;

/// A run of nucs in one band, in nucs from the foot of the yard.
struct BandRun {
    Band band{};
    float from = 0;
    float to = 0;
    std::optional<Id<Batch>> batch;
    friend bool operator==(const BandRun&, const BandRun&) = default;
};

struct StackFacts;

/// Places each batch's nucs in a yard so that they stay put: lowest free places first, as long as
/// the batch is there. Heights are the counts of YardDay, shared among batches as expected and made
/// whole nucs: white is exactly the ready number, a state may differ from its count by one. Only
/// the edge of first eggs that are due and not yet looked for stands where their chance is.
class YardStack {
public:
    YardStack(const Outlook& outlook, const YardOutlook& yard);
    /// The same; what it asks of the season is gathered already.
    YardStack(const Outlook& outlook, const YardOutlook& yard, const StackFacts& facts);

    /// Runs of one day from the foot up; their heights add up to the sides standing there.
    [[nodiscard]] std::vector<BandRun> on(Day day) const;

    /// Neighbouring places given to a batch for all its stay, in nucs from the foot.
    struct Places {
        Id<Batch> batch;
        double from;
        double to;
    };
    [[nodiscard]] std::vector<Places> places() const;

    /// Runs of places in nucs from the foot, rising.
    using Runs = std::vector<std::pair<double, double>>;
    /// Those of each of the yard's blocks, in their order.
    [[nodiscard]] std::vector<Runs> placesOfBlocks() const;

private:
    struct Block {
        const BatchBlock* block;
        const BatchTimeline* timeline;  ///< may be null: an unknown batch
        bool unseen;                    ///< of none of its nucs it is known whether she lays
        Runs places;  ///< no other batch that is there on one of its days has them
    };
    void givePlaces();
    [[nodiscard]] std::vector<const Block*> blocksOn(Day day) const;

    const Outlook* outlook_;
    const YardOutlook* yard_;
    std::vector<Block> blocks_;
    std::vector<DayWindow> wintered_;  ///< of each queen of a season before
};

}  // namespace tenthday
