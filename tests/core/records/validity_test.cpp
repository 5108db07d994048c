#include "records/validity.h"

#include <gtest/gtest.h>

#include <functional>

#include "records/method_catalogue.h"
#include "support/small_book.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

/// The first row of a kind in the small book, spoilt, must be refused with this text;
/// an empty text says it must be taken.
struct Spoilt {
    const char* name;
    std::function<std::string()> refusal;
    const char* expected;
};
void PrintTo(const Spoilt& s, std::ostream* out) { *out << s.name; }

template <class Row>
std::string said(const Row& row) {
    const auto result = checkRow(row);
    return result ? "" : result.error().text;
}
template <class Row>
std::function<std::string()> with(void (*spoil)(Row&)) {
    return [spoil] {
        const auto book = test::smallBook();
        Row row = **book.all<Row>().begin();
        spoil(row);
        return said(row);
    };
}
/// For kinds the small book has none of.
template <class Row>
std::function<std::string()> fresh(Row row) {
    return [row] { return said(row); };
}

class RowRule : public ::testing::TestWithParam<Spoilt> {};

TEST_P(RowRule, IsKept) { EXPECT_EQ(GetParam().refusal(), GetParam().expected); }

const auto caseName = [](const auto& test) { return std::string(test.param.name); };
const Day kDay = day("2027-06-04");

// clang-format off
INSTANTIATE_TEST_SUITE_P(OfAnyTable, RowRule, ::testing::Values(
    Spoilt{"NoId", with<Box>([](Box& r) { r.id = {}; }), "box.id: an id is needed"},
    Spoilt{"NoLabel", with<Yard>([](Yard& r) { r.label.clear(); }), "yard.label: a label is needed"},
    Spoilt{"LongestText", with<Yard>([](Yard& r) { r.note.assign(4000, 'x'); }), ""},
    Spoilt{"TooLongText", with<Yard>([](Yard& r) { r.note.assign(4001, 'x'); }), "yard.note: the text is too long (4000 bytes at most)"},
    Spoilt{"ZeroByte", with<Box>([](Box& r) { r.note = std::string("a\0b", 3); }), "box.note: holds a zero byte"},
    Spoilt{"DayTooEarly", with<Batch>([](Batch& r) { r.day = kFirstDay - Days{1}; }), "batch.day: the day is outside 1900 to 2199"},
    Spoilt{"FirstDay", with<Batch>([](Batch& r) { r.day = kFirstDay; }), ""},
    Spoilt{"DayTooLate", with<BoxStay>([](BoxStay& r) { r.from = kLastDay + Days{1}; }), "box_stay.from_day: the day is outside 1900 to 2199"},
    Spoilt{"OptionalDayTooLate", with<Yard>([](Yard& r) { r.frostDay = kLastDay + Days{1}; }), "yard.frost_day: the day is outside 1900 to 2199"},
    Spoilt{"HourTooLate", with<Batch>([](Batch& r) { r.hour = Hour{24}; }), "batch.hour: 0 to 23 is needed"},
    Spoilt{"HourNegative", with<Batch>([](Batch& r) { r.hour = Hour{-1}; }), "batch.hour: 0 to 23 is needed"},
    Spoilt{"Midnight", with<Batch>([](Batch& r) { r.hour = Hour{0}; }), ""}), caseName);

INSTANTIATE_TEST_SUITE_P(OfThePlace, RowRule, ::testing::Values(
    Spoilt{"BookUnknownFacts", with<Book>([](Book& r) { r.factsRevision = kNewestFactsRevision + 1; }), "book.facts_revision: unknown revision"},
    Spoilt{"FactUnknown", fresh(FactOverride{id<FactOverride>(1), 1, "luck", 1000}), "fact_override.fact: no such fact: luck"},
    Spoilt{"FactOutOfRange", fresh(FactOverride{id<FactOverride>(1), 1, "accepted", 1001}), "fact_override.value_milli: out of range"},
    Spoilt{"FactAtItsEnd", fresh(FactOverride{id<FactOverride>(1), 1, "accepted", 1000}), ""},
    Spoilt{"SeasonBackwards", with<Season>([](Season& r) { r.until = r.from - Days{1}; }), "season.until_day: ends before it begins"},
    Spoilt{"SeasonAcrossNewYear", with<Season>([](Season& r) { r.until = day("2028-03-31"); }), ""},
    Spoilt{"SeasonTooLong", with<Season>([](Season& r) { r.until = r.from + Days{551}; }), "season.until_day: a season lasts 550 days at most"},
    Spoilt{"YardOrder", with<Yard>([](Yard& r) { r.driveOrder = -1; }), "yard.drive_order: 0 to 9999 is needed"},
    Spoilt{"LayoutNone", with<BoxLayout>([](BoxLayout& r) { r.layout = "3x3"; }), "box_layout.layout: frames of each side are needed, such as 7 or 3+3: 3x3"},
    Spoilt{"SideUnnamed", with<NucSide>([](NucSide& r) { r.side.clear(); }), "nuc_side.side: a side needs a name"},
    Spoilt{"SideFrames", with<NucSide>([](NucSide& r) { r.frames = Frames{0}; }), "nuc_side.frames: 1 to 20 is needed"},
    Spoilt{"StockingBees", fresh(Stocking{id<Stocking>(1), 1, test::kSideA, kDay, {}, BeesMl{-1}, {}, false, "", ""}), "stocking.bees_ml: 0 to 20000 is needed"},
    Spoilt{"StockingBrood", fresh(Stocking{id<Stocking>(1), 1, test::kSideA, kDay, {}, {}, Frames{21}, false, "", ""}), "stocking.brood_frames: 0 to 20 is needed"},
    Spoilt{"DayOffBackwards", fresh(DayOff{id<DayOff>(1), 1, kDay, kDay - Days{1}, ""}), "day_off.until_day: ends before it begins"},
    Spoilt{"DayOffOfOneDay", fresh(DayOff{id<DayOff>(1), 1, kDay, kDay, ""}), ""}), caseName);

INSTANTIATE_TEST_SUITE_P(OfTheBuilders, RowRule, ::testing::Values(
    Spoilt{"OpenRoom", with<Builder>([](Builder& r) { r.openRoom = Cells{10000}; }), "builder.open_room: 0 to 9999 is needed"},
    Spoilt{"SealedRoom", with<Builder>([](Builder& r) { r.sealedRoom = Cells{-1}; }), "builder.sealed_room: 0 to 9999 is needed"},
    Spoilt{"EndsBefore", with<Builder>([](Builder& r) { r.until = r.from - Days{1}; }), "builder.until_day: ends before it begins"},
    Spoilt{"ForOneDay", with<Builder>([](Builder& r) { r.until = r.from; }), ""},
    Spoilt{"MakeUpBees", fresh(MakeUp{id<MakeUp>(1), 1, test::kBuilder, kDay, {}, true, BeesMl{40001}, {}, "", false}), "make_up.bees_ml: 0 to 40000 is needed"},
    Spoilt{"MakeUpBrood", fresh(MakeUp{id<MakeUp>(1), 1, test::kBuilder, kDay, {}, true, {}, Frames{41}, "", false}), "make_up.brood_frames: 0 to 40 is needed"},
    Spoilt{"StepZero", with<Step>([](Step& r) { r.step = 0; }), "step.step: 1 to 20 is needed"},
    Spoilt{"StepBeforeGraft", with<Step>([](Step& r) { r.fromHour = -1; }), "step.from_hour: 0 to 480 is needed"},
    Spoilt{"StepOfNoLength", with<Step>([](Step& r) { r.toHour = r.fromHour; }), "step.to_hour: after from_hour, 480 at most"},
    Spoilt{"StepTooLong", with<Step>([](Step& r) { r.toHour = 481; }), "step.to_hour: after from_hour, 480 at most"},
    Spoilt{"StepRest", with<Step>([](Step& r) { r.restDays = 61; }), "step.rest_days: 0 to 60 is needed"}), caseName);

INSTANTIATE_TEST_SUITE_P(OfTheQueens, RowRule, ::testing::Values(
    Spoilt{"Year", with<Queen>([](Queen& r) { r.year = 1949; }), "queen.year: 1950 to 2199 is needed"},
    Spoilt{"YearUnknown", with<Queen>([](Queen& r) { r.year.reset(); }), ""},
    Spoilt{"BreederBackwards", with<Queen>([](Queen& r) { r.breederUntil = *r.breederFrom - Days{1}; }), "queen.breeder_until: ends before it begins"},
    Spoilt{"OwnMother", with<Queen>([](Queen& r) { r.mother = r.id; }), "queen.mother: a queen is not her own mother"}), caseName);

INSTANTIATE_TEST_SUITE_P(OfTheBatches, RowRule, ::testing::Values(
    Spoilt{"LarvaOfEightyHours", with<Batch>([](Batch& r) { r.larvaFromH = 80; }), "batch.larva_from_h: 0 to 72 h is needed"},
    Spoilt{"OldestLarvaOfEightyHours", with<Batch>([](Batch& r) { r.larvaToH = 80; }), "batch.larva_to_h: 0 to 72 h is needed"},
    Spoilt{"LarvaNegative", with<Batch>([](Batch& r) { r.larvaToH = -1; }), "batch.larva_to_h: 0 to 72 h is needed"},
    Spoilt{"LarvaExactlySeventyTwo", with<Batch>([](Batch& r) { r.larvaFromH = 72, r.larvaToH = 72; }), ""},
    Spoilt{"LarvaBackwards", with<Batch>([](Batch& r) { r.larvaFromH = 24, r.larvaToH = 12; }), "batch.larva_to_h: the oldest larva is younger than the youngest"},
    Spoilt{"BarZero", with<BatchBar>([](BatchBar& r) { r.bar = 0; }), "batch_bar.bar: 1 to 99 is needed"},
    Spoilt{"NoCells", with<BatchBar>([](BatchBar& r) { r.cells = Cells{0}; }), "batch_bar.cells: 1 to 9999 is needed"},
    Spoilt{"AHundredThousandCells", with<BatchBar>([](BatchBar& r) { r.cells = Cells{100000}; }), "batch_bar.cells: 1 to 9999 is needed"},
    Spoilt{"LoadBar", fresh(BatchLoad{id<BatchLoad>(1), 1, test::kBatch, 100, 1, test::kBuilder}), "batch_load.bar: 1 to 99 is needed"},
    Spoilt{"LoadStep", fresh(BatchLoad{id<BatchLoad>(1), 1, test::kBatch, 1, 21, test::kBuilder}), "batch_load.step: 1 to 20 is needed"},
    Spoilt{"ShareNegative", fresh(BatchShare{id<BatchShare>(1), 1, test::kBatch, test::kYard, Cells{-1}}), "batch_yard.cells: 0 to 9999 is needed"},
    Spoilt{"PlacementInNoNuc", fresh(Placement{id<Placement>(1), 1, test::kBatch, {}, CellTarget::Nuc, kDay, {}, false}), "placement.side: a nuc is named when, and only when, the cell goes into one"},
    Spoilt{"PlacementSoldIntoANuc", fresh(Placement{id<Placement>(1), 1, test::kBatch, test::kSideA, CellTarget::Sold, kDay, {}, false}), "placement.side: a nuc is named when, and only when, the cell goes into one"},
    Spoilt{"PlacementSold", fresh(Placement{id<Placement>(1), 1, test::kBatch, {}, CellTarget::Sold, kDay, {}, false}), ""},
    Spoilt{"OutcomeBar", fresh(Outcome{id<Outcome>(1), 1, test::kBatch, 0, {}, OutcomeKind::TakeCount, kDay, {}, Cells{9}, ""}), "outcome.bar: 1 to 99 is needed"},
    Spoilt{"OutcomeCount", fresh(Outcome{id<Outcome>(1), 1, test::kBatch, 1, {}, OutcomeKind::TakeCount, kDay, {}, Cells{-1}, ""}), "outcome.count: 0 to 9999 is needed"},
    Spoilt{"OutcomeOfNone", fresh(Outcome{id<Outcome>(1), 1, test::kBatch, 1, {}, OutcomeKind::TakeCount, kDay, {}, Cells{0}, ""}), ""}), caseName);
// clang-format on

TEST(RowRules, HoldForEveryRowOfTheSmallBook) {
    const auto book = test::smallBook();
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        for (const auto& row : book.all<Row>()) EXPECT_EQ(said(*row), "");
    });
}

TEST(RowRules, HoldForEveryBuiltInMethod) {
    for (const auto& [method, steps] : builtInMethods()) {
        EXPECT_EQ(said(method), "");
        for (const auto& step : steps) EXPECT_EQ(said(step), "") << method.label;
        EXPECT_EQ(steps.front().fromHour, 0) << method.label;
        for (std::size_t i = 1; i < steps.size(); ++i)
            EXPECT_EQ(steps[i].fromHour, steps[i - 1].toHour) << method.label << ": a gap";
    }
}

}  // namespace
}  // namespace tenthday
