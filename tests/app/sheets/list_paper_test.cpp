// Lists on paper: each row once, whole, inside the margins, under heads that are said again.
#include "sheets/list_paper.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "sheets/label_sheet.h"

namespace tenthday {
namespace {

ListPaper listOf(int rows, qreal leastWidth) {
    ListPaper list;
    list.title = QStringLiteral("Cells on Mon 21 Jun");
    list.operation = QStringLiteral("North Fell");
    list.lead = {QStringLiteral("200 ripe = 200 into nucs")};
    list.notes = {QStringLiteral("Do not work alone.")};
    list.leastWidth = leastWidth;
    for (const auto* yard : {"Mill", "A yard with quite a long name behind the hill"}) {
        list.groups.push_back({QString::fromLatin1(yard),
                               {{QStringLiteral("Nuc"), 1, Print::Strong},
                                {QStringLiteral("From"), 1.2, Print::Small},
                                {QStringLiteral("Number given"), 1, Print::Text, true}},
                               {},
                               {}});
        for (int i = 1; i <= rows; ++i)
            list.groups.back().rows.push_back(
                {{QStringLiteral("%1%2 A").arg(yard[0]).arg(i), QStringLiteral("Batch 17")},
                 i == 1,
                 i == 2});
    }
    return list;
}

struct FormCase {
    const char* name;
    PaperForm form;
};
void PrintTo(const FormCase& c, std::ostream* out) { *out << c.name; }
class Lists : public ::testing::TestWithParam<FormCase> {
protected:
    static bool isText(const Mark& mark) {
        return mark.shape == Mark::Shape::Text || mark.shape == Mark::Shape::WhiteText;
    }
    static int count(const Page& page, const QString& words) {
        int found = 0;
        for (const auto& mark : page.marks) found += isText(mark) && mark.text == words;
        return found;
    }
    PaperRuler ruler_;
};

TEST_P(Lists, EachRowStandsOnceInsideTheMarginsInItsOrder) {
    const auto& form = GetParam().form;
    const auto area = printable(form).adjusted(-0.5, -0.5, 0.5, 0.5);
    for (const qreal least : {0.0, millimetres(58)}) {
        const auto list = listOf(70, least);
        std::vector<QString> found;
        int ticks = 0;
        for (const auto& page : layOutList(list, form, ruler_))
            for (const auto& mark : page.marks) {
                EXPECT_TRUE(area.contains(mark.rect)) << mark.text.toStdString();
                if (isText(mark) && mark.text.endsWith(QStringLiteral(" A")))
                    found.push_back(mark.text);
                ticks += mark.shape == Mark::Shape::Tick ? 1 : 0;
            }
        std::vector<QString> wanted;
        for (const auto& group : list.groups)
            for (const auto& row : group.rows) wanted.push_back(row.cells[0]);
        EXPECT_EQ(found, wanted);
        EXPECT_EQ(ticks, 2) << "what is done is ticked";
    }
}

TEST_P(Lists, HeadsStandOnEveryPage) {
    const auto pages = layOutList(listOf(70, 0), GetParam().form, ruler_);
    ASSERT_GT(pages.size(), 3U);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        EXPECT_EQ(count(pages[i], QStringLiteral("Cells on Mon 21 Jun")), 1) << i;
        EXPECT_EQ(count(pages[i], QStringLiteral("North Fell")), 1) << i;
        EXPECT_EQ(count(pages[i], QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())), 1);
        bool rows = false;
        for (const auto& mark : pages[i].marks)
            rows = rows || (isText(mark) && mark.text.endsWith(QStringLiteral(" A")));
        if (rows) {
            EXPECT_GE(count(pages[i], QStringLiteral("Nuc")), 1) << i;
        }
        EXPECT_EQ(count(pages[i], QStringLiteral("200 ripe = 200 into nucs")), i == 0 ? 1 : 0);
    }
    EXPECT_EQ(count(pages.back(), QStringLiteral("Do not work alone.")), 1);
}

TEST_P(Lists, TextsDoNotCollide) {
    for (const auto& page : layOutList(listOf(40, 0), GetParam().form, ruler_))
        for (std::size_t i = 0; i < page.marks.size(); ++i)
            for (std::size_t k = i + 1; k < page.marks.size(); ++k)
                if (isText(page.marks[i]) && isText(page.marks[k])) {
                    EXPECT_FALSE(
                        page.marks[i].rect.intersects(page.marks[k].rect.adjusted(0, 1, 0, 0)))
                        << page.marks[i].text.toStdString() << " / "
                        << page.marks[k].text.toStdString();
                }
}

TEST_P(Lists, AnEmptyListIsAPageThatSaysSo) {
    ListPaper list;
    list.none = QStringLiteral("Nothing");
    const auto pages = layOutList(list, GetParam().form, ruler_);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(count(pages[0], QStringLiteral("Nothing")), 1);
}

INSTANTIATE_TEST_SUITE_P(
    Forms, Lists,
    ::testing::Values(FormCase{"A4", Paper::A4}, FormCase{"Letter", Paper::Letter},
                      FormCase{"A5", Paper::A5}, FormCase{"A5Across", {Paper::A5, true}},
                      FormCase{"A4Large", {Paper::A4, false, true}},
                      FormCase{"LetterAcrossLarge", {Paper::Letter, true, true}}),
    [](const auto& test) { return std::string(test.param.name); });

std::vector<LabelCard> cards(int count) {
    std::vector<LabelCard> all;
    for (int i = 0; i < count; ++i)
        all.push_back({QStringLiteral("Q%1 A").arg(i),
                       QStringLiteral("Mill"),
                       {QStringLiteral("Cell of batch 17, in on Thu 17 Jun"),
                        QStringLiteral("Do not open from Fri 18 Jun to Wed 30 Jun"),
                        QStringLiteral("Look: from Thu 1 Jul")}});
    return all;
}

TEST(Labels, StandApartOnTheSheetAndHoldTheirCards) {
    const PaperRuler ruler;
    const std::vector<std::pair<int, int>> grids{{1, 1}, {2, 4}, {3, 8}, {5, 13}};
    for (const auto& [columns, rows] : grids) {
        LabelGrid grid;
        grid.columns = columns;
        grid.rows = rows;
        const PaperForm form{Paper::A4};
        ASSERT_TRUE(checkLabels(grid, form)) << columns << "x" << rows;
        const auto places = labelPlaces(grid, form);
        ASSERT_EQ(places.size(), static_cast<std::size_t>(columns * rows));
        const QRectF inside(QPointF(millimetres(8), millimetres(8)),
                            sizeOf(form) - 2 * QSizeF(millimetres(8), millimetres(8)));
        for (std::size_t i = 0; i < places.size(); ++i) {
            EXPECT_TRUE(inside.adjusted(-0.01, -0.01, 0.01, 0.01).contains(places[i]));
            for (std::size_t k = 0; k < i; ++k) EXPECT_FALSE(places[i].intersects(places[k]));
        }
        for (const auto& page : layOutLabels(cards(columns * rows), grid, form, ruler))
            for (const auto& mark : page.marks) {
                const bool in = std::any_of(places.begin(), places.end(), [&](const QRectF& place) {
                    return place.adjusted(-0.1, -0.1, 0.1, 0.1).contains(mark.rect);
                });
                EXPECT_TRUE(in) << columns << "x" << rows << ": " << mark.text.toStdString();
            }
    }
}

TEST(Labels, BeginWhereTheSheetIsStillFreeAndGoOnOverleaf) {
    const PaperRuler ruler;
    LabelGrid grid;
    grid.first = 7;
    const auto pages = layOutLabels(cards(3), grid, Paper::A4, ruler);
    ASSERT_EQ(pages.size(), 2U);
    const auto places = labelPlaces(grid, Paper::A4);
    std::vector<QString> first;
    for (const auto& mark : pages[0].marks)
        if (mark.type == Print::Strong && !mark.text.isEmpty() && places[6].contains(mark.rect))
            first.push_back(mark.text);
    EXPECT_EQ(first, std::vector<QString>{QStringLiteral("Q0 A")});
}

TEST(Labels, RefuseWhatNoSheetCanBe) {
    const auto refuses = [](auto&& change) {
        LabelGrid grid;
        change(grid);
        return !checkLabels(grid, Paper::A4);
    };
    EXPECT_FALSE(refuses([](auto&) {}));
    EXPECT_TRUE(refuses([](auto& grid) { grid.columns = 0; }));
    EXPECT_TRUE(refuses([](auto& grid) { grid.rows = 31; }));
    EXPECT_TRUE(refuses([](auto& grid) { grid.columns = 7; })) << "narrower than 30 mm";
    EXPECT_TRUE(refuses([](auto& grid) { grid.left = -1; }));
    EXPECT_TRUE(refuses([](auto& grid) { grid.gapDown = std::nan(""); }));
    EXPECT_TRUE(refuses([](auto& grid) { grid.first = 9; }));
}

}  // namespace
}  // namespace tenthday
