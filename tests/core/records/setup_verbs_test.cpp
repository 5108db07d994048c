#include "records/setup_verbs.h"

#include <gtest/gtest.h>

#include "records/box_verbs.h"
#include "records/uses.h"
#include "support/draft_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::freshIds;
using test::id;
using test::SeasonMaker;

Snapshot after(const Snapshot& snapshot, const Result<ChangeSet>& changes) {
    if (!changes) throw std::invalid_argument(changes.error().text);
    auto next = applied(snapshot, changes.value());
    if (!next) throw std::invalid_argument(next.error().text);
    // Whatever it was, it can be taken back.
    const auto back = applied(next.value(), changes.value().inverse());
    EXPECT_TRUE(back && back.value().sameContent(snapshot));
    return std::move(next).value();
}

std::string refusal(const Result<ChangeSet>& changes) {
    return changes ? "not refused" : changes.error().text;
}

SeasonMaker season() {
    SeasonMaker maker("2027-06-01");
    maker.yard("Mill").yard("Weir").builder("Box", "Mill");
    maker.box("Q1", "Mill", "3+3", "2027-04-01").box("Q2", "Mill", "7", "2027-04-01");
    return maker;
}

TEST(CountedLabels, CountUpAndKeepZeros) {
    EXPECT_EQ(countedLabels("Q9", 3).value(), (std::vector<std::string>{"Q9", "Q10", "Q11"}));
    EXPECT_EQ(countedLabels("N07", 2).value(), (std::vector<std::string>{"N07", "N08"}));
    EXPECT_EQ(countedLabels("Mill", 1).value(), (std::vector<std::string>{"Mill"}));
    EXPECT_FALSE(countedLabels("Mill", 2));
    EXPECT_FALSE(countedLabels("Q1", 0));
}

TEST(AddBoxes, MakesADozenInOneEdit) {
    const auto maker = season();
    const auto before = maker.snapshot();
    const BoxPlan plan{maker.yardId("Weir"), "3+3", day("2027-05-01"), "new wood"};
    const auto next = after(before, addBoxes(before, "Q3", 12, plan, freshIds()));
    EXPECT_EQ(next.all<Box>().size(), 14U);
    EXPECT_EQ(next.all<NucSide>().size(), before.all<NucSide>().size() + 24);
    const auto last = findByLabel<Box>(next, "Q14");
    ASSERT_TRUE(last);
    EXPECT_EQ(yardOn(next, last->id, day("2027-05-01")), maker.yardId("Weir"));
    EXPECT_FALSE(yardOn(next, last->id, day("2027-04-30")));
}

TEST(AddBoxes, IsRefusedWholeWhereALabelIsTaken) {
    const auto before = season().snapshot();
    const auto changes = addBoxes(before, "Q0", 3, {{}, "7", day("2027-05-01"), {}}, freshIds());
    EXPECT_NE(refusal(changes).find("Q1"), std::string::npos) << refusal(changes);
}

TEST(ChangeBoxes, MovesAndDividesSeveralFromADayOn) {
    const auto maker = season();
    const auto before = maker.snapshot();
    std::vector<Id<Box>> boxes;
    for (const auto& box : before.all<Box>()) boxes.push_back(box->id);
    BoxChange change;
    change.move = BoxChange::Move{maker.yardId("Weir"), day("2027-06-10")};
    change.layout = BoxChange::Layout{"7", day("2027-06-10")};
    const auto next = after(before, changeBoxes(before, boxes, change, freshIds()));
    for (const auto box : boxes) {
        EXPECT_EQ(yardOn(next, box, day("2027-06-09")), maker.yardId("Mill"));
        EXPECT_EQ(yardOn(next, box, day("2027-06-10")), maker.yardId("Weir"));
    }
    EXPECT_EQ(next.all<BoxLayout>().size(), 3U) << "Q2 is divided so already";
}

TEST(ChangeBoxes, ALayoutIsRefusedWhileItsNucsHoldSomething) {
    auto maker = season();
    maker.stock("Q1/A", "2027-06-12");
    const auto before = maker.snapshot();
    BoxChange change;
    change.layout = BoxChange::Layout{"7", day("2027-06-10")};
    const auto box = findByLabel<Box>(before, "Q1")->id;
    EXPECT_NE(refusal(changeBoxes(before, {box}, change, freshIds())).find("2027-06-12"),
              std::string::npos);
}

TEST(ChangeBoxes, NowhereIsRefusedLikeRetiringWhileNucsHoldSomething) {
    auto maker = season();
    maker.stock("Q1/A", "2027-06-12");
    const auto before = maker.snapshot();
    const auto box = findByLabel<Box>(before, "Q1")->id;
    BoxChange change;
    change.move = BoxChange::Move{std::nullopt, day("2027-06-10")};
    EXPECT_NE(refusal(changeBoxes(before, {box}, change, freshIds())).find("2027-06-12"),
              std::string::npos);
    change.move->from = day("2027-06-20");
    const auto next = after(before, changeBoxes(before, {box}, change, freshIds()));
    EXPECT_FALSE(yardOn(next, box, day("2027-06-20")));
    // And it cannot be dated back to where they still hold something.
    BoxChange earlier;
    earlier.stayDay = {stayOn(next, box, day("2027-06-20"))->id, day("2027-06-11")};
    EXPECT_NE(refusal(changeBoxes(next, {box}, earlier, freshIds())).find("2027-06-12"),
              std::string::npos);
}

TEST(RetireBoxes, StandNowhereFromThatDayOn) {
    auto maker = season();
    maker.stock("Q2/-", "2027-05-12");
    const auto before = maker.snapshot();
    const auto box = findByLabel<Box>(before, "Q2")->id;
    const auto next = after(before, retireBoxes(before, {box}, day("2027-06-20"), freshIds()));
    EXPECT_TRUE(yardOn(next, box, day("2027-06-19")));
    EXPECT_FALSE(yardOn(next, box, day("2027-06-20")));
    EXPECT_EQ(next.all<Stocking>().size(), 1U);
}

TEST(SaveRow, AddsAndChanges) {
    const auto maker = season();
    const auto before = maker.snapshot();
    Yard yard;
    yard.id = id<Yard>(800'000);
    yard.label = "Heath";
    const auto next = after(before, saveRow(before, yard));
    EXPECT_TRUE(findByLabel<Yard>(next, "Heath"));
    yard.roles = "mating drone";
    EXPECT_EQ(after(next, saveRow(next, yard)).find(yard.id)->roles, "mating drone");
    yard.label.clear();
    EXPECT_NE(refusal(saveRow(next, yard)).find("a label is needed"), std::string::npos);
}

TEST(SaveQueen, MakesHerLineAndIsNotHerOwnAncestor) {
    const auto before = season().snapshot();
    Queen mother;
    mother.id = id<Queen>(1);
    mother.label = "B1";
    auto next = after(before, saveQueen(before, mother, "Alder", id<Line>(1)));
    EXPECT_EQ(next.find(next.find(mother.id)->line.value())->label, "Alder");
    Queen daughter;
    daughter.id = id<Queen>(2);
    daughter.label = "B2";
    daughter.mother = mother.id;
    next = after(next, saveQueen(next, daughter, "Alder", id<Line>(2)));
    EXPECT_EQ(next.all<Line>().size(), 1U) << "the line is there already";
    mother.mother = daughter.id;
    EXPECT_NE(refusal(saveQueen(next, mother, "Alder", id<Line>(3))).find("own ancestor"),
              std::string::npos);
}

std::vector<Step> stepsUntil(int hour) {
    Step step;
    step.where = BuilderKind::StarterFinisher;
    step.toHour = hour;
    return {step};
}

TEST(SaveMethod, AUsedOneIsCopiedUnderAnotherName) {
    const auto maker = season().batch("1", "2027-06-11", 12, 20, "Box");
    const auto before = maker.snapshot();
    const auto used = before.find(before.find(maker.batchId("1"))->method);
    const auto next = after(before, saveMethod(before, *used, stepsUntil(230), freshIds()));
    EXPECT_EQ(next.all<Method>().size(), before.all<Method>().size() + 1);
    EXPECT_TRUE(findByLabel<Method>(next, used->label + " 2"));
    EXPECT_EQ((*next.all<Step>().of(used->id.uuid).begin())->toHour, 240) << "as it was";
}

TEST(SaveMethod, AnUnusedOneIsChangedAndStepsMustNotOverlap) {
    const auto before = season().snapshot();
    const auto method = *before.all<Method>().begin();
    const auto next = after(before, saveMethod(before, *method, stepsUntil(230), freshIds()));
    EXPECT_EQ(next.all<Method>().size(), before.all<Method>().size());
    EXPECT_EQ((*next.all<Step>().of(method->id.uuid).begin())->toHour, 230);
    EXPECT_FALSE(saveMethod(before, *method, {}, freshIds()));
    auto two = stepsUntil(100);
    two.push_back(two[0]);
    two[1].fromHour = 90;
    two[1].toHour = 200;
    EXPECT_NE(refusal(saveMethod(before, *method, two, freshIds())).find("before step 1"),
              std::string::npos);
}

TEST(UsesOf, CountsWhatHangsOnAThingAndItsParts) {
    auto maker = season();
    maker.batch("1", "2027-06-11", 12, 20, "Box").makeUp("Box", "2027-06-10", 12, false);
    maker.stock("Q1/A", "2027-05-10").stock("Q1/B", "2027-05-10");
    maker.place("1", "Q1/A", "2027-06-21", false);
    const auto snapshot = maker.snapshot();
    const auto box = findByLabel<Box>(snapshot, "Q1")->id;
    EXPECT_EQ(usesOf(snapshot, box), (std::vector<Use>{{"stocking", 2}, {"placement", 1}}));
    EXPECT_EQ(usesOf(snapshot, maker.builderId("Box")),
              (std::vector<Use>{{"make_up", 1}, {"batch_load", 1}}));
    EXPECT_TRUE(usesOf(snapshot, findByLabel<Box>(snapshot, "Q2")->id).empty())
        << "its own stay, layout and side are no use";
}

TEST(DeleteWhole, TakesPartsAlongAndIsRefusedInUse) {
    auto maker = season();
    maker.stock("Q1/A", "2027-05-10");
    const auto before = maker.snapshot();
    const auto next = after(before, deleteWhole(before, findByLabel<Box>(before, "Q2")->id));
    EXPECT_EQ(next.all<Box>().size(), 1U);
    EXPECT_EQ(next.all<NucSide>().size(), 2U);
    EXPECT_NE(refusal(deleteWhole(before, findByLabel<Box>(before, "Q1")->id)).find("stocking"),
              std::string::npos);
    EXPECT_FALSE(deleteWhole(before, maker.yardId("Mill")));
}

TEST(Retire, ABuilderAndABreederEndTheDayBefore) {
    const auto maker = season();
    const auto before = maker.snapshot();
    const auto next =
        after(before, retireBuilder(before, maker.builderId("Box"), day("2027-07-01")));
    EXPECT_EQ(next.find(maker.builderId("Box"))->until, day("2027-06-30"));
    EXPECT_EQ(after(next, retireBuilder(next, maker.builderId("Box"), day("2027-08-01")))
                  .find(maker.builderId("Box"))
                  ->until,
              day("2027-06-30"))
        << "retiring again does not prolong it";
    EXPECT_FALSE(retireBuilder(before, maker.builderId("Box"), day("2026-01-01")));
}

TEST(SaveRow, KeepsWhatIsNotedOfAYard) {
    const auto maker = season();
    const auto before = maker.snapshot();
    const DroneSighting seen{
        id<DroneSighting>(1), 1, maker.yardId("Mill"), day("2027-05-02"), DroneStage::Eggs, {}, {}};
    const auto drones = after(before, saveRow(before, seen));
    EXPECT_EQ(drones.all<DroneSighting>().size(), 1U);
    YardNote note{
        id<YardNote>(1),   1, maker.yardId("Mill"), YardNoteKind::Robbing, day("2027-07-20"),
        day("2027-07-22"), {}};
    const auto both = after(drones, saveRow(drones, note));
    EXPECT_TRUE(after(both, deleteWhole(both, seen.id)).all<DroneSighting>().empty());
    EXPECT_TRUE(after(both, deleteWhole(both, note.id)).all<YardNote>().empty());
    note.until = day("2027-07-19");
    EXPECT_EQ(refusal(saveRow(both, note)), "yard_note.until_day: ends before it begins");
    auto many = seen;
    many.colonies = 1000;
    EXPECT_EQ(refusal(saveRow(both, many)), "drone_sighting.colonies: 0 to 999 is needed");
}

TEST(SaveRow, KeepsTheDiaryOfABuilderAndItsTicksGoWithIt) {
    const auto maker = season();
    const auto before = maker.snapshot();
    MakeUp made;
    made.id = id<MakeUp>(1);
    made.builder = maker.builderId("Box");
    made.day = day("2027-05-02");
    made.openBrood = true;
    const auto one = after(before, saveRow(before, made));
    BuilderNote fed;
    fed.id = id<BuilderNote>(1);
    fed.builder = made.builder;
    fed.kind = BuilderNoteKind::Feed;
    fed.day = day("2027-05-03");
    auto both = after(one, saveRow(one, fed));
    ChangeSet ticked;
    TaskDone tick;
    tick.id = id<TaskDone>(1);
    tick.rule = TaskRule::FirstWildLook;
    tick.subject = toText(made.id.uuid);
    tick.day = day("2027-05-08");
    ticked.add(tick);
    both = after(both, ticked);
    const auto without = after(both, deleteWhole(both, made.id));
    EXPECT_TRUE(without.all<MakeUp>().empty());
    EXPECT_TRUE(without.all<TaskDone>().empty());
    EXPECT_EQ(without.all<BuilderNote>().size(), 1U);
    EXPECT_TRUE(after(both, deleteWhole(both, fed.id)).all<BuilderNote>().empty());
    made.broodFrames = Frames{41};
    EXPECT_EQ(refusal(saveRow(both, made)), "make_up.brood_frames: 0 to 40 is needed");
}

}  // namespace
}  // namespace tenthday
