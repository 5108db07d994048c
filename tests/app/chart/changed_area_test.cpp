// What is painted again where a picture differs must leave the very pixels of a whole painting.
#include "chart/changed_area.h"

#include <QImage>
#include <QPainter>

#include "app/chart/hand_scene.h"
#include "chart/chart_painter.h"
#include "chart/ground_cache.h"

namespace tenthday::test {
namespace {

constexpr QSize kPage{1366, 768};

class ChangedArea : public HandScene, public ::testing::WithParamInterface<unsigned> {
protected:
    ChangedArea() { ruler = &words; }

    Layout lay() { return layOut(outlook, axis, options, *ruler, before); }
    QImage empty() const {
        QImage image((QSizeF(kPage) * options.pixelRatio).toSize(), QImage::Format_RGB32);
        image.setDevicePixelRatio(options.pixelRatio);
        return image;
    }
    QImage whole(const Layout& layout) const {
        auto image = empty();
        QPainter on(&image);
        painter.paint(on, layout, QRectF(QPointF(), QSizeF(kPage)));
        return image;
    }
    /// As the chart's widget does.
    void paintPieces(const QRegion& region, const Layout& layout, QImage& image) {
        QPainter on(&image);
        for (const auto& piece : region) {
            on.setClipRect(piece);
            ground.paint(on, painter, layout, kPage, options.pixelRatio);
        }
        painter.paintOverGround(on, layout, region);
    }

    const Typeface face = systemTypeface();
    const FontRuler words{face};
    const ChartPainter painter{paletteOf(Look::Light), face};
    GroundCache ground;
};

int areaOf(const QRegion& region) {
    int area = 0;
    for (const auto& rect : region) area += rect.width() * rect.height();
    return area;
}

TEST_P(ChangedArea, LeavesThePixelsOfAWholePainting) {
    show(largeSeason({60, 300, 2}));
    showDays(summer);
    Hand hand(GetParam());
    auto layout = lay();
    PictureMarks marks(layout, kPage);
    QImage image = whole(layout);
    qreal ratio = options.pixelRatio;
    std::string done;
    for (int step = 0; step < 40; ++step) {
        done += doOne(hand) + ", ";
        layout = lay();
        PictureMarks now(layout, kPage);
        if (options.pixelRatio != ratio) image = whole(layout);  // the window is exposed anew
        ratio = options.pixelRatio;
        paintPieces(now.changedSince(marks), layout, image);
        marks = std::move(now);
        ASSERT_EQ(image, whole(layout)) << done;
    }
}
INSTANTIATE_TEST_SUITE_P(Seeds, ChangedArea, ::testing::Range(1U, 5U));

class ChangedAreaOfADrag : public ChangedArea {};

TEST_P(ChangedAreaOfADrag, IsAPartOfThePage) {
    show(largeSeason({60, 300, 2}));
    showDays(summer);
    const auto batch = largeSeasonBatch(GetParam());
    options.selected = batch;
    drag(batch, 1);
    const PictureMarks marks(lay(), kPage);
    EXPECT_TRUE(PictureMarks(lay(), kPage).changedSince(marks).isEmpty()) << "the same again";
    EXPECT_EQ(PictureMarks(lay(), {900, 600}).changedSince(marks).boundingRect(),
              QRect(0, 0, 900, 600))
        << "another page";
    drag(batch, 2);
    const auto region = PictureMarks(lay(), kPage).changedSince(marks);
    EXPECT_GT(areaOf(region), 0);
    EXPECT_LT(areaOf(region), kPage.width() * kPage.height() * 3 / 4);
}
INSTANTIATE_TEST_SUITE_P(Batches, ChangedAreaOfADrag, ::testing::Values(45U, 50U));

}  // namespace
}  // namespace tenthday::test
