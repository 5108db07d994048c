#include "pictures/panels.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "batches/batch_editor.h"
#include "batches/draft_form.h"
#include "batches/stays_form.h"
#include "batches/week_table.h"
#include "book/book_file.h"
#include "book/new_book.h"
#include "cellsday/cells_day_dialog.h"
#include "cellsday/way_order_dialog.h"
#include "chart/season_chart.h"
#include "evening/evening_view.h"
#include "evening/queen_numbers_dialog.h"
#include "exchange/example.h"
#include "help/keys_dialog.h"
#include "nucs/mite_dialog.h"
#include "nucs/nucs_page.h"
#include "nucs/stocking_dialog.h"
#include "orders/order_dialog.h"
#include "orders/orders_page.h"
#include "orders/what_if_dialog.h"
#include "phone/phone_link.h"
#include "plan/plan_form.h"
#include "plan/plan_page.h"
#include "reasons/why_dialog.h"
#include "records/queen_verbs.h"
#include "screen_text/cells_text.h"
#include "screen_text/diary_text.h"
#include "setup/next_season_dialog.h"
#include "setup/setup_page.h"
#include "setup/story_dialog.h"
#include "sheets/print_dialog.h"
#include "support/days.h"
#include "virgins/virgins_page.h"
#include "weather/import_dialog.h"
#include "week/times_dialog.h"
#include "week/week_page.h"
#include "window/backup_dialog.h"
#include "window/main_window.h"
#include "window/new_book_dialog.h"

namespace tenthday::test {
namespace {

constexpr QSize kWindow{1366, 768};
constexpr int kPatience = 10'000;  // ms

QWidget* opened(QWidget* dialog) {
    dialog->show();
    return dialog;
}

QWidget* page(MainWindow& window, QAction* action) {
    action->trigger();
    return &window;
}

QWidget* virgins(MainWindow& window, const char* on) {
    window.virgins()->setDay(day(on));
    return page(window, window.actions().virginsPage);
}

QWidget* evening(MainWindow& window, int daysBack) {
    window.evening()->setDay(window.desk()->snapshot().today() - Days{daysBack});
    return page(window, window.actions().eveningPage);
}

/// The next cells day, with the proposal for it or as it is.
QWidget* cellsDay(MainWindow& window, bool proposed) {
    window.actions().cellsDay->trigger();
    if (proposed) window.cellsDay()->propose();
    return window.cellsDay();
}

/// Its placement list as it will be on paper.
QWidget* placementList(MainWindow& window) {
    cellsDay(window, true);
    auto* dialog = window.cellsDay();
    for (auto* button : dialog->findChildren<QPushButton*>())
        if (button->text() == cells_text::print()) button->click();
    return dialog->findChild<QDialog*>();
}

/// The batch that is grafted next.
Id<Batch> nextBatch(const MainWindow& window) {
    const auto& outlook = *window.desk()->outlook();
    for (const auto& batch : outlook.batches)
        if (dayOf(batch->timeline.graft) >= outlook.snapshot.today()) return batch->batch->id;
    return outlook.batches.front()->batch->id;
}

QWidget* setUp(MainWindow& window, setup_text::Kind kind) {
    window.actions().setupPage->trigger();
    window.setup()->kinds().setCurrentRow(static_cast<int>(kind));
    return &window;
}

/// With all that the worker finds.
QWidget* editor(MainWindow& window, bool isNew) {
    window.chart()->setSelectedBatch(nextBatch(window));
    (isNew ? window.actions().planBatch : window.actions().editBatch)->trigger();
    auto* editor = window.batchEditor();
    editor->resize(1350, 720);
    (void)QTest::qWaitFor([&] { return !editor->nearest().empty(); }, kPatience);
    return editor;
}

/// The editor with days for mating, scrolled to where they stand.
QWidget* mated(MainWindow& window, Mating mating) {
    auto* shown = qobject_cast<BatchEditor*>(editor(window, true));
    auto& form = shown->form();
    form.mating().setCurrentIndex(static_cast<int>(mating));
    (void)QTest::qWaitFor([&] { return form.stays().count() == 1; }, kPatience);
    QTest::qWait(200);
    for (auto* area : shown->findChildren<QScrollArea*>())
        if (area->isAncestorOf(&form)) area->ensureWidgetVisible(&form.stays(), 0, 100);
    return shown;
}

/// Notes of every kind, the last one open.
QWidget* flowAndDearth(MainWindow& window) {
    const auto yard = *window.desk()->snapshot().all<Yard>().begin();
    ChangeSet changes;
    const auto note = [&](std::uint64_t n, YardNoteKind kind, const char* from, const char* until) {
        changes.add(YardNote{{Uuid{1, n}}, 1, yard->id, kind, day(from), day(until), {}});
    };
    note(1, YardNoteKind::Flow, "2027-05-08", "2027-06-04");
    note(2, YardNoteKind::Dearth, "2027-06-20", "2027-07-02");
    note(3, YardNoteKind::Robbing, "2027-07-01", "2027-07-01");
    (void)window.desk()->apply(changes);
    return setUp(window, setup_text::Kind::YardNotes);
}

/// Brood being put in from a yard that is held for disease.
QWidget* diaryEntry(MainWindow& window) {
    ChangeSet changes;
    const auto heath = findByLabel<Yard>(window.desk()->snapshot(), "Heath");
    if (heath)
        changes.add(YardNote{{Uuid{1, 1}},
                             1,
                             heath->id,
                             YardNoteKind::Disease,
                             day("2027-05-01"),
                             day("2027-07-20"),
                             {}});
    (void)window.desk()->apply(changes);
    auto* shown = setUp(window, setup_text::Kind::Diary);
    window.setup()->addButton().click();
    for (auto* box : window.setup()->form().findChildren<QComboBox*>())
        if (box->count() == diary_text::kWhats)
            box->setCurrentIndex(static_cast<int>(diary_text::What::BroodIn));
    for (auto* line : window.setup()->form().findChildren<QLineEdit*>())
        if (line->accessibleName() == diary_text::donors())
            line->setText(QStringLiteral("Heath 3"));
    return shown;
}

QWidget* builderSeason(MainWindow& window, const char* label) {
    const auto outlook = window.desk()->outlook();
    const auto builder = findByLabel<Builder>(outlook->snapshot, label);
    auto* dialog = new StoryDialog(story_text::builder(*outlook, builder->id), &window);
    dialog->show();
    return dialog;
}

QWidget* queenSeason(MainWindow& window, const char* label) {
    const auto& book = window.desk()->snapshot();
    const auto queen = findByLabel<Queen>(book, label);
    auto* dialog = new StoryDialog(story_text::breeder(book, queen->id), &window);
    dialog->show();
    return dialog;
}

/// Fourteen queens caught on two days: in the bank, long in it, sold and lost.
QWidget* queensCaught(MainWindow& window) {
    const auto& book = window.desk()->snapshot();
    const auto batch = (*book.all<Batch>().begin())->id;
    QueenNumbers numbers(book, QueenPattern::of(QueenPattern::usual()).value());
    std::uint64_t next = 0;
    const IdSource ids = [&next] { return Uuid{7, ++next}; };
    ChangeSet changes;
    for (int i = 0; i < 14; ++i)
        addCaughtQueen(book, {batch, {}, book.today() - Days{i < 9 ? 3 : 71}, 2027}, numbers, ids,
                       changes);
    (void)window.desk()->apply(changes);
    const auto move = [&](const char* label, QueenPlace place, const char* note) {
        const auto queen = findByLabel<Queen>(window.desk()->snapshot(), label);
        (void)window.desk()->apply(
            moveQueens(window.desk()->snapshot(), {queen->id}, place, book.today(), note, ids)
                .value());
    };
    move("27-004", QueenPlace::Sold, "Order 12");
    move("27-011", QueenPlace::Lost, "dead in her cage");
    return setUp(window, setup_text::Kind::Caught);
}

QWidget* stockingList(MainWindow& window) {
    const auto& outlook = *window.desk()->outlook();
    return opened(new StockingDialog(outlook, outlook.snapshot.today(), &window));
}

QWidget* miteWork(MainWindow& window) {
    auto* dialog = new MiteDialog(*window.desk(), &window);
    dialog->table().selectRow(0);
    return opened(dialog);
}

QWidget* queenNumbers(MainWindow& window) {
    return opened(new QueenNumbersDialog({true, QStringLiteral("{yy}-{n:3}")},
                                         window.desk()->snapshot(), &window));
}

/// Catches with numbers, the current row one to be caught.
QWidget* catches(MainWindow& window) {
    auto* shown = evening(window, 0);
    auto& model = window.evening()->model();
    for (int back = 0; back < 30; ++back) {
        for (int row = 0; row < model.rowCount(); ++row)
            if (model.at(row).entry == EveningEntry::Caught && !model.at(row).isFilled()) {
                window.evening()->table().setCurrentIndex(model.index(row, EveningModel::Entered));
                window.evening()->accept();
                return shown;
            }
        window.evening()->setDay(window.evening()->day() - Days{1});
    }
    return shown;
}

QWidget* why(MainWindow& window) {
    window.chart()->setSelectedBatch(nextBatch(window));
    window.actions().whyThisDay->trigger();
    return window.why();
}

/// A new book with nothing in it.
QWidget* emptyBook(MainWindow& window) {
    static const QTemporaryDir folder;
    static int number = 0;
    const auto path = folder.filePath(QStringLiteral("empty-%1.tenthday").arg(++number));
    const auto made = createBook(path, newBookContent(planFor("North Fell", day("2027-02-01"))));
    return made && window.open(path) ? &window : nullptr;
}

QWidget* weekSheet(MainWindow& window) {
    window.actions().weekSheet->trigger();
    return window.findChild<PrintDialog*>();
}

/// A paper of another kind in the same dialog.
QWidget* printed(MainWindow& window, PaperKind kind) {
    window.actions().weekSheet->trigger();
    auto* dialog = window.findChild<PrintDialog*>();
    dialog->kind().setCurrentIndex(static_cast<int>(kind));
    return dialog;
}
QWidget* catchList(MainWindow& window) { return printed(window, PaperKind::Catches); }
QWidget* nucCards(MainWindow& window) { return printed(window, PaperKind::NucCards); }

QWidget* nextSeason(MainWindow& window) {
    return opened(new NextSeasonDialog(*window.desk(), &window));
}
QWidget* workTimes(MainWindow& window) { return opened(new TimesDialog(*window.desk(), &window)); }

/// A record in other units and with something of every kind wrong in it.
QWidget* weatherImport(MainWindow& window) {
    auto* dialog = new WeatherImportDialog(
        QStringLiteral("fell.csv"),
        "date,tmax,tmin,rain\n2026-06-01,64,50,0\n2026-06-02,warm,51,0.2\n"
        "2026-06-03,67,-999,0\n2026-06-03,68,52,0\n2026-06-07,300,55,0\n3 June,66,51,0\n"
        "2026-06-08,70,53,0.1\n",
        [](const auto&) { return QString(); }, &window);
    dialog->heat().setCurrentIndex(1);
    dialog->rain().setCurrentIndex(1);
    dialog->show();
    return dialog;
}

QWidget* phoneCalendar(MainWindow& window) {
    window.actions().phoneCalendar->trigger();
    return window.phone()->dialog();
}

/// Orders that are met, in doubt, short, delivered in part, waiting and cancelled; long names too.
void addOrders(MainWindow& window) {
    ChangeSet changes;
    const auto order = [&](std::uint64_t n, const char* label, OrderKind kind, int count,
                           const char* due, const char* shipDays,
                           OrderStanding standing = OrderStanding::Open,
                           OrderPurpose purpose = OrderPurpose::None) {
        Order row;
        row.id = {Uuid{2, n}};
        row.label = label;
        row.kind = kind;
        row.count = count;
        row.due = day(due);
        changes.add(row);
        changes.add(OrderTerms{{Uuid{3, n}}, 1, row.id, standing, purpose, shipDays});
    };
    order(1, "K-20", OrderKind::Mated, 6, "2027-06-18", "1234");
    order(2, "Reserve", OrderKind::Own, 18, "2027-06-24", "", OrderStanding::Open,
          OrderPurpose::Reserve);
    order(3, "K-21", OrderKind::Proven, 8, "2027-06-30", "123");
    order(5, "Association of the upper valley, spring meeting", OrderKind::Mated, 24, "2027-07-20",
          "12");
    order(7, "K-15", OrderKind::Virgin, 10, "2027-07-18", "", OrderStanding::Waiting);
    order(8, "K-16", OrderKind::Mated, 12, "2027-07-01", "", OrderStanding::Waiting);
    order(9, "K-22", OrderKind::Mated, 5, "2027-06-10", "", OrderStanding::Cancelled);
    (void)window.desk()->apply(changes);
}

QWidget* orders(MainWindow& window, int filter = 0) {
    addOrders(window);
    page(window, window.actions().ordersPage);
    (void)QTest::qWaitFor([&] { return !window.orders()->isReckoning(); }, kPatience);
    window.orders()->filter().setCurrentIndex(filter);
    return &window;
}

QWidget* orderForm(MainWindow& window) {
    orders(window);
    window.orders()->choose({Uuid{2, 3}});
    window.orders()->changeOrder();
    auto* form = qobject_cast<OrderDialog*>(window.orders()->dialog());
    (void)QTest::qWaitFor([&] { return !form->isReckoning(); }, kPatience);
    return form;
}

QWidget* orderDialog(MainWindow& window, void (OrdersPage::*ask)()) {
    orders(window);
    window.orders()->choose({Uuid{2, 1}});
    (window.orders()->*ask)();
    return window.orders()->dialog();
}

QWidget* whatIf(MainWindow& window) {
    auto* form = qobject_cast<WhatIfDialog*>(orderDialog(window, &OrdersPage::askWhatIf));
    form->cold().click();
    (void)QTest::qWaitFor([&] { return !form->isReckoning(); }, kPatience);
    return form;
}

QWidget* pastedOrders(MainWindow& window) {
    page(window, window.actions().ordersPage);
    window.orders()->pasteOrders(
        QStringLiteral("For whom\tWhat\tHow many\tDue\nK-20\tmated queens\t12\t2027-07-14\n"
                       "K-21\ttame ones\t3\t2027-07-20\nK-22\tvirgins\t4\t2027-07-21\n"));
    return window.orders()->dialog();
}

/// The chart with orders, once they are reckoned.
QWidget* chartOfOrders(MainWindow& window) {
    addOrders(window);
    page(window, window.actions().seasonPage);
    (void)QTest::qWaitFor([&] { return window.chart()->orders() != nullptr; }, kPatience);
    return &window;
}

/// The season plan for the orders, once it is there.
QWidget* seasonPlan(MainWindow& window) {
    addOrders(window);
    page(window, window.actions().planPage);
    auto& plan = *window.plan();
    plan.form().until().setDate(QDate(2027, 6, 30));
    plan.plan();
    (void)QTest::qWaitFor([&] { return !plan.isPlanning() && !plan.isTrying(); }, 120'000);
    return &window;
}

/// Its proposals in the chart.
QWidget* chartOfPlan(MainWindow& window) {
    seasonPlan(window);
    return page(window, window.actions().seasonPage);
}

}  // namespace

const std::vector<Panel>& panels() {
    using setup_text::Kind;
    static const auto at = [](const char* name) { return QString::fromLatin1(name); };
    static const std::vector<Panel> all{
        {at("welcome"), false, [](MainWindow& w) -> QWidget* { return &w; }},
        {at("new-book"), false,
         [](MainWindow& w) { return opened(new NewBookDialog(day("2027-02-01"), {}, &w)); }},
        {at("empty-book"), false, emptyBook},
        {at("season-chart"), true, [](MainWindow& w) { return page(w, w.actions().seasonPage); }},
        {at("season-chart-nucs"), true, [](MainWindow& w) { return page(w, w.actions().eachNuc); }},
        {at("nucs"), true, [](MainWindow& w) { return page(w, w.actions().nucsPage); }},
        {at("stocking-list"), true, stockingList},
        {at("mite-work"), true, miteWork},
        {at("week"), true, [](MainWindow& w) { return page(w, w.actions().weekPage); }},
        {at("weather"), true, [](MainWindow& w) { return page(w, w.actions().weatherPage); }},
        {at("evening"), true, [](MainWindow& w) { return evening(w, 0); }},
        {at("evening-before"), true, [](MainWindow& w) { return evening(w, 1); }},
        {at("evening-catches"), true, catches},
        {at("queen-numbers"), true, queenNumbers},
        {at("cells-day"), true, [](MainWindow& w) { return cellsDay(w, true); }},
        {at("cells-day-open"), true, [](MainWindow& w) { return cellsDay(w, false); }},
        {at("placement-list"), true, placementList},
        {at("way-order"), true,
         [](MainWindow& w) { return opened(new WayOrderDialog(usualWays(), &w)); }},
        {at("virgins"), true, [](MainWindow& w) { return virgins(w, "2027-06-03"); }},
        {at("virgins-given-up"), true, [](MainWindow& w) { return virgins(w, "2027-06-12"); }},
        {at("virgins-none"), true, [](MainWindow& w) { return virgins(w, "2027-04-20"); }},
        {at("season-chart-orders"), true, [](MainWindow& w) { return chartOfOrders(w); }},
        {at("orders"), true, [](MainWindow& w) { return orders(w); }},
        {at("orders-all"), true, [](MainWindow& w) { return orders(w, 3); }},
        {at("orders-none"), false,
         [](MainWindow& w) {
             emptyBook(w);
             return page(w, w.actions().ordersPage);
         }},
        {at("season-plan"), true, [](MainWindow& w) { return seasonPlan(w); }},
        {at("season-plan-chart"), true, [](MainWindow& w) { return chartOfPlan(w); }},
        {at("season-plan-steps"), true,
         [](MainWindow& w) { return page(w, w.actions().planPage); }},
        {at("season-plan-empty"), false,
         [](MainWindow& w) -> QWidget* {
             return emptyBook(w) ? page(w, w.actions().planPage) : nullptr;
         }},
        {at("order-form"), true, [](MainWindow& w) { return orderForm(w); }},
        {at("order-delivery"), true,
         [](MainWindow& w) { return orderDialog(w, &OrdersPage::deliver); }},
        {at("order-earmark"), true,
         [](MainWindow& w) { return orderDialog(w, &OrdersPage::earmark); }},
        {at("orders-pasted"), true, [](MainWindow& w) { return pastedOrders(w); }},
        {at("what-if"), true, [](MainWindow& w) { return whatIf(w); }},
        {at("losses"), true, [](MainWindow& w) { return orderDialog(w, &OrdersPage::showLosses); }},
        {at("weather-import"), true, [](MainWindow& w) { return weatherImport(w); }},
        {at("trade-numbers"), true, [](MainWindow& w) { return page(w, w.actions().factsPage); }},
        {at("set-up-yards"), true, [](MainWindow& w) { return setUp(w, Kind::Yards); }},
        {at("set-up-boxes"), true, [](MainWindow& w) { return setUp(w, Kind::Boxes); }},
        {at("set-up-builders"), true, [](MainWindow& w) { return setUp(w, Kind::Builders); }},
        {at("set-up-diary"), true, [](MainWindow& w) { return setUp(w, Kind::Diary); }},
        {at("set-up-diary-entry"), true, diaryEntry},
        {at("builder-season"), true, [](MainWindow& w) { return builderSeason(w, "North"); }},
        {at("builder-season-due"), true, [](MainWindow& w) { return builderSeason(w, "West"); }},
        {at("queen-season"), true, [](MainWindow& w) { return queenSeason(w, "Thistle 7"); }},
        {at("queen-season-none"), true, [](MainWindow& w) { return queenSeason(w, "Amber 4"); }},
        {at("set-up-queens"), true, [](MainWindow& w) { return setUp(w, Kind::Queens); }},
        {at("set-up-queens-caught"), true, queensCaught},
        {at("set-up-methods"), true, [](MainWindow& w) { return setUp(w, Kind::Methods); }},
        {at("set-up-drones"), true, [](MainWindow& w) { return setUp(w, Kind::Drones); }},
        {at("set-up-flow"), true, flowAndDearth},
        {at("set-up-days-off"), true, [](MainWindow& w) { return setUp(w, Kind::DaysOff); }},
        {at("plan-a-batch"), true, [](MainWindow& w) { return editor(w, true); }},
        {at("change-a-batch"), true, [](MainWindow& w) { return editor(w, false); }},
        {at("mating-station"), true, [](MainWindow& w) { return mated(w, Mating::Station); }},
        {at("insemination"), true, [](MainWindow& w) { return mated(w, Mating::Insemination); }},
        {at("why-this-day"), true, why},
        {at("week-sheet"), true, weekSheet},
        {at("catch-list"), true, catchList},
        {at("nuc-cards"), true, nucCards},
        {at("next-season"), true, nextSeason},
        {at("work-times"), true, workTimes},
        {at("phone-calendar"), true, phoneCalendar},
        {at("restore"), true,
         [](MainWindow& w) {
             return opened(new BackupDialog({at("/queens-backups/queens 2027-06-02.tenthday"),
                                             at("/queens-backups/queens 2027-06-01.tenthday")},
                                            &w));
         }},
        {at("keys"), true, [](MainWindow& w) { return opened(new KeysDialog(*w.menuBar(), &w)); }},
    };
    return all;
}

std::vector<QImage> picturesOf(const Panel& panel, const QString& scratch) {
    const auto settings = QDir(scratch).filePath(QStringLiteral("settings.ini"));
    QFile::remove(settings);
    const auto book = QDir(scratch).filePath(QStringLiteral("example.tenthday"));
    if (!QFileInfo::exists(book)) (void)createBook(book, exampleContent());
    MainWindow window(Settings(std::make_unique<QSettings>(settings, QSettings::IniFormat)),
                      Clock(std::nullopt, [] { return day("2027-02-01"); }),
                      [](const QString& path) { return createBook(path, exampleContent()); });
    const auto look = [&](LookChoice choice) {
        window.actions().looks[static_cast<std::size_t>(choice)]->trigger();
    };
    look(LookChoice::Light);
    window.resize(kWindow);
    window.show();
    if (panel.example && !window.open(book)) return {};
    auto* shown = panel.open(window);
    if (shown == nullptr) return {};
    (void)QTest::qWaitForWindowExposed(shown, kPatience);
    std::vector<QImage> pictures;
    for (const auto choice : kLooks) {
        look(choice);
        QTest::qWait(20);
        pictures.push_back(shown->grab().toImage());
    }
    return pictures;
}

QString fileName(const Panel& panel, LookChoice look) {
    const auto name = token(look);
    return panel.name + u'-' +
           QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size())) +
           QStringLiteral(".png");
}

}  // namespace tenthday::test
