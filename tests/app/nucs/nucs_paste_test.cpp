// The nucs of a day copied into a spreadsheet and pasted back: what they are stocked with.
#include "nucs/nucs_paste.h"

#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>

#include "app/book/example_page.h"
#include "app/paste/pasting.h"
#include "nucs/nucs_page.h"
#include "screen_text/nuc_text.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

using test::copied;
using test::paste;

class NucsPaste : public test::ExamplePageTest<NucsPage> {
protected:
    QString nuc(int row) { return table().model()->index(row, NucsModel::Nuc).data().toString(); }
    std::size_t stockings() { return desk_->snapshot().all<Stocking>().size(); }
};

/// On a day on which the example stocks nucs.
constexpr const char* kStocked = "2027-05-29";

TEST_F(NucsPaste, WhatIsCopiedSaysNothingNew) {
    page_->setDay(test::day(kStocked));
    const auto text = copied(table());
    EXPECT_EQ(text.count(u'\n') - 1, table().model()->rowCount());
    EXPECT_TRUE(text.section(u'\n', 0, 0).endsWith(QStringLiteral("Stocked: from")));
    EXPECT_TRUE(text.contains(QStringLiteral("\t1200\t1\tyes\tOrchard\n"))) << text.toStdString();
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(dialog->told(), paste_text::nothingNew());
}

TEST_F(NucsPaste, StockingsOfTheDayComeBackAsOneEditAndCanBePutRight) {
    const auto before = desk_->snapshot();
    const auto was = stockings();
    const auto lines = [&](int bees) {
        return QStringLiteral(
                   "Nuc\tbees_ml\tbrood_frames\topen_brood\tdonor\n"
                   "%1\t%2\t1\tyes\tcolony 4\n%3\t300\t\t\t\n")
            .arg(nuc(0))
            .arg(bees)
            .arg(nuc(1));
    };
    auto* dialog = paste(table(), lines(250));
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    ASSERT_EQ(stockings(), was + 2);
    dialog = paste(table(), lines(275));
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->summary().contains(QStringLiteral("1 that change")))
        << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(stockings(), was + 2) << "changed, not added";
    bool found = false;
    for (const auto& row : desk_->snapshot().all<Stocking>())
        found = found || (row->day == page_->day() && row->beesMl == BeesMl{275} &&
                          row->openBrood && row->donor == "colony 4");
    EXPECT_TRUE(found);
    ASSERT_TRUE(desk_->undo());
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before)) << "a step each";
}

TEST_F(NucsPaste, EmptiedCellsDoNotDeleteAStockingAndSayWhereItIsDeleted) {
    page_->setDay(test::day(kStocked));
    const auto pasted = [&](const char* heads, const char* nuc, const char* cells) {
        auto* dialog = paste(table(), QStringLiteral("Nuc\t%1\n%2\t%3\n")
                                          .arg(QString::fromLatin1(heads), QString::fromLatin1(nuc),
                                               QString::fromLatin1(cells)));
        const auto state = dialog->preview().item(0, 1)->text();
        dialog->reject();
        return state;
    };
    const char* all = "bees_ml\tbrood_frames\topen_brood\tdonor";
    const auto deleted = paste_text::wrong(nuc_text::deletedInList());
    EXPECT_EQ(pasted(all, "H10", "\t\t\t"), deleted);
    EXPECT_EQ(pasted("bees_ml", "H10", ""), deleted);
    EXPECT_EQ(pasted(all, "Q15", "\t\t\t"), QStringLiteral("as it is already")) << "not that day";
}

TEST_F(NucsPaste, UnknownNucsAndCountsThatAreNoneAreToldByLine) {
    auto* dialog =
        paste(table(), QStringLiteral("Nuc\tbees_ml\nNo such nuc\t200\n%1\tmany\n").arg(nuc(0)));
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->takeButton().isEnabled());
    EXPECT_TRUE(dialog->preview().item(0, 1)->text().contains(paste_text::noSuchRow()));
    EXPECT_TRUE(dialog->preview().item(1, 1)->text().contains(QStringLiteral("many")));
    dialog->reject();
    EXPECT_FALSE(desk_->canUndo());
}

}  // namespace
}  // namespace tenthday
