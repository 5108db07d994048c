#include "records/edit_sequence.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::id;
using test::SeasonMaker;

ChangeSet renamed(const Snapshot& snapshot, Id<Yard> yard, const std::string& label) {
    ChangeSet changes;
    Yard row = *snapshot.find(yard);
    row.label = label;
    changes.edit(snapshot.find(yard), row);
    return changes;
}

ChangeSet newYard(Id<Yard> id, const std::string& label) {
    ChangeSet changes;
    Yard row;
    row.id = id;
    row.label = label;
    changes.add(row);
    return changes;
}

ChangeSet gone(const Snapshot& snapshot, Id<Yard> yard) {
    ChangeSet changes;
    changes.erase(snapshot.find(yard));
    return changes;
}

TEST(EditSequence, SaysEachRowOnceWithOneNewVersion) {
    const auto maker = SeasonMaker().yard("Mill");
    const auto start = maker.snapshot();
    const auto mill = maker.yardId("Mill");
    EditSequence edit(start);
    ASSERT_TRUE(edit.add(renamed(edit.snapshot(), mill, "Weir")));
    ASSERT_TRUE(edit.add(renamed(edit.snapshot(), mill, "Brook")));
    const auto changes = edit.changes(Verb::EditRow, "Brook", {});
    ASSERT_EQ(changes.rows.size(), 1U);
    const auto after = applied(start, changes);
    ASSERT_TRUE(after);
    EXPECT_EQ(after.value().find(mill)->label, "Brook");
    EXPECT_EQ(after.value().find(mill)->version, start.find(mill)->version + 1);
}

TEST(EditSequence, LeavesOutWhatCameAndWentOrIsAsItWas) {
    const auto maker = SeasonMaker().yard("Mill");
    const auto mill = maker.yardId("Mill");
    EditSequence edit(maker.snapshot());
    ASSERT_TRUE(edit.add(newYard(id<Yard>(900'001), "Weir")));
    ASSERT_TRUE(edit.add(gone(edit.snapshot(), id<Yard>(900'001))));
    ASSERT_TRUE(edit.add(renamed(edit.snapshot(), mill, "Brook")));
    ASSERT_TRUE(edit.add(renamed(edit.snapshot(), mill, "Mill")));
    EXPECT_TRUE(edit.changes(Verb::EditRow, {}, {}).isEmpty());
}

TEST(EditSequence, AnEditedNewRowIsNew) {
    EditSequence edit(SeasonMaker().snapshot());
    const auto yard = id<Yard>(900'001);
    ASSERT_TRUE(edit.add(newYard(yard, "Weir")));
    ASSERT_TRUE(edit.add(renamed(edit.snapshot(), yard, "Brook")));
    const auto after = applied(SeasonMaker().snapshot(), edit.changes(Verb::AddRow, {}, {}));
    ASSERT_TRUE(after);
    EXPECT_EQ(after.value().find(yard)->label, "Brook");
    EXPECT_EQ(after.value().find(yard)->version, 1);
}

TEST(EditSequence, ARefusedEditChangesNothing) {
    const auto maker = SeasonMaker().yard("Mill").yard("Weir");
    EditSequence edit(maker.snapshot());
    EXPECT_FALSE(edit.add(renamed(edit.snapshot(), maker.yardId("Weir"), "Mill")));
    EXPECT_FALSE(edit.add(Error{"no"}));
    EXPECT_TRUE(edit.changes(Verb::EditRow, {}, {}).isEmpty());
    EXPECT_EQ(edit.snapshot().find(maker.yardId("Weir"))->label, "Weir");
}

}  // namespace
}  // namespace tenthday
