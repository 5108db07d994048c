#include "setup/fields_dialog.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "support/days.h"

namespace tenthday::test {
namespace {

FieldsAsked asked(QString refusal = {}) {
    FieldsAsked form;
    form.head = QStringLiteral("Head");
    form.saveWord = QStringLiteral("Keep");
    form.fields = {{FieldKind::Text, QStringLiteral("Name"), true},
                   {FieldKind::Number, QStringLiteral("Count"), true, {}, 1, 9},
                   {FieldKind::Text, QStringLiteral("Why")}};
    form.values = {QString(), 3, QString()};
    form.fits = [](const FieldValues& values, std::size_t field) {
        return field != 2 || values[1].toInt() > 5;
    };
    form.follow = [](FieldValues& values, std::size_t field) {
        if (field == 0 && values[0] == QStringLiteral("many")) values[1] = 8;
    };
    form.hint = [](const FieldValues& values, std::size_t field) {
        return field == 1 ? Hint{QStringLiteral("%1 of 9").arg(values[1].toInt()), {}, false}
                          : Hint{};
    };
    form.save = [refusal](const FieldValues&) { return refusal; };
    return form;
}

TEST(FieldsDialogTest, WhatIsNeededIsAskedForAtItsField) {
    FieldsDialog form(asked(), day("2027-06-01"));
    form.show();
    form.accept();
    EXPECT_TRUE(form.isVisible());
    EXPECT_NE(form.under(0), QString());
    form.enter(0, QStringLiteral("few"));
    EXPECT_EQ(form.under(0), QString());
    form.enter(1, 10);
    form.accept();
    EXPECT_TRUE(form.isVisible());
    form.enter(1, 9);
    form.accept();
    EXPECT_FALSE(form.isVisible());
    EXPECT_EQ(form.result(), QDialog::Accepted);
}

TEST(FieldsDialogTest, FieldsFollowOneAnotherAndHide) {
    FieldsDialog form(asked(), day("2027-06-01"));
    form.show();
    EXPECT_EQ(form.under(1), QStringLiteral("3 of 9"));
    EXPECT_FALSE(form.field(2).isVisible());
    form.enter(0, QStringLiteral("many"));
    EXPECT_EQ(form.values()[1], QVariant(8));
    EXPECT_EQ(form.under(1), QStringLiteral("8 of 9"));
    EXPECT_TRUE(form.field(2).isVisible());
}

TEST(FieldsDialogTest, ARefusalIsToldAndItStaysOpen) {
    FieldsDialog form(asked(QStringLiteral("No.")), day("2027-06-01"));
    form.show();
    form.enter(0, QStringLiteral("few"));
    form.accept();
    EXPECT_TRUE(form.isVisible());
    EXPECT_EQ(form.told(), QStringLiteral("No."));
}

}  // namespace
}  // namespace tenthday::test
