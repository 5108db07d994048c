#include "losses/chain.h"

namespace tenthday {

ChainCounts& ChainCounts::operator+=(const ChainCounts& other) {
    grafted += other.grafted;
    accepted += other.accepted;
    sealed += other.sealed;
    ripe += other.ripe;
    emerged += other.emerged;
    laying += other.laying;
    good += other.good;
    return *this;
}

ChainCounts expectedCounts(const Facts& facts, double grafts, const SeenCounts& seen, Given given,
                           std::optional<double> accepted) {
    ChainCounts counts;
    counts.grafted = seen.grafted.value_or(grafts);
    counts.accepted =
        seen.accepted.value_or(counts.grafted * accepted.value_or(facts[Fact::Accepted]));
    if (given == Given::Open) {
        counts.ripe = seen.ripe.value_or(counts.accepted);
        counts.sealed = seen.sealed.value_or(counts.ripe * facts[Fact::Sealed]);
        counts.emerged = seen.emerged.value_or(counts.sealed * facts[Fact::Emerged]);
    } else {
        counts.sealed = seen.sealed.value_or(counts.accepted * facts[Fact::Sealed]);
        counts.ripe = seen.ripe.value_or(counts.sealed);
        counts.emerged = seen.emerged.value_or(counts.ripe * facts[Fact::Emerged]);
    }
    counts.laying = counts.emerged * facts[Fact::Mated];
    counts.good = counts.laying * facts[Fact::JudgedGood];
    return counts;
}

double layingShare(const Facts& facts, Given given) {
    const double sealed = given == Given::Open ? facts[Fact::Sealed] : 1;
    const double emerged = given == Given::Virgin ? 1 : facts[Fact::Emerged];
    return sealed * emerged * facts[Fact::Mated];
}

}  // namespace tenthday
