#include "weather/weather_page.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/book/book_fixture.h"
#include "book/new_book.h"
#include "exchange/example.h"
#include "weather/days_model.h"
#include "weather/months_model.h"

namespace tenthday {
namespace {

using test::day;

class WeatherPageTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        show(exampleContent(), test::fixedOptions());
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }
    void show(const ChangeSet& content, const OpenOptions& options) {
        const auto path = at(QStringLiteral("book-%1.tenthday").arg(++books_));
        ASSERT_TRUE(createBook(path, content, test::fixedOptions()).ok());
        page_.reset();
        desk_ = Desk::open(path, options).value();
        page_ = std::make_unique<WeatherPage>(*desk_);
        page_->resize(1300, 660);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        page_->days().setFocus();
    }
    std::string text(const QTableView& table, int row, int column) {
        return table.model()->index(row, column).data().toString().toStdString();
    }
    void key(Qt::Key key) { QTest::keyClick(&page_->days(), key); }
    void press(QPushButton& button) { QTest::mouseClick(&button, Qt::LeftButton); }
    void choose(QTableView& table, int row, int column) {
        const auto index = table.model()->index(row, column);
        table.scrollTo(index);
        QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, table.visualRect(index).center());
    }
    void type(int row, int column, const QString& words) {
        auto& table = page_->months();
        table.setFocus();
        choose(table, row, column);
        QTest::keyClick(&table, Qt::Key_F2);
        auto* editor = table.findChild<QLineEdit*>();
        ASSERT_NE(editor, nullptr);
        editor->selectAll();
        QTest::keyClick(editor, Qt::Key_Delete);
        QTest::keyClicks(editor, words);
        QTest::keyClick(editor, Qt::Key_Return);
        QTest::qWait(1);  // the editor goes
    }
    Ptr<WeatherDay> rowOf(const char* on) {
        for (const auto& row : desk_->snapshot().all<WeatherDay>())
            if (row->date == day(on)) return row;
        return nullptr;
    }

    int books_ = 0;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<WeatherPage> page_;
};

TEST_F(WeatherPageTest, SaysWhichWeatherIsInUseAndWhatADayMustBeLike) {
    EXPECT_TRUE(page_->sourceText().contains(QStringLiteral("from 2007 to 2026")))
        << page_->sourceText().toStdString();
    EXPECT_EQ(text(page_->days(), 0, DaysModel::When), "Thu 3 Jun, today");
    EXPECT_EQ(text(page_->days(), 0, DaysModel::Maximum), "");
    EXPECT_EQ(text(page_->days(), 0, DaysModel::CountsAs), "not known");
    EXPECT_EQ(text(page_->days(), 13, DaysModel::When), "Fri 21 May");
    EXPECT_EQ(text(page_->days(), 13, DaysModel::CountsAs), "a flying day");
    EXPECT_EQ(text(page_->days(), 4, DaysModel::CountsAs), "no flying day");
}

TEST_F(WeatherPageTest, KeysSayWhetherQueensFlewEachAsOneEdit) {
    const auto rows = desk_->snapshot().all<WeatherDay>().size();
    key(Qt::Key_F);
    ASSERT_NE(rowOf("2027-06-03"), nullptr) << "a row is made where there is none";
    EXPECT_EQ(rowOf("2027-06-03")->flew, true);
    EXPECT_EQ(text(page_->days(), 0, DaysModel::Seen), "flew");
    key(Qt::Key_Down);
    key(Qt::Key_N);
    EXPECT_EQ(rowOf("2027-06-02")->flew, false);
    EXPECT_EQ(text(page_->days(), 1, DaysModel::CountsAs), "no flying day");
    key(Qt::Key_Up);
    key(Qt::Key_Delete);
    EXPECT_EQ(rowOf("2027-06-03"), nullptr) << "nothing is left to know of it";
    EXPECT_EQ(text(page_->days(), 0, DaysModel::Seen), "not said");
    EXPECT_EQ(desk_->snapshot().all<WeatherDay>().size(), rows);
    for (int i = 0; i < 3; ++i) ASSERT_TRUE(desk_->undo().ok());
    EXPECT_FALSE(desk_->canUndo());
    EXPECT_EQ(rowOf("2027-06-02")->flew, true);
    EXPECT_EQ(page_->days().currentIndex().row(), 0) << "the chosen day stays chosen";
}

TEST_F(WeatherPageTest, ButtonsSayTheSame) {
    choose(page_->days(), 1, DaysModel::Seen);
    EXPECT_FALSE(page_->flewButton().isEnabled()) << "that is what was said";
    press(page_->notButton());
    EXPECT_EQ(rowOf("2027-06-02")->flew, false);
    EXPECT_EQ(desk_->undoName()->subject, "flights on Wed 2 Jun");
    press(page_->unsaidButton());
    EXPECT_EQ(rowOf("2027-06-02")->flew, std::nullopt);
    EXPECT_NE(rowOf("2027-06-02")->tmaxC, std::nullopt);
    press(page_->flewButton());
    EXPECT_EQ(rowOf("2027-06-02")->flew, true);
}

TEST_F(WeatherPageTest, TheLimitIsFittedToTheTicksAndTakenByTheButton) {
    const auto fitted = page_->fitText().toStdString();
    EXPECT_EQ(fitted, "Your 29 ticks say 16.5 °C; against it: 1, against the 18.0 °C in force: 4.");
    press(page_->useFitButton());
    EXPECT_EQ(desk_->snapshot().facts()[Fact::FlyTmaxC], 16.5);
    EXPECT_EQ(page_->fitText().toStdString(),
              "Your 29 ticks agree best with the 16.5 °C in force; against it: 1.");
    EXPECT_FALSE(page_->useFitButton().isEnabled());
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(page_->fitText().toStdString(), fitted);
}

TEST_F(WeatherPageTest, WithoutARecordMonthsAreTypedAndUsed) {
    show(newBookContent(planFor("North Fell", day("2027-05-01"))), test::fixedOptions());
    EXPECT_TRUE(page_->sourceText().startsWith(QStringLiteral("No weather is reckoned with")));
    EXPECT_FALSE(page_->useFitButton().isVisible());
    EXPECT_TRUE(page_->fitText().contains(QStringLiteral("Once 20 days")));
    type(0, MonthsModel::RainDays, QStringLiteral("12"));
    EXPECT_FALSE(page_->told().isEmpty()) << "the maximum comes first";
    for (int month = 0; month < 12; ++month)
        type(month, MonthsModel::Maximum, QString::number(10 + month));
    type(4, MonthsModel::RainDays, QStringLiteral("11.5"));
    ASSERT_EQ(desk_->snapshot().all<ClimateMonth>().size(), 12U);
    EXPECT_EQ(text(page_->months(), 4, MonthsModel::Maximum), "14.0");
    EXPECT_EQ(text(page_->months(), 4, MonthsModel::RainDays), "11.5");
    EXPECT_TRUE(page_->sourceText().contains(QStringLiteral("usual weather of the months")));
    EXPECT_EQ(desk_->undoName()->subject, "usual weather of May");
    type(4, MonthsModel::Maximum, QStringLiteral("warm"));
    EXPECT_EQ(page_->told().toStdString(), "\"warm\" is no number.");
    type(4, MonthsModel::Maximum, QStringLiteral("75"));
    EXPECT_EQ(page_->told().toStdString(), "A mean maximum is from -60 to 59.9 °C.");
    EXPECT_EQ(text(page_->months(), 4, MonthsModel::Maximum), "14.0");
    for (int i = 0; i < 13; ++i) ASSERT_TRUE(desk_->undo().ok());
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(WeatherPageTest, ABookForReadingIsOnlyRead) {
    show(exampleContent(), test::fixedOptions(Access::ReadOnly));
    key(Qt::Key_Down);
    key(Qt::Key_N);
    EXPECT_EQ(rowOf("2027-06-02")->flew, true);
    EXPECT_FALSE(page_->notButton().isEnabled());
    EXPECT_FALSE(page_->useFitButton().isEnabled());
    choose(page_->months(), 4, MonthsModel::Maximum);
    QTest::keyClick(&page_->months(), Qt::Key_F2);
    EXPECT_EQ(page_->months().findChild<QLineEdit*>(), nullptr);
}

TEST_F(WeatherPageTest, AnUnreadableFileIsTold) {
    page_->importFrom(at(QStringLiteral("nothing.csv")));
    EXPECT_EQ(page_->importing(), nullptr);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("nothing.csv")))
        << page_->told().toStdString();
}

}  // namespace
}  // namespace tenthday
