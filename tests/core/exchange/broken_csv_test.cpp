#include <gtest/gtest.h>

#include <random>
#include <set>

#include "core/exchange/paper_book.h"
#include "exchange/csv.h"
#include "exchange/kinds.h"

namespace tenthday {
namespace {

using test::PaperBook;
using Line = std::vector<std::string>;

/// Two good lines of each kind, all columns filled, in the order of exportKinds().
struct KindSample {
    std::string_view kind;
    Line first;
    Line second;
};

// clang-format off
const std::vector<KindSample>& samples() {
    static const std::vector<KindSample> kSamples{
        {"seasons",      {"", "2026", "2026-04-01", "2026-09-30"}, {"", "2027", "2027-04-01", "2027-09-30"}},
        {"yards",        {"", "Heron", "mating builder", "north", "2027-10-15", "2027-08-25", "1", "wet"},
                         {"", "Dike", "drone", "south", "2027-05-01", "2027-04-01", "2", ""}},
        {"boxes",        {"", "7", "Heron", "2027-05-01", "3+3", "2027-05-01", "n"}, {"", "8", "Dike", "2027-05-01", "7", "2027-05-01", "n"}},
        {"stockings",    {"", "7", "A", "2027-05-10", "9", "300", "1", "yes", "Dike", "n"}, {"", "7", "B", "2027-05-10", "9", "300", "1", "no", "Dike", "n"}},
        {"builders",     {"", "Big", "Heron", "starter_finisher", "24", "40", "2027-04-01", "2027-09-01", "n"},
                         {"", "Small", "Heron", "incubator", "24", "40", "2027-04-01", "2027-09-01", "n"}},
        {"makeups",      {"", "Big", "2027-05-09", "17", "yes", "8000", "4", "Dike", "no"}, {"", "Big", "2027-06-09", "17", "yes", "8000", "4", "Dike", "yes"}},
        {"buildernotes", {"", "Big", "look", "2027-05-15", "9", "no", "all", "", "n"}, {"", "Big", "brood_in", "2027-05-16", "9", "yes", "eggs", "Dike", "n"}},
        {"methods",      {"", "slow", "1", "starter", "0", "48", "1"}, {"", "slow", "2", "finisher", "48", "240", "0"}},
        {"queens",       {"", "Rosa", "2025", "", "Sedge", "2027-04-01", "2027-09-01", "n"}, {"", "Tilla", "2026", "Rosa", "Sedge", "2027-04-01", "2027-09-01", "n"}},
        {"batches",      {"", "701", "graft", "2027-05-10", "14", "12", "24", "one box", "open", "eggs", "n"},
                         {"", "702", "graft", "2027-05-12", "14", "18", "18", "slow", "station", "age", "n"}},
        {"bars",         {"", "701", "1", "Rosa", "15"}, {"", "701", "2", "Tilla", "15"}},
        {"loads",        {"701", "1", "1", "Big"}, {"701", "2", "1", "Small"}},
        {"shares",       {"701", "Heron", "10"}, {"701", "Dike", "10"}},
        {"placements",   {"", "701", "7", "A", "nuc", "2027-05-20", "10", "yes"}, {"", "701", "7", "B", "nuc", "2027-05-20", "10", "no"}},
        {"outcomes",     {"", "701", "1", "7", "A", "first_eggs", "2027-06-04", "10", "0", "n"}, {"", "701", "2", "7", "B", "no_queen", "2027-06-04", "10", "0", "n"}},
        {"orders",       {"", "K-07", "mated", "12", "2027-06-01", "2027-06-20", "Sedge", "yes", "90.0", "1", "n"},
                         {"", "K-08", "ripe_cell", "5", "2027-06-01", "2027-06-21", "Sedge", "no", "75.5", "2", "n"}},
        {"weather",      {"2027-05-01", "18.3", "7.0", "0.4", "3.1", "yes"}, {"2027-05-02", "12.0", "-1.5", "0.0", "6.7", "no"}},
        {"climate",      {"5", "17.4", "9.5"}, {"6", "20.1", "8.0"}},
        {"drones",       {"", "Heron", "2027-05-01", "sealed", "8", "n"}, {"", "Heron", "2027-05-01", "purple_eyes", "8", "n"}},
        {"yardnotes",    {"", "Heron", "flow", "2027-05-01", "2027-05-20", "n"}, {"", "Heron", "dearth", "2027-07-01", "2027-07-20", "n"}},
        {"matings",      {"", "702", "Dike", "2027-05-26", "2027-06-05"}, {"", "702", "Dike", "2027-06-06", "2027-06-09"}},
        {"daysoff",      {"", "2027-05-30", "2027-05-31", "n"}, {"", "2027-06-30", "2027-06-30", "n"}},
        {"owntasks",     {"", "2027-05-30", "Heron", "order cages", "yes"}, {"", "2027-06-30", "Dike", "feed", "no"}},
        {"ticks",        {"", "graft", "01900000-0000-7000-8000-000000000001", "", "0", "2027-05-11"},
                         {"", "take_count", "01900000-0000-7000-8000-000000000001", "", "1", "2027-05-12"}},
        {"facts",        {"accepted", "0.75", "share", "", "", "0.7"}, {"ripe_h", "240", "h", "", "", "236"}}};
    return kSamples;
}
// clang-format on

std::vector<std::string> namesOf(std::string_view kind) {
    std::vector<std::string> names;
    for (const auto& column : columnsOf(kind)) names.emplace_back(column.name);
    return names;
}
/// Loads and shares are written without the id above.
Line padded(std::string_view kind, Line line) {
    if (line.size() < namesOf(kind).size()) line.insert(line.begin(), "");
    return line;
}
std::string joined(const std::vector<Line>& lines) {
    std::string text;
    for (const auto& line : lines) appendCsv(text, line);
    return text;
}

/// A book with the samples of all kinds before `kind`, so that its references hold.
PaperBook bookBefore(std::string_view kind) {
    PaperBook book;
    for (const auto& sample : samples()) {
        if (sample.kind == kind) break;
        EXPECT_EQ(book.import(sample.kind,
                              joined({namesOf(sample.kind), padded(sample.kind, sample.first),
                                      padded(sample.kind, sample.second)})),
                  "")
            << sample.kind;
    }
    return book;
}

class BrokenCsv : public ::testing::TestWithParam<KindSample> {
protected:
    BrokenCsv()
        : kind(GetParam().kind),
          header(namesOf(kind)),
          first(padded(kind, GetParam().first)),
          second(padded(kind, GetParam().second)),
          book(bookBefore(kind)) {}

    std::string import(const std::vector<Line>& lines) { return book.import(kind, joined(lines)); }
    void expectRefused(const std::string& error, const std::string& start) {
        EXPECT_EQ(error.substr(0, start.size()), start) << "the whole: " << error;
        EXPECT_EQ(error.find('\n'), std::string::npos);
    }

    std::string kind;
    Line header;
    Line first;
    Line second;
    PaperBook book;
};
std::ostream& operator<<(std::ostream& out, const KindSample& sample) { return out << sample.kind; }

TEST_P(BrokenCsv, TheGoodFileIsTaken) {
    EXPECT_EQ(import({header, first, second}), "");
    EXPECT_GT(book.changed, 0U);
}

TEST_P(BrokenCsv, ABadValueIsNamedByLineAndColumn) {
    const std::set<std::string> anything{"label", "note", "donor", "donors", "line",
                                         "value", "unit", "range", "source", "text"};
    int tried = 0;
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (anything.contains(header[i])) continue;
        for (const char* bad : {"?", "-5", "2027-02-29", "no such thing", " "}) {
            if (header[i].ends_with("_c") && std::string_view(bad) == "-5") continue;  // frost
            auto broken = second;
            broken[i] = bad;
            expectRefused(import({header, first, broken}), "line 3, column " + header[i] + ": ");
            ++tried;
        }
    }
    EXPECT_GE(tried, 10);
}

TEST_P(BrokenCsv, AnUnknownColumnIsNamed) {
    auto wider = header;
    wider.push_back("colour");
    expectRefused(import({wider}), "line 1, column 'colour': unknown");
    wider.back() = header.back();
    expectRefused(import({wider}), "line 1, column " + header.back() + ": there twice");
}

TEST_P(BrokenCsv, AMissingColumnIsNamed) {
    for (const auto& column : columnsOf(kind)) {
        if (!column.needed) continue;
        auto narrower = header;
        std::erase(narrower, column.name);
        expectRefused(import({narrower}),
                      "line 1, column " + std::string(column.name) + ": missing");
        auto empty = second;
        empty[static_cast<std::size_t>(std::find(header.begin(), header.end(), column.name) -
                                       header.begin())] = "";
        expectRefused(import({header, first, empty}),
                      "line 3, column " + std::string(column.name) + ": a value is needed");
    }
}

TEST_P(BrokenCsv, LinesOfAnotherLengthAreNamed) {
    auto longer = second;
    longer.push_back("x");
    expectRefused(import({header, first, longer}),
                  "line 3, column " + std::to_string(header.size() + 1) + ": one too many");
    auto shorter = second;
    shorter.pop_back();
    expectRefused(import({header, first, shorter}),
                  "line 3, column " + header.back() + ": missing");
}

TEST_P(BrokenCsv, BrokenQuotesAndBytesAreNamed) {
    const auto good = joined({header, first});
    expectRefused(book.import(kind, good + "a\"b\n"), "line 3, column 2: a quote inside");
    expectRefused(book.import(kind, good + "\"ab\n\n"), "line 3, column 1: the quote opened here");
    expectRefused(book.import(kind, good + "\"a\"b\n"), "line 3, column 4: text after");
    expectRefused(book.import(kind, good + "ab\xE4\n"), "line 3, column 3: not valid UTF-8");
    expectRefused(book.import(kind, ""), "line 1, column " + header.front() + ": a header line");
    expectRefused(book.import(kind, "id;label\n"), "line 1, column 'id;label': unknown");
}

TEST_P(BrokenCsv, TheSameIdTwiceIsNamed) {
    if (header.front() != "id" || kind == "methods") return;  // methods: next test
    const std::string id = "01900000-0000-7000-8000-00000000aaaa";
    first.front() = id;
    second.front() = id;
    expectRefused(import({header, first, second}),
                  "line 3, column id: there twice, first on line 2");
    second.front() = "01900000-0000-7000-8000-00000000AAAA";
    expectRefused(import({header, first, second}),
                  "line 3, column id: there twice, first on line 2");
    second.front() = "00000000-0000-0000-0000-000000000000";
    expectRefused(import({header, first, second}), "line 3, column id: no id");
}

TEST_P(BrokenCsv, TheSameRowTwiceIsNamed) {
    if (kind == "boxes") return;  // a box has many lines
    const auto error = import({header, first, first});
    EXPECT_EQ(error.substr(0, 15), "line 3, column ") << error;
    EXPECT_NE(error.find(": there twice, first on line 2"), std::string::npos) << error;
}

INSTANTIATE_TEST_SUITE_P(Kinds, BrokenCsv, ::testing::ValuesIn(samples()),
                         [](const auto& test) { return std::string(test.param.kind); });

TEST(BrokenBoxes, TwoIdsForOneLabelAndTwoLabelsForOneId) {
    auto book = bookBefore("boxes");
    const std::string a = "01900000-0000-7000-8000-00000000aaaa";
    const std::string b = "01900000-0000-7000-8000-00000000bbbb";
    EXPECT_EQ(book.import("boxes", "id,label\n" + a + ",7\n" + b + ",7\n"),
              "line 3, column id: box '7' has another id on line 2");
    EXPECT_EQ(book.import("boxes", "id,label\n" + a + ",7\n" + a + ",8\n"),
              "line 3, column id: there twice, first on line 2");
    EXPECT_EQ(book.import("boxes", "id,label\n" + a + ",7\n"), "");
    EXPECT_EQ(book.import("boxes", "id,label\n" + b + ",7\n"),
              "line 2, column label: '7' is there already, with another id");
}

TEST(BrokenMethods, IdsLabelsAndGaps) {
    auto book = bookBefore("methods");
    const std::string header = "id,label,step,where,from_hour,to_hour\n";
    const std::string a = "01900000-0000-7000-8000-00000000aaaa";
    const std::string b = "01900000-0000-7000-8000-00000000bbbb";
    EXPECT_EQ(
        book.import("methods", header + a + ",x,1,starter,0,24\n" + b + ",x,2,finisher,24,240\n"),
        "line 3, column id: method 'x' has another id on line 2");
    EXPECT_EQ(
        book.import("methods", header + a + ",x,1,starter,0,24\n" + a + ",y,1,finisher,24,240\n"),
        "line 3, column id: there twice, first on line 2");
    EXPECT_EQ(book.import("methods", header + ",x,1,starter,0,24\n,x,3,finisher,24,240\n"),
              "line 3, column step: step 2 is missing");
    EXPECT_EQ(book.import("methods", header + ",x,1,starter,24,24\n"),
              "line 2, column to_hour: after from_hour, 480 at most");
}

TEST(BrokenRows, WhatARowCannotBe) {
    auto book = bookBefore("facts");
    EXPECT_EQ(book.import("batches", "label,day,larva_from_h,larva_to_h\n701,2027-05-10,24,12\n"),
              "line 2, column larva_to_h: the oldest larva is younger than the youngest");
    EXPECT_EQ(book.import("batches", "label,day,larva_to_h\n701,2027-05-10,80\n"),
              "line 2, column larva_to_h: 0 to 72 h is needed");
    EXPECT_EQ(book.import("bars", "batch,bar,cells\n701,1,100000\n"),
              "line 2, column cells: 1 to 9999 is needed");
    EXPECT_EQ(book.import("bars", "batch,bar,cells\n701,1,0\n"),
              "line 2, column cells: 1 to 9999 is needed");
    EXPECT_EQ(book.import("daysoff", "from,until\n2027-05-30,2027-05-29\n"),
              "line 2, column until: ends before it begins");
    EXPECT_EQ(book.import("placements", "batch,box,side,target,day\n701,7,A,sold,2027-05-20\n"),
              "line 2, column side: a nuc is named when, and only when, the cell goes into one");
    EXPECT_EQ(book.import("loads", "batch,bar,step,builder\n701,1,2,Big\n"),
              "line 2, column step: method 'one box' has no step 2");
    EXPECT_EQ(book.import("outcomes", "batch,bar,kind,day\n701,3,sealed,2027-05-15\n"),
              "line 2, column bar: batch '701' has no bar 3");
    EXPECT_EQ(book.import("facts", "fact,override\naccepted,1.5\n"),
              "line 2, column override: out of range");
    EXPECT_EQ(book.import("facts", "fact,value\naccepted,0.5\n"),
              "line 1, column override: missing");
}

/// Good files with a few bytes changed, cut or doubled by chance.
TEST(BrokenByChance, IsTakenOrNamedByLineAndColumn) {
    constexpr std::string_view kBytes = "\",\n\r;x-0\xE4\xFF";
    std::mt19937 random(7);
    std::size_t refused = 0;
    for (const auto& sample : samples()) {
        const auto book = bookBefore(sample.kind);
        const auto good = joined({namesOf(sample.kind), padded(sample.kind, sample.first),
                                  padded(sample.kind, sample.second)});
        for (int round = 0; round < 200; ++round) {
            auto text = good;
            for (auto changes = 1 + random() % 3; changes > 0; --changes) {
                const auto at = random() % text.size();
                const auto how = random() % 3;
                if (how == 0) text[at] = kBytes[random() % kBytes.size()];
                if (how == 1) text.erase(at, 1 + random() % 9);
                if (how == 2) text.insert(at, text.substr(random() % text.size(), random() % 30));
                if (text.empty()) text = ",";
            }
            auto copy = book;
            const auto error = copy.import(sample.kind, text);
            if (error.empty()) continue;
            ++refused;
            EXPECT_EQ(error.substr(0, 5), "line ") << error << "\n" << text;
            EXPECT_NE(error.find(", column "), std::string::npos) << error << "\n" << text;
            EXPECT_EQ(error.find('\n'), std::string::npos) << error;
        }
    }
    EXPECT_GT(refused, 2000U);
}

}  // namespace
}  // namespace tenthday
