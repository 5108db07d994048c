#include <gtest/gtest.h>

#include "core/exchange/paper_book.h"
#include "core/exchange/random_season.h"
#include "exchange/kinds.h"

namespace tenthday {
namespace {

using test::PaperBook;

std::map<std::string, std::string> allText(const PaperBook& book) {
    std::map<std::string, std::string> text;
    for (const auto kind : exportKinds()) text[std::string(kind)] = book.text(kind);
    return text;
}
PaperBook random(std::uint32_t seed) {
    PaperBook book;
    book.setSnapshot(test::randomSeason(seed));
    return book;
}

constexpr std::uint32_t kSeasons = 200;

TEST(RoundTrip, ExportIntoAnEmptyBookExportsTheSameText) {
    std::map<std::string, std::size_t> lines;
    for (std::uint32_t seed = 1; seed <= kSeasons; ++seed) {
        const auto before = allText(random(seed));
        PaperBook copy;
        for (const auto kind : exportKinds())
            ASSERT_EQ(copy.import(kind, before.at(std::string(kind))), "")
                << kind << ", seed " << seed << "\n"
                << before.at(std::string(kind));
        ASSERT_EQ(allText(copy), before) << "seed " << seed;
        for (const auto& [kind, text] : before)
            lines[kind] += static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
    }
    for (const auto& [kind, count] : lines) EXPECT_GT(count, 2 * kSeasons - 1) << kind;
}

TEST(RoundTrip, ImportingTheOwnExportChangesNothing) {
    for (std::uint32_t seed = 1; seed <= kSeasons; ++seed) {
        auto book = random(seed);
        for (const auto kind : exportKinds()) {
            ASSERT_EQ(book.import(kind, book.text(kind)), "") << kind << ", seed " << seed;
            ASSERT_EQ(book.changed, 0U) << kind << ", seed " << seed << "\n" << book.text(kind);
        }
    }
}

TEST(RoundTrip, WithoutIdsTheRowsAreTheSameButForTheirIds) {
    for (std::uint32_t seed = 1; seed <= kSeasons; ++seed) {
        const auto book = random(seed);
        PaperBook copy;
        for (const auto kind : exportKinds()) {
            if (kind == "facts") continue;  // have no ids
            ASSERT_EQ(copy.import(kind, book.bareText(kind)), "") << kind << ", seed " << seed;
            ASSERT_EQ(copy.bareText(kind), book.bareText(kind)) << kind << ", seed " << seed;
        }
    }
}

}  // namespace
}  // namespace tenthday
