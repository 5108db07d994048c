// What is copied from a list of the book pastes back as nothing new, and changed as one edit.
#include "paste/kept_list.h"

#include <QClipboard>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>

#include "app/paste/pasting.h"
#include "app/setup/setup_page_fixture.h"
#include "facts/facts_page.h"
#include "look/table_note.h"
#include "paste/paste_dialog.h"
#include "records/verbs.h"
#include "records/weather_verbs.h"
#include "screen_text/paste_text.h"
#include "weather/weather_page.h"

namespace tenthday::test {
namespace {

using Kind = setup_text::Kind;

/// How many lines were copied and read again, none of which says anything new.
int linesThatSayNothingNew(QTableView& table) {
    int lines = 0;
    auto* dialog = paste(table, copied(table));
    for (; dialog != nullptr; dialog = pasteDialog(table)) {
        lines += dialog->preview().rowCount();
        if (dialog->preview().rowCount() > 0) {
            EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
            dialog->accept();
        }
        if (!dialog->isVisible()) continue;  // a part of several: the next one follows
        if (dialog->preview().rowCount() > 0) {
            EXPECT_EQ(dialog->told(), paste_text::nothingNew());
        }
        dialog->reject();
    }
    return lines;
}

class KeptListTest : public SetupPageTest {
protected:
    void changeText(const QString& from, const QString& to) {
        auto text = QApplication::clipboard()->text();
        ASSERT_TRUE(text.contains(from)) << text.toStdString();
        QApplication::clipboard()->setText(text.replace(from, to));
    }
    void set(const ChangeSet& changes) { ASSERT_TRUE(desk_->apply(changes)); }
};

TEST_F(KeptListTest, WhatEachListOfTheSetUpPageCopiesIsNothingNew) {
    openExample();
    for (const char* decimals : {"en_GB", "de_DE"}) {
        QLocale::setDefault(QLocale(QString::fromLatin1(decimals)));
        for (int kind = 0; kind < page_->kinds().count(); ++kind) {
            SCOPED_TRACE(page_->kinds().item(kind)->text().toStdString());
            page_->kinds().setCurrentRow(kind);
            const int things = page_->table().model()->rowCount();
            const int lines = linesThatSayNothingNew(page_->table());
            EXPECT_GE(lines, things) << "a thing has a line or more";
        }
    }
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(KeptListTest, ChosenRowsAloneAreCopiedAndComeBackChangedInOneStep) {
    openExample();
    goTo(Kind::Boxes);
    const auto before = desk_->snapshot();
    page_->table().selectionModel()->clearSelection();
    for (const int row : {0, 1})
        page_->table().selectionModel()->select(
            page_->table().model()->index(row, 0),
            QItemSelectionModel::Select | QItemSelectionModel::Rows);
    const auto label = cell(0, 0);
    const auto text = copied(page_->table());
    EXPECT_EQ(text.count(u'\n'), 3) << text.toStdString();
    EXPECT_TRUE(text.startsWith(QStringLiteral("id\tlabel\t"))) << text.toStdString();
    changeText(u'\t' + label + u'\t', QStringLiteral("\tQ 99\t"));
    auto* dialog = paste(page_->table(), QApplication::clipboard()->text());
    ASSERT_NE(dialog, nullptr);
    dialog->accept();
    EXPECT_EQ(pasteDialog(page_->table()), nullptr);
    EXPECT_NE(findByLabel<Box>(desk_->snapshot(), "Q 99"), nullptr);
    EXPECT_EQ(desk_->snapshot().all<Box>().size(), before.all<Box>().size());
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(KeptListTest, SpacesThatDoNotBreakAndOuterOnesComeBackAsTheyWere) {
    openExample();
    const auto yard = *desk_->snapshot().all<Yard>().begin();
    Yard noted = *yard;
    noted.note = " a\u00A0b \ntwo; 1,5\t\"x\" ";
    ChangeSet changes;
    changes.edit(yard, noted);
    set(changes);
    goTo(Kind::Yards);
    EXPECT_GT(linesThatSayNothingNew(page_->table()), 0);
    EXPECT_EQ(desk_->snapshot().find(yard->id)->note, noted.note);
}

TEST_F(KeptListTest, TheDiaryCopiesItsTwoKindsAndReadsThemByTheirHeads) {
    const std::vector<std::string> kinds{"makeups", "buildernotes"};
    const auto parts = partsByKind(
        "id\tbuilder\tday\n\tBig\t2027-05-01\n\nid\tbuilder\tkind\tday\n\tBig\tlook\t2027-05-02\n",
        kinds);
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_EQ(parts[0].kind, "makeups");
    EXPECT_EQ(parts[1].kind, "buildernotes");
    EXPECT_NE(parts[1].text.find("2027-05-02"), std::string::npos);
    EXPECT_EQ(parts[0].text.find("2027-05-02"), std::string::npos);
    EXPECT_EQ(partsByKind("Big\t2027-05-01\n", kinds).size(), 1U) << "no heads: the first kind";
    EXPECT_EQ(partsByKind("", kinds).size(), 1U);
}

TEST_F(KeptListTest, TheTwoKindsOfTheDiaryAreTakenInAsOneEditOrNotAtAll) {
    openExample();
    goTo(Kind::Diary);
    const auto before = desk_->snapshot();
    const auto builder = QString::fromStdString((*before.all<Builder>().begin())->label);
    const auto text = QStringLiteral(
                          "builder\tday\tbees_ml\n%1\t2027-04-20\t900\n\n"
                          "builder\tkind\tday\n%1\tlook\t2027-04-21\n")
                          .arg(builder);
    const auto made = before.all<MakeUp>().size();
    const auto noted = before.all<BuilderNote>().size();
    for (const bool giveUp : {true, false}) {
        auto* first = paste(page_->table(), text);
        ASSERT_NE(first, nullptr);
        EXPECT_TRUE(first->windowTitle().endsWith(QStringLiteral("(1 of 2)")));
        EXPECT_TRUE(first->takeButton().isEnabled()) << first->summary().toStdString();
        EXPECT_EQ(first->takeButton().text(), QStringLiteral("Go on")) << "it takes nothing yet";
        first->accept();
        EXPECT_FALSE(desk_->canUndo()) << "nothing before the last one is taken";
        auto* second = pasteDialog(page_->table());
        ASSERT_NE(second, nullptr);
        EXPECT_TRUE(second->windowTitle().endsWith(QStringLiteral("(2 of 2)")));
        EXPECT_NE(second->takeButton().text(), QStringLiteral("Go on"));
        giveUp ? second->reject() : second->accept();
        EXPECT_EQ(noteOn(page_->table()), giveUp ? paste_text::gaveUp() : QString());
        EXPECT_EQ(pasteDialog(page_->table()), nullptr);
        EXPECT_EQ(desk_->canUndo(), !giveUp);
    }
    EXPECT_EQ(desk_->snapshot().all<MakeUp>().size(), made + 1);
    EXPECT_EQ(desk_->snapshot().all<BuilderNote>().size(), noted + 1);
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before)) << "one step";
}

TEST_F(KeptListTest, QueensCaughtComeBackWithTheirCatchAndTheirStays) {
    openExample();
    const auto batch = *desk_->snapshot().all<Batch>().begin();
    Queen queen;
    queen.id = id<Queen>(801);
    queen.label = "27-801";
    CaughtQueen caught;
    caught.id = id<CaughtQueen>(802);
    caught.queen = queen.id;
    caught.batch = batch->id;
    caught.day = desk_->snapshot().today() - Days{3};
    QueenStay stay;
    stay.id = id<QueenStay>(803);
    stay.queen = queen.id;
    stay.from = caught.day;
    ChangeSet changes;
    changes.add(queen);
    changes.add(caught);
    changes.add(stay);
    set(changes);
    goTo(Kind::Caught);
    EXPECT_GE(linesThatSayNothingNew(page_->table()), 3 * page_->table().model()->rowCount());
    // All that is known of her comes back where she was deleted.
    const auto text = copied(page_->table());
    EXPECT_EQ(text.count(QStringLiteral("27-801")), 3) << "she, her catch, where she is";
    const auto whole = desk_->snapshot();
    ASSERT_TRUE(desk_->undo());
    auto* dialog = paste(page_->table(), text);
    for (int part = 0; part < 3; ++part) {
        ASSERT_NE(dialog, nullptr);
        EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
        dialog->accept();
        dialog = pasteDialog(page_->table());
    }
    EXPECT_EQ(dialog, nullptr);
    EXPECT_EQ(desk_->snapshot().all<CaughtQueen>().size(), whole.all<CaughtQueen>().size());
    EXPECT_EQ(desk_->snapshot().all<QueenStay>().size(), whole.all<QueenStay>().size());
    EXPECT_NE(desk_->snapshot().find(queen.id), nullptr);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().find(queen.id), nullptr) << "one step";
}

TEST_F(KeptListTest, WeatherAndTradeNumbersComeBackToo) {
    openExample();
    set(setFact(desk_->snapshot(), Fact::FlyTmaxC, 16.5, id<FactOverride>(77)).value());
    const auto twoDaysAgo = desk_->snapshot().today() - Days{2};
    set(recordFlew(desk_->snapshot(), twoDaysAgo, true, id<WeatherDay>(78)));
    for (const char* decimals : {"en_GB", "de_DE"}) {
        QLocale::setDefault(QLocale(QString::fromLatin1(decimals)));
        SCOPED_TRACE(decimals);
        FactsPage facts(*desk_);
        EXPECT_EQ(linesThatSayNothingNew(facts.table()), static_cast<int>(kTokenCount<Fact>));
        WeatherPage weather(*desk_);
        weather.show();  // it is filled once it is seen
        EXPECT_GT(linesThatSayNothingNew(weather.days()), 0);
        static_cast<void>(linesThatSayNothingNew(weather.months()));
    }
    WeatherPage weather(*desk_);
    auto* dialog = paste(weather.months(), QStringLiteral("month;tmax_c;rain_days\n5;19,5;10\n"));
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    bool found = false;
    for (const auto& month : desk_->snapshot().all<ClimateMonth>())
        found = found || (month->month == 5 && month->tmaxC == Tenths{195});
    EXPECT_TRUE(found);
    EXPECT_GT(linesThatSayNothingNew(weather.months()), 0);
}

TEST_F(KeptListTest, NothingIsPastedIntoABookThatIsReadOnly) {
    openExample(Access::ReadOnly);
    EXPECT_FALSE(copied(page_->table()).isEmpty());
    EXPECT_EQ(paste(page_->table(), QStringLiteral("label\tday\n")), nullptr);
    EXPECT_EQ(noteOn(page_->table()), paste_text::readOnly());
}

TEST_F(KeptListTest, ALongListSaysHowManyOfItsLinesAreShown) {
    openExample();
    QString text = QStringLiteral("from,until,note\n");
    for (int i = 0; i < 1234; ++i)
        text += QStringLiteral("%1,%1,n\n").arg(QDate(2024, 1, 1).addDays(i).toString(Qt::ISODate));
    PasteDialog dialog(*desk_, listToPaste("daysoff"), text,
                       [](const ChangeSet&) { return QString(); });
    EXPECT_EQ(dialog.preview().rowCount(), 500);
    EXPECT_EQ(dialog.shownOf().toStdString(),
              "500 of 1,234 lines are shown; all of them are taken in.");
    EXPECT_TRUE(dialog.summary().startsWith(QStringLiteral("All good: 1,234 new.")))
        << dialog.summary().toStdString();
    EXPECT_EQ(dialog.preview().item(0, 1)->text(), QString()) << "not told apart";
    dialog.text().setPlainText(QStringLiteral("from,until,note\n2027-01-01,2027-01-02,x\n"));
    dialog.accept();
    EXPECT_EQ(dialog.preview().rowCount(), 1) << "what is typed is read before it is taken";
    EXPECT_EQ(dialog.shownOf(), QString());
}

TEST_F(KeptListTest, TheFirstLineThatCannotBeTakenIsInSight) {
    openExample();
    QString text = QStringLiteral("from,until,note\n");
    for (int i = 0; i < 200; ++i)
        text += QStringLiteral("%1,2027-01-01,n%2\n")
                    .arg(i == 150 ? QStringLiteral("someday") : QStringLiteral("2027-01-01"))
                    .arg(i);
    PasteDialog dialog(*desk_, listToPaste("daysoff"), text,
                       [](const ChangeSet&) { return QString(); });
    dialog.setVisible(true);
    QCoreApplication::processEvents();
    auto& lines = dialog.preview();
    EXPECT_TRUE(
        lines.viewport()->rect().contains(lines.visualItemRect(lines.item(150, 1)).center()));
    EXPECT_FALSE(
        lines.viewport()->rect().contains(lines.visualItemRect(lines.item(0, 1)).center()));
}

}  // namespace
}  // namespace tenthday::test
