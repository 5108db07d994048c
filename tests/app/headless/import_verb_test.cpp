#include <gtest/gtest.h>

#include <QDir>

#include "app/headless/program.h"
#include "exchange/kinds.h"

namespace tenthday::test {
namespace {

class ImportVerb : public ProgramTest {};

TEST_F(ImportVerb, TheWholeExampleGoesThroughFilesIntoAnEmptyBook) {
    const auto example = makeExample();
    const auto copy = makeNew();
    std::vector<std::pair<std::string, std::string>> exported;
    for (const auto kind : exportKinds()) {
        const std::string name(kind);
        if (name == "seasons")  // a new book has one of this year
            import(copy, name, "label,from,until\n2027,2027-04-19,2027-08-29\n");
        else
            exported.emplace_back(name, answer({"export", example, name}));
    }
    // On the example's own day: nothing is delivered ahead of it.
    for (const auto& [name, text] : exported) {
        const auto done =
            runHere({"import", copy, name, write(name + ".csv", text), "--today", "2027-06-03"});
        EXPECT_EQ(done.exit, 0) << name << done.err;
    }
    for (const auto& [name, text] : exported) EXPECT_EQ(answer({"export", copy, name}), text);
    for (const char* day : {"2027-05-20", "2027-06-03", "2027-06-07", "2027-07-01"})
        EXPECT_EQ(answer({"nucs", copy, "--on", day, "--today", "2027-06-03"}),
                  answer({"nucs", example, "--on", day}));
}

TEST_F(ImportVerb, SaysHowMuchWasTakenAndKeepsABackup) {
    const auto book = makeNew();
    const auto csv = write("yards.csv", "label,note\nHeron,\nDike,\n");
    EXPECT_EQ(answer({"import", book, "yards", csv}), "2 rows added, 0 changed\n");
    EXPECT_TRUE(QDir(QString::fromStdString(at("new-backups"))).exists());
    write("yards.csv", "label,note\nHeron,wet\nDike,\n");
    EXPECT_EQ(answer({"import", book, "yards", csv}), "0 rows added, 1 changed\n");
    EXPECT_EQ(answer({"import", book, "yards", csv}), "0 rows added, 0 changed\n");
}

struct BrokenFile {
    const char* name;
    const char* kind;
    std::string text;
    std::string complaint;
};
void PrintTo(const BrokenFile& c, std::ostream* out) { *out << c.name; }
class BrokenFileTest : public ProgramTest, public ::testing::WithParamInterface<BrokenFile> {};

TEST_P(BrokenFileTest, IsNamedByLineAndColumnAndNothingIsTaken) {
    const auto& broken = GetParam();
    const auto book = makeExample();
    write("in.csv", broken.text);
    const auto bytes = bytesOf(book);
    const auto before = files();
    const auto done = runHere({"import", book, broken.kind, "in.csv"});
    EXPECT_EQ(done.exit, 1);
    EXPECT_EQ(done.out, "");
    EXPECT_EQ(done.err, "tenthday: import: in.csv " + broken.complaint + "\n");
    EXPECT_EQ(bytesOf(book), bytes);
    EXPECT_EQ(files(), before);
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Files, BrokenFileTest, ::testing::Values(
    BrokenFile{"Column",      "yards", "label,colour\nHeron,red\n", "line 1, column 'colour': unknown; the columns are id, label, roles, hemisphere, frost_day, drones_out_day, drive_order, note"},
    BrokenFile{"Quote",       "yards", "label,note\nHeron,\"wet\nDike,dry\n", "line 2, column 7: the quote opened here is never closed"},
    BrokenFile{"Encoding",    "yards", "label,note\nHeron,n\xE4he\n", "line 2, column 8: not valid UTF-8"},
    BrokenFile{"Id",          "yards", "id,label\n12,Heron\n", "line 2, column id: no id: '12'"},
    BrokenFile{"LabelTwice",  "yards", "label\nHeron\nHeron\n", "line 3, column label: there twice, first on line 2"},
    BrokenFile{"LastOfMany",  "yards", "label,drive_order\nHeron,1\nDike,2\nReed,last\n", "line 4, column drive_order: a whole number is needed, not 'last'"},
    BrokenFile{"Layout",      "boxes", "label,yard,yard_from,layout,layout_from\nN1,Orchard,2027-05-01,3+3,\nN2,Orchard,2027-05-01,3+x,\n", "line 3, column layout: frames of each side are needed, such as 7 or 3+3: 3+x"},
    BrokenFile{"Reference",   "bars", "batch,bar,cells\n799,1,15\n", "line 2, column batch: no batch '799'"},
    BrokenFile{"CommonYear",  "daysoff", "from,until\n2027-02-29,2027-03-01\n", "line 2, column from: a day of the calendar as YYYY-MM-DD is needed, not '2027-02-29'"},
    BrokenFile{"Larva80",     "batches", "label,day,larva_from_h,larva_to_h\n799,2027-06-20,80,80\n", "line 2, column larva_from_h: 0 to 72 h is needed"},
    BrokenFile{"NoCells",     "bars", "batch,bar,cells\n708,3,0\n", "line 2, column cells: 1 to 9999 is needed"},
    BrokenFile{"ManyCells",   "bars", "batch,bar,cells\n708,3,100000\n", "line 2, column cells: 1 to 9999 is needed"},
    BrokenFile{"Empty",       "facts", "", "line 1, column fact: a header line is needed: fact, value, unit, range, source, override"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST_F(ImportVerb, AFileThatIsNotThereIsNamed) {
    const auto book = makeExample();
    const auto done = runHere({"import", book, "yards", "none.csv"});
    EXPECT_EQ(done.exit, 1);
    EXPECT_EQ(done.err, "tenthday: import: none.csv: there is no such file\n");
}

}  // namespace
}  // namespace tenthday::test
