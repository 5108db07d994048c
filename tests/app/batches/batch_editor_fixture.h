/// @file batch_editor_fixture.h  A book and the batch editor over it, driven by keys and clicks.
#pragma once
#include <gtest/gtest.h>

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include "app/book/book_fixture.h"
#include "batches/bars_form.h"
#include "batches/batch_editor.h"
#include "batches/dates_list.h"
#include "batches/draft_form.h"
#include "batches/week_table.h"
#include "batches/yards_form.h"
#include "book/new_book.h"
#include "reasons/why_dialog.h"
#include "screen_text/dates.h"
#include "support/draft_maker.h"

namespace tenthday::test {

inline constexpr int kPatience = 10'000;  // ms

/// A book with one yard, a box of every kind and thirty nucs; today is 1 May 2027.
class BatchEditorTest : public BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        open(rows());
    }
    void TearDown() override {
        editor_.reset();
        QLocale::setDefault(QLocale::c());
    }

    static ChangeSet rows() {
        auto rows = newBookContent(planFor("Mill", test::day("2027-05-01")));
        Yard yard;
        yard.id = test::id<Yard>(1);
        yard.label = "Mill";
        yard.roles = "mating builder";
        rows.add(yard);
        const auto builder = [&](std::uint64_t n, const char* label, BuilderKind kind) {
            Builder row;
            row.id = test::id<Builder>(n);
            row.label = label;
            row.yard = yard.id;
            row.kind = kind;
            row.from = test::day("2027-03-01");
            rows.add(row);
        };
        builder(1, "Box", BuilderKind::StarterFinisher);
        builder(2, "Start", BuilderKind::Starter);
        builder(3, "Finish", BuilderKind::Finisher);
        for (std::uint64_t n = 1; n <= 30; ++n) {
            rows.add(Box{test::id<Box>(n), 1, std::to_string(n), {}});
            rows.add(BoxStay{test::id<BoxStay>(n), 1, test::id<Box>(n), yard.id,
                             test::day("2027-04-01")});
            rows.add(BoxLayout{test::id<BoxLayout>(n), 1, test::id<Box>(n), "7",
                               test::day("2027-04-01")});
            rows.add(NucSide{test::id<NucSide>(n), 1, test::id<BoxLayout>(n), "-", Frames{7}});
            Stocking stocking;
            stocking.id = test::id<Stocking>(n);
            stocking.side = test::id<NucSide>(n);
            stocking.day = test::day("2027-06-07");
            stocking.openBrood = true;
            rows.add(stocking);
        }
        Queen queen;
        queen.id = test::id<Queen>(1);
        queen.label = "B7";
        queen.breederFrom = test::day("2027-03-01");
        rows.add(queen);
        return rows;
    }

    void open(const ChangeSet& rows, Access access = Access::ReadWrite,
              std::string_view today = "2027-05-01") {
        editor_.reset();
        desk_.reset();
        path_ = at(QStringLiteral("mill-%1.tenthday").arg(++books_));
        ASSERT_TRUE(createBook(path_, rows, test::fixedOptions()).ok());
        OpenOptions options = test::fixedOptions(access);
        options.clock = Clock(test::day(today));
        desk_ = Desk::open(path_, options).value();
    }
    BatchEditor& plan(std::string_view on = "2027-06-11") {
        return show(newDraft(desk_->snapshot(), test::day(on), newId<Batch>()));
    }
    BatchEditor& edit(const std::string& label) {
        const auto batch = findByLabel<Batch>(desk_->snapshot(), label);
        return show(draftOf(desk_->snapshot(), batch->id));
    }
    BatchEditor& show(const BatchDraft& draft) {
        editor_.reset();
        if (!settings_)
            settings_ = std::make_unique<Settings>(std::make_unique<QSettings>(
                at(QStringLiteral("settings.ini")), QSettings::IniFormat));
        editor_ = std::make_unique<BatchEditor>(*desk_, *settings_, draft);
        editor_->show();
        editor_->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(editor_.get()));
        return *editor_;
    }
    /// Chooses an entry by keys: the first that begins so.
    static void choose(QComboBox& box, const QString& text) {
        box.setFocus();
        QTest::keyClick(&box, Qt::Key_Home);
        for (int i = 1; i < box.count() && !box.currentText().startsWith(text); ++i)
            QTest::keyClick(&box, Qt::Key_Down);
        ASSERT_TRUE(box.currentText().startsWith(text)) << box.currentText().toStdString();
    }
    static void type(QSpinBox& field, const QString& text) {
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, text);
        QTest::keyClick(&field, Qt::Key_Tab);
    }
    static void setDay(QDateEdit& field, std::string_view on) {
        field.setDate(toQDate(test::day(on)));
    }
    std::string dateOf(Event event) {
        auto& list = editor_->dates();
        for (int row = 0; row < list.rowCount(); ++row) {
            list.setCurrentCell(row, 0);
            if (list.chosen() == event) return list.item(row, 1)->text().toStdString();
        }
        return "none";
    }
    std::string weekCell(int row, int column) {
        return editor_->week().item(row, column)->text().toStdString();
    }
    bool waitForWeek() {
        return QTest::qWaitFor([&] { return editor_->week().rowCount() == 7; }, kPatience);
    }
    bool waitForSum(const QString& part) {
        return QTest::qWaitFor([&] { return editor_->weekSum().contains(part); }, kPatience);
    }
    bool settled() {
        return QTest::qWaitFor([&] { return desk_->isPreviewing(); }, kPatience);
    }
    /// The batch of issue and handbook: larvae of 18 h grafted on Friday at 15:00, in one box.
    void fillFriday() {
        auto& form = editor_->form();
        choose(form.method(), QStringLiteral("one box"));
        type(form.hour(), QStringLiteral("15"));
        type(form.larvaFrom(), QStringLiteral("18"));
        type(form.larvaTo(), QStringLiteral("18"));
        type(editor_->bars().grafts(0), QStringLiteral("20"));
    }
    void noWeekend() {
        for (const int weekday : {5, 6})
            QTest::mouseClick(&editor_->freeWeekday(weekday), Qt::LeftButton);
    }

    QString path_;
    int books_ = 0;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<Settings> settings_;
    std::unique_ptr<BatchEditor> editor_;
};

/// Batch 1, grafted as recorded on 11 June, with today the day after.
class GraftedBatch : public BatchEditorTest {
protected:
    void SetUp() override {
        BatchEditorTest::SetUp();
        auto all = rows();
        BatchDraft draft;
        draft.id = test::id<Batch>(1);
        draft.label = "1";
        draft.day = test::day("2027-06-11");
        draft.method = builtInMethods()[0].method.id;
        draft.bars = {{0, {}, Cells{20}, {test::id<Builder>(1)}, {}}};
        Snapshot empty;
        auto made = applied(empty, all);
        ASSERT_TRUE(made);
        const auto batch = changesOf(made.value(), draft, {}, test::freshIds());
        ASSERT_TRUE(batch) << batch.error().text;
        all.rows.insert(all.rows.end(), batch.value().rows.begin(), batch.value().rows.end());
        Outcome graft;
        graft.id = test::id<Outcome>(1);
        graft.batch = draft.id;
        graft.kind = OutcomeKind::Graft;
        graft.day = test::day("2027-06-11");
        graft.count = Cells{20};
        all.add(graft);
        open(all, Access::ReadWrite, "2027-06-13");
    }
};

}  // namespace tenthday::test
