#include "look/colour_sight.h"

#include <gtest/gtest.h>

#include "look/palette.h"

namespace tenthday::test {
namespace {

// Ten just noticeable steps would be 23; half of that is told apart with a line between, which
// stacks have (see bands.cpp). In grey there is lightness alone.
constexpr double kApart = 10;
constexpr double kApartInGrey = 6;

struct SightCase {
    const char* name;
    Sight sight;
    double least;
};
void PrintTo(const SightCase& c, std::ostream* out) { *out << c.name; }
class SeenBy : public ::testing::TestWithParam<SightCase> {};

TEST_P(SeenBy, NeighboursAreToldApart) {
    for (const auto look : {Look::Light, Look::Dark, Look::Paper})
        for (const auto& [a, b] : neighbours()) {
            const auto& colours = paletteOf(look);
            EXPECT_GE(colourDifference(seenBy(GetParam().sight, colours[a]),
                                       seenBy(GetParam().sight, colours[b])),
                      GetParam().least)
                << token(look) << ": " << token(a) << " beside " << token(b);
        }
}

INSTANTIATE_TEST_SUITE_P(Sights, SeenBy,
                         ::testing::Values(SightCase{"Usual", Sight::Usual, kApart},
                                           SightCase{"NoRed", Sight::NoRed, kApart},
                                           SightCase{"NoGreen", Sight::NoGreen, kApart},
                                           SightCase{"NoBlue", Sight::NoBlue, kApart},
                                           SightCase{"Grey", Sight::Grey, kApartInGrey}),
                         [](const auto& test) { return std::string(test.param.name); });

// CIE 15: white is 100 from black. sRGB red under D65 is L* 53.24, a* 80.09, b* 67.20: 117.34 from
// black, the root of the sum of their squares (values from memory).
TEST(ColourDifference, AgreesWithKnownValues) {
    const QColor black(0, 0, 0);
    EXPECT_NEAR(colourDifference(QColor(255, 255, 255), black), 100.0, 0.01);
    EXPECT_NEAR(colourDifference(QColor(255, 0, 0), black), 117.34, 0.05);
    EXPECT_EQ(colourDifference(black, black), 0.0);
}

// Who sees no red or no green mixes up red and green of one lightness; who sees no blue does not.
TEST(SeenByEye, RedAndGreenGrowAlikeWithoutOneOfThem) {
    const QColor red(190, 60, 40);
    const QColor green(85, 110, 30);
    const auto apart = [&](Sight sight) {
        return colourDifference(seenBy(sight, red), seenBy(sight, green));
    };
    EXPECT_LT(apart(Sight::NoGreen), apart(Sight::Usual) / 2);
    EXPECT_GT(apart(Sight::NoBlue), apart(Sight::Usual) / 2);
    EXPECT_LT(colourDifference(seenBy(Sight::Usual, red), red), 0.5);
}

}  // namespace
}  // namespace tenthday::test
