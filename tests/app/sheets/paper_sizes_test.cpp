// Every paper with nothing on it, with one line, with the example's and with 300: how many pages,
// which words, heads on each page, nothing outside the margins, white also on a dark screen.
#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QPalette>
#include <QRegularExpression>
#include <algorithm>
#include <set>

#include "exchange/example.h"
#include "records/change_set.h"
#include "screen_text/sheet_text.h"
#include "sheets/day_papers.h"
#include "sheets/label_sheet.h"
#include "sheets/page_painter.h"
#include "support/season_maker.h"
#include "tasks/own_task.h"

namespace tenthday {
namespace {

using test::day;

constexpr int kMany = 300;
constexpr int kMostBars = 99;

/// How much is on the paper; -1: what the example has.
enum Size { None = 0, One = 1, Example = -1, Many = kMany };

/// What the papers are printed of, and for which day.
struct Ground {
    OutlookPtr outlook;
    Day on;
};

std::string nuc(int number) { return "Q" + std::to_string(number); }

/// A yard with so many nucs, each stocked; batch 701 has cells for all of them on 30 May.
test::SeasonMaker yardWith(int nucs, bool stocked = true) {
    test::SeasonMaker maker("2027-05-29");
    maker.yard("Mill").builder("Big", "Mill");
    for (int i = 1; i <= nucs; ++i) {
        maker.box(nuc(i), "Mill", "7", "2027-01-01");
        if (stocked) maker.stock(nuc(i) + "/-", "2027-05-28");
    }
    if (nucs > 0) maker.batch("701", "2027-05-20", 12, 2 * nucs, "Big");
    return maker;
}

/// Nucs that hold their cells since 30 May.
test::SeasonMaker placed(int nucs) {
    auto maker = yardWith(nucs);
    for (int i = 1; i <= nucs; ++i) maker.place("701", nuc(i) + "/-", "2027-05-30", false);
    return maker;
}

/// No queen in any of them on 20 June; ripe cells of another batch on the 21st.
test::SeasonMaker failed(int nucs) {
    test::SeasonMaker maker("2027-06-20");
    maker.yard("Mill").builder("Big", "Mill").builder("Small", "Mill");
    for (int i = 1; i <= nucs; ++i) {
        maker.box(nuc(i), "Mill", "7", "2027-01-01");
        maker.stock(nuc(i) + "/-", "2027-05-28");
    }
    if (nucs == 0) return maker;
    maker.batch("701", "2027-05-20", 12, 2 * nucs, "Big");
    maker.batch("702", "2027-06-11", 12, 2 * nucs, "Small");
    for (int i = 1; i <= nucs; ++i) {
        maker.place("701", nuc(i) + "/-", "2027-05-30", true);
        maker.outcome("701", OutcomeKind::NoQueen, "2027-06-20", {}, nuc(i) + "/-");
    }
    return maker;
}

/// So many tasks of the user's own on one day.
Ground withTasks(int tasks) {
    auto book = yardWith(0).snapshot();
    for (int i = 1; i <= tasks; ++i) {
        const OwnTaskWords words{day("2027-05-26"), {}, nuc(i) + " is to be looked at", false};
        const auto edit = addOwnTask(words, test::id<OwnTask>(70000 + static_cast<unsigned>(i)));
        book = applied(book, edit.value()).value();
    }
    OutlookMemo memo;
    return {outlookOf(book, memo), day("2027-05-26")};
}

Ground exampleGround() {
    Snapshot book = applied(Snapshot{}, exampleContent()).value();
    book.setSeason((*book.all<Season>().begin())->id);
    book.setToday(day("2027-06-03"));
    OutlookMemo memo;
    return {outlookOf(book, memo), day("2027-06-07")};
}

Ground batchOf(int bars) {
    auto maker = yardWith(1);
    for (int bar = 2; bar <= std::min(bars, kMostBars); ++bar) maker.bar("701", bar, 10, "Big");
    return {maker.outlook(), day("2027-05-26")};
}

Day catchDayOf(const Outlook& outlook) {
    for (const auto& side : outlook.nucs.sides)
        for (const auto& round : side.rounds) return round.catchDay;
    return day("2027-06-20");
}

Ground groundFor(PaperKind kind, int size) {
    if (size == Example) return exampleGround();
    switch (kind) {
        case PaperKind::Week:
        case PaperKind::Clips:
            return withTasks(size);
        case PaperKind::Placements:
        case PaperKind::NucCards:
            return {placed(size).outlook(), day("2027-05-30")};
        case PaperKind::Catches: {
            const auto outlook = placed(size).outlook();
            return {outlook, catchDayOf(*outlook)};
        }
        case PaperKind::Recells:
            return {failed(size).outlook(), day("2027-06-20")};
        case PaperKind::Stocking:
            return {yardWith(size, false).outlook(), day("2027-05-26")};
        case PaperKind::BatchCard:
            return batchOf(size);
        case PaperKind::Loading:
        case PaperKind::Order:
        case PaperKind::Year:
            break;
    }
    return {placed(size).outlook(), day("2027-05-30")};
}

struct PaperCase {
    PaperKind kind;
    int size;
};
std::string nameOf(const PaperCase& c) {
    const std::string size = c.size == None      ? "none"
                             : c.size == Example ? "example"
                             : c.size == One     ? "one"
                                                 : "many";
    return std::string(token(c.kind)) + "_" + size;
}
void PrintTo(const PaperCase& c, std::ostream* out) { *out << nameOf(c); }

std::vector<PaperCase> allCases() {
    std::vector<PaperCase> all;
    for (std::size_t i = 0; i < kTokenCount<PaperKind>; ++i)
        for (const int size : {None, One, Example, Many})
            all.push_back({static_cast<PaperKind>(i), size});
    return all;
}

bool isText(const Mark& mark) {
    return (mark.shape == Mark::Shape::Text || mark.shape == Mark::Shape::WhiteText) &&
           !mark.text.isEmpty();
}

QString wordsOf(const Page& page) {
    QStringList words;
    for (const auto& mark : page.marks)
        if (isText(mark)) words += mark.text;
    return words.join(u'\n');
}

/// A page in black and white, a dot a point, as it is painted while the screen is dark.
QImage painted(const Page& page, const PaperForm& form, const PaperRuler& ruler) {
    const auto before = QApplication::palette();
    QPalette dark;
    for (const auto role : {QPalette::Window, QPalette::Base}) dark.setColor(role, Qt::black);
    for (const auto role : {QPalette::WindowText, QPalette::Text}) dark.setColor(role, Qt::white);
    QApplication::setPalette(dark);
    QImage image(sizeOf(form).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintPage(painter, page, ruler);
    painter.end();
    QApplication::setPalette(before);
    return image;
}

struct Ink {
    int inside = 0;
    int outside = 0;
    int coloured = 0;
};
/// Dots that are not white, within these places or not.
Ink inkOf(const QImage& image, const std::vector<QRectF>& places) {
    Ink ink;
    for (int y = 0; y < image.height(); ++y) {
        const auto* line = reinterpret_cast<const QRgb*>(image.constScanLine(y));
        for (int x = 0; x < image.width(); ++x) {
            const QRgb dot = line[x];
            if ((dot & 0xffffff) == 0xffffff) continue;
            const int high = std::max({qRed(dot), qGreen(dot), qBlue(dot)});
            const int low = std::min({qRed(dot), qGreen(dot), qBlue(dot)});
            ink.coloured += high - low > 2;
            const bool isIn = std::any_of(places.begin(), places.end(), [&](const QRectF& place) {
                return place.adjusted(-1, -1, 1, 1).contains(QRectF(x, y, 1, 1));
            });
            ++(isIn ? ink.inside : ink.outside);
        }
    }
    return ink;
}

class PaperSizes : public ::testing::TestWithParam<PaperCase> {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        ground_ = groundFor(GetParam().kind, GetParam().size);
        PaperWish wish;
        wish.choice.kind = GetParam().kind;
        wish.day = ground_.on;
        if (!ground_.outlook->batches.empty())
            wish.batch = ground_.outlook->batches.front()->batch->id;
        const auto& orders = ground_.outlook->snapshot.all<Order>();
        if (!orders.empty()) wish.order = (*orders.begin())->id;
        auto made = dayPaper(ground_.outlook, wish);
        isRefused_ = !made;
        if (isRefused_) return;
        paper_ = std::move(made).value();
        pages_ = paper_.pages(paper_.form, ruler_);
        labels_ = wish.choice.labels;
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }

    [[nodiscard]] bool isLabels() const { return GetParam().kind == PaperKind::NucCards; }
    [[nodiscard]] std::vector<QRectF> places() const {
        if (isLabels()) return labelPlaces(labels_, paper_.form);
        return {printable(paper_.form).adjusted(0, 0, 0, 3)};
    }
    /// How many different nucs or tasks "Q1", "Q2" ... are named, and how often any.
    [[nodiscard]] std::pair<int, int> named() const {
        static const QRegularExpression kNamed(QStringLiteral("\\bQ(\\d+)\\b"));
        std::set<QString> which;
        int times = 0;
        for (const auto& page : pages_) {
            auto found = kNamed.globalMatch(wordsOf(page));
            while (found.hasNext()) {
                which.insert(found.next().captured(1));
                ++times;
            }
        }
        return {static_cast<int>(which.size()), times};
    }
    /// Kinds with a line or a card for each of what is made above.
    [[nodiscard]] bool hasLineForEach() const {
        static const std::set<PaperKind> kKinds{
            PaperKind::Week,    PaperKind::Clips,   PaperKind::Placements, PaperKind::NucCards,
            PaperKind::Catches, PaperKind::Recells, PaperKind::Stocking};
        return kKinds.contains(GetParam().kind);
    }

    Ground ground_;
    DayPaper paper_;
    LabelGrid labels_;
    std::vector<Page> pages_;
    PaperRuler ruler_;
    bool isRefused_ = false;
};

TEST_P(PaperSizes, HasItsPagesItsWordsAndItsHeads) {
    const auto [kind, size] = GetParam();
    const bool needsMore =
        (kind == PaperKind::BatchCard && ground_.outlook->batches.empty()) ||
        (kind == PaperKind::Order && ground_.outlook->snapshot.all<Order>().empty());
    ASSERT_EQ(isRefused_, needsMore) << "without its batch or order it says so";
    if (isRefused_) return;
    if (hasLineForEach() && size != Example) {
        EXPECT_EQ(named().first, size) << "each is named";
        if (kind != PaperKind::Week) {
            EXPECT_EQ(named().second, size) << "and once";
        }
    }
    const bool isLong = size == Many && hasLineForEach();
    if (!isLong && kind != PaperKind::BatchCard && size != Example) {
        EXPECT_EQ(pages_.size(), 1U);
    }
    if (isLong) {
        EXPECT_GE(pages_.size(), 4U);
    }
    if (isLabels()) {
        const auto cards = static_cast<std::size_t>(std::max(size, 1));
        const auto each = labelPlaces(labels_, paper_.form).size();
        if (size != Example) {
            EXPECT_EQ(pages_.size(), (cards + each - 1) / each);
        }
        return;
    }
    const bool ofWeek = kind == PaperKind::Week || kind == PaperKind::Clips;
    const auto head = ofWeek ? sheet_text::week(isoWeekOf(ground_.on)) : paper_.title;
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        const auto words = wordsOf(pages_[i]);
        EXPECT_TRUE(words.contains(head)) << "page " << i + 1;
        const auto number =
            sheet_text::page(static_cast<int>(i) + 1, static_cast<int>(pages_.size()));
        if (pages_.size() > 1) {
            EXPECT_TRUE(words.contains(number)) << number.toStdString();
        }
        qreal lowest = 0;
        for (const auto& mark : pages_[i].marks)
            if (isText(mark)) lowest = std::max(lowest, mark.rect.bottom());
        if (i + 1 < pages_.size() && kind != PaperKind::Clips && kind != PaperKind::BatchCard) {
            EXPECT_GT(lowest, printable(paper_.form).bottom() * 0.75)
                << "no page is left half empty";
        }
    }
    EXPECT_GT(wordsOf(pages_.front()).size(), 20) << "also where there is nothing to do";
}

TEST_P(PaperSizes, PrintsBlackOnWhiteInsideTheMarginsAlsoFromADarkScreen) {
    if (isRefused_) return;
    const auto image = painted(pages_.back(), paper_.form, ruler_);
    const auto ink = inkOf(image, places());
    EXPECT_EQ(ink.outside, 0) << "dots of ink outside the margins";
    EXPECT_EQ(ink.coloured, 0);
    EXPECT_GT(ink.inside, 100);
    EXPECT_LT(ink.inside, image.width() * image.height() / 3) << "most of it is white";
}

INSTANTIATE_TEST_SUITE_P(Papers, PaperSizes, ::testing::ValuesIn(allCases()),
                         [](const auto& test) { return nameOf(test.param); });

struct GridCase {
    const char* name;
    LabelGrid grid;
    PaperForm form;
};
void PrintTo(const GridCase& c, std::ostream* out) { *out << c.name; }

LabelGrid gridOf(int columns, int rows, double margin, double gap) {
    LabelGrid grid{columns, rows, margin, margin, margin, margin, gap, gap};
    grid.cutLines = false;
    return grid;
}

class NucLabels : public ::testing::TestWithParam<GridCase> {};

TEST_P(NucLabels, HoldAllTheirInk) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto ground = groundFor(PaperKind::NucCards, 12);
    PaperWish wish;
    wish.choice.kind = PaperKind::NucCards;
    wish.choice.labels = GetParam().grid;
    wish.choice.form = GetParam().form;
    wish.day = ground.on;
    const auto made = dayPaper(ground.outlook, wish);
    ASSERT_TRUE(made) << made.error().text;
    const PaperRuler ruler;
    const auto pages = made.value().pages(made.value().form, ruler);
    const auto places = labelPlaces(GetParam().grid, made.value().form);
    EXPECT_EQ(pages.size(), (12 + places.size() - 1) / places.size());
    QString words;
    for (const auto& page : pages) {
        words += wordsOf(page) + u'\n';
        for (const auto& mark : page.marks) {
            const auto holds = [&](const QRectF& place) { return place.contains(mark.rect); };
            EXPECT_EQ(std::count_if(places.begin(), places.end(), holds), 1)
                << mark.text.toStdString();
        }
    }
    for (int i = 1; i <= 12; ++i)
        EXPECT_TRUE(words.contains(QStringLiteral("Q%1").arg(i))) << "each has its name";
    EXPECT_TRUE(words.contains(QStringLiteral("701"))) << "what went in";
    const auto ink = inkOf(painted(pages.front(), made.value().form, ruler), places);
    EXPECT_EQ(ink.outside, 0);
    EXPECT_GT(ink.inside, 100);
    QLocale::setDefault(QLocale::c());
}

INSTANTIATE_TEST_SUITE_P(Sheets, NucLabels,
                         ::testing::Values(GridCase{"Whole", gridOf(1, 1, 15, 0), Paper::A4},
                                           GridCase{"Usual", gridOf(2, 4, 8, 4), Paper::A4},
                                           GridCase{"Small", gridOf(3, 8, 0, 0), Paper::A4},
                                           GridCase{"Smallest", gridOf(6, 16, 6, 2), Paper::A4},
                                           GridCase{"Letter", gridOf(2, 5, 12, 3), Paper::Letter},
                                           GridCase{
                                               "Across", gridOf(4, 3, 10, 5), {Paper::A4, true}},
                                           GridCase{"Narrow", gridOf(6, 2, 5, 1), Paper::A4}),
                         [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace tenthday
