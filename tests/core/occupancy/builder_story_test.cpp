#include "occupancy/builder_story.h"

#include <gtest/gtest.h>

#include "support/diary_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::DiaryMaker;

/// Kinds as letters, in order: M made up, B brood, b bees, P pollen, F feed, L looked, W look
/// wanted, C cells, I idle, N no open brood, E ends.
std::string letters(const std::vector<BuilderStoryLine>& story) {
    constexpr std::string_view kLetters = "MBbPFLWCINE";
    std::string text;
    for (const auto& line : story) text += kLetters[static_cast<std::size_t>(line.kind)];
    return text;
}

class BuilderStory : public ::testing::Test {
protected:
    BuilderStory() {
        maker_.yard("East").builder("Box", "East").batch("1", "2027-05-11", 14, 28, "Box");
    }
    static std::vector<BuilderStoryLine> lines(const OutlookPtr& outlook, StoryKind kind) {
        std::vector<BuilderStoryLine> all;
        for (const auto& line : builderStory(outlook->snapshot, outlook->builders[0]))
            if (line.kind == kind) all.push_back(line);
        return all;
    }

    test::SeasonMaker maker_{"2027-06-01"};
};

TEST_F(BuilderStory, IsToldInOrder) {
    DiaryMaker diary(maker_);
    diary.makeUp("Box", "2027-05-09", true)
        .note("Box", BuilderNoteKind::Feed, "2027-05-08")
        .note("Box", BuilderNoteKind::Look, "2027-05-15")
        .note("Box", BuilderNoteKind::Look, "2027-05-17")
        .note("Box", BuilderNoteKind::BroodIn, "2027-05-20", true)
        .ends("Box", "2027-07-31");
    const auto outlook = diary.outlook();
    // Fed, made up, idle on 10 May, cells, both looks; sealed on 18 May until brood comes on 20 May
    // with two looks of its own; rest; broodless again; the end.
    EXPECT_EQ(letters(builderStory(outlook->snapshot, outlook->builders[0])), "FMICLLNBWWNE");
    const auto broodless = lines(outlook, StoryKind::NoOpenBrood);
    EXPECT_EQ(dayOf(broodless[0].from), day("2027-05-18"));
    EXPECT_EQ(dayOf(*broodless[0].until), day("2027-05-19"));
}

TEST_F(BuilderStory, AMakeUpAndBroodCarryTheirClocks) {
    DiaryMaker diary(maker_);
    diary.makeUp("Box", "2027-05-09", true)
        .note("Box", BuilderNoteKind::BroodIn, "2027-05-20", true)
        .note("Box", BuilderNoteKind::BroodIn, "2027-05-21", false);
    const auto outlook = diary.outlook();
    const auto madeUp = lines(outlook, StoryKind::MadeUp);
    ASSERT_NE(madeUp[0].clock, nullptr);
    EXPECT_EQ(toText(madeUp[0].clock->oldest), "2027-05-18T12:00");  // 216 h: S118
    const auto brood = lines(outlook, StoryKind::BroodIn);
    ASSERT_EQ(brood.size(), 2U);
    ASSERT_NE(brood[0].clock, nullptr);
    EXPECT_EQ(toText(brood[0].clock->oldest), "2027-05-29T12:00");
    EXPECT_EQ(brood[1].clock, nullptr) << "sealed brood";
}

TEST_F(BuilderStory, LooksThatAreWantedStandAsTheyAreToday) {
    const auto states = [&](const char* madeUp) {
        DiaryMaker diary(maker_);
        diary.makeUp("Box", madeUp, true);
        const auto outlook = diary.outlook();
        std::vector<LookState> all;
        for (const auto& line : lines(outlook, StoryKind::LookWanted)) all.push_back(line.look);
        return all;
    };
    using S = LookState;
    EXPECT_EQ(states("2027-05-30"), (std::vector{S::Ahead, S::Ahead}));
    EXPECT_EQ(states("2027-05-27"), (std::vector{S::Due, S::Ahead}));
    EXPECT_EQ(states("2027-05-24"), (std::vector{S::Overdue, S::Due}));
    EXPECT_EQ(states("2027-05-20"), (std::vector{S::Overdue, S::Overdue}));
    EXPECT_EQ(states("2027-05-09"), (std::vector{S::Missed, S::Missed})) << "run out after 17 d";
}

TEST_F(BuilderStory, ALookTickedAsATaskIsToldOnItsDay) {
    DiaryMaker diary(maker_);
    diary.makeUp("Box", "2027-05-24", true);
    TaskDone tick;
    tick.id = test::id<TaskDone>(5);
    tick.rule = TaskRule::FirstWildLook;
    tick.subject = toText((*diary.snapshot().all<MakeUp>().begin())->id.uuid);
    tick.day = day("2027-05-30");
    diary.add(tick);
    const auto outlook = diary.outlook();
    const auto looks = lines(outlook, StoryKind::LookWanted);
    ASSERT_EQ(looks.size(), 2U);
    EXPECT_EQ(looks[0].look, LookState::Ticked);
    EXPECT_EQ(dayOf(looks[0].from), day("2027-05-30"));
    EXPECT_TRUE(looks[1].second);
}

TEST_F(BuilderStory, CellsAreToldWithTheRoomForThem) {
    const auto outlook = DiaryMaker(maker_).outlook();
    auto loads = lines(outlook, StoryKind::Load);
    ASSERT_EQ(loads.size(), 1U);
    EXPECT_EQ(loads[0].batch->label, "1");
    EXPECT_NEAR(loads[0].cells, 28 * .75, 0.01) << "started, not grafted";
    EXPECT_EQ(loads[0].room->cells, 24);
    EXPECT_FALSE(loads[0].overfull);
    // A feed within seven days: no bound.
    const auto fed = DiaryMaker(maker_).note("Box", BuilderNoteKind::Feed, "2027-05-08").outlook();
    EXPECT_FALSE(lines(fed, StoryKind::Load)[0].room);
    maker_.bar("1", 2, 28, "Box");
    loads = lines(DiaryMaker(maker_).outlook(), StoryKind::Load);
    EXPECT_TRUE(loads[0].overfull);
}

TEST_F(BuilderStory, OfAnotherSeasonNothingIsTold) {
    DiaryMaker diary(maker_);
    diary.makeUp("Box", "2026-05-09", false).ends("Box", "2028-05-01");
    const auto outlook = diary.outlook();
    EXPECT_TRUE(lines(outlook, StoryKind::MadeUp).empty());
    EXPECT_TRUE(lines(outlook, StoryKind::Ends).empty());
    EXPECT_FALSE(lines(outlook, StoryKind::Load).empty());
}

}  // namespace
}  // namespace tenthday
