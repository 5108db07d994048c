/// Wrong use: exit 2, nothing on standard output, one line on standard error.
#include <gtest/gtest.h>

#include "app/headless/program.h"

namespace tenthday::test {
namespace {

struct WrongUse {
    const char* name;
    std::vector<std::string> words;
    std::string line;
};
void PrintTo(const WrongUse& c, std::ostream* out) { *out << c.name; }
class WrongUseOf : public ::testing::TestWithParam<WrongUse> {};

TEST_P(WrongUseOf, IsOneClearLine) {
    const auto done = run(GetParam().words);
    EXPECT_EQ(done.exit, 2);
    EXPECT_EQ(done.out, "");
    EXPECT_EQ(done.err.substr(0, GetParam().line.size()), GetParam().line) << done.err;
    EXPECT_EQ(std::count(done.err.begin(), done.err.end(), '\n'), 1);
    EXPECT_EQ(done.err.back(), '\n');
}

const std::string kGraft = "2027-05-10T14:00";
// clang-format off
INSTANTIATE_TEST_SUITE_P(Words, WrongUseOf, ::testing::Values(
    WrongUse{"UnknownVerb",     {"frobnicate"}, "tenthday: unknown verb 'frobnicate'; verbs are "},
    WrongUse{"UnknownVerbBook", {"x.tenthday", "y"}, "tenthday: unknown verb 'x.tenthday'; verbs are "},
    WrongUse{"VerbWithBreak",   {"a\nb"}, "tenthday: unknown verb 'a?b'; verbs are "},
    WrongUse{"NoVerb",          {"--csv"}, "tenthday: a verb is missing; verbs are "},
    WrongUse{"NoBook",          {"nucs"}, "tenthday: nucs: BOOK is missing"},
    WrongUse{"NoKind",          {"export", "x"}, "tenthday: export: KIND is missing"},
    WrongUse{"UnknownKind",     {"export", "x", "hives"}, "tenthday: export: KIND: one of seasons, yards, boxes, "},
    WrongUse{"UnknownImport",   {"import", "x", "hives", "f"}, "tenthday: import: KIND: one of seasons, yards, boxes, "},
    WrongUse{"NoDay",           {"nucs", "x"}, "tenthday: nucs: option --on: is missing"},
    WrongUse{"UnknownOption",   {"findings", "x", "--loud"}, "tenthday: findings: unknown option '--loud'"},
    WrongUse{"CsvAndJson",      {"findings", "x", "--csv", "--json"}, "tenthday: findings: option --json: does not go with --csv"},
    WrongUse{"CsvOfNoListing",  {"example", "x", "--csv"}, "tenthday: example: unknown option '--csv'"},
    WrongUse{"CommonYear",      {"nucs", "x", "--on", "2027-02-29"}, "tenthday: nucs: option --on: a day of the calendar as YYYY-MM-DD is needed, not '2027-02-29'"},
    WrongUse{"NoDayAtAll",      {"nucs", "x", "--on", "Monday"}, "tenthday: nucs: option --on: a day of the calendar as YYYY-MM-DD is needed, not 'Monday'"},
    WrongUse{"ReviewDay",       {"review", "x", "--on", "Monday"}, "tenthday: review: option --on: a day of the calendar as YYYY-MM-DD is needed, not 'Monday'"},
    WrongUse{"StockingDay",     {"stocking", "x", "--on", "Monday"}, "tenthday: stocking: option --on: a day of the calendar as YYYY-MM-DD is needed, not 'Monday'"},
    WrongUse{"VirginsDay",      {"virgins", "x", "--on", "Monday"}, "tenthday: virgins: option --on: a day of the calendar as YYYY-MM-DD is needed, not 'Monday'"},
    WrongUse{"PlanFrom",        {"plan", "x", "--from", "Monday"}, "tenthday: plan: option --from: a day of the calendar as YYYY-MM-DD is needed, not 'Monday'"},
    WrongUse{"PlanTo",          {"plan", "x", "--from", "2027-05-02", "--to", "2027-05-01"}, "tenthday: plan: option --to: lies before --from"},
    WrongUse{"PlanHours",       {"plan", "x", "--hours", "25"}, "tenthday: plan: option --hours: hours a day from 0.1 to 24 are needed, not '25'"},
    WrongUse{"PlanNoHours",     {"plan", "x", "--hours", "0"}, "tenthday: plan: option --hours: hours a day from 0.1 to 24 are needed, not '0'"},
    WrongUse{"WhatIfFrom",      {"whatif", "x", "--nucs", "2", "--from", "Monday"}, "tenthday: whatif: option --from: a day of the calendar as YYYY-MM-DD is needed, not 'Monday'"},
    WrongUse{"Today",           {"--today", "2027-02-29", "findings", "x"}, "tenthday: findings: option --today: a day of the calendar"},
    WrongUse{"NoStart",         {"dates"}, "tenthday: dates: one of --graft, --confined, "},
    WrongUse{"TwoStarts",       {"dates", "--graft", kGraft, "--ripe", kGraft}, "tenthday: dates: option --ripe: does not go with --graft"},
    WrongUse{"GraftCommonYear", {"dates", "--graft", "2027-02-29T14:00"}, "tenthday: dates: option --graft: a time of the calendar as YYYY-MM-DDTHH:MM is needed, not '2027-02-29T14:00'"},
    WrongUse{"Hour25",          {"dates", "--graft", "2027-05-10T25:00"}, "tenthday: dates: option --graft: a time"},
    WrongUse{"Larva80",         {"dates", "--graft", kGraft, "--larva-age", "80"}, "tenthday: dates: option --larva-age: an age of 0 to 72 h, or a range such as 12-24, is needed, not '80'"},
    WrongUse{"LarvaBelow",      {"dates", "--graft", kGraft, "--larva-age=-1"}, "tenthday: dates: option --larva-age: "},
    WrongUse{"LarvaBackwards",  {"dates", "--graft", kGraft, "--larva-age", "24-12"}, "tenthday: dates: option --larva-age: "},
    WrongUse{"LarvaConfined",   {"dates", "--confined", kGraft, "--larva-age", "18"}, "tenthday: dates: option --larva-age: goes with --graft or --ripe only"},
    WrongUse{"NoCells",         {"dates", "--graft", kGraft, "--cells", "0"}, "tenthday: dates: option --cells: a number of sealed cells from 1 to 9999 is needed, not '0'"},
    WrongUse{"ManyCells",       {"dates", "--graft", kGraft, "--cells", "100000"}, "tenthday: dates: option --cells: a number of sealed cells from 1 to 9999 is needed, not '100000'"},
    WrongUse{"EndlessCells",    {"dates", "--graft", kGraft, "--cells", "99999999999999999999"}, "tenthday: dates: option --cells: "},
    WrongUse{"HalfCells",       {"dates", "--graft", kGraft, "--cells", "1.5"}, "tenthday: dates: option --cells: "},
    WrongUse{"Incubator",       {"dates", "--graft", kGraft, "--incubator", "warm"}, "tenthday: dates: option --incubator: a temperature"},
    WrongUse{"IncubatorNan",    {"dates", "--graft", kGraft, "--incubator", "nan"}, "tenthday: dates: option --incubator: a temperature"},
    WrongUse{"IncubatorComma",  {"dates", "--graft", kGraft, "--incubator", "34,5"}, "tenthday: dates: option --incubator: a temperature"},
    WrongUse{"Method",          {"dates", "--graft", kGraft, "--method", "luck"}, "tenthday: dates: option --method: one of 'one box', "},
    WrongUse{"CatchRule",       {"dates", "--graft", kGraft, "--catch-rule", "soon"}, "tenthday: dates: option --catch-rule: one of eggs, sealed_brood, age is needed, not 'soon'"},
    WrongUse{"Fact",            {"dates", "--graft", kGraft, "--set", "luck=1"}, "tenthday: dates: option --set: no fact 'luck'"},
    WrongUse{"FactRange",       {"dates", "--graft", kGraft, "--set", "accepted=2"}, "tenthday: dates: option --set: fact accepted: a value from 0 to 1 is needed"},
    WrongUse{"FactNoValue",     {"dates", "--graft", kGraft, "--set", "accepted"}, "tenthday: dates: option --set: FACT=VALUE is needed, not 'accepted'"},
    WrongUse{"FactNoNumber",    {"dates", "--graft", kGraft, "--set", "accepted=0,5"}, "tenthday: dates: option --set: a number after accepted= is needed"},
    WrongUse{"PictureNoOut",    {"picture", "x"}, "tenthday: picture: option --out: is missing"},
    WrongUse{"PictureKind",     {"picture", "x", "--out", "x.gif"}, "tenthday: picture: option --out: a name that ends in .png, .svg or .pdf is needed"},
    WrongUse{"PictureSize",     {"picture", "x", "--out", "x.png", "--size", "10x10"}, "tenthday: picture: option --size: a size such as 1920x1080"},
    WrongUse{"IcsNoOut",        {"ics", "x"}, "tenthday: ics: option --out: is missing"},
    WrongUse{"IcsOut",          {"ics", "x", "--out", "x.tenthday"}, "tenthday: ics: option --out: a name that ends in .ics is needed, not 'x.tenthday'"},
    WrongUse{"IcsKind",         {"ics", "x", "--out", "x.ics", "--kinds", "graft,dance"}, "tenthday: ics: option --kinds: one of cells_out, cells_in, "},
    WrongUse{"IcsNoKind",       {"ics", "x", "--out", "x.ics", "--kinds", "graft,"}, "tenthday: ics: option --kinds: one of cells_out, cells_in, "},
    WrongUse{"PictureLook",     {"picture", "x", "--out", "x.png", "--look", "pink"}, "tenthday: picture: option --look: one of light, dark, paper is needed"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST(Help, IsNoMistake) {
    for (const char* word : {"--help", "-h"}) {
        const auto done = run({word});
        EXPECT_EQ(done.exit, 0);
        EXPECT_EQ(done.err, "");
        EXPECT_NE(done.out.find("tenthday nucs BOOK --on DAY"), std::string::npos);
    }
    EXPECT_EQ(run({"--version"}).out, "tenthday " TENTHDAY_VERSION "\n");
}

}  // namespace
}  // namespace tenthday::test
