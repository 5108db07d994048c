#include "exchange/import.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "core/exchange/paper_book.h"
#include "exchange/kinds.h"

namespace tenthday {
namespace {

using test::PaperBook;

/// Two yards, a box of two sides, a builder, a breeder queen and a batch of two bars.
PaperBook smallBook() {
    PaperBook book;
    EXPECT_EQ(book.import("yards", "label\nHeron\nDike\n"), "");
    EXPECT_EQ(book.import("boxes",
                          "label,yard,yard_from,layout,layout_from\n"
                          "7,Heron,2027-05-01,3+3,2027-05-01\n"
                          "8,Heron,2027-05-01,7,\n"),
              "");
    EXPECT_EQ(
        book.import("builders", "label,yard,kind,from\nBig,Dike,starter_finisher,2027-04-01\n"),
        "");
    EXPECT_EQ(book.import("queens", "label,line\nRosa,Sedge\n"), "");
    EXPECT_EQ(book.import("batches", "label,day\n701,2027-05-10\n"), "");
    EXPECT_EQ(book.import("bars", "batch,bar,breeder,cells\n701,1,Rosa,15\n701,2,,10\n"), "");
    return book;
}

TEST(Import, EmptyFieldsTakeTheContractsDefaults) {
    const auto book = smallBook();
    const auto yard = findByLabel<Yard>(book.snapshot(), "Heron");
    ASSERT_TRUE(yard);
    EXPECT_EQ(yard->hemisphere, Hemisphere::North);
    const auto batch = findByLabel<Batch>(book.snapshot(), "701");
    ASSERT_TRUE(batch);
    EXPECT_EQ(batch->start, Start::Graft);
    EXPECT_EQ(book.snapshot().find(batch->method)->label, "one box");
    EXPECT_EQ(batch->mating, Mating::Open);
    EXPECT_FALSE(batch->hour);
    EXPECT_FALSE(batch->catchRule);
}

TEST(Import, BuiltInMethodsAreThereByLabel) {
    auto book = smallBook();
    for (const char* label : {"one box", "starter and finisher", "one box and incubator"})
        EXPECT_EQ(
            book.import("batches", std::string("label,day,method\n702,2027-05-11,") + label + "\n"),
            "");
    EXPECT_EQ(book.import("batches",
                          "label,day,method\n"
                          "702,2027-05-11,\"starter, finisher and incubator\"\n"),
              "");
    EXPECT_EQ(book.snapshot().find(findByLabel<Batch>(book.snapshot(), "702")->method)->label,
              "starter, finisher and incubator");
}

TEST(Import, ALineWithoutIdUpdatesTheRowOfItsLabel) {
    auto book = smallBook();
    const auto before = findByLabel<Yard>(book.snapshot(), "Heron");
    EXPECT_EQ(book.import("yards", "note,label\nwet,Heron\n"), "");
    const auto after = findByLabel<Yard>(book.snapshot(), "Heron");
    EXPECT_EQ(after->id, before->id);
    EXPECT_EQ(after->note, "wet");
    EXPECT_EQ(after->version, before->version + 1);
    EXPECT_EQ(book.snapshot().all<Yard>().size(), 2U);
}

TEST(Import, AColumnLeftOutKeepsTheValueAnEmptyFieldTakesItAway) {
    auto book = smallBook();
    EXPECT_EQ(book.import("yards", "label,frost_day,note\nHeron,2027-10-15,wet\n"), "");
    EXPECT_EQ(book.import("yards", "label,note\nHeron,dry\n"), "");
    EXPECT_TRUE(findByLabel<Yard>(book.snapshot(), "Heron")->frostDay);
    EXPECT_EQ(book.import("yards", "label,frost_day,note\nHeron,,\n"), "");
    EXPECT_FALSE(findByLabel<Yard>(book.snapshot(), "Heron")->frostDay);
    EXPECT_EQ(findByLabel<Yard>(book.snapshot(), "Heron")->note, "");
}

TEST(Import, AnIdRenamesARowAndKeepsANewOne) {
    auto book = smallBook();
    const auto id = toText(findByLabel<Yard>(book.snapshot(), "Heron")->id.uuid);
    EXPECT_EQ(book.import("yards", "id,label\n" + id +
                                       ",Reed\n"
                                       "01900000-0000-7000-8000-0000000000ff,Heron\n"),
              "");
    EXPECT_EQ(toText(findByLabel<Yard>(book.snapshot(), "Reed")->id.uuid), id);
    EXPECT_EQ(toText(findByLabel<Yard>(book.snapshot(), "Heron")->id.uuid),
              "01900000-0000-7000-8000-0000000000ff");
}

TEST(Import, LabelsCanBeSwappedByIds) {
    auto book = smallBook();
    const auto heron = toText(findByLabel<Yard>(book.snapshot(), "Heron")->id.uuid);
    const auto dike = toText(findByLabel<Yard>(book.snapshot(), "Dike")->id.uuid);
    EXPECT_EQ(book.import("yards", "id,label\n" + heron + ",Dike\n" + dike + ",Heron\n"), "");
    EXPECT_EQ(toText(findByLabel<Yard>(book.snapshot(), "Heron")->id.uuid), dike);
}

TEST(Import, ReferencesGoByLabelOrId) {
    auto book = smallBook();
    const auto id = toText(findByLabel<Yard>(book.snapshot(), "Heron")->id.uuid);
    EXPECT_EQ(
        book.import("builders", "label,yard,kind,from\nSmall," + id + ",starter,2027-05-01\n"), "");
    EXPECT_EQ(book.bareText("builders"),
              "label,yard,kind,open_room,sealed_room,from,until,note\n"
              "Big,Dike,starter_finisher,,,2027-04-01,,\n"
              "Small,Heron,starter,,,2027-05-01,,\n");
}

TEST(Import, AQueenMayComeBeforeHerMotherAndMakeHerLine) {
    auto book = smallBook();
    EXPECT_EQ(book.import("queens", "label,mother,line\nDaughter,Mother,Fen\nMother,Rosa,Fen\n"),
              "");
    EXPECT_EQ(book.bareText("queens"),
              "label,year,mother,line,breeder_from,breeder_until,note\n"
              "Daughter,,Mother,Fen,,,\nMother,,Rosa,Fen,,,\nRosa,,,Sedge,,,\n");
    EXPECT_EQ(book.snapshot().all<Line>().size(), 2U);
}

TEST(Import, TheSameFileTwiceChangesNothing) {
    auto book = smallBook();
    const std::pair<const char*, const char*> files[] = {
        {"stockings", "box,side,day,bees_ml\n7,A,2027-05-14,300\n8,-,2027-05-14,\n"},
        {"makeups", "builder,day,hour,open_brood\nBig,2027-05-09,17,yes\n"},
        {"buildernotes", "builder,kind,day\nBig,look,2027-05-15\n"},
        {"loads", "batch,bar,step,builder\n701,1,1,Big\n701,2,1,Big\n"},
        {"shares", "batch,yard,cells\n701,Heron,12\n"},
        {"placements", "batch,box,side,day,done\n701,7,A,2027-05-20,yes\n"},
        {"outcomes", "batch,bar,kind,day,count\n701,1,take_count,2027-05-11,9\n"},
        {"climate", "month,tmax_c,rain_days\n5,17.4,9.5\n"},
        {"drones", "yard,day,stage\nHeron,2027-05-01,sealed\n"},
        {"yardnotes", "yard,kind,from,until\nHeron,flow,2027-05-01,2027-05-20\n"},
        {"matings", "batch,yard,from,until\n701,Dike,2027-05-26,2027-06-05\n"},
        {"daysoff", "from,until\n2027-05-30,2027-05-30\n"},
        {"owntasks", "day,yard,text\n2027-05-30,Heron,order cages\n"},
        {"ticks", "rule,subject,day\ngraft,01900000-0000-7000-8000-000000000001,2027-05-30\n"}};
    for (const auto& [kind, text] : files) {
        EXPECT_EQ(book.import(kind, text), "") << kind;
        EXPECT_GT(book.changed, 0U) << kind;
        EXPECT_EQ(book.import(kind, text), "") << kind;
        EXPECT_EQ(book.changed, 0U) << kind;
    }
}

/// vega-datasets (NOAA): see tests/core/weather/data/readme.txt. Its last column is in words.
TEST(Import, AnOpenWeatherRecordIsTakenAsItIs) {
    std::ifstream file(TENTHDAY_SOURCE_DIR "/tests/core/weather/data/seattle-weather.csv");
    std::ostringstream text;
    text << file.rdbuf();
    PaperBook book;
    EXPECT_EQ(book.import("weather", text.str()), "");
    EXPECT_EQ(book.snapshot().all<WeatherDay>().size(), 1461U);
    EXPECT_EQ(book.import("yards", "label,weather\nHeron,fine\n"),
              "line 1, column 'weather': unknown; the columns are id, label, roles, hemisphere, "
              "frost_day, drones_out_day, drive_order, note");
}

TEST(Import, SoldCellsMayBeAlikeAndAreCountedOneALine) {
    auto book = smallBook();
    EXPECT_EQ(
        book.import("placements", "batch,target,day\n701,sold,2027-05-20\n701,sold,2027-05-20\n"),
        "");
    EXPECT_EQ(book.snapshot().all<Placement>().size(), 2U);
}

TEST(Import, ABarIsTakenByBatchAndNumber) {
    auto book = smallBook();
    EXPECT_EQ(book.import("bars", "batch,bar,cells\n701,2,12\n"), "");
    EXPECT_EQ(book.bareText("bars"), "batch,bar,breeder,cells\n701,1,Rosa,15\n701,2,,12\n");
}

TEST(Import, FactsReadTheOverrideOnly) {
    auto book = smallBook();
    EXPECT_EQ(book.import("facts", "fact,value,override\naccepted,0.1,0.6\nripe_h,1,\n"), "");
    EXPECT_EQ(book.snapshot().facts()[Fact::Accepted], 0.6);
    EXPECT_EQ(book.snapshot().facts()[Fact::RipeH], 240);
    EXPECT_NE(book.text("facts").find("accepted,0.75,share,0.1..0.95,\"S19, S82, S83\",0.6\n"),
              std::string::npos);
    EXPECT_NE(book.text("facts").find("ripe_h,240,h,216..264,\"S11, S22\",\n"), std::string::npos);
    EXPECT_EQ(book.import("facts", "fact,override\naccepted,\n"), "");
    EXPECT_EQ(book.snapshot().facts()[Fact::Accepted], 0.75);
}

TEST(ImportMethods, ALinePerStep) {
    auto book = smallBook();
    EXPECT_EQ(book.import("methods",
                          "label,step,where,from_hour,to_hour,rest_days\n"
                          "slow,2,finisher,48,240,\nslow,1,starter,0,48,2\n"),
              "");
    EXPECT_NE(book.bareText("methods").find("slow,1,starter,0,48,2\nslow,2,finisher,48,240,0\n"),
              std::string::npos);
    EXPECT_EQ(book.import("methods", "label,step,where,from_hour,to_hour\nslow,1,starter,0,36\n"),
              "");
    EXPECT_NE(book.bareText("methods").find("slow,1,starter,0,36,2\n"), std::string::npos);
}

TEST(ImportMethods, AMethodInUseIsNotChanged) {
    auto book = smallBook();
    EXPECT_EQ(book.import("methods",
                          "label,step,where,from_hour,to_hour,rest_days\n"
                          "one box,1,starter_finisher,0,239,1\n"),
              "line 2, column step: batch '701' uses this method: give a changed one a new label");
    EXPECT_EQ(book.import("methods", book.text("methods")), "");
    EXPECT_EQ(book.changed, 0U);
}

TEST(Import, EveryKindTakesItsOwnEmptyExport) {
    PaperBook book;
    for (const auto kind : exportKinds()) {
        EXPECT_EQ(book.import(kind, book.text(kind)), "") << kind;
        EXPECT_EQ(book.changed, 0U) << kind;
    }
}

}  // namespace
}  // namespace tenthday
