#include <gtest/gtest.h>

#include "app/headless/program.h"
#include "exchange/example.h"
#include "outlook/outlook.h"

namespace tenthday::test {
namespace {

class NucsVerb : public ProgramTest {};

OutlookPtr exampleOutlook() {
    auto snapshot = applied(Snapshot{}, exampleContent()).value();
    snapshot.setToday(*snapshot.book().today);
    snapshot.setSeason((*snapshot.all<Season>().begin())->id);
    OutlookMemo memo;
    return outlookOf(snapshot, memo);
}

TEST_F(NucsVerb, TotalsAreThoseOfTheChartAllSeason) {
    const auto book = makeExample();
    const auto outlook = exampleOutlook();
    for (Day day = outlook->season.first; day <= outlook->season.last; day += Days{11}) {
        const auto rows = rowsOf(answer({"nucs", book, "--on", toText(day), "--totals"}));
        ASSERT_EQ(rows.size(), outlook->nucs.yards.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const auto& yard = outlook->nucs.yards[i];
            const auto& numbers =
                yard.days[static_cast<std::size_t>((day - outlook->season.first).count())].numbers;
            EXPECT_EQ(rows[i].at("yard"), yard.yard->label);
            EXPECT_EQ(rows[i].at("ready"), std::to_string(numbers.ready)) << toText(day);
            EXPECT_NEAR(numberIn(rows[i].at("likely")), numbers.likely, 0.0501) << toText(day);
            EXPECT_EQ(rows[i].at("likely_90"), "");
            EXPECT_EQ(rows[i].at("can_stock"), std::to_string(numbers.canStock)) << toText(day);
            EXPECT_EQ(rows[i].at("needs_brood"), std::to_string(numbers.needsBrood)) << toText(day);
        }
    }
}

TEST_F(NucsVerb, ALinePerSideInDrivingOrder) {
    const auto book = makeExample();
    const auto text = answer({"nucs", book, "--on", "2027-06-03"});
    EXPECT_EQ(text.substr(0, text.find('\n')),
              "yard,box,side,state,ready,ready_from,chance,reason");
    const auto rows = rowsOf(text);
    ASSERT_EQ(rows.size(), 83U);  // 30 boxes of two sides and 22 of one, Q18 laid out anew
    std::string yards;
    for (const auto& row : rows)
        if (!yards.ends_with(row.at("yard"))) yards += " " + row.at("yard");
    EXPECT_EQ(yards, " Orchard Quarry Heath");
    EXPECT_EQ(rows[0], (std::map<std::string, std::string>{
                           {"yard", "Orchard"},
                           {"box", "O1"},
                           {"side", "A"},
                           {"state", rows[0].at("state")},
                           {"ready", "no"},
                           {"ready_from", "2027-06-15"},  // a cold week in May
                           {"chance", rows[0].at("chance")},
                           {"reason", "laying"}}));
}

TEST_F(NucsVerb, StatesAndReasonsFitTogether) {
    const auto book = makeExample();
    const std::map<std::string, std::string> reasonOfState{{"not_stocked", "not_stocked"},
                                                           {"cell", "holds_cell"},
                                                           {"virgin", "holds_virgin"},
                                                           {"due_to_fly", "due_to_fly"}};
    std::map<std::string, int> seen;
    for (const char* day : {"2027-05-12", "2027-05-18", "2027-06-03", "2027-06-10"})
        for (const auto& row : rowsOf(answer({"nucs", book, "--on", day}))) {
            ++seen[row.at("state")];
            if (row.at("ready") == "yes") {
                EXPECT_EQ(row.at("reason"), "") << day << row.at("box");
            }
            if (const auto at = reasonOfState.find(row.at("state")); at != reasonOfState.end()) {
                EXPECT_EQ(row.at("reason"), at->second) << day << row.at("box");
            }
            const auto chance = row.at("chance");
            EXPECT_EQ(chance[chance.size() - 2], '.') << chance;
        }
    for (const char* state : {"not_stocked", "ready", "cell", "virgin", "due_to_fly", "laying"})
        EXPECT_GT(seen[state], 0) << state;
}

TEST_F(NucsVerb, ABoxTakenAwayIsRetired) {
    const auto book = makeExample();
    import(book, "boxes", "label,yard,yard_from\nO20,,2027-06-01\n");
    const auto rows = rowsOf(answer({"nucs", book, "--on", "2027-06-03"}));
    EXPECT_EQ(rows.back().at("box"), "O20");
    EXPECT_EQ(rows.back().at("yard"), "");
    EXPECT_EQ(rows.back().at("reason"), "retired");
    EXPECT_EQ(rows.back().at("ready"), "no");
}

TEST_F(NucsVerb, ANewLayoutCountsFromItsDay) {
    // Q18: one side of seven frames until 31 May 2027, two of three from 1 June.
    const auto book = makeExample();
    const auto sides = [&](const char* day) {
        std::string names;
        for (const auto& row : rowsOf(answer({"nucs", book, "--on", day})))
            if (row.at("box") == "Q18") names += row.at("side");
        return names;
    };
    EXPECT_EQ(sides("2027-05-31"), "-");
    EXPECT_EQ(sides("2027-06-01"), "AB");
    EXPECT_EQ(sides("2027-06-02"), "AB");
}

}  // namespace
}  // namespace tenthday::test
