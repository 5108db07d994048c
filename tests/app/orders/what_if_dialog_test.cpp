#include "orders/what_if_dialog.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QSpinBox>
#include <QTableWidget>

#include "app/orders/orders_fixture.h"
#include "screen_text/dates.h"

namespace tenthday::test {
namespace {

class WhatIfDialogTest : public OrdersTest {
protected:
    WhatIfDialog& ask() {
        add(5, "K-20", 44, "2027-07-10");
        openExample();
        key(Qt::Key_I);
        auto& form = dialog<WhatIfDialog>();
        settle(form);
        return form;
    }
    static void settle(WhatIfDialog& form) {
        (void)QTest::qWaitFor([&] { return !form.isReckoning(); }, kPatience);
    }
    static std::string cell(WhatIfDialog& form, int row, int column) {
        return form.table().item(row, column)->text().toStdString();
    }
    /// Queens expected before and then.
    static std::pair<int, int> queens(WhatIfDialog& form) {
        const auto words = form.summary().section(u'.', 0, 0);
        return {words.section(u':', 1).section(u',', 0, 0).trimmed().toInt(),
                words.section(QStringLiteral("then "), 1).trimmed().toInt()};
    }
};

TEST_F(WhatIfDialogTest, OrdersStandSideBySideBeforeAndAfter) {
    auto& form = ask();
    ASSERT_EQ(form.table().rowCount(), 3);
    EXPECT_EQ(cell(form, 0, 0), "44 mated queens for K-20");
    EXPECT_EQ(cell(form, 0, 3), "the same");
    EXPECT_EQ(form.summary(), QStringLiteral("Tick what goes wrong."));
}

TEST_F(WhatIfDialogTest, EachBadLuckIsOneClickAndTakesQueens) {
    auto& form = ask();
    for (auto* tick : {&form.builderLost(), &form.robbed(), &form.takeLow()}) {
        tick->click();
        settle(form);
        const auto [before, then] = queens(form);
        EXPECT_GT(before, 0) << form.summary().toStdString();
        EXPECT_LT(then, before) << tick->text().toStdString() << form.summary().toStdString();
        tick->click();
        settle(form);
    }
}

TEST_F(WhatIfDialogTest, AColdWeekOnGivenDaysMakesAnOrderLessSure) {
    auto& form = ask();
    form.coldFrom().setDate(toQDate(day("2027-06-05")));
    form.coldUntil().setDate(toQDate(day("2027-06-25")));
    settle(form);
    EXPECT_TRUE(form.cold().isChecked()) << "a changed number means its tick";
    ASSERT_TRUE(form.asked().cold);
    EXPECT_EQ(form.asked().cold->first, day("2027-06-05"));
    EXPECT_EQ(cell(form, 0, 3).substr(0, 3), "\u25BC") << cell(form, 0, 3);
}

TEST_F(WhatIfDialogTest, NumbersCanBeChangedAndNothingIsKept) {
    auto& form = ask();
    const auto book = desk_->snapshot();
    form.take().setValue(20);
    settle(form);
    const auto poor = queens(form).second;
    form.take().setValue(70);
    settle(form);
    EXPECT_GT(queens(form).second, poor);
    form.robbedCount().setValue(5);
    settle(form);
    EXPECT_EQ(form.asked().nucs->count, 5);
    EXPECT_DOUBLE_EQ(*form.asked().take, 0.7);
    EXPECT_TRUE(desk_->snapshot().sameContent(book));
    EXPECT_FALSE(desk_->isPreviewing());
}

}  // namespace
}  // namespace tenthday::test
