#include "reasons/why_dialog.h"

#include <QLocale>
#include <QTableWidget>
#include <QTest>

#include "app/book/book_fixture.h"
#include "exchange/example.h"
#include "reasons/reasons_view.h"
#include "records/verbs.h"

namespace tenthday {
namespace {

using test::day;

class WhyDialogTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const auto path = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(createBook(path, exampleContent(), test::fixedOptions()).ok());
        desk_ = Desk::open(path).value();
        for (const auto& batch : desk_->outlook()->batches)
            if (batch->batch->label == "706") batch_ = batch->batch->id;
        dialog_ = std::make_unique<WhyDialog>(*desk_, batch_, Event::Ripe);
        dialog_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog_.get()));
    }
    void TearDown() override {
        dialog_.reset();
        QLocale::setDefault(QLocale::c());
    }
    std::string cell(int column) {
        return dialog_->events().item(dialog_->events().currentRow(), column)->text().toStdString();
    }
    QString told() { return dialog_->reasons().toPlainText(); }

    std::unique_ptr<Desk> desk_;
    Id<Batch> batch_;
    std::unique_ptr<WhyDialog> dialog_;
};

TEST_F(WhyDialogTest, ListsEveryDateAndExplainsTheOneAskedFor) {
    EXPECT_EQ(dialog_->windowTitle().toStdString(), "Why this day? Batch 706");
    EXPECT_FALSE(dialog_->isModal());
    EXPECT_EQ(dialog_->events().rowCount(),
              static_cast<int>(desk_->outlook()->find(batch_)->timeline.events.size()));
    EXPECT_EQ(dialog_->chosen(), Event::Ripe);
    EXPECT_EQ(cell(0), "ripe");
    EXPECT_EQ(cell(1), "day 10");
    EXPECT_EQ(cell(3), "Fri 18 Jun 14:00");
    EXPECT_TRUE(told().contains(QStringLiteral("240 h after the graft")));
    EXPECT_TRUE(told().contains(QStringLiteral("S11 British grafting time table")));
    EXPECT_TRUE(told().contains(QStringLiteral("Tue 8 Jun 14:00")));
    EXPECT_TRUE(told().contains(QStringLiteral("set by you")));
}

TEST_F(WhyDialogTest, KeysGoFromDateToDate) {
    QTest::keyClick(&dialog_->events(), Qt::Key_Down);
    EXPECT_EQ(dialog_->chosen(), Event::LatestMove);
    EXPECT_TRUE(told().contains(QStringLiteral("stays below 1 %"))) << told().toStdString();
    QTest::keyClick(&dialog_->events(), Qt::Key_End, Qt::ControlModifier);
    EXPECT_EQ(dialog_->chosen(), Event::Catch);
}

TEST_F(WhyDialogTest, FollowsEditsAndNumbersOfTheUsersOwn) {
    const auto move = moveBatch(desk_->snapshot(), batch_, day("2027-06-10"));
    ASSERT_TRUE(desk_->preview(move.value()).ok());
    EXPECT_EQ(cell(3), "Sun 20 Jun 14:00");
    ASSERT_TRUE(desk_->preview(std::nullopt).ok());
    EXPECT_EQ(cell(3), "Fri 18 Jun 14:00");
    ASSERT_TRUE(
        desk_
            ->apply(setFact(desk_->snapshot(), Fact::RipeH, 228, test::id<FactOverride>(1)).value())
            .ok());
    EXPECT_EQ(cell(3), "Fri 18 Jun 2:00");
    EXPECT_EQ(dialog_->chosen(), Event::Ripe) << "the chosen date stays chosen";
    EXPECT_TRUE(told().contains(QStringLiteral("set by you; the default is 240 h")));
}

}  // namespace
}  // namespace tenthday
