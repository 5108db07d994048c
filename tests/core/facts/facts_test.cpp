#include "facts/facts.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <set>
#include <string>

namespace tenthday {
namespace {

class FactTable : public ::testing::TestWithParam<std::size_t> {
protected:
    [[nodiscard]] static const FactEntry& entry() { return factsRevision(1)[GetParam()]; }
};

TEST_P(FactTable, RowIsWhole) {
    const auto& row = entry();
    EXPECT_EQ(static_cast<std::size_t>(row.fact), GetParam()) << "a row is missing or doubled";
    EXPECT_FALSE(std::isnan(row.value) || std::isnan(row.low) || std::isnan(row.high));
    EXPECT_LE(row.low, row.value);
    EXPECT_LE(row.value, row.high);
    EXPECT_FALSE(row.source.empty()) << "a number without a source";
    EXPECT_FALSE(row.what.empty());
    const std::set<std::string_view> units{"h",       "d",      "°C",    "share",    "cells",
                                           "workers", "m/s",    "mm",    "colonies", "queens",
                                           "ml",      "rounds", "frames"};
    EXPECT_TRUE(units.contains(row.unit)) << row.unit;
    if (row.unit == "share") {
        EXPECT_GE(row.low, 0);
        EXPECT_LE(row.high, 1);
    }
}

TEST_P(FactTable, DefaultCanBeSetAgain) {
    Facts facts;
    EXPECT_TRUE(facts.set(entry().fact, entry().value));
    EXPECT_FALSE(facts.isOverridden(entry().fact));
}

INSTANTIATE_TEST_SUITE_P(All, FactTable, ::testing::Range<std::size_t>(0, kTokenCount<Fact>),
                         [](const auto& test) {
                             return std::string(token(static_cast<Fact>(test.param)));
                         });

/// A source is named by its keys, or said to be none.
TEST(FactSources, AreKeysOrOneOfThreeHonestWords) {
    for (const auto& entry : factsRevision(1)) {
        std::string rest(entry.source);
        while (!rest.empty()) {
            const auto end = rest.find_first_of(",;");
            std::string part = rest.substr(0, end);
            rest = end == std::string::npos ? "" : rest.substr(end + 1);
            part.erase(0, part.find_first_not_of(' '));
            const bool key = part.size() >= 2 && part[0] == 'S' &&
                             part.find_first_not_of("0123456789", 1) == std::string::npos;
            EXPECT_TRUE(key || part == "common practice" || part == "from memory" ||
                        part == "derived")
                << token(entry.fact) << ": " << part;
        }
    }
}

TEST(Facts, DefaultsAreThoseTheProgramPromises) {
    const Facts facts;
    EXPECT_EQ(facts[Fact::EmergenceH], 384);
    EXPECT_EQ(facts[Fact::EmergenceSdH], 8);
    EXPECT_EQ(facts[Fact::LarvaFromH], 12);
    EXPECT_EQ(facts[Fact::LarvaToH], 24);
    EXPECT_EQ(facts[Fact::ColdDelayH], 27);
    EXPECT_EQ(facts[Fact::WildOldestH], 216);
    EXPECT_EQ(facts[Fact::WildOldH], 240);
    EXPECT_EQ(facts[Fact::WildYoungH], 276);
    EXPECT_EQ(facts[Fact::FirstLookD], 14);
    EXPECT_EQ(facts[Fact::Accepted], 0.75);
}

TEST(Facts, SharesOfFirstFlightsMakeAWhole) {
    const Facts facts;
    EXPECT_NEAR(facts[Fact::FlightShare1] + facts[Fact::FlightShare2] + facts[Fact::FlightShare3],
                1.0, 1e-12);
}

TEST(FactsSet, KeepsTheUsersOwnValue) {
    Facts facts;
    ASSERT_TRUE(facts.set(Fact::EmergenceH, 390));
    EXPECT_EQ(facts[Fact::EmergenceH], 390);
    EXPECT_TRUE(facts.isOverridden(Fact::EmergenceH));
    EXPECT_FALSE(facts.isOverridden(Fact::SealingH));
    EXPECT_NE(facts, Facts());
    EXPECT_EQ(facts.entry(Fact::EmergenceH).value, 384) << "the published value stays";
}

TEST(FactsSet, RefusesNonsenseAndKeepsWhatWas) {
    Facts facts;
    const double huge = std::numeric_limits<double>::infinity();
    for (const double value : {-0.01, 1.01, std::nan(""), huge, -huge})
        EXPECT_FALSE(facts.set(Fact::Accepted, value)) << value;
    for (const double value : {-1.0, 10001.0, std::nan(""), huge})
        EXPECT_FALSE(facts.set(Fact::EmergenceH, value)) << value;
    EXPECT_EQ(facts, Facts());
    const auto refused = facts.set(Fact::Accepted, 75);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text, "fact accepted: a value from 0 to 1 is needed");
}

TEST(FactsSet, TakesTheEndsOfTheRange) {
    Facts facts;
    EXPECT_TRUE(facts.set(Fact::Accepted, 0));
    EXPECT_TRUE(facts.set(Fact::Accepted, 1));
    EXPECT_TRUE(facts.set(Fact::CatchAgeD, 10000));
}

TEST(FactBounds, KeepOutWhatCannotBeReckonedWith) {
    Facts facts;
    for (const double risk : {0.0, 1.0, -0.1, 2.0})
        EXPECT_FALSE(facts.set(Fact::FirstOutRisk, risk).ok()) << risk;
    EXPECT_TRUE(facts.set(Fact::FirstOutRisk, 0.05).ok());
    EXPECT_FALSE(facts.set(Fact::LikelyLevel, 1).ok());
    EXPECT_TRUE(facts.set(Fact::Accepted, 0).ok());
    EXPECT_EQ(facts.set(Fact::FirstOutRisk, 0).error().text,
              "fact first_out_risk: a value from 0.001 to 0.999 is needed");
}

}  // namespace
}  // namespace tenthday
