#include "look/page_parts.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDateEdit>
#include <QHeaderView>
#include <QHelpEvent>
#include <QImage>
#include <QLocale>
#include <QTableWidget>
#include <QToolTip>

#include "look/column_fit.h"
#include "look/day_field.h"

namespace tenthday {
namespace {

/// The leftmost column of pixels with ink, beyond the frame of the part shown.
int firstInk(const QImage& image) {
    for (int x = 2; x < image.width(); ++x)
        for (int y = 3; y < image.height() - 3; ++y)
            if (image.pixelColor(x, y).lightness() < 90) return x;
    return -1;
}

class PageParts : public testing::Test {
protected:
    void SetUp() override {
        table_.setHorizontalHeaderLabels({QStringLiteral("H"), QStringLiteral("Second")});
        table_.setItem(0, 0, new QTableWidgetItem(QStringLiteral("Hill")));
        table_.setItem(0, 1, new QTableWidgetItem(QStringLiteral("2")));
        table_.resize(400, 200);
    }
    /// px between the first letter of the first head and that of the cell below.
    int apart() {
        table_.show();
        const auto head = table_.horizontalHeader()->viewport()->grab().toImage();
        const auto cells = table_.viewport()->grab(table_.visualRect(index())).toImage();
        const int above = firstInk(head);
        const int below = firstInk(cells);
        EXPECT_GE(above, 0);
        EXPECT_GE(below, 0);
        return above - below;
    }
    [[nodiscard]] QModelIndex index() const { return table_.model()->index(0, 0); }
    QTableWidget table_{1, 2};
};

TEST_F(PageParts, AListsHeadsStandAboveTheFirstLetterOfTheirCells) {
    makeList(table_, QStringLiteral("hills"));
    EXPECT_NEAR(apart(), 0, 2);
}

TEST_F(PageParts, SoDoThoseOfACompactList) {
    makeList(table_, QStringLiteral("hills"));
    makeCompact(table_);
    EXPECT_NEAR(apart(), 0, 2);
    EXPECT_EQ(table_.horizontalHeader()->sectionResizeMode(0), QHeaderView::ResizeToContents);
}

TEST_F(PageParts, AChosenLineLeavesTheHeadsAsTheyAre) {
    makeList(table_, QStringLiteral("hills"));
    table_.show();
    const auto before = table_.horizontalHeader()->viewport()->grab().toImage();
    table_.selectRow(0);
    EXPECT_EQ(table_.horizontalHeader()->viewport()->grab().toImage(), before);
}

TEST_F(PageParts, APressedHeadSortsAndItsArrowHidesNoWord) {
    makeList(table_, QStringLiteral("hills"));
    table_.setSortingEnabled(true);
    auto* head = table_.horizontalHeader();
    EXPECT_TRUE(head->sectionsClickable());
    const int words = table_.fontMetrics().horizontalAdvance(QStringLiteral("Second"));
    EXPECT_GE(head->sectionSize(1), words + 8) << "with its air";
}

TEST_F(PageParts, OneVeryLongNameLeavesRoomForTheOtherColumns) {
    table_.item(0, 0)->setText(QString(300, u'x'));
    makeList(table_, QStringLiteral("hills"));
    table_.resize(900, 200);
    table_.show();
    const auto* head = table_.horizontalHeader();
    EXPECT_LT(head->sectionSize(0), 500);
    EXPECT_GT(head->sectionSize(0), 200) << "a name of usual length stands in full";
    EXPECT_LT(head->sectionViewportPosition(1), 500) << "the next column is in sight";
}

/// A list with a short, a middling and a long column.
class NarrowList : public testing::Test {
protected:
    void SetUp() override {
        table_.setHorizontalHeaderLabels({QStringLiteral("Day"),
                                          QStringLiteral("Cells that were started"),
                                          QStringLiteral("Note")});
        const QStringList words{QStringLiteral("Wed 26 May"), QStringLiteral("24"), kNote};
        for (int column = 0; column < 3; ++column)
            table_.setItem(0, column, new QTableWidgetItem(words[column]));
        makeList(table_, QStringLiteral("cells"));
        table_.horizontalHeader()->setStretchLastSection(true);
        table_.show();
    }
    void makeWide(int letters) { makeWidePx(letters * table_.fontMetrics().averageCharWidth()); }
    void makeWidePx(int px) {
        table_.resize(px, 200);
        for (int i = 0; i < 5; ++i) QCoreApplication::processEvents();
    }
    [[nodiscard]] bool isAllInSight() const {
        return table_.horizontalHeader()->length() <= table_.viewport()->width();
    }
    [[nodiscard]] int words(int column) const {
        return table_.fontMetrics().horizontalAdvance(table_.item(0, column)->text());
    }
    [[nodiscard]] int width(int column) const {
        return table_.horizontalHeader()->sectionSize(column);
    }
    const QString kNote = QStringLiteral("Fed since the dearth began, two jars");
    QTableWidget table_{1, 3};
};

TEST_F(NarrowList, LongWordsGiveWayAndDaysDoNot) {
    makeWide(45);
    EXPECT_TRUE(isAllInSight());
    EXPECT_GT(width(0), words(0));
    EXPECT_LT(width(2), words(2)) << "cut short";
    makeWide(120);
    EXPECT_TRUE(isAllInSight());
    EXPECT_GT(width(2), words(2)) << "in full, where there is room";
}

TEST_F(NarrowList, WhatOthersLeaveIsForLongWordsInTheMiddle) {
    const auto steps = QString(24, u'x') + QStringLiteral("; ") + QString(50, u'x');
    table_.item(0, 1)->setText(steps);
    table_.item(0, 2)->setText(QStringLiteral("6 batches"));
    makeWide(200);
    EXPECT_TRUE(isAllInSight());
    EXPECT_GT(width(1), words(1)) << "in full, as the last column needs little";
    makeWide(80);
    EXPECT_TRUE(isAllInSight());
    EXPECT_LT(width(1), words(1));
    EXPECT_GT(width(2), words(2));
}

TEST_F(NarrowList, HeadsBreakBeforeWordsAreCut) {
    makeWide(120);
    const int high = table_.horizontalHeader()->height();
    const int wanted = widthOfColumns(table_);
    makeWidePx(wanted - 4);
    EXPECT_TRUE(isAllInSight());
    EXPECT_EQ(table_.horizontalHeader()->height(), high) << "a little less air does";
    makeWidePx(wanted - 30);
    EXPECT_TRUE(isAllInSight());
    EXPECT_GT(width(2), words(2));
    EXPECT_GT(table_.horizontalHeader()->height(), high);
    makeWide(120);
    EXPECT_EQ(table_.horizontalHeader()->height(), high);
}

TEST_F(NarrowList, OtherWordsAreGivenOtherRoom) {
    makeWide(45);
    table_.item(0, 2)->setText(QStringLiteral("fed"));
    makeWide(46);
    EXPECT_TRUE(isAllInSight());
    table_.item(0, 0)->setText(QStringLiteral("Wed 26 May 2027"));
    makeWide(45);
    EXPECT_GT(width(0), words(0));
}

TEST_F(NarrowList, CutWordsAreToldInATip) {
    makeWide(45);
    const auto at = table_.visualRect(table_.model()->index(0, 2)).center();
    QHelpEvent ask(QEvent::ToolTip, at, table_.viewport()->mapToGlobal(at));
    QApplication::sendEvent(table_.viewport(), &ask);
    EXPECT_EQ(QToolTip::text(), kNote);
    table_.item(0, 2)->setToolTip(QStringLiteral("Press Enter to change it."));
    QApplication::sendEvent(table_.viewport(), &ask);
    EXPECT_EQ(QToolTip::text(), kNote + QStringLiteral("\nPress Enter to change it."));
}

TEST(ColumnRoom, WideColumnsGiveWayFirstAndNoneBelowItsLeast) {
    EXPECT_EQ(roomOfColumns({{10, 40}, {20, 100}, {30, 90}}, 200, 5), 80);
    EXPECT_EQ(roomOfColumns({{10, 40}, {70, 100}, {30, 90}}, 130, 5), 30);
    EXPECT_GE(roomOfColumns({{10, 40}, {20, 100}}, 140, 5), 100) << "all have room";
    EXPECT_EQ(roomOfColumns({{10, 40}, {20, 100}}, 20, 30), 30) << "there is no room";
}

TEST(DayField, TellsTheWeekdayInEveryOrderOfDayAndMonth) {
    const auto before = QLocale();
    for (const auto* locale : {"en_GB", "en_US", "de_DE"}) {
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        QDateEdit field(QDate(2027, 6, 2));
        makeDayField(field);
        const auto weekday = QLocale().dayName(3, QLocale::ShortFormat);
        EXPECT_TRUE(field.text().startsWith(weekday)) << field.text().toStdString();
        EXPECT_TRUE(field.calendarPopup());
    }
    QLocale::setDefault(before);
}

}  // namespace
}  // namespace tenthday
