#include "window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QMenuBar>
#include <QScreen>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QStatusBar>

#include "batches/batch_editor.h"
#include "book/backups.h"
#include "book/finished_file.h"
#include "book/new_book.h"
#include "book/new_id.h"
#include "book/restore.h"
#include "cellsday/cells_day_dialog.h"
#include "chart/chart_desk_link.h"
#include "chart/kept_folds.h"
#include "evening/evening_view.h"
#include "evening/queen_numbers_dialog.h"
#include "exchange/pasted.h"
#include "facts/facts_page.h"
#include "help/keys_dialog.h"
#include "nucs/nucs_page.h"
#include "orders/orders_page.h"
#include "paste/list_dialog.h"
#include "phone/phone_link.h"
#include "plan/plan_page.h"
#include "reasons/why_dialog.h"
#include "screen_text/dates.h"
#include "screen_text/phone_text.h"
#include "screen_text/picture_text.h"
#include "screen_text/welcome_text.h"
#include "screen_text/why_text.h"
#include "screen_text/window_text.h"
#include "setup/next_season_dialog.h"
#include "setup/setup_page.h"
#include "sheets/print_dialog.h"
#include "virgins/virgins_page.h"
#include "weather/weather_page.h"
#include "week/times_dialog.h"
#include "week/week_page.h"
#include "window/lists.h"
#include "window/screen_place.h"
#include "window/welcome_page.h"

namespace tenthday {

MainWindow::MainWindow(Settings settings, const Clock& clock, MakeExample makeExample)
    : settings_(std::move(settings)),
      clock_(clock),
      makeExample_(std::move(makeExample)),
      desktop_(QApplication::palette()),
      examplePath_(QDir(QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation))
                       .filePath(QStringLiteral("example.tenthday"))),
      actions_(*this),
      questions_(std::make_unique<DialogQuestions>(this)),
      pages_(new QStackedWidget),
      welcome_(new WelcomePage({{actions_.openExample, welcome_text::exampleDoes()},
                                {actions_.openBook, welcome_text::openDoes()},
                                {actions_.newBook, welcome_text::newDoes()}})),
      calendarState_(new QLabel),
      access_(new QLabel),
      today_(new QLabel) {
    setMinimumSize(kSmallestWindow);
    actions_.openExample->setVisible(static_cast<bool>(makeExample_));
    pages_->addWidget(welcome_);
    connect(welcome_, &WelcomePage::bookWished, this, &MainWindow::open);
    connect(welcome_, &WelcomePage::bookForgotten, this, [this](const QString& path) {
        settings_.forgetBook(path);
        showRecent();
    });
    connect(actions_.recentBooks, &QMenu::triggered, this,
            [this](const QAction* action) { open(action->data().toString()); });
    connect(actions_.seasons, &QMenu::aboutToShow, this, &MainWindow::listSeasons);
    connect(actions_.seasons, &QMenu::triggered, this,
            [this](const QAction* action) { showSeason(action->data().toString()); });
    showRecent();
    setCentralWidget(pages_);
    statusBar()->addPermanentWidget(calendarState_);
    statusBar()->addPermanentWidget(access_);
    statusBar()->addPermanentWidget(today_);
    connectActions();
    actions_.setHasBook(false);
    setWindowTitle(window_text::title({}));
    actions_.setLanguage(settings_.language());
    applyLook(settings_.look());
    restorePlace();
    minute_.start(60'000);
    connect(&minute_, &QTimer::timeout, this, [this] {
        if (desk_ && !desk_->isPreviewing()) desk_->refreshToday();
        if (clock_.realDay() != backedUpOn_) backUpAtRest();
    });
    backup_.setSingleShot(true);
    connect(&backup_, &QTimer::timeout, this, &MainWindow::backUpAtRest);
}

MainWindow::~MainWindow() { dropPages(); }

BatchEditor* MainWindow::batchEditor() const { return editor_; }
CellsDayDialog* MainWindow::cellsDay() const { return cellsDay_; }

void MainWindow::connectActions() {
    const auto on = [this](QAction* action, auto&& act) {
        connect(action, &QAction::triggered, this, std::forward<decltype(act)>(act));
    };
    on(actions_.newBook, [this] { makeNewBook(); });
    on(actions_.openBook, [this] {
        if (const auto path = questions_->bookToOpen(); !path.isEmpty()) open(path);
    });
    on(actions_.openExample, [this] { openExample(); });
    on(actions_.closeBook, [this] { closeBook(); });
    on(actions_.saveCopy, [this] { saveCopy(); });
    on(actions_.savePicture, [this] { savePicture(); });
    on(actions_.quit, [this] { close(); });
    on(actions_.undo, [this] { undoOrRedo(&Desk::undo, &Desk::undoSeason); });
    on(actions_.redo, [this] { undoOrRedo(&Desk::redo, &Desk::redoSeason); });
    on(actions_.planBatch, [this] { planBatch({}); });
    on(actions_.editBatch, [this] {
        if (const auto batch = chart_->selectedBatch()) editBatch(*batch);
    });
    on(actions_.cellsDay, [this] { showCellsDay({}); });
    on(actions_.zoomIn, [this] { chart_->zoomIn(); });
    on(actions_.zoomOut, [this] { chart_->zoomOut(); });
    on(actions_.wholeSeason, [this] { chart_->showWholeSeason(); });
    on(actions_.goToToday, [this] { chart_->goToToday(); });
    on(actions_.eachNuc, [this] { chart_->openOrCloseYards(); });
    on(actions_.importList, [this] { importList(); });
    on(actions_.exportList, [this] { exportList(); });
    on(actions_.weekSheet, [this] { showWeekSheet(); });
    on(actions_.workTimes, [this] { TimesDialog(*desk_, this).exec(); });
    on(actions_.nextSeason, [this] { endSeason(); });
    on(actions_.printLists, [this] {
        const auto kind = settings_.printChoice().kind;
        printPaper(kind, chart_->chosenDay().value_or(desk_->snapshot().today()));
    });
    on(actions_.phoneCalendar, [this] { phone_->ask(); });
    on(actions_.restoreBackup, [this] { restoreBackup(); });
    on(actions_.seasonPage, [this] { showPage(chart_); });
    on(actions_.nucsPage, [this] { showPage(nucs_); });
    on(actions_.weekPage, [this] { showPage(week_); });
    on(actions_.weatherPage, [this] { showPage(weather_); });
    on(actions_.virginsPage, [this] { showPage(virgins_); });
    on(actions_.eveningPage, [this] { showPage(evening_); });
    on(actions_.ordersPage, [this] { showPage(orders_); });
    on(actions_.planPage, [this] { showPage(plan_); });
    on(actions_.newTask, [this] {
        showPage(week_);
        if (pages_->currentWidget() == week_) week_->addTask();
    });
    on(actions_.whyThisDay, [this] { showWhy(); });
    on(actions_.setupPage, [this] { showPage(setup_); });
    on(actions_.factsPage, [this] { showPage(facts_); });
    on(actions_.keys, [this] { showKeys(); });
    for (std::size_t i = 0; i < std::size(actions_.languages); ++i)
        on(actions_.languages[i], [this, i] {
            settings_.setLanguage(static_cast<Language>(i));
            statusBar()->showMessage(window_text::languageFromNextStart());
        });
    for (std::size_t i = 0; i < std::size(actions_.looks); ++i)
        on(actions_.looks[i], [this, i] {
            settings_.setLook(static_cast<LookChoice>(i));
            applyLook(static_cast<LookChoice>(i));
        });
}

void MainWindow::start(const QString& path) {
    if (!path.isEmpty()) {
        open(path);
        return;
    }
    const auto last = settings_.lastBook();
    if (!last.isEmpty() && QFileInfo::exists(last)) open(last);
}

bool MainWindow::open(const QString& path) {
    // The book shown may be the one asked for; its lock would stand in the way.
    if (desk_ && QFileInfo(path) == QFileInfo(desk_->path())) return true;
    if (!mayLeavePages()) return false;
    OpenOptions options;
    options.clock = clock_;
    auto desk = Desk::open(path, options);
    if (!desk) desk = openForReading(path, desk.error());
    if (!desk) return false;
    showDesk(std::move(desk).value());
    return true;
}

Result<std::unique_ptr<Desk>> MainWindow::openForReading(const QString& path, const Error& why) {
    OpenOptions options;
    options.clock = clock_;
    options.access = Access::ReadOnly;
    auto desk = Desk::open(path, options);
    if (desk && questions_->readInstead(why)) return desk;
    if (desk) return why;
    const auto backup = isDamaged(path) ? newestGoodBackup(path) : QString();
    if (backup.isEmpty()) {
        questions_->tell(window_text::cannotOpen(), why, {});
        return why;
    }
    if (!questions_->restoreInstead(why, backup) || !restoreFrom(path, backup)) return why;
    options.access = Access::ReadWrite;
    return Desk::open(path, options);
}

void MainWindow::dropPages() {
    delete editor_;
    delete phone_;  // writes what still waits
    phone_ = nullptr;
    calendarState_->clear();
    delete cellsDay_;
    for (const auto& [page, action] : bookPages_) delete page;
    bookPages_.clear();
    chart_ = nullptr;
    nucs_ = nullptr;
    week_ = nullptr;
    weather_ = nullptr;
    virgins_ = nullptr;
    evening_ = nullptr;
    orders_ = nullptr;
    plan_ = nullptr;
    delete why_;
    facts_ = nullptr;
    setup_ = nullptr;
}

void MainWindow::makePages() {
    facts_ = new FactsPage(*desk_);
    addPage(facts_, actions_.factsPage);
    setup_ = new SetupPage(*desk_);
    addPage(setup_, actions_.setupPage);
    connect(setup_, &SetupPage::tradeNumbersWanted, actions_.factsPage, &QAction::trigger);
    nucs_ = new NucsPage(*desk_);
    addPage(nucs_, actions_.nucsPage);
    week_ = new WeekPage(*desk_);
    addPage(week_, actions_.weekPage);
    weather_ = new WeatherPage(*desk_);
    addPage(weather_, actions_.weatherPage);
    virgins_ = new VirginsPage(*desk_);
    addPage(virgins_, actions_.virginsPage);
    evening_ = new EveningView(*desk_);
    numberQueens();
    connect(evening_, &EveningView::queenNumbersWished, this, &MainWindow::askQueenNumbers);
    addPage(evening_, actions_.eveningPage);
    orders_ = new OrdersPage(*desk_);
    addPage(orders_, actions_.ordersPage);
    chart_ = new SeasonChart;
    chart_->setLook(lookFor(settings_.look(), desktop_));
    keepFolds(*chart_, settings_);
    auto* link = new ChartDeskLink(*chart_, *desk_);
    connect(link, &ChartDeskLink::refused, this,
            [this](const QString& why) { statusBar()->showMessage(why); });
    addPage(chart_, actions_.seasonPage);
    makePlan();
    connect(chart_, &SeasonChart::editRequested, this, &MainWindow::editBatch);
    connect(chart_, &SeasonChart::planRequested, this, [this](Day day) { planBatch(day); });
    connect(chart_, &SeasonChart::orderRequested, this, [this](Id<Order> order) {
        showPage(orders_);
        orders_->choose(order);
    });
    connect(chart_, &SeasonChart::cellsDayRequested, this, &MainWindow::showCellsDay);
    connect(nucs_, &NucsPage::cellsDayWished, this, &MainWindow::showCellsDay);
    connect(evening_, &EveningView::cellsDayWished, this, &MainWindow::showCellsDay);
    connect(chart_, &SeasonChart::dayChosen, nucs_, &NucsPage::setDay);
    connect(nucs_, &NucsPage::dayChosen, chart_, &SeasonChart::setChosenDay);
    connect(chart_, &SeasonChart::dayChosen, week_, &WeekPage::setDay);
    connect(week_, &WeekPage::dayChosen, chart_, &SeasonChart::setChosenDay);
    connect(chart_, &SeasonChart::dayChosen, virgins_, &VirginsPage::setDay);
    connect(virgins_, &VirginsPage::dayChosen, chart_, &SeasonChart::setChosenDay);
    connect(virgins_, &VirginsPage::batchWished, this, &MainWindow::editBatch);
    connect(virgins_, &VirginsPage::nucWished, this, [this](Id<NucSide> side) {
        nucs_->setDay(virgins_->day());
        showPage(nucs_);
        nucs_->choose(side);
    });
    connect(week_, &WeekPage::dayChosen, evening_, &EveningView::setDay);
    connect(week_, &WeekPage::printWished, this, &MainWindow::showWeekSheet);
    connect(week_, &WeekPage::whyWished, this, &MainWindow::showWhy);
    showPage(chart_);
}

void MainWindow::makePlan() {
    plan_ = new PlanPage(*desk_);
    addPage(plan_, actions_.planPage);
    connect(plan_, &PlanPage::proposalsShown, chart_, &SeasonChart::setProposals);
    connect(plan_, &PlanPage::chartWanted, this, [this] { showPage(chart_); });
    connect(plan_, &PlanPage::ordersWanted, this, [this] { showPage(orders_); });
    connect(plan_, &PlanPage::setupWanted, this, [this](setup_text::Kind kind) {
        showPage(setup_);
        setup_->kinds().setCurrentRow(static_cast<int>(kind));
    });
}

void MainWindow::numberQueens() {
    const auto numbering = settings_.queenNumbering();
    evening_->setQueenNumbers(numbering.on ? numbering.pattern : QString());
}

void MainWindow::askQueenNumbers() {
    QueenNumbersDialog dialog(settings_.queenNumbering(), desk_->snapshot(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    settings_.setQueenNumbering(dialog.numbering());
    numberQueens();
}

void MainWindow::addPage(QWidget* page, QAction* action) {
    pages_->addWidget(page);
    bookPages_.emplace_back(page, action);
}

void MainWindow::showPage(QWidget* page) {
    if (page == nullptr) return;
    if (page != pages_->currentWidget() && !mayLeavePages()) page = pages_->currentWidget();
    pages_->setCurrentWidget(page);
    page->setFocus();
    for (const auto& [shown, action] : bookPages_)
        if (shown == page) action->setChecked(true);
    for (auto* action : {actions_.zoomIn, actions_.zoomOut, actions_.wholeSeason,
                         actions_.goToToday, actions_.eachNuc})
        action->setEnabled(page == chart_);
}

WhyDialog* MainWindow::why() const { return why_; }

/// Of the chosen task on the week's page, of the chosen nuc's batch, of the batch that fills the
/// chosen order, else of the chart's batch.
void MainWindow::showWhy() {
    auto wish = DateOfBatch{chart_->selectedBatch(), {}};
    if (pages_->currentWidget() == week_) wish = week_->chosenDate();
    if (pages_->currentWidget() == nucs_) wish = nucs_->chosenDate();
    if (pages_->currentWidget() == virgins_) wish = virgins_->chosenDate();
    if (pages_->currentWidget() == orders_) wish = orders_->chosenDate();
    if (!wish.batch) return statusBar()->showMessage(why_text::chooseBatch());
    if (why_ == nullptr) {
        why_ = new WhyDialog(*desk_, *wish.batch, wish.event, this);
        why_->setAttribute(Qt::WA_DeleteOnClose);
        why_->show();
    } else {
        why_->showBatch(*wish.batch, wish.event);
        why_->raise();
    }
}

bool MainWindow::mayLeavePages() { return setup_ == nullptr || setup_->mayLeave(); }

void MainWindow::restoreBackup() {
    if (!mayLeavePages()) return;
    const auto path = desk_->path();
    const auto backup = questions_->backupToRestore(backupsOf(path));
    if (backup.isEmpty()) return;
    dropPages();
    desk_.reset();  // gives the lock back
    const bool done = restoreFrom(path, backup);
    const auto told = statusBar()->currentMessage();
    if (open(path)) {
        if (done) statusBar()->showMessage(told);
        return;
    }
    showWelcome();
}

void MainWindow::closeBook() {
    if (!mayLeavePages()) return;
    dropPages();
    desk_.reset();
    settings_.setLastBook({});
    showWelcome();
}

void MainWindow::showWelcome() {
    pages_->setCurrentWidget(welcome_);
    actions_.setHasBook(false);
    setWindowTitle(window_text::title({}));
    setWindowFilePath({});
    access_->clear();
    today_->clear();
    showRecent();
    welcome_->focusFirst();
}

void MainWindow::showRecent() {
    const auto books = settings_.recentBooks();
    welcome_->showRecent(books);
    auto& menu = *actions_.recentBooks;
    menu.setToolTipsVisible(true);
    menu.clear();
    for (const auto& book : books) {
        const auto name =
            book.label.isEmpty() ? QFileInfo(book.path).completeBaseName() : book.label;
        auto* action =
            menu.addAction(QString(name).replace(QStringLiteral("&"), QStringLiteral("&&")));
        action->setData(book.path);
        action->setToolTip(book.path);
    }
    if (books.isEmpty()) menu.addAction(welcome_text::noRecent())->setEnabled(false);
}

void MainWindow::listSeasons() {
    auto& menu = *actions_.seasons;
    menu.clear();
    if (!desk_) return;
    const auto& snapshot = desk_->snapshot();
    std::vector<Ptr<Season>> seasons(snapshot.all<Season>().begin(), snapshot.all<Season>().end());
    std::sort(seasons.begin(), seasons.end(),
              [](const auto& a, const auto& b) { return a->from < b->from; });
    for (const auto& season : seasons) {
        auto* action = menu.addAction(
            window_text::season(QString::fromStdString(season->label)
                                    .replace(QStringLiteral("&"), QStringLiteral("&&")),
                                season->from, season->until));
        action->setData(QString::fromStdString(toText(season->id.uuid)));
        action->setCheckable(true);
        action->setChecked(season->id == snapshot.seasonId());
    }
}

void MainWindow::showSeason(const QString& id) {
    const auto season = uuidFromText(id.toStdString());
    if (!desk_ || !season || !mayLeavePages()) return;
    if (const auto shown = desk_->showSeason({*season}); !shown)
        questions_->tell(window_text::cannotOpen(), shown.error(), {});
}

bool MainWindow::restoreFrom(const QString& path, const QString& backup) {
    const auto kept = tenthday::restoreBackup(path, backup, clock_.realDay());
    if (!kept) {
        questions_->tell(window_text::cannotRestore(), kept.error(), {});
        return false;
    }
    statusBar()->showMessage(window_text::restored(kept.value()));
    return true;
}

void MainWindow::importList() {
    const auto wish = questions_->listToImport();
    if (!wish) return;
    backUp();
    const auto text = readWhole(wish->path);
    // Of the bytes: as a QString what is no UTF-8 would pass for text.
    const auto readable = text ? readPasted(text.value()) : Result<PastedCells>(text.error());
    const auto taken = [this](int rows) { statusBar()->showMessage(window_text::imported(rows)); };
    const auto dialog = readable ? listDialog(*desk_, wish->kind, text.value(), taken, this)
                                 : Result<PasteDialog*>(readable.error());
    if (!dialog) return questions_->tell(window_text::cannotImport(), dialog.error(), {});
    dialog.value()->setAttribute(Qt::WA_DeleteOnClose);
    dialog.value()->open();
}

void MainWindow::exportList() {
    const auto wish = questions_->placeForList();
    if (!wish) return;
    const auto done = tenthday::exportList(*desk_, wish->kind, wish->path, wish->forSpreadsheet);
    if (!done) return questions_->tell(window_text::cannotExport(), done.error(), {});
    statusBar()->showMessage(window_text::exported(wish->path));
}

void MainWindow::showWeekSheet() {
    const auto day = pages_->currentWidget() == week_
                         ? week_->day()
                         : chart_->chosenDay().value_or(desk_->snapshot().today());
    printPaper(PaperKind::Week, day);
}

void MainWindow::endSeason() {
    if (!mayLeavePages()) return;
    NextSeasonDialog dialog(*desk_, this);
    if (dialog.exec() == QDialog::Accepted) showSeason(dialog.seasonMade());
}

void MainWindow::printPaper(PaperKind kind, Day day) {
    PaperWish wish;
    wish.choice.kind = kind;
    wish.day = day;
    wish.batch = chart_->selectedBatch();
    auto* dialog = new PrintDialog(desk_->outlook(), settings_, wish, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MainWindow::planBatch(std::optional<Day> day) {
    const auto& snapshot = desk_->snapshot();
    const auto on = day ? *day : chart_->chosenDay().value_or(snapshot.today());
    openEditor(newDraft(snapshot, on, newId<Batch>()));
}

void MainWindow::editBatch(Id<Batch> batch) {
    if (desk_->snapshot().find(batch)) openEditor(draftOf(desk_->snapshot(), batch));
}

void MainWindow::openEditor(const BatchDraft& draft) {
    delete editor_;
    editor_ = new BatchEditor(*desk_, settings_, draft, this);
    editor_->setAttribute(Qt::WA_DeleteOnClose);
    connect(editor_, &QDialog::accepted, this, [this, id = draft.id] {
        if (desk_->snapshot().find(id)) chart_->setSelectedBatch(id);
    });
    connect(editor_, &BatchEditor::furtherWished, this, [this](const BatchDraft& further) {
        QTimer::singleShot(0, this, [this, further] { openEditor(further); });
    });
    editor_->open();
}

void MainWindow::showCellsDay(std::optional<Day> day) {
    delete cellsDay_;
    const auto on = day ? *day : chart_->chosenDay().value_or(desk_->snapshot().today());
    cellsDay_ = new CellsDayDialog(*desk_, settings_, cellsDayNear(*desk_->outlook(), on), this);
    cellsDay_->setAttribute(Qt::WA_DeleteOnClose);
    cellsDay_->open();
}

void MainWindow::showKeys() {
    auto* dialog = new KeysDialog(*menuBar(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->show();
}

void MainWindow::showDesk(std::unique_ptr<Desk> desk) {
    dropPages();  // they lean on the book that goes
    desk_ = std::move(desk);
    actions_.setHasBook(true);
    makePages();
    connect(desk_.get(), &Desk::shown, this,
            [this](const OutlookPtr&, const Changes& changes) { follow(changes); });
    const auto path = QFileInfo(desk_->path()).absoluteFilePath();
    settings_.setLastBook(path);
    settings_.rememberBook(
        {path, QString::fromStdString(desk_->snapshot().book().label), toQDate(clock_.realDay())});
    showRecent();
    setWindowTitle(window_text::title(QString::fromStdString(desk_->snapshot().book().label)));
    setWindowFilePath(path);
    access_->setText(desk_->isReadOnly() ? window_text::readOnly() : QString());
    follow({});
    linkPhone();
    backup_.start(3'000);  // the first picture comes first
}

void MainWindow::linkPhone() {
    phone_ =
        new PhoneLink(*desk_, settings_, *this, [] { return QDateTime::currentDateTimeUtc(); });
    connect(phone_, &PhoneLink::told, this,
            [this](const QString& what) { statusBar()->showMessage(what); });
    connect(phone_, &PhoneLink::outOfDate, this, [this](const QString& why) {
        calendarState_->setText(why.isEmpty() ? QString() : phone_text::outOfDate());
        calendarState_->setToolTip(why);
    });
}

void MainWindow::follow(const Changes& changes) {
    if (changes.isPreview()) return;
    actions_.nameUndo(desk_->undoName(), desk_->redoName());
    today_->setText(window_text::todayIs(desk_->snapshot().today()));
}

void MainWindow::makeNewBook() {
    const auto wish = questions_->newBook(clock_.today({}));
    if (!wish) return;
    if (auto made = createBook(wish->path, newBookContent(wish->plan)); made)
        open(wish->path);
    else
        questions_->tell(window_text::cannotMake(), made.error(), {});
}

void MainWindow::openExample() {
    if (!QFileInfo::exists(examplePath_)) {
        QDir().mkpath(QFileInfo(examplePath_).absolutePath());
        if (auto made = makeExample_(examplePath_); !made) {
            questions_->tell(window_text::cannotMake(), made.error(), {});
            return;
        }
    }
    open(examplePath_);
}

void MainWindow::saveCopy() {
    const QFileInfo book(desk_->path());
    const auto today = QString::fromStdString(toText(clock_.realDay()));
    const auto suggestion = QStringLiteral("%1 %2.tenthday").arg(book.completeBaseName(), today);
    const auto path = questions_->placeForCopy(book.absoluteDir().filePath(suggestion));
    if (path.isEmpty()) return;
    if (auto saved = desk_->file().saveCopy(path, true); saved)
        statusBar()->showMessage(window_text::copySaved(path));
    else
        questions_->tell(window_text::cannotSaveCopy(), saved.error(), {});
}

/// The days and the batch that the chart shows; a poster shows the whole of what happens.
void MainWindow::savePicture() {
    const auto& snapshot = desk_->snapshot();
    const auto season = snapshot.find(snapshot.seasonId());
    const auto name = season ? QString::fromStdString(season->label) : QString();
    const auto file = questions_->placeForPicture(name);
    if (!file) return;
    PictureOptions options;
    options.poster = file->poster;
    if (!file->poster) {
        options.days = chart_->dayAxis().visible();
        options.size = chart_->size();
        options.chosenDay = chart_->chosenDay();
        options.selected = chart_->selectedBatch();
    }
    if (auto drawn = renderPicture(*desk_->outlook(), options, file->path); drawn)
        statusBar()->showMessage(picture_text::saved(file->path));
    else
        questions_->tell(picture_text::cannotSave(), drawn.error(), {});
}

/// What was done in another season is taken back where it is seen.
void MainWindow::undoOrRedo(Result<void> (Desk::*step)(), Ptr<Season> (Desk::*of)() const) {
    if (!desk_) return;
    const auto season = (desk_.get()->*of)();
    if (season) {
        showSeason(QString::fromStdString(toText(season->id.uuid)));
        if (desk_->snapshot().seasonId() != season->id) return;  // a page is not left
        statusBar()->showMessage(window_text::undoneIn(QString::fromStdString(season->label)));
    }
    if (auto done = (desk_.get()->*step)(); !done)
        questions_->tell(window_text::cannotSaveEdit(), done.error(), {});
}

void MainWindow::backUpAtRest() {
    // A drag under way would stumble over the time a large book takes.
    if (desk_ && desk_->isPreviewing()) return backup_.start(3'000);
    backUp();
}

void MainWindow::backUp() {
    if (!desk_) return;
    if (auto made = desk_->file().backUp(); made)
        backedUpOn_ = clock_.realDay();
    else
        statusBar()->showMessage(
            window_text::backupFailed(QString::fromStdString(made.error().text)));
}

void MainWindow::applyLook(LookChoice choice) {
    actions_.setLook(choice);
    const auto look = lookFor(choice, desktop_);
    QApplication::setPalette(widgetPalette(look));
    if (chart_ != nullptr) chart_->setLook(look);
}

void MainWindow::restorePlace() {
    QList<QRect> screens;
    for (const auto* screen : QGuiApplication::screens()) screens += screen->availableGeometry();
    const auto place = placeOnScreen(settings_.windowPlace(), screens);
    resize(place.size());
    move(place.topLeft());
    if (settings_.isMaximized()) setWindowState(windowState() | Qt::WindowMaximized);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!mayLeavePages()) return event->ignore();
    const auto normal = normalGeometry();
    settings_.setWindowPlace(isMaximized() && normal.isValid() ? normal : QRect(pos(), size()),
                             isMaximized());
    QMainWindow::closeEvent(event);
}

}  // namespace tenthday
