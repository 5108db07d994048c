// `tasks` and `sheet`: the same rows with the same numbers, on paper inside the margins.
#include <QFileInfo>
#include <QProcess>
#include <QRegularExpression>
#include <algorithm>

#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class WeekVerbs : public ProgramTest {
protected:
    QString pdftotext(const std::string& pdf, const QString& how) {
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"),
                     {how, QString::fromStdString(at(pdf)), QStringLiteral("-")});
        EXPECT_TRUE(reader.waitForFinished());
        EXPECT_EQ(reader.exitCode(), 0);
        return QString::fromUtf8(reader.readAllStandardOutput());
    }
    std::string sheet(const std::string& book, const std::string& week, const std::string& paper) {
        const auto name = week + "-" + paper + ".pdf";
        const auto done = runHere({"sheet", book, "--week", week, "--out", name, "--paper", paper});
        EXPECT_EQ(done.exit, 0) << done.err;
        return name;
    }
};

TEST_F(WeekVerbs, TasksAreNumberedThroughTheWeekInOneOrder) {
    const auto book = makeExample();
    const auto rows = rowsOf(answer({"tasks", book, "--week", "2027-W23"}));
    ASSERT_EQ(rows.size(), 11U);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].at("row"), std::to_string(i + 1));
        if (i > 0) {
            EXPECT_LE(rows[i - 1].at("day"), rows[i].at("day"));
        }
    }
    EXPECT_EQ(rows[0].at("task"), "deliver");  // in no yard: first
    EXPECT_EQ(rows[1].at("task"), "cells_out");
    EXPECT_EQ(rows[1].at("must"), "yes");
}

TEST_F(WeekVerbs, NothingStandsOutsideTheMarginsOnAnyPaper) {
    const auto book = makeExample();
    const QRegularExpression page(
        QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">"));
    const QRegularExpression word(QStringLiteral(
        "<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">"));
    constexpr double kLeast = 5 * 72 / 25.4;  // 5 mm: what home printers leave white
    for (const auto* paper : {"a4", "letter", "a5"})
        for (const auto* week : {"2027-W22", "2027-W23", "2027-W25"}) {
            const auto text = pdftotext(sheet(book, week, paper), QStringLiteral("-bbox"));
            const auto size = page.match(text);
            ASSERT_TRUE(size.hasMatch());
            const double width = size.captured(1).toDouble();
            const double height = size.captured(2).toDouble();
            int words = 0;
            for (auto at = word.globalMatch(text); at.hasNext(); ++words) {
                const auto box = at.next();
                EXPECT_GE(box.captured(1).toDouble(), kLeast) << paper << " " << week;
                EXPECT_GE(box.captured(2).toDouble(), kLeast) << paper << " " << week;
                EXPECT_LE(box.captured(3).toDouble(), width - kLeast) << paper << " " << week;
                EXPECT_LE(box.captured(4).toDouble(), height - kLeast) << paper << " " << week;
            }
            EXPECT_GT(words, 60);
        }
}

TEST_F(WeekVerbs, EveryRowOfTheTasksStandsOnTheSheetBesideItsNumber) {
    const auto book = makeExample();
    const auto rows = rowsOf(answer({"tasks", book, "--week", "2027-W23"}));
    const auto text = pdftotext(sheet(book, "2027-W23", "a4"), QStringLiteral("-layout"));
    for (const auto& row : rows) {
        const auto line = QStringLiteral("(?m)^ *%1 +\\S.*%2")
                              .arg(QString::fromStdString(row.at("row")),
                                   QString::fromStdString(row.at("subject")));
        EXPECT_TRUE(QRegularExpression(line).match(text).hasMatch())
            << row.at("row") << " " << row.at("subject");
    }
}

TEST_F(WeekVerbs, WeeksAtTheTurnOfTheYear) {
    const auto book = makeExample();
    auto text = pdftotext(sheet(book, "2026-W53", "a4"), QStringLiteral("-layout"));
    EXPECT_TRUE(text.contains(QStringLiteral("Week 53")));
    for (const auto* day : {"28 December", "31 December", "1 January", "3 January"})
        EXPECT_TRUE(text.contains(QLatin1String(day))) << day;
    text = pdftotext(sheet(book, "2027-W01", "a4"), QStringLiteral("-layout"));
    EXPECT_TRUE(text.contains(QStringLiteral("4 January")));
    EXPECT_FALSE(text.contains(QStringLiteral("3 January")));
    for (const auto* wrong : {"2027-W53", "2027-23", "W23", "2027-W00"}) {
        const auto refused = runHere({"sheet", book, "--week", wrong, "--out", "no.pdf"});
        EXPECT_EQ(refused.exit, 2) << wrong;
        EXPECT_FALSE(QFileInfo::exists(QString::fromStdString(at("no.pdf"))));
    }
}

}  // namespace
}  // namespace tenthday::test
