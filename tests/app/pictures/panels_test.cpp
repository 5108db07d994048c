#include "pictures/panels.h"

#include <gtest/gtest.h>

#include <QSet>
#include <QTemporaryDir>

namespace tenthday::test {
static void PrintTo(const Panel& panel, std::ostream* out) { *out << panel.name.toStdString(); }
}  // namespace tenthday::test

namespace tenthday {
namespace {

/// How many colours there are, up to a bound.
int coloursIn(const QImage& image, int bound) {
    QSet<QRgb> colours;
    for (int y = 0; y < image.height() && colours.size() < bound; y += 2)
        for (int x = 0; x < image.width(); x += 2) colours += image.pixel(x, y);
    return static_cast<int>(colours.size());
}

class EveryPanel : public ::testing::TestWithParam<test::Panel> {};

TEST_P(EveryPanel, HasAPictureInLightAndDark) {
    const QTemporaryDir scratch;
    const auto pictures = test::picturesOf(GetParam(), scratch.path());
    ASSERT_EQ(pictures.size(), 2U) << "light, then dark";
    for (const auto& picture : pictures) {
        EXPECT_GE(picture.width(), 400);
        EXPECT_GE(picture.height(), 200);
        EXPECT_GE(coloursIn(picture, 8), 8) << "blank";
    }
    EXPECT_GT(qGray(pictures[0].pixel(4, 4)), 160);
    EXPECT_LT(qGray(pictures[1].pixel(4, 4)), 96);
}

INSTANTIATE_TEST_SUITE_P(Window, EveryPanel, ::testing::ValuesIn(test::panels()),
                         [](const auto& test) {
                             auto name = test.param.name.toStdString();
                             std::erase(name, '-');
                             return name;
                         });

}  // namespace
}  // namespace tenthday
