// Words and numbers of the chart that have little room: none is lost, and none misleads.
#include "app/chart/glance.h"
#include "chart/cells_day_label.h"
#include "chart/hit_test.h"
#include "chart/yard_stack.h"
#include "exchange/example.h"
#include "screen_text/chart_cards.h"
#include "support/ids.h"
#include "support/season_maker.h"

namespace tenthday::test {
namespace {

/// What a line of troubles says, from left to right.
std::vector<std::string> told(const Layout& layout) {
    std::map<qreal, std::string> texts;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text)
            texts[item.rect.left()] =
                layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString();
    std::vector<std::string> all;
    for (const auto& [x, text] : texts) all.push_back(text);
    return all;
}

/// A finding of a kind, beyond that nothing.
const Finding* of(FindingKind kind) {
    static std::map<FindingKind, Finding> made;
    made[kind].kind = kind;
    return &made[kind];
}

Trouble troubleOf(int batch, const char* words, Role role, qreal x, int weight,
                  const Finding* finding = nullptr) {
    return {{.hit = Hit::Trouble,
             .batch = id<Batch>(static_cast<std::uint64_t>(batch)),
             .day = day("2027-06-17"),
             .index = weight},
            QString::number(batch),
            QString::fromLatin1(words),
            role,
            x,
            weight,
            finding};
}

TEST_F(Glance, TheUrgentAreToldFirstAtTheLeftEdge) {
    const std::vector<Trouble> troubles{
        troubleOf(1, "overfull: 30 in 24", Role::Caution, 620, 10, of(FindingKind::BoxOverfull)),
        troubleOf(2, "wild: look today", Role::Danger, 800, 110),
        troubleOf(3, "short: 9 cells", Role::Caution, 150, 0, of(FindingKind::BoxOverfull))};
    // In danger stands one far to the right: it is read first all the same, and names its day as
    // it does not stand there.
    const auto all = troubleLine(900, troubles);
    EXPECT_EQ(told(all), (std::vector<std::string>{"batch 2, 17 Jun, wild: look today",
                                                   "batch 1, overfull: 30 in 24",
                                                   "batch 3, 17 Jun, short: 9 cells"}));
    ASSERT_FALSE(all.targets.empty());
    EXPECT_EQ(all.targets.front().rect.left(), 100);
    // Without room for all, the urgent one stays and the others are counted.
    const auto few = told(troubleLine(560, troubles));
    ASSERT_EQ(few.size(), 2U);
    EXPECT_EQ(few[0], "batch 2, 17 Jun, wild: look today");
    EXPECT_EQ(few[1], "2 batches overfull");
    // With none in danger and room enough, each stands by its batch.
    const auto calm = told(troubleLine(900, {troubles[0], troubles[2]}));
    EXPECT_EQ(calm,
              (std::vector<std::string>{"batch 3, short: 9 cells", "batch 1, overfull: 30 in 24"}));
}

TEST_F(Glance, TroublesStandInTheOrderOfTheirDaysWhereTheyCrowd) {
    // The weightier one comes first by day, but would find its nearest room behind the other.
    const Day today = outlook->snapshot.today();
    const DayAxis axis(outlook->season, 100, 900);
    const qreal line = axis.xOf(today);
    const auto all = troubleLine(900, {troubleOf(1, "late: 9 days", Role::Caution, line - 60, 20),
                                       troubleOf(2, "late: 5 days", Role::Caution, line - 20, 10)});
    const auto texts = told(all);
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_TRUE(texts[0].starts_with("batch 1,")) << texts[0];
    EXPECT_TRUE(texts[1].starts_with("batch 2,")) << texts[1];
}

TEST_F(Glance, TroublesWithoutRoomAreCountedByKindTheWorstKindFirst) {
    std::vector<Trouble> troubles{troubleOf(2, "wild: look today", Role::Danger, 800, 110,
                                            of(FindingKind::WildQueenOverdue))};
    const auto add = [&](FindingKind kind, int count, int weight) {
        for (int i = 0; i < count; ++i)
            troubles.push_back(troubleOf(static_cast<int>(100 + troubles.size()),
                                         ("so " + std::to_string(troubles.size())).c_str(),
                                         Role::Caution, 150, weight + i, of(kind)));
    };
    add(FindingKind::BoxOverfull, 4, 20);  // past
    add(FindingKind::YardFull, 30, 40);    // to come
    const auto layout = troubleLine(700, troubles);
    const auto all = told(layout);
    ASSERT_GE(all.size(), 3U);
    EXPECT_EQ(all.front(), "batch 2, 17 Jun, wild: look today");
    EXPECT_EQ(all[all.size() - 2].substr(all[all.size() - 2].find(' ')),
              " batches with too few nucs");
    EXPECT_EQ(all.back(), "4 batches overfull");
    // All that is counted can be asked, and is there once.
    EXPECT_EQ(layout.targets.size(), troubles.size());
    // Kinds without room are one number.
    const auto least = told(troubleLine(330, troubles));
    ASSERT_EQ(least.size(), 2U);
    EXPECT_EQ(least.back(), "and 34 more");
}

TEST_F(Glance, RipeCellsThatAreNotForNucsAreToldApart) {
    auto changed = std::make_shared<Outlook>(*outlook);
    const Day on = day("2027-06-17");
    const auto of = std::find_if(changed->nucs.cellsDays.begin(), changed->nucs.cellsDays.end(),
                                 [&](const CellsDay& cells) { return cells.day == on; });
    ASSERT_NE(of, changed->nucs.cellsDays.end());
    of->ripe = 22;
    of->toNucs = 20;
    options.chosenDay = on;
    const auto texts = textsOf(lay(*changed, {day("2027-06-07"), day("2027-06-27")}));
    EXPECT_TRUE(texts.contains("20 of 22 cells"));
    EXPECT_FALSE(texts.contains("22 cells"));
    EXPECT_TRUE(texts.contains("17 Jun")) << "each sum names its day";
    // What is left is of the nucs, less the cells that are for them.
    EXPECT_TRUE(texts.contains(std::to_string(of->numbers.ready - 20) + " nucs left"));
    of->toNucs = 22;
    EXPECT_TRUE(
        textsOf(lay(*changed, {day("2027-06-07"), day("2027-06-27")})).contains("22 cells"));
}

TEST_F(Glance, ACellsDaysCardReckonsWhatIsLeftOrTooMany) {
    CellsDay cells = outlook->nucs.cellsDays.front();
    cells.toNucs = 20;
    cells.day = outlook->snapshot.today();
    const auto told = [&](std::int32_t ready, double likely) {
        cells.numbers = {ready, likely, 0, 0};
        return chart_cards::cellsDay(*outlook, cells).lines;
    };
    const auto lineOf = [](const std::vector<CardLine>& lines, const char* name) {
        for (const auto& line : lines)
            if (line.name == QLatin1String(name))
                return (line.value + QStringLiteral(": ") + line.because).toStdString();
        return std::string();
    };
    EXPECT_EQ(lineOf(told(33, 0), "nucs left"), "13: 33 ready less 20 cells for nucs");
    const auto tooMany = told(11, 5.2);
    EXPECT_EQ(lineOf(tooMany, "cells too many"), "9: 20 cells for nucs less 11 ready");
    EXPECT_EQ(lineOf(tooMany, "still too many with the likely ones"), "4: ");
    EXPECT_EQ(lineOf(told(11, 9), "nucs to free"), "9: 20 cells for nucs less 11 ready");
    EXPECT_EQ(lineOf(told(11, 9), "the likely ones would do"), ": ");
    cells.day -= Days{1};
    EXPECT_EQ(lineOf(told(11, 9), "nucs short"), "9: 20 cells for nucs less 11 ready");
    EXPECT_EQ(lineOf(told(11, 9), "the likely ones would do"), "") << "it is over";
    EXPECT_EQ(lineOf(told(11, 5.2), "cells too many"), "9: 20 cells for nucs less 11 ready");
    // Where the ready ones are, as the yards of that day have them.
    int inYards = 0;
    for (const auto& line : tooMany)
        if (line.name.startsWith(QStringLiteral("of these in "))) inYards += line.value.toInt();
    const auto day = static_cast<std::size_t>((cells.day - outlook->season.first).count());
    int ready = 0;
    int yards = 0;
    for (const auto& yard : outlook->nucs.yards) {
        ready += yard.days[day].numbers.ready;
        yards += yard.days[day].numbers.ready > 0 ? 1 : 0;
    }
    EXPECT_EQ(inYards, yards > 1 ? ready : 0);
}

/// Yards of the example and the numbers of likely nucs along their days.
class LikelySlices : public Glance {
protected:
    LikelySlices() {
        OutlookMemo memo;
        auto snapshot = applied(Snapshot{}, exampleContent()).value();
        snapshot.setToday(day("2027-06-03"));
        outlook = outlookOf(snapshot, memo);
        options.orders = nullptr;
    }
    /// Wherever likely nucs stay as many for four days or more in a slice to be seen, in a yard,
    /// the number stands somewhere along them.
    void expectCounted(const Layout& layout, std::size_t yard, DayWindow days) {
        const auto& of = outlook->nucs.yards[yard];
        const auto likely = [&](Day on) {
            return wholeLikely(
                of.days[static_cast<std::size_t>((on - outlook->season.first).count())].numbers);
        };
        for (Day from = days.first; from <= days.last;) {
            Day until = from;
            while (until < days.last && likely(until + Days{1}) == likely(from)) until += Days{1};
            const bool isSeen =
                until - from >= Days{3} && hasSlices(layout, of.yard->id, {from, until});
            if (likely(from) > 0 && isSeen) {
                ++counted;
                EXPECT_TRUE(hasNumber(layout, of.yard->id, {from, until},
                                      "+" + std::to_string(likely(from))))
                    << of.yard->label << " from " << toText(from) << ": " << likely(from);
            }
            from = until + Days{1};
        }
    }
    /// A slice of likely nucs of 2 px or more on each of these days.
    static bool hasSlices(const Layout& layout, Id<Yard> yard, DayWindow days) {
        std::set<Day> seen;
        for (const auto& target : layout.targets)
            if (target.key.hit == Hit::YardDay && target.key.yard == yard &&
                target.key.index == static_cast<int>(Band::Likely) && target.rect.height() >= 2 &&
                days.contains(*target.key.day))
                seen.insert(*target.key.day);
        return static_cast<int>(seen.size()) == days.size();
    }
    static bool meetsSlice(const Layout& layout, const QRectF& plate) {
        return std::any_of(layout.targets.begin(), layout.targets.end(), [&](const Target& target) {
            return target.key.hit == Hit::YardDay &&
                   target.key.index == static_cast<int>(Band::Likely) &&
                   target.rect.intersects(plate);
        });
    }
    int counted = 0;
    static bool hasNumber(const Layout& layout, Id<Yard> yard, DayWindow days,
                          const std::string& number) {
        QRectF row;
        for (const auto& target : layout.targets)
            if (target.key.hit == Hit::YardRow && target.key.yard == yard) row = target.rect;
        return std::any_of(layout.items.begin(), layout.items.end(), [&](const Item& item) {
            return item.shape == Shape::Text && row.contains(item.rect.center()) &&
                   layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString() ==
                       number &&
                   days.contains(layout.axis.dayAt(item.rect.center().x()));
        });
    }
};

TEST_F(LikelySlices, TooLowForTheirNumberHaveItOnAPlate) {
    const DayWindow days{day("2027-06-14"), day("2027-07-11")};
    int plates = 0;
    for (const qreal height : {560.0, 620.0, 700.0, 768.0}) {
        options.size.setHeight(height);
        const auto layout = lay(days);
        for (const auto& item : layout.items) {
            if (item.shape != Shape::Frame || item.role != Role::LikelyHatch ||
                item.layer != Layer::Words)
                continue;
            ++plates;
            // Over a slice of what it counts, in its colour.
            EXPECT_TRUE(meetsSlice(layout, item.rect)) << height;
            EXPECT_TRUE(std::any_of(layout.items.begin(), layout.items.end(),
                                    [&](const Item& other) {
                                        return other.role == Role::Likely &&
                                               other.shape == Shape::Fill &&
                                               other.rect == item.rect;
                                    }))
                << height;
        }
        for (std::size_t i = 0; i < outlook->nucs.yards.size(); ++i) expectCounted(layout, i, days);
    }
    EXPECT_GT(plates, 4) << "slices too low for their number are there";
    EXPECT_GT(counted, 4) << "and numbers that are looked for";
}

TEST_F(LikelySlices, TodaysNumbersStandInTheMiddleOfToday) {
    const Day today = outlook->snapshot.today();
    int plates = 0;
    for (const qreal width : {1100.0, 1366.0, 1920.0})
        for (const qreal height : {620.0, 768.0}) {
            options.size = {width, height};
            const auto layout = lay({today - Days{40}, today + Days{60}});
            for (const auto& yard : outlook->nucs.yards) {
                const auto* row = findTarget(layout, {.hit = Hit::YardRow, .yard = yard.yard->id});
                ASSERT_NE(row, nullptr);
                for (const auto& item : layout.items) {
                    // Of all that stands about today's line, what stands over it.
                    const qreal x = layout.axis.xOf(today);
                    if (item.shape != Shape::Frame || item.role != Role::ReadyEdge ||
                        item.layer != Layer::Words || !row->rect.contains(item.rect.center()) ||
                        std::abs(item.rect.center().x() - x) > 12)
                        continue;
                    ++plates;
                    EXPECT_NEAR(item.rect.center().x(), layout.axis.middleOf(today), 1.5)
                        << yard.yard->label << " at " << width;
                }
            }
        }
    EXPECT_GT(plates, 6);
}

TEST_F(Glance, EveryBuilderIsNamedHoweverLowItsRow) {
    SeasonMaker maker;
    maker.yard("Mill");
    for (int i = 1; i <= 40; ++i) maker.builder("Finisher " + std::to_string(i), "Mill");
    for (int i = 1; i <= 7; ++i)
        maker.builder("Starter " + std::to_string(i), "Mill", BuilderKind::Starter);
    maker.batch("1", "2027-06-11", 12, 20, "Finisher 1");
    const auto season = maker.outlook();
    options.orders = nullptr;
    for (const qreal height : {500.0, 1080.0, 2200.0}) {
        options.size = {1366, height};
        const auto layout = lay(*season, season->season);
        std::set<int> named;
        std::optional<QRectF> above;
        for (const auto& [rect, text] : textsIn(layout, Layer::Names)) {
            const bool isStarter = text.starts_with("Starter ");
            if (!isStarter && !text.starts_with("Finisher ")) continue;
            const auto to = text.find(" to ");
            const int first = std::stoi(text.substr(isStarter ? 8 : 9));
            const int last = to == std::string::npos ? first : std::stoi(text.substr(to + 4));
            for (int i = first; i <= last; ++i)
                EXPECT_TRUE(named.insert(isStarter ? 100 + i : i).second) << text;
            if (above) {
                EXPECT_GE(rect.top(), above->bottom()) << text << " meets the name above";
            }
            above = rect;
        }
        EXPECT_EQ(named.size(), 47U) << height << " px";
        // One name each as soon as there is room.
        if (height < 1000) {
            EXPECT_FALSE(textsOf(layout).contains("Finisher 7"));
        }
        if (height > 2000) {
            EXPECT_TRUE(textsOf(layout).contains("Finisher 7"));
        }
    }
}

TEST_F(Glance, WeeksAreNamedAtEqualStepsHoweverNarrowTheyAre) {
    options.orders = nullptr;
    for (const qreal width : {500.0, 700.0, 1000.0, 1366.0}) {
        options.size.setWidth(width);
        const auto layout = lay(*outlook, {day("2027-01-01"), day("2027-12-31")});
        std::vector<std::pair<qreal, int>> weeks;
        for (const auto& [rect, text] : textsIn(layout, Layer::Heads))
            if (text.size() > 1 && text[0] == 'W' && std::isdigit(text[1]))
                weeks.push_back({rect.left(), std::stoi(text.substr(1))});
        ASSERT_GT(weeks.size(), 5U) << width;
        std::sort(weeks.begin(), weeks.end());
        const int step = weeks[2].second - weeks[1].second;
        for (std::size_t i = 2; i < weeks.size(); ++i)
            EXPECT_EQ(weeks[i].second - weeks[i - 1].second, step) << width;
    }
}

TEST_F(Glance, HintsOfEmptyLanesStandClearOfTodaysLine) {
    Outlook bare;
    bare.season = {day("2027-01-01"), day("2027-12-31")};
    bare.snapshot.setToday(day("2027-03-01"));
    options.orders = nullptr;
    const auto layout = lay(bare, bare.season);
    const qreal today = layout.axis.xOf(bare.snapshot.today());
    int crossed = 0;
    for (std::size_t i = 0; i < layout.items.size(); ++i) {
        const auto& item = layout.items[i];
        if (item.shape != Shape::Text || item.layer != Layer::Names) continue;
        if (item.rect.left() > today || item.rect.right() < today) continue;
        ++crossed;
        EXPECT_TRUE(
            std::any_of(layout.items.begin(), layout.items.begin() + static_cast<std::ptrdiff_t>(i),
                        [&](const Item& ground) {
                            return ground.shape == Shape::Fill && ground.role == Role::Ground &&
                                   ground.layer == Layer::Names && ground.rect.contains(item.rect);
                        }))
            << "the line runs through the hint";
    }
    EXPECT_GE(crossed, 3);
}

}  // namespace
}  // namespace tenthday::test
