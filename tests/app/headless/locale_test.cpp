/// The same bytes in every language and time zone.
#include <gtest/gtest.h>
#include <locale.h>

#include <QFile>

#include "app/headless/program.h"

namespace tenthday::test {
namespace {

struct Surroundings {
    const char* name;
    const char* locale;
    const char* zone;
};
void PrintTo(const Surroundings& c, std::ostream* out) { *out << c.name; }
class SameBytes : public ProgramTest, public ::testing::WithParamInterface<Surroundings> {};

bool isInstalled(const char* name) {
    const locale_t made = newlocale(LC_ALL_MASK, name, nullptr);
    if (made == nullptr) return false;
    freelocale(made);
    return true;
}

TEST_P(SameBytes, OfEveryListing) {
    const auto& [name, language, zone] = GetParam();
    ASSERT_TRUE(isInstalled(language)) << language << " is missing: tests/run makes it";
    ASSERT_TRUE(QFile::exists(QStringLiteral("/usr/share/zoneinfo/") + QString::fromLatin1(zone)));
    const auto book = makeExample();
    const std::vector<std::vector<std::string>> calls{
        {"dates", "--graft", "2027-03-27T23:30"},
        {"dates", "--graft", "2027-09-04T00:00", "--incubator", "33.2", "--json"},
        {"nucs", book, "--on", "2027-06-07"},
        {"nucs", book, "--on", "2027-06-07", "--totals"},
        {"nucs", book, "--on", "2027-06-07", "--totals", "--json"},
        {"findings", book},
        {"check", book},
        {"export", book, "boxes"},
        {"export", book, "outcomes"},
        {"export", book, "facts"},
        {"nucs", book, "--on", "2027-02-29"},
        {"frobnicate"}};
    for (const auto& words : calls) {
        const auto plain = run(words, {{"LC_ALL", "C"}, {"TZ", "UTC"}});
        const auto there = run(words, {{"LC_ALL", language}, {"LANGUAGE", language}, {"TZ", zone}});
        EXPECT_EQ(there.exit, plain.exit) << words.front();
        EXPECT_EQ(there.out, plain.out) << words.front();
        EXPECT_EQ(there.err, plain.err) << words.front();
        EXPECT_NE(plain.out + plain.err, "") << words.front();
    }
}

INSTANTIATE_TEST_SUITE_P(
    Places, SameBytes,
    ::testing::Values(Surroundings{"German", "de_DE.UTF-8", "Europe/Berlin"},
                      Surroundings{"Arabic", "ar_EG.UTF-8", "Africa/Cairo"},
                      Surroundings{"Thai", "th_TH.UTF-8", "Asia/Bangkok"},
                      Surroundings{"Persian", "fa_IR.UTF-8", "Asia/Tehran"},
                      Surroundings{"Turkish", "tr_TR.UTF-8", "Europe/Istanbul"},
                      Surroundings{"Santiago", "de_DE.UTF-8", "America/Santiago"},
                      Surroundings{"Apia", "C.UTF-8", "Pacific/Apia"}),
    [](const auto& test) { return test.param.name; });

}  // namespace
}  // namespace tenthday::test
