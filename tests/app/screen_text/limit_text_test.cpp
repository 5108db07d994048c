// Why a first or last graft is that day, in the window's words.
#include "screen_text/limit_text.h"

#include <gtest/gtest.h>

#include <QLocale>

#include "support/season_maker.h"

namespace tenthday::test {
namespace {

class LimitWords : public ::testing::Test {
protected:
    LimitWords() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
    ~LimitWords() override { QLocale::setDefault(QLocale::c()); }

    static SeasonLimit limit(Limit which, const char* graft, const char* cause = nullptr,
                             int days = 0) {
        SeasonLimit made;
        made.limit = which;
        made.day = day(graft);
        if (cause) {
            made.cause = day(cause);
            Yard yard;
            yard.label = "Heath";
            made.yard = std::make_shared<const Yard>(yard);
        }
        made.days = days;
        return made;
    }
    static std::string words(const SeasonLimit& of) { return limit_text::reason(of).toStdString(); }
};

TEST_F(LimitWords, TellEachLimit) {
    EXPECT_EQ(words(limit(Limit::DronesReady, "2027-04-26", "2027-05-14", 18)).substr(0, 39),
              "drones are mature from 14 May in Heath;");
    EXPECT_EQ(words(limit(Limit::FlyingWeatherFrom, "2027-04-20")),
              "the first graft whose virgins find flying weather in time");
    EXPECT_EQ(words(limit(Limit::DronesOut, "2027-08-01", "2027-08-25", 24)).substr(0, 51),
              "drones are thrown out about 25 Aug in Heath; queens");
    EXPECT_EQ(words(limit(Limit::FlyingWeatherUntil, "2027-08-20")),
              "the last graft whose virgins find flying weather in time");
    EXPECT_EQ(
        words(limit(Limit::WinterBeesTwoRounds, "2027-08-08", "2027-10-15", 68)).substr(0, 52),
        "hard frost about 15 Oct in Heath; two rounds of her ");
    EXPECT_EQ(words(limit(Limit::WinterBeesOneRound, "2027-08-29", "2027-10-15", 47)).substr(0, 50),
              "hard frost about 15 Oct in Heath; one round of her");
}

TEST_F(LimitWords, SayWhatIsNotKnown) {
    for (std::size_t i = 0; i < kTokenCount<Limit>; ++i) {
        SeasonLimit none;
        none.limit = static_cast<Limit>(i);
        EXPECT_TRUE(words(none).starts_with("not known: ")) << i;
    }
}

TEST_F(LimitWords, OfADayNameTheGraftThatBinds) {
    SeasonLimits limits;
    for (std::size_t i = 0; i < kTokenCount<Limit>; ++i)
        limits.all.push_back({static_cast<Limit>(i), {}, false, {}, 0, {}});
    limits.all[0] = limit(Limit::DronesReady, "2027-04-26", "2027-05-14", 18);
    limits.all[4] = limit(Limit::WinterBeesTwoRounds, "2027-08-08", "2027-10-15", 68);
    limits.all[5] = limit(Limit::WinterBeesOneRound, "2027-08-29", "2027-10-15", 47);
    limits.all[0].binds = limits.all[4].binds = true;
    const auto before = limit_text::outside(limits, day("2027-04-25"));
    EXPECT_EQ(before.title.toStdString(), "Sun 25 Apr: before the first graft");
    ASSERT_EQ(before.lines.size(), 1U);
    EXPECT_EQ(before.lines[0].value.toStdString(), "Mon 26 Apr");
    const auto after = limit_text::outside(limits, day("2027-08-09"));
    ASSERT_EQ(after.lines.size(), 1U);
    EXPECT_EQ(after.lines[0].name.toStdString(), "last graft");
    EXPECT_EQ(after.lines[0].value.toStdString(), "Sun 8 Aug");
    EXPECT_EQ(after.lines[0].because, limit_text::reason(limits.all[4]));
    EXPECT_TRUE(limit_text::outside(limits, day("2027-04-26")).lines.empty());
    EXPECT_TRUE(limit_text::outside(limits, day("2027-08-08")).lines.empty());
}

}  // namespace
}  // namespace tenthday::test
