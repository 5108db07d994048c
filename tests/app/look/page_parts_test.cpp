#include "look/page_parts.h"

#include <gtest/gtest.h>

#include <QDateEdit>
#include <QHeaderView>
#include <QImage>
#include <QLocale>
#include <QTableWidget>

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
