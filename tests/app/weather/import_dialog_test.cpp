#include "weather/import_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include "app/book/book_fixture.h"
#include "book/new_book.h"
#include "weather/weather_page.h"

namespace tenthday {
namespace {

using test::day;

class WeatherImportTest : public test::BookTest {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const auto path = at(QStringLiteral("fell.tenthday"));
        const auto content = newBookContent(planFor("North Fell", day("2027-02-01")));
        ASSERT_TRUE(createBook(path, content, test::fixedOptions()).ok());
        desk_ = Desk::open(path, test::fixedOptions()).value();
        page_ = std::make_unique<WeatherPage>(*desk_);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale::c());
    }
    WeatherImportDialog& open(const QByteArray& text) {
        QFile file(at(QStringLiteral("record.csv")));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        return openFile(file.fileName());
    }
    WeatherImportDialog& openFile(const QString& path) {
        page_->importFrom(path);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(page_->importing()));
        return *page_->importing();
    }
    void press(QPushButton& button) { QTest::mouseClick(&button, Qt::LeftButton); }
    std::string cell(WeatherImportDialog& dialog, int row, WeatherColumn column) {
        return dialog.preview().item(row, static_cast<int>(column))->text().toStdString();
    }
    const Table<WeatherDay>& rows() { return desk_->snapshot().all<WeatherDay>(); }

    std::unique_ptr<Desk> desk_;
    std::unique_ptr<WeatherPage> page_;
};

TEST_F(WeatherImportTest, ACommonRecordComesInAsItIsWithOneEdit) {
    auto& dialog = openFile(
        QStringLiteral(TENTHDAY_SOURCE_DIR "/tests/core/weather/data/seattle-weather.csv"));
    EXPECT_EQ(dialog.summary().toStdString(), "1,461 days: 1 Jan 2012 to 31 Dec 2015.");
    EXPECT_EQ(cell(dialog, 0, WeatherColumn::Tmax), "12.8");
    EXPECT_EQ(cell(dialog, 0, WeatherColumn::Wind), "4.7");
    EXPECT_EQ(dialog.troubles().count(), 0);
    EXPECT_EQ(dialog.importButton().text().toStdString(), "Import 1,461 days");
    press(dialog.importButton());
    EXPECT_EQ(rows().size(), 1461U);
    EXPECT_EQ(page_->told().toStdString(), "1,461 days came in or changed.");
    EXPECT_TRUE(page_->sourceText().contains(QStringLiteral("from 2012 to 2015")))
        << page_->sourceText().toStdString();
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_TRUE(rows().empty());
}

TEST_F(WeatherImportTest, ColumnsAndUnitsAreChosen) {
    auto& dialog = open("when,hot,wet,gust\n20260601,64.4,0.5,10\n20260602,68,0,20\n");
    EXPECT_FALSE(dialog.importButton().isEnabled()) << "nobody knows where the day stands";
    EXPECT_EQ(dialog.summary().toStdString(), "no column holds the date");
    const auto choose = [](QComboBox& box, const char* keys) {
        box.setFocus();
        QTest::keyClicks(&box, QString::fromLatin1(keys));
    };
    choose(dialog.column(WeatherColumn::Date), "when");
    choose(dialog.column(WeatherColumn::Tmax), "hot");
    choose(dialog.column(WeatherColumn::Rain), "wet");
    choose(dialog.column(WeatherColumn::Wind), "gust");
    dialog.heat().setCurrentIndex(1);
    dialog.rain().setCurrentIndex(1);
    dialog.wind().setCurrentIndex(1);
    EXPECT_EQ(cell(dialog, 0, WeatherColumn::Tmax), "18.0");
    EXPECT_EQ(cell(dialog, 0, WeatherColumn::Rain), "12.7");
    EXPECT_EQ(cell(dialog, 1, WeatherColumn::Wind), "5.6");
    press(dialog.importButton());
    ASSERT_EQ(rows().size(), 2U);
    EXPECT_EQ((*rows().begin())->tmaxC, Tenths{180});
}

TEST_F(WeatherImportTest, WhatIsWrongIsNamedAndLeftOutOnlyWhenTheUserSaysSo) {
    auto& dialog =
        open("date,tmax\n2026-06-01,18\n2026-06-02,warm\n2026-06-05,-999\n2026-06-06,20\n");
    ASSERT_EQ(dialog.troubles().count(), 3);
    EXPECT_EQ(dialog.troubles().item(0)->text().toStdString(),
              "Line 3: \"warm\" can't be read (Daily maximum)");
    EXPECT_EQ(dialog.troubles().item(1)->text().toStdString(),
              "Line 4: \"-999\" stands for a missing value (Daily maximum)");
    EXPECT_EQ(dialog.troubles().item(2)->text().toStdString(),
              "Line 5: nothing is known of 2 Jun 2026 to 5 Jun 2026");
    EXPECT_FALSE(dialog.skip(WeatherTrouble::BadDate).isVisible());
    EXPECT_TRUE(dialog.skip(WeatherTrouble::Placeholder).isChecked());
    EXPECT_FALSE(dialog.importButton().isEnabled());
    EXPECT_FALSE(dialog.told().isEmpty());
    auto& skip = dialog.skip(WeatherTrouble::BadNumber);
    EXPECT_EQ(skip.text().toStdString(), "Leave out 1 value that can't be read");
    skip.setFocus();
    QTest::keyClick(&skip, Qt::Key_Space);
    ASSERT_TRUE(dialog.importButton().isEnabled());
    press(dialog.importButton());
    EXPECT_EQ(rows().size(), 2U);
    // The same again says nothing new, and the dialog stays.
    auto& again = open("date,tmax\n2026-06-01,18\n");
    press(again.importButton());
    EXPECT_TRUE(again.isVisible());
    EXPECT_EQ(again.told().toStdString(), "The book holds all of this already.");
}

}  // namespace
}  // namespace tenthday
