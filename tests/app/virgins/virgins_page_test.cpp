#include "virgins/virgins_page.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include "app/book/example_page.h"
#include "reasons/reasons_view.h"

namespace tenthday {
namespace {

using test::day;

class VirginsPageTest : public test::ExamplePageTest<VirginsPage> {
protected:
    int rows() { return page_->table().model()->rowCount(); }
    QModelIndex index(int row, int column) { return page_->table().model()->index(row, column); }
    std::string text(int row, VirginsModel::Column column) {
        return index(row, column).data().toString().toStdString();
    }
    void key(Qt::Key key) { QTest::keyClick(&page_->table(), key); }
};

TEST_F(VirginsPageTest, ListsTheNucsOfTheDayOldestFirst) {
    EXPECT_EQ(page_->day(), day("2027-06-03"));
    const auto& outlook = *desk_->outlook();
    const auto virgins =
        waitingVirgins(outlook.snapshot, outlook.nucs, *outlook.mating, page_->day());
    ASSERT_EQ(rows(), static_cast<int>(virgins.nucs.size()));
    for (int row = 0; row < rows(); ++row) {
        const auto& virgin = virgins.nucs[static_cast<std::size_t>(row)];
        EXPECT_EQ(text(row, VirginsModel::Age),
                  virgin.age < 0 ? "cell" : std::to_string(virgin.age));
        EXPECT_FALSE(text(row, VirginsModel::Advice).empty());
    }
    EXPECT_EQ(page_->groups().model()->rowCount(), static_cast<int>(virgins.groups.size()));
}

TEST_F(VirginsPageTest, OneSentenceTellsTheColdWeek) {
    page_->setDay(day("2027-06-01"));
    const auto told = page_->sentence().toStdString();
    EXPECT_EQ(told.find("No flying day since Sun 23 May."), 0U) << told;
    EXPECT_NE(told.find("virgins wait for a flying day."), std::string::npos) << told;
    EXPECT_NE(told.find("the last useful day is"), std::string::npos) << told;
    EXPECT_NE(told.find("The next flying day known is Wed 2 Jun."), std::string::npos) << told;
}

TEST_F(VirginsPageTest, KeysStepTheDayAndEnterGoesToTheNuc) {
    QSignalSpy days(page_.get(), &VirginsPage::dayChosen);
    key(Qt::Key_Right);
    EXPECT_EQ(page_->day(), day("2027-06-04"));
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    EXPECT_EQ(page_->day(), day("2027-06-02"));
    key(Qt::Key_Home);
    EXPECT_EQ(page_->day(), day("2027-06-03"));
    EXPECT_EQ(days.size(), 4);
    std::optional<Id<NucSide>> nuc;
    std::optional<Id<Batch>> batch;
    QObject::connect(page_.get(), &VirginsPage::nucWished, [&](auto id) { nuc = id; });
    QObject::connect(page_.get(), &VirginsPage::batchWished, [&](auto id) { batch = id; });
    ASSERT_NE(page_->chosen(), nullptr);
    key(Qt::Key_Return);
    EXPECT_EQ(nuc, page_->chosen()->side->side->id);
    EXPECT_FALSE(batch);
    const auto at = page_->table().visualRect(index(0, VirginsModel::Batch)).center();
    QTest::mouseClick(page_->table().viewport(), Qt::LeftButton, {}, at);
    QTest::mouseDClick(page_->table().viewport(), Qt::LeftButton, {}, at);
    EXPECT_EQ(batch, page_->chosen()->round->batch);
}

TEST_F(VirginsPageTest, TheChosenNucStaysChosenOnAnotherDay) {
    page_->table().setCurrentIndex(index(5, 0));
    const auto side = page_->chosen()->side->side->id;
    key(Qt::Key_Right);
    ASSERT_NE(page_->chosen(), nullptr);
    EXPECT_EQ(page_->chosen()->side->side->id, side);
}

TEST_F(VirginsPageTest, FiltersSortAndFindNarrowTheList) {
    const int all = rows();
    int sum = 0;
    for (int entry = 1; entry < page_->filter().count(); ++entry) {
        page_->filter().setCurrentIndex(entry);
        sum += rows();
    }
    EXPECT_EQ(sum, all);
    page_->filter().setCurrentIndex(0);
    page_->find().setText(QStringLiteral("704"));
    EXPECT_GT(rows(), 0);
    EXPECT_LT(rows(), all);
    for (int row = 0; row < rows(); ++row) EXPECT_EQ(text(row, VirginsModel::Batch), "704");
    page_->find().clear();
    page_->table().sortByColumn(VirginsModel::Nuc, Qt::AscendingOrder);
    for (int row = 1; row < rows(); ++row)
        EXPECT_LE(index(row - 1, VirginsModel::Nuc).data(VirginsModel::kSortRole).toString(),
                  index(row, VirginsModel::Nuc).data(VirginsModel::kSortRole).toString());
}

TEST_F(VirginsPageTest, EveryFigureTellsItsRuleAndSource) {
    for (int column = VirginsModel::Age; column < VirginsModel::ColumnCount; ++column) {
        const auto told = index(0, column).data(Qt::ToolTipRole).toString();
        EXPECT_GT(told.size(), 80) << column;
    }
    const auto chain = page_->reasons().toPlainText();
    for (const auto* part : {"Flying days", "Chance to mate", "Last useful day", "Age", "S17"})
        EXPECT_TRUE(chain.contains(QString::fromLatin1(part))) << part << chain.toStdString();
}

TEST_F(VirginsPageTest, ADayWithoutVirginsSaysWhatBelongsHere) {
    page_->setDay(day("2027-04-20"));
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(page_->sentence().startsWith(QStringLiteral("No nuc holds a virgin")));
    EXPECT_EQ(page_->chosen(), nullptr);
    EXPECT_FALSE(page_->chosenDate().batch);
    key(Qt::Key_Return);  // goes nowhere
}

TEST_F(VirginsPageTest, WhatIsNotSeenIsNotReckoned) {
    page_->hide();
    page_->setDay(day("2027-04-20"));
    EXPECT_GT(rows(), 0) << "still the list of before";
    page_->show();
    EXPECT_EQ(rows(), 0);
}

}  // namespace
}  // namespace tenthday
