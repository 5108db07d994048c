/// Daily records of others: by their columns, in their units, with their troubles.
#include "exchange/weather_file.h"

#include <gtest/gtest.h>

#include <cstdio>

#include "core/exchange/paper_book.h"
#include "core/weather/seattle.h"

namespace tenthday {
namespace {

using test::day;

std::string seattleText() {
    std::ostringstream text;
    text << std::ifstream(test::seattleFile()).rdbuf();
    return text.str();
}

WeatherFile read(std::string_view text, const WeatherUnits& units = {}) {
    return readWeatherFile(text, units).value();
}

/// "3 bad_number tmax 'x'", a line each.
std::vector<std::string> troublesOf(const WeatherFile& file) {
    std::vector<std::string> lines;
    for (const auto& t : file.troubles) {
        auto line = std::to_string(t.line) + ' ' + std::string(token(t.kind));
        line += t.days ? ' ' + toText(t.days->first) + ' ' + toText(t.days->last)
                       : ' ' + std::string(token(t.column)) + " '" + t.text + "'";
        lines.push_back(line);
    }
    return lines;
}

TEST(WeatherFile, ReadsTheRecordOfSeattleWhole) {
    const auto file = read(seattleText());
    EXPECT_EQ(file.days.size(), 1461U);
    EXPECT_TRUE(file.troubles.empty());
    EXPECT_EQ(file.days.front(), (WeatherFileDay{day("2012-01-01"), Tenths{128}, Tenths{50},
                                                 Tenths{0}, Tenths{47}, std::nullopt}));
    EXPECT_EQ(file.days.back().date, day("2015-12-31"));
}

TEST(WeatherFile, ReadsOtherUnitsBackToTheSameTenths) {
    const auto metric = read(seattleText());
    const auto number = [](double value) {
        char text[32];
        std::snprintf(text, sizeof text, "%d.%04d", static_cast<int>(value),
                      std::abs(static_cast<int>(std::lround(value * 10000))) % 10000);
        return (value < 0 && value > -1 ? "-" : "") + std::string(text);
    };
    std::string other = "Day,TMax,TMin,PRCP,Wind_Speed\n";
    for (const auto& d : metric.days)
        other += toText(d.date) + ',' + number(d.tmaxC->value * 0.18 + 32) + ',' +
                 number(d.tminC->value * 0.18 + 32) + ',' + number(d.rainMm->value / 254.0) + ',' +
                 number(d.windMs->value / 4.4704) + '\n';
    const auto file = read(other, {HeatUnit::Fahrenheit, RainUnit::Inch, WindUnit::MilePerHour});
    EXPECT_EQ(file.days, metric.days);
    EXPECT_TRUE(file.troubles.empty());
    const auto kmh = read("date,tmax,wind\n2027-05-01,20,36\n",
                          {HeatUnit::Celsius, RainUnit::Millimetre, WindUnit::KilometrePerHour});
    EXPECT_EQ(kmh.days.front().windMs, Tenths{100});
}

TEST(WeatherFile, TakesColumnsByNameOrAsChosen) {
    EXPECT_EQ(read("flew,DATE,Maximum\nno,20270501,14.25\n").days.front(),
              (WeatherFileDay{day("2027-05-01"), Tenths{143}, {}, {}, {}, false}));
    const auto nameless = "when,a,b\n2027-05-01,18.5,3.2\n";
    EXPECT_EQ(readWeatherFile(nameless, {}).error().text, "no column holds the date");
    EXPECT_EQ(readWeatherFile("date,b\n2027-05-01,3\n", {}).error().text,
              "no column holds the daily maximum");
    WeatherColumns columns;
    columns[static_cast<std::size_t>(WeatherColumn::Date)] = 0;
    columns[static_cast<std::size_t>(WeatherColumn::Tmax)] = 1;
    columns[static_cast<std::size_t>(WeatherColumn::Rain)] = 2;
    EXPECT_EQ(readWeatherFile(nameless, {}, columns).value().days.front(),
              (WeatherFileDay{day("2027-05-01"), Tenths{185}, {}, Tenths{32}, {}, {}}));
}

TEST(WeatherFile, NamesEveryTroubleWithItsLine) {
    const auto file = read(
        "date,tmax,tmin,rain,wind,flew\n"
        "2027-05-01,18,7,0,2,yes\n"
        "31.05.2027,18,7,0,2,\n"              // 3
        "2027-02-29,18,7,0,2,\n"              // 4
        "2027-05-02,warm,7,0,2,often\n"       // 5
        "2027-05-03,60,7,-1,151,\n"           // 6
        "2027-05-04,-999,-9999,999,-99.9,\n"  // 7
        "2027-05-05,12,14,2001,2,\n"          // 8
        "2027-05-05,13,4,0,2,\n"              // 9
        "2027-05-09,NA,,null,,no\n"           // 10
        "2027-05-10\n"
        "2027-05-11,19\n");  // 12
    EXPECT_EQ(
        troublesOf(file),
        (std::vector<std::string>{
            "3 bad_date date '31.05.2027'", "4 bad_date date '2027-02-29'",
            "5 bad_number tmax 'warm'", "5 bad_number flew 'often'", "6 nonsense tmax '60'",
            "6 nonsense rain '-1'", "6 nonsense wind '151'", "7 placeholder tmax '-999'",
            "7 placeholder tmin '-9999'", "7 placeholder rain '999'", "7 placeholder wind '-99.9'",
            "8 nonsense rain '2001'", "8 nonsense tmin '14'", "9 double_day 2027-05-05 2027-05-05",
            "9 missing_days 2027-05-04 2027-05-04", "10 missing_days 2027-05-06 2027-05-08",
            "12 missing_days 2027-05-10 2027-05-10"}));
    ASSERT_EQ(file.days.size(), 6U);
    EXPECT_EQ(
        file.days[1],
        (WeatherFileDay{day("2027-05-02"), {}, Tenths{70}, Tenths{0}, Tenths{20}, std::nullopt}));
    EXPECT_EQ(file.days[3].tmaxC, Tenths{130}) << "of double days the last counts";
}

TEST(WeatherFile, PutsDaysInOrder) {
    const auto file = read("date,tmax\n2027-05-03,13\n2027-05-01,11\n2027-05-02,12\n");
    ASSERT_EQ(file.days.size(), 3U);
    for (int i = 0; i < 3; ++i)
        EXPECT_EQ(file.days[static_cast<std::size_t>(i)].tmaxC, Tenths{110 + 10 * i});
    EXPECT_TRUE(file.troubles.empty());
}

TEST(WeatherFile, SkipsOrRefusesAsTheCallerSays) {
    const auto file = read("date,tmax\n2027-05-01,11\n2027-05-02,x\n2027-05-05,-999\n");
    WeatherRefusals refused{};
    EXPECT_TRUE(checkTroubles(file, refused).ok());
    refused[static_cast<std::size_t>(WeatherTrouble::Placeholder)] = true;
    EXPECT_EQ(checkTroubles(file, refused).error().text, "line 4: placeholder '-999'");
    refused[static_cast<std::size_t>(WeatherTrouble::BadNumber)] = true;
    EXPECT_EQ(checkTroubles(file, refused).error().text, "line 3: bad_number 'x'");
    const auto gap = read("date,tmax\n2027-05-01,11\n2027-05-05,12\n");
    refused = {};
    refused[static_cast<std::size_t>(WeatherTrouble::MissingDays)] = true;
    EXPECT_EQ(checkTroubles(gap, refused).error().text,
              "line 3: missing_days 2027-05-02 to 2027-05-04");
}

TEST(WeatherFile, ComesIntoTheBookDayByDayAndKeepsWhatTheFileDoesNotKnow) {
    test::PaperBook book;
    ASSERT_EQ(book.import("weather", "date,tmax_c,flew\n2027-05-01,11,no\n2027-05-02,12,\n"), "");
    const auto edit = [&](std::string_view text) {
        const auto changes =
            weatherEdit(book.snapshot(), read(text).days, [&] { return book.next(); });
        book.setSnapshot(applied(book.snapshot(), changes).value());
        return changes.rows.size();
    };
    EXPECT_EQ(edit("date,tmax,rain\n2027-05-01,13,0.4\n2027-05-02,12,\n2027-05-03,14,2\n"), 2U);
    EXPECT_EQ(book.text("weather"),
              "date,tmax_c,tmin_c,rain_mm,wind_ms,flew\n"
              "2027-05-01,13.0,,0.4,,no\n2027-05-02,12.0,,,,\n2027-05-03,14.0,,2.0,,\n");
    EXPECT_EQ(edit("date,tmax\n2027-05-01,13\n"), 0U);
    EXPECT_EQ(edit("date,tmin,flew\n2027-05-01,15,\n"), 0U) << "the maximum of the book stays";
}

}  // namespace
}  // namespace tenthday
