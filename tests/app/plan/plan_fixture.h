/// @file plan_fixture.h  A small season to be planned, and the page over it.
#pragma once
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/book/book_fixture.h"
#include "book/new_book.h"
#include "plan/plan_form.h"
#include "plan/plan_page.h"
#include "plan/plan_steps.h"
#include "plan/plan_sums.h"
#include "reasons/reasons_view.h"
#include "records/box_verbs.h"
#include "screen_text/dates.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {

inline constexpr int kPlanPatience = 120'000;  // ms; a season is planned in it

/// 1 June 2027: a yard, 24 nucs, two builders, a breeder queen, and nothing grafted yet.
class PlanTest : public BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const auto path = at(QStringLiteral("fell.tenthday"));
        auto plan = planFor("North Fell", day("2027-06-01"));
        plan.firstYard = "Heath";
        ASSERT_TRUE(createBook(path, newBookContent(plan), fixedOptions()).ok());
        desk_ = Desk::open(path, fixedOptions()).value();
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }

    void apply(const ChangeSet& changes) {
        const auto done = desk_->apply(changes);
        ASSERT_TRUE(done.ok()) << done.error().text;
    }
    void addOrder(std::uint64_t n, const std::string& label, int count, std::string_view due) {
        Order order;
        order.id = id<Order>(n);
        order.label = label;
        order.count = count;
        order.due = day(due);
        order.sure = Tenths{700};
        ChangeSet changes;
        changes.add(order);
        apply(changes);
    }
    void addThings(int boxes = 12) {
        const auto yard = (*desk_->snapshot().all<Yard>().begin())->id;
        ChangeSet changes;
        for (std::uint64_t n = 1; n <= 2; ++n) {
            Builder builder;
            builder.id = id<Builder>(n);
            builder.label = n == 1 ? "North" : "West";
            builder.yard = yard;
            builder.from = day("2027-04-01");
            changes.add(builder);
        }
        Queen queen;
        queen.id = id<Queen>(1);
        queen.label = "Thistle 7";
        queen.breederFrom = day("2027-04-01");
        changes.add(queen);
        apply(changes);
        BoxPlan plan{yard, "3+3", day("2027-04-01"), {}};
        const auto made =
            addBoxes(desk_->snapshot(), "Q1", boxes, plan, [this] { return id<Box>(++ids_).uuid; });
        ASSERT_TRUE(made.ok());
        apply(made.value());
    }
    /// @param until  few days are planned fast
    void openPage(std::string_view from = "2027-06-02", std::string_view until = "2027-06-14") {
        page_ = std::make_unique<PlanPage>(*desk_);
        page_->resize(1340, 660);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        page_->form().from().setDate(toQDate(day(from)));
        page_->form().until().setDate(toQDate(day(until)));
    }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !page_->isPlanning() && !page_->isTrying(); },
                                    kPlanPatience));
    }
    void planned() {
        page_->plan();
        settle();
    }
    int rows() { return page_->model().rowCount(); }
    std::string cell(int row, ProposalsModel::Column column) {
        return page_->model().index(row, column).data().toString().toStdString();
    }
    std::string sum(int row, PlanSumsTable::Column column) {
        return page_->sums().item(row, column)->text().toStdString();
    }
    std::size_t batches() { return desk_->snapshot().all<Batch>().size(); }
    void key(Qt::Key key) { QTest::keyClick(&page_->table(), key); }

    std::uint64_t ids_ = 5000;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<PlanPage> page_;
};

}  // namespace tenthday::test
