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

QImage ground(qreal ratio) {
    QImage image((QSizeF(kSize) * ratio).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(paletteOf(Look::Light)[Role::Ground]);
    return image;
}

QImage painted(const std::vector<Item>& items, qreal ratio) {
    Layout layout;
    layout.items = items;
    auto image = ground(ratio);
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

// Their lines hang on the plane: no seam, and as much ink as lines of that spacing.
TEST_P(Textures, HatchesJoinAndCoverAsLinesDo) {
    const double ratio = GetParam();
    const QRectF left(8, 4, 40, 32);
    const QRectF right(48, 4, 56, 32);
    QImage before;
    for (const auto slope : {Slope::Rising, Slope::Falling}) {
        const auto hatch = [&](const QRectF& rect) {
            auto item = texture(Shape::Hatch, rect, 8, 1);
            item.slope = slope;
            return item;
        };
        const auto whole = painted({hatch(left.united(right))}, ratio);
        EXPECT_EQ(painted({hatch(left), hatch(right)}, ratio), whole);
        EXPECT_NE(whole, before) << "they lean to different sides";
        before = whole;
        auto plain = ground(ratio);
        QPainter painter(&plain);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(
            QPen(paletteOf(Look::Light)[Role::OutsideHatch], 1, Qt::SolidLine, Qt::FlatCap));
        painter.drawLines(hatchLines(left.united(right), 8, slope));
        painter.end();
        EXPECT_NEAR(inkOf(whole) / inkOf(plain), 1, 0.12);
    }
}

// Wherever they stand they look alike, and as the path does.
TEST_P(Textures, GlyphsAreAlike) {
    const double ratio = GetParam();
    for (const auto glyph : {Glyph::MakeUp, Glyph::LookDue, Glyph::Warning, Glyph::Doubt}) {
        const auto at = [&](QPointF centre) {
            auto item = texture(Shape::Glyph, {centre.x() - 4, centre.y() - 4, 8, 8}, 0, 0);
            item.detail = static_cast<int>(glyph);
            return inkOf(painted({item}, ratio));
        };
        const double ink = at({20, 20});
        EXPECT_GT(ink, 0);
        EXPECT_DOUBLE_EQ(at({20.3, 19.6}), ink);
        EXPECT_DOUBLE_EQ(at({60.45, 12.2}), ink);
        auto plain = ground(ratio);
        {
            QPainter painter(&plain);
            painter.setRenderHint(QPainter::Antialiasing);
            const auto& colour = paletteOf(Look::Light)[Role::OutsideHatch];
            const auto path = glyphPath(glyph, {20, 20}, 8);
            if (isFilled(glyph))
                painter.fillPath(path, colour);
            else
                painter.strokePath(
                    path, QPen(colour, 8.0 / 6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        }
        EXPECT_NEAR(ink / inkOf(plain), 1, 0.1) << static_cast<int>(glyph);
    }
}

TEST_P(Textures, DottedLinesEndWithAWholeDot) {
    const double ratio = GetParam();
    const auto row = [&](double width) {
        return inkOf(painted({texture(Shape::Dotted, {10, 20, width, 2}, 0, 1.5)}, ratio));
    };
    const double one = row(2);
    ASSERT_GT(one, 0);
    for (const double width : {5.0, 23.0, 61.5}) {
        const double dots = row(width) / one;
        EXPECT_NEAR(dots, std::round(dots), 0.05) << width;
        EXPECT_NEAR(dots, width / 4.5, width / 4.5 * 0.15 + 1) << width;
    }
}

QImage words(const char* text, QPointF baseline, qreal ratio) {
    Layout layout;
    layout.texts.push_back({QString::fromUtf8(text), Type::Body, baseline});
    Item item;
    item.layer = Layer::Words;
    item.shape = Shape::Text;
    item.role = Role::OutsideHatch;
    item.detail = 0;
    layout.items = {item};
    auto image = ground(ratio);
    QPainter painter(&image);
    ChartPainter(paletteOf(Look::Light), systemTypeface()).paintOverGround(painter, layout);
    return image;
}

/// The most by which a pixel differs, 0 to 255.
int mostApart(const QImage& a, const QImage& b) {
    int most = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            most = std::max(most, std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))));
    return most;
}

// Painted once and put, words stand where the painter writes them, signs of other fonts and
// overhang as well.
TEST_P(Textures, WordsStandOnTheirBaseline) {
    const double ratio = GetParam();
    for (const auto* text : {"20 of 22 ripe", "Hg", "\xe2\x98\x85 7", "\xc3\x85j"}) {
        auto wanted = ground(ratio);
        QPainter plain(&wanted);
        plain.setFont(systemTypeface().font(Type::Body));
        plain.setPen(paletteOf(Look::Light)[Role::OutsideHatch]);
        plain.drawText(QPointF(8, 24), QString::fromUtf8(text));
        plain.end();
        ASSERT_GT(inkOf(wanted), 0);
        // Letters stand on quarters of a pixel: rounded otherwise, one may be a shade apart.
        EXPECT_LE(mostApart(words(text, {8, 24}, ratio), wanted), 12) << text;
    }
}

// Between whole pixels they are put on the nearest: the same words look the same everywhere.
TEST_P(Textures, WordsAreAlike) {
    const double ratio = GetParam();
    const double ink = inkOf(words("14 ready", {8, 24}, ratio));
    EXPECT_GT(ink, 0);
    for (const auto& at : {QPointF(8.3, 24), QPointF(20.45, 18.2), QPointF(31.7, 30.6)})
        EXPECT_DOUBLE_EQ(inkOf(words("14 ready", at, ratio)), ink);
}

INSTANTIATE_TEST_SUITE_P(Ratios, Textures, ::testing::Values(1.0, 1.25, 1.5, 2.0));

}  // namespace
}  // namespace tenthday
