// Which edits stay within the season shown, and which can only be made on all seasons.
#include "records/season_reach.h"

#include <gtest/gtest.h>

#include "support/ids.h"
#include "support/small_book.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

class SeasonReach : public ::testing::Test {
protected:
    Batch batchOn(const char* on) {
        Batch batch = *book_.find(test::kBatch);
        batch.id = id<Batch>(700);
        batch.label = "700";
        batch.day = day(on);
        return batch;
    }
    Outcome graftOf(Id<Batch> batch) {
        Outcome graft;
        graft.id = id<Outcome>(701);
        graft.batch = batch;
        graft.day = day("2027-06-10");
        return graft;
    }
    Snapshot book_ = test::smallBook();
};

TEST_F(SeasonReach, WhatIsReadWithTheSeasonIsWithin) {
    ASSERT_FALSE(book_.seasonId().isNone());
    ChangeSet changes;
    changes.add(batchOn("2027-06-10"));
    changes.add(graftOf(id<Batch>(700)));
    changes.add(graftOf(test::kBatch));
    changes.add(Season{id<Season>(9), 1, "2030", day("2030-01-01"), day("2030-12-31")});
    EXPECT_FALSE(reachesBeyond(book_, changes));
    EXPECT_FALSE(reachesBeyond(book_, {}));
}

TEST_F(SeasonReach, ABatchOfOtherDaysAndWhatHangsOnOneThatIsNotReadAreBeyond) {
    ChangeSet batch;
    batch.add(batchOn("2028-06-10"));
    EXPECT_TRUE(reachesBeyond(book_, batch));
    ChangeSet outcome;
    outcome.add(graftOf(id<Batch>(700)));
    EXPECT_TRUE(reachesBeyond(book_, outcome));
}

TEST_F(SeasonReach, SoIsARowThatIsTakenBack) {
    ChangeSet gone;
    gone.erase(std::make_shared<const Outcome>(graftOf(test::kBatch)));
    EXPECT_TRUE(reachesBeyond(book_, gone));
}

TEST_F(SeasonReach, WithoutSeasonsAllIsShown) {
    book_.setSeason({});
    ChangeSet batch;
    batch.add(batchOn("2035-06-10"));
    EXPECT_FALSE(reachesBeyond(book_, batch));
}

}  // namespace
}  // namespace tenthday
