#include "nucs/nucs_page.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "app/book/book_fixture.h"
#include "exchange/example.h"
#include "nucs/mite_dialog.h"
#include "nucs/stocking_dialog.h"
#include "occupancy/stocking_list.h"
#include "reasons/reasons_view.h"

namespace tenthday {
namespace {

using test::day;

class NucsPageTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        path_ = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(createBook(path_, exampleContent(), test::fixedOptions()).ok());
        desk_ = Desk::open(path_).value();
        page_ = std::make_unique<NucsPage>(*desk_);
        page_->resize(1200, 700);
        page_->show();
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }
    int rows() { return page_->table().model()->rowCount(); }
    std::string text(int row, NucsModel::Column column) {
        return page_->table().model()->index(row, column).data().toString().toStdString();
    }

    QString path_;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<NucsPage> page_;
};

// A drag on the chart shows a season at every step: a list that nobody sees need not follow.
TEST_F(NucsPageTest, FollowsOnlyWhileItIsSeenAndThenAtOnce) {
    const int before = rows();
    page_->hide();
    const auto numbers = page_->numbersText();
    page_->setDay(day("2027-07-20"));
    EXPECT_EQ(page_->numbersText(), numbers) << "nobody looks";
    EXPECT_EQ(page_->day(), day("2027-07-20")) << "yet it knows its day";
    page_->show();
    EXPECT_NE(page_->numbersText(), numbers);
    EXPECT_GE(rows(), before);
}

TEST_F(NucsPageTest, ShowsEveryNucOfTheDayInDrivingOrderWithTheFourNumbers) {
    EXPECT_EQ(page_->day(), day("2027-06-03"));
    EXPECT_GT(rows(), 70);
    EXPECT_EQ(text(0, NucsModel::Yard), "Orchard");
    EXPECT_EQ(text(0, NucsModel::Nuc), "O1 A");
    EXPECT_EQ(text(0, NucsModel::State), "laying, not judged");
    EXPECT_EQ(text(rows() - 1, NucsModel::Yard), "Heath");
    ReadyNumbers numbers;
    for (const auto& yard : desk_->outlook()->nucs.yards)
        numbers += yard.days[static_cast<std::size_t>(
                                 (page_->day() - desk_->outlook()->season.first).count())]
                       .numbers;
    EXPECT_TRUE(page_->numbersText().startsWith(QStringLiteral("%1 ready").arg(numbers.ready)))
        << page_->numbersText().toStdString();
    EXPECT_TRUE(
        page_->numbersText().contains(QStringLiteral("%1 can be stocked").arg(numbers.canStock)));
}

TEST_F(NucsPageTest, KeysStepTheDayAndTheFilterCounts) {
    QSignalSpy spy(page_.get(), &NucsPage::dayChosen);
    QTest::keyClick(&page_->table(), Qt::Key_Right);
    QTest::keyClick(&page_->table(), Qt::Key_Right);
    QTest::keyClick(&page_->table(), Qt::Key_Left);
    EXPECT_EQ(page_->day(), day("2027-06-04"));
    EXPECT_EQ(spy.size(), 3);
    QTest::keyClick(&page_->table(), Qt::Key_Home);
    EXPECT_EQ(page_->day(), day("2027-06-03"));

    const int all = rows();
    int sum = 0;
    // The last entry, bees worn, goes across the others.
    for (int group = 1; group < page_->filter().count() - 1; ++group) {
        page_->filter().setCurrentIndex(group);
        sum += rows();
    }
    EXPECT_EQ(sum, all) << "each nuc is in exactly one group";
    page_->filter().setCurrentIndex(0);
    page_->find().setText(QStringLiteral("quarry"));
    EXPECT_GT(rows(), 0);
    EXPECT_LT(rows(), all);
    for (int row = 0; row < rows(); ++row) EXPECT_EQ(text(row, NucsModel::Yard), "Quarry");
}

TEST_F(NucsPageTest, ManyNucsAreStockedInOneStep) {
    page_->setDay(day("2027-06-07"));
    page_->filter().setCurrentIndex(3);
    const int free = rows();
    ASSERT_GT(free, 2);
    EXPECT_FALSE(page_->stockButton().isEnabled());
    page_->table().selectAll();
    EXPECT_TRUE(page_->stockButton().text().startsWith(QStringLiteral("Stock %1 nucs").arg(free)));
    page_->bees().setValue(450);
    page_->openBrood().setChecked(false);
    page_->donor().setCurrentText(QStringLiteral("Heath"));
    const auto before = desk_->snapshot().all<Stocking>().size();
    QTest::mouseClick(&page_->stockButton(), Qt::LeftButton);
    EXPECT_EQ(desk_->snapshot().all<Stocking>().size(), before + static_cast<std::size_t>(free));
    for (const auto& stocking : desk_->snapshot().all<Stocking>())
        if (stocking->day == page_->day() && stocking->beesMl == BeesMl{450}) {
            EXPECT_EQ(stocking->donor, "Heath");
            EXPECT_FALSE(stocking->openBrood);
        }
    // Stocked twice on a day is refused, and says so; one undo takes all back.
    page_->filter().setCurrentIndex(0);
    page_->table().selectAll();
    QTest::mouseClick(&page_->stockButton(), Qt::LeftButton);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("already")) ||
                page_->told().contains(QStringLiteral("stocked")))
        << page_->told().toStdString();
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(desk_->snapshot().all<Stocking>().size(), before);
}

TEST_F(NucsPageTest, NothingIsPlannedOutOfAYardUnderAHold) {
    YardNote hold;
    hold.id = Id<YardNote>{Uuid{7, 7}};
    hold.yard = findByLabel<Yard>(desk_->snapshot(), "Heath")->id;
    hold.kind = YardNoteKind::Disease;
    hold.from = day("2027-06-01");
    hold.until = day("2027-07-01");
    ChangeSet changes;
    changes.add(hold);
    ASSERT_TRUE(desk_->apply(changes).ok());
    EXPECT_EQ(page_->donor().findText(QStringLiteral("Heath")), -1) << "not offered";
    page_->filter().setCurrentIndex(3);  // can be stocked
    const auto before = desk_->snapshot().all<Stocking>().size();
    const auto stockFromHeath = [&](const char* on) {
        page_->setDay(day(on));
        page_->donor().setCurrentText(QStringLiteral("Heath 2"));
        page_->table().selectRow(0);
        page_->stockButton().click();
        return desk_->snapshot().all<Stocking>().size() - before;
    };
    EXPECT_EQ(stockFromHeath("2027-06-08"), 0U);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("held for disease")))
        << page_->told().toStdString();
    EXPECT_TRUE(page_->told().contains(QStringLiteral("Not kept")));
    page_->filter().setCurrentIndex(0);
    page_->what().setCurrentIndex(1);  // boost
    const auto boosts = desk_->snapshot().all<NucCare>().size();
    EXPECT_EQ(stockFromHeath("2027-06-03"), 0U);
    EXPECT_EQ(desk_->snapshot().all<NucCare>().size(), boosts + 1)
        << "what was really done today is recorded";
}

TEST_F(NucsPageTest, ManyNucsAreKeptUpInOneStep) {
    page_->table().selectAll();
    const int all = rows();
    page_->what().setCurrentIndex(1 + static_cast<int>(NucCareKind::Feed));
    EXPECT_FALSE(page_->bees().isEnabled());
    EXPECT_FALSE(page_->donor().isEnabled());
    EXPECT_TRUE(page_->stockButton().text().startsWith(QStringLiteral("Feed %1 nuc").arg(all)))
        << page_->stockButton().text().toStdString();
    // One among them is not stocked: refused as a whole, and it says which.
    QTest::mouseClick(&page_->stockButton(), Qt::LeftButton);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("not stocked")))
        << page_->told().toStdString();
    EXPECT_TRUE(desk_->snapshot().all<NucCare>().empty());

    page_->table().selectRow(0);
    page_->what().setCurrentIndex(1 + static_cast<int>(NucCareKind::BroodIn));
    EXPECT_EQ(page_->brood().value(), 1) << "a frame of brood at the least";
    EXPECT_TRUE(page_->openBrood().isChecked());
    page_->donor().setCurrentText(QStringLiteral("Heath"));
    QTest::mouseClick(&page_->stockButton(), Qt::LeftButton);
    ASSERT_EQ(desk_->snapshot().all<NucCare>().size(), 1U) << page_->told().toStdString();
    const auto care = *desk_->snapshot().all<NucCare>().begin();
    EXPECT_EQ(care->kind, NucCareKind::BroodIn);
    EXPECT_TRUE(care->openBrood);
    EXPECT_EQ(care->donor, "Heath");
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_TRUE(desk_->snapshot().all<NucCare>().empty());
}

TEST_F(NucsPageTest, BeesAndTheirRoundsStandInTheList) {
    bool any = false;
    for (int row = 0; row < rows(); ++row) {
        const auto bees = page_->table().model()->index(row, NucsModel::Bees);
        if (text(row, NucsModel::State) == "not stocked") {
            EXPECT_EQ(text(row, NucsModel::Bees), "");
        } else {
            any = any || text(row, NucsModel::Bees).find("round") != std::string::npos;
            EXPECT_TRUE(bees.data(Qt::ToolTipRole).toString().contains(QStringLiteral("rounds")));
        }
    }
    EXPECT_TRUE(any);
}

TEST_F(NucsPageTest, TheStockingListSaysByWhenAndCanBeCopied) {
    StockingDialog dialog(*desk_->outlook(), day("2027-06-03"));
    const auto list = stockingList(desk_->snapshot(), desk_->outlook()->nucs, day("2027-06-03"));
    EXPECT_EQ(dialog.table().rowCount(), static_cast<int>(list.needs.size()));
    EXPECT_FALSE(dialog.sum().isEmpty());
    dialog.copy();
    EXPECT_EQ(QApplication::clipboard()->text().count(u'\n'), dialog.table().rowCount() + 1);
}

TEST_F(NucsPageTest, MiteWorkIsEnteredForManyAndTakenBack) {
    MiteDialog dialog(*desk_);
    dialog.all().setChecked(true);
    ASSERT_GT(dialog.table().rowCount(), 3);
    EXPECT_FALSE(dialog.enterButton().isEnabled());
    for (int row = 0; row < 3; ++row)
        EXPECT_EQ(dialog.table().item(row, 5)->text(), QStringLiteral("none"));
    dialog.table().selectRow(0);
    EXPECT_FALSE(dialog.enterButton().isEnabled()) << "nothing says what was done";
    dialog.what().setCurrentText(QStringLiteral("drip"));
    EXPECT_TRUE(dialog.enterButton().isEnabled());
    const auto spans =
        miteSpans(desk_->snapshot(), desk_->outlook()->nucs, desk_->outlook()->builders);
    dialog.setDay(std::min(spans[0].span.from, desk_->snapshot().today()));
    dialog.enter();
    ASSERT_EQ(desk_->snapshot().all<MiteWork>().size(), 1U) << dialog.told().toStdString();
    bool shown = false;
    for (int row = 0; row < dialog.table().rowCount(); ++row)
        shown = shown || dialog.table().item(row, 5)->text().startsWith(QStringLiteral("drip"));
    EXPECT_TRUE(shown);
    for (int row = 0; row < dialog.table().rowCount(); ++row)
        if (dialog.table().item(row, 5)->text().startsWith(QStringLiteral("drip")))
            dialog.table().selectRow(row);
    EXPECT_TRUE(dialog.takeBackButton().isEnabled());
    dialog.takeBack();
    EXPECT_TRUE(desk_->snapshot().all<MiteWork>().empty());
}

TEST_F(NucsPageTest, AHeadSortsAndAThirdPressGivesTheDrivingOrderBack) {
    std::vector<std::string> driving;
    for (int row = 0; row < rows(); ++row) driving.push_back(text(row, NucsModel::Nuc));
    auto* head = page_->table().horizontalHeader();
    const auto press = [&](NucsModel::Column column) {
        QTest::mouseClick(head->viewport(), Qt::LeftButton, {},
                          QPoint(head->sectionViewportPosition(column) + 12, head->height() / 2));
    };
    const auto since = [&](int row) {
        return page_->table()
            .model()
            ->index(row, NucsModel::Since)
            .data(NucsModel::kSortRole)
            .toLongLong();
    };
    press(NucsModel::Since);
    for (int row = 1; row < rows(); ++row) EXPECT_LE(since(row - 1), since(row));
    press(NucsModel::Since);
    for (int row = 1; row < rows(); ++row) EXPECT_GE(since(row - 1), since(row));
    press(NucsModel::Since);
    for (int row = 0; row < rows(); ++row)
        EXPECT_EQ(text(row, NucsModel::Nuc), driving[static_cast<std::size_t>(row)]);
}

TEST_F(NucsPageTest, AllShownAreChosenByOneButton) {
    page_->setDay(day("2027-06-07"));
    page_->filter().setCurrentIndex(3);
    QTest::mouseClick(&page_->allButton(), Qt::LeftButton);
    EXPECT_EQ(page_->table().selectionModel()->selectedRows().size(), rows());
    EXPECT_TRUE(page_->stockButton().isEnabled());
}

TEST_F(NucsPageTest, TheCurrentNucTellsWhyItIsOrIsNotReady) {
    page_->find().setText(QStringLiteral("O1 A"));
    page_->table().setCurrentIndex(page_->table().model()->index(0, 0));
    const auto told = page_->reasons().toPlainText();
    EXPECT_TRUE(told.contains(QStringLiteral("a queen lays in it who is not caught yet")))
        << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("of those that will lay have sealed brood")));
    EXPECT_TRUE(told.contains(QStringLiteral("Source: ")));
    EXPECT_EQ(page_->chosenDate().event, Event::Catch);
}

}  // namespace
}  // namespace tenthday
