#include "chart/hover_card.h"

#include <gtest/gtest.h>

namespace tenthday::test {
namespace {

const QString kSentence =
    QStringLiteral("Drawn to days that clash with nothing; hold Shift for any day.");

int widthOf(const CardText& card) {
    QWidget chart;
    chart.resize(1366, 768);
    HoverCard shown(&chart);
    shown.showCard(card, {100, 100});
    return shown.width();
}

TEST(HoverCard, ASentenceRunsOverAllColumns) {
    const QString title = QStringLiteral("Batch 706");
    const CardLine ripe{QStringLiteral("ripe"), QStringLiteral("22"), {}};
    const int alone = widthOf({title, {{kSentence, {}, {}}}});
    EXPECT_LE(widthOf({title, {ripe, {kSentence, {}, {}}}}), alone)
        << "the values stand beside their names";
    EXPECT_LT(widthOf({title, {ripe}}), alone / 2) << "it is the sentence that is wide";
}

TEST(HoverCard, StaysInsideTheChart) {
    QWidget chart;
    chart.resize(900, 600);
    HoverCard shown(&chart);
    const CardText card{QStringLiteral("Batch 706"), {{kSentence, {}, {}}}};
    for (const QPointF at : {QPointF(0, 0), QPointF(899, 0), QPointF(0, 599), QPointF(899, 599)}) {
        shown.showCard(card, at);
        EXPECT_TRUE(chart.rect().contains(shown.geometry()));
        EXPECT_FALSE(shown.geometry().contains(at.toPoint())) << "not under the pointer";
    }
}

TEST(HoverCard, StandsToTheLeftWhereItIsAskedToAndHasRoom) {
    QWidget chart;
    chart.resize(1366, 768);
    HoverCard shown(&chart);
    const CardText card{QStringLiteral("Batch 706"), {{kSentence, {}, {}}}};
    shown.showCard(card, {900, 300}, CardSide::Left);
    EXPECT_LT(shown.geometry().right(), 900);
    shown.showCard(card, {900, 300});
    EXPECT_GT(shown.geometry().left(), 900);
    const QPoint atEdge(50, 300);
    shown.showCard(card, atEdge, CardSide::Left);
    EXPECT_GT(shown.geometry().left(), atEdge.x()) << "no room there";
    EXPECT_TRUE(chart.rect().contains(shown.geometry()));
}

}  // namespace
}  // namespace tenthday::test
