// Every paper of a day: on each form inside the margins, with the pages and words it should have,
// white also where the screen is dark.
#include "sheets/day_papers.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPalette>
#include <QProcess>
#include <QTemporaryDir>

#include "exchange/example.h"
#include "records/change_set.h"
#include "sheets/page_painter.h"
#include "support/days.h"
#include "support/ids.h"
#include "tasks/given.h"
#include "tasks/week.h"

namespace tenthday {
namespace {

using test::day;

Snapshot exampleBook() {
    Snapshot snapshot = applied(Snapshot{}, exampleContent()).value();
    snapshot.setSeason((*snapshot.all<Season>().begin())->id);
    snapshot.setToday(day("2027-06-03"));
    return snapshot;
}

OutlookPtr outlookFor(const Snapshot& snapshot) {
    OutlookMemo memo;
    return outlookOf(snapshot, memo);
}

QString wordsOf(const std::vector<Page>& pages) {
    QStringList words;
    for (const auto& page : pages)
        for (const auto& mark : page.marks) words += mark.text;
    return words.join(u'\n');
}

class DayPapers : public ::testing::TestWithParam<PaperKind> {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        outlook_ = outlookFor(exampleBook());
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }

    PaperWish wish(Day on, PaperForm form = {}) {
        PaperWish wish;
        wish.choice.kind = GetParam();
        wish.choice.form = form;
        wish.day = on;
        if (!outlook_->batches.empty()) wish.batch = outlook_->batches.front()->batch->id;
        const auto& orders = outlook_->snapshot.all<Order>();
        if (!orders.empty()) wish.order = (*orders.begin())->id;
        return wish;
    }
    [[nodiscard]] bool canMake() const {
        return GetParam() != PaperKind::Order || !outlook_->snapshot.all<Order>().empty();
    }

    OutlookPtr outlook_;
    PaperRuler ruler_;
};

TEST_P(DayPapers, NothingStandsOutsideTheMarginsOnAnyFormAndDay) {
    if (!canMake()) return;
    for (const auto& form : {PaperForm{Paper::A4}, PaperForm{Paper::Letter, true},
                             PaperForm{Paper::A5}, PaperForm{Paper::A4, false, true}})
        for (Day on = day("2027-05-20"); on < day("2027-07-10"); on += Days{5}) {
            const auto paper = dayPaper(outlook_, wish(on, form));
            ASSERT_TRUE(paper) << paper.error().text;
            const auto& made = paper.value();
            const auto area = GetParam() == PaperKind::NucCards
                                  ? QRectF(QPointF(0, 0), sizeOf(made.form))
                                  : printable(made.form).adjusted(-0.5, -0.5, 0.5, 3);
            const auto pages = made.pages(made.form, ruler_);
            EXPECT_GE(pages.size(), 1U);
            for (const auto& page : pages) {
                EXPECT_FALSE(page.marks.empty());
                for (const auto& mark : page.marks)
                    EXPECT_TRUE(area.contains(mark.rect))
                        << toText(on) << ": " << mark.text.toStdString();
            }
        }
}

TEST_P(DayPapers, ThePdfHasThePagesAndTheWords) {
    if (!canMake()) return;
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("paper.pdf"));
    const auto made = dayPaper(outlook_, wish(day("2027-06-07"))).value();
    const auto pages = made.pages(made.form, ruler_);
    ASSERT_TRUE(writePdf(path, pages, made.form, made.title, ruler_));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), path, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const auto text = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_EQ(text.count(QChar(u'\f')), static_cast<qsizetype>(pages.size()));
    for (const auto& page : pages)
        for (const auto& mark : page.marks)
            for (const auto& word : mark.text.split(u' ', Qt::SkipEmptyParts))
                EXPECT_TRUE(text.contains(word)) << word.toStdString();
    QProcess info;
    info.start(QStringLiteral("pdfinfo"), {path});
    ASSERT_TRUE(info.waitForFinished());
    const auto facts = QString::fromUtf8(info.readAllStandardOutput());
    EXPECT_TRUE(facts.contains(QStringLiteral("Pages:           %1\n").arg(pages.size())))
        << facts.toStdString();
}

TEST_P(DayPapers, ADarkScreenPrintsBlackOnWhite) {
    if (!canMake()) return;
    const auto before = QApplication::palette();
    QPalette dark;
    dark.setColor(QPalette::Window, Qt::black);
    dark.setColor(QPalette::Base, Qt::black);
    dark.setColor(QPalette::WindowText, Qt::white);
    dark.setColor(QPalette::Text, Qt::white);
    QApplication::setPalette(dark);
    const auto made = dayPaper(outlook_, wish(day("2027-06-07"))).value();
    QImage image((sizeOf(made.form) * 2).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.scale(2, 2);
        paintPage(painter, made.pages(made.form, ruler_).front(), ruler_);
    }
    QApplication::setPalette(before);
    int dark_ = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const auto pixel = image.pixelColor(x, y);
            EXPECT_LE(std::max({pixel.red(), pixel.green(), pixel.blue()}) -
                          std::min({pixel.red(), pixel.green(), pixel.blue()}),
                      2)
                << "a colour at " << x << "," << y;
            dark_ += pixel.lightness() < 100;
        }
    EXPECT_EQ(image.pixelColor(0, 0), QColor(Qt::white));
    EXPECT_GT(dark_, 500) << "there is black on it";
    EXPECT_LT(dark_, image.width() * image.height() / 4) << "and most is white";
}

INSTANTIATE_TEST_SUITE_P(Kinds, DayPapers,
                         ::testing::Values(PaperKind::Week, PaperKind::Clips, PaperKind::Placements,
                                           PaperKind::Catches, PaperKind::Recells,
                                           PaperKind::Stocking, PaperKind::Loading,
                                           PaperKind::NucCards, PaperKind::BatchCard,
                                           PaperKind::Order, PaperKind::Year),
                         [](const auto& test) { return std::string(token(test.param)); });

class OnePaper : public ::testing::Test {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        book_ = exampleBook();
        outlook_ = outlookFor(book_);
    }
    void TearDown() override { QLocale::setDefault(QLocale::c()); }
    QString words(PaperKind kind, std::string_view on, auto&& change) {
        PaperWish wish;
        wish.choice.kind = kind;
        wish.day = day(on);
        change(wish);
        const auto made = dayPaper(outlook_, wish);
        if (!made) return QString::fromStdString(made.error().text);
        return wordsOf(made.value().pages(made.value().form, ruler_));
    }
    QString words(PaperKind kind, std::string_view on) {
        return words(kind, on, [](auto&) {});
    }
    Snapshot book_;
    OutlookPtr outlook_;
    PaperRuler ruler_;
};

TEST_F(OnePaper, TheCatchListNamesEveryNucOfTheDaysCatches) {
    int found = 0;
    for (const auto& task : tasksOf(*outlook_)) {
        if (task.key.rule != TaskRule::CatchQueens || task.done) continue;
        const auto text = words(PaperKind::Catches, toText(task.day));
        for (const auto* side : task.sides) {
            EXPECT_TRUE(text.contains(QString::fromStdString(side->box->label)));
            ++found;
        }
    }
    EXPECT_GT(found, 0);
}

TEST_F(OnePaper, ANucsCardSaysWhatWentInWhenToLookAndWhenNotToOpen) {
    const auto* next = [&]() -> const SideRound* {
        for (const auto& side : outlook_->nucs.sides)
            for (const auto& round : side.rounds)
                if (round.transferDay > day("2027-06-03")) return &round;
        return nullptr;
    }();
    ASSERT_NE(next, nullptr);
    const auto text = words(PaperKind::NucCards, toText(next->transferDay));
    EXPECT_TRUE(text.contains(QStringLiteral("goes in on")));
    EXPECT_TRUE(text.contains(QStringLiteral("Do not open from")));
    EXPECT_TRUE(text.contains(QStringLiteral("Look: from")));
}

TEST_F(OnePaper, ASheetOfOnePersonHoldsTheirTasksOnly) {
    const auto week = IsoWeek{2027, 23};
    auto tasks = ofWeek(tasksOf(*outlook_), week);
    ASSERT_GT(tasks.size(), 2U);
    const auto given =
        giveTasks(book_, {tasks[1].task}, " AK ", [] { return test::id<TaskGiven>(9001).uuid; });
    ASSERT_TRUE(given) << given.error().text;
    outlook_ = outlookFor(applied(book_, given.value()).value());
    const auto mine = words(PaperKind::Week, toText(daysOf(week).first),
                            [](PaperWish& wish) { wish.choice.who = QStringLiteral("ak"); });
    EXPECT_TRUE(mine.contains(QStringLiteral("for AK")));
    EXPECT_TRUE(mine.contains(QStringLiteral("given to nobody")));
    const auto all = words(PaperKind::Week, toText(daysOf(week).first));
    EXPECT_GT(all.size(), mine.size());
    EXPECT_TRUE(all.contains(QStringLiteral("for AK")));
}

TEST_F(OnePaper, ThisWeekAndTheNextComeInOneStep) {
    const auto text = words(PaperKind::Week, "2027-06-07",
                            [](PaperWish& wish) { wish.choice.nextWeekToo = true; });
    EXPECT_TRUE(text.contains(QStringLiteral("Week 23")));
    EXPECT_TRUE(text.contains(QStringLiteral("Week 24")));
}

TEST_F(OnePaper, TheTopOfTheSheetHasTheHoursOfItsDays) {
    EXPECT_TRUE(words(PaperKind::Week, "2027-06-07").contains(QStringLiteral("about")));
    EXPECT_TRUE(words(PaperKind::Week, "2027-06-07").contains(QStringLiteral("Hours:")));
}

TEST_F(OnePaper, ABatchCardNeedsItsBatchAndLabelsASheet) {
    EXPECT_EQ(words(PaperKind::BatchCard, "2027-06-07"),
              QStringLiteral("a batch card needs a batch"));
    EXPECT_TRUE(words(PaperKind::NucCards, "2027-06-07", [](PaperWish& wish) {
                    wish.choice.labels.columns = 12;
                }).contains(QStringLiteral("30 by 15 mm")));
}

}  // namespace
}  // namespace tenthday
