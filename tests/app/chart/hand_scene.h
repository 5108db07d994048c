/// @file hand_scene.h  A made-up season in a chart, and a hand that does all sorts of things with
/// it.
#pragma once
#include <gtest/gtest.h>

#include <QLocale>
#include <random>

#include "chart/builder_row.h"
#include "chart/chart_layout.h"
#include "records/verbs.h"
#include "support/days.h"
#include "support/large_season.h"

namespace tenthday::test {

/// A hand that does all sorts of things, the same each time.
class Hand {
public:
    explicit Hand(unsigned seed) : draw_(seed) {}
    /// One of 0 .. below - 1.
    [[nodiscard]] int one(int below) {
        return static_cast<int>(draw_() % static_cast<unsigned>(below));
    }

private:
    std::mt19937 draw_;
};

class HandScene : public ::testing::Test {
protected:
    HandScene() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        options.size = {1366, 768};
        options.canFold = true;
        options.strip = true;
    }
    ~HandScene() override { QLocale::setDefault(QLocale::c()); }

    void show(const Snapshot& snapshot) {
        saved = snapshot;
        outlook = outlookOf(saved, memo);
        options.before = nullptr;
        options.heldTracks.clear();
    }
    void showDays(DayWindow days) {
        const auto span = plotSpan(*outlook, options, *ruler);
        axis = DayAxis(outlook->season, span.left, span.width).fittedTo(days);
    }
    /// A batch stands so many days from where it is saved, as a preview.
    void drag(Id<Batch> id, int by) {
        const auto kept = outlookOf(saved, memo);
        const auto batch = saved.find(id);
        const auto changes = moveBatch(saved, id, batch->day + Days{by});
        ASSERT_TRUE(changes) << changes.error().text;
        const auto next = applied(saved, changes.value());
        ASSERT_TRUE(next) << next.error().text;
        options.before = kept;
        outlook = outlookOf(next.value(), memo);
        holdTracks(*kept, options.heldTracks);
        holdTracks(*outlook, options.heldTracks);
    }
    void drop() { show(saved); }
    void edit(const ChangeSet& changes) {
        const auto next = applied(saved, changes);
        ASSERT_TRUE(next) << next.error().text;
        show(next.value());
    }

    template <class T>
    static void toggle(std::vector<T>& all, T one) {
        if (std::erase(all, one) == 0) all.push_back(one);
    }
    /// @return what was done
    std::string doOne(Hand& hand) {
        const auto batch = largeSeasonBatch(30 + hand.one(30));
        switch (hand.one(16)) {
            case 0:
                options.selected = batch;
                return "select";
            case 1:
                toggle(options.alsoSelected, batch);
                return "select also";
            case 2:
                options.selected.reset();
                options.alsoSelected.clear();
                return "select nothing";
            case 3:
                options.scrollY = 30 * hand.one(8);
                return "scroll lanes";
            case 4:
                axis = axis.scrolledBy(hand.one(2) == 0 ? 40 : -40);
                return "scroll days";
            case 5:
                axis = axis.zoomedAt(600, hand.one(2) == 0 ? 1.25 : 0.8);
                return "zoom";
            case 6:
                toggle(options.foldedLanes, static_cast<LaneName>(hand.one(5)));
                return "fold";
            case 7: {
                const auto& yards = outlook->nucs.yards;
                toggle(options.openYards,
                       yards[static_cast<std::size_t>(hand.one(static_cast<int>(yards.size())))]
                           .yard->id);
                return "open a yard";
            }
            case 8:
                options.chosenDay = outlook->snapshot.today() + Days{hand.one(50)};
                return "choose a day";
            case 9:
                options.legendFolded = !options.legendFolded;
                return "fold the legend";
            case 10:
                options.pixelRatio = options.pixelRatio == 1 ? 1.5 : 1;
                return "another screen";
            case 11:
                drop();
                return "drop";
            default: {
                const auto moved = options.selected.value_or(batch);
                if (!outlook->find(moved)->timeline.grafted) drag(moved, hand.one(6) - 2);
                return "drag";
            }
        }
    }

    OutlookMemo memo;
    Snapshot saved;
    OutlookPtr outlook;
    DayAxis axis;
    ChartOptions options;
    const TextRuler* ruler = nullptr;
    LaidBefore before;
    const DayWindow summer{day("2027-05-24"), day("2027-08-20")};
};

}  // namespace tenthday::test
