#include "facts/sources.h"

#include <gtest/gtest.h>

#include <cctype>

#include "facts/facts.h"

namespace tenthday {
namespace {

TEST(Sources, EveryKeyOfTheFactsStandsForAPublication) {
    for (const auto& entry : factsRevision(kNewestFactsRevision)) {
        const auto lines = sourceLines(entry.source);
        EXPECT_FALSE(lines.empty()) << token(entry.fact);
        for (const auto& line : lines) {
            const bool isKey = line.size() > 1 && line[0] == 'S' &&
                               std::isdigit(static_cast<unsigned char>(line[1]));
            EXPECT_EQ(isKey,
                      line != "common practice" && line != "from memory" && line != "derived")
                << line;
            EXPECT_TRUE(!isKey || line.size() > 10U) << line;
        }
    }
}

TEST(Sources, AreALineEach) {
    EXPECT_EQ(sourceLines("S79; common practice"),
              (std::vector<std::string>{"S79 Vermont diary 2017", "common practice"}));
    EXPECT_TRUE(sourceLines("").empty());
}

}  // namespace
}  // namespace tenthday
