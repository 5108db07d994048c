#include "plan/plan_page.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QDialog>
#include <QLabel>
#include <QScrollBar>
#include <QSignalSpy>
#include <QSpinBox>

#include "app/plan/plan_fixture.h"
#include "setup/fields_dialog.h"

namespace tenthday::test {
namespace {

TEST_F(PlanTest, AnEmptySeasonShowsTheThreeStepsAndWhatIsMissing) {
    openPage();
    ASSERT_TRUE(page_->showsSteps());
    EXPECT_TRUE(page_->steps().season().contains(QStringLiteral("Nothing is planned in it yet")));
    EXPECT_TRUE(page_->steps().state(0).startsWith(QStringLiteral("✗ Missing")));
    EXPECT_TRUE(page_->steps().state(1).contains(QStringLiteral("Missing: a builder")));
    EXPECT_FALSE(page_->steps().button(2).isEnabled()) << "nothing can be planned yet";
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    EXPECT_TRUE(page_->steps().state(0).startsWith(QStringLiteral("✓ 1 open order, 8 wanted")))
        << page_->steps().state(0).toStdString();
    EXPECT_EQ(page_->steps().state(1),
              QStringLiteral("✓ 2 builders, 24 nucs in 1 yard, 1 breeder queen"));
    EXPECT_TRUE(page_->steps().button(2).isEnabled());
}

TEST_F(PlanTest, EachStepLeadsToWhereItIsEntered) {
    openPage();
    QSignalSpy orders(page_.get(), &PlanPage::ordersWanted);
    QSignalSpy setup(page_.get(), &PlanPage::setupWanted);
    page_->steps().button(0).click();
    EXPECT_EQ(orders.count(), 1);
    page_->steps().button(1).click();
    ASSERT_EQ(setup.count(), 1);
    EXPECT_EQ(setup.front().front().value<setup_text::Kind>(), setup_text::Kind::Builders);
}

TEST_F(PlanTest, ThePlanIsToldWithItsStatusAndSumsAndKeepsNothingUntilTaken) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    planned();
    ASSERT_FALSE(page_->showsSteps()) << page_->told().toStdString();
    ASSERT_EQ(rows(), 1) << "one graft does";
    EXPECT_EQ(cell(0, ProposalsModel::Breeder), "Thistle 7");
    EXPECT_EQ(cell(0, ProposalsModel::For).substr(0, 6), "K-07: ");
    EXPECT_TRUE(page_->status().startsWith(QStringLiteral("Proven: every order is met")))
        << page_->status().toStdString();
    // The order's line, then the season's sums: before, and with the plan.
    EXPECT_EQ(sum(0, PlanSumsTable::What), "K-07: 8 mated queens by Tue 10 Aug");
    EXPECT_EQ(sum(0, PlanSumsTable::Before), "0 %");
    EXPECT_EQ(sum(1, PlanSumsTable::Before), "0");
    EXPECT_EQ(sum(1, PlanSumsTable::After), "1");
    EXPECT_EQ(sum(2, PlanSumsTable::After), cell(0, ProposalsModel::Grafts));
    EXPECT_FALSE(page_->reasons().toPlainText().isEmpty()) << "why its queens are ready that day";
    EXPECT_EQ(batches(), 0U);
    EXPECT_FALSE(desk_->canUndo() && desk_->undoName()->verb == Verb::PlanSeason);
}

TEST_F(PlanTest, WithLimitedHoursNothingIsToldAsProven) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    page_->form().hours().setValue(20);
    planned();
    ASSERT_EQ(rows(), 1);
    EXPECT_TRUE(page_->status().startsWith(QStringLiteral("Every order is met")))
        << page_->status().toStdString();
    EXPECT_TRUE(page_->status().contains(QStringLiteral("is not proven")))
        << page_->status().toStdString();
}

TEST_F(PlanTest, TakingOverIsOneStepAndUndoTakesItBack) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    planned();
    QSignalSpy ghosts(page_.get(), &PlanPage::proposalsShown);
    page_->takeOverButton().click();
    settle();
    EXPECT_EQ(batches(), 1U);
    EXPECT_EQ(desk_->undoName()->verb, Verb::PlanSeason);
    EXPECT_TRUE(page_->showsSteps()) << "all of the plan is in the book";
    EXPECT_TRUE(page_->told().startsWith(QStringLiteral("1 batch taken over")));
    ASSERT_FALSE(ghosts.isEmpty());
    EXPECT_EQ(ghosts.back().front().value<ChartProposalsPtr>(), nullptr)
        << "what is in the book is no ghost";
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(batches(), 0U);
}

TEST_F(PlanTest, ProposalsStandInTheChartAsGhosts) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    QSignalSpy ghosts(page_.get(), &PlanPage::proposalsShown);
    planned();
    ASSERT_FALSE(ghosts.isEmpty());
    const auto shown = ghosts.back().front().value<ChartProposalsPtr>();
    ASSERT_NE(shown, nullptr);
    const auto& batch = page_->model().at(0).batch;
    ASSERT_FALSE(shown->loads.empty());
    EXPECT_EQ(dayOf(shown->loads.front().from), batch.graft);
    ASSERT_EQ(shown->stays.size(), batch.shares.size());
    EXPECT_EQ(shown->stays.front().days.first, batch.cellsDay);
    EXPECT_EQ(shown->stays.front().days.last, batch.ready);
    EXPECT_EQ(shown->stays.front().nucs, batch.shares.front().second);
    page_->tickAll(false);
    settle();
    EXPECT_EQ(ghosts.back().front().value<ChartProposalsPtr>(), nullptr);
}

TEST_F(PlanTest, WhatIsNotTickedIsNotTakenAndTheSumsSaySo) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    planned();
    key(Qt::Key_Space);
    settle();
    EXPECT_EQ(sum(0, PlanSumsTable::After), "0 %") << "without the batch nothing is there";
    EXPECT_FALSE(page_->takeOverButton().isEnabled());
    key(Qt::Key_A);
    settle();
    EXPECT_TRUE(page_->takeOverButton().isEnabled());
    EXPECT_NE(sum(0, PlanSumsTable::After), "0 %");
}

TEST_F(PlanTest, AProposalIsChangedAndLookedAtAgain) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    planned();
    const auto before = page_->model().at(0).batch;
    const auto later = before.graft + Days{2};
    key(Qt::Key_F2);
    auto* form = qobject_cast<FieldsDialog*>(page_->dialog());
    ASSERT_NE(form, nullptr);
    form->enter(0, toQDate(later));
    form->enter(1, 2);  // too few grafts for eight queens
    form->accept();
    settle();
    EXPECT_EQ(page_->model().at(0).batch.graft, later);
    EXPECT_EQ(page_->model().at(0).batch.ready, before.ready + Days{2});
    EXPECT_EQ(cell(0, ProposalsModel::Grafts), "2");
    EXPECT_TRUE(cell(0, ProposalsModel::Graft).ends_with(", changed"));
    EXPECT_TRUE(page_->status().startsWith(QStringLiteral("Looked at again")))
        << page_->status().toStdString();
    EXPECT_TRUE(page_->gaps().contains(QStringLiteral("K-07"))) << page_->gaps().toStdString();
    page_->backToPlanned();
    settle();
    EXPECT_EQ(page_->model().at(0).batch.graft, before.graft);
    EXPECT_TRUE(page_->status().startsWith(QStringLiteral("Proven")));
}

TEST_F(PlanTest, ADayOnWhichTheBuilderIsTakenIsWarnedOf) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    planned();
    ChangeSet off;
    off.add(DayOff{id<DayOff>(1),
                   1,
                   page_->model().at(0).batch.cellsDay,
                   page_->model().at(0).batch.cellsDay,
                   {}});
    apply(off);
    settle();
    EXPECT_TRUE(page_->gaps().contains(QStringLiteral("▲"))) << page_->gaps().toStdString();
    EXPECT_TRUE(page_->told().startsWith(QStringLiteral("The book has changed")))
        << page_->told().toStdString();
}

TEST_F(PlanTest, WhatCannotBeMetIsSaidWithWhatIsShort) {
    addThings(1);
    addOrder(1, "K-07", 60, "2027-07-20");
    openPage("2027-06-02", "2027-06-08");
    planned();
    EXPECT_TRUE(page_->status().startsWith(QStringLiteral("Not possible")))
        << page_->status().toStdString();
    EXPECT_TRUE(page_->gaps().contains(QStringLiteral("short of 60 mated queens")))
        << page_->gaps().toStdString();
    EXPECT_TRUE(page_->waysButton().isVisible());
}

TEST_F(PlanTest, WhereNoGraftHelpsItIsSaidOnceWithWhatToDoAndWithoutAnEmptyTable) {
    addThings(1);
    addOrder(1, "K-07", 6, "2027-06-10");  // due before any queen can be ready
    openPage("2027-06-02", "2027-06-04");
    planned();
    ASSERT_EQ(rows(), 0);
    ASSERT_FALSE(page_->showsSteps());
    EXPECT_TRUE(page_->status().startsWith(QStringLiteral("Not possible: no graft")))
        << page_->status().toStdString();
    EXPECT_EQ(page_->told(), QString()) << "it is said above already";
    EXPECT_TRUE(page_->gaps().contains(QStringLiteral("6 short of 6 mated queens")));
    EXPECT_TRUE(page_->gaps().contains(QStringLiteral("What to do:")));
    EXPECT_FALSE(page_->table().isVisible());
    EXPECT_FALSE(page_->takeOverButton().isVisible());
    ASSERT_TRUE(page_->waysButton().isVisible());
    EXPECT_EQ(page_->focusProxy(), &page_->waysButton());
    page_->forget();
    EXPECT_TRUE(page_->showsSteps());
    // A plan with batches shows them again.
    addOrder(2, "K-08", 4, "2027-08-10");
    planned();
    EXPECT_GT(rows(), 0);
    EXPECT_TRUE(page_->table().isVisible());
}

TEST_F(PlanTest, WaysAreFoundAndToldWithWhatFixesNothing) {
    addThings(1);  // two nucs
    addOrder(1, "K-07", 6, "2027-08-10");
    openPage("2027-06-02", "2027-06-06");
    planned();
    ASSERT_TRUE(page_->waysButton().isVisible()) << page_->status().toStdString();
    page_->waysButton().click();
    ASSERT_TRUE(page_->isPlanning());
    settle();
    EXPECT_TRUE(page_->ways().contains(QStringLiteral("more nucs from")))
        << page_->ways().toStdString();
    EXPECT_TRUE(page_->ways().contains(QStringLiteral("alone fix"))) << page_->ways().toStdString();
}

TEST_F(PlanTest, TickedBatchesAreKeptAndTheRestIsPlannedRound) {
    addThings(20);
    addOrder(1, "K-07", 24, "2027-08-10");
    openPage();
    page_->form().most().setValue(24);  // so it takes several graft days
    planned();
    ASSERT_GE(rows(), 2);
    // All but the first are let go; what is kept stands in the new plan as it was.
    const auto kept = page_->model().at(0).batch;
    for (int row = 1; row < rows(); ++row)
        page_->model().setData(page_->model().index(row, 0), Qt::Unchecked, Qt::CheckStateRole);
    settle();
    page_->form().keep().setChecked(true);
    planned();
    const auto& all = page_->model().rows();
    EXPECT_TRUE(std::any_of(all.begin(), all.end(), [&](const ProposalsModel::Row& row) {
        return row.batch.graft == kept.graft && row.batch.bars == kept.bars;
    }));
    EXPECT_GE(rows(), 2) << "and what it lacks is planned beside it";
}

TEST_F(PlanTest, SomeAreTakenOverAndTheOthersStayProposed) {
    addThings(20);
    addOrder(1, "K-07", 24, "2027-08-10");
    openPage();
    page_->form().most().setValue(24);
    planned();
    const int all = rows();
    ASSERT_GE(all, 2);
    key(Qt::Key_Space);  // the first is not ticked any more
    settle();
    page_->takeOverButton().click();
    settle();
    EXPECT_EQ(batches(), static_cast<std::size_t>(all - 1));
    EXPECT_EQ(rows(), 1) << "the one left stays proposed";
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(batches(), 0U);
}

TEST_F(PlanTest, StoppingEndsItWithTheBestFoundSoFar) {
    addThings(20);
    addOrder(1, "K-07", 24, "2027-08-10");
    openPage("2027-06-02", "2027-07-20");
    page_->plan();
    ASSERT_TRUE(page_->isPlanning());
    page_->stop();
    settle();
    EXPECT_FALSE(page_->isPlanning());
    EXPECT_EQ(batches(), 0U);
    page_->plan();  // and it can be planned again
    EXPECT_TRUE(page_->isPlanning());
    page_->stop();
    settle();
}

TEST_F(PlanTest, AfterPlanningTheKeysGoToTheListAndNoNameIsCut) {
    addThings(20);
    addOrder(1, "Autumn requeening of the home yard", 12, "2027-08-10");
    addOrder(2, "Splits for the neighbours", 8, "2027-08-10");
    openPage();
    page_->form().from().setFocus();
    planned();
    EXPECT_EQ(page_->focusWidget(), &page_->table());
    auto& table = page_->table();
    for (int row = 0; row < rows(); ++row) {
        const auto at = page_->model().index(row, ProposalsModel::For);
        const auto words = at.data().toString();
        EXPECT_TRUE(at.data(Qt::ToolTipRole).toString().contains(words));
        const QRect cell(0, 0, table.columnWidth(ProposalsModel::For), 10000);
        EXPECT_GE(table.rowHeight(row),
                  table.fontMetrics().boundingRect(cell, Qt::TextWordWrap, words).height())
            << words.toStdString();
        EXPECT_FALSE(table.horizontalScrollBar()->isVisible());
    }
}

TEST_F(PlanTest, AnEditOfTheBookEndsPlanningOnTheOldOne) {
    addThings();
    addOrder(1, "K-07", 8, "2027-08-10");
    openPage();
    page_->plan();
    ASSERT_TRUE(page_->isPlanning());
    addOrder(2, "K-08", 4, "2027-08-10");
    EXPECT_FALSE(page_->isPlanning());
    EXPECT_TRUE(page_->told().contains(QStringLiteral("plan anew")));
    EXPECT_TRUE(page_->showsSteps());
}

TEST_F(PlanTest, WhatIsAskedIsWhatTheFieldsSay) {
    addThings();
    openPage();
    auto& form = page_->form();
    form.most().setValue(40);
    form.hours().setValue(8);
    form.notOnOne().setChecked(true);
    form.weekday(6).setChecked(true);
    const auto question = form.question();
    EXPECT_EQ(question.grafts, (DayWindow{day("2027-06-02"), day("2027-06-14")}));
    EXPECT_EQ(question.mostGraftsADay, 40);
    EXPECT_EQ(question.mostMinutesADay, 480);
    EXPECT_TRUE(question.notOnOneBatch);
    EXPECT_EQ(question.freeWeekdays,
              (std::array<bool, 7>{false, false, false, false, false, false, true}));
    EXPECT_FALSE(form.keepsTicked()) << "there is nothing to be kept yet";
}

}  // namespace
}  // namespace tenthday::test
