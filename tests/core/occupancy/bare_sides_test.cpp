// Kept from one outlook to the next: they must never be those of other rows.
#include "occupancy/bare_sides.h"

#include <gtest/gtest.h>

#include <functional>

#include "occupancy/nuc_memo.h"
#include "records/verbs.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

struct Change {
    const char* name;
    std::function<void(const Snapshot&, ChangeSet&)> make;
};
void PrintTo(const Change& change, std::ostream* out) { *out << change.name; }

template <class Row>
void editFirst(const Snapshot& snapshot, ChangeSet& changes, const std::function<void(Row&)>& how) {
    const auto before = *snapshot.all<Row>().begin();
    auto after = *before;
    how(after);
    changes.edit(before, after);
}

class BareSidesOf : public ::testing::TestWithParam<Change> {
protected:
    static Snapshot season() {
        test::SeasonMaker maker("2027-06-01");
        maker.yard("Mill").yard("Home", 1).builder("Box", "Home");
        maker.box("N10", "Mill", "7", "2027-04-01").stock("N10/-", "2027-05-01");
        maker.box("N2", "Home", "3+3", "2027-04-01").stock("N2/A", "2027-05-08", false);
        return maker.batch("701", "2027-06-10", 12, 20, "Box").snapshot();
    }
};

/// All that they are made of, written out.
std::string text(const BareSides& bare) {
    std::string all;
    for (const auto& side : bare.sides()) {
        all += side.box->label + "/" + toText(side.side->id.uuid) + " " +
               toText(side.stands.first) + ":";
        for (const auto& stay : side.stays)
            all += " " + toText(stay.from) + (stay.yard ? toText(stay.yard->uuid) : "-");
        for (const auto& segment : side.segments)
            all += " " + std::to_string(static_cast<int>(segment.kind)) +
                   toText(segment.days.first) + toText(segment.readyFrom) +
                   toText(segment.needsBroodFrom);
        all += "\n";
    }
    return all;
}

TEST_P(BareSidesOf, AreMadeAnewOnceARowOfTheirsChanges) {
    const auto before = season();
    NucMemo memo;
    const auto kept = memo.bareSides(before);
    ChangeSet changes;
    GetParam().make(before, changes);
    const auto after = applied(before, changes).value();
    EXPECT_FALSE(kept->areOf(after));
    EXPECT_NE(text(*memo.bareSides(after)), text(*kept));
    EXPECT_EQ(text(*memo.bareSides(before)), text(*kept)) << "undone";
}

INSTANTIATE_TEST_SUITE_P(
    Rows, BareSidesOf,
    ::testing::Values(
        Change{"Label", [](const auto& s,
                           auto& c) { editFirst<Box>(s, c, [](Box& box) { box.label = "Z"; }); }},
        Change{"Stay",
               [](const auto& s, auto& c) {
                   editFirst<BoxStay>(s, c, [](BoxStay& stay) { stay.from += Days{1}; });
               }},
        Change{"Layout",
               [](const auto& s, auto& c) {
                   editFirst<BoxLayout>(s, c, [](BoxLayout& row) { row.from += Days{1}; });
               }},
        Change{"Stocking",
               [](const auto& s, auto& c) {
                   editFirst<Stocking>(s, c, [](Stocking& row) { row.day += Days{1}; });
               }},
        Change{"Brood",
               [](const auto& s, auto& c) {
                   NucCare care;
                   care.id = test::id<NucCare>(910'000);
                   care.side = (*s.template all<Stocking>().begin())->side;
                   care.kind = NucCareKind::BroodIn;
                   care.day = day("2027-05-12");
                   care.broodFrames = Frames{1};
                   care.openBrood = true;
                   c.add(care);
               }},
        Change{"Fact",
               [](const Snapshot&, ChangeSet& c) {
                   c.add(FactOverride{test::id<FactOverride>(910'001), 1,
                                      std::string(token(Fact::NucQueenlessH)), 96'000});
               }}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(BareSidesOfASeason, StayTheSameWhileBatchesMove) {
    test::SeasonMaker maker("2027-06-01");
    maker.yard("Mill").builder("Box", "Mill");
    maker.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-05-01");
    const auto before = maker.batch("701", "2027-06-10", 12, 20, "Box").snapshot();
    NucMemo memo;
    const auto kept = memo.bareSides(before);
    const auto move = moveBatch(before, maker.batchId("701"), day("2027-06-12"));
    ASSERT_TRUE(move) << move.error().text;
    EXPECT_EQ(memo.bareSides(applied(before, move.value()).value()), kept) << "not found anew";
}

TEST(BareSidesOfASeason, AreFoundByTheirIdsInTheOrderOfLabels) {
    test::SeasonMaker maker("2027-06-01");
    maker.yard("Mill");
    for (const char* label : {"N10", "N9", "N1"}) maker.box(label, "Mill", "3+3", "2027-04-01");
    const BareSides bare(maker.snapshot());
    ASSERT_EQ(bare.sides().size(), 6U);
    EXPECT_EQ(bare.sides()[0].box->label, "N1");
    EXPECT_EQ(bare.sides()[2].box->label, "N9");
    EXPECT_EQ(bare.sides()[4].box->label, "N10");
    for (std::size_t i = 0; i < 6; ++i) EXPECT_EQ(bare.find(bare.sides()[i].side->id), i);
    EXPECT_EQ(bare.find(test::id<NucSide>(999'999)), std::nullopt);
}

}  // namespace
}  // namespace tenthday
