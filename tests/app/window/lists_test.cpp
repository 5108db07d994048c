// Lists taken into the open book and written from it.
#include "window/lists.h"

#include <QFile>
#include <QPushButton>

#include "app/book/book_fixture.h"
#include "paste/list_dialog.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

class ListsTest : public test::BookTest {
protected:
    void SetUp() override {
        desk_ = Desk::open(makeSmallBook(), test::fixedOptions()).value();
        ChangeSet changes;
        changes.add(Season{id<Season>(2), 1, "2028", day("2028-04-01"), day("2028-09-30")});
        ASSERT_TRUE(desk_->apply(changes));
    }
    void TearDown() override { desk_.reset(); }
    /// Rows that came or changed; what the dialog says where it cannot take the list.
    Result<int> take(const std::string& kind, const std::string& text) {
        int rows = 0;
        const auto dialog = listDialog(
            *desk_, kind, text, [&](int taken) { rows = taken; }, nullptr);
        if (!dialog) return dialog.error();
        const std::unique_ptr<PasteDialog> form(dialog.value());
        if (!form->takeButton().isEnabled()) return Error{form->summary().toStdString()};
        form->accept();
        return rows;
    }
    std::string written(const std::string& kind) {
        const auto path = at(QStringLiteral("out.csv"));
        EXPECT_TRUE(exportList(*desk_, kind, path));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll().toStdString();
    }

    std::unique_ptr<Desk> desk_;
};

TEST_F(ListsTest, RowsOfTheSeasonShownAreOneUndoStep) {
    const auto rows = take("batches", "label,day,method\n7,2027-06-20,our way\n");
    ASSERT_TRUE(rows) << rows.error().text;
    EXPECT_EQ(rows.value(), 1);
    EXPECT_EQ(desk_->outlook()->batches.size(), 2U);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->outlook()->batches.size(), 1U);
}

TEST_F(ListsTest, BatchesOfAnotherSeasonGoIntoTheFileAndNotAmongThoseShown) {
    ASSERT_TRUE(take("batches", "label,day,method\n7,2028-06-20,our way\n"));
    EXPECT_EQ(desk_->outlook()->batches.size(), 1U);
    EXPECT_TRUE(desk_->snapshot().isLabelOfOtherSeason("7"));
    // What hangs on it comes the same way, though it is not shown.
    ASSERT_TRUE(take("outcomes", "batch,kind,day,count\n7,graft,2028-06-20,20\n"));
    ASSERT_TRUE(desk_->showSeason(id<Season>(2)));
    ASSERT_EQ(desk_->outlook()->batches.size(), 1U);
    EXPECT_TRUE(desk_->outlook()->batches[0]->timeline.grafted);
}

TEST_F(ListsTest, RowsOfAnotherSeasonAreOneUndoStepToo) {
    const auto empty = written("batches");
    ASSERT_TRUE(take("batches",
                     "label,day,method\n7,2028-06-20,our way\n8,2028-06-25,our way\n"
                     "9,2027-06-20,our way\n"));
    const auto with = written("batches");
    EXPECT_EQ(desk_->outlook()->batches.size(), 2U) << "one is of the season shown";
    ASSERT_TRUE(take("outcomes", "batch,kind,day,count\n7,graft,2028-06-20,20\n"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(written("batches"), with);
    EXPECT_EQ(written("outcomes").find("2028-06-20"), std::string::npos);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(written("batches"), empty);
    EXPECT_FALSE(desk_->snapshot().isLabelOfOtherSeason("7"));
    ASSERT_TRUE(desk_->redo());
    ASSERT_TRUE(desk_->redo());
    EXPECT_NE(written("outcomes").find("2028-06-20"), std::string::npos);
    EXPECT_TRUE(desk_->snapshot().isLabelOfOtherSeason("7"));
    EXPECT_EQ(desk_->outlook()->batches.size(), 2U);
}

TEST_F(ListsTest, AHoldForDiseaseRefusesNoList) {
    ChangeSet hold;
    hold.add(YardNote{id<YardNote>(50),
                      1,
                      test::kYard,
                      YardNoteKind::Disease,
                      day("2027-05-20"),
                      day("2027-07-20"),
                      {}});
    ASSERT_TRUE(desk_->apply(hold));
    const std::string list = "label,yard,yard_from\n12,,2027-06-20\n";
    const auto taken = take("boxes", list);
    ASSERT_TRUE(taken) << taken.error().text << " (findings tell it)";
    EXPECT_EQ(taken.value(), 1);
    ASSERT_TRUE(desk_->undo());
}

TEST_F(ListsTest, ABadLineChangesNothingAndIsNamed) {
    const auto before = desk_->snapshot();
    const auto bad =
        take("batches", "label,day,method\n7,2028-06-20,our way\n8,2028-02-30,our way\n");
    ASSERT_FALSE(bad);
    EXPECT_NE(bad.error().text.find("line 3: column day"), std::string::npos) << bad.error().text;
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(ListsTest, WhatIsWrittenIsTakenAgainAsNothingNew) {
    ASSERT_TRUE(take("batches", "label,day,method,note\n7,2028-06-20,our way,\" a\u00A0b \"\n"));
    const auto again = take("batches", written("batches"));
    ASSERT_TRUE(again) << again.error().text;
    EXPECT_EQ(again.value(), 0);
}

}  // namespace
}  // namespace tenthday
