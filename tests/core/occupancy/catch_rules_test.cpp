// What each catch rule costs in nuc days, and who pays for it.
#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// 26 nucs filled on 4 June 2027 by batch 1, whose queens are out on 6 June.
SeasonMaker filled(int laterNucsWanted) {
    SeasonMaker maker("2027-06-01");
    maker.yard("East").builder("Box", "East").builder("Other", "East");
    for (int i = 1; i <= 26; ++i)
        maker.box("N" + std::to_string(i), "East", "7", "2027-04-01")
            .stock("N" + std::to_string(i) + "/-", "2027-05-25");
    maker.batch("1", "2027-05-25", 10, 35, "Box");
    for (int i = 1; i <= 26; ++i)
        maker.place("1", "N" + std::to_string(i) + "/-", "2027-06-04", false);
    if (laterNucsWanted > 0) maker.batch("2", "2027-06-13", 10, laterNucsWanted, "Other");
    return maker;
}

TEST(CatchRules, HaveTheirPriceInNucDays) {
    const auto maker = filled(0);
    const auto outlook = maker.outlook();
    const auto& hold = outlook->find(maker.batchId("1"))->timeline.hold;
    EXPECT_EQ(hold.catchBy[0], day("2027-06-20"));
    EXPECT_TRUE(hold.catchBy[1] == day("2027-06-25") || hold.catchBy[1] == day("2027-06-26"));
    EXPECT_EQ(hold.catchBy[2], day("2027-07-04"));
    EXPECT_EQ(hold.nucDays(CatchRule::Eggs), 17);
    EXPECT_TRUE(hold.nucDays(CatchRule::SealedBrood) == 22 ||
                hold.nucDays(CatchRule::SealedBrood) == 23);
    EXPECT_EQ(hold.nucDays(CatchRule::Age), 31);
    EXPECT_EQ(hold.nucDays(), hold.nucDays(CatchRule::SealedBrood));
}

TEST(CatchRules, ANucThatALaterBatchWantsIsTold) {
    // Batch 2 comes on 23 June: caught on eggs (20 June) the nucs would be ready, not by sealed
    // brood.
    const auto maker = filled(28);
    std::vector<Finding> held;
    const auto outlook = maker.outlook();
    for (const auto& finding : outlook->findings)
        if (finding.kind == FindingKind::CatchHoldsNucs) held.push_back(finding);
    ASSERT_EQ(held.size(), 1U);
    EXPECT_EQ(held[0].day, day("2027-06-23"));
    EXPECT_EQ(held[0].subjectLabel, "1");
    EXPECT_EQ(held[0].otherLabel, "2");
    EXPECT_EQ(held[0].count, std::floor(26 * .88 * .80 + 1e-6));
    EXPECT_EQ(englishText(held[0]),
              "18 nucs wait for sealed brood, 6 nuc days more each; caught on eggs they would be "
              "ready for batch 2, which has 20 cells too many");
}

TEST(CatchRules, NobodyIsToldWhereNucsAreEnough) {
    const auto outlook = filled(0).outlook();
    for (const auto& finding : outlook->findings)
        EXPECT_NE(finding.kind, FindingKind::CatchHoldsNucs);
}

}  // namespace
}  // namespace tenthday
