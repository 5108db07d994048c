// Many entries of a day as one edit, each judged as if those before it were made.
#include "evening/evening_lines.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

/// Batch 701, grafted on 20 May in two bars; its started cells are counted on the 21st.
class EveningLinesTest : public ::testing::Test {
protected:
    EveningLinesTest() {
        test::SeasonMaker maker("2027-05-21");
        maker.yard("Mill").builder("Big", "Mill").batch("701", "2027-05-20", 12, 30, "Big");
        maker.bar("701", 2, 30, "Big");
        outlook_ = maker.outlook();
        page_ = eveningOf(*outlook_, day("2027-05-21"));
    }
    std::size_t rowOf(TaskRule rule, int bar) const {
        for (std::size_t i = 0; i < page_.rows.size(); ++i)
            if (page_.rows[i].task.key.rule == rule && page_.rows[i].bar == bar &&
                page_.rows[i].entry == EveningEntry::Count)
                return i;
        ADD_FAILURE() << "no such row";
        return 0;
    }
    EveningLine line(TaskRule rule, int bar, int count) const {
        EveningInput input;
        input.day = rule == TaskRule::Graft ? page_.day - Days{1} : page_.day;
        input.count = count;
        return {rowOf(rule, bar), input};
    }
    EveningLines enter(const std::vector<EveningLine>& lines) {
        return enterLines(outlook_, page_, lines,
                          [this] { return test::id<Outcome>(50000 + ++ids_).uuid; });
    }

    OutlookPtr outlook_;
    EveningPage page_{};
    std::uint64_t ids_ = 0;
};

TEST_F(EveningLinesTest, AllOfThemAreOneEdit) {
    const auto entered =
        enter({line(TaskRule::TakeCount, 1, 20), line(TaskRule::TakeCount, 2, 25)});
    for (const auto& trouble : entered.troubles) EXPECT_FALSE(trouble);
    const auto next = applied(outlook_->snapshot, entered.changes);
    ASSERT_TRUE(next) << next.error().text;
    int started = 0;
    for (const auto& row : next.value().all<Outcome>())
        if (row->kind == OutcomeKind::TakeCount) started += row->count->value;
    EXPECT_EQ(started, 45);
}

TEST_F(EveningLinesTest, ALineThatCannotBeAfterThoseBeforeItIsNamed) {
    // Grafted are what the first lines say, not what was planned.
    const auto entered = enter({line(TaskRule::Graft, 1, 15), line(TaskRule::TakeCount, 1, 20),
                                line(TaskRule::TakeCount, 2, 20)});
    ASSERT_EQ(entered.troubles.size(), 3U);
    EXPECT_FALSE(entered.troubles[0]);
    ASSERT_TRUE(entered.troubles[1]);
    ASSERT_TRUE(entered.troubles[1]->refusal);
    EXPECT_EQ(entered.troubles[1]->refusal->why, Impossible::MoreThanBefore);
    EXPECT_EQ(entered.troubles[1]->refusal->count, 15);
    EXPECT_FALSE(entered.troubles[2]);
}

TEST_F(EveningLinesTest, ALineWithoutAnEntryTakesBackWhatIsThere) {
    const auto first = enter({line(TaskRule::TakeCount, 1, 20)});
    OutlookMemo memo;
    outlook_ = outlookOf(applied(outlook_->snapshot, first.changes).value(), memo);
    page_ = eveningOf(*outlook_, day("2027-05-21"));
    const auto back = enter({{rowOf(TaskRule::TakeCount, 1), std::nullopt}});
    const auto next = applied(outlook_->snapshot, back.changes);
    ASSERT_TRUE(next) << next.error().text;
    EXPECT_TRUE(next.value().all<Outcome>().empty());
}

}  // namespace
}  // namespace tenthday
