/// Plans of whole books: orders in, batches out; what is given stays; chances by another way.
#include "planning/season_plan.h"

#include <gtest/gtest.h>

#include <random>

#include "calendar/iso_week.h"
#include "outlook/supply_of.h"
#include "planning/adopt.h"
#include "planning/ways.h"
#include "support/beta_draws.h"
#include "support/season_maker.h"
#include "support/with_rows.h"
#include "tasks/work_time.h"

namespace tenthday::test {
namespace {

/// Orders for next spring, builders as they are, nothing planned yet. Grafts from 10 May to 10
/// June.
Snapshot emptySeason(int count = 30, int nucs = 0) {
    SeasonMaker maker("2027-04-01");
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    for (int i = 0; i < nucs; ++i)
        maker.box("N" + std::to_string(i + 1), "Mill", "7", "2027-01-01");
    return with(maker.snapshot(), orderFor(1, count, "2027-07-31"));
}
PlanQuestion may() {
    PlanQuestion question;
    question.grafts = {day("2027-05-10"), day("2027-05-24")};
    return question;
}
IdSource newIds() {
    return [next = std::uint64_t{900000}]() mutable { return id<Batch>(++next).uuid; };
}
PlanAnswer planned(const Snapshot& book, const PlanQuestion& question) {
    const auto answer = planSeason(*freshOutlook(book), question);
    if (!answer) throw std::runtime_error(answer.error().text);
    return answer.value();
}
std::int32_t graftsOf(const PlanAnswer& answer) {
    std::int32_t sum = 0;
    for (const auto& batch : answer.batches) sum += batch.grafts();
    return sum;
}

TEST(SeasonPlan, FromOrdersToGraftDaysThatAreSureEnough) {
    const auto book = emptySeason();
    const auto answer = planned(book, may());
    EXPECT_EQ(answer.status, PlanStatus::Proven);
    ASSERT_FALSE(answer.batches.empty());
    EXPECT_TRUE(answer.shortOf.empty());
    ASSERT_EQ(answer.after.orders.size(), 1U);
    EXPECT_EQ(answer.after.orders[0].state, OrderState::Met);
    EXPECT_GE(answer.after.orders[0].chance, 0.9);
    EXPECT_EQ(answer.before.orders[0].chance, 0);
    EXPECT_EQ(answer.after.grafts, graftsOf(answer));
    for (const auto& batch : answer.batches) {
        EXPECT_TRUE(may().grafts.contains(batch.graft));
        EXPECT_LE(batch.ready, day("2027-07-31"));
        ASSERT_FALSE(batch.orders.empty()) << "it is for the order";
        for (const auto& bar : batch.bars) EXPECT_TRUE(bar.builders.front()) << "in a builder";
    }
}

TEST(SeasonPlan, TheSameQuestionHasTheSameAnswer) {
    const auto book = emptySeason();
    const auto one = planned(book, may());
    const auto two = planned(book, may());
    EXPECT_EQ(one.batches, two.batches);
    EXPECT_EQ(one.after, two.after);
}

/// The chain drawn stage by stage, a share for each batch at each: nothing of the reckoning.
double chanceByLot(const PlanAnswer& answer, const Facts& facts, int wanted) {
    constexpr int kDraws = 20000;
    std::mt19937_64 random(20270510);
    const auto rates = chainRates(facts);
    int met = 0;
    for (int draw = 0; draw < kDraws; ++draw) {
        int queens = 0;
        for (const auto& batch : answer.batches) {
            int left = batch.grafts();
            for (const auto stage : kAllLossStages) left = drawPassed(random, left, rates[stage]);
            queens += left;
        }
        met += queens >= wanted;
    }
    return static_cast<double>(met) / kDraws;
}

TEST(SeasonPlan, HowSureItIsByLot) {
    // Due long after the last catch, and without weather: all that comes is there.
    for (const int count : {12, 30}) {
        const auto book = emptySeason(count);
        const auto answer = planned(book, may());
        const double chance = answer.after.orders.at(0).chance;
        // Four standard deviations of 20,000 draws.
        EXPECT_NEAR(chanceByLot(answer, book.facts(), count), chance, 0.009) << count;
    }
}

TEST(SeasonPlan, HowSureSeveralOrdersAreByLot) {
    // Four standard deviations. Each is whole when there is enough for it and for those due before
    // it.
    auto second = orderFor(2, 9, "2027-08-05");
    second.sure = Tenths{700};
    const auto book = with(emptySeason(12), second);
    auto question = may();
    question.notOnOneBatch = true;
    question.mostGraftsADay = 30;
    const auto answer = planned(book, question);
    EXPECT_GE(answer.batches.size(), 2U);
    ASSERT_EQ(answer.after.orders.size(), 2U);
    int wanted = 0;
    for (const auto& order : answer.after.orders) {
        wanted += book.find(order.order)->count;
        EXPECT_NEAR(chanceByLot(answer, book.facts(), wanted), order.chance, 0.013) << wanted;
    }
}

TEST(SeasonPlan, WhatIsInTheBookStaysAndCounts) {
    SeasonMaker maker("2027-04-01");
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    maker.batch("7", "2027-05-14", 14, 24, "B1");
    const auto book = with(maker.snapshot(), orderFor(1, 30, "2027-07-31"));
    const auto answer = planned(book, may());
    EXPECT_EQ(answer.before.grafts, 24);
    EXPECT_EQ(answer.after.grafts, 24 + graftsOf(answer));
    EXPECT_LT(graftsOf(answer), graftsOf(planned(emptySeason(), may())));
    const auto edit = adopt(book, answer.batches, newIds());
    ASSERT_TRUE(edit) << edit.error().text;
    const auto after = applied(book, edit.value());
    ASSERT_TRUE(after) << after.error().text;
    EXPECT_EQ(*after.value().find(maker.batchId("7")), *book.find(maker.batchId("7")));
    EXPECT_EQ(after.value().all<BatchBar>().of(maker.batchId("7").uuid).size(), 1U);
    const auto then = freshOutlook(after.value());
    for (const auto& builder : then->builders)
        EXPECT_TRUE(builder.tooSoon.empty()) << builder.builder->label;
}

TEST(SeasonPlan, TakenOverItIsOneEditThatGoesBack) {
    const auto book = emptySeason();
    const auto answer = planned(book, may());
    const auto edit = adopt(book, answer.batches, newIds());
    ASSERT_TRUE(edit) << edit.error().text;
    EXPECT_EQ(edit.value().verb, Verb::PlanSeason);
    const auto after = applied(book, edit.value());
    ASSERT_TRUE(after) << after.error().text;
    EXPECT_EQ(after.value().all<Batch>().size(), answer.batches.size());
    auto then = freshOutlook(after.value());
    EXPECT_EQ(supplyOf(*then).orders().at(0).chance, answer.after.orders.at(0).chance);
    const auto back = applied(after.value(), edit.value().inverse());
    ASSERT_TRUE(back);
    EXPECT_TRUE(back.value().sameContent(book));
    EXPECT_EQ(planned(after.value(), may()).status, PlanStatus::Nothing) << "no more is wanted";
}

TEST(SeasonPlan, HeldFastProposalsStandAndTheRestIsPlannedAround) {
    const auto book = emptySeason();
    const auto free = planned(book, may());
    auto question = may();
    question.keep = {free.batches.front()};
    question.keep.front().bars.resize(1);
    question.keep.front().bars.front().grafts = 10;
    const auto answer = planned(book, question);
    const auto same =
        std::find_if(answer.batches.begin(), answer.batches.end(), [&](const ProposedBatch& batch) {
            return batch.bars == question.keep.front().bars &&
                   batch.graft == question.keep.front().graft;
        });
    EXPECT_NE(same, answer.batches.end());
    EXPECT_EQ(answer.after.orders.at(0).state, OrderState::Met);
}

TEST(SeasonPlan, KeepsToTheDaysAndGraftsAsked) {
    auto question = may();
    question.freeWeekdays[6] = true;  // Sunday
    question.freeWeekdays[0] = true;
    question.mostGraftsADay = 20;
    const auto answer = planned(emptySeason(12), question);
    EXPECT_GE(answer.batches.size(), 2U);
    for (const auto& batch : answer.batches) {
        EXPECT_LE(batch.grafts(), 20);
        for (const auto day : {batch.graft, batch.cellsDay}) {
            EXPECT_NE(isoWeekday(day), 7);
            EXPECT_NE(isoWeekday(day), 1);
        }
    }
}

TEST(SeasonPlan, KeepsToTheHoursADayBesideWhatTheBookHas) {
    auto question = may();
    question.grafts.last = day("2027-05-17");
    const auto book = emptySeason(10, 60);
    const auto free = planned(book, question);
    const auto most = [&](const PlanAnswer& plan) {
        const auto edit = adopt(book, plan.batches, newIds());
        const auto season = applied(book, edit.value());
        const auto outlook = freshOutlook(season.value());
        const auto tasks = tasksOf(*outlook);
        std::int32_t longest = 0;
        for (const auto& batch : plan.batches)
            for (const auto day : {batch.graft, batch.cellsDay, batch.ready})
                longest =
                    std::max(longest, dayWork(season.value(), within(tasks, {day, day})).minutes());
        return longest;
    };
    const std::int32_t limit = 70;
    question.mostMinutesADay = limit;
    const auto answer = planned(book, question);
    EXPECT_GT(answer.batches.size(), free.batches.size()) << "so the work is spread";
    EXPECT_TRUE(answer.longDays.empty());
    EXPECT_LE(most(answer), limit);
    EXPECT_EQ(answer.after.orders.at(0).state, OrderState::Met);
    EXPECT_EQ(answer.leastGraftDays, 0) << "hours are on the safe side: no proof";
    question.mostMinutesADay = 0;
    EXPECT_FALSE(planSeason(*freshOutlook(book), question));
}

TEST(SeasonPlan, ABreederQueenOfTheLineThatIsAskedFor) {
    Line gentle;
    gentle.id = id<Line>(50);
    gentle.label = "Gentle";
    Queen queen;
    queen.id = id<Queen>(51);
    queen.label = "G 1";
    queen.line = gentle.id;
    queen.breederFrom = day("2027-01-01");
    auto order = orderFor(2, 10, "2027-07-31");
    order.line = gentle.id;
    const auto book = with(emptySeason(5), gentle, queen, order);
    const auto answer = planned(book, may());
    EXPECT_EQ(answer.status, PlanStatus::Proven);
    for (const auto& batch : answer.batches)
        for (const auto& bar : batch.bars) EXPECT_EQ(bar.breeder, queen.id);
    for (const auto& standing : answer.after.orders) EXPECT_EQ(standing.state, OrderState::Met);
}

TEST(SeasonPlan, RipeCellsOnTheirDayNeedNoNuc) {
    SeasonMaker maker("2027-04-01");
    maker.yard("Mill").builder("B1", "Mill");
    maker.box("N1", "Mill", "7", "2027-01-01");
    const auto book = with(maker.snapshot(), orderFor(1, 12, "2027-06-01", OrderKind::RipeCell));
    const auto answer = planned(book, may());
    EXPECT_EQ(answer.status, PlanStatus::Proven);
    ASSERT_EQ(answer.batches.size(), 1U);
    EXPECT_EQ(answer.batches[0].cellsDay, day("2027-06-01"));
    EXPECT_GE(answer.batches[0].sold, 12);
    EXPECT_EQ(answer.after.orders.at(0).state, OrderState::Met)
        << "chance " << answer.after.orders.at(0).chance << " of " << graftsOf(answer)
        << " grafts in " << answer.rounds << " rounds, sold " << answer.batches[0].sold;
}

/// Every order that is told short is less sure than it must be, and would be sure if it wanted so
/// many less, and no fewer; every other one is sure.
void expectTrueShortfalls(const Snapshot& book, const PlanAnswer& answer) {
    const auto edit = adopt(book, answer.batches, newIds());
    ASSERT_TRUE(edit) << edit.error().text;
    const auto season = applied(book, edit.value());
    ASSERT_TRUE(season) << season.error().text;
    for (const auto& standing : answer.after.orders) {
        const auto told =
            std::find_if(answer.shortOf.begin(), answer.shortOf.end(),
                         [&](const auto& each) { return each.order == standing.order; });
        const auto row = season.value().find(standing.order);
        if (told == answer.shortOf.end()) {
            EXPECT_GE(standing.chance, row->sure.value / 1000.0 - 1e-9) << row->label;
            continue;
        }
        EXPECT_EQ(told->reached, standing.chance);
        EXPECT_LT(told->reached, told->wanted) << row->label;
        for (const int less : {told->lacking, told->lacking - 1}) {
            auto smaller = *row;
            smaller.count -= less;
            if (smaller.count < 1) continue;
            ChangeSet changes;
            changes.edit(row, smaller);
            const auto then = applied(season.value(), changes);
            ASSERT_TRUE(then);
            const auto outlook = freshOutlook(then.value());
            for (const auto& order : supplyOf(*outlook).orders())
                if (order.order->id == standing.order) {
                    EXPECT_EQ(order.state == OrderState::Met, less == told->lacking)
                        << row->label << " with " << less << " less";
                }
        }
    }
}

TEST(SeasonPlan, AShortfallIsToldByTheExactChance) {
    auto often = orderFor(2, 20, "2027-07-20");
    often.sure = Tenths{300};  // may fail oftener than not
    for (const int nucs : {12, 25, 40}) {
        const auto book = with(emptySeason(14, nucs), often);
        auto question = may();
        question.grafts.last = day("2027-05-20");
        expectTrueShortfalls(book, planned(book, question));
    }
}

TEST(SeasonPlan, WhatTheBookGivesSurelyEnoughIsNotPlannedFor) {
    // 40 grafts give some 14 queens: 10 are sure enough, and no batch is proposed for them.
    SeasonMaker maker("2027-04-01");
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    maker.batch("7", "2027-05-14", 14, 40, "B1");
    const auto book = with(maker.snapshot(), orderFor(1, 10, "2027-07-31"));
    const auto answer = planned(book, may());
    ASSERT_EQ(answer.before.orders.at(0).state, OrderState::Met)
        << answer.before.orders.at(0).chance;
    EXPECT_EQ(answer.status, PlanStatus::Nothing);
    EXPECT_TRUE(answer.batches.empty());
}

TEST(SeasonPlan, MoreIsAskedForUntilAnOrderIsSureEnough) {
    for (const int permille : {500, 800, 950, 990}) {
        auto order = orderFor(2, 24, "2027-07-31");
        order.sure = Tenths{permille};
        const auto book = with(emptySeason(1), order);
        const auto answer = planned(book, may());
        EXPECT_EQ(answer.status, PlanStatus::Proven) << permille;
        for (const auto& standing : answer.after.orders)
            EXPECT_TRUE(standing.order != order.id || standing.chance >= permille / 1000.0);
        EXPECT_LE(answer.graftDaysWithin, 1) << permille;
    }
}

TEST(SeasonPlan, OneBatchIsNoLargerThanItMustBe) {
    const auto answer = planned(emptySeason(6), may());
    ASSERT_EQ(answer.batches.size(), 1U);
    ASSERT_EQ(answer.status, PlanStatus::Proven);
    EXPECT_EQ(answer.graftDaysWithin, 0);
    EXPECT_LE(answer.graftsWithin, 8) << "the gap to what no plan does without";
    auto fewer = answer.batches;
    fewer.front().bars.front().grafts -= 2;  // one may be rounding
    const auto again = recheckPlan(*freshOutlook(emptySeason(6)), fewer);
    ASSERT_TRUE(again) << again.error().text;
    EXPECT_FALSE(again.value().shortOf.empty());
}

TEST(SeasonPlan, ChangedProposalsAreLookedAtAgain) {
    const auto book = emptySeason();
    auto batches = planned(book, may()).batches;
    batches.resize(1);
    batches[0].bars.resize(1);
    batches[0].bars[0].grafts = 5;
    const auto answer = recheckPlan(*freshOutlook(book), batches);
    ASSERT_TRUE(answer) << answer.error().text;
    EXPECT_EQ(answer.value().status, PlanStatus::Checked);
    EXPECT_EQ(answer.value().after.grafts, 5);
    EXPECT_FALSE(answer.value().shortOf.empty());
}

TEST(SeasonPlan, ABookWithoutBuildersIsTold) {
    SeasonMaker maker("2027-04-01");
    const auto book = with(maker.yard("Mill").snapshot(), orderFor(1, 5, "2027-07-31"));
    const auto answer = planSeason(*freshOutlook(book), may());
    ASSERT_FALSE(answer);
    EXPECT_NE(answer.error().text.find("builder"), std::string::npos);
}

TEST(SeasonPlan, WhatIsShortAndGraftDaysAreToldFirst) {
    PlanControl control;
    std::optional<PlanPhase> last;
    bool grafts = false;
    bool sureness = false;
    control.report = [&](const PlanProgress& progress) {
        const auto phase = progress.phase;
        if (progress.round > 1 || phase == PlanPhase::Reading) return;
        EXPECT_TRUE(!last || *last <= phase) << "aims in their order";
        last = phase;
        grafts = grafts || phase == PlanPhase::Grafts;
        sureness = sureness || phase == PlanPhase::Sureness;
        EXPECT_EQ(progress.shortBy.has_value(), phase > PlanPhase::Orders);
        EXPECT_EQ(progress.graftDays.has_value(), phase > PlanPhase::GraftDays);
        EXPECT_EQ(progress.shortBy.value_or(0), 0);
        EXPECT_EQ(progress.graftDays.value_or(1), 1);
    };
    auto question = may();
    question.grafts.last = day("2027-05-14");
    ASSERT_TRUE(planSeason(*freshOutlook(emptySeason(6)), question, control));
    EXPECT_TRUE(grafts && sureness);
}

TEST(SeasonPlan, TellsHowFarItIsAndStopsWhenCancelled) {
    const auto outlook = freshOutlook(emptySeason());
    std::atomic<bool> cancel{false};
    PlanControl control;
    control.cancel = &cancel;
    bool reading = false;
    control.report = [&](const PlanProgress& progress) {
        reading = reading || progress.phase == PlanPhase::Reading;
        if (progress.phase == PlanPhase::GraftDays) cancel = true;
    };
    const auto answer = planSeason(*outlook, may(), control);
    ASSERT_TRUE(answer) << answer.error().text;
    EXPECT_TRUE(reading);
    EXPECT_EQ(answer.value().status, PlanStatus::Stopped);
}

}  // namespace
}  // namespace tenthday::test
