/// @file main_window.h  The window: one book at a time, or the way to one.
#pragma once
#include <QMainWindow>
#include <QPalette>
#include <QPointer>
#include <QTimer>
#include <functional>
#include <memory>
#include <utility>
#include <vector>

#include "desk/desk.h"
#include "drafting/batch_draft.h"
#include "options/settings.h"
#include "window/questions.h"
#include "window/window_actions.h"

class QLabel;
class QStackedWidget;

namespace tenthday {

class BatchEditor;
class CellsDayDialog;
class EveningView;
class FactsPage;
class PhoneLink;
class PlanPage;
class NucsPage;
class OrdersPage;
class SeasonChart;
class VirginsPage;
class WeatherPage;
class WelcomePage;
class WeekPage;
class WhyDialog;
class SetupPage;

/// Writes the example operation into a new book.
using MakeExample = std::function<Result<void>(const QString& path)>;

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// @param makeExample  without one, the example is not offered
    MainWindow(Settings settings, const Clock& clock, MakeExample makeExample);
    ~MainWindow() override;

    /// Opens the book named on the command line, else the last one if it is still there, else
    /// shows the ways to one.
    void start(const QString& path);
    /// Opens a book in place of the one shown, for reading if that is all one can and the user
    /// agrees. A refusal is told, and what was shown stays.
    bool open(const QString& path);

    /// The open book, or null.
    [[nodiscard]] Desk* desk() const { return desk_.get(); }
    [[nodiscard]] WindowActions& actions() { return actions_; }
    /// The chart of the open book, or null.
    [[nodiscard]] SeasonChart* chart() const { return chart_; }
    /// Where a batch is planned or changed, or null.
    [[nodiscard]] BatchEditor* batchEditor() const;
    /// The ways to a book.
    [[nodiscard]] WelcomePage& welcome() { return *welcome_; }
    /// The page of nucs, or null.
    [[nodiscard]] NucsPage* nucs() const { return nucs_; }
    /// The page of the week, or null.
    [[nodiscard]] WeekPage* week() const { return week_; }
    /// The page of weather, or null.
    [[nodiscard]] WeatherPage* weather() const { return weather_; }
    /// The page of virgins, or null.
    [[nodiscard]] VirginsPage* virgins() const { return virgins_; }
    /// The cells day, or null while it is not open.
    [[nodiscard]] CellsDayDialog* cellsDay() const;
    /// The evening page, or null.
    [[nodiscard]] EveningView* evening() const { return evening_; }
    /// The page of orders, or null.
    [[nodiscard]] OrdersPage* orders() const { return orders_; }
    /// The season plan, or null.
    [[nodiscard]] PlanPage* plan() const { return plan_; }
    /// "Why this day?", or null while it is not open.
    [[nodiscard]] WhyDialog* why() const;
    /// The calendar for the phone, or null.
    [[nodiscard]] PhoneLink* phone() const { return phone_; }
    /// The page of trade numbers, or null.
    [[nodiscard]] FactsPage* facts() const { return facts_; }
    /// The set-up page, or null.
    [[nodiscard]] SetupPage* setup() const { return setup_; }
    void setQuestions(std::unique_ptr<Questions> questions) { questions_ = std::move(questions); }
    /// Where the example is kept; made when first opened.
    void setExamplePath(const QString& path) { examplePath_ = path; }

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void connectActions();
    void showDesk(std::unique_ptr<Desk> desk);
    void makePages();
    void dropPages();
    /// The evening page gets the pattern that is set.
    void numberQueens();
    void askQueenNumbers();
    void makePlan();
    void addPage(QWidget* page, QAction* action);
    void showPage(QWidget* page);
    void showWhy();
    /// False: something on a page is not saved, and the user keeps editing.
    [[nodiscard]] bool mayLeavePages();
    void restoreBackup();
    bool restoreFrom(const QString& path, const QString& backup);
    /// Of the week of the chosen day.
    void showWeekSheet();
    void endSeason();
    void printPaper(PaperKind kind, Day day);
    /// A new batch that starts on the day; on the chosen day when none is given.
    void planBatch(std::optional<Day> day);
    void editBatch(Id<Batch> batch);
    void openEditor(const BatchDraft& draft);
    /// On this day, else on the one chosen, or the cells day nearest to it.
    void showCellsDay(std::optional<Day> day);
    void importList();
    void exportList();
    void showKeys();
    [[nodiscard]] Result<std::unique_ptr<Desk>> openForReading(const QString& path,
                                                               const Error& why);
    void makeNewBook();
    void closeBook();
    void showWelcome();
    void linkPhone();
    /// On the welcome and in the menu.
    void showRecent();
    void listSeasons();
    void showSeason(const QString& id);
    void openExample();
    void saveCopy();
    void savePicture();
    void undoOrRedo(Result<void> (Desk::*step)(), Ptr<Season> (Desk::*of)() const);
    void backUp();
    /// The same, once nothing is being dragged.
    void backUpAtRest();
    void follow(const Changes& changes);
    void applyLook(LookChoice choice);
    void restorePlace();

    Settings settings_;
    Clock clock_;
    MakeExample makeExample_;
    QPalette desktop_;
    QString examplePath_;
    WindowActions actions_;
    std::unique_ptr<Questions> questions_;
    std::unique_ptr<Desk> desk_;
    QStackedWidget* pages_;
    WelcomePage* welcome_;
    /// Of the open book; each with the action that shows it.
    std::vector<std::pair<QWidget*, QAction*>> bookPages_;
    QPointer<BatchEditor> editor_;
    PhoneLink* phone_ = nullptr;
    QPointer<CellsDayDialog> cellsDay_;
    SeasonChart* chart_ = nullptr;
    NucsPage* nucs_ = nullptr;
    WeekPage* week_ = nullptr;
    WeatherPage* weather_ = nullptr;
    VirginsPage* virgins_ = nullptr;
    EveningView* evening_ = nullptr;
    OrdersPage* orders_ = nullptr;
    PlanPage* plan_ = nullptr;
    QPointer<WhyDialog> why_;
    FactsPage* facts_ = nullptr;
    SetupPage* setup_ = nullptr;
    QLabel* calendarState_;  ///< empty while the phone's calendar is up to date
    QLabel* access_;
    QLabel* today_;
    QTimer minute_;
    QTimer backup_;
    Day backedUpOn_{};
};

}  // namespace tenthday
