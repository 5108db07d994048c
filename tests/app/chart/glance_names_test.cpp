// Who is meant is said without hovering: batches in trouble, the total of ready nucs, orders that
// share a flag; and words of late batches stand clear.
#include "app/chart/cold_spell.h"
#include "app/chart/glance.h"
#include "chart/card_for.h"
#include "chart/counted_day.h"
#include "chart/hit_test.h"
#include "screen_text/trouble_text.h"

namespace tenthday::test {
namespace {

std::string textAt(const Layout& layout, const Item& item) {
    return layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString();
}

/// Bands of a batch that a plate lies on.
std::set<int> bandsUnder(const Layout& layout, const QRectF& plate) {
    std::set<int> bands;
    for (const auto& target : layout.targets)
        if (target.key.hit == Hit::YardDay && target.rect.intersects(plate))
            bands.insert(target.key.index);
    return bands;
}

class LateWordsStandClear : public Glance {
protected:
    LateWordsStandClear() {
        options.orders = nullptr;
        season = coldSpell().outlook();
    }
    void expectClear(const Layout& layout) {
        std::vector<qreal> lines{layout.axis.xOf(season->snapshot.today())};
        if (options.chosenDay) {
            lines.push_back(layout.axis.xOf(*options.chosenDay));
            lines.push_back(layout.axis.xOf(*options.chosenDay + Days{1}));
        }
        for (const auto& item : layout.items) {
            if (item.layer != Layer::Words || item.role != Role::Caution) continue;
            for (const qreal x : lines)
                EXPECT_FALSE(item.rect.left() <= x && x <= item.rect.right())
                    << "a line at " << x << " runs through what stands from " << item.rect.left();
            if (item.shape == Shape::Text && textAt(layout, item).starts_with("late"))
                inBlock(layout, item);
        }
    }
    /// Words in the block are in one band: no edge between two is hidden.
    void inBlock(const Layout& layout, const Item& words) {
        ++inBlocks;
        for (const auto& plate : layout.items)
            if (plate.layer == Layer::Words && plate.shape == Shape::Frame &&
                plate.role == Role::Caution && plate.rect.contains(words.rect)) {
                EXPECT_EQ(bandsUnder(layout, plate.rect).size(), 1U) << textAt(layout, words);
            }
    }
    OutlookPtr season;
    int inBlocks = 0;
};

TEST_F(LateWordsStandClear, OfTheLinesOfDaysAndOfEdgesBetweenBandsAtAllZooms) {
    for (const qreal height : {560.0, 768.0, 1080.0})
        for (const int days : {7, 14, 28, 60, 110, 184})
            for (const int chosen : {-1, 2, 6, 9}) {
                options.size.setHeight(height);
                options.chosenDay.reset();
                if (chosen >= 0) options.chosenDay = day("2027-06-01") + Days{chosen};
                const Day from = day("2027-05-30") - Days{days / 4};
                SCOPED_TRACE(std::to_string(days) + " days, " + std::to_string(chosen));
                expectClear(lay(*season, {from, from + Days{days}}));
            }
    EXPECT_GT(inBlocks, 10) << "words in blocks are there";
}

TEST_F(Glance, AllYardsTogetherHaveTheirReadyNumber) {
    ASSERT_GT(outlook->nucs.yards.size(), 1U);
    const auto totalOf = [&](Day on) {
        int ready = 0;
        const auto at = static_cast<std::size_t>((on - outlook->season.first).count());
        for (const auto& yard : outlook->nucs.yards) ready += yard.days[at].numbers.ready;
        return ready;
    };
    for (const char* chosen : {"", "2027-06-17", "2027-07-01"}) {
        options.chosenDay.reset();
        if (*chosen != 0) options.chosenDay = day(chosen);
        const Day on = options.chosenDay.value_or(outlook->snapshot.today());
        const auto layout = lay();
        const auto* total = findTarget(layout, {.hit = Hit::ReadyTotal, .day = on});
        ASSERT_NE(total, nullptr) << chosen;
        const auto words =
            std::find_if(layout.items.begin(), layout.items.end(), [&](const Item& item) {
                return item.shape == Shape::Text && item.layer == Layer::Names &&
                       total->rect.contains(item.rect.center());
            });
        ASSERT_NE(words, layout.items.end());
        EXPECT_NE(textAt(layout, *words).find(": " + std::to_string(totalOf(on)) + " ready"),
                  std::string::npos)
            << textAt(layout, *words);
        // It can be asked, over the place that folds the lane, and names each yard.
        const auto* asked = targetAt(layout, total->rect.center());
        ASSERT_NE(asked, nullptr);
        EXPECT_EQ(asked->key.hit, Hit::ReadyTotal);
        const auto card =
            chart_cards::asPlainText(cardFor(*outlook, layout, *asked, nullptr)).toStdString();
        for (const auto& yard : outlook->nucs.yards)
            EXPECT_NE(card.find(yard.yard->label), std::string::npos) << card;
        EXPECT_NE(card.find("queenless at least"), std::string::npos) << card;
    }
}

TEST_F(Glance, ALargeSeasonTellsItsTotalAndCountsItsTroublesByKind) {
    const auto season = large(120, 800);
    options.orders = nullptr;
    options.size = {1920, 1080};
    const auto layout = lay(*season, season->season);
    const Day today = season->snapshot.today();
    const auto total = readyInAllYards(*season, today).ready;
    EXPECT_TRUE(anyStarts(textsOf(layout), "today: " + QLocale().toString(total).toStdString()));
    // The worst by name, then how many there are of each kind.
    int counts = 0;
    for (const auto& item : layout.items) {
        if (item.shape != Shape::Text || item.target < 0) continue;
        const auto& of = layout.targets[static_cast<std::size_t>(item.target)];
        if (of.key.hit != Hit::Trouble || of.key.index < 0) continue;
        std::vector<TargetKey> keys;
        for (const auto& target : layout.targets)
            if (target.key.hit == Hit::Trouble && target.rect == of.rect)
                keys.push_back(target.key);
        const auto& first = season->findings[static_cast<std::size_t>(of.key.index)];
        const auto count = countBatches(keys);
        const auto words = trouble_text::counted(&first, count);
        if (textAt(layout, item) != words.toStdString() || count < 13) continue;
        ++counts;
        // Asked, it names the first of them.
        const auto* asked = targetAt(layout, of.rect.center());
        ASSERT_NE(asked, nullptr);
        const auto card = cardFor(*season, layout, *asked, nullptr);
        EXPECT_EQ(card.title, words);
        ASSERT_EQ(card.lines.size(), 13U) << "a dozen, and how many more";
        EXPECT_TRUE(card.lines.front().name.startsWith(QString::fromStdString(first.subjectLabel)));
    }
    EXPECT_GT(counts, 0);
}

Trouble late(std::uint64_t number, qreal x) {
    return {{.hit = Hit::Trouble, .batch = id<Batch>(number), .index = -1},
            QString::number(number),
            QStringLiteral("late: 3 days without flying"),
            Role::Caution,
            x,
            3};
}

TEST_F(Glance, BatchesAlikeAreNamedAsFarAsThereIsRoom) {
    const auto told = [&](qreal width, int count) {
        std::vector<Trouble> of;
        for (int i = 0; i < count; ++i)
            of.push_back(late(static_cast<std::uint64_t>(312 + i), 110 + i));
        // One batch in two builders counts once.
        of.push_back(of.back());
        const auto layout = troubleLine(width, of);
        EXPECT_EQ(layout.targets.size(), of.size()) << "each can be asked";
        return layout.texts.front().text.toStdString();
    };
    const std::string words = ", late: 3 days without flying";
    EXPECT_EQ(told(900, 11), "batches 312, 313, 314, 315, 316, 317 and 5 more" + words);
    EXPECT_EQ(told(900, 2), "batches 312 and 313" + words);
    EXPECT_EQ(told(900, 1), "batch 312" + words);
    EXPECT_EQ(told(340, 11), "batches 312 and 10 more" + words);
    EXPECT_EQ(told(280, 11), "11 batches" + words);
}

TEST_F(Glance, ACellsDayWithTooManyCellsNamesItsBatches) {
    auto changed = std::make_shared<Outlook>(*outlook);
    const Day on = day("2027-06-17");
    const auto of = std::find_if(changed->nucs.cellsDays.begin(), changed->nucs.cellsDays.end(),
                                 [&](const CellsDay& cells) { return cells.day == on; });
    ASSERT_NE(of, changed->nucs.cellsDays.end());
    of->numbers.likely = 0;
    of->numbers.ready = of->toNucs - 9;
    ASSERT_FALSE(of->batches.empty());
    const auto label = outlook->find(of->batches.front())->batch->label;
    const DayWindow month{day("2027-06-07"), day("2027-06-27")};
    EXPECT_TRUE(textsOf(lay(*changed, month)).contains("batch " + label + ": 9 cells too many"));
    // What is likely to be ready too is not kept from who reads how many are too many.
    of->numbers.likely = 5.2;
    EXPECT_TRUE(
        textsOf(lay(*changed, month)).contains("batch " + label + ": 4 to 9 cells too many"));
    // Nucs enough once their queens are caught: ordinary work, of no batch in particular.
    of->numbers.likely = 12;
    const auto likely = lay(*changed, month);
    EXPECT_TRUE(textsOf(likely).contains("9 nucs to free"));
    for (const auto& item : likely.items)
        if (item.shape == Shape::Text && textAt(likely, item) == "9 nucs to free") {
            EXPECT_EQ(item.role, Role::Ink) << "no warning";
        }
    // Once the day is over, nothing can be freed for it.
    auto later = std::make_shared<Outlook>(*changed);
    later->snapshot.setToday(on + Days{1});
    const auto over = textsOf(lay(*later, month));
    EXPECT_TRUE(over.contains("9 nucs short"));
    EXPECT_FALSE(over.contains("9 nucs to free"));
    of->numbers.likely = 0;
    // What is left over is no trouble, and needs no name.
    of->numbers.ready = of->toNucs + 4;
    EXPECT_TRUE(textsOf(lay(*changed, month)).contains("4 nucs left"));
    // They say so together or not at all.
    std::set<std::string> said;
    for (qreal width = 400; width < 1400; width += 20) {
        options.size.setWidth(width);
        std::set<std::string> here;
        for (const auto& text : textsOf(lay(*changed, changed->season)))
            if (text.ends_with(" left"))
                here.insert(text.find(" nuc") != std::string::npos ? "nucs left" : "left");
        EXPECT_LE(here.size(), 1U) << width;
        said.insert(here.begin(), here.end());
    }
    EXPECT_EQ(said, (std::set<std::string>{"left", "nucs left"}));
    options.size.setWidth(1366);
    // A name never takes another day its room: as many days are told as without names.
    for (auto& cells : changed->nucs.cellsDays) cells.numbers = {};
    for (const qreal width : {500.0, 700.0, 1366.0}) {
        options.size.setWidth(width);
        const auto countOf = [](const Layout& layout) {
            return std::count_if(
                layout.targets.begin(), layout.targets.end(),
                [](const Target& target) { return target.key.hit == Hit::CellsDay; });
        };
        auto nameless = std::make_shared<Outlook>(*changed);
        for (auto& cells : nameless->nucs.cellsDays) cells.batches.clear();
        EXPECT_EQ(countOf(lay(*changed, changed->season)), countOf(lay(*nameless, changed->season)))
            << width;
    }
}

TEST_F(Glance, DaysBesideOneWithTooManyCellsMoveAsideForItsBatches) {
    auto changed = std::make_shared<Outlook>(*outlook);
    auto& days = changed->nucs.cellsDays;
    ASSERT_GE(days.size(), 3U);
    days.resize(3);
    const Day middle = day("2027-06-17");
    for (int i = 0; i < 3; ++i) {
        auto& cells = days[static_cast<std::size_t>(i)];
        cells.day = middle + Days{7 * (i - 1)};
        cells.ripe = cells.toNucs = 20;
        cells.numbers = {};
        cells.numbers.ready = i == 1 ? 11 : 33;
    }
    const auto batch = outlook->find(days[1].batches.front())->batch->label;
    const auto name = "batch " + batch + ": 9 too many";
    const qreal named = ruler.width(QString::fromStdString(name), Type::Strong);
    const qreal beside = ruler.width(QStringLiteral("33 ready"), Type::Small);
    // So narrow that the name fits only where both neighbours give way.
    const DayWindow seen{middle - Days{20}, middle + Days{20}};
    const qreal between = named + beside;  // from the first day to the last, px
    options.size.setWidth(plotSpan(*changed, options, ruler).left + 41 * between / 14 + 14);
    const auto layout = lay(*changed, seen);
    EXPECT_TRUE(textsOf(layout).contains(name)) << name;
    EXPECT_EQ(
        std::count_if(layout.texts.begin(), layout.texts.end(),
                      [](const TextRun& run) { return run.text == QStringLiteral("33 ready"); }),
        2)
        << "and all are told";
}

/// The sample's orders, all due on one day.
std::shared_ptr<SeasonOrders> dueTogether(std::vector<OrderState> states) {
    auto orders = std::make_shared<SeasonOrders>(*sampleOrders());
    const auto model = orders->orders[0];
    orders->orders.clear();
    for (std::size_t i = 0; i < states.size(); ++i) {
        auto row = *model.order;
        row.id = id<Order>(900 + i);
        row.label = i == 0 ? "Ahlgren" : i == 1 ? "Brandt" : "Castell";
        row.count = 10;
        row.due = day("2027-06-28");
        orders->orders.push_back(model);
        orders->orders.back().order = std::make_shared<const Order>(row);
        orders->orders.back().state = states[i];
        orders->orders.back().lacking = states[i] == OrderState::Short ? 4 : 0;
    }
    return orders;
}

TEST_F(Glance, OrdersThatShareAFlagAreNamedWhereThereIsRoom) {
    using enum OrderState;
    options.size = {1366, 560};  // one or two rows of flags
    const DayWindow month{day("2027-06-10"), day("2027-07-10")};
    const auto told = [&](std::vector<OrderState> states, qreal width) {
        options.size.setWidth(width);
        options.orders = dueTogether(std::move(states));
        const auto layout = lay(month);
        std::string all;
        for (const auto& item : layout.items)
            if (item.shape == Shape::Text && item.target >= 0 &&
                layout.targets[static_cast<std::size_t>(item.target)].key.hit == Hit::OrderFlag)
                all += (all.empty() ? "" : " | ") + textAt(layout, item);
        return all;
    };
    const auto wide = told({Met, Met, Met, Met, Met}, 1366);
    EXPECT_NE(wide.find("Ahlgren"), std::string::npos) << wide;
    EXPECT_NE(wide.find("Brandt"), std::string::npos) << wide;
    EXPECT_NE(wide.find("all met"), std::string::npos) << wide;
    const auto narrow = told({Short, Met, Met, Met, Met}, 640);
    EXPECT_NE(narrow.find("Ahlgren"), std::string::npos) << narrow;
    EXPECT_NE(narrow.find("4 short"), std::string::npos) << narrow;
    // Two that are not met are never told as if they were one.
    const auto two = told({Short, Short, Met, Met, Met}, 520);
    EXPECT_TRUE(two.find("2 not met") != std::string::npos ||
                two.find("Ahlgren 4 short, 1 more order not met") != std::string::npos ||
                (two.find("Ahlgren 4 short") != std::string::npos &&
                 two.find("Brandt 4 short") != std::string::npos))
        << two;
    const auto widest = told({Short, Short, Short, Met, Met}, 2000);
    EXPECT_NE(widest.find("Castell 4 short"), std::string::npos) << widest;
}

}  // namespace
}  // namespace tenthday::test
