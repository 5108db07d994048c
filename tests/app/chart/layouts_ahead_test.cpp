#include "chart/layouts_ahead.h"

#include <QTest>

#include "app/chart/hand_scene.h"
#include "app/chart/layout_text.h"

namespace tenthday::test {
namespace {

class LayoutsAheadOf : public HandScene {
protected:
    LayoutsAheadOf() {
        ruler = fixed.get();
        layouts.measureBy(fixed);
        show(largeSeason({60, 300, 2}));
        showDays({day("2027-05-20"), day("2027-07-20")});
    }
    /// Nothing is laid out beside any more: it may ask for the locale.
    ~LayoutsAheadOf() override { layouts.measureBy(std::make_shared<const FixedRuler>()); }

    [[nodiscard]] LayoutAsk shown() const { return {outlook, axis, options}; }
    /// What is shown with a batch so many days later, as a preview.
    [[nodiscard]] LayoutAsk moved(int by) {
        drop();
        drag(largeSeasonBatch(45), by);
        return shown();
    }
    void expectAsAfresh(const LayoutAsk& ask) {
        const auto laid = layouts.of(ask);
        const auto fresh = layOut(*ask.outlook, ask.axis, ask.options, *ruler);
        EXPECT_EQ(laid->layout.items, fresh.items);
        EXPECT_EQ(laid->layout.paths, fresh.paths);
        EXPECT_EQ(laid->layout.targets.size(), fresh.targets.size());
        const PictureMarks marks(fresh, ask.options.size.toSize());
        EXPECT_TRUE(laid->marks.changedSince(marks).isEmpty());
    }
    /// Whether it was there when it was asked for, in a while at the latest.
    [[nodiscard]] bool comes(const LayoutAsk& ask, const LayoutAsk& other) {
        return QTest::qWaitFor(
            [&] {
                const int had = layouts.wereThere();
                layouts.expect(ask);
                QTest::qWait(20);
                (void)layouts.of(ask);
                const bool came = layouts.wereThere() > had;
                if (!came) (void)layouts.of(other);
                return came;
            },
            20'000);
    }

    std::shared_ptr<const FixedRuler> fixed = std::make_shared<const FixedRuler>();
    LayoutsAhead layouts;
};

TEST_F(LayoutsAheadOf, WhatWasExpectedIsThereAndIsTheSame) {
    const auto first = moved(1);
    const auto second = moved(2);
    expectAsAfresh(first);
    EXPECT_TRUE(comes(second, first));
    expectAsAfresh(second);
    expectAsAfresh(first);
}

TEST_F(LayoutsAheadOf, WhatWasNotExpectedIsMadeThen) {
    // Asked for before it is begun, while it is made, or after that; or something else is.
    for (int by = 1; by <= 9; ++by) {
        layouts.expect(moved(by));
        if (by % 3 != 0) QTest::qWait(by);
        expectAsAfresh(moved(by % 2 == 0 ? by : -by));
    }
}

TEST_F(LayoutsAheadOf, OtherOptionsAreAnotherLayout) {
    const auto plain = moved(3);
    (void)layouts.of(plain);
    auto marked = plain;
    marked.options.offersDays = true;
    marked.options.clearDays = {day("2027-06-20")};
    layouts.expect(plain);
    expectAsAfresh(marked);
    EXPECT_NE(layouts.of(marked), layouts.of(plain));
    auto narrower = plain;
    narrower.axis = axis.zoomedAt(500, 1.5);
    expectAsAfresh(narrower);
}

TEST_F(LayoutsAheadOf, WordsMeasuredOtherwiseAreLaidAgain) {
    class WideRuler : public FixedRuler {
    public:
        [[nodiscard]] qreal width(const QString& text, Type type) const override {
            return 1.25 * FixedRuler::width(text, type);
        }
    };
    const auto ask = moved(2);
    (void)layouts.of(ask);
    layouts.expect(moved(3));
    auto wide = std::make_shared<const WideRuler>();
    layouts.measureBy(wide);
    fixed.reset();  // nothing of it is asked any more
    ruler = wide.get();
    expectAsAfresh(ask);
    layouts.expect(moved(4));  // and gone while it may be made
}

}  // namespace
}  // namespace tenthday::test
