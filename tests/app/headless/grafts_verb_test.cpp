#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class GraftsVerb : public ProgramTest {};

TEST_F(GraftsVerb, ListsBatchesAheadAndTheirSum) {
    const auto rows =
        rowsOf(answer({"grafts", makeExample(), "--queens", "60", "--by", "2027-08-10"}));
    ASSERT_GE(rows.size(), 2U);
    double planned = 0;
    double needed = 0;
    for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
        planned += numberIn(rows[i].at("planned"));
        needed += numberIn(rows[i].at("needed"));
    }
    const auto& all = rows.back();
    EXPECT_EQ(all.at("batch"), "all");
    EXPECT_EQ(numberIn(all.at("planned")), planned);
    EXPECT_EQ(numberIn(all.at("needed")), needed);
    EXPECT_GE(numberIn(all.at("needed_chance")), 90.0);
}

TEST_F(GraftsVerb, WrongUseIsOneLine) {
    const auto book = makeExample();
    for (const auto& words :
         {std::vector<std::string>{"grafts", book},
          {"grafts", book, "--queens", "5"},
          {"grafts", book, "--queens", "0", "--by", "2027-08-10"},
          {"grafts", book, "--queens", "5", "--by", "soon"},
          {"grafts", book, "--queens", "5", "--by", "2027-08-10", "--sure", "100"}}) {
        const auto told = runHere(words);
        EXPECT_EQ(told.exit, 2) << told.err;
        EXPECT_EQ(std::count(told.err.begin(), told.err.end(), '\n'), 1) << told.err;
    }
    EXPECT_EQ(runHere({"grafts", book, "--order", "Nobody"}).exit, 1);
}

}  // namespace
}  // namespace tenthday::test
