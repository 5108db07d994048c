// A season that was expected is the one that would be derived when asked for.
#include "desk/seasons_ahead.h"

#include <gtest/gtest.h>

#include <QTest>

#include "exchange/example.h"
#include "records/verbs.h"
#include "support/days.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

class SeasonsAheadOfTheExample : public ::testing::Test {
protected:
    SeasonsAheadOfTheExample() {
        auto snapshot = applied(Snapshot{}, exampleContent()).value();
        snapshot.setToday(day("2027-06-03"));
        saved = seasons.of(snapshot);
        for (const auto& one : saved->batches)
            if (!one->timeline.grafted) batch = one->batch;
    }
    [[nodiscard]] ChangeSet moveBy(int days) const {
        return moveBatch(saved->snapshot, batch->id, batch->day + Days{days}).value();
    }
    [[nodiscard]] bool awaits(const ChangeSet& edit) const {
        return QTest::qWaitFor([&] { return seasons.find(saved, edit) != nullptr; }, 20'000);
    }
    void expectAsAfresh(const OutlookPtr& season, const ChangeSet& edit) const {
        const auto fresh = freshOutlook(applied(saved->snapshot, edit).value());
        EXPECT_TRUE(season->snapshot.sameContent(fresh->snapshot));
        ASSERT_EQ(season->batches.size(), fresh->batches.size());
        for (std::size_t i = 0; i < fresh->batches.size(); ++i)
            EXPECT_EQ(season->batches[i]->timeline.graft, fresh->batches[i]->timeline.graft);
        ASSERT_EQ(season->findings.size(), fresh->findings.size());
        for (std::size_t i = 0; i < fresh->findings.size(); ++i)
            EXPECT_EQ(season->findings[i].day, fresh->findings[i].day);
        ASSERT_EQ(season->nucs.yards.size(), fresh->nucs.yards.size());
        for (std::size_t i = 0; i < fresh->nucs.yards.size(); ++i)
            for (std::size_t on = 0; on < fresh->nucs.yards[i].days.size(); ++on)
                EXPECT_EQ(season->nucs.yards[i].days[on].numbers.ready,
                          fresh->nucs.yards[i].days[on].numbers.ready);
    }

    SeasonsAhead seasons;
    OutlookPtr saved;
    Ptr<Batch> batch;
};

TEST_F(SeasonsAheadOfTheExample, WhatWasExpectedIsThereAndIsTheSame) {
    const auto next = moveBy(1);
    const auto back = moveBy(-1);
    seasons.expect(saved, {next, back});
    ASSERT_TRUE(awaits(next));
    ASSERT_TRUE(awaits(back));
    EXPECT_EQ(seasons.wereThere(), 0) << "nobody asked yet";
    for (const auto& edit : {next, back}) expectAsAfresh(seasons.after(saved, edit).value(), edit);
    EXPECT_EQ(seasons.wereThere(), 2);
    const auto again = seasons.after(saved, next).value();
    EXPECT_EQ(again, seasons.after(saved, next).value()) << "kept";
    EXPECT_EQ(seasons.wereThere(), 2) << "each counts once";
}

TEST_F(SeasonsAheadOfTheExample, WhatWasNotExpectedIsDerivedThen) {
    seasons.expect(saved, {moveBy(1), moveBy(2), moveBy(3)});
    const auto other = moveBy(-2);
    expectAsAfresh(seasons.after(saved, other).value(), other);
    // Asked for while it is derived, or before or after that.
    for (int by = 1; by <= 12; ++by) {
        const auto next = moveBy(by);
        seasons.expect(saved, {next, moveBy(-by)});
        expectAsAfresh(seasons.after(saved, next).value(), next);
    }
}

TEST_F(SeasonsAheadOfTheExample, AnEditThatCannotBeIsRefusedWhenItIsAskedFor) {
    auto broken = moveBy(1);
    ChangeSet twice;
    twice.rows.push_back(broken.rows.front());
    twice.rows.push_back(broken.rows.front());  // the second finds another row than it was made for
    ASSERT_FALSE(applied(saved->snapshot, twice));
    const auto fine = moveBy(2);
    seasons.expect(saved, {twice, fine});
    ASSERT_TRUE(awaits(fine));
    EXPECT_FALSE(seasons.find(saved, twice));
    EXPECT_FALSE(seasons.after(saved, twice));
    expectAsAfresh(seasons.after(saved, fine).value(), fine);
}

TEST_F(SeasonsAheadOfTheExample, AnotherSeasonSavedForgetsWhatWasDerivedAhead) {
    const auto next = moveBy(1);
    seasons.expect(saved, {next});
    ASSERT_TRUE(awaits(next));
    const auto moved = seasons.of(applied(saved->snapshot, next).value());
    EXPECT_FALSE(seasons.find(saved, next));
    EXPECT_FALSE(seasons.find(moved, next));
    EXPECT_FALSE(seasons.after(moved, next)) << "it was made for the row as it was before";
    seasons.expect(saved, {next});
    seasons.goOnFrom(saved);
    EXPECT_FALSE(seasons.find(saved, next));
    expectAsAfresh(seasons.after(saved, next).value(), next);
    const auto further = moveBy(2);
    seasons.expect(saved, {next, further});
    ASSERT_TRUE(awaits(further));
    seasons.expect(saved, {});
    EXPECT_FALSE(seasons.find(saved, further));
    EXPECT_TRUE(seasons.find(saved, next)) << "it was asked for";
    seasons.expect(saved, {moveBy(3)});  // and gone while it may be derived
}

}  // namespace
}  // namespace tenthday::test
