// Lines that belong to rows of a table: found by names, read cell by cell.
#include "paste/table_lines.h"

#include <gtest/gtest.h>

#include "paste/named_rows.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

using Texts = std::vector<std::string>;

std::string twice() { return paste_text::twice().toStdString(); }
std::string several() { return paste_text::severalRows().toStdString(); }
std::string noSuchRow() { return paste_text::noSuchRow().toStdString(); }

/// Rows as the lines found them, else why not.
Texts found(const NamedRows& rows, const std::vector<NamedLine>& lines) {
    Texts texts;
    for (const auto& line : rows.rowsOf(lines))
        texts.push_back(line.row ? std::to_string(*line.row) : line.why.toStdString());
    return texts;
}

class NamedRowsTest : public ::testing::Test {
protected:
    NamedRowsTest() {
        rows_.add(kFeed, 4);
        rows_.add(kFeed, 7);
        rows_.add({QStringLiteral("Feed Q1"), QString()}, 9);
    }
    const QStringList kFeed{QStringLiteral("Feed"), QStringLiteral("Q1")};
    const QStringList kAlike{QStringLiteral(" FEED"), QStringLiteral("q1 ")};
    NamedRows rows_;
};

TEST_F(NamedRowsTest, RowsOfOneNameWantALineEach) {
    EXPECT_EQ(found(rows_, {{kFeed}, {kAlike}}), (Texts{"4", "7"})) << "in their order";
    EXPECT_EQ(found(rows_, {{kFeed}}), Texts{several()}) << "which one is meant is not guessed";
    EXPECT_EQ(found(rows_, {{kFeed}, {kFeed}, {kFeed}}), (Texts{"4", "7", twice()}));
    EXPECT_EQ(found(rows_, {{{QStringLiteral("Feed"), QStringLiteral("Q2")}},
                            {{QStringLiteral("Feed Q1"), QString()}}}),
              (Texts{noSuchRow(), "9"}));
}

TEST_F(NamedRowsTest, TheNumberOfARowDecides) {
    EXPECT_EQ(found(rows_, {{kFeed, QStringLiteral("2")}}), Texts{"7"});
    EXPECT_EQ(found(rows_, {{kAlike, QStringLiteral("2")}, {kFeed}}), (Texts{"7", "4"}));
    EXPECT_EQ(found(rows_, {{kFeed, QStringLiteral("2")}, {kFeed, QStringLiteral("2")}}),
              (Texts{"7", twice()}));
    for (const char* wrong : {"3", "0", "4", "second"})
        EXPECT_EQ(found(rows_, {{kFeed, QString::fromLatin1(wrong)}}), Texts{noSuchRow()}) << wrong;
}

TEST_F(NamedRowsTest, UpperAndLowerCaseCountOnlyWhereTheyTellRowsApart) {
    NamedRows rows;
    rows.add({QStringLiteral("home")}, 1);
    rows.add({QStringLiteral("Home")}, 2);
    EXPECT_EQ(found(rows, {{{QStringLiteral("Home")}}}), Texts{"2"});
    EXPECT_EQ(found(rows, {{{QStringLiteral("HOME")}}}), Texts{several()});
    EXPECT_EQ(found(rows, {{{QStringLiteral("HOME")}}, {{QStringLiteral("Home")}}}),
              (Texts{"1", "2"}))
        << "the one that is left";
}

TEST(AreTenths, KnowsWhatSaysMoreThanIsKept) {
    for (const double good : {0.0, 1.5, 0.1 + 0.2, -92.5, 1e6})
        EXPECT_TRUE(areTenths(good)) << good;
    for (const double bad : {1.25, 0.01, 99.99}) EXPECT_FALSE(areTenths(bad)) << bad;
}

TEST(TickTyped, KnowsYesNoAndWhatIsNeither) {
    for (const char* yes : {"x", "X", " yes", "1", "in"})
        EXPECT_EQ(tickTyped(QString::fromLatin1(yes), {QStringLiteral("in")}), TickTyped::Yes)
            << yes;
    for (const char* no : {"", " ", "no", "0"})
        EXPECT_EQ(tickTyped(QString::fromLatin1(no)), TickTyped::No) << no;
    EXPECT_EQ(tickTyped(QStringLiteral("in")), TickTyped::Other);
}

TEST(BesideNames, PutsAColumnBesideNamesAndLeavesAllElseAlone) {
    const QStringList heads{QStringLiteral("What"), QStringLiteral("Entered")};
    const std::vector<QStringList> names{
        {QStringLiteral("a")}, {QStringLiteral("b")}, {QStringLiteral("c")}};
    EXPECT_EQ(besideNames(QStringLiteral("1\n\n3\n"), heads, names),
              QStringLiteral("What\tEntered\na\t1\nc\t3\n"));
    EXPECT_EQ(besideNames(QStringLiteral("Entered\r\n1\r\n2"), heads, names),
              QStringLiteral("What\tEntered\na\t1\nb\t2\n"))
        << "with its head";
    EXPECT_EQ(besideNames(QStringLiteral("1\n2\n3\n4"), heads, names),
              QStringLiteral("What\tEntered\na\t1\nb\t2\nc\t3\n\t4\n"))
        << "one too many belongs to no row, and is told";
    const auto two = QStringLiteral("What\tEntered\na\t1\n");
    EXPECT_EQ(besideNames(two, heads, names), two);
    EXPECT_EQ(besideNames(QString(), heads, names), QString());
}

TEST(EditLineByLine, KeepsNothingWhereOneLineIsInTrouble) {
    const std::vector<std::vector<std::string>> lines{{"1"}, {"bad"}, {"0"}};
    const auto edit = editLineByLine({"n"}, lines, [](const PastedLine& line, ChangeSet& changes) {
        if (line["n"] == QStringLiteral("bad")) return LineJudged{QStringLiteral("why")};
        if (line["n"] == QStringLiteral("0")) return LineJudged{};
        changes.add(Yard{});
        return LineJudged{{}, true, true};
    });
    EXPECT_TRUE(edit.changes.isEmpty());
    EXPECT_EQ(edit.troubles, (std::vector<std::string>{"", "why", ""}));
    EXPECT_EQ(edit.isNew, (std::vector<bool>{true, false, false}));
    EXPECT_EQ(edit.isSame, (std::vector<bool>{false, false, true}));
}

}  // namespace
}  // namespace tenthday
