#include "sheets/placement_sheet.h"

#include <gtest/gtest.h>

namespace tenthday {
namespace {

PlacementSheet sheetOf(int nucs) {
    PlacementSheet sheet{QStringLiteral("Cells on Mon 21 Jun"),
                         QStringLiteral("North Fell"),
                         QStringLiteral("200 ripe = 200 into nucs"),
                         {}};
    for (const auto* yard : {"Mill", "A yard with quite a long name behind the hill"}) {
        sheet.stops.push_back({QString::fromLatin1(yard), {}});
        for (int i = 1; i <= nucs; ++i)
            sheet.stops.back().nucs.push_back(
                {QStringLiteral("%1%2 A").arg(yard[0]).arg(i), QStringLiteral("Batch 17"), i == 1});
    }
    return sheet;
}

class Placements : public ::testing::TestWithParam<Paper> {};

TEST_P(Placements, EachNucStandsOnceInsideTheMarginsInWalkingOrder) {
    const PaperRuler ruler;
    const auto sheet = sheetOf(70);
    const auto pages = layOutPlacements(sheet, GetParam(), ruler);
    EXPECT_GT(pages.size(), 1U);
    const auto area = printable(GetParam()).adjusted(-0.5, -0.5, 0.5, 0.5);
    std::vector<QString> found;
    int boxes = 0;
    int ticks = 0;
    for (const auto& page : pages) {
        EXPECT_FALSE(page.marks.empty());
        for (const auto& mark : page.marks) {
            EXPECT_TRUE(area.contains(mark.rect)) << mark.text.toStdString();
            if (mark.shape == Mark::Shape::Text && mark.text.endsWith(QStringLiteral(" A")))
                found.push_back(mark.text);
            boxes += mark.shape == Mark::Shape::Frame ? 1 : 0;
            ticks += mark.shape == Mark::Shape::Tick ? 1 : 0;
        }
    }
    std::vector<QString> wanted;
    for (const auto& stop : sheet.stops)
        for (const auto& nuc : stop.nucs) wanted.push_back(nuc.nuc);
    EXPECT_EQ(found, wanted);
    EXPECT_EQ(boxes, 140);
    EXPECT_EQ(ticks, 2) << "what is done is ticked";
}

TEST_P(Placements, NoCellsAreAPageThatSaysSo) {
    const PaperRuler ruler;
    EXPECT_EQ(layOutPlacements({}, GetParam(), ruler).size(), 1U);
}

INSTANTIATE_TEST_SUITE_P(Papers, Placements, ::testing::Values(Paper::A4, Paper::Letter, Paper::A5),
                         [](const auto& test) { return std::string(token(test.param)); });

}  // namespace
}  // namespace tenthday
