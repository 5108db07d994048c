#include "chart/chart_layout.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <fstream>
#include <sstream>

#include "app/chart/layout_text.h"
#include "chart/bands.h"
#include "chart/hit_test.h"
#include "support/days.h"
#include "support/sample_orders.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

class SampleLayout : public ::testing::Test {
protected:
    SampleLayout() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }

    ChartOptions optionsFor(QSizeF size) const {
        ChartOptions options;
        options.size = size;
        options.chosenDay = day("2027-06-17");
        options.selected = sampleBatch("18");
        options.orders = sampleOrders();
        return options;
    }
    Layout lay(const ChartOptions& options, DayWindow days) const {
        const auto span = plotSpan(*outlook, options, ruler);
        return layOut(*outlook, DayAxis(days, span.left, span.width), options, ruler);
    }
    std::vector<std::pair<QRectF, std::string>> textsOf(const Layout& layout, Layer layer) const {
        std::vector<std::pair<QRectF, std::string>> found;
        for (const auto& item : layout.items)
            if (item.layer == layer && item.shape == Shape::Text)
                found.push_back(
                    {item.rect,
                     layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString()});
        return found;
    }

    OutlookPtr outlook = sampleOutlook();
    FixedRuler ruler;
    const DayWindow month{day("2027-06-07"), day("2027-06-27")};
    const std::vector<QSizeF> sizes{{600, 420}, {1366, 768}, {1920, 1080}};
    const std::vector<DayWindow> zooms{outlook->season,
                                       {day("2027-05-10"), day("2027-07-05")},
                                       month,
                                       {day("2027-06-14"), day("2027-06-20")}};
};

/// The text file a layout is compared with. To approve layouts that have changed for good reason:
/// run these tests with TENTHDAY_APPROVE=1 in the environment, look at the difference in version
/// control, and commit the files.
void expectApproved(const std::string& file, const std::string& text) {
    const std::string path = TENTHDAY_SOURCE_DIR "/tests/app/chart/data/" + file;
    if (qEnvironmentVariableIsSet("TENTHDAY_APPROVE")) std::ofstream(path) << text;
    std::ostringstream approved;
    approved << std::ifstream(path).rdbuf();
    std::istringstream is(text);
    std::istringstream was(approved.str());
    std::string line;
    std::string old;
    for (int number = 1; std::getline(is, line); ++number) {
        std::getline(was, old);
        ASSERT_EQ(line, old) << file << ", line " << number;
    }
    EXPECT_FALSE(std::getline(was, old)) << file << ": the approved layout goes on: " << old;
}

TEST_F(SampleLayout, IsAsApproved) {
    expectApproved("sample_layout.txt", layoutText(lay(optionsFor({1000, 620}), month), *outlook));
}

TEST_F(SampleLayout, OfAWholeSeasonIsAsApproved) {
    ChartOptions options;
    options.size = {1366, 768};
    options.orders = sampleOrders();
    options.canFold = true;
    options.strip = true;
    expectApproved("sample_season.txt", layoutText(lay(options, outlook->season), *outlook));
}

TEST_F(SampleLayout, TextsNeverCollide) {
    for (const auto& size : sizes)
        for (const auto& days : zooms) {
            const auto layout = lay(optionsFor(size), days);
            for (const auto layer : {Layer::Words, Layer::Names, Layer::Heads}) {
                const auto texts = textsOf(layout, layer);
                for (std::size_t i = 0; i < texts.size(); ++i)
                    for (std::size_t j = 0; j < i; ++j)
                        EXPECT_FALSE(texts[i].first.intersects(texts[j].first))
                            << texts[i].second << " on " << texts[j].second << " at "
                            << size.width() << " px, " << days.size() << " days";
            }
        }
}

TEST_F(SampleLayout, TextsKeepClearOfTheRibbon) {
    for (const auto& days : zooms) {
        const auto layout = lay(optionsFor({1366, 768}), days);
        QPainterPath ribbon;
        for (const auto& item : layout.items)
            if (item.layer == Layer::Ribbon)
                ribbon = layout.paths[static_cast<std::size_t>(item.detail)];
        ASSERT_FALSE(ribbon.isEmpty());
        const qreal yards =
            ribbon.boundingRect().top() + 80;  // the cells day has a plate of its own
        for (const auto& [rect, text] : textsOf(layout, Layer::Words))
            if (rect.top() > yards) {
                EXPECT_FALSE(ribbon.intersects(rect)) << text;
            }
    }
}

/// A framed one, over a slice of ready nucs that is too low to hold its number.
bool isPlate(const Layout& layout, const Item& fill) {
    const bool isFramed =
        std::any_of(layout.items.begin(), layout.items.end(), [&](const Item& other) {
            return other.shape == Shape::Frame && other.role == Role::ReadyEdge &&
                   other.rect == fill.rect;
        });
    return isFramed &&
           std::any_of(layout.targets.begin(), layout.targets.end(), [&](const Target& target) {
               return target.key.hit == Hit::YardDay &&
                      target.key.index == static_cast<int>(Band::Ready) &&
                      target.rect.intersects(fill.rect);
           });
}

TEST_F(SampleLayout, ReadyNumbersStandInTheWhite) {
    for (const auto& size : sizes)
        for (const auto& days : zooms) {
            const auto layout = lay(optionsFor(size), days);
            int numbers = 0;
            for (const auto& item : layout.items) {
                if (item.layer != Layer::Words || item.shape != Shape::Text ||
                    item.role != Role::ReadyInk)
                    continue;
                ++numbers;
                // All four corners on white: the number may spread over several days.
                for (const auto& corner : {item.rect.topLeft(), item.rect.topRight(),
                                           item.rect.bottomLeft(), item.rect.bottomRight()})
                    EXPECT_TRUE(std::any_of(
                        layout.items.begin(), layout.items.end(), [&](const Item& other) {
                            return other.role == Role::Ready && other.shape == Shape::Fill &&
                                   (other.layer == Layer::Body || isPlate(layout, other)) &&
                                   other.rect.contains(corner);
                        }));
            }
            EXPECT_GT(numbers, 0);
        }
}

TEST_F(SampleLayout, TellsRipeReadyLeftInWords) {
    const auto words = textsOf(lay(optionsFor({1366, 768}), month), Layer::Words);
    const auto has = [&](const std::string& text) {
        return std::any_of(words.begin(), words.end(),
                           [&](const auto& word) { return word.second == text; });
    };
    EXPECT_TRUE(has("31 cells"));
    EXPECT_TRUE(has("54 ready"));
    EXPECT_TRUE(has("23 nucs left"));
    EXPECT_TRUE(has("wild cells: look today"));
}

TEST_F(SampleLayout, TooManyIsFilledOnlyWhereNothingLikelyHelps) {
    std::map<std::string, Role> roles;
    int framed = 0;
    const auto lookOn = [&](Day today) {
        auto then = *outlook;
        then.snapshot.setToday(today);
        outlook = std::make_shared<Outlook>(then);
        const auto layout = lay(optionsFor({1920, 1080}), outlook->season);
        roles.clear();
        framed = 0;
        for (const auto& item : layout.items)
            if (item.shape == Shape::Frame && item.layer == Layer::Words)
                ++framed;
            else if (item.shape == Shape::Text)
                roles[layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString()] =
                    item.role;
    };
    const auto roleOf = [&](const std::string& words) {  // after the batch, where it has room
        for (const auto& [text, role] : roles)
            if (text.ends_with(words)) return role;
        ADD_FAILURE() << words;
        return Role::Ground;
    };
    lookOn(outlook->season.last);
    EXPECT_EQ(roleOf("2 cells too many"), Role::Danger) << "over: words alone";
    const int framedAfter = framed;
    lookOn(outlook->season.first);
    EXPECT_GT(framed, framedAfter) << "what is still to be freed";
    EXPECT_EQ(roleOf("2 cells too many"), Role::DangerInk);  // 29 ripe, 27 ready
    EXPECT_EQ(roleOf("1 nuc to free"), Role::Ink);           // 28 ripe, 27 ready, 19 likely
    EXPECT_EQ(roles.count("27 ready +19"), 1U);
}

TEST_F(SampleLayout, NeighboursInAStackAreParted) {
    const auto layout = lay(optionsFor({1366, 768}), month);
    std::vector<QRectF> fills;
    for (const auto& item : layout.items)
        if (item.layer == Layer::Body && item.shape == Shape::Fill && item.target >= 0 &&
            layout.targets[static_cast<std::size_t>(item.target)].key.hit == Hit::YardDay)
            fills.push_back(item.rect);
    ASSERT_GT(fills.size(), 50U);
    for (std::size_t i = 0; i < fills.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(fills[i].intersects(fills[j]));
    // A line of ground is left above each that is high enough to spare it.
    for (const auto& upper : fills)
        for (const auto& lower : fills)
            if (lower.height() >= 4 && upper.left() == lower.left() && upper.top() < lower.top()) {
                EXPECT_GE(lower.top() - upper.bottom(), 1.0);
            }
}

TEST_F(SampleLayout, EdgesFallOnDevicePixels) {
    for (const qreal ratio : {1.0, 1.25, 1.5, 2.0}) {
        auto options = optionsFor({1366, 768});
        options.pixelRatio = ratio;
        const auto layout = lay(options, outlook->season);
        for (const auto& item : layout.items) {
            if (item.shape != Shape::Fill || item.layer != Layer::Body || item.radius > 0) continue;
            for (const qreal edge :
                 {item.rect.left(), item.rect.right(), item.rect.top(), item.rect.bottom()})
                EXPECT_NEAR(edge * ratio, std::round(edge * ratio), 1e-6) << ratio;
        }
    }
}

TEST_F(SampleLayout, HitsWhatIsPainted) {
    const auto layout = lay(optionsFor({1366, 768}), month);
    int loads = 0;
    for (const auto& item : layout.items) {
        if (item.target < 0) continue;
        const auto& target = layout.targets[static_cast<std::size_t>(item.target)];
        const bool isBar = item.role == Role::OpenCells || item.role == Role::SealedCells;
        if (target.key.hit != Hit::Load || !isBar || item.rect.top() >= target.rect.bottom())
            continue;  // what leads out of a bar hangs below it
        ++loads;
        EXPECT_TRUE(target.rect.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(item.rect));
        const auto* hit = targetAt(layout, item.rect.center());
        ASSERT_NE(hit, nullptr);
        EXPECT_EQ(hit->key.batch, target.key.batch);
    }
    EXPECT_GT(loads, 3);
    const auto* key = findTarget(layout, {.hit = Hit::Load,
                                          .batch = sampleBatch("18"),
                                          .builder = sampleBuilder("Builder 2"),
                                          .day = day("2027-06-07"),
                                          .index = 1});
    ASSERT_NE(key, nullptr);
    EXPECT_EQ(targetAt(layout, key->rect.center()), key);
}

// 8 px each way whatever the scale and however thin a bar is.
TEST_F(SampleLayout, WhatAHandTakesHoldOfCanBeHitAtAnyScale) {
    for (const qreal ratio : {1.0, 1.25, 1.5, 2.0})
        for (const auto& size : sizes) {
            auto options = optionsFor(size);
            options.pixelRatio = ratio;
            const auto layout = lay(options, outlook->season);
            int handles = 0;
            for (const auto& target : layout.targets) {
                if (target.key.hit != Hit::Load && target.key.hit != Hit::Grafts) continue;
                const auto middle = target.rect.center();
                const QRectF least(middle - QPointF(3.9, 3.9), QSizeF(7.8, 7.8));
                if (!layout.plot.contains(least)) continue;
                ++handles;
                for (const auto& at :
                     {least.topLeft(), least.topRight(), least.bottomLeft(), least.bottomRight()}) {
                    const auto* hit = targetAt(layout, at);
                    ASSERT_NE(hit, nullptr);
                    EXPECT_NE(hit->key.hit, Hit::Ground) << ratio << ", " << size.width() << " px";
                }
            }
            EXPECT_GT(handles, 2) << size.width();
        }
}

TEST_F(SampleLayout, HitsNothingUnderTheNames) {
    const auto layout = lay(optionsFor({1366, 768}), month);
    EXPECT_EQ(targetAt(layout, {20, 300}), nullptr);
    const auto* head = targetAt(layout, {layout.plot.center().x(), 10});
    ASSERT_NE(head, nullptr);
    EXPECT_EQ(head->key.hit, Hit::Head);
}

TEST_F(SampleLayout, FillsTheWindowOrCanBeScrolled) {
    for (const auto& size : sizes) {
        const auto layout = lay(optionsFor(size), outlook->season);
        EXPECT_GE(layout.contentHeight, layout.plot.height() - 1);
        if (size.height() >= 700) {
            EXPECT_LE(layout.contentHeight, layout.plot.height() + 1);
        }
    }
    auto options = optionsFor({900, 300});
    const auto still = lay(options, month);
    ASSERT_GT(still.contentHeight, still.plot.height());
    options.scrollY = 100;
    const TargetKey load{.hit = Hit::Load,
                         .batch = sampleBatch("19"),
                         .builder = sampleBuilder("Builder 3"),
                         .day = day("2027-06-11"),
                         .index = 1};
    const auto moved = lay(options, month);
    ASSERT_NE(findTarget(still, load), nullptr);
    ASSERT_NE(findTarget(moved, load), nullptr);
    EXPECT_NEAR(findTarget(still, load)->rect.top() - findTarget(moved, load)->rect.top(), 100, 1);
}

TEST_F(SampleLayout, OnlyTheSelectedBatchHasARibbon) {
    auto options = optionsFor({1366, 768});
    const auto ribbons = [](const Layout& layout) {
        return std::count_if(layout.items.begin(), layout.items.end(), [](const Item& item) {
            return item.role == Role::Ribbon && item.layer != Layer::Heads;
        });
    };
    EXPECT_GT(ribbons(lay(options, month)), 0);
    options.selected.reset();
    EXPECT_EQ(ribbons(lay(options, month)), 0);
}

TEST_F(SampleLayout, ADayHasItsHoursAndWhenCellsComeAndGo) {
    const auto layout = lay(optionsFor({1366, 768}), {day("2027-06-07"), day("2027-06-08")});
    const auto heads = textsOf(layout, Layer::Heads);
    const auto words = textsOf(layout, Layer::Words);
    const auto has = [](const auto& texts, const std::string& text) {
        return std::any_of(texts.begin(), texts.end(),
                           [&](const auto& found) { return found.second == text; });
    };
    for (const char* hour : {"6:00", "12:00", "18:00"}) EXPECT_TRUE(has(heads, hour)) << hour;
    EXPECT_TRUE(std::any_of(words.begin(), words.end(), [](const auto& found) {
        return found.second.starts_with("in ") && found.second.find(':') != std::string::npos;
    }));
    EXPECT_FALSE(has(textsOf(lay(optionsFor({1366, 768}), month), Layer::Heads), "12:00"));
}

TEST_F(SampleLayout, AFoldedLaneIsALineWithItsName) {
    auto options = optionsFor({1366, 768});
    const auto whole = lay(options, month);
    options.foldedLanes = {LaneName::Builders};
    const auto folded = lay(options, month);
    const auto loads = [](const Layout& layout) {
        return std::count_if(layout.targets.begin(), layout.targets.end(),
                             [](const Target& target) { return target.key.hit == Hit::Load; });
    };
    EXPECT_GT(loads(whole), 0);
    EXPECT_EQ(loads(folded), 0);
    const auto names = textsOf(folded, Layer::Names);
    EXPECT_TRUE(std::any_of(names.begin(), names.end(),
                            [](const auto& name) { return name.second == "Builders"; }));
}

TEST_F(SampleLayout, ProposalsAreOutlinesThatCannotBeHit) {
    auto options = optionsFor({1366, 768});
    const auto before = lay(options, month);
    ChartProposals proposals;
    proposals.loads.push_back({sampleBuilder("Builder 1"), QStringLiteral("P"),
                               Moment{day("2027-06-09")}, Moment{day("2027-06-19")}, 20});
    proposals.stays.push_back(
        {sampleYard("Home"), QStringLiteral("P"), {day("2027-06-19"), day("2027-06-26")}, 12});
    options.proposals = std::make_shared<const ChartProposals>(proposals);
    const auto after = lay(options, month);
    const auto ghosts = [](const Layout& layout) {
        return std::count_if(layout.items.begin(), layout.items.end(), [](const Item& item) {
            return item.role == Role::Ghost && item.shape == Shape::Stroke && item.target < 0;
        });
    };
    EXPECT_EQ(ghosts(after), ghosts(before) + 2);
    EXPECT_EQ(after.targets.size(), before.targets.size());
}

TEST_F(SampleLayout, TheStripShowsWhichDaysAreSeen) {
    auto options = optionsFor({1366, 768});
    options.strip = true;
    options.legend = false;
    const auto span = plotSpan(*outlook, options, ruler);
    const DayAxis whole(outlook->season, span.left, span.width);
    const auto strips = [](const Layout& layout) {
        return std::count_if(layout.targets.begin(), layout.targets.end(),
                             [](const Target& target) { return target.key.hit == Hit::Strip; });
    };
    EXPECT_EQ(strips(layOut(*outlook, whole, options, ruler)), 0) << "all is seen anyway";
    const auto zoomed = layOut(*outlook, whole.fittedTo(month), options, ruler);
    ASSERT_EQ(strips(zoomed), 1);
    for (const auto& item : zoomed.items)
        if (item.role == Role::Selection && item.shape == Shape::Frame &&
            item.layer == Layer::Heads) {
            EXPECT_NEAR(item.rect.left(), whole.xOf(month.first), 1);
            EXPECT_NEAR(item.rect.right(), whole.xOf(month.last + Days{1}), 1);
        }
}

TEST_F(SampleLayout, AnEmptySeasonIsLaidOutToo) {
    Outlook empty;
    empty.season = outlook->season;
    empty.snapshot.setToday(day("2027-06-02"));
    const ChartOptions options;
    const auto span = plotSpan(empty, options, ruler);
    const auto layout = layOut(empty, DayAxis(empty.season, span.left, span.width), options, ruler);
    EXPECT_GT(layout.items.size(), 20U);
}

}  // namespace
}  // namespace tenthday::test
