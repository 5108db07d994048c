/// What was counted of a batch: bars against the whole batch, and counts of several days.
#include "records/counted.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday::test {
namespace {

/// Two bars of 20 and 10 grafts.
class CountedTest : public ::testing::Test {
protected:
    CountedTest() {
        maker_.yard("Mill").builder("B1", "Mill");
        maker_.batch("1", "2027-05-10", 14, 20, "B1").bar("1", 2, 10, "B1");
    }
    void count(std::string_view on, int cells, std::optional<int> bar = {}) {
        maker_.outcome("1", OutcomeKind::Ripe, on, cells, {}, bar);
    }
    std::optional<Counted> counted() const {
        const auto snapshot = maker_.snapshot();
        const auto batch = maker_.batchId("1").uuid;
        return countedOf(snapshot.all<Outcome>().of(batch), snapshot.all<BatchBar>().of(batch),
                         OutcomeKind::Ripe);
    }
    void expect(int cells, bool byBar, const char* why = "") const {
        const auto is = counted();
        ASSERT_TRUE(is) << why;
        EXPECT_EQ(is->cells, cells) << why;
        EXPECT_EQ(is->byBar, byBar) << why;
    }

    SeasonMaker maker_{"2027-06-01"};
};

TEST_F(CountedTest, NothingSpeaksForTheBatchUntilEveryBarIsCounted) {
    EXPECT_FALSE(counted());
    count("2027-05-19", 14, 1);
    EXPECT_FALSE(counted());
    count("2027-05-20", 7, 2);
    expect(21, true);
    count("2027-05-20", 12, 1);
    expect(19, true, "the newest count of a bar");
}

TEST_F(CountedTest, TheWholeBatchStandsInPlaceOfItsBarsOfThatDay) {
    count("2027-05-20", 14, 1);
    count("2027-05-20", 7, 2);
    count("2027-05-20", 18);
    expect(18, false);
    count("2027-05-21", 13, 1);
    expect(18, false, "of bar 2 nothing newer is known");
    count("2027-05-21", 4, 2);
    expect(17, true, "both were counted after it");
    count("2027-05-22", 16);
    expect(16, false);
}

TEST_F(CountedTest, TheDatesOfTheBatchGoByTheSameCount) {
    count("2027-05-20", 18);
    EXPECT_EQ(maker_.outlook()->find(maker_.batchId("1"))->timeline.counts.ripe, 18);
    count("2027-05-21", 13, 1);
    count("2027-05-21", 4, 2);
    EXPECT_EQ(maker_.outlook()->find(maker_.batchId("1"))->timeline.counts.ripe, 17);
}

}  // namespace
}  // namespace tenthday::test
