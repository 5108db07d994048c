#include "look/palette.h"

#include <gtest/gtest.h>

#include "look/contrast.h"

namespace tenthday::test {
namespace {

struct LookCase {
    const char* name;
    Look look;
};
void PrintTo(const LookCase& c, std::ostream* out) { *out << c.name; }
class PaletteOf : public ::testing::TestWithParam<LookCase> {};

std::string pairName(Role a, Role b) {
    return std::string(token(a)) + " on " + std::string(token(b));
}

TEST_P(PaletteOf, TextCanBeReadOnItsGround) {
    const auto& colours = paletteOf(GetParam().look);
    for (const auto& [text, ground] : textPairs())
        EXPECT_GE(contrastRatio(colours[text], colours[ground]), 4.5) << pairName(text, ground);
}

TEST_P(PaletteOf, MarksStandOutFromTheirGround) {
    const auto& colours = paletteOf(GetParam().look);
    for (const auto& [mark, ground] : markPairs())
        EXPECT_GE(contrastRatio(colours[mark], colours[ground]), 3.0) << pairName(mark, ground);
}

TEST_P(PaletteOf, OnlyTheRibbonIsSeeThrough) {
    const auto& colours = paletteOf(GetParam().look);
    for (std::size_t i = 0; i < kRoleCount; ++i)
        EXPECT_EQ(colours[static_cast<Role>(i)].alpha() < 255, static_cast<Role>(i) == Role::Ribbon)
            << token(static_cast<Role>(i));
}

INSTANTIATE_TEST_SUITE_P(Looks, PaletteOf,
                         ::testing::Values(LookCase{"Light", Look::Light},
                                           LookCase{"Dark", Look::Dark},
                                           LookCase{"Paper", Look::Paper}),
                         [](const auto& test) { return std::string(test.param.name); });

// What is only likely draws the eye less than what is ready: on white by its hatch, in the dark,
// where white would shine over half the chart, by a ground of its own.
TEST(Palette, WhatIsLikelyIsCalmerThanWhatIsReady) {
    for (const auto look : {Look::Light, Look::Dark, Look::Paper}) {
        const auto& colours = paletteOf(look);
        EXPECT_LE(luminance(colours[Role::Likely]), luminance(colours[Role::Ready])) << token(look);
        EXPECT_LT(luminance(colours[Role::LikelyHatch]), luminance(colours[Role::Ready]))
            << token(look);
    }
    const auto& dark = paletteOf(Look::Dark);
    EXPECT_GE(contrastRatio(dark[Role::Ready], dark[Role::Likely]), 3.0);
    for (const auto role : {Role::Virgin, Role::Laying, Role::SealedCells, Role::DueToFly})
        EXPECT_LT(luminance(dark[Role::Likely]), luminance(dark[role])) << token(role);
}

// On a dark ground the brightest catches the eye: that is trouble, not what is in order.
TEST(Palette, InTheDarkTroubleIsBrighterThanAnyBand) {
    const auto& dark = paletteOf(Look::Dark);
    for (const auto role :
         {Role::Ready, Role::ReadyEdge, Role::Likely, Role::Virgin, Role::DueToFly, Role::Laying,
          Role::JudgedGood, Role::OpenCells, Role::SealedCells, Role::Waiting, Role::NoQueen}) {
        EXPECT_GT(luminance(dark[Role::DangerGround]), luminance(dark[role])) << token(role);
        EXPECT_GT(luminance(dark[Role::Danger]), luminance(dark[role])) << token(role);
        EXPECT_GT(luminance(dark[Role::Caution]), luminance(dark[role])) << token(role);
    }
}

TEST(Palette, PaperIsWhiteWithDarkInk) {
    const auto& paper = paletteOf(Look::Paper);
    EXPECT_EQ(luminance(paper[Role::Ground]), 1.0);
    EXPECT_LT(luminance(paper[Role::Ink]), 0.02);
}

TEST(Palette, FollowsADarkDesktop) {
    EXPECT_EQ(lookOf(widgetPalette(Look::Dark)), Look::Dark);
    EXPECT_EQ(lookOf(widgetPalette(Look::Light)), Look::Light);
}

// WCAG 2.1 gives 21 for black on white, and #777777 on white just under 4.5.
TEST(Contrast, AgreesWithThePublishedFormula) {
    const auto grey = [](int level) { return QColor(level, level, level); };
    EXPECT_DOUBLE_EQ(contrastRatio(grey(0), grey(255)), 21.0);
    EXPECT_NEAR(contrastRatio(grey(0x77), grey(255)), 4.48, 0.005);
    EXPECT_EQ(contrastRatio(grey(90), grey(90)), 1.0);
}

}  // namespace
}  // namespace tenthday::test
