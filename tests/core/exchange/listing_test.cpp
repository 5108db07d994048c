#include "exchange/listing.h"
#include "base/natural_order.h"

#include <gtest/gtest.h>

#include "exchange/field_text.h"

namespace tenthday {
namespace {

Listing sample() {
    return {{"yard", "ready", "note"},
            {{cell("Heron"), cell(7), cell("two\nlines, \"so\"")},
             {cell("B\xC3\xB6rd"), cell(12), ListingCell{}}}};
}

TEST(Listing, Csv) {
    EXPECT_EQ(render(sample(), ListingForm::Csv),
              "yard,ready,note\nHeron,7,\"two\nlines, \"\"so\"\"\"\nB\xC3\xB6rd,12,\n");
}

TEST(Listing, JsonIsAnArrayOfObjects) {
    EXPECT_EQ(render(sample(), ListingForm::Json),
              "[\n"
              "  {\"yard\": \"Heron\", \"ready\": 7, \"note\": \"two\\nlines, \\\"so\\\"\"},\n"
              "  {\"yard\": \"B\xC3\xB6rd\", \"ready\": 12, \"note\": null}\n"
              "]\n");
    EXPECT_EQ(render({{"a"}, {}}, ListingForm::Json), "[]\n");
    EXPECT_EQ(render({{"a"}, {{cell("\x01\\\t\r")}}}, ListingForm::Json),
              "[\n  {\"a\": \"\\u0001\\\\\\t\\r\"}\n]\n");
}

TEST(Listing, TableForPeopleIsPaddedByCharacters) {
    EXPECT_EQ(render(sample(), ListingForm::Table),
              "yard   ready  note\n"
              "-----  -----  ---------------\n"
              "Heron      7  two lines, \"so\"\n"
              "B\xC3\xB6rd      12\n");
}

TEST(Listing, DecimalsRoundHalfUp) {
    EXPECT_EQ(decimal(71.25, 1).text, "71.3");
    EXPECT_EQ(decimal(0.35, 1).text, "0.4");
    EXPECT_EQ(decimal(-0.04, 1).text, "0.0");
    EXPECT_EQ(decimal(5, 1).text, "5.0");
    EXPECT_EQ(decimal(-2.25, 1).text, "-2.3");
}

TEST(Listing, ShortestNumbersAreNeverInPowers) {
    EXPECT_EQ(shortest(10000).text, "10000");
    EXPECT_EQ(shortest(0.0005).text, "0.0005");
    EXPECT_EQ(shortest(34.5).text, "34.5");
}

TEST(NaturalOrder, RunsOfDigitsAreNumbers) {
    EXPECT_TRUE(naturalLess("2", "10"));
    EXPECT_TRUE(naturalLess("box 9 B", "box 10 A"));
    EXPECT_TRUE(naturalLess("", "a"));
    EXPECT_TRUE(naturalLess("a", "a1"));
    EXPECT_FALSE(naturalLess("10", "2"));
    EXPECT_FALSE(naturalLess("x", "x"));
    EXPECT_TRUE(naturalLess("01", "1") != naturalLess("1", "01"));
}

TEST(Thousandths, ThreeDecimalsAtMost) {
    std::int32_t value = 0;
    EXPECT_FALSE(readThousandths("34.5", value));
    EXPECT_EQ(value, 34500);
    EXPECT_FALSE(readThousandths("0.001", value));
    EXPECT_EQ(value, 1);
    EXPECT_FALSE(readThousandths("7", value));
    EXPECT_EQ(value, 7000);
    for (const char* bad : {"", ".", "1.", "0.0005", "-1", "+1", "1e3", "1,5", " 1", "9999999"})
        EXPECT_TRUE(readThousandths(bad, value)) << bad;
}

}  // namespace
}  // namespace tenthday
