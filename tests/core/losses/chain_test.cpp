#include "losses/chain.h"

#include <gtest/gtest.h>

namespace tenthday {
namespace {

Facts rates(double accepted, double sealed, double emerged, double mated, double good) {
    Facts facts;
    EXPECT_TRUE(facts.set(Fact::Accepted, accepted).ok());
    EXPECT_TRUE(facts.set(Fact::Sealed, sealed).ok());
    EXPECT_TRUE(facts.set(Fact::Emerged, emerged).ok());
    EXPECT_TRUE(facts.set(Fact::Mated, mated).ok());
    EXPECT_TRUE(facts.set(Fact::JudgedGood, good).ok());
    return facts;
}

// facts.md section 11, derived: 100 grafts -> 48.7 queens; cautious 24.8.
TEST(LossChain, MeansOfTheTwoPublishedChains) {
    EXPECT_NEAR(expectedCounts(rates(.80, .95, .90, .75, .95), 100).good, 48.7, 0.05);
    EXPECT_NEAR(expectedCounts(rates(.60, .90, .85, .60, .90), 100).good, 24.8, 0.05);
}

TEST(LossChain, AnObservedCountCarriesTheRest) {
    SeenCounts seen;
    seen.sealed = 36;
    const auto counts = expectedCounts(Facts{}, 60, seen);
    EXPECT_EQ(counts.accepted, 45);
    EXPECT_EQ(counts.ripe, 36);
    EXPECT_NEAR(counts.emerged, 36 * .88, 1e-9);
}

}  // namespace
}  // namespace tenthday
