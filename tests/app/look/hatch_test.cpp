#include "look/hatch.h"

#include <gtest/gtest.h>

namespace tenthday::test {
namespace {

bool holds(const QRectF& rect, QPointF point) {
    return rect.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(point);
}

TEST(Hatch, StaysInsideItsRectangle) {
    for (const auto slope : {Slope::Rising, Slope::Falling})
        for (const auto& rect : {QRectF(3, 5, 40, 9), QRectF(-7, 2, 4, 60), QRectF(0, 0, 1, 1)}) {
            const auto lines = hatchLines(rect, 4, slope);
            for (const auto& line : lines)
                EXPECT_TRUE(holds(rect, line.p1()) && holds(rect, line.p2()));
            EXPECT_EQ(lines.isEmpty(), rect.width() == 1 && slope == Slope::Rising) << rect.width();
        }
}

TEST(Hatch, GoesOnAcrossNeighbours) {
    // What two neighbours draw together is what one wide rectangle draws.
    const QRectF left(10, 10, 20, 30);
    const QRectF right(30, 10, 20, 30);
    qreal parts = 0;
    qreal whole = 0;
    for (const auto& rect : {left, right})
        for (const auto& line : hatchLines(rect, 6, Slope::Rising)) parts += line.length();
    for (const auto& line : hatchLines(left.united(right), 6, Slope::Rising))
        whole += line.length();
    EXPECT_NEAR(parts, whole, 1e-6);
    EXPECT_GT(whole, 0);
}

TEST(Hatch, NothingInNothing) {
    EXPECT_TRUE(hatchLines(QRectF(0, 0, 0, 10), 5, Slope::Rising).isEmpty());
    EXPECT_TRUE(hatchLines(QRectF(0, 0, 10, 10), 0, Slope::Falling).isEmpty());
    EXPECT_TRUE(dotGrid(QRectF(0, 0, 1, 1), 5, 1).isEmpty());
}

TEST(DotGrid, KeepsWholeDotsInside) {
    const QRectF rect(2, 2, 30, 12);
    const auto dots = dotGrid(rect, 5, 1);
    ASSERT_FALSE(dots.isEmpty());
    for (const auto& dot : dots) EXPECT_TRUE(holds(rect.adjusted(1, 1, -1, -1), dot));
}

}  // namespace
}  // namespace tenthday::test
