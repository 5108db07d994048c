/// Ticks of flights and the months' usual weather, as edits.
#include "records/weather_verbs.h"

#include <gtest/gtest.h>

#include "core/exchange/paper_book.h"
#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

class WeatherVerbs : public ::testing::Test {
protected:
    std::size_t say(const char* on, std::optional<bool> flew) {
        const auto changes = recordFlew(book_.snapshot(), day(on), flew, {book_.next()});
        book_.setSnapshot(applied(book_.snapshot(), changes).value());
        return changes.rows.size();
    }
    std::string month(int month, std::optional<Tenths> tmaxC, std::optional<Tenths> rain) {
        const auto changes = setClimateMonth(book_.snapshot(), month, tmaxC, rain, {book_.next()});
        if (!changes) return changes.error().text;
        book_.setSnapshot(applied(book_.snapshot(), changes.value()).value());
        return "";
    }
    test::PaperBook book_;
};

TEST_F(WeatherVerbs, ATickComesAndGoesWithItsRow) {
    ASSERT_EQ(book_.import("weather", "date,tmax_c\n2027-06-01,17\n"), "");
    EXPECT_EQ(say("2027-06-01", true), 1U);
    EXPECT_EQ(say("2027-06-01", true), 0U) << "said already";
    EXPECT_EQ(say("2027-06-02", false), 1U);
    EXPECT_EQ(book_.text("weather"),
              "date,tmax_c,tmin_c,rain_mm,wind_ms,flew\n"
              "2027-06-01,17.0,,,,yes\n2027-06-02,,,,,no\n");
    EXPECT_EQ(say("2027-06-01", std::nullopt), 1U);
    EXPECT_EQ(say("2027-06-02", std::nullopt), 1U);
    EXPECT_EQ(say("2027-06-03", std::nullopt), 0U);
    EXPECT_EQ(book_.text("weather"),
              "date,tmax_c,tmin_c,rain_mm,wind_ms,flew\n2027-06-01,17.0,,,,\n");
}

TEST_F(WeatherVerbs, AMonthIsItsMaximumAndItsRainDays) {
    EXPECT_NE(month(5, std::nullopt, Tenths{120}), "");
    EXPECT_EQ(month(5, Tenths{165}, std::nullopt), "");
    EXPECT_EQ(month(5, Tenths{165}, Tenths{120}), "");
    EXPECT_EQ(month(6, Tenths{-12}, std::nullopt), "");
    EXPECT_EQ(book_.text("climate"), "month,tmax_c,rain_days\n5,16.5,12.0\n6,-1.2,\n");
    EXPECT_NE(month(5, Tenths{165}, Tenths{320}), "");
    EXPECT_NE(month(5, Tenths{700}, std::nullopt), "");
    EXPECT_EQ(month(5, std::nullopt, std::nullopt), "");
    EXPECT_EQ(book_.text("climate"), "month,tmax_c,rain_days\n6,-1.2,\n");
}

}  // namespace
}  // namespace tenthday
