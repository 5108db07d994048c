#include "calendar/iso_week.h"

#include <gtest/gtest.h>

#include <ctime>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

/// The C library's ISO week and weekday of a calendar day, reckoned without any time zone.
struct CLibrary {
    std::string week;  ///< YYYY-Www
    int weekday;       ///< 1 = Monday
};
CLibrary byCLibrary(const date::year_month_day& ymd) {
    std::tm tm{};
    tm.tm_year = static_cast<int>(ymd.year()) - 1900;
    tm.tm_mon = static_cast<int>(static_cast<unsigned>(ymd.month())) - 1;
    tm.tm_mday = static_cast<int>(static_cast<unsigned>(ymd.day()));
    tm.tm_hour = 12;
    const std::time_t noon = timegm(&tm);  // fills in tm_wday and tm_yday
    gmtime_r(&noon, &tm);
    char week[16];
    std::strftime(week, sizeof week, "%G-W%V", &tm);
    return {week, tm.tm_wday == 0 ? 7 : tm.tm_wday};
}

TEST(IsoWeek, AgreesWithTheCLibraryOnEveryDayFrom1970To2100) {
    int days = 0;
    for (Day d = day("1970-01-01"); d <= day("2100-12-31"); d += Days{1}, ++days) {
        const auto expected = byCLibrary(date::year_month_day{d});
        ASSERT_EQ(toText(isoWeekOf(d)), expected.week) << toText(d);
        ASSERT_EQ(isoWeekday(d), expected.weekday) << toText(d);
        ASSERT_TRUE(daysOf(isoWeekOf(d)).contains(d)) << toText(d);
    }
    EXPECT_EQ(days, 47847);  // 131 years with 32 leap days
}

TEST(IsoWeek, RunsFromMondayToSunday) {
    const auto days = daysOf({2027, 20});
    EXPECT_EQ(days, (DayWindow{day("2027-05-17"), day("2027-05-23")}));
    EXPECT_EQ(isoWeekday(days.first), 1);
    EXPECT_EQ(isoWeekday(days.last), 7);
}

TEST(IsoWeek, BelongsToTheYearOfItsThursday) {
    EXPECT_EQ(isoWeekOf(day("2027-01-01")), (IsoWeek{2026, 53}));
    EXPECT_EQ(isoWeekOf(day("2024-12-30")), (IsoWeek{2025, 1}));
}

TEST(IsoWeekText, ReadsWhatItWrites) {
    for (Day d = day("1999-12-20"); d <= day("2031-01-15"); d += Days{7}) {
        const auto week = isoWeekOf(d);
        EXPECT_EQ(isoWeekFromText(toText(week)), week);
    }
}

TEST(IsoWeekText, Week53OnlyInYearsThatHaveOne) {
    EXPECT_TRUE(isoWeekFromText("2026-W53"));
    EXPECT_FALSE(isoWeekFromText("2027-W53"));
    EXPECT_TRUE(isoWeekFromText("2032-W53"));
}

TEST(IsoWeekText, RefusesAnyOtherForm) {
    for (const char* text :
         {"", "2027-W00", "2027-W54", "2027-20", "2027-w20", "2027W20", "27-W20", "2027-W2",
          "2027-W020", "2027-W20-1", "1899-W20", "2200-W20", "2027-Wxx"})
        EXPECT_FALSE(isoWeekFromText(text)) << text;
}

}  // namespace
}  // namespace tenthday
