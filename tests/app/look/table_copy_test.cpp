// What is copied from a list pastes into a spreadsheet, and comes back the same.
#include "look/table_copy.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QTableWidget>
#include <QTest>

#include "exchange/pasted.h"
#include "look/page_parts.h"

namespace tenthday {
namespace {

class TableCopy : public ::testing::Test {
protected:
    TableCopy() : table_(3, 3) {
        makeList(table_, QStringLiteral("list"));
        table_.setHorizontalHeaderLabels(
            {QStringLiteral("Nuc"), QStringLiteral("Note"), QStringLiteral("Hidden")});
        const QStringList notes{QStringLiteral("two\nlines"), QStringLiteral("a \"word\"\tmore"),
                                QStringLiteral("ä; 1,5")};
        for (int row = 0; row < 3; ++row) {
            table_.setItem(row, 0, new QTableWidgetItem(QStringLiteral("Q%1").arg(row)));
            table_.setItem(row, 1, new QTableWidgetItem(notes[row]));
            table_.setItem(row, 2, new QTableWidgetItem(QStringLiteral("no")));
        }
        table_.setColumnHidden(2, true);
    }
    QTableWidget table_;
};

TEST_F(TableCopy, ReadsBackCellByCellAndLeavesHiddenColumnsOut) {
    const auto read = readPasted(textOf(table_).toStdString());
    ASSERT_TRUE(read) << read.error().text;
    const std::vector<std::vector<std::string>> wanted{
        {"Nuc", "Note"}, {"Q0", "two\nlines"}, {"Q1", "a \"word\"\tmore"}, {"Q2", "ä; 1,5"}};
    EXPECT_EQ(read.value().lines, wanted);
}

TEST_F(TableCopy, ChosenRowsAloneAndColumnsAsTheyStand) {
    table_.setSelectionMode(QAbstractItemView::MultiSelection);
    table_.selectRow(2);
    table_.selectRow(1);
    table_.horizontalHeader()->moveSection(0, 1);
    const auto lines = readPasted(textOf(table_).toStdString()).value().lines;
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0], (std::vector<std::string>{"Note", "Nuc"}));
    EXPECT_EQ(lines[1][1], "Q1");
    EXPECT_EQ(lines[2][1], "Q2");
}

TEST_F(TableCopy, TheKeysForCopyingFillTheClipboard) {
    QApplication::clipboard()->clear();
    QTest::keyClick(&table_, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text(), textOf(table_));
}

}  // namespace
}  // namespace tenthday
