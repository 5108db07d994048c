#include "exchange/csv.h"

#include <gtest/gtest.h>

namespace tenthday {
namespace {

using Fields = std::vector<std::vector<std::string>>;

Fields fieldsOf(std::string_view text) {
    const auto records = readCsv(text);
    Fields fields;
    if (!records) return {{"refused: " + records.error().text}};
    for (const auto& record : records.value()) fields.push_back(record.fields);
    return fields;
}

struct GoodCase {
    const char* name;
    std::string_view text;
    Fields fields;
};
void PrintTo(const GoodCase& c, std::ostream* out) { *out << c.name; }
class CsvGood : public ::testing::TestWithParam<GoodCase> {};
TEST_P(CsvGood, ReadsAsRfc4180Says) { EXPECT_EQ(fieldsOf(GetParam().text), GetParam().fields); }

// clang-format off
INSTANTIATE_TEST_SUITE_P(Forms, CsvGood, ::testing::Values(
    GoodCase{"Empty",              "",                          {}},
    GoodCase{"OneLine",            "a,b\n",                     {{"a", "b"}}},
    GoodCase{"NoLastLineEnd",      "a,b\nc,d",                  {{"a", "b"}, {"c", "d"}}},
    GoodCase{"CrLf",               "a,b\r\nc,d\r\n",            {{"a", "b"}, {"c", "d"}}},
    GoodCase{"ByteOrderMark",      "\xEF\xBB\xBF" "a,b\n",      {{"a", "b"}}},
    GoodCase{"EmptyFields",        ",,\n",                      {{"", "", ""}}},
    GoodCase{"BlankLinesSkipped",  "a\n\n\r\nb\n\n",            {{"a"}, {"b"}}},
    GoodCase{"QuotedEmptyIsARow",  "a\n\"\"\n",                 {{"a"}, {""}}},
    GoodCase{"Quoted",             "\"a,b\",c\n",               {{"a,b", "c"}}},
    GoodCase{"DoubledQuote",       "\"say \"\"ten\"\"\"\n",     {{"say \"ten\""}}},
    GoodCase{"LineBreakInQuotes",  "\"a\nb\",c\nd,e\n",         {{"a\nb", "c"}, {"d", "e"}}},
    GoodCase{"CrLfInQuotesKept",   "\"a\r\nb\"\r\n",            {{"a\r\nb"}}},
    GoodCase{"QuotedAtTheEnd",     "a,\"b\"",                   {{"a", "b"}}},
    GoodCase{"SpacesStay",         " a ,b \n",                  {{" a ", "b "}}},
    GoodCase{"Characters",         "K\xC3\xB6nigin,\xF0\x9F\x90\x9D\n", {{"K\xC3\xB6nigin", "\xF0\x9F\x90\x9D"}}}),
    [](const auto& test) { return test.param.name; });
// clang-format on

struct BadCase {
    const char* name;
    std::string_view text;
    std::string error;
};
void PrintTo(const BadCase& c, std::ostream* out) { *out << c.name; }
class CsvBad : public ::testing::TestWithParam<BadCase> {};
TEST_P(CsvBad, NamesLineAndColumn) {
    const auto records = readCsv(GetParam().text);
    ASSERT_FALSE(records.ok());
    EXPECT_EQ(records.error().text, GetParam().error);
}

using namespace std::string_view_literals;
// clang-format off
INSTANTIATE_TEST_SUITE_P(Forms, CsvBad, ::testing::Values(
    BadCase{"QuoteInside",     "a,b\nc,d\"e\n",         "line 2, column 4: a quote inside a field that is not quoted"},
    BadCase{"TextAfterQuote",  "a\n\"b\"c\n",           "line 2, column 4: text after the closing quote"},
    BadCase{"NeverClosed",     "a,b\nc,\"d\ne\nf",      "line 2, column 3: the quote opened here is never closed"},
    BadCase{"AfterLineBreak",  "\"a\nb\"c\n",           "line 2, column 3: text after the closing quote"},
    BadCase{"LoneReturn",      "a\rb\n",                "line 1, column 2: a carriage return without a line feed"},
    BadCase{"ZeroByte",        "a\nb\0c\n"sv,           "line 2, column 2: a zero byte"},
    BadCase{"LatinOne",        "ab\nK\xF6nigin\n",      "line 2, column 2: not valid UTF-8"},
    BadCase{"CutShort",        "\xC3",                  "line 1, column 1: not valid UTF-8"},
    BadCase{"Overlong",        "a\xC0\xAF",             "line 1, column 2: not valid UTF-8"},
    BadCase{"Surrogate",       "\xED\xA0\x80",          "line 1, column 1: not valid UTF-8"},
    BadCase{"TooHigh",         "\xF4\x90\x80\x80",      "line 1, column 1: not valid UTF-8"},
    BadCase{"InQuotes",        "\"\xC3\xA4\xFF\"",      "line 1, column 3: not valid UTF-8"},
    BadCase{"UtfSixteen",      "\xFF\xFE" "a\0b\0"sv,   "line 1, column 1: not valid UTF-8"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST(Csv, LinesOfRecordsCountThoseInsideQuotes) {
    const auto records = readCsv("a\n\"b\nc\"\n\nd\n");
    ASSERT_TRUE(records.ok());
    ASSERT_EQ(records.value().size(), 3U);
    EXPECT_EQ(records.value()[1].line, 2);
    EXPECT_EQ(records.value()[2].line, 5);
}

TEST(Csv, QuotesOnlyWhatNeedsIt) {
    std::string text;
    appendCsv(text, {"plain", "with space", "a,b", "say \"ten\"", "two\nlines", ""});
    appendCsv(text, {""});
    EXPECT_EQ(text, "plain,with space,\"a,b\",\"say \"\"ten\"\"\",\"two\nlines\",\n\"\"\n");
}

TEST(Csv, WhatIsWrittenReadsBack) {
    const Fields rows{{"", "x"},    {"\"", "\"\""}, {"\r", "\r\n"},
                      {"a,", ",a"}, {" ", "\t"},    {"", ""}};
    std::string text;
    for (const auto& row : rows) appendCsv(text, row);
    EXPECT_EQ(fieldsOf(text), rows);
}

}  // namespace
}  // namespace tenthday
