// The evening page copied into a spreadsheet and pasted back: counts, looks, catches and ticks.
#include "evening/evening_paste.h"

#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>

#include "app/book/example_page.h"
#include "app/paste/pasting.h"
#include "evening/evening_view.h"
#include "look/table_note.h"
#include "screen_text/evening_text.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

using test::copied;
using test::day;
using test::paste;

class EveningPaste : public test::ExamplePageTest<EveningView> {
protected:
    /// Ten days on from the example's own: looks, counts and ticks are open.
    void SetUp() override {
        ExamplePageTest::SetUp();
        openPage(Access::ReadWrite, kToday);
    }
    static constexpr const char* kToday = "2027-06-13";
    EveningModel& model() { return page_->model(); }
    /// Goes back from today to the newest day with two rows or more of the entry, all empty.
    std::vector<int> seek(EveningEntry entry, std::size_t least = 2) {
        for (int back = 0; back < 60; ++back) {
            std::vector<int> rows;
            for (int row = 0; row < model().rowCount(); ++row)
                if (model().at(row).entry == entry && !model().at(row).isFilled())
                    rows.push_back(row);
            if (rows.size() >= least) return rows;
            page_->setDay(page_->day() - Days{1});
        }
        ADD_FAILURE() << "the example has no such rows";
        return {0, 0};
    }
    QString entered(int row) { return model().index(row, EveningModel::Entered).data().toString(); }
    int lineAt(int row) {
        int line = 0;
        for (int at = 0; at <= row; ++at) line += model().at(at).entry != EveningEntry::None;
        return line;
    }
    QString lineOf(const QString& text, int row) { return text.split(u'\n')[lineAt(row)]; }
    /// What was copied, with the cell of a row's entry changed.
    QString withEntry(const QString& text, int row, const QString& value, int cell = 3) {
        auto lines = text.split(u'\n');
        const int line = lineAt(row);
        auto cells = lines[line].split(u'\t');
        cells[cell] = value;
        lines[line] = cells.join(u'\t');
        return lines.join(u'\n');
    }
};

TEST_F(EveningPaste, WhatIsCopiedSaysNothingNew) {
    static_cast<void>(seek(EveningEntry::Look));
    const auto text = copied(table());
    EXPECT_TRUE(
        text.startsWith(QStringLiteral("What\tBar or nuc\tExpected\tEntered\tHour\tNote\n")))
        << text.toStdString();
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->preview().rowCount(), text.count(u'\n') - 1);
    EXPECT_EQ(dialog->preview().rowCount(), model().entryCount());
    dialog->accept();
    EXPECT_EQ(dialog->told(), paste_text::nothingNew());
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(EveningPaste, KeysOfLooksAreShownAsTheirWords) {
    const auto rows = seek(EveningEntry::Look);
    auto text = withEntry(copied(table()), rows[0], QStringLiteral("e"));
    text = withEntry(text, rows[1], QStringLiteral("V"));
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    const auto shown = [&](int row) {
        for (int column = 0; column < dialog->preview().columnCount(); ++column)
            if (dialog->preview().horizontalHeaderItem(column)->text() == QStringLiteral("Entered"))
                return dialog->preview().item(lineAt(row) - 1, column)->text();
        return QString();
    };
    EXPECT_EQ(shown(rows[0]), evening_text::look(NucLook::Eggs));
    EXPECT_EQ(shown(rows[1]), evening_text::look(NucLook::VirginSeen));
    dialog->accept();
    EXPECT_EQ(entered(rows[0]), evening_text::look(NucLook::Eggs));
}

TEST_F(EveningPaste, LooksComeBackAsOneEditWithTheCauseInTheNote) {
    const auto rows = seek(EveningEntry::Look);
    auto text = withEntry(copied(table()), rows[0], QStringLiteral("eggs"));
    text = withEntry(text, rows[1], QStringLiteral("gone"));
    text = withEntry(text, rows[1], QStringLiteral("killed by the bees"), 5);
    const auto before = desk_->snapshot();
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(entered(rows[0]), QStringLiteral("eggs"));
    EXPECT_EQ(entered(rows[1]), QStringLiteral("gone"));
    EXPECT_EQ(model().at(rows[1]).seen->note, "killed") << "kept as its token";
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before)) << "one step";
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(EveningPaste, AnEmptyCellTakesBackWhatWasEntered) {
    const auto rows = seek(EveningEntry::Look);
    table().setCurrentIndex(model().index(rows[0], EveningModel::Entered));
    page_->look(NucLook::Eggs);
    const auto text = withEntry(copied(table()), rows[0], {});
    const auto outcomes = desk_->snapshot().all<Outcome>().size();
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->summary().contains(QStringLiteral("Taken back: 1")))
        << dialog->summary().toStdString();
    EXPECT_EQ(dialog->preview().item(lineAt(rows[0]) - 1, 1)->text(),
              QStringLiteral("takes back what is there"));
    dialog->accept();
    EXPECT_EQ(desk_->snapshot().all<Outcome>().size() + 1, outcomes);
}

TEST_F(EveningPaste, ABareXIsNoLook) {
    const auto rows = seek(EveningEntry::Look);
    auto* dialog = paste(table(), withEntry(copied(table()), rows[0], QStringLiteral("x")));
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->takeButton().isEnabled()) << "gone by the page's keys, yes elsewhere";
    EXPECT_TRUE(dialog->summary().contains(QStringLiteral("virgin seen")))
        << dialog->summary().toStdString();
    dialog->reject();
}

TEST_F(EveningPaste, RowsAreNamedWithoutTheNumbersOfTheDay) {
    openPage(Access::ReadWrite, "2027-07-05");
    const auto rows = seek(EveningEntry::Caught, 1);
    int head = rows[0];
    while (!model().at(head).isHead) --head;
    EXPECT_TRUE(model()
                    .index(head, EveningModel::What)
                    .data()
                    .toString()
                    .contains(QStringLiteral(": about ")))
        << "the page says how many";
    const auto name = lineOf(copied(table()), rows[0]).section(u'\t', 0, 0);
    EXPECT_FALSE(name.contains(QStringLiteral("about"))) << name.toStdString();
    EXPECT_TRUE(name.startsWith(QStringLiteral("Catch queens \u00B7 batch ")))
        << name.toStdString();
}

TEST_F(EveningPaste, AColumnOfCountsFillsTheRowsFromTheCurrentOneOn) {
    const auto rows = seek(EveningEntry::Count);
    table().setCurrentIndex(model().index(rows[0], EveningModel::Entered));
    const auto count = QString::number(model().at(rows[0]).expected.value_or(1));
    auto* dialog = paste(table(), count + QStringLiteral("\r\n\r\n"));
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->preview().rowCount(), 1) << "a line without a value passes over its row";
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    const auto outcomes = desk_->snapshot().all<Outcome>().size();
    dialog->accept();
    EXPECT_EQ(desk_->snapshot().all<Outcome>().size(), outcomes + 1);
}

TEST_F(EveningPaste, ColumnsOfCountsLandAlikeWithTheirHeadAndWithout) {
    static_cast<void>(seek(EveningEntry::Count));
    int first = 0;
    while (model().at(first).entry != EveningEntry::Count) ++first;
    ASSERT_GT(lineAt(first), 1) << "other rows that take an entry stand above it";
    table().setCurrentIndex(model().index(0, EveningModel::Entered));
    const auto given = [&](const char* text) {
        auto* dialog = paste(table(), QString::fromLatin1(text));
        const auto lines = dialog->text().toPlainText();
        dialog->reject();
        return lines;
    };
    EXPECT_EQ(given("Entered\n7\n8\n"), given("7\n8\n"));
    const auto number = QString::number(lineAt(first));
    EXPECT_EQ(given("entered\n7\n").split(u'\n')[1].section(u'\t', 0, 0), number)
        << "the first row with a count";
}

TEST_F(EveningPaste, WhatCannotBeIsNamedByItsLineAndNothingIsKept) {
    const auto rows = seek(EveningEntry::Count);
    const auto before = desk_->snapshot();
    table().setCurrentIndex(model().index(rows[0], EveningModel::Entered));
    auto* dialog = paste(table(), QStringLiteral("1\n10000\n"));
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->takeButton().isEnabled());
    EXPECT_TRUE(dialog->summary().contains(QStringLiteral("line 3")))
        << dialog->summary().toStdString();
    EXPECT_TRUE(dialog->preview().item(1, 1)->text().contains(QStringLiteral("0 to 9,999")))
        << dialog->preview().item(1, 1)->text().toStdString();
    dialog->accept();
    dialog->reject();
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(EveningPaste, WordsThatAreNotKnownAndRowsThatAreNotThereAreRefused) {
    const auto rows = seek(EveningEntry::Look);
    const auto text = copied(table());
    auto* dialog = paste(table(), withEntry(text, rows[0], QStringLiteral("perhaps")));
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->summary().contains(QStringLiteral("virgin seen")))
        << "it says what is known: " << dialog->summary().toStdString();
    dialog->text().setPlainText(QStringLiteral("What\tEntered\nno such task\teggs\n"));
    dialog->accept();  // what is typed is read before it is taken
    EXPECT_TRUE(dialog->summary().contains(paste_text::noSuchRow()))
        << dialog->summary().toStdString();
    const auto line = lineOf(text, rows[0]);  // a nuc of its own
    dialog->text().setPlainText(text.split(u'\n')[0] + u'\n' + line + u'\n' + line);
    dialog->accept();
    ASSERT_EQ(dialog->preview().rowCount(), 2);
    EXPECT_EQ(dialog->preview().item(1, 1)->text(), paste_text::wrong(paste_text::twice()));
    dialog->reject();
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(EveningPaste, CatchesGiveNumbersOneAfterTheOther) {
    openPage(Access::ReadWrite, "2027-07-05");
    page_->setQueenNumbers(QStringLiteral("{batch}-{n}"));
    std::vector<int> rows;
    for (int back = 0; back < 60 && rows.size() < 2; ++back) {
        rows.clear();
        for (int row = 0; row < model().rowCount(); ++row)
            if (model().at(row).entry == EveningEntry::Caught && !model().at(row).isFilled())
                rows.push_back(row);
        if (rows.size() < 2) page_->setDay(page_->day() - Days{1});
    }
    ASSERT_GE(rows.size(), 2U);
    auto text = copied(table());
    for (const int at : {0, 1}) text = withEntry(text, rows[at], QStringLiteral("caught"));
    const auto queens = desk_->snapshot().all<Queen>().size();
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(desk_->snapshot().all<Queen>().size(), queens + 2);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().all<Queen>().size(), queens);
}

TEST_F(EveningPaste, ABookThatIsReadOnlySaysSo) {
    openPage(Access::ReadOnly, kToday);
    EXPECT_EQ(paste(table(), QStringLiteral("1\n")), nullptr);
    EXPECT_EQ(noteOn(table()), paste_text::readOnly());
}

}  // namespace
}  // namespace tenthday
