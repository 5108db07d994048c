// Choosing what to print: fields that fit, pages as they come, a choice that is remembered.
#include "sheets/print_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QSettings>
#include <QTemporaryDir>

#include "exchange/example.h"
#include "records/change_set.h"
#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

class PrintDialogTest : public ::testing::Test {
protected:
    PrintDialogTest()
        : settings_(std::make_unique<QSettings>(folder_.filePath(QStringLiteral("s.ini")),
                                                QSettings::IniFormat)) {
        Snapshot snapshot = applied(Snapshot{}, exampleContent()).value();
        snapshot.setSeason((*snapshot.all<Season>().begin())->id);
        snapshot.setToday(day("2027-06-03"));
        OutlookMemo memo;
        outlook_ = outlookOf(snapshot, memo);
    }
    void open(PaperKind kind) {
        PaperWish wish;
        wish.choice.kind = kind;
        wish.day = day("2027-06-07");
        dialog_ = std::make_unique<PrintDialog>(outlook_, settings_, wish);
    }
    void choose(PaperKind kind) { dialog_->kind().setCurrentIndex(static_cast<int>(kind)); }
    QTemporaryDir folder_;
    Settings settings_;
    OutlookPtr outlook_;
    std::unique_ptr<PrintDialog> dialog_;
};

TEST_F(PrintDialogTest, EveryKindShowsPagesOrSaysWhyNot) {
    open(PaperKind::Week);
    for (std::size_t i = 0; i < kTokenCount<PaperKind>; ++i) {
        choose(static_cast<PaperKind>(i));
        EXPECT_FALSE(dialog_->told().isEmpty()) << i;
        const bool orders = !outlook_->snapshot.all<Order>().empty();
        if (static_cast<PaperKind>(i) != PaperKind::Order || orders) {
            EXPECT_GE(dialog_->pageCount(), 1) << i;
        }
    }
}

TEST_F(PrintDialogTest, TheNextWeekAddsPagesAndLargePrintNeedsMore) {
    open(PaperKind::Week);
    const int week = dialog_->pageCount();
    dialog_->nextWeek().setChecked(true);
    const int weeks = dialog_->pageCount();
    EXPECT_GT(weeks, week);
    dialog_->large().setChecked(true);
    EXPECT_GE(dialog_->pageCount(), weeks);
}

TEST_F(PrintDialogTest, WhatWasChosenIsThereTheNextTime) {
    open(PaperKind::NucCards);
    dialog_->paper().setCurrentIndex(static_cast<int>(Paper::Letter));
    dialog_->large().setChecked(true);
    dialog_->who().setCurrentText(QStringLiteral("AK"));
    dialog_->reject();
    EXPECT_EQ(settings_.printChoice().kind, PaperKind::NucCards);
    open(PaperKind::Week);
    EXPECT_EQ(dialog_->wish().choice.form, (PaperForm{Paper::Letter, false, true}));
    EXPECT_EQ(dialog_->wish().choice.who, QStringLiteral("AK"));
    EXPECT_EQ(dialog_->wish().choice.kind, PaperKind::Week) << "what was asked for goes first";
}

TEST_F(PrintDialogTest, APdfIsKeptOrTheReasonIsTold) {
    open(PaperKind::Loading);
    const auto path = folder_.filePath(QStringLiteral("loading.pdf"));
    EXPECT_EQ(dialog_->keepAsPdf(path), QString());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    EXPECT_FALSE(dialog_->keepAsPdf(QStringLiteral("/nowhere/at/all.pdf")).isEmpty());
}

}  // namespace
}  // namespace tenthday
