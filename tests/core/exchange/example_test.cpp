/// The example agrees with itself.
#include "exchange/example.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

#include "outlook/outlook.h"
#include "outlook/supply_of.h"
#include "records/order_checks.h"
#include "records/order_days.h"

namespace tenthday {
namespace {

Snapshot example() {
    auto snapshot = applied(Snapshot{}, exampleContent()).value();
    snapshot.setToday(*snapshot.book().today);
    snapshot.setSeason((*snapshot.all<Season>().begin())->id);
    return snapshot;
}

/// Counts of one kind over all bars, or nothing when none was noted.
std::optional<int> counted(const Snapshot& book, Id<Batch> batch, OutcomeKind kind) {
    std::optional<int> sum;
    for (const auto& outcome : book.all<Outcome>().of(batch.uuid))
        if (outcome->kind == kind && outcome->count) sum = sum.value_or(0) + outcome->count->value;
    return sum;
}

TEST(Example, IsOfTheSizeAgreed) {
    const auto book = example();
    EXPECT_EQ(book.all<Yard>().size(), 3U);
    EXPECT_NEAR(static_cast<double>(book.all<Box>().size()), 50, 5);
    EXPECT_EQ(book.all<Batch>().size(), 8U);
    std::map<BuilderKind, int> builders;
    for (const auto& builder : book.all<Builder>()) ++builders[builder->kind];
    EXPECT_EQ(builders[BuilderKind::Incubator], 1);
    EXPECT_EQ(book.all<Builder>().size(), 4U);
    std::size_t breeders = 0;
    for (const auto& queen : book.all<Queen>()) breeders += queen->breederFrom.has_value();
    EXPECT_EQ(breeders, 3U);
    std::set<std::string> layouts;
    for (const auto& layout : book.all<BoxLayout>()) layouts.insert(layout->layout);
    EXPECT_EQ(layouts, (std::set<std::string>{"3+3", "7"}));
}

TEST(Example, IsStockedOverThreeWeeksOfMay) {
    const auto book = example();
    std::set<Day> days;
    for (const auto& stocking : book.all<Stocking>()) days.insert(stocking->day);
    EXPECT_GE(*days.begin(), *dayFromText("2027-05-01"));
    EXPECT_LE(*days.rbegin(), *dayFromText("2027-05-31"));
    EXPECT_NEAR(static_cast<double>((*days.rbegin() - *days.begin()).count()), 20, 3);
}

TEST(Example, EveryBatchHasBarsOfOneOrTwoBreedersAndABuilderAtEachStep) {
    const auto book = example();
    for (const auto& batch : book.all<Batch>()) {
        std::set<Id<Queen>> breeders;
        const auto steps = book.all<Step>().of(batch->method.uuid);
        const auto loads = book.all<BatchLoad>().of(batch->id.uuid);
        for (const auto& bar : book.all<BatchBar>().of(batch->id.uuid)) {
            ASSERT_TRUE(bar->breeder) << batch->label;
            EXPECT_TRUE(book.find(*bar->breeder)->breederFrom) << batch->label;
            breeders.insert(*bar->breeder);
            for (const auto& step : steps)
                EXPECT_EQ(std::count_if(loads.begin(), loads.end(),
                                        [&](const auto& load) {
                                            return load->bar == bar->bar &&
                                                   load->step == step->step;
                                        }),
                          1)
                    << batch->label << " bar " << bar->bar;
        }
        EXPECT_GE(breeders.size(), 1U) << batch->label;
        EXPECT_LE(breeders.size(), 2U) << batch->label;
    }
}

TEST(Example, CountsConserve) {
    const auto book = example();
    int recorded = 0;
    for (const auto& batch : book.all<Batch>()) {
        const auto grafted = counted(book, batch->id, OutcomeKind::Graft);
        const auto accepted = counted(book, batch->id, OutcomeKind::TakeCount);
        const auto sealed = counted(book, batch->id, OutcomeKind::Sealed);
        const auto ripe = counted(book, batch->id, OutcomeKind::Ripe);
        int bars = 0;
        for (const auto& bar : book.all<BatchBar>().of(batch->id.uuid)) bars += bar->cells.value;
        EXPECT_EQ(grafted.has_value(), batch->day < book.today()) << batch->label;
        EXPECT_EQ(grafted.value_or(bars), bars) << batch->label;
        EXPECT_LE(accepted.value_or(0), bars) << batch->label;
        EXPECT_LE(sealed.value_or(0), accepted.value_or(0)) << batch->label;
        EXPECT_LE(ripe.value_or(0), sealed.value_or(0)) << batch->label;
        int done = 0;
        for (const auto& placement : book.all<Placement>().of(batch->id.uuid))
            done += placement->done ? 1 : 0;
        EXPECT_EQ(done, ripe.value_or(0)) << batch->label;  // every ripe cell went somewhere
        recorded += ripe ? 1 : 0;
    }
    EXPECT_EQ(recorded, 4);
}

TEST(Example, WhatIsRecordedHasHappened) {
    const auto book = example();
    for (const auto& outcome : book.all<Outcome>()) EXPECT_LE(outcome->day, book.today());
    for (const auto& placement : book.all<Placement>())
        EXPECT_EQ(placement->done, placement->day < book.today());
    for (const auto& stocking : book.all<Stocking>()) EXPECT_LT(stocking->day, book.today());
    for (const auto& note : book.all<BuilderNote>()) EXPECT_LE(note->day, book.today());
}

TEST(Example, NoSideHoldsTwoCellsAndAllAreStockedTheDayBefore) {
    const auto book = example();
    OutlookMemo memo;
    const auto outlook = outlookOf(book, memo);
    std::size_t rounds = 0;
    for (const auto& side : outlook->nucs.sides) {
        const auto name = side.box->label + side.side->side;
        for (std::size_t i = 0; i < side.rounds.size(); ++i, ++rounds) {
            if (i > 0) {
                EXPECT_GT(side.rounds[i].transferDay, side.rounds[i - 1].catchDay) << name;
            }
            const auto before = [&](const auto& stocking) {
                return stocking->day < side.rounds[i].transferDay;
            };
            EXPECT_TRUE(std::any_of(side.stockings.begin(), side.stockings.end(), before)) << name;
            EXPECT_TRUE(side.stands.contains(side.rounds[i].transferDay)) << name;
            EXPECT_TRUE(side.yardOn(side.rounds[i].transferDay)) << name;
        }
    }
    EXPECT_GT(rounds, 100U);  // recorded ones and those the plan gives
}

TEST(Example, LooksFoundWhatOnePlacedAndNotMore) {
    const auto book = example();
    std::set<std::pair<Id<Batch>, Id<NucSide>>> placed;
    for (const auto& placement : book.all<Placement>())
        if (placement->side) placed.emplace(placement->batch, *placement->side);
    std::map<OutcomeKind, int> seen;
    for (const auto& outcome : book.all<Outcome>()) {
        if (!outcome->side) continue;
        EXPECT_TRUE(placed.contains({outcome->batch, *outcome->side}));
        ++seen[outcome->kind];
    }
    EXPECT_GT(seen[OutcomeKind::FirstEggs], 0);
    EXPECT_GT(seen[OutcomeKind::NoQueen], 0);
}

TEST(Example, HasThreeFindingsAndANoteOnItsDay) {
    OutlookMemo memo;
    const auto outlook = outlookOf(example(), memo);
    std::vector<FindingKind> kinds;
    for (const auto& finding : outlook->findings) kinds.push_back(finding.kind);
    EXPECT_EQ(kinds, (std::vector{FindingKind::TooManyCells, FindingKind::CatchHoldsNucs,
                                  FindingKind::BoxOverfull, FindingKind::YardFull}));
    for (const auto& finding : outlook->findings) EXPECT_GE(finding.day, outlook->snapshot.today());
}

TEST(Example, HasOrdersOfEveryKindAndState) {
    const auto book = example();
    OutlookMemo memo;
    const auto outlook = outlookOf(book, memo);
    std::set<OrderKind> kinds;
    std::set<OrderStanding> standings;
    for (const auto& order : book.all<Order>()) {
        kinds.insert(order->kind);
        standings.insert(termsOf(book, order->id).standing);
        EXPECT_FALSE(faultOf(book, *order)) << order->label;
    }
    EXPECT_EQ(kinds.size(), kTokenCount<OrderKind>);
    EXPECT_EQ(standings, (std::set{OrderStanding::Open, OrderStanding::Waiting}));
    std::set<OrderState> states;
    std::size_t delivered = 0;
    for (const auto& order : supplyOf(*outlook).orders()) {
        states.insert(order.state);
        delivered += order.rest == 0 ? 1 : 0;
    }
    EXPECT_EQ(states.size(), kTokenCount<OrderState>);
    EXPECT_EQ(delivered, 1U);
    EXPECT_EQ(book.all<Earmark>().size(), 1U);
    EXPECT_EQ(book.all<PromiseMove>().size(), 1U);
    for (const auto& delivery : book.all<Delivery>()) EXPECT_FALSE(faultOf(book, *delivery));
    for (const auto& earmark : book.all<Earmark>()) EXPECT_FALSE(faultOf(book, *earmark));
}

TEST(Example, HasTwentyYearsOfWeatherAndAColdWeekInItsOwn) {
    const auto book = example();
    OutlookMemo memo;
    const auto outlook = outlookOf(book, memo);
    ASSERT_TRUE(outlook->mating->seasons());
    EXPECT_EQ(outlook->mating->seasons()->years().size(), 20U);
    std::map<Day, Ptr<WeatherDay>> days;
    for (const auto& row : book.all<WeatherDay>()) days.emplace(row->date, row);
    EXPECT_EQ(days.begin()->first, *dayFromText("2007-01-01"));
    EXPECT_EQ(days.rbegin()->first, book.today() - Days{1});
    for (auto day = *dayFromText("2027-05-25"); day <= *dayFromText("2027-05-31"); day += Days{1}) {
        ASSERT_TRUE(days.contains(day));
        EXPECT_LT(*days[day]->tmaxC, Tenths{130});
        EXPECT_EQ(outlook->mating->seasons()->known(day), false);
    }
}

TEST(Example, HasDronesSeenInItsMatingYardsInTimeForItsFirstGraft) {
    const auto book = example();
    EXPECT_EQ(book.all<DroneSighting>().size(), 3U);
    for (const auto& seen : book.all<DroneSighting>())
        EXPECT_NE(book.find(seen->yard)->roles.find("mating"), std::string::npos);
    OutlookMemo memo;
    const auto outlook = outlookOf(book, memo);
    ASSERT_TRUE(outlook->limits.firstGraft());
    EXPECT_LE(*outlook->limits.firstGraft(), dayOf(outlook->batches.front()->timeline.graft));
}

TEST(Example, IsTheSameEveryTime) {
    EXPECT_TRUE(example().sameContent(example()));
    std::set<Uuid> ids;
    std::size_t rows = 0;
    for (const auto& change : exampleContent().rows) {
        visitChange([&](const auto& c) { ids.insert(c.after->id.uuid); }, change);
        ++rows;
    }
    EXPECT_EQ(ids.size(), rows);
}

}  // namespace
}  // namespace tenthday
