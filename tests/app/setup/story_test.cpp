// A builder's and a breeder queen's season in order, from the set-up page.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTableWidget>

#include "app/setup/setup_page_fixture.h"
#include "setup/story_dialog.h"

namespace tenthday {
namespace {

using setup_text::Kind;
using test::day;

class StoryPage : public test::SetupPageTest {
protected:
    /// Opens the story of what is chosen by F4, reads it and closes it by Esc.
    void read() {
        answerNext<StoryDialog>([&](StoryDialog& dialog) {
            lines_.clear();
            const auto& table = dialog.lines();
            for (int row = 0; row < table.rowCount(); ++row) {
                QStringList cells;
                for (int column = 0; column < 3; ++column) cells += table.item(row, column)->text();
                lines_ += cells.join(QStringLiteral(" | "));
            }
            tip_ = table.rowCount() > 0 ? table.item(0, 0)->toolTip() : QString();
            empty_ = dialog.emptyText();
            foot_ = dialog.foot();
            head_ = dialog.windowTitle();
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        page_->table().setFocus();
        QTest::keyClick(&page_->table(), Qt::Key_F4);
        ASSERT_TRUE(answered_);
    }
    bool has(const QString& line) const {
        return std::any_of(lines_.begin(), lines_.end(),
                           [&](const QString& other) { return other.contains(line); });
    }
    std::string all() const { return lines_.join(u'\n').toStdString(); }

    QStringList lines_;
    QString tip_;
    QString empty_;
    QString foot_;
    QString head_;
};

TEST_F(StoryPage, ABuilderIsToldFromMakingUpToItsEnd) {
    openExample();
    goTo(Kind::Builders);
    chooseRow(QStringLiteral("North"));
    read();
    EXPECT_EQ(head_, QStringLiteral("The season of builder North"));
    ASSERT_GT(lines_.size(), 10) << all();
    EXPECT_EQ(lines_.front(),
              QStringLiteral("Mon 3 May 17:00 | made up | with open brood, 9,000 ml of bees, 4 "
                             "brood frames; from Heath; a wild queen can be out from Wed 12 May "
                             "17:00"));
    EXPECT_TRUE(tip_.contains(QStringLiteral("S118"))) << tip_.toStdString();
    EXPECT_TRUE(has(QStringLiteral("Sun 9 May 15:00 | look for wild cells"))) << all();
    EXPECT_TRUE(has(QStringLiteral("| batch 701 |"))) << all();
    EXPECT_TRUE(has(QStringLiteral("room for 24"))) << all();
    // Made up on 3 May with open brood: sealed on the 12th (S1, S2, S27), made up anew on the 15th.
    EXPECT_TRUE(
        has(QStringLiteral("Wed 12 May to Fri 14 May | no open brood | for mite work: 3 "
                           "days")))
        << all();
    EXPECT_TRUE(lines_.back().contains(QStringLiteral("Tue 10 Aug | its last day"))) << all();
    EXPECT_TRUE(foot_.contains(QStringLiteral("follow the label and the local rules")));
    EXPECT_TRUE(empty_.isEmpty());
}

TEST_F(StoryPage, ABuilderWithoutASeasonSaysWhatBelongsThere) {
    openExample();
    Builder fresh;
    fresh.id = newId<Builder>();
    fresh.label = "Zulu";
    fresh.yard = (*desk_->snapshot().all<Yard>().begin())->id;
    fresh.from = day("2027-05-01");
    ChangeSet changes;
    changes.add(fresh);
    ASSERT_TRUE(desk_->apply(changes));
    goTo(Kind::Builders);
    chooseRow(QStringLiteral("Zulu"));
    read();
    EXPECT_TRUE(lines_.isEmpty()) << all();
    EXPECT_TRUE(empty_.startsWith(QStringLiteral("Nothing happens in this builder")));
}

TEST_F(StoryPage, ALineOfTheDiaryTellsItsBuilder) {
    openExample();
    goTo(Kind::Diary);
    read();
    EXPECT_EQ(head_, QStringLiteral("The season of builder West"));
}

TEST_F(StoryPage, ABreederQueenIsToldByHerConfinements) {
    openExample();
    goTo(Kind::Queens);
    chooseRow(QStringLiteral("Rowan 3"));
    read();
    ASSERT_EQ(lines_.size(), 4) << all();
    EXPECT_EQ(
        lines_[0].toStdString(),
        "Thu 6 May 14:00 to Fri 7 May 14:00 | confined for batch 702 | her first this season; "
        "no reserve of her line");
    EXPECT_TRUE(lines_[1].contains(QStringLiteral("free for 5 days before"))) << all();
}

TEST_F(StoryPage, TheListOfQueensSaysHowOftenAndHowSoon) {
    openExample();
    // Both take Thistle 7: the later one comes three days after the other now.
    const auto queen = findByLabel<Queen>(desk_->snapshot(), "Thistle 7");
    const auto batch = findByLabel<Batch>(desk_->snapshot(), "708");
    const auto other = findByLabel<Batch>(desk_->snapshot(), "707");
    ASSERT_TRUE(queen && batch && other);
    ChangeSet changes;
    Batch sooner = *batch;
    sooner.day = other->day + Days{3};
    changes.edit(batch, sooner);
    ASSERT_TRUE(desk_->apply(changes));
    goTo(Kind::Queens);
    const auto& model = *page_->table().model();
    QString words;
    QString tip;
    for (int row = 0; row < model.rowCount(); ++row)
        if (cell(row, 0) == QStringLiteral("Thistle 7")) {
            words = cell(row, 3);
            tip = cell(row, 3, Qt::ToolTipRole);
        }
    EXPECT_TRUE(words.contains(QStringLiteral("times, too soon "))) << "[" << words.toStdString();
    EXPECT_TRUE(tip.contains(QStringLiteral("too soon: free for 2 days before")))
        << tip.toStdString();
    chooseRow(QStringLiteral("Thistle 7"));
    read();
    EXPECT_TRUE(has(QStringLiteral("too soon: free for 2 days before"))) << all();
}

TEST_F(StoryPage, OtherKindsHaveNone) {
    openExample();
    goTo(Kind::Yards);
    EXPECT_FALSE(page_->storyButton().isVisible());
    goTo(Kind::Queens);
    EXPECT_TRUE(page_->storyButton().isVisible());
    goTo(Kind::Methods);
    EXPECT_FALSE(page_->storyButton().isVisible());
}

}  // namespace
}  // namespace tenthday
