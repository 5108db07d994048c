#include "facts/facts_page.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/book/book_fixture.h"
#include "screen_text/fact_text.h"

namespace tenthday {
namespace {

class FactsPageTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        path_ = makeSmallBook();
        desk_ = Desk::open(path_, test::fixedOptions()).value();
        page_ = std::make_unique<FactsPage>(*desk_);
        page_->resize(1200, 700);
        page_->show();
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }

    QModelIndex at(Fact fact, FactsModel::Column column) {
        return page_->table().model()->index(static_cast<int>(fact), column);
    }
    std::string shown(Fact fact, FactsModel::Column column) {
        return at(fact, column).data().toString().toStdString();
    }
    bool type(Fact fact, const char* text) {
        page_->table().setCurrentIndex(at(fact, FactsModel::InUse));
        return page_->table().model()->setData(at(fact, FactsModel::InUse),
                                               QString::fromUtf8(text));
    }

    QString path_;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<FactsPage> page_;
};

TEST_F(FactsPageTest, ShowsEveryNumberWithUnitRangeAndSource) {
    ASSERT_EQ(page_->table().model()->rowCount(), static_cast<int>(kTokenCount<Fact>));
    EXPECT_EQ(shown(Fact::Accepted, FactsModel::InUse), "75");
    EXPECT_EQ(shown(Fact::Accepted, FactsModel::Unit), "%");
    EXPECT_EQ(shown(Fact::RoomFinisher, FactsModel::Unit), "cells");
    EXPECT_EQ(shown(Fact::RoomFinisher, FactsModel::Range), "15 to 48");
    EXPECT_EQ(shown(Fact::RoomFinisher, FactsModel::Source), "S74, S25");
    const auto tip = at(Fact::RoomFinisher, FactsModel::Source).data(Qt::ToolTipRole).toString();
    EXPECT_TRUE(tip.contains(QStringLiteral("Improved Queen-Rearing"))) << tip.toStdString();
    EXPECT_TRUE(tip.contains(u'\n'));
}

TEST_F(FactsPageTest, AnOwnNumberIsSavedShownAndUndone) {
    ASSERT_TRUE(type(Fact::Accepted, "60"));
    EXPECT_DOUBLE_EQ(desk_->snapshot().facts()[Fact::Accepted], 0.6);
    EXPECT_DOUBLE_EQ(reread(path_).facts()[Fact::Accepted], 0.6);
    EXPECT_EQ(shown(Fact::Accepted, FactsModel::InUse), "60");
    EXPECT_EQ(shown(Fact::Accepted, FactsModel::Default), "75");
    EXPECT_TRUE(at(Fact::Accepted, FactsModel::InUse).data(Qt::FontRole).value<QFont>().bold());
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(shown(Fact::Accepted, FactsModel::InUse), "75");
    EXPECT_TRUE(desk_->snapshot().all<FactOverride>().empty());
}

TEST_F(FactsPageTest, TheDefaultComesBackByItsButton) {
    ASSERT_TRUE(type(Fact::FirstLookD, "15.5"));
    EXPECT_DOUBLE_EQ(desk_->snapshot().facts()[Fact::FirstLookD], 15.5);
    EXPECT_TRUE(page_->useDefault().isEnabled());
    QTest::mouseClick(&page_->useDefault(), Qt::LeftButton);
    EXPECT_DOUBLE_EQ(desk_->snapshot().facts()[Fact::FirstLookD], 14);
    EXPECT_TRUE(desk_->snapshot().all<FactOverride>().empty());
    EXPECT_FALSE(page_->useDefault().isEnabled());
}

TEST_F(FactsPageTest, TypingTheDefaultIsNoNumberOfOnesOwn) {
    ASSERT_TRUE(type(Fact::FirstLookD, "15"));
    ASSERT_TRUE(type(Fact::FirstLookD, "14"));
    EXPECT_TRUE(desk_->snapshot().all<FactOverride>().empty());
}

TEST_F(FactsPageTest, NonsenseIsRefusedInPlainWords) {
    EXPECT_FALSE(type(Fact::Accepted, "many"));
    EXPECT_EQ(page_->told().toStdString(), "\"many\" is not a number.");
    EXPECT_FALSE(type(Fact::Accepted, "160"));
    EXPECT_EQ(page_->told().toStdString(), "A number from 0 to 100 % is needed.");
    EXPECT_FALSE(type(Fact::FirstLookD, "-3"));
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(FactsPageTest, ARefusalEndsWithTheNextEditWhateverItIs) {
    EXPECT_FALSE(type(Fact::Accepted, "many"));
    const auto refusal = page_->told();
    Yard yard = **desk_->snapshot().all<Yard>().begin();
    ChangeSet changes{Verb::EditRow, yard.label, {}, {}};
    yard.note = "gate sticks";
    changes.edit(*desk_->snapshot().all<Yard>().begin(), yard);
    ASSERT_TRUE(desk_->apply(changes));
    EXPECT_NE(page_->told(), refusal);
}

TEST_F(FactsPageTest, ANumberOutsideThePublishedRangeIsTakenAndSaysSo) {
    ASSERT_TRUE(type(Fact::RoomFinisher, "60"));
    EXPECT_EQ(shown(Fact::RoomFinisher, FactsModel::Range), "outside 15 to 48");
}

TEST_F(FactsPageTest, CommasAreReadWhereTheReaderWritesThem) {
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    ASSERT_TRUE(type(Fact::FirstLookD, "14,5"));
    EXPECT_DOUBLE_EQ(desk_->snapshot().facts()[Fact::FirstLookD], 14.5);
}

TEST_F(FactsPageTest, FindingNarrowsTheTable) {
    page_->find().setText(QStringLiteral("larva"));
    const int found = page_->table().model()->rowCount();
    EXPECT_GT(found, 2);
    EXPECT_LT(found, 12);
}

TEST_F(FactsPageTest, ReadOnlyBooksAreOnlyShown) {
    page_.reset();
    desk_.reset();
    desk_ = Desk::open(path_, test::fixedOptions(Access::ReadOnly)).value();
    page_ = std::make_unique<FactsPage>(*desk_);
    EXPECT_FALSE(at(Fact::Accepted, FactsModel::InUse).flags() & Qt::ItemIsEditable);
}

TEST(FactText, NamesAreThoseOfTheFactsRevision) {
    for (const auto& entry : factsRevision(kNewestFactsRevision))
        EXPECT_EQ(fact_text::name(entry.fact).toStdString(), entry.what);
}

}  // namespace
}  // namespace tenthday
