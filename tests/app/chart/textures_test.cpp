// Dots and words where pixels are made, at every scale of the screen.
#include <gtest/gtest.h>

#include <QImage>
#include <cmath>

#include "chart/chart_painter.h"
#include "look/hatch.h"

namespace tenthday {
namespace {

constexpr QSize kSize{120, 40};

Item texture(Shape shape, const QRectF& rect, qreal spacing, qreal pen) {
    Item item;
    item.layer = Layer::Body;
    item.shape = shape;
    item.role = Role::OutsideHatch;
    item.rect = rect;
    item.spacing = spacing;
    item.pen = pen;
    return item;
}

QImage painted(const std::vector<Item>& items, qreal ratio) {
    Layout layout;
    layout.items = items;
    QImage image((QSizeF(kSize) * ratio).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(paletteOf(Look::Light)[Role::Ground]);
    QPainter painter(&image);
    ChartPainter(paletteOf(Look::Light), systemTypeface()).paintOverGround(painter, layout);
    return image;
}

/// How much of the ground is covered, in device pixels.
double inkOf(const QImage& image) {
    const int ground = qGray(paletteOf(Look::Light)[Role::Ground].rgb());
    const int ink = qGray(paletteOf(Look::Light)[Role::OutsideHatch].rgb());
    double sum = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            sum += static_cast<double>(ground - qGray(image.pixel(x, y))) / (ground - ink);
    return sum;
}

class Textures : public ::testing::TestWithParam<double> {};

TEST_P(Textures, DotsAreAllThereAndWhole) {
    for (const qreal spacing : {4.0, 5.0}) {
        const auto item = texture(Shape::Dots, {10.2, 3.1, 70, 31}, spacing, 1.8);
        const auto one =
            texture(Shape::Dots, {spacing * 3 - 1, spacing * 2 - 1, 2, 2}, spacing, 1.8);
        const auto count = dotGrid(item.rect, item.spacing, item.pen / 2).size();
        ASSERT_EQ(dotGrid(one.rect, one.spacing, one.pen / 2).size(), 1);
        // Between whole pixels the same dot leaves a little more or less.
        const bool isWhole = std::round(spacing * GetParam()) == spacing * GetParam();
        EXPECT_NEAR(inkOf(painted({item}, GetParam())) / inkOf(painted({one}, GetParam())),
                    static_cast<double>(count), isWhole ? 0.4 : 2);
    }
}

// Words shaped once stand where the painter writes them: to the pixel.
TEST_P(Textures, WordsStandOnTheirBaseline) {
    const double ratio = GetParam();
    const auto face = systemTypeface();
    for (const auto* words : {"20 of 22 ripe", "Hg", "\xe2\x98\x85 7"}) {
        Layout layout;
        layout.texts.push_back({QString::fromUtf8(words), Type::Body, {10, 24}});
        Item item;
        item.layer = Layer::Words;
        item.shape = Shape::Text;
        item.role = Role::Ink;
        item.detail = 0;
        layout.items = {item};
        QImage made((QSizeF(kSize) * ratio).toSize(), QImage::Format_RGB32);
        made.setDevicePixelRatio(ratio);
        made.fill(Qt::white);
        QImage wanted = made;
        QPainter on(&made);
        ChartPainter(paletteOf(Look::Light), face).paintOverGround(on, layout);
        QPainter plain(&wanted);
        plain.setFont(face.font(Type::Body));
        plain.setPen(paletteOf(Look::Light)[Role::Ink]);
        plain.drawText(QPointF(10, 24), QString::fromUtf8(words));
        EXPECT_EQ(made, wanted) << words;
    }
}

INSTANTIATE_TEST_SUITE_P(Ratios, Textures, ::testing::Values(1.0, 1.25, 1.5, 2.0));

}  // namespace
}  // namespace tenthday
