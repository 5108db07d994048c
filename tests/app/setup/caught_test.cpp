// Queens caught, on the set-up page: where each is, one or many moved at once.
#include <QPushButton>

#include "app/setup/setup_page_fixture.h"
#include "records/queen_verbs.h"
#include "screen_text/queen_text.h"
#include "screen_text/story_text.h"

namespace tenthday {
namespace {

using setup_text::Kind;
using test::day;

class CaughtPage : public test::SetupPageTest {
protected:
    void openWith(int queens, bool nucsKnown = false) {
        openExample();
        const auto& book = desk_->snapshot();
        QueenNumbers numbers(book, QueenPattern::of("{yy}-{n:3}").value());
        ChangeSet changes;
        std::optional<Id<NucSide>> side;
        if (nucsKnown) side = (*book.all<NucSide>().begin())->id;
        for (int i = 0; i < queens; ++i)
            addCaughtQueen(
                book, {(*book.all<Batch>().begin())->id, side, day("2027-05-20"), 2027}, numbers,
                [this] { return test::id<Queen>(++next_).uuid; }, changes);
        ASSERT_TRUE(desk_->apply(changes).ok());
        goTo(Kind::Caught);
    }
    QueenPlace placeOf(const char* label) {
        const auto& book = desk_->snapshot();
        const auto queen = findByLabel<Queen>(book, label);
        return stayOn(book, queen->id, book.today())->place;
    }
    std::uint64_t next_ = 970'000;
};

TEST_F(CaughtPage, EmptyItSaysWhereQueensComeFrom) {
    openExample();
    goTo(Kind::Caught);
    EXPECT_TRUE(page_->emptyText().contains(QStringLiteral("evening page")));
    EXPECT_FALSE(page_->addButton().isEnabled());
}

TEST_F(CaughtPage, EachQueenStandsWithMarkBatchPlaceAndDays) {
    openWith(3);
    ASSERT_EQ(page_->table().model()->rowCount(), 3);
    EXPECT_EQ(cell(0, 0), QStringLiteral("27-001"));
    EXPECT_EQ(cell(0, 1), QStringLiteral("2027, yellow")) << "S105: years in 2 or 7";
    EXPECT_EQ(cell(0, 6), QStringLiteral("bank"));
    EXPECT_EQ(cell(0, 8), QStringLiteral("14")) << "from 20 May to 3 June";
    // Breeder queens are listed apart.
    goTo(Kind::Queens);
    for (int row = 0; row < page_->table().model()->rowCount(); ++row)
        EXPECT_FALSE(cell(row, 0).startsWith(QStringLiteral("27-")));
}

TEST_F(CaughtPage, OneIsMovedAndUndone) {
    openWith(2);
    chooseRow(QStringLiteral("27-002"));
    choose(queen_text::moveTo(), QStringLiteral("sold"));
    type(setup_text::name(setup_text::Name::Note), QStringLiteral("Order 4"));
    QTest::keyClick(&page_->form(), Qt::Key_Return);
    EXPECT_EQ(placeOf("27-002"), QueenPlace::Sold);
    EXPECT_EQ(placeOf("27-001"), QueenPlace::Bank);
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(placeOf("27-002"), QueenPlace::Bank);
}

TEST_F(CaughtPage, OneIsLeftInHerNuc) {
    openWith(2, true);
    chooseRow(QStringLiteral("27-002"));
    choose(queen_text::moveTo(), queen_text::place(QueenPlace::Nuc));
    QTest::keyClick(&page_->form(), Qt::Key_Return);
    EXPECT_EQ(placeOf("27-002"), QueenPlace::Nuc);
    int in = 0;
    for (int row = 0; row < page_->table().model()->rowCount(); ++row)
        if (cell(row, 6).endsWith(QStringLiteral("for the winter"))) ++in;
    EXPECT_EQ(in, 1);
}

TEST_F(CaughtPage, ManyAreMovedAtOnce) {
    openWith(5);
    page_->table().selectAll();
    choose(queen_text::moveTo(), QStringLiteral("cage"));
    QTest::keyClick(&page_->form(), Qt::Key_Return);
    for (const char* label : {"27-001", "27-003", "27-005"})
        EXPECT_EQ(placeOf(label), QueenPlace::Cage) << label;
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(placeOf("27-003"), QueenPlace::Bank);
}

TEST_F(CaughtPage, NotBeforeSheWasCaught) {
    openWith(1);
    chooseRow(QStringLiteral("27-001"));
    choose(queen_text::moveTo(), QStringLiteral("lost"));
    type(queen_text::from(), setup_text::day(day("2027-05-19")));
    QTest::keyClick(&page_->form(), Qt::Key_Return);
    EXPECT_EQ(placeOf("27-001"), QueenPlace::Bank);
    EXPECT_TRUE(page_->form().under(1).contains(QStringLiteral("caught only on")))
        << page_->form().under(1).toStdString();
}

TEST_F(CaughtPage, DeletedWithHerCatchAndStays) {
    openWith(2);
    chooseRow(QStringLiteral("27-001"));
    QTest::mouseClick(&page_->removeButton(), Qt::LeftButton);
    EXPECT_FALSE(findByLabel<Queen>(desk_->snapshot(), "27-001"));
    EXPECT_EQ(desk_->snapshot().all<CaughtQueen>().size(), 1U);
    EXPECT_EQ(desk_->snapshot().all<QueenStay>().size(), 1U);
}

TEST_F(CaughtPage, LarvaeOfABreederQueenAreNoted) {
    openExample();
    goTo(Kind::Queens);
    choose(story_text::larvaeHead(), story_text::larvaeSeen(QueenNoteKind::NoLarvae));
    QTest::keyClick(&page_->form(), Qt::Key_Return);
    ASSERT_EQ(desk_->snapshot().all<QueenNote>().size(), 1U) << page_->form().told().toStdString();
    const auto note = *desk_->snapshot().all<QueenNote>().begin();
    EXPECT_EQ(note->kind, QueenNoteKind::NoLarvae);
    EXPECT_EQ(note->day, desk_->snapshot().today());
}

}  // namespace
}  // namespace tenthday
