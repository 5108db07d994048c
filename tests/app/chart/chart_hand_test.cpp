// What a hand does on the chart of a real book: each gesture, and the keys that do the same, is one
// undo step whose text names it, and undone leaves the season as it was.
#include <QApplication>
#include <QLocale>
#include <QTest>
#include <algorithm>

#include "app/book/example_page.h"
#include "chart/chart_desk_link.h"
#include "chart/chart_selection.h"
#include "chart/hit_test.h"
#include "screen_text/window_text.h"
#include "support/season_maker.h"

namespace tenthday::test {
namespace {

constexpr int kPatience = 10'000;  // ms

/// The example's book. The batch moved is the first that is not grafted yet.
class ChartHandOn : public BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const auto path = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(makeExampleBook(path));
        auto desk = Desk::open(path, fixedOptions());
        ASSERT_TRUE(desk) << desk.error().text;
        desk_ = std::move(desk).value();
        chart_ = std::make_unique<SeasonChart>();
        new ChartDeskLink(*chart_, *desk_);
        chart_->resize(1366, 900);
        chart_->show();
        (void)QTest::qWaitForWindowExposed(chart_.get());
        for (const auto& batch : desk_->outlook()->batches)
            if (!batch->timeline.grafted && batch_.isNone()) batch_ = batch->batch->id;
        ASSERT_FALSE(batch_.isNone());
        chart_->setSelectedBatch(batch_);
        before_ = describe(*desk_->outlook());
    }
    void TearDown() override {
        chart_.reset();
        desk_.reset();
        QLocale::setDefault(QLocale::c());
    }

    const BatchOutlook& batch() const { return *desk_->outlook()->find(batch_); }
    QString label() const { return QString::fromStdString(batch().batch->label); }
    /// The place of a kind, the tallest where there are several.
    TargetKey placeOf(Hit hit) {
        const Target* best = nullptr;
        for (const auto& target : chart_->layoutNow().targets)
            if (target.key.hit == hit && target.key.batch == batch_ &&
                (!best || target.rect.height() > best->rect.height()))
                best = &target;
        if (!best) ADD_FAILURE() << "no place of the batch";
        return best ? best->key : TargetKey{};
    }
    /// Cells that the batch has planned for a yard.
    std::int32_t plannedIn(Id<Yard> yard) const {
        std::int32_t cells = 0;
        for (const auto& row : desk_->snapshot().all<BatchShare>().of(batch_.uuid))
            if (row->yard == yard) cells += row->cells.value;
        return cells;
    }
    QRectF rectOf(const TargetKey& key) {
        const auto* target = findTarget(chart_->layoutNow(), key);
        if (!target) ADD_FAILURE() << "no such place";
        return target ? target->rect : QRectF();
    }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(chart_.get(), Qt::LeftButton, {}, from);
        QTest::mouseMove(chart_.get(), (from + to) / 2);
        QTest::mouseMove(chart_.get(), to);
        QTest::mouseRelease(chart_.get(), Qt::LeftButton, {}, to);
    }
    void dragBy(QPoint from, QPoint by) { drag(from, from + by); }

    /// One step, which says so; undone, all is as it was.
    void expectOneStep(const QString& says) {
        EXPECT_FALSE(desk_->isPreviewing());
        EXPECT_NE(describe(*desk_->outlook()), before_) << "nothing was saved";
        const auto name = desk_->undoName();
        ASSERT_TRUE(name);
        const auto text =
            window_text::undo(name->verb, QString::fromStdString(name->subject), name->day);
        EXPECT_TRUE(text.contains(says)) << text.toStdString();
        ASSERT_TRUE(desk_->undo());
        EXPECT_FALSE(desk_->canUndo()) << "more than one step";
        EXPECT_EQ(describe(*desk_->outlook()), before_);
    }

    std::unique_ptr<Desk> desk_;
    std::unique_ptr<SeasonChart> chart_;
    Id<Batch> batch_{};
    std::string before_;
};

TEST_F(ChartHandOn, ADragAlongDaysIsOneStep) {
    const auto from = rectOf(placeOf(Hit::Load)).center().toPoint();
    dragBy(from, {static_cast<int>(std::lround(4 * chart_->dayAxis().dayWidth())), 0});
    expectOneStep(QStringLiteral("move batch %1 to ").arg(label()));
}

TEST_F(ChartHandOn, ADragToAnotherBuilderIsOneStep) {
    const auto load = placeOf(Hit::Load);
    const auto able = buildersFor(*desk_->outlook(), *loadAt(*desk_->outlook(), load));
    const auto to = std::find_if(able.begin(), able.end(),
                                 [&](Id<Builder> other) { return other != load.builder; });
    ASSERT_NE(to, able.end());
    const auto from = rectOf(load).center();
    const auto row = rectOf({.hit = Hit::BuilderRow, .builder = *to});
    drag(from.toPoint(), QPointF(from.x(), row.center().y()).toPoint());
    expectOneStep(QStringLiteral("move cells of batch %1").arg(label()));
}

TEST_F(ChartHandOn, ADragOfTheUpperEdgeIsOneStep) {
    const auto edge = rectOf(placeOf(Hit::Grafts)).center().toPoint();
    dragBy(edge, {0, -30});
    expectOneStep(QStringLiteral("change the grafts of batch %1").arg(label()));
}

TEST_F(ChartHandOn, ADragToAnotherYardIsOneStep) {
    const auto nucs = placeOf(Hit::YardDay);
    const auto& yards = desk_->outlook()->nucs.yards;
    const auto to = std::find_if(yards.begin(), yards.end(),
                                 [&](const auto& yard) { return yard.yard->id != nucs.yard; });
    ASSERT_NE(to, yards.end());
    const auto from = rectOf(nucs).center();
    const auto row = rectOf({.hit = Hit::YardRow, .yard = to->yard->id});
    drag(from.toPoint(), QPointF(from.x(), row.center().y()).toPoint());
    expectOneStep(QStringLiteral("move cells of batch %1 to another yard").arg(label()));
}

struct KeyCase {
    const char* name;
    Qt::Key key;
    Qt::KeyboardModifiers with;
    const char* says;
    Verb verb;
};
void PrintTo(const KeyCase& c, std::ostream* out) { *out << c.name; }
class KeysOn : public ChartHandOn, public ::testing::WithParamInterface<KeyCase> {};

TEST_P(KeysOn, TheChartAreOneStepToo) {
    const auto& is = GetParam();
    QTest::keyClick(chart_.get(), is.key, is.with);
    ASSERT_TRUE(desk_->canUndo());
    EXPECT_EQ(desk_->undoName()->verb, is.verb);
    expectOneStep(QString::fromLatin1(is.says).arg(label()));
}
// clang-format off
INSTANTIATE_TEST_SUITE_P(Each, KeysOn, ::testing::Values(
    KeyCase{"ADayLater",     Qt::Key_Right, Qt::AltModifier, "move batch %1 to ", Verb::MoveBatch},
    KeyCase{"ADayEarlier",   Qt::Key_Left,  Qt::AltModifier, "move batch %1 to ", Verb::MoveBatch},
    KeyCase{"NextBuilder",   Qt::Key_Up,    Qt::AltModifier, "move cells of batch %1", Verb::MoveBars},
    KeyCase{"AGraftMore",    Qt::Key_Plus,  Qt::AltModifier, "change the grafts of batch %1", Verb::SetGrafts},
    KeyCase{"AGraftFewer",   Qt::Key_Minus, Qt::AltModifier, "change the grafts of batch %1", Verb::SetGrafts},
    KeyCase{"NextYard",      Qt::Key_Up,    Qt::AltModifier | Qt::ShiftModifier,
            "move cells of batch %1 to another yard", Verb::MoveShare},
    KeyCase{"NextYardByLetter", Qt::Key_Y,  Qt::ShiftModifier,
            "move cells of batch %1 to another yard", Verb::MoveShare}),
    [](const auto& test) { return std::string(test.param.name); });
// clang-format on

TEST_F(ChartHandOn, TheKeyThatDoesAgainMovesNoCells) {
    QTest::keyClick(chart_.get(), Qt::Key_Y, Qt::ControlModifier);
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(ChartHandOn, CellsGoByKeyFromTheYardTheKeysStandOn) {
    const auto& yards = desk_->outlook()->nucs.yards;
    const auto shares = sharesOf(*desk_->outlook(), batch_);
    ASSERT_FALSE(shares.empty());
    const auto [from, cells] = shares.front();
    const auto at = std::find_if(yards.begin(), yards.end(), [&](const auto& yard) {
        return yard.yard->id == shares[0].first;
    });
    const bool isLowest = at + 1 == yards.end();
    const auto to = (isLowest ? at - 1 : at + 1)->yard->id;
    const auto there = plannedIn(to);
    chart_->standOn({.hit = Hit::YardRow, .yard = from});
    QTest::keyClick(chart_.get(), isLowest ? Qt::Key_Up : Qt::Key_Down,
                    Qt::AltModifier | Qt::ShiftModifier);
    ASSERT_TRUE(desk_->canUndo());
    EXPECT_EQ(desk_->undoName()->verb, Verb::MoveShare);
    EXPECT_EQ(plannedIn(from), 0);
    EXPECT_EQ(plannedIn(to), there + cells.value);
    EXPECT_EQ(chart_->place().hit, Hit::YardRow);
    EXPECT_EQ(chart_->place().yard, to) << "the keys go along";
}

// A yard without room for them holds none, or some; the next key moves all that are planned for it.
TEST_F(ChartHandOn, CellsGoOnByKeyThroughAYardThatIsFull) {
    const auto& yards = desk_->outlook()->nucs.yards;
    ASSERT_GE(yards.size(), 3U);
    std::vector<Id<Yard>> ids;
    for (const auto& yard : yards) ids.push_back(yard.yard->id);
    const auto all = sharesOf(*desk_->outlook(), batch_);
    std::int32_t cells = 0;
    for (const auto& share : all) cells += share.second.value;
    // All planned for the first yard, then far more than any yard can hold.
    ChangeSet plan;
    for (const auto& row : desk_->snapshot().all<BatchShare>().of(batch_.uuid)) plan.erase(row);
    plan.add(BatchShare{id<BatchShare>(77), 1, batch_, ids[0], Cells{cells + 200}});
    ASSERT_TRUE(desk_->apply(plan).ok());
    chart_->setSelectedBatch(batch_);
    chart_->standOn({.hit = Hit::YardRow, .yard = ids[0]});
    for (std::size_t i = 1; i < 3; ++i) {
        QTest::keyClick(chart_.get(), Qt::Key_Down, Qt::AltModifier | Qt::ShiftModifier);
        EXPECT_EQ(plannedIn(ids[i]), cells + 200) << i;
        EXPECT_EQ(plannedIn(ids[i - 1]), 0) << i;
        EXPECT_EQ(chart_->place().yard, ids[i]);
    }
}

TEST_F(ChartHandOn, AKeyForALaneThatIsNotThereOpensNoYard) {
    QTest::keyClick(chart_.get(), Qt::Key_9, Qt::AltModifier);
    QTest::keyClick(chart_.get(), Qt::Key_1, Qt::AltModifier);  // folds the flying days
    EXPECT_TRUE(chart_->options().openYards.empty());
    EXPECT_TRUE(chart_->options().isFolded(LaneName::FlyingDays));
}

/// A drag under way, once it is known which days are clear.
class MagnetOn : public ChartHandOn {
protected:
    void SetUp() override {
        ChartHandOn::SetUp();
        from_ = rectOf(placeOf(Hit::Load)).center().toPoint();
        QTest::mousePress(chart_.get(), Qt::LeftButton, {}, from_);
        QTest::mouseMove(chart_.get(), from_ + QPoint(20, 0));
        const auto* magnet = chart_->findChild<Magnet*>();
        ASSERT_TRUE(magnet->isLooking());
        (void)QTest::qWaitFor([&] { return !magnet->isLooking(); }, kPatience);
    }
    void TearDown() override {
        QTest::keyClick(chart_.get(), Qt::Key_Escape);
        ChartHandOn::TearDown();
    }
    void moveTo(double days, Qt::KeyboardModifiers with) {
        const auto px = static_cast<int>(std::lround(days * chart_->dayAxis().dayWidth()));
        QTest::mouseEvent(QTest::MouseMove, chart_.get(), Qt::NoButton, with,
                          from_ + QPoint(px, 0));
    }
    Day shownDay() const { return batch().batch->day; }

    QPoint from_;
};

TEST_F(MagnetOn, DrawsToAClearDayAndShiftFreesIt) {
    const auto& clear = chart_->options().clearDays;
    ASSERT_FALSE(clear.empty());
    const Day start = desk_->snapshot().find(batch_)->day;
    // A clear day with none after it: 0.7 of a day past it is drawn back.
    std::optional<Day> last;
    for (const Day day : clear)
        if (std::find(clear.begin(), clear.end(), day + Days{1}) == clear.end() && day != start)
            last = day;
    ASSERT_TRUE(last);
    const double past = static_cast<double>((*last - start).count()) + 0.7;
    moveTo(past, {});
    EXPECT_EQ(shownDay(), *last);
    moveTo(past - 0.02, Qt::ShiftModifier);
    EXPECT_EQ(shownDay(), *last + Days{1}) << "as near as the hand is";
}

TEST_F(MagnetOn, ClearDaysAreMarkedAndClashWithNothing) {
    const auto marked = [&] {
        const auto& layout = chart_->layoutNow();
        std::set<Day> days;
        for (const auto& item : layout.items)
            if (item.role == Role::Good && item.layer == Layer::Heads && item.shape == Shape::Fill)
                days.insert(layout.axis.dayAt(item.rect.center().x()));
        return days;
    };
    std::set<Day> clear;
    for (const Day day : chart_->options().clearDays)
        if (chart_->dayAxis().visible().contains(day)) clear.insert(day);
    ASSERT_FALSE(clear.empty());
    const auto areMarked = [&] {
        const auto days = marked();
        return std::includes(days.begin(), days.end(), clear.begin(), clear.end());
    };
    EXPECT_TRUE(QTest::qWaitFor(areMarked, kPatience)) << "soon, though the hand rests";
}

}  // namespace
}  // namespace tenthday::test
