#include <gtest/gtest.h>

#include "app/headless/program.h"
#include "calendar/day.h"

namespace tenthday::test {
namespace {

using Words = std::vector<std::string>;

std::map<std::string, std::map<std::string, std::string>> eventsOf(Words words) {
    words.insert(words.begin(), "dates");
    const auto done = run(words);
    EXPECT_EQ(done.exit, 0) << done.err;
    EXPECT_EQ(done.err, "");
    std::map<std::string, std::map<std::string, std::string>> events;
    for (const auto& row : rowsOf(done.out)) events[row.at("event")] = row;
    return events;
}

TEST(DatesVerb, ListsAllEventsInTheOrderOfTheirTokens) {
    const auto done = run({"dates", "--graft", "2027-05-10T14:00"});
    EXPECT_EQ(done.out.substr(0, done.out.find('\n')), "event,day,earliest,likely,latest,note");
    std::string order;
    for (const auto& row : rowsOf(done.out)) order += row.at("event") + " ";
    EXPECT_EQ(order,
              "confine free_breeder make_up_builder graft take_count top_up to_finisher sealed "
              "fragile_from fragile_until cage_from ripe latest_move first_out emergence mature "
              "due_to_fly first_eggs first_look sealed_brood catch ");
}

TEST(DatesVerb, AnExactLarvaEmerges312HoursAfterHatching) {
    // Graft to emergence 312 h less the age (facts.md 1.2): 18 h -> 294 h, 36 h -> 276 h.
    auto events = eventsOf({"--graft", "2027-05-10T14:00", "--larva-age", "18"});
    EXPECT_EQ(events["emergence"]["likely"], "2027-05-22T20:00");
    EXPECT_EQ(events["emergence"]["day"], "12");
    events = eventsOf({"--graft", "2027-05-10T14:00", "--larva-age=36"});
    EXPECT_EQ(events["emergence"]["likely"], "2027-05-22T02:00");
}

TEST(DatesVerb, NoAgeIsTheRangeOf12To24Hours) {
    EXPECT_EQ(run({"dates", "--graft", "2027-05-10T14:00"}).out,
              run({"dates", "--graft", "2027-05-10T14:00", "--larva-age", "12-24"}).out);
    EXPECT_NE(run({"dates", "--graft", "2027-05-10T14:00"}).out,
              run({"dates", "--graft", "2027-05-10T14:00", "--larva-age", "18"}).out);
}

TEST(DatesVerb, MinutesAreKeptAndADayAloneIsNoon) {
    auto events = eventsOf({"--graft", "2027-05-10T14:37", "--larva-age", "18"});
    EXPECT_EQ(events["ripe"]["likely"], "2027-05-20T14:37");
    events = eventsOf({"--graft", "2027-05-10"});
    EXPECT_EQ(events["graft"]["likely"], "2027-05-10T12:00");
}

TEST(DatesVerb, NoDaylightSavingShift) {
    // Clocks go forward on 28 March 2027 in much of Europe: hours are added on the wall.
    auto events = eventsOf({"--graft", "2027-03-25T14:00"});
    EXPECT_EQ(events["ripe"]["likely"], "2027-04-04T14:00");
}

TEST(DatesVerb, MoreCellsBringTheFirstQueenEarlier) {
    const Words base{"--graft", "2027-05-10T14:00", "--cells"};
    std::string last = "9999";
    for (const char* cells : {"1", "40", "9999"}) {
        auto words = base;
        words.push_back(cells);
        const auto latest = eventsOf(words)["latest_move"]["likely"];
        EXPECT_LT(latest, last) << cells;
        last = latest;
    }
    EXPECT_EQ(run({"dates", "--graft", "2027-05-10T14:00"}).out,
              run({"dates", "--graft", "2027-05-10T14:00", "--cells", "40"}).out);
}

TEST(DatesVerb, TheLatestMoveIsSaidInWords) {
    auto events = eventsOf({"--graft", "2027-05-10T14:00"});
    EXPECT_EQ(events["latest_move"]["note"], "before Friday midday");
    events = eventsOf({"--graft", "2027-05-10T14:00", "--larva-age", "72"});
    EXPECT_EQ(events["latest_move"]["note"].substr(0, 25), "not even day 10 is safe: ");
}

TEST(DatesVerb, ACoolIncubatorDelaysAndSaysWhenClamped) {
    const Words base{"--graft", "2027-05-10T14:00", "--larva-age", "18", "--incubator"};
    const auto at = [&](const char* celsius) {
        auto words = base;
        words.push_back(celsius);
        return eventsOf(words)["emergence"];
    };
    auto warm = at("34.5");
    EXPECT_EQ(warm["likely"], "2027-05-22T20:00");
    EXPECT_EQ(warm["note"], "");
    // 120 h at 32 C cost 120 * 27 / (184 + 27) = 15.36 h (S7, derived).
    auto cool = at("32");
    EXPECT_EQ(cool["likely"], "2027-05-23T11:21");
    EXPECT_EQ(cool["note"], "");
    auto cold = at("28");
    EXPECT_EQ(cold["likely"], cool["likely"]);
    EXPECT_EQ(cold["note"], "temperature clamped to the measured 32 to 34.5 C");
}

TEST(DatesVerb, AnyFactCanBeSet) {
    auto events = eventsOf({"--graft", "2027-05-10T14:00", "--larva-age", "18", "--set",
                            "emergence_h=390", "--set", "ripe_h=250"});
    EXPECT_EQ(events["emergence"]["likely"], "2027-05-23T02:00");
    EXPECT_EQ(events["ripe"]["likely"], "2027-05-21T00:00");
}

TEST(DatesVerb, EveryStart) {
    auto events = eventsOf({"--confined", "2027-05-06T14:00"});
    EXPECT_EQ(events["confine"]["likely"], "2027-05-06T14:00");
    EXPECT_EQ(events["free_breeder"]["likely"], "2027-05-07T14:00");
    EXPECT_EQ(events["graft"]["likely"], "2027-05-10T14:00");
    events = eventsOf({"--ripe", "2027-05-20T10:00"});
    EXPECT_EQ(events["ripe"]["likely"], "2027-05-20T10:00");
    EXPECT_FALSE(events.contains("graft"));
    events = eventsOf({"--virgin", "2027-05-22T10:00"});
    EXPECT_EQ(events["emergence"]["likely"], "2027-05-22T10:00");
    EXPECT_FALSE(events.contains("ripe"));
    events = eventsOf({"--sealed-found", "2027-05-10T09:30"});
    EXPECT_EQ(events["first_out"]["earliest"], "2027-05-10T09:30");
    EXPECT_EQ(events["first_out"]["note"], "age unknown: a queen may be out at once");
}

TEST(DatesVerb, EachCatchRuleHasItsPriceInNucDays) {
    // Cells given 4 June, queens out 6 June: eggs 20 June, sealed brood 25 or 26, 28 days 4 July.
    const Words base{"--graft", "2027-05-25T10:00", "--larva-age", "24", "--catch-rule"};
    const auto caught = [&](const char* rule) {
        auto words = base;
        words.push_back(rule);
        auto events = eventsOf(words);
        EXPECT_EQ(events["emergence"]["likely"].substr(0, 10), "2027-06-06");
        return events["catch"];
    };
    EXPECT_EQ(caught("eggs")["likely"].substr(0, 10), "2027-06-20");
    EXPECT_EQ(caught("eggs")["note"], "17 nuc days (eggs 17, sealed_brood 23, age 31)");
    EXPECT_EQ(caught("age")["likely"].substr(0, 10), "2027-07-04");
    EXPECT_EQ(caught("age")["note"], "31 nuc days (eggs 17, sealed_brood 23, age 31)");
    const auto sealed = caught("sealed_brood")["note"];
    EXPECT_EQ(sealed, "23 nuc days (eggs 17, sealed_brood 23, age 31)");
}

TEST(DatesVerb, JsonHasTheSameRows) {
    const auto json = run({"dates", "--virgin", "2027-05-22T10:00", "--json"}).out;
    EXPECT_EQ(json.substr(0, json.find('\n', 2) + 1),
              "[\n  {\"event\": \"emergence\", \"day\": 12, \"earliest\": \"2027-05-22T10:00\", "
              "\"likely\": \"2027-05-22T10:00\", \"latest\": \"2027-05-22T10:00\", \"note\": \"\"},"
              "\n");
    EXPECT_EQ(json.substr(json.size() - 3), "\n]\n");
}

}  // namespace
TEST(DatesVerb, IncubatorHeatCountsOnlyFromWhereTheCellsAre) {
    const auto shift = [](const char* start, const char* event) {
        auto warm = eventsOf({start, "2027-05-20T14:00"});
        auto cool = eventsOf({start, "2027-05-20T14:00", "--incubator", "32"});
        return hoursBetween(*momentFromText(warm[event]["likely"]),
                            *momentFromText(cool[event]["likely"]));
    };
    EXPECT_NEAR(shift("--sealed-found", "emergence"), 27.0 * 38 / 184, 1.5);
    EXPECT_EQ(shift("--ripe", "emergence"), 0);
    EXPECT_EQ(shift("--virgin", "first_eggs"), 0);
}

TEST(DatesVerb, TheBuiltInStepsFollowTheFacts) {
    auto events = eventsOf({"--graft", "2027-05-10T14:00", "--set", "starter_h=48"});
    EXPECT_EQ(events["to_finisher"]["likely"], "2027-05-12T14:00");
    events = eventsOf({"--graft", "2027-05-10T14:00", "--set", "ripe_h=264"});
    EXPECT_EQ(events["ripe"]["likely"], "2027-05-21T14:00");
    EXPECT_NE(events["latest_move"]["note"].find("not even day 11 is safe"), std::string::npos);
}

}  // namespace tenthday::test
