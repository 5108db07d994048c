#include "chart/picture.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <set>

#include "support/days.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

class Picture : public ::testing::Test {
protected:
    QString path(const char* name) const { return dir.filePath(QString::fromUtf8(name)); }
    static QByteArray bytesOf(const QString& file) {
        QFile opened(file);
        return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
    }
    Result<void> draw(const char* name) {
        options.chosenDay = day("2027-06-17");
        options.selected = sampleBatch("18");
        return renderPicture(*sampleOutlook(), options, path(name));
    }

    QTemporaryDir dir;
    PictureOptions options;
};

TEST_F(Picture, PngHasTheWishedSizeAndManyColours) {
    options.size = {1000, 600};
    const auto done = draw("chart.png");
    ASSERT_TRUE(done.ok()) << done.error().text;
    const QImage image(path("chart.png"));
    EXPECT_EQ(image.size(), QSize(1000, 600));
    std::set<QRgb> colours;
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width(); x += 3) colours.insert(image.pixel(x, y));
    EXPECT_GT(colours.size(), 30U);
}

TEST_F(Picture, SvgHasNoClipNoPatternAndNoPixmap) {
    ASSERT_TRUE(draw("chart.svg").ok());
    const auto svg = bytesOf(path("chart.svg"));
    EXPECT_GT(svg.size(), 20000);
    EXPECT_TRUE(svg.contains(">31 cells<")) << "text stays text";
    for (const char* word : {"<image", "clipPath", "clip-path", "<pattern", "url("})
        EXPECT_FALSE(svg.contains(word)) << word;
}

TEST_F(Picture, PdfIsWrittenWithText) {
    ASSERT_TRUE(draw("chart.pdf").ok());
    const auto pdf = bytesOf(path("chart.pdf"));
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    EXPECT_GT(pdf.size(), 10000);
    EXPECT_TRUE(pdf.contains("/Font"));
}

TEST_F(Picture, PaperStaysWhiteOnADarkDesktop) {
    const auto before = QApplication::palette();
    QApplication::setPalette(widgetPalette(Look::Dark));
    options.look = Look::Paper;
    ASSERT_TRUE(draw("paper.png").ok());
    QApplication::setPalette(before);
    const QImage image(path("paper.png"));
    EXPECT_FLOAT_EQ(image.pixelColor(2, 2).lightnessF(), 1.0F);
    EXPECT_FLOAT_EQ(image.pixelColor(2, image.height() - 3).lightnessF(), 1.0F);
}

TEST_F(Picture, ShowsOnlyTheWishedDays) {
    options.days = DayWindow{day("2027-06-01"), day("2027-06-14")};
    ASSERT_TRUE(draw("days.svg").ok());
    const auto svg = bytesOf(path("days.svg"));
    EXPECT_TRUE(svg.contains(">June<"));
    EXPECT_FALSE(svg.contains(">July<"));
}

TEST_F(Picture, APosterHasItsPaperItsHeadAndALegend) {
    for (const auto& [poster, mediaBox] :
         {std::pair{Poster::A3, "1190 842"}, std::pair{Poster::A4, "842 595"}}) {
        options.poster = poster;
        options.look = Look::Dark;  // the poster is for paper all the same
        ASSERT_TRUE(draw("poster.pdf").ok());
        const auto pdf = bytesOf(path("poster.pdf"));
        const auto box = pdf.indexOf("/MediaBox");
        ASSERT_GE(box, 0);
        const auto sides = pdf.mid(box, 60).split('[').value(1).split(']').value(0).split(' ');
        ASSERT_GE(sides.size(), 4);
        const auto wanted = QByteArray(mediaBox).split(' ');
        EXPECT_NEAR(sides[2].toDouble(), wanted[0].toDouble(), 1.5) << mediaBox;
        EXPECT_NEAR(sides[3].toDouble(), wanted[1].toDouble(), 1.5) << mediaBox;
        ASSERT_TRUE(draw("poster.svg").ok());
        EXPECT_TRUE(bytesOf(path("poster.svg")).contains(">open cells<"));
        ASSERT_TRUE(draw("poster.png").ok());
        const QImage image(path("poster.png"));
        EXPECT_FLOAT_EQ(image.pixelColor(2, 2).lightnessF(), 1.0F);
    }
}

TEST_F(Picture, LanesWithoutRoomAreNamedAndNoneIsCut) {
    options.size = {1000, 420};
    ASSERT_TRUE(draw("low.svg").ok());
    const auto low = bytesOf(path("low.svg"));
    EXPECT_TRUE(low.contains(">not in this picture: "));
    for (const char* word : {">below: ", ">Can promise"}) EXPECT_FALSE(low.contains(word)) << word;
    options.size = {1000, 1400};
    ASSERT_TRUE(draw("high.svg").ok());
    const auto high = bytesOf(path("high.svg"));
    EXPECT_FALSE(high.contains("not in this picture"));
    EXPECT_TRUE(high.contains(">Can promise"));
}

struct BadPicture {
    const char* name;
    const char* file;
    QSize size;
    std::optional<DayWindow> days;
    const char* says;
};
void PrintTo(const BadPicture& c, std::ostream* out) { *out << c.name; }
class BadPictures : public Picture, public ::testing::WithParamInterface<BadPicture> {};

TEST_P(BadPictures, AreRefusedInOneLine) {
    const auto& bad = GetParam();
    options.size = bad.size;
    options.days = bad.days;
    const auto done = draw(bad.file);
    ASSERT_FALSE(done.ok());
    EXPECT_NE(done.error().text.find(bad.says), std::string::npos) << done.error().text;
    EXPECT_EQ(done.error().text.find('\n'), std::string::npos);
    EXPECT_FALSE(QFile::exists(path(bad.file)));
}

INSTANTIATE_TEST_SUITE_P(
    Each, BadPictures,
    ::testing::Values(
        BadPicture{"UnknownSuffix", "chart.gif", {800, 600}, {}, "a picture is .png, .svg or .pdf"},
        BadPicture{"NoFolder", "none/chart.png", {800, 600}, {}, "cannot be written"},
        BadPicture{"TooSmall", "chart.png", {800, 10}, {}, "each side must be"},
        BadPicture{"TooLarge", "chart.png", {800, 99999}, {}, "each side must be"},
        BadPicture{"NoDays",
                   "chart.png",
                   {800, 600},
                   DayWindow{day("2027-06-02"), day("2027-06-01")},
                   "no day to show"}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace tenthday::test
