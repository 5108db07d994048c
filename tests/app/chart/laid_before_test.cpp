// What is used again of the layout before must be what a fresh layout gives, item by item and place
// by place.
#include "chart/laid_before.h"

#include <gtest/gtest.h>

#include "app/chart/hand_scene.h"
#include "app/chart/layout_text.h"
#include "chart/builders_lane.h"
#include "support/sample_orders.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

/// Wider than the other.
class WideRuler : public FixedRuler {
public:
    [[nodiscard]] qreal width(const QString& text, Type type) const override {
        return 1.25 * FixedRuler::width(text, type);
    }
};

class LaidBeforeTest : public HandScene {
protected:
    LaidBeforeTest() { ruler = &narrow; }

    /// Lays it out with what was laid before, and afresh.
    void expectAsAfresh(const std::string& what) {
        SCOPED_TRACE(what);
        const auto again = layOut(outlook, axis, options, *ruler, before);
        const auto fresh = layOut(*outlook, axis, options, *ruler);
        ASSERT_EQ(layoutText(again, *outlook), layoutText(fresh, *outlook));
        ASSERT_EQ(again.items, fresh.items);
        ASSERT_EQ(again.paths, fresh.paths);
        ASSERT_EQ(again.targets.size(), fresh.targets.size());
        for (std::size_t i = 0; i < fresh.targets.size(); ++i) {
            ASSERT_EQ(again.targets[i].key, fresh.targets[i].key) << i;
            ASSERT_EQ(again.targets[i].rect, fresh.targets[i].rect) << i;
        }
        ASSERT_EQ(again.texts.size(), fresh.texts.size());
        for (std::size_t i = 0; i < fresh.texts.size(); ++i) {
            ASSERT_EQ(again.texts[i].text, fresh.texts[i].text);
            ASSERT_EQ(again.texts[i].type, fresh.texts[i].type);
            ASSERT_EQ(again.texts[i].baseline, fresh.texts[i].baseline);
        }
        ASSERT_EQ(again.pxPerCell, fresh.pxPerCell);
        ASSERT_EQ(again.contentHeight, fresh.contentHeight);
        ASSERT_EQ(again.plot, fresh.plot);
    }

    /// Rows of builders laid afresh so far.
    [[nodiscard]] int rowsLaid() const {
        for (const auto& at : before.lanes)
            if (const auto* builders = dynamic_cast<const BuildersLane*>(at.lane.get()))
                return builders->rows().laidAfresh();
        return 0;
    }
    /// Sheets of yards, by which it is seen whether they were laid anew.
    [[nodiscard]] std::vector<const Sheet*> yardSheets() const {
        std::vector<const Sheet*> sheets;
        for (const auto& at : before.lanes)
            if (!at.name && !at.isRowsOfBefore) sheets.push_back(at.laid.get());
        return sheets;
    }

    FixedRuler narrow;
    WideRuler wide;
};

constexpr LargeSeason kSeason{60, 700, 2};

TEST_F(LaidBeforeTest, ADragGivesWhatAFreshLayoutGives) {
    show(largeSeason(kSeason));
    showDays(summer);
    const auto batch = largeSeasonBatch(45);
    options.selected = batch;
    expectAsAfresh("saved");
    for (const int by : {1, 2, 3, 2, 5, -1, 0, 1}) {
        drag(batch, by);
        expectAsAfresh("dragged by " + std::to_string(by));
    }
    drop();
    expectAsAfresh("dropped");
}

TEST_F(LaidBeforeTest, WhatStandsBesideBatchesIsNotThatOfBefore) {
    show(largeSeason(kSeason));
    showDays(summer);
    expectAsAfresh("saved");
    const auto builder = outlook->builders[2].builder->id;
    const auto today = outlook->snapshot.today();
    ChartProposals proposals;
    proposals.loads.push_back(
        {builder, QStringLiteral("P"), Moment{today + Days{3}}, Moment{today + Days{9}}, 20});
    options.proposals = std::make_shared<const ChartProposals>(proposals);
    expectAsAfresh("proposed");
    options.proposals.reset();
    expectAsAfresh("no longer proposed");
    options.canFold = false;
    expectAsAfresh("without folds");
    options.isPicture = true;
    expectAsAfresh("a picture");
    options.isPicture = false;
    options.size = {1366, 560};
    expectAsAfresh("a lower window");
    const auto& days = saved.all<WeatherDay>();
    const auto row = *(days.end() - 1);
    auto cold = *row;
    cold.tmaxC = Tenths{40};
    ChangeSet weather;
    weather.edit(row, cold);
    edit(weather);
    expectAsAfresh("colder");
    ChangeSet gone;
    const auto retired = saved.find(builder);
    auto until = *retired;
    until.until = today;
    gone.edit(retired, until);
    edit(gone);
    expectAsAfresh("a builder that ends");
}

// The selected batch's ribbon runs past yards on which nothing differs.
TEST_F(LaidBeforeTest, WordsKeepClearOfARibbonThatMoves) {
    show(largeSeason({60, 300, 2}));
    for (const int days : {40, 88}) {
        showDays({day("2027-06-01"), day("2027-06-01") + Days{days}});
        for (int n = 25; n < 60; ++n) {
            const auto batch = largeSeasonBatch(n);
            options.selected = batch;
            drop();
            expectAsAfresh("selected " + std::to_string(n));
            if (outlook->find(batch)->timeline.grafted) continue;
            for (const int by : {1, 2, 3}) {
                drag(batch, by);
                expectAsAfresh(std::to_string(n) + " dragged by " + std::to_string(by));
                if (HasFatalFailure()) return;
            }
        }
    }
}

TEST_F(LaidBeforeTest, MostIsUsedAgainInADrag) {
    show(largeSeason(kSeason));
    showDays(summer);
    options.size = {1366, 1600};  // all in sight
    const auto batch = largeSeasonBatch(45);
    options.selected = batch;
    drag(batch, 1);
    expectAsAfresh("first");
    const int all = rowsLaid();
    ASSERT_GT(all, 5);
    const auto sheets = yardSheets();
    drag(batch, 2);
    expectAsAfresh("a day further");
    EXPECT_LT(rowsLaid() - all, all / 2);
    const auto after = yardSheets();
    ASSERT_EQ(after.size(), sheets.size());
    int kept = 0;
    for (std::size_t i = 0; i < sheets.size(); ++i) kept += sheets[i] == after[i];
    EXPECT_GT(kept, 0);
    EXPECT_LT(kept, static_cast<int>(sheets.size())) << "where the batch goes is laid anew";
}

// Outlines of what was planned give way to those of what a preview moves.
TEST_F(LaidBeforeTest, WhatWasPlannedIsShownWithoutAPreviewOnly) {
    show(largeSeason(kSeason));
    showDays({day("2027-04-20"), day("2027-07-20")});
    const auto& outcomes = saved.all<Outcome>();
    ChangeSet late;
    for (int n = 12; n < 20; ++n)
        for (const auto& row : outcomes.of(largeSeasonBatch(n).uuid))
            if (row->kind == OutcomeKind::Graft) {
                auto edited = *row;
                edited.day += Days{1};
                late.edit(row, edited);
            }
    ASSERT_FALSE(late.isEmpty());
    edit(late);
    expectAsAfresh("grafted a day late");
    const auto paths = layOut(*outlook, axis, options, *ruler).items.size();
    drag(largeSeasonBatch(50), 1);
    expectAsAfresh("another one dragged");
    EXPECT_LT(layOut(*outlook, axis, options, *ruler).items.size(), paths)
        << "the plan's outlines are gone";
    drop();
    expectAsAfresh("dropped");
}

// Where lanes are scrolled, a row that grows moves all that lies under it.
TEST_F(LaidBeforeTest, WhatOnlyLiesLowerIsMoved) {
    show(largeSeason({160, 600, 2}));
    showDays(summer);
    options.size = {1366, 460};
    const auto height = [&] { return layOut(*outlook, axis, options, *ruler).contentHeight; };
    const int rows = static_cast<int>(outlook->builders.size());
    int grown = 0;
    int moved = 0;
    for (int n = 60; n < 100; ++n) {
        const auto batch = largeSeasonBatch(n);
        drop();
        expectAsAfresh("dropped");
        if (outlook->find(batch)->timeline.grafted) continue;
        options.selected = batch;
        expectAsAfresh("selected " + std::to_string(n));
        for (const int by : {1, 2, 3, 4, 5}) {
            const qreal was = height();
            const int laid = rowsLaid();
            const auto sheets = yardSheets();
            drag(batch, by);
            expectAsAfresh(std::to_string(n) + " dragged by " + std::to_string(by));
            if (HasFatalFailure()) return;
            if (height() == was) continue;
            ++grown;
            EXPECT_LT(rowsLaid() - laid, rows / 2) << n << " by " << by;
            const auto after = yardSheets();
            for (std::size_t i = 0; i < after.size(); ++i) moved += after[i] == sheets[i];
        }
    }
    EXPECT_GT(grown, 3);
    EXPECT_GT(moved, grown) << "yards to which it does not go";
    drop();
    expectAsAfresh("dropped");
    for (const qreal scrolled : {28.0, 12.0, 12.5, 0.0}) {
        const int laid = rowsLaid();
        options.scrollY = scrolled;
        expectAsAfresh("scrolled to " + std::to_string(scrolled));
        if (scrolled == 28) {
            EXPECT_EQ(rowsLaid(), laid) << "lanes are scrolled without laying them";
        }
    }
    for (const qreal ratio : {1.25, 2.0}) {
        options.pixelRatio = ratio;
        options.scrollY = 0;
        expectAsAfresh("at " + std::to_string(ratio));
        options.scrollY = 14;
        expectAsAfresh("scrolled at " + std::to_string(ratio));
    }
}

/// Where the selected batch's ribbon runs.
std::vector<QPainterPath> ribbonOf(const Layout& layout) {
    std::vector<QPainterPath> ribbon;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Path && item.role == Role::Ribbon)
            ribbon.push_back(layout.paths[static_cast<std::size_t>(item.detail)]);
    return ribbon;
}

// A drag's frames leave out lanes that nobody sees; the ribbon runs, and lanes lie, as if they were
// there. Scrolled into sight they are laid.
TEST_F(LaidBeforeTest, WhatNobodySeesIsLeftOutOfADrag) {
    show(largeSeason({160, 600, 2}));
    showDays(summer);
    options.size = {1366, 460};
    int ribbons = 0;
    for (int n = 60; n < 90; ++n) {
        const auto batch = largeSeasonBatch(n);
        if (outlook->find(batch)->timeline.grafted) continue;
        options.selected = batch;
        options.scrollY = 20 * (n % 9);
        drag(batch, 1 + n % 3);
        expectAsAfresh("dragged");
        for (const qreal scrolled : {900.0, 0.0, 400.0, 1400.0}) {
            const qreal was = std::exchange(options.scrollY, scrolled);
            expectAsAfresh("scrolled to " + std::to_string(scrolled));
            options.scrollY = was;
        }
        const auto during = layOut(outlook, axis, options, *ruler, before);
        options.before = nullptr;
        const auto whole = layOut(outlook, axis, options, *ruler, before);
        EXPECT_LT(during.targets.size(), whole.targets.size());
        EXPECT_EQ(during.contentHeight, whole.contentHeight);
        EXPECT_EQ(during.hidden, whole.hidden);
        EXPECT_EQ(ribbonOf(during), ribbonOf(whole)) << n;
        ribbons += !ribbonOf(whole).empty();
        expectAsAfresh("all is laid again");
        drop();
    }
    EXPECT_GT(ribbons, 3);
}

// A drag's frames are short of time: days of yards, which are thousands, are no places in them.
TEST_F(LaidBeforeTest, DaysOfYardsCannotBeHitInADrag) {
    show(largeSeason(kSeason));
    showDays({outlook->season.first, outlook->season.last});
    options.size = {1366, 1400};  // all yards are seen
    const auto count = [&](Hit hit) {
        const auto layout = layOut(outlook, axis, options, *ruler, before);
        return std::count_if(layout.targets.begin(), layout.targets.end(),
                             [hit](const Target& target) { return target.key.hit == hit; });
    };
    const auto days = count(Hit::YardDay);
    const auto rows = count(Hit::YardRow);
    ASSERT_GT(days, 0);
    drag(largeSeasonBatch(45), 2);
    EXPECT_EQ(count(Hit::YardDay), 0);
    EXPECT_EQ(count(Hit::YardRow), rows) << "cells can be dragged there";
    drop();
    EXPECT_EQ(count(Hit::YardDay), days);
}

// Outlines of where a batch was cross no words: those of trouble have a ground of their own there.
TEST_F(LaidBeforeTest, WordsOfTroubleStandOffTheOutlinesOfADrag) {
    show(largeSeason(kSeason));
    showDays(summer);
    options.size = {1366, 1400};
    int told = 0;
    for (int n = 30; n < 60; ++n) {
        const auto batch = largeSeasonBatch(n);
        drag(batch, 2);
        const auto layout = layOut(*outlook, axis, options, *ruler);
        QRectF row;  // where the outline lies
        for (const auto& builder : options.before->builders)
            for (const auto& load : builder.loads)
                for (const auto& target : layout.targets)
                    if (load.batch == batch && target.key.hit == Hit::BuilderRow &&
                        target.key.builder == builder.builder->id)
                        row = target.rect;
        for (const auto& item : layout.items) {
            const bool isTrouble = item.role == Role::Danger || item.role == Role::Caution;
            if (item.shape != Shape::Text || !isTrouble || !row.contains(item.rect)) continue;
            ++told;
            EXPECT_TRUE(std::any_of(layout.items.begin(), layout.items.end(), [&](const Item& on) {
                return on.shape == Shape::Fill && on.role == Role::Ground &&
                       on.layer == Layer::Words && on.rect.contains(item.rect);
            })) << n;
        }
        drop();
    }
    EXPECT_GT(told, 0);
}

// In a window that shows all of it, what is dragged does not push the lanes below about.
TEST_F(LaidBeforeTest, InAWholeSeasonLanesHoldStillWhileARowGrows) {
    show(largeSeason({160, 600, 2}));
    showDays({outlook->season.first, outlook->season.last});
    options.size = {1366, 1000};
    const auto yardRows = [&] {
        std::vector<QRectF> rows;
        for (const auto& target : layOut(*outlook, axis, options, *ruler).targets)
            if (target.key.hit == Hit::YardRow) rows.push_back(target.rect);
        return rows;
    };
    const auto tracksOf = [](const Outlook& of) {
        int tracks = 0;
        for (const auto& row : builderRows(of)) tracks += row.trackCount;
        return tracks;
    };
    const auto rows = yardRows();
    ASSERT_FALSE(rows.empty());
    int grown = 0;
    for (int n = 60; n < 100; ++n) {
        const auto batch = largeSeasonBatch(n);
        drop();
        if (outlook->find(batch)->timeline.grafted) continue;
        const int tracks = tracksOf(*outlook);
        for (const int by : {1, 3, 5}) {
            drag(batch, by);
            grown += tracksOf(*outlook) > tracks;
            EXPECT_EQ(yardRows(), rows) << n << " by " << by;
            expectAsAfresh("dragged");
        }
        // Back on its first day, the drag goes on.
        const auto held = options.heldTracks;
        drop();
        options.heldTracks = held;
        EXPECT_EQ(yardRows(), rows) << n;
        expectAsAfresh("back");
    }
    EXPECT_GT(grown, 3);
}

TEST_F(LaidBeforeTest, NothingDiffersInTheSameSeason) {
    show(largeSeason(kSeason));
    showDays(summer);
    expectAsAfresh("first");
    const int all = rowsLaid();
    const auto sheets = yardSheets();
    outlook = outlookOf(saved, memo);
    expectAsAfresh("the same anew");
    EXPECT_EQ(rowsLaid(), all);
    EXPECT_EQ(yardSheets(), sheets);
}

TEST_F(LaidBeforeTest, TheBooksRowsCount) {
    show(largeSeason(kSeason));
    showDays(summer);
    expectAsAfresh("saved");
    const auto builders = saved.all<Builder>();
    ChangeSet renamed;
    auto builder = **builders.begin();
    builder.label = "Renamed";
    renamed.edit(*builders.begin(), builder);
    const auto yards = saved.all<Yard>();
    auto yard = **yards.begin();
    yard.label = "Renamed too";
    renamed.edit(*yards.begin(), yard);
    edit(renamed);
    expectAsAfresh("a builder and a yard renamed");
    ChangeSet gone;
    const auto makeUps = saved.all<MakeUp>();
    ASSERT_FALSE(makeUps.empty());
    gone.erase(*makeUps.begin());
    edit(gone);
    expectAsAfresh("a make-up taken out");
    const auto warmer = setFact(saved, Fact::EggsAfterFlightD, 4.0, Id<FactOverride>{Uuid{7, 7}});
    ASSERT_TRUE(warmer) << warmer.error().text;
    edit(warmer.value());
    expectAsAfresh("a trade number");
    auto tomorrow = saved;
    tomorrow.setToday(saved.today() + Days{1});
    show(tomorrow);
    expectAsAfresh("the next day");
}

TEST_F(LaidBeforeTest, FindingsThatMoveUpTheListAreFound) {
    show(largeSeason(kSeason));
    showDays(summer);
    expectAsAfresh("saved");
    ASSERT_GT(outlook->findings.size(), 3U);
    auto fewer = std::make_shared<Outlook>(*outlook);
    fewer->findings.erase(fewer->findings.begin());
    outlook = fewer;
    expectAsAfresh("the first finding gone");
    auto other = std::make_shared<Outlook>(*outlook);
    for (auto& finding : other->findings) finding.count += 1;
    outlook = other;
    expectAsAfresh("all count one more");
    auto worse = std::make_shared<Outlook>(*outlook);
    for (auto& finding : worse->findings) finding.severity = Severity::Danger;
    outlook = worse;
    expectAsAfresh("all in danger");
}

TEST_F(LaidBeforeTest, AnotherRulerIsAskedAfterItIsToldOf) {
    show(largeSeason(kSeason));
    showDays(summer);
    expectAsAfresh("narrow");
    ruler = &wide;
    expectAsAfresh("wide");
    before.forget();
    ruler = &narrow;
    expectAsAfresh("narrow again");
}

TEST_F(LaidBeforeTest, TheSampleIsLaidAsAfresh) {
    outlook = sampleOutlook();
    options.orders = sampleOrders();
    showDays({day("2027-05-10"), day("2027-07-25")});
    for (const auto* label : {"18", "15", "20"}) {
        options.selected = sampleBatch(label);
        expectAsAfresh(std::string("selected ") + label);
    }
    options.before = outlook;
    for (const auto* to : {"2027-06-05", "2027-06-08", "2027-06-05"}) {
        outlook = sampleOutlook("18", day(to));
        expectAsAfresh(std::string("18 dragged to ") + to);
    }
    outlook = std::exchange(options.before, nullptr);
    expectAsAfresh("dropped");
}

class AnyHand : public LaidBeforeTest, public ::testing::WithParamInterface<unsigned> {};

TEST_P(AnyHand, GetsWhatAFreshLayoutGives) {
    show(largeSeason({60, 300, 2}));
    showDays(summer);
    Hand hand(GetParam());
    expectAsAfresh("first");
    std::string done;
    for (int step = 0; step < 60; ++step) {
        done += doOne(hand) + ", ";
        expectAsAfresh(done);
        if (HasFatalFailure()) return;
    }
}
INSTANTIATE_TEST_SUITE_P(Seeds, AnyHand, ::testing::Range(1U, 7U));

}  // namespace
}  // namespace tenthday::test
