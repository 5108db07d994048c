// Lines that belong to rows of a table: found by names, read cell by cell.
#include "paste/table_lines.h"

#include <gtest/gtest.h>

#include "paste/named_rows.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

TEST(NamedRows, TellsRowsOfOneNameApartByTheirOrder) {
    NamedRows rows;
    rows.add({QStringLiteral("Feed"), QStringLiteral("Q1")}, 4);
    rows.add({QStringLiteral("Feed"), QStringLiteral("Q1")}, 7);
    rows.add({QStringLiteral("Feed Q1"), QString()}, 9);
    const QStringList name{QStringLiteral(" FEED"), QStringLiteral("q1 ")};
    EXPECT_EQ(rows.take(name), 4);
    EXPECT_EQ(rows.take(name), 7);
    EXPECT_EQ(rows.take(name), std::nullopt);
    EXPECT_EQ(rows.whyNone(name), paste_text::twice()) << "known, but each was taken";
    EXPECT_EQ(rows.whyNone({QStringLiteral("Feed"), QStringLiteral("Q2")}),
              paste_text::noSuchRow());
    EXPECT_EQ(rows.take({QStringLiteral("Feed Q1"), QString()}), 9);
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
