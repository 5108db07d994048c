// Lists for a spreadsheet and back: nothing of a cell is lost, whatever parts the cells.
#include "exchange/spreadsheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "exchange/csv.h"
#include "exchange/kinds.h"
#include "exchange/pasted.h"

namespace tenthday {
namespace {

/// What cells are made of: signs that part, quotes, line ends, letters of several scripts, a mark
/// that opens files, signs outside the first plane.
const std::vector<std::string>& bits() {
    static const std::vector<std::string> all{
        ",", ";",    "\t",      "\"",  "\"\"", "\n", "\r\n", "a",     "Q18",
        " ", "1,5",  "-3.5",    "é",   "ß",    "Ж",  "蜂",   "🐝",     "\xEF\xBB\xBF",
        "'", "=1+1", "e\u0301", "ไทย", "0",    ".",  "yes",  "\u00A0"};
    return all;
}

class CsvFiles {
public:
    explicit CsvFiles(std::uint32_t seed) : random_(seed) {}
    int number(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    std::string cell() {
        std::string text;
        for (int i = number(0, 6); i > 0; --i)
            text +=
                bits()[static_cast<std::size_t>(number(0, static_cast<int>(bits().size()) - 1))];
        return text;
    }
    Listing listing() {
        Listing listing;
        const int columns = number(1, 6);
        for (int c = 0; c < columns; ++c) listing.columns.push_back("c" + std::to_string(c));
        for (int r = number(0, 5); r > 0; --r) {
            listing.rows.emplace_back();
            for (int c = 0; c < columns; ++c) listing.rows.back().push_back(tenthday::cell(cell()));
        }
        return listing;
    }

private:
    std::mt19937 random_;
};

std::vector<std::vector<std::string>> cellsOf(const Listing& listing) {
    std::vector<std::vector<std::string>> all{listing.columns};
    for (const auto& row : listing.rows) {
        all.emplace_back();
        for (const auto& cell : row) all.back().push_back(cell.text);
    }
    return all;
}

std::vector<std::vector<std::string>> read(const std::string& text) {
    const auto records = readCsv(text);
    EXPECT_TRUE(records) << records.error().text << "\n" << text;
    std::vector<std::vector<std::string>> all;
    if (records)
        for (const auto& record : records.value()) all.push_back(record.fields);
    return all;
}

std::vector<std::vector<std::string>> withoutBlank(std::vector<std::vector<std::string>> lines) {
    std::erase_if(lines, [](const auto& line) {
        return std::all_of(line.begin(), line.end(), [](const auto& cell) { return cell.empty(); });
    });
    return lines;
}

TEST(Spreadsheet, TenThousandFilesComeBackToTheByteWithEitherSign) {
    for (std::uint32_t seed = 0; seed < 10000; ++seed) {
        const auto listing = CsvFiles(seed).listing();
        // Told to be parted by semicolons, a list of one column cannot be told from one with
        // commas.
        const auto wanted = cellsOf(listing);
        ASSERT_EQ(read(render(listing, ListingForm::Csv)), wanted) << "seed " << seed;
        for (const bool comma : {true, false}) {
            // Of one column nobody can tell what would part its cells; no kind has one.
            if (comma && listing.columns.size() == 1) continue;
            const auto text = renderForSpreadsheet(listing, "yards", spreadsheetForm(comma));
            EXPECT_EQ(text.substr(0, 3), "\xEF\xBB\xBF");
            ASSERT_EQ(read(plainCsv(text, "yards")), wanted) << "seed " << seed << "\n" << text;
        }
        // Copied and pasted: blank lines are passed over.
        if (listing.columns.size() == 1) continue;
        const auto copied = renderForSpreadsheet(listing, "yards", {'\t', ','});
        const auto pasted = readPasted(plainCsv(copied, "yards"));
        ASSERT_TRUE(pasted) << pasted.error().text;
        ASSERT_EQ(pasted.value().lines, withoutBlank(wanted)) << "seed " << seed << "\n" << copied;
    }
}

TEST(Spreadsheet, DecimalsHaveTheSignOfTheSpreadsheetInTheirColumnsOnly) {
    Listing listing{{"date", "tmax_c", "note"},
                    {{cell("2027-05-01"), decimal(18.3, 1), cell("1.5")}}};
    const auto text = renderForSpreadsheet(listing, "weather", spreadsheetForm(true));
    EXPECT_EQ(text,
              "\xEF\xBB\xBF"
              "date;tmax_c;note\r\n2027-05-01;18,3;1.5\r\n");
    EXPECT_EQ(plainCsv(text, "weather"), "date,tmax_c,note\n2027-05-01,18.3,1.5\n");
    EXPECT_EQ(renderForSpreadsheet(listing, "weather", spreadsheetForm(false)),
              "\xEF\xBB\xBF"
              "date,tmax_c,note\r\n2027-05-01,18.3,1.5\r\n");
}

TEST(Spreadsheet, WhatIsPlainAlreadyStaysToTheByte) {
    const std::string text = "label,note\r\nMill,\"a;b;c\"\r\n";
    EXPECT_EQ(plainCsv(text, "yards"), text);
}

TEST(Spreadsheet, LinesKeepTheirNumbersForErrors) {
    const auto plain =
        plainCsv("date;tmax_c\r\n\r\n2027-05-01;18,3\r\n2027-05-02;warm\r\n", "weather");
    const auto records = readCsv(plain);
    ASSERT_TRUE(records);
    ASSERT_EQ(records.value().size(), 3U);
    EXPECT_EQ(records.value()[2].line, 4);
    EXPECT_EQ(records.value()[2].fields[1], "warm");
}

TEST(Spreadsheet, TabsAreReadToo) {
    EXPECT_EQ(read(plainCsv("label\tnote\nMill\ta,b\n", "yards")),
              (std::vector<std::vector<std::string>>{{"label", "note"}, {"Mill", "a,b"}}));
}

}  // namespace
}  // namespace tenthday
