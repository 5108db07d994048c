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

ChainCounts expectedCounts(const Facts& facts, double grafts, const SeenCounts& seen) {
    ChainCounts counts;
    counts.grafted = seen.grafted.value_or(grafts);
    counts.accepted = seen.accepted.value_or(counts.grafted * facts[Fact::Accepted]);
    counts.sealed = seen.sealed.value_or(counts.accepted * facts[Fact::Sealed]);
    counts.ripe = seen.ripe.value_or(counts.sealed);
    counts.emerged = seen.emerged.value_or(counts.ripe * facts[Fact::Emerged]);
    counts.laying = counts.emerged * facts[Fact::Mated];
    counts.good = counts.laying * facts[Fact::JudgedGood];
    return counts;
}

double layingShare(const Facts& facts, bool emerged) {
    return (emerged ? 1 : facts[Fact::Emerged]) * facts[Fact::Mated];
}

}  // namespace tenthday
