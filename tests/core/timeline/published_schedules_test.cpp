// Published schedules, day 0 = graft. A check holds when the likely day lies in the published
// window; a single day is taken as plus or minus one, where the source rounds.
#include <gtest/gtest.h>

#include "records/method_catalogue.h"
#include "support/days.h"
#include "timeline/batch_timeline.h"

namespace tenthday {
namespace {

using test::moment;

struct Published {
    const char* name;
    Event event;
    int first;
    int last;
};
void PrintTo(const Published& p, std::ostream* out) { *out << p.name; }

BatchDates starterAndFinisher() {
    DatePlan plan;
    plan.begin = moment("2027-05-10T12:00");
    plan.steps = builtInMethods()[1].steps;
    const Facts facts;
    return datesOf(plan, facts, MatingTable(facts));
}

int likelyDay(const BatchDates& dates, Event event) {
    for (const auto& e : dates.events)
        if (e.event == event)
            return static_cast<int>((dayOf(e.likely) - dayOf(dates.graft)).count());
    ADD_FAILURE() << "no event " << token(event);
    return -99;
}

class Schedule : public ::testing::TestWithParam<Published> {};

TEST_P(Schedule, LikelyDayLiesInThePublishedWindow) {
    const auto& p = GetParam();
    const int day = likelyDay(starterAndFinisher(), p.event);
    EXPECT_GE(day, p.first);
    EXPECT_LE(day, p.last);
}

constexpr Published single(const char* name, Event event, int day) {
    return {name, event, day - 1, day + 1};
}
const auto kName = [](const auto& test) { return std::string(test.param.name); };

// S11, a British grafting time table.
INSTANTIATE_TEST_SUITE_P(S11British, Schedule,
                         ::testing::Values(single("Confine", Event::Confine, -5),
                                           single("BuilderMade", Event::MakeUpBuilder, -1),
                                           single("ToFinisher", Event::ToFinisher, 1),
                                           single("SealedBy", Event::Sealed, 6),
                                           single("CellsToNucs", Event::Ripe, 10),
                                           single("Emergence", Event::Emergence, 12)),
                         kName);
// S22, an East African farmer training text.
INSTANTIATE_TEST_SUITE_P(S22EastAfrica, Schedule,
                         ::testing::Values(single("Confine", Event::Confine, -5),
                                           Published{"BuilderMade", Event::MakeUpBuilder, -2, -1},
                                           Published{"CellsToNucs", Event::Ripe, 10, 11},
                                           Published{"Emergence", Event::Emergence, 11, 12}),
                         kName);
// S13, Harris & Sheridan, Mississippi State, put right by two days after emergence (derived).
INSTANTIATE_TEST_SUITE_P(S13Mississippi, Schedule,
                         ::testing::Values(single("ToFinisher", Event::ToFinisher, 1),
                                           single("SealedBy", Event::Sealed, 6),
                                           single("Emergence", Event::Emergence, 11),
                                           Published{"Flights", Event::DueToFly, 15, 20},
                                           Published{"FirstEggs", Event::FirstEggs, 20, 25}),
                         kName);
// S9, Connor, Colony development; flights from 7 d of age.
INSTANTIATE_TEST_SUITE_P(S9Connor, Schedule,
                         ::testing::Values(single("Confine", Event::Confine, -4),
                                           single("Emergence", Event::Emergence, 12),
                                           Published{"Flights", Event::DueToFly, 19, 21},
                                           single("FirstEggs", Event::FirstEggs, 24)),
                         kName);
// S15 to S20, Buechler et al. 2013, COLOSS BEEBOOK, put together from its sections.
INSTANTIATE_TEST_SUITE_P(S15Coloss, Schedule,
                         ::testing::Values(single("Confine", Event::Confine, -4),
                                           single("ToFinisher", Event::ToFinisher, 2)),
                         kName);
// S25, Alley 1903. Its twelfth day for cells into nucs is no check.
INSTANTIATE_TEST_SUITE_P(S25Alley, Schedule,
                         ::testing::Values(single("Confine", Event::Confine, -4),
                                           single("BuilderMade", Event::MakeUpBuilder, 0),
                                           single("ToFinisher", Event::ToFinisher, 1)),
                         kName);

// Graft to emergence = 312 - age h at the brood nest's temperature (derived from S1, S2, S7).
TEST(GraftToEmergence, FollowsTheLarvasAge) {
    const Facts facts;
    for (const auto& [age, hours] :
         {std::pair{12, 300}, {18, 294}, {24, 288}, {36, 276}, {48, 264}}) {
        DatePlan plan;
        plan.begin = moment("2027-05-10T14:00");
        plan.larvaFromH = plan.larvaToH = age;
        const auto dates = datesOf(plan, facts, MatingTable(facts));
        for (const auto& e : dates.events)
            if (e.event == Event::Emergence) {
                EXPECT_EQ(e.likely, plan.begin + std::chrono::hours{hours}) << age;
            }
    }
}

// A larva of 18 h grafted on Friday 11 June 2027 at 15:00 emerges likely on Wednesday 23 at 21:00.
TEST(GraftToEmergence, FridayGraftEmergesOnWednesdayEvening) {
    const Facts facts;
    DatePlan plan;
    plan.begin = moment("2027-06-11T15:00");
    const auto dates = datesOf(plan, facts, MatingTable(facts));
    EXPECT_EQ(dates.clock.emerged().at(0.5), 294.0);
    for (const auto& e : dates.events)
        if (e.event == Event::Emergence) {
            EXPECT_EQ(toText(e.likely), "2027-06-23T21:00");
        }
}

struct CatchCase {
    const char* name;
    CatchRule rule;
    const char* earliest;
    const char* latest;
};
void PrintTo(const CatchCase& c, std::ostream* out) { *out << c.name; }
class CatchDay : public ::testing::TestWithParam<CatchCase> {};

// Cells given on 4 June, queens out on 6 June 2027. Look at 14 d of age S49; sealed brood 9 d after
// the eggs S1; catching at 28 d S65.
TEST_P(CatchDay, FollowsTheRule) {
    const Facts facts;
    DatePlan plan;
    plan.begin = moment("2027-05-25T12:00");
    plan.transfer = moment("2027-06-04T12:00");
    plan.emergenceSeen = moment("2027-06-06T12:00");
    plan.catchRule = GetParam().rule;
    const auto dates = datesOf(plan, facts, MatingTable(facts));
    const auto day = toText(dayOf(dates.events.back().likely));
    EXPECT_EQ(dates.events.back().event, Event::Catch);
    EXPECT_GE(day, GetParam().earliest);
    EXPECT_LE(day, GetParam().latest);
}
INSTANTIATE_TEST_SUITE_P(
    Rules, CatchDay,
    ::testing::Values(CatchCase{"Eggs", CatchRule::Eggs, "2027-06-20", "2027-06-20"},
                      CatchCase{"SealedBrood", CatchRule::SealedBrood, "2027-06-25", "2027-06-26"},
                      CatchCase{"Age", CatchRule::Age, "2027-07-04", "2027-07-04"}),
    kName);

TEST(Starts, AllLeadToTheSameQueens) {
    const Facts facts;
    const MatingTable mating(facts);
    const auto emergence = [&](Start start, const char* begin) {
        DatePlan plan;
        plan.start = start;
        plan.begin = moment(begin);
        for (const auto& e : datesOf(plan, facts, mating).events)
            if (e.event == Event::Emergence) return toText(e.likely);
        return std::string("none");
    };
    EXPECT_EQ(emergence(Start::Graft, "2027-05-10T12:00"), "2027-05-22T18:00");
    // Confined for 24 h from day -4: larvae of 0 to 24 h, likely 12.
    EXPECT_EQ(emergence(Start::Confined, "2027-05-06T12:00"), "2027-05-23T00:00");
    EXPECT_EQ(emergence(Start::Ripe, "2027-05-20T12:00"), "2027-05-22T18:00");
    EXPECT_EQ(emergence(Start::Virgin, "2027-05-22T18:00"), "2027-05-22T18:00");
    // Found sealed: between at once and 184 h, likely the middle.
    EXPECT_EQ(emergence(Start::SealedFound, "2027-05-15T12:00"), "2027-05-19T08:00");
}

TEST(LatestMove, OlderLarvaeCanMakeEvenDayTenUnsafe) {
    const Facts facts;
    DatePlan plan;
    plan.begin = moment("2027-06-11T12:00");
    plan.larvaFromH = plan.larvaToH = 48;
    const auto dates = datesOf(plan, facts, MatingTable(facts));
    EXPECT_LT(hoursBetween(dates.graft, dates.latestMove), 240);
    for (const auto& e : dates.events)
        if (e.event == Event::LatestMove) {
            EXPECT_EQ(e.note, EventNote::NotEvenRipeSafe);
        }
}

}  // namespace
}  // namespace tenthday
