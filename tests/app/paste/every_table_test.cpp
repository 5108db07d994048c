// Every table of the program: what it copies is lines with heads that a spreadsheet reads, and what
// is pasted is looked at in the dialog, or the table says in one line where it can be changed.
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QSettings>
#include <QTableWidget>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "app/book/example_page.h"
#include "app/paste/pasting.h"
#include "batches/batch_editor.h"
#include "cellsday/cells_day_dialog.h"
#include "cellsday/propose.h"
#include "cellsday/way_order_dialog.h"
#include "drafting/batch_draft.h"
#include "evening/evening_view.h"
#include "facts/facts_page.h"
#include "look/table_note.h"
#include "nucs/mite_dialog.h"
#include "nucs/nucs_page.h"
#include "nucs/stocking_dialog.h"
#include "orders/losses_dialog.h"
#include "orders/orders_page.h"
#include "orders/what_if_dialog.h"
#include "plan/plan_page.h"
#include "reasons/why_dialog.h"
#include "setup/fields_dialog.h"
#include "setup/setup_page.h"
#include "setup/story_dialog.h"
#include "virgins/virgins_page.h"
#include "weather/import_dialog.h"
#include "weather/weather_page.h"
#include "week/times_dialog.h"
#include "week/week_page.h"

namespace tenthday {
namespace {

namespace fs = std::filesystem;
using test::day;

/// What the tables are made with.
struct Ground {
    Desk& desk;
    Settings& settings;
};

/// A window with the tables that are made in these files.
struct Place {
    const char* name;
    std::vector<const char*> files;
    int tables;
    std::function<std::unique_ptr<QWidget>(const Ground&)> make;
};
void PrintTo(const Place& place, std::ostream* out) { *out << place.name; }

/// The last one: it is not grafted yet, so other days of its week can be tried.
Id<Batch> aPlannedBatch(const Desk& desk) { return desk.outlook()->batches.back()->batch->id; }

Id<Batch> aBatch(const Desk& desk) { return desk.outlook()->batches.front()->batch->id; }
QString nothing(const ChangeSet&) { return {}; }

const std::vector<Place>& places() {
    static const std::vector<Place> kPlaces{
        {"Week",
         {"week/week_page.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<WeekPage>(on.desk); }},
        {"Times",
         {"week/times_dialog.cpp"},
         2,
         [](const Ground& on) { return std::make_unique<TimesDialog>(on.desk); }},
        {"Nucs",
         {"nucs/nucs_page.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<NucsPage>(on.desk); }},
        {"Mites",
         {"nucs/mite_dialog.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<MiteDialog>(on.desk); }},
        {"Stockings",
         {"nucs/stocking_dialog.cpp"},
         1,
         [](const Ground& on) {
             return std::make_unique<StockingDialog>(*on.desk.outlook(),
                                                     on.desk.snapshot().today());
         }},
        {"Virgins",
         {"virgins/virgins_page.cpp"},
         2,
         [](const Ground& on) { return std::make_unique<VirginsPage>(on.desk); }},
        {"Evening",
         {"evening/evening_view.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<EveningView>(on.desk); }},
        {"Orders",
         {"orders/orders_page.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<OrdersPage>(on.desk); }},
        {"Losses",
         {"orders/losses_dialog.cpp"},
         2,
         [](const Ground& on) { return std::make_unique<LossesDialog>(on.desk); }},
        {"WhatIf",
         {"orders/what_if_dialog.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<WhatIfDialog>(on.desk.outlook()); }},
        {"Plan",
         {"plan/plan_page.cpp", "plan/plan_sums.h"},
         2,
         [](const Ground& on) { return std::make_unique<PlanPage>(on.desk); }},
        {"CellsDay",
         {"cellsday/nucs_ticks.h"},
         1,
         [](const Ground& on) {
             return std::make_unique<CellsDayDialog>(on.desk, on.settings, day("2027-06-07"));
         }},
        {"WayOrder",
         {"cellsday/way_order_dialog.cpp"},
         1,
         [](const Ground&) { return std::make_unique<WayOrderDialog>(usualWays()); }},
        {"Weather",
         {"weather/weather_page.cpp"},
         2,
         [](const Ground& on) { return std::make_unique<WeatherPage>(on.desk); }},
        {"WeatherFile",
         {"weather/import_dialog.cpp"},
         1,
         [](const Ground&) {
             return std::make_unique<WeatherImportDialog>(QStringLiteral("days.csv"),
                                                          "date,temp_max\n2026-05-01,17\n",
                                                          [](const auto&) { return QString(); });
         }},
        {"Facts",
         {"facts/facts_page.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<FactsPage>(on.desk); }},
        {"SetUp",
         {"setup/setup_page.cpp"},
         1,
         [](const Ground& on) { return std::make_unique<SetupPage>(on.desk); }},
        {"Story",
         {"setup/story_dialog.cpp"},
         1,
         [](const Ground&) {
             Story story;
             story.head = QStringLiteral("Big");
             story.lines.resize(1);
             story.lines.front().when = QStringLiteral("now");
             return std::make_unique<StoryDialog>(story, nullptr);
         }},
        {"Batch",
         {"batches/week_table.h", "batches/dates_list.h"},
         2,
         [](const Ground& on) {
             return std::make_unique<BatchEditor>(
                 on.desk, on.settings, draftOf(on.desk.snapshot(), aPlannedBatch(on.desk)));
         }},
        {"Why",
         {"reasons/why_dialog.cpp"},
         1,
         [](const Ground& on) {
             return std::make_unique<WhyDialog>(on.desk, aBatch(on.desk), std::nullopt);
         }},
        {"Pasted", {"paste/paste_dialog.cpp"}, 1, [](const Ground& on) {
             return std::make_unique<PasteDialog>(
                 on.desk, listToPaste("daysoff"),
                 QStringLiteral("from,until\n2027-05-01,2027-05-02\n"), nothing);
         }}};
    return kPlaces;
}

class EveryTable : public test::BookTest, public ::testing::WithParamInterface<Place> {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        path_ = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(test::makeExampleBook(path_));
        open(Access::ReadWrite);
    }
    void open(Access access) {
        window_.reset();
        desk_.reset();
        desk_ = Desk::open(path_, test::fixedOptions(access)).value();
        settings_ = std::make_unique<Settings>(
            std::make_unique<QSettings>(at(QStringLiteral("settings.ini")), QSettings::IniFormat));
        window_ = GetParam().make({*desk_, *settings_});
        window_->resize(1200, 700);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        if (GetParam().name == std::string("Batch")) {  // days of its week are tried beside
            ASSERT_TRUE(QTest::qWaitFor([&] { return haveRows(); }, 30000));
        }
    }
    [[nodiscard]] bool haveRows() const {
        const auto all = tables();
        return std::all_of(all.begin(), all.end(),
                           [](const QTableView* table) { return table->model()->rowCount() > 0; });
    }
    void TearDown() override {
        window_.reset();
        QLocale::setDefault(QLocale::c());
    }
    [[nodiscard]] QList<QTableView*> tables() const { return window_->findChildren<QTableView*>(); }
    /// The dialog that looks at what was pasted; closed again.
    bool closeDialog() {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        auto* dialog = window_->findChild<PasteDialog*>();
        if (dialog != nullptr) dialog->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return dialog != nullptr;
    }

    /// Lines with heads, that read back.
    void copies() {
        for (auto* table : tables()) {
            SCOPED_TRACE(table->accessibleName().toStdString());
            const auto read = readPasted(test::copied(*table).toStdString());
            ASSERT_TRUE(read) << read.error().text;
            ASSERT_FALSE(read.value().isEmpty()) << "at least the heads";
            const auto& heads = read.value().lines.front();
            EXPECT_GE(heads.size(), 2U);
            const auto named = std::count_if(heads.begin(), heads.end(),
                                             [](const auto& head) { return !head.empty(); });
            EXPECT_GE(named, 2);
            // Months and days without a record are shown too, but there is nothing of them to copy.
            const bool isKept = GetParam().name != std::string("Weather");
            if (isKept && table->model()->rowCount() > 0) {
                EXPECT_GT(read.value().lines.size(), 1U) << "rows are copied";
            }
        }
    }
    /// The dialog opens, or a line says where the table can be changed.
    void pastes() {
        const auto before = desk_->snapshot();
        for (auto* table : tables()) {
            SCOPED_TRACE(table->accessibleName().toStdString());
            test::paste(*table, QStringLiteral("one\ttwo\n1\t2\n"));
            const auto note = noteOn(*table);
            const bool wasOpened = closeDialog();
            EXPECT_NE(wasOpened, !note.isEmpty()) << "either, not both: " << note.toStdString();
            if (note.isEmpty()) continue;
            EXPECT_TRUE(note.endsWith(u'.')) << note.toStdString();
            QTest::keyClick(table, Qt::Key_Down);
            EXPECT_EQ(noteOn(*table), QString()) << "it goes with the next key";
        }
        EXPECT_TRUE(desk_->snapshot().sameContent(before));
    }

    QString path_;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<Settings> settings_;
    std::unique_ptr<QWidget> window_;
};

TEST_P(EveryTable, CopiesAndPastesOrSaysWhereItCanBeChanged) {
    ASSERT_EQ(tables().size(), GetParam().tables);
    copies();
    pastes();
}

TEST_P(EveryTable, OpensNothingInABookThatIsReadOnly) {
    open(Access::ReadOnly);
    for (auto* table : tables()) {
        SCOPED_TRACE(table->accessibleName().toStdString());
        EXPECT_FALSE(test::copied(*table).isEmpty()) << "copying is fine";
        test::paste(*table, QStringLiteral("one\ttwo\n1\t2\n"));
        EXPECT_FALSE(closeDialog());
        EXPECT_FALSE(noteOn(*table).isEmpty()) << "it says why";
    }
}

INSTANTIATE_TEST_SUITE_P(Places, EveryTable, ::testing::ValuesIn(places()),
                         [](const auto& test) { return std::string(test.param.name); });

TEST(TablesOfTheProgram, AreAllNamedAbove) {
    std::set<std::string> known;
    for (const auto& place : places()) known.insert(place.files.begin(), place.files.end());
    const fs::path app = fs::path(TENTHDAY_SOURCE_DIR) / "app";
    static const QRegularExpression kMade(
        QStringLiteral("new QTable(View|Widget)\\b|new QTreeView\\b|: public QTable(View|Widget)"));
    std::set<std::string> found;
    for (const auto& entry : fs::recursive_directory_iterator(app)) {
        std::ostringstream text;
        if (entry.is_regular_file()) text << std::ifstream(entry.path()).rdbuf();
        if (kMade.match(QString::fromStdString(text.str())).hasMatch())
            found.insert(entry.path().lexically_relative(app).generic_string());
    }
    EXPECT_EQ(found, known) << "a table must be copied, and pasted or told why not: add it above";
}

}  // namespace
}  // namespace tenthday
