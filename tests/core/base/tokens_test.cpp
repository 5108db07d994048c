#include "base/tokens.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "facts/fact.h"
#include "findings/finding.h"
#include "occupancy/nucs.h"
#include "records/change_set.h"
#include "records/kinds.h"
#include "timeline/event.h"
#include "timeline/nuc_state.h"

namespace tenthday {
namespace {

enum class NoTokens { A, B };
static_assert(!HasTokens<NoTokens>);
static_assert(HasTokens<Event>);
static_assert(token(BuilderKind::StarterFinisher) == "starter_finisher");
static_assert(fromToken<CatchRule>("age") == CatchRule::Age);
static_assert(!fromToken<CatchRule>("Age"), "tokens are lower case");
static_assert(!fromToken<CatchRule>(" age"));

/// The last enumerator of each, so that a name forgotten or doubled shows.
static_assert(static_cast<std::size_t>(Fact::DonorBeesMl) + 1 == kTokenCount<Fact>);
static_assert(static_cast<std::size_t>(Event::Catch) + 1 == kTokenCount<Event>);
static_assert(static_cast<std::size_t>(NucState::Spent) + 1 == kTokenCount<NucState>);
static_assert(static_cast<std::size_t>(NotReady::Retired) + 1 == kTokenCount<NotReady>);
static_assert(static_cast<std::size_t>(OutcomeKind::Spent) + 1 == kTokenCount<OutcomeKind>);
static_assert(static_cast<std::size_t>(CellTarget::Culled) + 1 == kTokenCount<CellTarget>);

template <class Enum>
class Tokens : public ::testing::Test {};
using AllEnums = ::testing::Types<Fact, Event, NucState, NotReady, Severity, FindingKind, Verb,
                                  Hemisphere, Start, Mating, CatchRule, BuilderKind, CellTarget,
                                  OutcomeKind, BuilderNoteKind>;
TYPED_TEST_SUITE(Tokens, AllEnums);

TYPED_TEST(Tokens, EachReadsBackAsItselfAndIsPlainLowerCase) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < kTokenCount<TypeParam>; ++i) {
        const auto value = static_cast<TypeParam>(i);
        const std::string name(token(value));
        EXPECT_EQ(fromToken<TypeParam>(name), value) << name;
        EXPECT_TRUE(seen.insert(name).second) << "twice: " << name;
        EXPECT_EQ(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_"),
                  std::string::npos)
            << name;
    }
    EXPECT_FALSE(fromToken<TypeParam>("no_such_token"));
}

/// Tokens that other programs read: a change here breaks them.
TEST(StableTokens, EventsKeepTheirNamesAndOrder) {
    std::string all;
    for (std::size_t i = 0; i < kTokenCount<Event>; ++i)
        all += std::string(token(static_cast<Event>(i))) + " ";
    EXPECT_EQ(all,
              "confine free_breeder make_up_builder graft take_count top_up to_finisher sealed "
              "fragile_from fragile_until cage_from ripe latest_move first_out emergence mature "
              "due_to_fly first_eggs first_look sealed_brood catch ");
}

TEST(StableTokens, NucStatesAndReasonsKeepTheirs) {
    std::string states;
    for (std::size_t i = 0; i < kTokenCount<NucState>; ++i)
        states += std::string(token(static_cast<NucState>(i))) + " ";
    EXPECT_EQ(states,
              "not_stocked ready cell virgin due_to_fly laying judged_good no_queen drone_layer "
              "caught spent ");
    std::string reasons;
    for (std::size_t i = 1; i < kTokenCount<NotReady>; ++i)
        reasons += std::string(token(static_cast<NotReady>(i))) + " ";
    EXPECT_EQ(reasons,
              "not_stocked queenless_too_short holds_cell holds_virgin due_to_fly laying "
              "awaiting_catch needs_brood retired ");
}

}  // namespace
}  // namespace tenthday
