#include "evening/evening_view.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/book/example_page.h"
#include "book/new_id.h"
#include "evening/queen_numbers_dialog.h"
#include "records/queen_verbs.h"

namespace tenthday {
namespace {

using test::day;

class EveningViewTest : public test::ExamplePageTest<EveningView> {
protected:
    /// Ten days on from the example's own: looks, counts and ticks are open.
    void SetUp() override {
        ExamplePageTest::SetUp();
        openPage(Access::ReadWrite, kToday);
    }
    static constexpr const char* kToday = "2027-06-13";
    EveningModel& model() { return page_->model(); }
    /// Goes back from today to the newest day that has a row of this entry; its first row.
    int seek(EveningEntry entry, bool empty = true) {
        for (int back = 0; back < 60; ++back) {
            for (int row = 0; row < model().rowCount(); ++row)
                if (model().at(row).entry == entry && model().at(row).isFilled() != empty)
                    return row;
            page_->setDay(page_->day() - Days{1});
        }
        return -1;
    }
    void choose(int row) {
        page_->table().setCurrentIndex(model().index(row, EveningModel::Entered));
    }
    void key(Qt::Key key) { QTest::keyClick(&page_->table(), key); }
    std::string entered(int row) {
        return model().index(row, EveningModel::Entered).data().toString().toStdString();
    }
    std::size_t outcomes() { return desk_->snapshot().all<Outcome>().size(); }
};

TEST_F(EveningViewTest, OpensOnTodayAndNeverGoesBeyond) {
    EXPECT_EQ(page_->day(), desk_->snapshot().today());
    key(Qt::Key_Right);
    EXPECT_EQ(page_->day(), desk_->snapshot().today());
    key(Qt::Key_Left);
    EXPECT_EQ(page_->day(), desk_->snapshot().today() - Days{1});
    key(Qt::Key_Home);
    EXPECT_EQ(page_->day(), desk_->snapshot().today());
}

TEST_F(EveningViewTest, ACatchNumbersItsQueenAndWLeavesHerForWinter) {
    openPage(Access::ReadWrite, "2027-06-15");
    page_->setQueenNumbers(QStringLiteral("{yy}-{n:3}"));
    const int row = seek(EveningEntry::Caught);
    ASSERT_GE(row, 0) << "the example has a catch to make";
    choose(row);
    const auto queens = desk_->snapshot().all<Queen>().size();
    key(Qt::Key_Space);
    EXPECT_EQ(desk_->snapshot().all<Queen>().size(), queens + 1);
    EXPECT_EQ(entered(row), "caught: 27-001");
    choose(row);
    key(Qt::Key_Delete);
    EXPECT_EQ(desk_->snapshot().all<Queen>().size(), queens);
    choose(row);
    key(Qt::Key_W);
    EXPECT_EQ(entered(row), "stays for winter: 27-001");
    EXPECT_EQ(desk_->snapshot().all<Queen>().size(), queens + 1) << "known in the next season";
    // Moved since, she keeps her catch; the page says what to do.
    choose(row);
    key(Qt::Key_Delete);
    choose(row);
    key(Qt::Key_Space);
    const auto queen = findByLabel<Queen>(desk_->snapshot(), "27-001");
    ASSERT_TRUE(queen);
    const auto moved = moveQueens(desk_->snapshot(), {queen->id}, QueenPlace::Sold,
                                  desk_->snapshot().today(), {}, [] { return idMaker().next(); });
    ASSERT_TRUE(desk_->apply(moved.value()).ok());
    choose(row);
    key(Qt::Key_Delete);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("27-001"))) << page_->told().toStdString();
    EXPECT_EQ(entered(row), "caught: 27-001");
}

TEST_F(EveningViewTest, TheDialogOfNumbersShowsTheNextThree) {
    QueenNumbersDialog dialog({true, QStringLiteral("Q{yy}/{n:2}")}, desk_->snapshot());
    EXPECT_TRUE(dialog.told().contains(QStringLiteral("Q27/01, Q27/02, Q27/03")))
        << dialog.told().toStdString();
    dialog.pattern().setText(QStringLiteral("Q{yy}"));
    EXPECT_FALSE(dialog.keepButton().isEnabled());
    EXPECT_TRUE(dialog.told().contains(QStringLiteral("{n}")));
    dialog.give().setChecked(false);
    EXPECT_TRUE(dialog.keepButton().isEnabled()) << "switched off, the pattern does not matter";
}

TEST_F(EveningViewTest, OneKeyFillsANucAndGoesOn) {
    const int row = seek(EveningEntry::Look);
    ASSERT_GE(row, 0) << "the example has a look to make";
    choose(row);
    const auto before = outcomes();
    const auto side = model().at(row).side->side->id;
    key(Qt::Key_E);
    EXPECT_EQ(outcomes(), before + 1) << page_->told().toStdString();
    EXPECT_EQ(entered(row), "eggs");
    EXPECT_NE(page_->table().currentIndex().row(), row);
    const auto rows = desk_->snapshot().all<Outcome>();
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const auto& outcome) {
        return outcome->side == side && outcome->day == page_->day();
    });
    ASSERT_NE(found, rows.end());
    EXPECT_EQ((*found)->kind, OutcomeKind::FirstEggs);
    // Corrected in place, taken back, undone.
    choose(row);
    key(Qt::Key_L);
    EXPECT_EQ(entered(row), "larvae");
    EXPECT_EQ(outcomes(), before + 1);
    choose(row);
    key(Qt::Key_Delete);
    EXPECT_EQ(outcomes(), before);
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(outcomes(), before + 1);
}

TEST_F(EveningViewTest, AQueenThatIsGoneIsAskedWhy) {
    const int row = seek(EveningEntry::Look);
    ASSERT_GE(row, 0);
    choose(row);
    key(Qt::Key_X);
    const auto menus = page_->findChildren<QMenu*>();
    ASSERT_EQ(menus.size(), 1);
    QTest::keyClick(menus.front(), Qt::Key_2);
    EXPECT_EQ(entered(row), "gone");
    EXPECT_EQ(model().index(row, EveningModel::Note).data().toString().toStdString(),
              "did not come back from her flight");
}

TEST_F(EveningViewTest, ANumberIsTypedIntoACount) {
    const int row = seek(EveningEntry::Count);
    ASSERT_GE(row, 0) << "the example has something to count";
    choose(row);
    key(Qt::Key_7);
    auto* editor = page_->table().findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    EXPECT_EQ(editor->text(), QStringLiteral("7"));
    QTest::keyClick(editor, Qt::Key_Return);
    // A late task that is done stands in another row.
    const auto isKept = [&] {
        for (int at = 0; at < model().rowCount(); ++at)
            if (entered(at).starts_with("7")) return true;
        return false;
    };
    EXPECT_TRUE(QTest::qWaitFor(isKept)) << page_->told().toStdString();
}

TEST_F(EveningViewTest, WhatCannotBeIsToldAndNotKept) {
    const int row = seek(EveningEntry::Count);
    ASSERT_GE(row, 0);
    choose(row);
    const auto before = outcomes();
    model().setData(model().index(row, EveningModel::Entered), QStringLiteral("20000"),
                    Qt::EditRole);
    QCoreApplication::processEvents();
    EXPECT_EQ(outcomes(), before);
    EXPECT_NE(page_->told().indexOf(QStringLiteral("9,999")), -1) << page_->told().toStdString();
}

TEST_F(EveningViewTest, ATickIsATickOfTheWeek) {
    const int row = seek(EveningEntry::Tick);
    ASSERT_GE(row, 0);
    choose(row);
    const auto before = desk_->snapshot().all<TaskDone>().size();
    key(Qt::Key_Space);
    EXPECT_EQ(desk_->snapshot().all<TaskDone>().size(), before + 1);
}

TEST_F(EveningViewTest, ABookOpenForReadingTakesNothing) {
    openPage(Access::ReadOnly, kToday);
    const int row = seek(EveningEntry::Tick);
    ASSERT_GE(row, 0);
    choose(row);
    key(Qt::Key_Space);
    EXPECT_FALSE(model().at(row).isFilled());
    EXPECT_NE(page_->told().indexOf(QStringLiteral("reading only")), -1);
}

}  // namespace
}  // namespace tenthday
