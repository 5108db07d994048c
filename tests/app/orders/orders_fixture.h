/// @file orders_fixture.h  The example with a few orders, and the page over it.
#pragma once
#include <gtest/gtest.h>

#include <QComboBox>
#include <QTableView>
#include <QTest>

#include "app/book/book_fixture.h"
#include "orders/orders_page.h"
#include "support/bare_example.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {

inline constexpr int kPatience = 20'000;  // ms

/// Orders of the example's season: one surely met, one surely short, one waiting, one cancelled.
class OrdersTest : public BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }
    void openExample(bool withOrders = true, Access access = Access::ReadWrite) {
        const auto path = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(createBook(path, exampleWithoutOrders(), fixedOptions()).ok());
        desk_ = Desk::open(path).value();
        if (withOrders) {
            add(1, "K-03", 2, "2027-07-30");
            add(2, "K-07", 500, "2027-08-10");
            add(3, "K-11", 5, "2027-07-30", OrderStanding::Waiting);
            add(4, "K-12", 5, "2027-07-30", OrderStanding::Cancelled);
            ASSERT_TRUE(desk_->apply(rows_).ok());
        }
        if (access == Access::ReadOnly) {
            desk_.reset();
            OpenOptions reading;
            reading.access = access;
            desk_ = Desk::open(path, reading).value();
        }
        page_ = std::make_unique<OrdersPage>(*desk_);
        page_->resize(1300, 700);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        page_->table().setFocus();
        settle();
    }
    /// Until how orders stand is reckoned.
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !page_->isReckoning(); }, kPatience));
    }
    void add(std::uint64_t n, const std::string& label, int count, std::string_view due,
             OrderStanding standing = OrderStanding::Open) {
        Order order;
        order.id = id<Order>(n);
        order.label = label;
        order.count = count;
        order.due = day(due);
        rows_.add(order);
        if (standing == OrderStanding::Open) return;
        rows_.add(OrderTerms{id<OrderTerms>(n), 1, order.id, standing, OrderPurpose::None, {}});
    }

    int rows() { return page_->table().model()->rowCount(); }
    std::string text(int row, OrdersModel::Column column) {
        settle();
        return page_->table().model()->index(row, column).data().toString().toStdString();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) {
        QTest::keyClick(&page_->table(), key, with);
        settle();
    }
    template <class Dialog>
    Dialog& dialog() {
        auto* open = qobject_cast<Dialog*>(page_->dialog());
        if (open == nullptr) throw std::logic_error("no such dialog is open");
        return *open;
    }
    std::string undoName() {
        const auto name = desk_->undoName();
        return name ? std::string(token(name->verb)) + " " + name->subject : "nothing";
    }
    Ptr<Order> order(std::uint64_t n) { return desk_->snapshot().find(id<Order>(n)); }

    ChangeSet rows_{Verb::AddRow, "orders", {}, {}};
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<OrdersPage> page_;
};

}  // namespace tenthday::test
