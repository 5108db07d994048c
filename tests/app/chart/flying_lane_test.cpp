// Weather, drones and the season's limits on the season chart, and the words of a late batch.
#include "chart/flying_lane.h"

#include <gtest/gtest.h>

#include <QLocale>

#include "app/chart/layout_text.h"
#include "chart/card_for.h"
#include "chart/chart_layout.h"
#include "chart/hit_test.h"
#include "support/season_maker.h"

namespace tenthday::test {
namespace {

class FlyingLaneOf : public ::testing::Test {
protected:
    FlyingLaneOf() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        maker.yard("Mill").builder("Box", "Mill");
        for (int i = 1; i <= 14; ++i) {
            const auto box = "N" + std::to_string(i);
            maker.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-05-10");
        }
        maker.batch("1", "2027-05-11", 12, 20, "Box");
    }
    ~FlyingLaneOf() override { QLocale::setDefault(QLocale::c()); }

    /// A fine year past; this year cold from 25 May to 6 June, today being 1 June.
    void coldSpell() {
        maker.weather("2026-01-01", "2026-12-31", 22);
        maker.weather("2027-05-20", "2027-05-24", 22).weather("2027-05-25", "2027-06-06", 12);
    }
    OutlookPtr know(const char* frost, const char* dronesOut, const char* dronesFlying = nullptr) {
        const auto snapshot = maker.snapshot();
        const auto yard = *snapshot.all<Yard>().begin();
        Yard known = *yard;
        if (frost) known.frostDay = day(frost);
        if (dronesOut) known.dronesOutDay = day(dronesOut);
        ChangeSet changes;
        changes.edit(yard, known);
        if (dronesFlying)
            changes.add(DroneSighting{id<DroneSighting>(900'000),
                                      1,
                                      yard->id,
                                      day(dronesFlying),
                                      DroneStage::Flying,
                                      {},
                                      {}});
        OutlookMemo memo;
        return outlookOf(applied(snapshot, changes).value(), memo);
    }
    Layout lay(const OutlookPtr& outlook, DayWindow days = {day("2027-05-10"), day("2027-06-27")},
               bool open = false) {
        ChartOptions options;
        options.size = {1600, 900};
        if (open) options.openYards = {maker.yardId("Mill")};
        const auto span = plotSpan(*outlook, options, ruler);
        return layOut(*outlook, DayAxis(days, span.left, span.width), options, ruler);
    }
    static int count(const Layout& layout, Hit hit) {
        return static_cast<int>(
            std::count_if(layout.targets.begin(), layout.targets.end(),
                          [&](const Target& target) { return target.key.hit == hit; }));
    }
    static bool says(const Layout& layout, const char* words) {
        return std::any_of(layout.texts.begin(), layout.texts.end(), [&](const TextRun& run) {
            return run.text == QString::fromUtf8(words);
        });
    }
    /// The highest mark of a role in the lane over a day, px; 0 without one.
    static qreal heightOf(const Layout& layout, Role role, const char* on) {
        const auto* target = findTarget(layout, {.hit = Hit::FlyingDay, .day = day(on)});
        qreal height = 0;
        for (const auto& item : layout.items)
            if (target && item.role == role && item.shape == Shape::Fill &&
                item.layer == Layer::Body && target->rect.contains(item.rect.center()))
                height = std::max(height, item.rect.height());
        return height;
    }
    static std::string cardOn(const Outlook& outlook, const Layout& layout, const char* on) {
        const auto* target = findTarget(layout, {.hit = Hit::FlyingDay, .day = day(on)});
        if (!target) return "no target";
        const auto* hit = targetAt(layout, target->rect.center());
        return hit ? chart_cards::asPlainText(cardFor(outlook, hit->key)).toStdString() : "no hit";
    }

    SeasonMaker maker{"2027-06-01"};
    FixedRuler ruler;
};

TEST_F(FlyingLaneOf, HasDaysOnlyWhereWeatherOrDronesAreKnown) {
    const auto layout = lay(maker.outlook());
    EXPECT_EQ(count(layout, Hit::FlyingDay), 0);
    EXPECT_EQ(count(layout, Hit::OutsideLimits), 0);
    EXPECT_TRUE(says(layout, "Flying days")) << "one line that says what belongs here";
    EXPECT_FALSE(says(layout, "chance of a flying day"));
    coldSpell();
    const auto with = lay(maker.outlook());
    EXPECT_EQ(count(with, Hit::FlyingDay), 49);
    EXPECT_TRUE(says(with, "Flying days"));
    EXPECT_TRUE(says(with, "chance of a flying day")) << "in the legend";
    EXPECT_FALSE(says(with, "drones mature"));
}

TEST_F(FlyingLaneOf, ShowsSeenDaysSolidAndOthersAsTheirChance) {
    coldSpell();
    const auto outlook = maker.outlook();
    const auto layout = lay(outlook);
    const qreal full = heightOf(layout, Role::FlyingDay, "2027-05-22");
    EXPECT_GT(full, 15);
    EXPECT_EQ(heightOf(layout, Role::FlyingDay, "2027-05-28"), 0);
    EXPECT_GT(heightOf(layout, Role::InkSoft, "2027-05-28"), 0) << "a tick at the foot";
    EXPECT_EQ(cardOn(*outlook, layout, "2027-05-22"),
              "Sat 22 May\na flying day · by the weather recorded for it");
    EXPECT_EQ(cardOn(*outlook, layout, "2027-05-28"),
              "Fri 28 May\nno flying day · by the weather recorded for it");
    EXPECT_EQ(cardOn(*outlook, layout, "2027-06-04"),
              "Fri 4 Jun\nlikely no flying day · by the weather forecast for it");
    EXPECT_EQ(cardOn(*outlook, layout, "2027-06-20"),
              "Sun 20 Jun\nchance of a flying day · 100 % · counted from 1 past year");
}

TEST_F(FlyingLaneOf, TellsWhenDronesAreMatureWithoutWeatherToo) {
    const auto outlook = know(nullptr, "2027-06-20", "2027-05-17");
    const auto layout = lay(outlook);
    EXPECT_TRUE(says(layout, "Drones"));
    EXPECT_FALSE(says(layout, "Flying days"));
    EXPECT_TRUE(says(layout, "drones mature"));
    EXPECT_EQ(cardOn(*outlook, layout, "2027-06-01"),
              "Tue 1 Jun\ndrones mature from · Mon 17 May · in Mill\n"
              "drones thrown out about · Sun 20 Jun · in Mill");
    EXPECT_TRUE(says(lay(know(nullptr, "2027-06-20")), "drones until 20 Jun"));
}

TEST_F(FlyingLaneOf, DaysOutsideTheLimitsAreHatchedAndSayWhy) {
    const auto outlook = know("2027-08-10", nullptr);  // two rounds before frost: 3 June
    const auto layout = lay(outlook);
    EXPECT_EQ(count(layout, Hit::OutsideLimits), 24) << "4 to 27 June";
    const auto* target = findTarget(layout, {.hit = Hit::OutsideLimits, .day = day("2027-06-20")});
    ASSERT_NE(target, nullptr);
    const auto* hit = targetAt(layout, {target->rect.center().x(), target->rect.top() + 4});
    ASSERT_EQ(hit, target);
    EXPECT_EQ(chart_cards::asPlainText(cardFor(*outlook, hit->key)).toStdString().substr(0, 56),
              "Sun 20 Jun: after the last graft\nlast graft · Thu 3 Jun");
}

TEST_F(FlyingLaneOf, NoTextStandsOnAnother) {
    coldSpell();
    const auto outlook = know("2027-10-10", "2027-08-20", "2027-05-17");
    const std::pair<DayWindow, bool> shown[] = {
        {outlook->season, false},
        {{day("2027-05-10"), day("2027-06-27")}, false},
        {{day("2027-05-30"), day("2027-06-08")}, false},
        {{day("2027-05-10"), day("2027-06-27")}, true},
        {{day("2027-05-24"), day("2027-06-12")}, true},
    };
    for (const auto& [days, open] : shown) {
        const auto layout = lay(outlook, days, open);
        std::vector<const Item*> texts;
        for (const auto& item : layout.items)
            if (item.shape == Shape::Text) texts.push_back(&item);
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                EXPECT_FALSE(texts[i]->layer == texts[j]->layer &&
                             texts[i]->rect.intersects(texts[j]->rect))
                    << layout.texts[static_cast<std::size_t>(texts[i]->detail)].text.toStdString();
    }
}

TEST_F(FlyingLaneOf, ALateBatchSaysSoInItsNucsWhereItFits) {
    coldSpell();
    const auto outlook = maker.outlook();
    const auto words = "late: 9 days without flying";
    EXPECT_TRUE(says(lay(outlook), words));
    EXPECT_FALSE(says(lay(outlook, outlook->season), words)) << "days of few pixels";
    const auto card =
        chart_cards::yardDay(*outlook, maker.yardId("Mill"), day("2027-06-03"), maker.batchId("1"));
    EXPECT_TRUE(chart_cards::asPlainText(card).contains(QLatin1String(words)));
}

TEST_F(FlyingLaneOf, AnOpenedYardSaysItOnceInItsFirstNucWithRoom) {
    coldSpell();
    const auto outlook = maker.outlook();
    const auto words = QStringLiteral("late: 9 days without flying");
    const auto layout = lay(outlook, {day("2027-05-10"), day("2027-06-27")}, true);
    std::vector<QRectF> found;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text &&
            layout.texts[static_cast<std::size_t>(item.detail)].text == words)
            found.push_back(item.rect);
    ASSERT_EQ(found.size(), 2U) << "in the yard's block and in one of its nucs";
    const auto lower = found[0].top() > found[1].top() ? found[0] : found[1];
    const auto* target = targetAt(layout, lower.center());
    ASSERT_NE(target, nullptr);
    EXPECT_EQ(target->key.hit, Hit::Nuc);
    EXPECT_EQ(target->key.batch, maker.batchId("1"));
    EXPECT_TRUE(target->rect.top() <= lower.top() && target->rect.bottom() >= lower.bottom());
}

TEST_F(FlyingLaneOf, OfThisYearAloneShowsWhatIsKnownAndSaysSo) {
    maker.weather("2027-05-20", "2027-05-24", 22).weather("2027-05-25", "2027-06-04", 12);
    const auto outlook = maker.outlook();
    const auto layout = lay(outlook);
    EXPECT_EQ(count(layout, Hit::FlyingDay), 49);
    EXPECT_GT(heightOf(layout, Role::FlyingDay, "2027-05-22"), 15);
    EXPECT_GT(heightOf(layout, Role::InkSoft, "2027-05-28"), 0);
    EXPECT_EQ(heightOf(layout, Role::FlyingDay, "2027-06-10"), 0);
    EXPECT_EQ(heightOf(layout, Role::InkSoft, "2027-06-10"), 0);
    EXPECT_TRUE(says(layout, "no past year to reckon with: first eggs at a fixed figure"));
    EXPECT_FALSE(says(layout, "chance of a flying day")) << "in the legend";
    EXPECT_EQ(cardOn(*outlook, layout, "2027-06-10"),
              "Thu 10 Jun\nweather not known · no past year and no usual weather of the months to "
              "go by\nfirst eggs · at a fixed figure · 10.6 d after emergence, whatever the "
              "weather (S61)");
    maker.weather("2026-01-01", "2026-12-31", 22);
    EXPECT_FALSE(
        says(lay(maker.outlook()), "no past year to reckon with: first eggs at a fixed figure"));
}

TEST_F(FlyingLaneOf, ABatchTellsByWhenItsQueensLayAndWhy) {
    const auto cardOf = [&](const SeasonMaker& book) {
        const auto outlook = book.outlook();
        return chart_cards::asPlainText(chart_cards::yardDay(*outlook, maker.yardId("Mill"),
                                                             day("2027-06-03"), maker.batchId("1")))
            .toStdString();
    };
    const auto expect = [&](const SeasonMaker& book, const char* words) {
        const auto card = cardOf(book);
        EXPECT_NE(card.find(words), std::string::npos) << card;
    };
    expect(maker,
           "of those that will lay · 80 % by 5 Jun · 10.6 d after emergence, whatever the weather "
           "(S61)");
    maker.weather("2023-01-01", "2025-12-31", 22);
    auto fine = maker;
    expect(fine.weather("2026-01-01", "2026-12-31", 22), "weather hardly keeps them from flying");
    maker.weather("2026-01-01", "2026-05-28", 22).weather("2026-05-29", "2026-06-12", 12);
    maker.weather("2026-06-13", "2026-12-31", 22);
    expect(maker, "in 1 of 4 past years no flying day from 29 May to ");
}

}  // namespace
}  // namespace tenthday::test
