#include "losses/chain_rates.h"

namespace tenthday {
namespace {

struct StageFacts {
    Fact rate;
    Fact spread;
};
constexpr std::array<StageFacts, kLossStages> kFacts{{
    {Fact::Accepted, Fact::AcceptedSd},
    {Fact::Sealed, Fact::SealedSd},
    {Fact::Emerged, Fact::EmergedSd},
    {Fact::Mated, Fact::MatedSd},
    {Fact::JudgedGood, Fact::JudgedGoodSd},
}};

}  // namespace

Fact rateFact(LossStage stage) { return kFacts[static_cast<std::size_t>(stage)].rate; }
Fact spreadFact(LossStage stage) { return kFacts[static_cast<std::size_t>(stage)].spread; }

ChainRates chainRates(const Facts& facts) {
    ChainRates rates;
    for (const auto stage : kAllLossStages)
        rates[stage] = {facts[rateFact(stage)], facts[spreadFact(stage)]};
    return rates;
}

}  // namespace tenthday
