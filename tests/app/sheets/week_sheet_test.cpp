// The week's sheet: what stands on it, and that it stands on the paper.
#include <gtest/gtest.h>

#include <QApplication>
#include <QProcess>
#include <QTemporaryDir>
#include <set>

#include "exchange/example.h"
#include "records/change_set.h"
#include "screen_text/sheet_text.h"
#include "sheets/page_painter.h"
#include "sheets/preview.h"
#include "sheets/week_layout.h"
#include "support/days.h"
#include "support/ids.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

OutlookPtr exampleOutlook() {
    Snapshot snapshot = applied(Snapshot{}, exampleContent()).value();
    snapshot.setSeason((*snapshot.all<Season>().begin())->id);
    snapshot.setToday(day("2027-06-03"));
    OutlookMemo memo;
    return outlookOf(snapshot, memo);
}

PagesFor weekPages() {
    return [week = weekContent(*exampleOutlook(), {2027, 22})](const PaperForm& form,
                                                               const PaperRuler& ruler) {
        return layOutWeek(week, form, ruler);
    };
}

class WeekSheet : public ::testing::TestWithParam<Paper> {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        outlook_ = exampleOutlook();
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }

    std::vector<Page> pagesOf(IsoWeek week) {
        return layOutWeek(weekContent(*outlook_, week), GetParam(), ruler_);
    }
    std::vector<IsoWeek> weeks() {
        std::vector<IsoWeek> all;
        for (Day day = outlook_->season.first; day <= outlook_->season.last; day += Days{7})
            all.push_back(isoWeekOf(day));
        return all;
    }

    OutlookPtr outlook_;
    PaperRuler ruler_;
};

TEST_P(WeekSheet, NothingStandsOutsideTheMarginsInAnyWeek) {
    const auto area = printable(GetParam()).adjusted(-0.1, -0.1, 0.1, 0.1);
    for (const auto& week : weeks())
        for (const auto& page : pagesOf(week))
            for (const auto& mark : page.marks) {
                auto rect = mark.rect;
                if (mark.shape == Mark::Shape::Text || mark.shape == Mark::Shape::WhiteText)
                    rect.setBottom(rect.bottom() + 3);  // letters that go below the line
                EXPECT_TRUE(area.contains(rect) ||
                            (rect.height() == 0 && area.intersects(rect.adjusted(0, -0.1, 0, 0.1))))
                    << toText(week) << ": " << mark.text.toStdString() << " " << rect.left() << ","
                    << rect.top() << " to " << rect.right() << "," << rect.bottom();
            }
}

TEST_P(WeekSheet, TextsDoNotCollide) {
    for (const auto& week : weeks())
        for (const auto& page : pagesOf(week)) {
            std::vector<const Mark*> texts;
            for (const auto& mark : page.marks)
                if (mark.shape == Mark::Shape::Text || mark.shape == Mark::Shape::WhiteText)
                    texts.push_back(&mark);
            for (std::size_t i = 0; i < texts.size(); ++i)
                for (std::size_t k = i + 1; k < texts.size(); ++k)
                    EXPECT_FALSE(texts[i]->rect.intersects(texts[k]->rect.adjusted(0, 1, 0, 0)))
                        << toText(week) << ": " << texts[i]->text.toStdString() << " / "
                        << texts[k]->text.toStdString();
        }
}

TEST_P(WeekSheet, EveryRowStandsOnceWithItsNumber) {
    for (const auto& week : weeks()) {
        std::vector<int> numbers;
        const auto tasks = within(tasksOf(*outlook_), daysOf(week));
        std::size_t ticks = 0;
        for (const auto& page : pagesOf(week))
            for (const auto& mark : page.marks)
                ticks += mark.shape == Mark::Shape::Frame &&
                         std::abs(mark.rect.width() - millimetres(7)) < 0.01 &&
                         std::abs(mark.rect.height() - millimetres(7)) < 0.01;
        EXPECT_EQ(ticks, tasks.size()) << toText(week);
        const auto content = weekContent(*outlook_, week);
        int expected = 0;
        for (const auto& day : content.days)
            for (const auto& block : day.blocks)
                for (const auto& row : block.rows) EXPECT_EQ(row.number, ++expected);
        EXPECT_EQ(static_cast<std::size_t>(expected), tasks.size());
    }
}

TEST_P(WeekSheet, RowsAreTenMillimetresOrMoreAndStandWholeOnOnePage) {
    for (const auto& week : weeks())
        for (const auto& page : pagesOf(week)) {
            std::vector<const Mark*> ticks;
            for (const auto& mark : page.marks)
                if (mark.shape == Mark::Shape::Frame &&
                    std::abs(mark.rect.width() - millimetres(7)) < 0.01 &&
                    std::abs(mark.rect.height() - millimetres(7)) < 0.01)
                    ticks.push_back(&mark);
            for (std::size_t i = 0; i < ticks.size(); ++i) {
                if (i > 0) {
                    EXPECT_GE(ticks[i]->rect.top() - ticks[i - 1]->rect.top(),
                              millimetres(10) - 0.01)
                        << toText(week);
                }
                // The row's words stand beside its box, on the same page.
                const bool beside =
                    std::any_of(page.marks.begin(), page.marks.end(), [&](const Mark& mark) {
                        return mark.type == Print::Strong && !mark.text.isEmpty() &&
                               mark.rect.left() > ticks[i]->rect.right() &&
                               mark.rect.bottom() > ticks[i]->rect.top() &&
                               mark.rect.top() < ticks[i]->rect.bottom();
                    });
                EXPECT_TRUE(beside) << toText(week);
            }
        }
}

TEST_P(WeekSheet, ThePdfReadsAsTheContentInOrder) {
    QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("week.pdf"));
    const IsoWeek week{2027, 23};
    const auto pages = pagesOf(week);
    ASSERT_TRUE(writePdf(path, pages, GetParam(), sheet_text::week(week), ruler_).ok());
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), path, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const auto text = QString::fromUtf8(reader.readAllStandardOutput()).simplified();
    EXPECT_EQ(text.count(QStringLiteral("page ")), static_cast<int>(pages.size()));
    EXPECT_EQ(text.count(QStringLiteral("Week 23")), static_cast<int>(pages.size()));
    const auto content = weekContent(*outlook_, week);
    for (const auto& day : content.days) {
        EXPECT_TRUE(text.contains(sheet_text::head(day.day, {}))) << toText(day.day);
        for (const auto& block : day.blocks)
            for (const auto& row : block.rows)
                for (const auto& word : row.what.split(u' '))
                    EXPECT_TRUE(text.contains(word)) << word.toStdString();
    }
    for (const auto& caution : content.cautions)
        EXPECT_TRUE(text.contains(caution.section(u' ', 0, 2)));

    QProcess info;
    info.start(QStringLiteral("pdfinfo"), {path});
    ASSERT_TRUE(info.waitForFinished());
    const auto facts = QString::fromUtf8(info.readAllStandardOutput());
    const char* size = GetParam() == Paper::A4   ? "595.2"
                       : GetParam() == Paper::A5 ? "419.5"
                                                 : "612";
    EXPECT_TRUE(
        facts.contains(QString::fromLatin1(size)) ||
        facts.contains(GetParam() == Paper::A4 ? QStringLiteral("595") : QStringLiteral("420")))
        << facts.toStdString();
}

INSTANTIATE_TEST_SUITE_P(Papers, WeekSheet, ::testing::Values(Paper::A4, Paper::Letter, Paper::A5),
                         [](const auto& test) { return std::string(token(test.param)); });

class PrintedOn : public ::testing::TestWithParam<PaperForm> {};

/// Whatever the printer was set to, it gets whole sheets of the form that was chosen.
TEST_P(PrintedOn, HasTheFormThatWasChosen) {
    const QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("week.pdf")));
    printer.setPageSize(QPageSize(QPageSize::A3));
    printer.setPageOrientation(QPageLayout::Landscape);
    EXPECT_TRUE(printOn(printer, GetParam(), weekPages()));
    EXPECT_EQ(printer.pageLayout().orientation(),
              GetParam().landscape ? QPageLayout::Landscape : QPageLayout::Portrait);
    const auto size = printer.pageLayout().fullRectPoints().size();
    const auto wanted = sheetSize(GetParam());
    EXPECT_NEAR(size.width(), wanted.width(), 1);
    EXPECT_NEAR(size.height(), wanted.height(), 1);
}

INSTANTIATE_TEST_SUITE_P(Forms, PrintedOn,
                         ::testing::Values(PaperForm{Paper::A4}, PaperForm{Paper::Letter, true},
                                           PaperForm{Paper::A5, false, true}),
                         [](const auto& test) { return std::string(token(test.param.paper)); });

TEST(PrintWeek, SaysWhenTheFileCannotBeWritten) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(QStringLiteral("/nowhere/at/all/week.pdf"));
    EXPECT_FALSE(printOn(printer, Paper::A4, weekPages()));
}

TEST(WeekContent, EachDayOfTenYearsIsOnExactlyOneSheet) {
    const auto outlook = test::SeasonMaker("2027-06-01").outlook();
    Day next = daysOf(isoWeekOf(day("2020-01-01"))).first;
    std::set<std::string> names;
    while (next < day("2030-01-07")) {
        const auto week = isoWeekOf(next);
        EXPECT_TRUE(names.insert(toText(week)).second);
        const auto content = weekContent(*outlook, week);
        ASSERT_EQ(content.days.size(), 7U);
        for (const auto& is : content.days) {
            EXPECT_EQ(is.day, next);
            EXPECT_TRUE(is.blocks.empty());
            next += Days{1};
        }
    }
    EXPECT_TRUE(names.contains("2020-W53"));
    EXPECT_TRUE(names.contains("2026-W53"));
    EXPECT_FALSE(names.contains("2027-W53"));
}

TEST(WeekContent, AWeekWithNothingSaysSoSevenTimes) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto outlook = test::SeasonMaker("2027-06-01").outlook();
    const PaperRuler ruler;
    const auto pages = layOutWeek(weekContent(*outlook, {2026, 53}), Paper::A4, ruler);
    ASSERT_EQ(pages.size(), 1U);
    int nothing = 0;
    for (const auto& mark : pages[0].marks) nothing += mark.text == sheet_text::nothing();
    EXPECT_EQ(nothing, 7);
    QLocale::setDefault(QLocale::c());
}

TEST(WeekSheetOfLongWords, CutsNoTaskAndStaysOnThePaper) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    test::SeasonMaker maker("2027-06-01");
    const std::string wide(900, 'W');
    maker.yard(wide).box(wide, wide, "3+3", "2027-04-01");
    std::string text;
    for (int i = 0; i < 500; ++i) text += "w" + std::to_string(i) + "q ";
    ChangeSet changes;
    changes.add(
        OwnTask{test::id<OwnTask>(7), 1, day("2027-06-10"), maker.yardId(wide), text, true});
    auto book = *maker.snapshot().all<Book>().begin();
    auto named = *book;
    named.label = wide;
    changes.edit(book, named);
    OutlookMemo memo;
    const auto outlook = outlookOf(applied(maker.snapshot(), changes).value(), memo);
    auto content = weekContent(*outlook, {2027, 23});
    LookGrid::Box box{QString::fromStdString(wide), {QStringLiteral("A"), QStringLiteral("B")}};
    content.days[4].blocks = {{day("2027-06-11"), QStringLiteral("Mill"), {}, {}, {}}};
    content.days[4].blocks[0].rows.resize(1);
    content.days[4].blocks[0].rows[0].grid.boxes = {box, box, box};
    const PaperRuler ruler;
    for (const auto paper : {Paper::A4, Paper::Letter, Paper::A5}) {
        const auto area = printable(paper).adjusted(-0.1, -0.1, 0.1, 0.1);
        QString all;
        for (const auto& page : layOutWeek(content, paper, ruler))
            for (const auto& mark : page.marks) {
                EXPECT_TRUE(mark.rect.height() == 0 || area.contains(mark.rect))
                    << token(paper) << " " << mark.text.toStdString();
                all += mark.text + u' ';
            }
        for (int i = 0; i < 500; ++i)
            EXPECT_TRUE(all.contains(QStringLiteral("w%1q").arg(i))) << token(paper) << " " << i;
    }
    QLocale::setDefault(QLocale::c());
}

TEST(PaperRuler, SaysWhereALimitLeavesSomethingOut) {
    const PaperRuler ruler;
    const QString text = QStringLiteral("one two three four five six");
    const qreal room = ruler.width(QStringLiteral("one two "), Print::Text);
    const auto lines = ruler.atMost(2, text, Print::Text, room);
    ASSERT_EQ(lines.size(), 2);
    EXPECT_TRUE(lines.back().endsWith(QChar(0x2026)));
    for (const auto& line : lines) EXPECT_LE(ruler.width(line, Print::Text), room);
    EXPECT_EQ(ruler.atMost(9, text, Print::Text, room), ruler.lines(text, Print::Text, room));
}

TEST(PaperRuler, BreaksBetweenWordsAndOnlyThenWithinOne) {
    const PaperRuler ruler;
    const QString text = QStringLiteral("one two Donaudampfschifffahrtsgesellschaft");
    const qreal room = ruler.width(QStringLiteral("one two "), Print::Text);
    const auto lines = ruler.lines(text, Print::Text, room);
    ASSERT_GT(lines.size(), 2);
    EXPECT_EQ(lines[0], QStringLiteral("one two"));
    for (const auto& line : lines) EXPECT_LE(ruler.width(line, Print::Text), room);
    EXPECT_EQ(lines.join(QString()).remove(u' '), QString(text).remove(u' '));
    EXPECT_TRUE(ruler.lines({}, Print::Text, 10).isEmpty());
}

}  // namespace
}  // namespace tenthday
