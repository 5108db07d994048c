// The nucs of a day copied into a spreadsheet and pasted back: what they are stocked with.
#include "nucs/nucs_paste.h"

#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>

#include "app/book/example_page.h"
#include "app/paste/pasting.h"
#include "nucs/nucs_page.h"
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

TEST_F(NucsPaste, WhatIsCopiedSaysNothingNew) {
    const auto text = copied(table());
    EXPECT_EQ(text.count(u'\n') - 1, table().model()->rowCount());
    EXPECT_TRUE(text.section(u'\n', 0, 0).endsWith(QStringLiteral("Stocked: from")));
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
