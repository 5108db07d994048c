/// Orders copied out of a spreadsheet.
#include <QClipboard>
#include <QGuiApplication>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>

#include "app/orders/orders_fixture.h"
#include "orders/orders_paste.h"
#include "records/order_days.h"
#include "screen_text/order_text.h"
#include "screen_text/paste_text.h"

namespace tenthday::test {
namespace {

class OrdersPasteTest : public OrdersTest {
protected:
    PasteDialog& paste(const QString& text) {
        page_->pasteOrders(text);
        return dialog<PasteDialog>();
    }
    static std::string cell(PasteDialog& form, int row, int column) {
        return form.preview().item(row, column)->text().toStdString();
    }
};

TEST_F(OrdersPasteTest, LinesWithAHeaderOfAnyOrderAreTakenInOneStep) {
    openExample(false);
    auto& form =
        paste(QStringLiteral("Due\tFor whom\tHow many\tWhat\n2027-07-14\tK-20\t12\tmated\n"
                             "20/07/2027\tK-21\t3\tRipe cells\n"));
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
    EXPECT_NE(form.takeButton().text().toStdString().find("2 order"), std::string::npos);
    EXPECT_EQ(form.preview().rowCount(), 2);
    EXPECT_EQ(cell(form, 0, 1), "new");
    form.accept();
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(text(0, OrdersModel::For), "K-20");
    EXPECT_EQ(text(1, OrdersModel::What), "ripe cells");
    EXPECT_EQ(text(1, OrdersModel::Due), "Tue 20 Jul");
    EXPECT_EQ(undoName(), "import Orders");
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(rows(), 0);
}

TEST_F(OrdersPasteTest, WithoutAHeaderColumnsAreFoundByWhatStandsInThem) {
    openExample(false);
    auto& form =
        paste(QStringLiteral("K-20\tmated queens\t12\t2027-07-14\nK-21\tvirgins\t3\t2027-07-20"));
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
    form.accept();
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(text(1, OrdersModel::What), "virgins");
}

TEST_F(OrdersPasteTest, CommasServeToo) {
    openExample(false);
    auto& form =
        paste(QStringLiteral("label,kind,count,due,sure\n\"Hill, J.\",proven,4,2027-07-20,80 %\n"));
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
    form.accept();
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(text(0, OrdersModel::For), "Hill, J.");
    EXPECT_EQ(text(0, OrdersModel::Sure), "80 %");
}

TEST_F(OrdersPasteTest, PurposeWeekdaysAndStandingComeAlong) {
    openExample(false);
    auto& form =
        paste(QStringLiteral("For whom\tWhat\tHow many\tDue\tFor what\tGoes on\tOpen or not\n"
                             "K-20\tmated\t12\t2027-07-14\t\tMon, Wed, Tuesday\twaiting\n"
                             "Splits\town\t5\t2027-07-14\tsplit\tany day\topen\n"));
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
    form.accept();
    const auto& book = desk_->snapshot();
    ASSERT_EQ(book.all<OrderTerms>().size(), 2U);
    const auto terms = termsOf(book, findByLabel<Order>(book, "K-20")->id);
    EXPECT_EQ(terms.shipDays, "123");
    EXPECT_EQ(terms.standing, OrderStanding::Waiting);
    EXPECT_EQ(termsOf(book, findByLabel<Order>(book, "Splits")->id).purpose, OrderPurpose::Split);
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_TRUE(desk_->snapshot().all<OrderTerms>().empty());
}

TEST_F(OrdersPasteTest, ErrorsStandAtTheirLinesAndNothingIsTaken) {
    openExample(false);
    auto& form =
        paste(QStringLiteral("label\tkind\tcount\tdue\nK-20\tmated\t12\t2027-07-14\n"
                             "K-21\ttame\t3\t2027-07-20\nK-22\tmated\t3\tsome day\n"));
    EXPECT_FALSE(form.takeButton().isEnabled());
    EXPECT_NE(form.summary().indexOf(QStringLiteral("Of 3 lines 2")), -1)
        << form.summary().toStdString();
    EXPECT_EQ(cell(form, 0, 1), "new");
    EXPECT_EQ(cell(form, 1, 0), "3");
    // In the words of the screen: nobody has to know those of files.
    EXPECT_EQ(cell(form, 0, 2), "mated queens");
    EXPECT_EQ(cell(form, 1, 1).rfind("! What: \"tame\" is none of these: ripe cells, virgins", 0),
              0U)
        << cell(form, 1, 1);
    EXPECT_EQ(cell(form, 2, 1), "! Due: \"some day\" is no day; 2027-05-01 is one");
    form.accept();
    EXPECT_TRUE(form.isVisible());
    EXPECT_EQ(rows(), 0);
}

TEST_F(OrdersPasteTest, AllErrorsAndCellsAreInTheWordsOfTheScreen) {
    openExample(false);
    auto& form = paste(
        QStringLiteral("label\tkind\tcount\tdue\tpart_ok\tstanding\tpurpose\tship_days\tsure\n"
                       "K-20\town\t12\t2027-07-14\tyes\twaiting\tsplit\t12\t90\n"
                       "K-21\t\t3\t2027-07-14\n"
                       "K-22\tmated\tmany\t2027-07-14\n"
                       "K-23\tmated\t3\t2027-07-14\tperhaps\n"
                       "K-24\tmated\t3\t2027-07-14\t\tlater\n"
                       "K-25\tmated\t3\t2027-07-14\t\t\tfun\n"
                       "K-26\tmated\t3\t2027-07-14\t\t\t\tsomeday\n"
                       "K-27\tmated\t3\t2027-07-14\t\t\t\t\trather\n"
                       "K-28\tmated\t3\t2027-07-14\t\t\t\t\t200\n"));
    EXPECT_FALSE(form.takeButton().isEnabled());
    QStringList heads;
    for (int column = 0; column < form.preview().columnCount(); ++column)
        heads += form.preview().horizontalHeaderItem(column)->text();
    const auto shown = [&](const char* head) {
        return cell(form, 0, static_cast<int>(heads.indexOf(QString::fromUtf8(head))));
    };
    EXPECT_EQ(shown("What"), order_text::kind(OrderKind::Own).toStdString());
    EXPECT_EQ(shown("Goes on"), "Mon, Tue");
    EXPECT_EQ(shown("Open or not"), order_text::standing(OrderStanding::Waiting).toStdString());
    const std::vector<std::string> begins{
        "new",          "! What: ",    "! How many: ", "! Delivery: ", "! Open or not: ",
        "! For what: ", "! Goes on: ", "! How sure: ", "! How sure: "};
    for (int row = 0; row < form.preview().rowCount(); ++row)
        EXPECT_EQ(cell(form, row, 1).rfind(begins[static_cast<std::size_t>(row)], 0), 0U)
            << cell(form, row, 1);
}

TEST_F(OrdersPasteTest, AColumnThatIsMissingIsAskedFor) {
    openExample(false);
    auto& form = paste(QStringLiteral("label\tkind\tcount\twanted\nK-20\tmated\t12\t2027-07-14\n"));
    EXPECT_FALSE(form.takeButton().isEnabled());
    EXPECT_TRUE(form.summary().contains(QStringLiteral("Due"))) << form.summary().toStdString();
    form.column(2).setCurrentIndex(4);  // due is the fourth
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
}

TEST_F(OrdersPasteTest, WhatIsTypedIntoTheFieldIsReadOnceTheKeysRest) {
    openExample(false);
    auto& form = paste(QStringLiteral(" "));
    EXPECT_FALSE(form.takeButton().isEnabled());
    form.text().setPlainText(QStringLiteral("K-20\tmated\t12\t2027-07-14"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return form.takeButton().isEnabled(); }, kPatience));
}

TEST_F(OrdersPasteTest, HeadsThatAreNotReadAreNamed) {
    openExample(false);
    auto& form = paste(
        QStringLiteral("label\tkind\tcount\tdue\tsureness\nK-20\tmated\t12\t2027-07-14\t80\n"));
    EXPECT_TRUE(form.summary().contains(QStringLiteral("Not read: sureness.")))
        << form.summary().toStdString();
}

TEST_F(OrdersPasteTest, WhatSaysMoreThanIsKeptIsNotRounded) {
    openExample(false);
    for (const char* sure : {"92.55", "nan"}) {
        auto& form = paste(QStringLiteral("label\tkind\tcount\tdue\tsure\n"
                                          "K-20\tmated\t12\t2027-07-14\t%1\n")
                               .arg(QString::fromLatin1(sure)));
        EXPECT_FALSE(form.takeButton().isEnabled()) << sure;
        EXPECT_NE(cell(form, 0, 1).find("sure"), std::string::npos) << cell(form, 0, 1);
        form.reject();
    }
}

TEST_F(OrdersPasteTest, AColumnChosenByHandStaysWhileTheTextIsEdited) {
    openExample(false);
    const auto text = [](const char* heads, int count) {
        return QStringLiteral("%1\nK-20\tmated\t%2\t2027-07-14\n")
            .arg(QString::fromLatin1(heads))
            .arg(count);
    };
    const char* heads = "label\tkind\tcount\twanted";
    auto& form = paste(text(heads, 12));
    form.column(2).setCurrentIndex(4);  // due is the fourth
    const auto edited = [&](const QString& to, const char* count) {
        form.text().setPlainText(to);
        return QTest::qWaitFor([&] { return cell(form, 0, 3) == count; }, kPatience);
    };
    ASSERT_TRUE(edited(text(heads, 13), "13"));
    EXPECT_EQ(form.column(2).currentIndex(), 4);
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
    ASSERT_TRUE(edited(text("label\tkind\tcount\tanother", 14), "14"));
    EXPECT_EQ(form.column(2).currentIndex(), 0) << "of other columns nothing was chosen";
}

TEST_F(OrdersPasteTest, WhatIsTypedIsShownBeforeItIsTaken) {
    openExample(false);
    auto& form = paste(QStringLiteral("K-20\tmated\t12\t2027-07-14"));
    form.text().setPlainText(QStringLiteral("K-20\tmated\t120\t2027-07-14"));
    form.accept();  // sooner than the keys rest
    EXPECT_TRUE(form.isVisible());
    EXPECT_EQ(form.told(), paste_text::lookAgain());
    EXPECT_EQ(cell(form, 0, 3), "120");
    EXPECT_EQ(rows(), 0);
    form.accept();
    EXPECT_EQ(rows(), 1);
}

TEST_F(OrdersPasteTest, TheListItselfPastesBackAndSaysNothingNew) {
    openExample();
    key(Qt::Key_C, Qt::ControlModifier);
    key(Qt::Key_V, Qt::ControlModifier);
    auto& form = dialog<PasteDialog>();
    EXPECT_TRUE(form.takeButton().isEnabled()) << form.summary().toStdString();
    EXPECT_EQ(cell(form, 0, 1), "as it is already");
    form.accept();
    EXPECT_NE(form.told(), QString());
    EXPECT_EQ(undoName(), "add_row orders") << "of the fixture";
}

}  // namespace
}  // namespace tenthday::test
