/// @file chain_rates.h  The stages from graft to good queen, and the rates in force for them.
#pragma once
#include <array>
#include <cstddef>
#include <cstdint>

#include "facts/facts.h"
#include "losses/chain.h"
#include "losses/stage.h"

namespace tenthday {

/// Where a cell or queen stands in the chain; each is reached from the one before by one stage.
enum class ChainPoint : std::uint8_t {
    Grafted,
    Accepted,  ///< started cells at the take count
    Sealed,
    Emerged,
    Laying,  ///< mated
    Good,    ///< judged good
};
inline constexpr std::size_t kChainPoints = 6;

/// A stage of losses.
enum class LossStage : std::uint8_t {
    Accepted,    ///< grafts that are started
    Sealed,      ///< started cells that are sealed
    Emerged,     ///< ripe cells from which a queen emerges
    Mated,       ///< virgins that mate and lay; the weather of the season comes on top
    JudgedGood,  ///< laying queens judged good
};
inline constexpr std::size_t kLossStages = 5;
inline constexpr std::array<LossStage, kLossStages> kAllLossStages{
    LossStage::Accepted, LossStage::Sealed, LossStage::Emerged, LossStage::Mated,
    LossStage::JudgedGood};

/// A value for each stage.
template <class T>
struct PerStage {
    std::array<T, kLossStages> values{};

    T& operator[](LossStage stage) { return values[static_cast<std::size_t>(stage)]; }
    const T& operator[](LossStage stage) const { return values[static_cast<std::size_t>(stage)]; }
    friend bool operator==(const PerStage&, const PerStage&) = default;
};
using ChainRates = PerStage<StageRate>;

/// The facts that hold a stage's rate and its spread between batches.
[[nodiscard]] Fact rateFact(LossStage stage);
[[nodiscard]] Fact spreadFact(LossStage stage);

/// Rates as the facts have them.
[[nodiscard]] ChainRates chainRates(const Facts& facts);

/// The point from which a stage leads, and the one it leads to.
[[nodiscard]] constexpr ChainPoint before(LossStage stage) {
    return static_cast<ChainPoint>(static_cast<int>(stage));
}
[[nodiscard]] constexpr ChainPoint after(LossStage stage) {
    return static_cast<ChainPoint>(static_cast<int>(stage) + 1);
}

/// The point at which cells come out on the cells day: started ones where those are given.
[[nodiscard]] constexpr ChainPoint ripePoint(Given given) {
    return given == Given::Open ? ChainPoint::Accepted : ChainPoint::Sealed;
}

}  // namespace tenthday
