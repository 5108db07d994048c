#include "headless/arguments.h"

#include <gtest/gtest.h>

#include "headless/headless.h"

namespace tenthday {
namespace {

const CallForm kForm{{"BOOK"}, {{"--on"}, {"--totals", false}, {"--set", true, true}}};

std::string errorOf(const std::vector<std::string>& words) {
    const auto read = Arguments::read(words, kForm);
    return read ? "" : read.error().text;
}

TEST(Arguments, OptionsStandAnywhereInEitherForm) {
    const auto read = Arguments::read(
        {"--set", "a=1", "book", "--on=2027-06-01", "--totals", "--set=b=2"}, kForm);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read.value().operand(0), "book");
    EXPECT_EQ(read.value().value("--on"), "2027-06-01");
    EXPECT_TRUE(read.value().has("--totals"));
    EXPECT_EQ(read.value().values("--set"), (std::vector<std::string>{"a=1", "b=2"}));
}

TEST(Arguments, TwoDashesEndTheOptions) {
    const auto read = Arguments::read({"--", "--on"}, kForm);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read.value().operand(0), "--on");
    EXPECT_FALSE(read.value().has("--on"));
}

TEST(Arguments, WhatIsWrongIsNamed) {
    EXPECT_EQ(errorOf({}), "BOOK is missing");
    EXPECT_EQ(errorOf({"a", "b"}), "one argument too many: 'b'");
    EXPECT_EQ(errorOf({"a", "--off"}), "unknown option '--off'");
    EXPECT_EQ(errorOf({"a", "-o"}), "unknown option '-o'");
    EXPECT_EQ(errorOf({"a", "--on"}), "option --on: a value is needed");
    EXPECT_EQ(errorOf({"a", "--on", "--totals"}), "option --on: a value is needed");
    EXPECT_EQ(errorOf({"a", "--on", "1", "--on", "2"}), "option --on: given twice");
    EXPECT_EQ(errorOf({"a", "--totals=yes"}), "option --totals: takes no value");
}

TEST(IsHeadless, AVerbOrAMistakenOneIsABookIsNot) {
    EXPECT_TRUE(isHeadless({"nucs"}));
    EXPECT_TRUE(isHeadless({"--today", "2027-06-01", "findings", "x"}));
    EXPECT_TRUE(isHeadless({"frobnicate"}));
    EXPECT_TRUE(isHeadless({"x.tenthday", "nucs"}));
    EXPECT_TRUE(isHeadless({"--help"}));
    EXPECT_TRUE(isHeadless({"--csv"}));
    EXPECT_FALSE(isHeadless({}));
    EXPECT_FALSE(isHeadless({"x.tenthday"}));
    EXPECT_FALSE(isHeadless({"folder/book"}));
    EXPECT_FALSE(isHeadless({"--today", "2027-06-01"}));
    EXPECT_FALSE(isHeadless({"--today", "2027-06-01", "x.tenthday"}));
    EXPECT_FALSE(isHeadless({TENTHDAY_PROGRAM}));  // a file that is there
}

}  // namespace
}  // namespace tenthday
