#include "weather/weather_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "book/finished_file.h"
#include "book/new_id.h"
#include "look/page_parts.h"
#include "outlook/sky.h"
#include "paste/kept_list.h"
#include "records/verbs.h"
#include "records/weather_verbs.h"
#include "screen_text/drone_text.h"
#include "screen_text/fact_text.h"
#include "screen_text/record_text.h"
#include "screen_text/weather_text.h"
#include "screen_text/window_text.h"
#include "weather/days_model.h"
#include "weather/months_model.h"
#include "weather/record_only.h"

namespace tenthday {
namespace {

void makeTable(QTableView& table, QAbstractItemModel* model, const QString& name) {
    table.setModel(model);
    makeList(table, name);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setTabKeyNavigation(false);
    table.horizontalHeader()->setStretchLastSection(true);
}

/// Days with a tick and their highest temperature that say so.
int ticksOf(const std::vector<DayWeather>& days, bool flew) {
    return static_cast<int>(std::count_if(days.begin(), days.end(), [&](const auto& day) {
        return day.tmaxC && day.flew && *day.flew == flew;
    }));
}

}  // namespace

WeatherPage::WeatherPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      daysModel_(new DaysModel(this)),
      monthsModel_(new MonthsModel(this)),
      days_(new QTableView),
      months_(new QTableView),
      source_(new QLabel),
      limits_(new QLabel),
      drones_(new QLabel),
      monthsHead_(new QLabel),
      fitted_(new QLabel),
      told_(new QLabel),
      flew_(new QPushButton(weather_text::flewButton())),
      not_(new QPushButton(weather_text::notButton())),
      unsaid_(new QPushButton(weather_text::unsaidButton())),
      useFit_(new QPushButton(weather_text::useIt())),
      import_(new QPushButton(record_text::importEntry())) {
    monthsModel_->setEditable(!desk.isReadOnly());
    import_->setEnabled(!desk.isReadOnly());
    auto* parts = new QHBoxLayout;
    parts->setSpacing(24);
    parts->addWidget(makeDays(), 3);
    parts->addWidget(makeMonths(), 2);
    auto* column = pageColumn(*this);
    column->addWidget(makeTop());
    column->addLayout(parts, 1);
    told_->setWordWrap(true);
    column->addWidget(told_);
    setFocusProxy(days_);
    connect(&desk_, &Desk::shown, &seen_, &WhileSeen::follow);
    seen_.follow();
}

QWidget* WeatherPage::makeTop() {
    auto* top = new QWidget;
    auto* head = new QLabel(weather_text::head());
    makeHead(*head);
    makeStrong(*source_);
    limits_->setWordWrap(true);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    auto* first = new QHBoxLayout;
    first->addWidget(head, 1);
    first->addWidget(import_);
    connect(import_, &QPushButton::clicked, this, &WeatherPage::chooseFile);
    column->addLayout(first);
    column->addWidget(source_);
    column->addWidget(limits_);
    drones_->setWordWrap(true);
    column->addWidget(drones_);
    return top;
}

QWidget* WeatherPage::makeDays() {
    auto* part = new QWidget;
    auto* head = new QLabel(weather_text::lastDays());
    makeStrong(*head);
    makeTable(*days_, daysModel_, weather_text::lastDays());
    days_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    days_->installEventFilter(this);
    keepList(desk_, *days_, [this] {
        return KeptList{{"weather"},
                        [this](int row) { return std::vector{toText(daysModel_->dayAt(row))}; }};
    });
    fitted_->setWordWrap(true);
    connect(flew_, &QPushButton::clicked, this, [this] { say(true); });
    connect(not_, &QPushButton::clicked, this, [this] { say(false); });
    connect(unsaid_, &QPushButton::clicked, this, [this] { say(std::nullopt); });
    connect(useFit_, &QPushButton::clicked, this, &WeatherPage::useFit);
    connect(days_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &WeatherPage::tellChosen);
    auto* answers = new QHBoxLayout;
    for (auto* button : {flew_, not_, unsaid_}) answers->addWidget(button);
    answers->addStretch();
    auto* fitting = new QHBoxLayout;
    fitting->addWidget(fitted_, 1);
    fitting->addWidget(useFit_, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(head);
    column->addWidget(days_, 1);
    column->addLayout(answers);
    column->addLayout(fitting);
    days_->setCurrentIndex(daysModel_->index(0, DaysModel::Seen));
    return part;
}

QWidget* WeatherPage::makeMonths() {
    auto* part = new QWidget;
    makeStrong(*monthsHead_);
    makeTable(*months_, monthsModel_, weather_text::months(false, false));
    months_->setSelectionBehavior(QAbstractItemView::SelectItems);
    months_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                             QAbstractItemView::AnyKeyPressed);
    keepList(desk_, *months_, [] {
        return KeptList{{"climate"}, [](int row) { return std::vector{std::to_string(row + 1)}; }};
    });
    connect(monthsModel_, &MonthsModel::wished, this, &WeatherPage::setMonth);
    connect(monthsModel_, &MonthsModel::refused, this,
            [this](const QString& why) { told_->setText(why); });
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(monthsHead_);
    column->addWidget(months_, 1);
    return part;
}

QString WeatherPage::sourceText() const { return source_->text(); }
QString WeatherPage::fitText() const { return fitted_->text(); }
QString WeatherPage::dronesText() const { return drones_->text(); }
QString WeatherPage::told() const { return told_->text(); }

void WeatherPage::follow() {
    const auto& outlook = *desk_.outlook();
    const auto& facts = outlook.snapshot.facts();
    daysModel_->show(outlook.snapshot);
    monthsModel_->show(outlook.snapshot);
    source_->setText(weather_text::source(*outlook.mating));
    QStringList lines;
    QStringList sources;
    for (const auto fact : {Fact::FlyTmaxC, Fact::FlyWindMs, Fact::FlyRainMm}) {
        lines += weather_text::limit(facts, fact);
        sources += fact_text::sources(facts.entry(fact));
    }
    limits_->setText(lines.join(u'\n'));
    limits_->setToolTip(sources.join(u'\n'));
    drones_->setText(drone_text::needs(outlook.drones).join(u'\n'));
    drones_->setToolTip(drone_text::why(facts));
    const auto& seasons = outlook.mating->seasons();
    const bool pastYears = seasons && seasons->size() > 0;
    const auto& chain = outlook.mating->chain();
    monthsHead_->setText(weather_text::months(chain && !isRecordOnly(*chain), pastYears));
    told_->clear();
    tellFit();
    tellChosen();
}

void WeatherPage::tellFit() {
    const auto& snapshot = desk_.outlook()->snapshot;
    std::vector<DayWeather> days;
    for (const auto& row : snapshot.all<WeatherDay>())
        if (row->flew) days.push_back(weatherOf(*row));
    const auto& facts = snapshot.facts();
    const double inForce = facts[Fact::FlyTmaxC];
    fit_ = fitFlyingLimit(days, facts);
    fitted_->setText(weather_text::fit(fit_, inForce, ticksOf(days, true), ticksOf(days, false)));
    useFit_->setVisible(fit_.has_value());
    useFit_->setEnabled(fit_ && fit_->tmaxC != inForce && !desk_.isReadOnly());
}

/// What was said already can't be said again.
void WeatherPage::tellChosen() {
    const int row = days_->currentIndex().row();
    const bool can = row >= 0 && !desk_.isReadOnly();
    const auto said = row >= 0 ? daysModel_->flewAt(row) : std::nullopt;
    flew_->setEnabled(can && said != std::optional(true));
    not_->setEnabled(can && said != std::optional(false));
    unsaid_->setEnabled(can && said.has_value());
}

void WeatherPage::say(std::optional<bool> flew) {
    const int row = days_->currentIndex().row();
    if (row < 0 || desk_.isReadOnly()) return;
    const auto day = daysModel_->dayAt(row);
    auto changes = recordFlew(desk_.snapshot(), day, flew, newId<WeatherDay>());
    changes.subject = weather_text::flightsOn(day).toStdString();
    told_->setText(save(changes));
    days_->setFocus();  // a pressed button can't be pressed again, and keys go on
}

void WeatherPage::useFit() {
    if (!fit_) return;
    told_->setText(
        save(setFact(desk_.snapshot(), Fact::FlyTmaxC, fit_->tmaxC, newId<FactOverride>())));
    days_->setFocus();
}

void WeatherPage::setMonth(int month, std::optional<Tenths> tmaxC, std::optional<Tenths> rainDays) {
    auto changes = setClimateMonth(desk_.snapshot(), month, tmaxC, rainDays, newId<ClimateMonth>());
    if (changes) changes.value().subject = weather_text::usualWeather(month).toStdString();
    told_->setText(save(changes));
}

QString WeatherPage::save(const Result<ChangeSet>& changes) {
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return {};
    return window_text::cannotSaveEdit() + u' ' + QString::fromStdString(done.error().text);
}

void WeatherPage::chooseFile() {
    const auto path = QFileDialog::getOpenFileName(
        this, window_text::asTitle(record_text::importEntry()), {}, window_text::listFiles());
    if (!path.isEmpty()) importFrom(path);
}

void WeatherPage::importFrom(const QString& path) {
    if (desk_.isReadOnly()) return;
    auto text = readWhole(path);
    if (!text)
        return told_->setText(window_text::cannotImport() + u' ' +
                              QString::fromStdString(text.error().text));
    delete importing_;
    importing_ = new WeatherImportDialog(
        QFileInfo(path).fileName(), std::move(text).value(),
        [this](const std::vector<WeatherFileDay>& days) { return takeIn(days); }, this);
    importing_->setAttribute(Qt::WA_DeleteOnClose);
    importing_->open();
}

QString WeatherPage::takeIn(const std::vector<WeatherFileDay>& days) {
    auto changes = weatherEdit(desk_.snapshot(), days, [] { return idMaker().next(); });
    if (changes.isEmpty()) return record_text::nothingNew();
    changes.subject = window_text::kindName(QStringLiteral("weather")).toStdString();
    auto why = save(changes);
    if (why.isEmpty()) told_->setText(record_text::imported(static_cast<int>(changes.rows.size())));
    return why;
}

bool WeatherPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* press = static_cast<QKeyEvent*>(event);
        if ((press->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier) switch (press->key()) {
                case Qt::Key_F:
                    return say(true), true;
                case Qt::Key_N:
                    return say(false), true;
                case Qt::Key_Delete:
                    return say(std::nullopt), true;
                default:
                    break;
            }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
