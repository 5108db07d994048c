#include "orders/order_dialog.h"

#include "app/orders/orders_fixture.h"
#include "screen_text/setup_text.h"

namespace tenthday::test {
namespace {

class OrderDialogTest : public OrdersTest {
protected:
    OrderDialog& newOrder() {
        key(Qt::Key_Insert);
        return dialog<OrderDialog>();
    }
    OrderDialog& change(std::uint64_t n) {
        page_->choose(id<Order>(n));
        key(Qt::Key_F2);
        return dialog<OrderDialog>();
    }
    static std::string prospectOf(OrderDialog& form) {
        (void)QTest::qWaitFor([&] { return !form.isReckoning(); }, kPatience);
        return form.prospect().toStdString();
    }
    static void enterDay(OrderDialog& form, OrderField field, std::string_view on) {
        form.enterIn(field, QDate::fromString(QString::fromUtf8(on.data(), 10), Qt::ISODate));
    }
};

TEST_F(OrderDialogTest, ANewOrderIsKeptWithItsTermsInOneStep) {
    openExample(false);
    auto& form = newOrder();
    form.enterIn(OrderField::Label, QStringLiteral("K-20"));
    form.enterIn(OrderField::Kind, static_cast<int>(OrderKind::Own));
    form.enterIn(OrderField::Purpose, static_cast<int>(OrderPurpose::Split));
    form.enterIn(OrderField::Count, 12);
    enterDay(form, OrderField::Due, "2027-07-14");
    form.enterIn(OrderField::ShipDays, QStringList{QStringLiteral("1"), QStringLiteral("3")});
    form.enterIn(OrderField::Line, QStringLiteral("Thistle"));
    form.enterIn(OrderField::Sure, 80);
    form.enterIn(OrderField::Note, QStringLiteral("Fetches them."));
    form.accept();
    ASSERT_EQ(rows(), 1) << form.told().toStdString();
    EXPECT_EQ(text(0, OrdersModel::For), "K-20");
    EXPECT_EQ(text(0, OrdersModel::What), "own: splits");
    EXPECT_EQ(text(0, OrdersModel::Line), "Thistle");
    EXPECT_EQ(text(0, OrdersModel::Sure), "80 %");
    EXPECT_EQ(text(0, OrdersModel::Goes), "Wed 14 Jul");
    EXPECT_EQ(undoName(), "add_row order K-20");
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(rows(), 0);
    EXPECT_EQ(desk_->snapshot().all<OrderTerms>().size(), 0U);
}

TEST_F(OrderDialogTest, TellsBeforeSavingHowSureAndFromWhen) {
    openExample(false);
    auto& form = newOrder();
    form.enterIn(OrderField::Label, QStringLiteral("K-20"));
    form.enterIn(OrderField::Count, 6);
    enterDay(form, OrderField::Due, "2027-06-05");
    auto told = prospectOf(form);
    for (const auto* part : {"Chance that it is whole on its day: 0 %", "short",
                             "First day on which it can be whole, 90 % sure: ",
                             "By catch rule: eggs ", "sealed brood ", "age "})
        EXPECT_NE(told.find(part), std::string::npos) << part << " in\n" << told;
    enterDay(form, OrderField::Due, "2027-08-20");
    told = prospectOf(form);
    EXPECT_NE(told.find("(met)"), std::string::npos) << told;
    EXPECT_EQ(desk_->snapshot().all<Order>().size(), 0U) << "nothing is kept yet";
    EXPECT_FALSE(desk_->isPreviewing());
}

TEST_F(OrderDialogTest, WarnsOfOrdersThatWouldNoLongerBeMet) {
    openExample();
    auto& form = newOrder();
    form.enterIn(OrderField::Label, QStringLiteral("K-20"));
    form.enterIn(OrderField::Count, 400);
    enterDay(form, OrderField::Due, "2027-06-20");
    EXPECT_NE(prospectOf(form).find("1 order"), std::string::npos) << prospectOf(form);
}

TEST_F(OrderDialogTest, MovingTheDueDayAsksForAReasonAndKeepsIt) {
    openExample();
    auto& form = change(1);
    const auto reason = static_cast<std::size_t>(OrderField::MoveReason);
    EXPECT_FALSE(form.field(reason).isVisible());
    enterDay(form, OrderField::Due, "2027-08-04");
    EXPECT_TRUE(form.field(reason).isVisible());
    form.accept();
    EXPECT_NE(form.under(reason), QString()) << "it is needed";
    EXPECT_EQ(order(1)->due, day("2027-07-30"));
    form.enterIn(OrderField::MoveReason, QStringLiteral("Cold week in June."));
    form.accept();
    EXPECT_EQ(order(1)->due, day("2027-08-04"));
    ASSERT_EQ(desk_->snapshot().all<PromiseMove>().size(), 1U);
    const auto move = *desk_->snapshot().all<PromiseMove>().begin();
    EXPECT_EQ(move->dueBefore, day("2027-07-30"));
    EXPECT_EQ(move->reason, "Cold week in June.");
    EXPECT_EQ(undoName(), "edit_row order K-03");
}

TEST_F(OrderDialogTest, WhatIsWrongIsToldAtItsField) {
    openExample(false);
    auto& form = newOrder();
    form.accept();
    EXPECT_NE(form.under(static_cast<std::size_t>(OrderField::Label)), QString());
    form.enterIn(OrderField::Label, QStringLiteral("K-20"));
    form.enterIn(OrderField::Count, 0);
    form.accept();
    EXPECT_NE(form.under(static_cast<std::size_t>(OrderField::Count)), QString());
    form.enterIn(OrderField::Count, 5);
    enterDay(form, OrderField::Due, "2027-07-14");
    enterDay(form, OrderField::NotBefore, "2027-07-20");
    form.accept();
    EXPECT_NE(form.told(), QString()) << "not before lies after due";
    EXPECT_TRUE(form.isVisible());
    EXPECT_EQ(desk_->snapshot().all<Order>().size(), 0U);
}

TEST_F(OrderDialogTest, ALabelThatIsTakenIsRefused) {
    openExample();
    auto& form = newOrder();
    form.enterIn(OrderField::Label, QStringLiteral("K-07"));
    form.accept();
    EXPECT_NE(form.told(), QString());
    EXPECT_TRUE(form.isVisible());
}

TEST_F(OrderDialogTest, TenthsOfAPercentStayWhereTheyAreNotTouched) {
    OrderWords words;
    words.order.sure = Tenths{925};
    openExample();
    const auto asked = askOrder(*desk_, words, true, false, [](const auto&) { return QString(); });
    EXPECT_EQ(orderOf(words, asked.values).order.sure, Tenths{925});
    auto values = asked.values;
    values[static_cast<std::size_t>(OrderField::Sure)] = 80;
    EXPECT_EQ(orderOf(words, values).order.sure, Tenths{800});
}

TEST_F(OrderDialogTest, TheKeysAloneEnterAnOrder) {
    openExample(false);
    auto& form = newOrder();
    (void)QTest::qWaitForWindowExposed(&form);
    QTest::keyClicks(form.focusWidget(), QStringLiteral("K-30"));
    QTest::keyClick(form.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(text(0, OrdersModel::For), "K-30");
    EXPECT_EQ(text(0, OrdersModel::Count), "1");
}

}  // namespace
}  // namespace tenthday::test
