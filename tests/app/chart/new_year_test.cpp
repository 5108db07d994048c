// A season across the new year: the head names the year where it begins.
#include <gtest/gtest.h>

#include <QLocale>

#include "app/chart/layout_text.h"
#include "chart/chart_layout.h"
#include "records/change_set.h"
#include "support/season_maker.h"

namespace tenthday::test {
namespace {

std::vector<std::string> monthsOf(const Outlook& outlook, QSizeF size) {
    const FixedRuler ruler;
    ChartOptions options;
    options.size = size;
    const auto span = plotSpan(outlook, options, ruler);
    const auto layout =
        layOut(outlook, DayAxis(outlook.season, span.left, span.width), options, ruler);
    std::vector<std::string> months;
    for (const auto& run : layout.texts)
        if (run.type == Type::Title) months.push_back(run.text.toStdString());
    return months;
}

TEST(NewYear, IsNamedInTheHead) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto snapshot = SeasonMaker("2027-12-20").yard("South").snapshot();
    ChangeSet changes;
    const auto season = *snapshot.all<Season>().begin();
    auto across = *season;
    across.from = day("2027-11-01");
    across.until = day("2028-03-15");
    changes.edit(season, across);
    OutlookMemo memo;
    const auto outlook = outlookOf(applied(snapshot, changes).value(), memo);
    EXPECT_EQ(outlook->season.size(), 136);
    const auto wide = monthsOf(*outlook, {1600, 700});
    for (const char* month : {"2027", "November", "December", "January 2028", "February"})
        EXPECT_EQ(std::count(wide.begin(), wide.end(), month), 1) << month;
    const auto narrow = monthsOf(*outlook, {520, 400});
    EXPECT_EQ(std::count(narrow.begin(), narrow.end(), "January 2028"), 0);
    EXPECT_EQ(std::count_if(narrow.begin(), narrow.end(),
                            [](const std::string& month) { return month.starts_with("Jan"); }),
              1);
    QLocale::setDefault(QLocale::c());
}

}  // namespace
}  // namespace tenthday::test
