#include "look/wheel_guard.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QScrollArea>
#include <QSpinBox>
#include <QTest>
#include <QVBoxLayout>
#include <QWheelEvent>

namespace tenthday {
namespace {

/// A page of fields longer than its window.
class WheelGuardTest : public ::testing::Test {
protected:
    WheelGuardTest() : number_(new QSpinBox), day_(new QDateEdit), choice_(new QComboBox) {
        qApp->installEventFilter(&guard_);
        auto* page = new QWidget;
        auto* column = new QVBoxLayout(page);
        number_->setRange(-1000, 1000);
        day_->setDate({2027, 6, 11});
        choice_->addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        choice_->setCurrentIndex(1);
        for (QWidget* field : fields()) column->addWidget(field);
        column->addSpacing(2000);
        area_.setWidget(page);
        area_.resize(300, 200);
        area_.show();
        area_.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&area_));
        area_.setFocus();
    }
    [[nodiscard]] std::vector<QWidget*> fields() const { return {number_, day_, choice_}; }
    /// Whether the field took it.
    static bool turn(QWidget& field) {
        const QPointF at = field.rect().center();
        QWheelEvent wheel(at, field.mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&field, &wheel);
        return wheel.isAccepted();
    }
    [[nodiscard]] QString said() const {
        return QStringLiteral("%1 %2 %3")
            .arg(number_->value())
            .arg(day_->date().toString(Qt::ISODate), choice_->currentText());
    }

    WheelGuard guard_;
    QScrollArea area_;
    QSpinBox* number_;
    QDateEdit* day_;
    QComboBox* choice_;
};

TEST_F(WheelGuardTest, FieldsWithoutTheKeyboardLeaveItToThePage) {
    const auto before = said();
    for (auto* field : fields()) {
        EXPECT_EQ(field->focusPolicy(), Qt::StrongFocus);
        EXPECT_FALSE(turn(*field)) << "it is left for the page";
        EXPECT_EQ(said(), before);
    }
}

TEST_F(WheelGuardTest, TheFieldWithTheKeyboardFollows) {
    number_->setFocus();
    EXPECT_TRUE(turn(*number_));
    EXPECT_EQ(number_->value(), -1);
    choice_->setFocus();
    EXPECT_TRUE(turn(*choice_));
    EXPECT_EQ(choice_->currentIndex(), 2);
}

}  // namespace
}  // namespace tenthday
