// What must be read within seconds and without hovering: which nucs are ready, which batch is in
// trouble and why, what can be promised; and that no word stands on a mark.
#include <gtest/gtest.h>

#include "app/chart/cold_spell.h"
#include "app/chart/glance.h"
#include "chart/card_for.h"
#include "chart/chart_parts.h"
#include "chart/hit_test.h"
#include "exchange/example.h"
#include "look/contrast.h"
#include "look/palette.h"

namespace tenthday::test {
namespace {

TEST_F(Glance, TodayHasItsReadyNumbersWhereNoDayIsChosen) {
    const Day today = outlook->snapshot.today();
    const auto at = static_cast<std::size_t>((today - outlook->season.first).count());
    const auto undecided = textsOf(lay());
    for (const auto& yard : outlook->nucs.yards)
        EXPECT_TRUE(anyStarts(undecided,
                              "today: " + std::to_string(yard.days[at].numbers.ready) + " ready"))
            << yard.yard->label;
    options.chosenDay = day("2027-06-17");
    const auto chosen = textsOf(lay());
    EXPECT_FALSE(anyStarts(chosen, "today: "));
    EXPECT_TRUE(anyStarts(chosen, "17 Jun: "));
}

TEST_F(Glance, ALateBatchIsToldAtTheHeadOfItsLaneAndInItsBlock) {
    auto maker = coldSpell();
    const auto season = maker.outlook();
    options.orders = nullptr;
    for (const auto& days : {season->season, DayWindow{day("2027-05-10"), day("2027-06-27")}}) {
        const auto layout = lay(*season, days);
        const auto texts = textsOf(layout);
        EXPECT_TRUE(std::any_of(texts.begin(), texts.end(), [](const std::string& text) {
            return text.starts_with("batch 1, ") && text.ends_with("late: 9 days without flying");
        }));
        const TargetKey key{.hit = Hit::Trouble, .batch = maker.batchId("1")};
        const auto told =
            std::find_if(layout.targets.begin(), layout.targets.end(), [&](const Target& target) {
                return target.key.hit == key.hit && target.key.batch == key.batch;
            });
        ASSERT_NE(told, layout.targets.end());
        const auto card = chart_cards::asPlainText(cardFor(*season, told->key, nullptr));
        for (const char* part : {"Batch 1 is late", "days without flying", "first look", "S49"})
            EXPECT_TRUE(card.contains(QLatin1String(part))) << card.toStdString();
        // It is heard, too, where the batch is.
        const auto parts = chartParts(*season, options);
        EXPECT_TRUE(std::any_of(parts.begin(), parts.end(), [&](const ChartPart& part) {
            return part.kind == ChartPart::Kind::Batch && part.key.batch == key.batch &&
                   part.value.contains(QStringLiteral("late: 9 days without flying"));
        }));
        // A sign as well: never colour alone. One at the lane's head, one in the block.
        int signs = 0;
        for (const auto& item : layout.items)
            if (item.layer == Layer::Words && item.role == Role::Caution &&
                item.shape == Shape::Glyph)
                ++signs;
        EXPECT_GE(signs, 2);
    }
}

TEST_F(Glance, ManyInTroubleAreCountedWhereTheyHaveNoRoom) {
    const auto season = large(60, 400);
    options.orders = nullptr;
    options.size = {900, 700};
    const auto layout = lay(*season, season->season);
    const auto texts = textsOf(layout);
    // Batches alike share their words, the first by name: "1, 4 and 9 more late: ..."; else so
    // many more are counted.
    const bool joined = std::any_of(texts.begin(), texts.end(), [](const std::string& text) {
        return text.find(" more") != std::string::npos;
    });
    EXPECT_TRUE(joined || anyStarts(texts, "and "));
    // All of the season in one window: its last lane ends within the plot or can be scrolled to.
    EXPECT_GT(layout.contentHeight, 0);
}

TEST_F(Glance, WhatCanBePromisedIsANumberInEveryWeekToCome) {
    const auto layout = lay();
    const auto texts = textsOf(layout);
    EXPECT_FALSE(texts.contains("–"));
    EXPECT_TRUE(texts.contains("Can promise in all"));
    EXPECT_TRUE(texts.contains("now to Sunday, 90 % sure"));
    int zeros = 0;
    int over = 0;
    for (const auto& target : layout.targets) {
        if (target.key.hit != Hit::PromiseWeek) continue;
        for (const auto& item : layout.items) {
            if (item.shape != Shape::Text || !target.rect.contains(item.rect)) continue;
            const auto& text = layout.texts[static_cast<std::size_t>(item.detail)].text;
            zeros += text == QStringLiteral("0") ? 1 : 0;
            over += text == QStringLiteral("past") ? 1 : 0;
        }
    }
    EXPECT_GT(zeros, 3);
    EXPECT_GE(over, 1) << "the week before today's";
}

TEST_F(Glance, APromiseThatIsNotWorkedOutSaysSoAndWhy) {
    options.orders = nullptr;
    const auto layout = lay();
    const auto texts = textsOf(layout);
    EXPECT_TRUE(texts.contains(outlook->mating ? "not worked out yet"
                                               : "not worked out: the weather is not known"));
    const auto* week = findTarget(layout, {.hit = Hit::PromiseWeek, .day = day("2027-06-14")});
    ASSERT_NE(week, nullptr);
    const auto card = chart_cards::asPlainText(cardFor(*outlook, week->key, nullptr));
    EXPECT_TRUE(card.contains(QStringLiteral("not worked out"))) << card.toStdString();
}

TEST_F(Glance, NamesOfOrdersAreWhole) {
    auto orders = std::make_shared<SeasonOrders>(*sampleOrders());
    auto row = *orders->orders[4].order;
    row.label = "Autumn requeening of the upper yards";
    orders->orders[4].order = std::make_shared<const Order>(row);
    options.orders = orders;
    for (const qreal width : {900.0, 1366.0, 1920.0}) {
        options.size.setWidth(width);
        for (const auto& text : textsOf(lay()))
            EXPECT_EQ(text.find("\xE2\x80\xA6"), std::string::npos) << text << " at " << width;
    }
}

TEST_F(Glance, AnOpenedYardHasAHeadingPerBox) {
    SeasonMaker maker("2027-05-15");
    maker.yard("East").builder("Box", "East");
    maker.box("N1", "East", "3+3", "2027-04-01").box("N2", "East", "7", "2027-04-01");
    maker.stock("N1/A", "2027-05-10").stock("N1/B", "2027-05-10").stock("N2/-", "2027-05-10");
    const auto season = maker.outlook();
    options.orders = nullptr;
    options.openYards = {maker.yardId("East")};
    const auto layout = lay(*season, season->season);
    std::map<std::string, int> names;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text && item.layer == Layer::Names)
            ++names[layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString()];
    EXPECT_EQ(names["N1"], 1) << "once for both its sides";
    EXPECT_EQ(names["A"], 1);
    EXPECT_EQ(names["B"], 1);
    EXPECT_EQ(names["N2"], 1);
    EXPECT_EQ(names["-"], 0);
}

TEST_F(Glance, ACellsDayWithoutRoomIsNotLeftOutUnsaid) {
    const auto season = large(60, 400);
    options.orders = nullptr;
    const auto layout = lay(*season, season->season);
    std::set<int> asked;
    for (const auto& target : layout.targets)
        if (target.key.hit == Hit::CellsDay) {
            asked.insert(target.key.index);
            EXPECT_FALSE(cardFor(*season, target.key, nullptr).lines.empty());
        }
    EXPECT_EQ(asked.size(), season->nucs.cellsDays.size()) << "each has its card";
    EXPECT_TRUE(textsOf(layout).contains("\xE2\x80\xA6"));
}

TEST_F(Glance, ReadyNucsHaveAnEdgeAgainstTheGround) {
    const auto layout = lay();
    int slices = 0;
    for (const auto& slice : layout.items) {
        const bool isSlice = slice.shape == Shape::Fill && slice.role == Role::Ready &&
                             slice.layer == Layer::Body && slice.rect.height() >= 5 &&
                             slice.radius == 0 && slice.target >= 0;
        if (!isSlice ||
            layout.targets[static_cast<std::size_t>(slice.target)].key.hit != Hit::YardDay)
            continue;
        ++slices;
        for (const qreal y : {slice.rect.top(), slice.rect.bottom() - 1})
            EXPECT_TRUE(
                std::any_of(layout.items.begin(), layout.items.end(), [&](const Item& line) {
                    return line.role == Role::ReadyEdge && line.shape == Shape::Fill &&
                           line.rect.contains(QPointF(slice.rect.center().x(), y + 0.5));
                }));
    }
    EXPECT_GT(slices, 3);
    const auto& light = paletteOf(Look::Light);
    for (const auto beside : {Role::Ground, Role::Ready, Role::WeekendGround, Role::Waiting})
        EXPECT_GE(contrastRatio(light[Role::ReadyEdge], light[beside]), 3) << token(beside);
}

TEST_F(Glance, WhatIsNotStockedLooksUnlikeDaysOutsideTheSeason) {
    const auto layout = lay(outlook->season);
    for (const auto& item : layout.items) {
        if (item.role == Role::NotStockedHatch) {
            EXPECT_NE(item.shape, Shape::Hatch) << "level lines";
        }
        if (item.role == Role::Ghost) {
            EXPECT_EQ(item.shape, Shape::Stroke) << "a broken outline";
        }
    }
    const auto texts = textsOf(layout);
    for (const char* entry : {"not stocked", "as planned before, or proposed",
                              "late, or other trouble", "likely, once caught (+5)"})
        EXPECT_TRUE(texts.contains(entry)) << entry;
}

/// Marks a word must not stand on: looks, make-ups, signs of trouble, what hangs from a bar.
std::vector<QRectF> marksOf(const Layout& layout) {
    std::vector<QRectF> marks;
    for (const auto& item : layout.items) {
        if (item.target < 0 || item.shape == Shape::Text || item.shape == Shape::Fill) continue;
        const auto hit = layout.targets[static_cast<std::size_t>(item.target)].key.hit;
        if (hit == Hit::Look || hit == Hit::MakeUp || hit == Hit::Trouble)
            marks.push_back(item.rect);
    }
    return marks;
}

void expectClear(const Layout& layout, const std::string& where) {
    const auto marks = marksOf(layout);
    std::vector<const Item*> words;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text && item.layer == Layer::Words) words.push_back(&item);
    const auto textOf = [&](const Item* item) {
        return layout.texts[static_cast<std::size_t>(item->detail)].text.toStdString();
    };
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (const auto& mark : marks)
            EXPECT_FALSE(mark.intersects(words[i]->rect))
                << textOf(words[i]) << " on a mark, " << where;
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(words[j]->rect.intersects(words[i]->rect))
                << textOf(words[i]) << " on " << textOf(words[j]) << ", " << where;
    }
}

TEST_F(Glance, NoWordStandsOnAMarkOrAWordAtAnyHeightOrZoom) {
    auto maker = coldSpell();
    const auto late = maker.outlook();
    for (const qreal height : {420.0, 560.0, 620.0, 700.0, 768.0, 900.0, 1080.0, 1400.0})
        for (const int days : {7, 21, 45, 90, 184}) {
            options.size.setHeight(height);
            const Day from = day("2027-05-10");
            const auto where =
                std::to_string(static_cast<int>(height)) + " px, " + std::to_string(days) + " days";
            const DayWindow seen{from, std::min(from + Days{days}, outlook->season.last)};
            options.orders = sampleOrders();
            expectClear(lay(seen), where);
            options.orders = nullptr;
            expectClear(lay(*late, {from, std::min(from + Days{days}, late->season.last)}),
                        where + ", late");
        }
}

TEST_F(Glance, NucsOfAnOpenedYardGetLowSoThatAllLanesFit) {
    OutlookMemo memo;
    auto snapshot = applied(Snapshot{}, exampleContent()).value();
    snapshot.setToday(day("2027-06-03"));
    outlook = outlookOf(snapshot, memo);
    options.orders = seasonOrdersOf(*outlook);
    options.canFold = true;
    options.strip = true;
    options.openYards = {outlook->nucs.yards.front().yard->id};
    const auto rowOf = [](const Layout& layout) {
        for (const auto& target : layout.targets)
            if (target.key.hit == Hit::Nuc) return target.rect.height();
        return 0.0;
    };
    for (const qreal height : {768.0, 830.0, 900.0}) {
        options.size.setHeight(height);
        const auto layout = lay(outlook->season);
        EXPECT_LE(layout.contentHeight, layout.plot.height() + 1) << height;
        EXPECT_GE(rowOf(layout), 2) << height;
        EXPECT_LT(rowOf(layout), ruler.line(Type::Small)) << height;
        expectClear(layout, "opened");
    }
    // Where that is no help, they are read and scrolled through.
    options.size.setHeight(420);
    const auto low = lay(outlook->season);
    EXPECT_GT(low.contentHeight, low.plot.height());
    EXPECT_GE(rowOf(low), ruler.line(Type::Small) - 1);
}

TEST_F(Glance, NamesOfScrolledLanesGoBehindTheHead) {
    for (const auto& yard : outlook->nucs.yards) options.openYards.push_back(yard.yard->id);
    options.size.setHeight(420);
    options.scrollY = 180;
    const auto layout = lay(outlook->season);
    const QRectF head(0, 0, options.size.width(), layout.plot.top() - 1);
    int behind = 0;
    for (const auto& [rect, text] : textsIn(layout, Layer::Names))
        behind += head.intersects(rect) ? 1 : 0;
    EXPECT_GT(behind, 0) << "some are scrolled there";
    EXPECT_TRUE(std::any_of(layout.items.begin(), layout.items.end(), [&](const Item& item) {
        return item.layer == Layer::Top && item.shape == Shape::Fill && item.role == Role::Ground &&
               item.rect.contains(head);
    }));
}

TEST_F(Glance, AWholeLargeSeasonFitsOneWindow) {
    const auto season = large(120, 800);
    options.orders = nullptr;
    options.size = {1920, 1080};
    const auto layout = lay(*season, season->season);
    EXPECT_LE(layout.contentHeight, layout.plot.height() + 1);
    expectClear(layout, "large");
}

TEST_F(Glance, TodayIsAColumnWithItsNameOverIt) {
    const Day today = outlook->snapshot.today();
    options.chosenDay = today + Days{9};
    const auto layout = lay();
    const auto& axis = layout.axis;
    for (const auto& [rect, text] : textsIn(layout, Layer::Heads)) {
        if (text != "today") continue;
        EXPECT_NEAR(rect.center().x(), axis.middleOf(today), 1);
    }
    const auto reaches = [&](const Item& item, qreal from, qreal until) {
        return item.layer == Layer::Ground && item.shape == Shape::Fill &&
               item.rect.height() >= layout.plot.height() - 1 &&
               std::abs(item.rect.left() - from) < 1.5 && std::abs(item.rect.right() - until) < 1.5;
    };
    const qreal end = axis.xOf(today + Days{1});
    const auto has = [&](qreal from, qreal until) {
        return std::any_of(layout.items.begin(), layout.items.end(),
                           [&](const Item& item) { return reaches(item, from, until); });
    };
    EXPECT_TRUE(has(axis.xOf(today), end)) << "raised";
    EXPECT_TRUE(has(end - 1, end)) << "and ended by a line";
}

}  // namespace
}  // namespace tenthday::test
