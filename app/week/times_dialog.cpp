#include "week/times_dialog.h"

#include <QDateTime>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "book/new_id.h"
#include "look/page_parts.h"
#include "screen_text/times_text.h"
#include "screen_text/week_text.h"
#include "tasks/work_time.h"

namespace tenthday {
namespace {

constexpr int kNotSet = -1;

QString plain(const std::string& text) { return QString::fromStdString(text); }

/// The tick in the log's picture of an edit; nothing where it took one back.
std::optional<TickTime> tickOf(const std::string& at, const std::string& images) {
    const auto edits = QJsonDocument::fromJson(QByteArray::fromStdString(images)).array();
    for (const auto& edit : edits) {
        const auto after = edit.toObject().value(QStringLiteral("after")).toObject();
        const auto rule =
            fromToken<TaskRule>(after.value(QStringLiteral("rule")).toString().toStdString());
        const auto day = dayFromText(after.value(QStringLiteral("day")).toString().toStdString());
        const auto when = QDateTime::fromString(plain(at), Qt::ISODateWithMs);
        if (rule && day && when.isValid()) return TickTime{*rule, *day, when.toSecsSinceEpoch()};
    }
    return std::nullopt;
}

QTableWidget* makeTable(int columns, const QString& name, QString (*head)(int)) {
    auto* table = new QTableWidget(0, columns);
    makeList(*table, name);
    for (int i = 0; i < columns; ++i)
        table->setHorizontalHeaderItem(i, new QTableWidgetItem(head(i)));
    table->setSelectionMode(QAbstractItemView::NoSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->horizontalHeader()->setStretchLastSection(true);
    return table;
}

}  // namespace

std::vector<TickTime> tickTimes(Desk& desk) {
    std::vector<TickTime> ticks;
    const auto done = desk.file().connection().read(
        QStringLiteral("SELECT at, images FROM change WHERE verb = 'tick_task' ORDER BY at"), {},
        [&](const Values& row) -> Result<void> {
            const auto* at = std::get_if<std::string>(&row[0]);
            const auto* images = std::get_if<std::string>(&row[1]);
            if (at && images)
                if (const auto tick = tickOf(*at, *images)) ticks.push_back(*tick);
            return {};
        });
    return done ? ticks : std::vector<TickTime>{};
}

TimesDialog::TimesDialog(Desk& desk, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      learned_(learnedTimes(tickTimes(desk))),
      works_(makeTable(4, times_text::works(), times_text::workHead)),
      ways_(makeTable(3, times_text::ways(), times_text::wayHead)),
      told_(new QLabel),
      learn_(new QPushButton(times_text::takeLearned())),
      save_(new QPushButton(times_text::save())) {
    setWindowTitle(times_text::head());
    auto* explained = new QLabel(times_text::explained());
    for (auto* words : {explained, told_}) words->setWordWrap(true);
    auto* tables = new QHBoxLayout;
    tables->addWidget(works_, 3);
    tables->addWidget(ways_, 2);
    auto* cancel = new QPushButton(times_text::cancel());
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(learn_);
    buttons->addStretch();
    buttons->addWidget(save_);
    buttons->addWidget(cancel);
    auto* column = pageColumn(*this);
    column->addWidget(explained);
    column->addLayout(tables, 1);
    column->addWidget(told_);
    column->addLayout(buttons);
    connect(learn_, &QPushButton::clicked, this, &TimesDialog::takeLearned);
    connect(save_, &QPushButton::clicked, this, &QDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    save_->setDefault(true);
    save_->setEnabled(!desk.isReadOnly());
    learn_->setEnabled(!learned_.empty() && !desk.isReadOnly());
    told_->setText(learned_.empty() ? times_text::nothingLearned() + u' ' + times_text::learnHint()
                                    : times_text::learnHint());
    resize(1080, 680);
    fillWorks();
    fillWays();
}

QString TimesDialog::told() const { return told_->text(); }

void TimesDialog::fillWorks() {
    works_->setRowCount(static_cast<int>(kTokenCount<TaskRule>));
    for (std::size_t i = 0; i < kTokenCount<TaskRule>; ++i) {
        const int row = static_cast<int>(i);
        const auto rule = static_cast<TaskRule>(i);
        const auto minutes = taskMinutes(desk_.snapshot(), rule);
        auto* once = new QSpinBox;
        once->setRange(0, 1440);
        once->setSuffix(times_text::minutes());
        once->setValue(minutes.once);
        auto* each = new QDoubleSpinBox;
        each->setRange(0, 240);
        each->setDecimals(1);
        each->setSingleStep(0.5);
        each->setSuffix(times_text::minutes());
        each->setValue(minutes.each.value / 10.0);
        once->setAccessibleName(week_text::kind(rule) + u' ' + times_text::workHead(1));
        each->setAccessibleName(week_text::kind(rule) + u' ' + times_text::workHead(2));
        auto from = minutes.own ? times_text::own() : times_text::usual();
        for (const auto& learned : learned_)
            if (learned.rule == rule)
                from += QStringLiteral("; ") + times_text::learned(learned.minutes, learned.gaps);
        works_->setItem(row, 0, new QTableWidgetItem(week_text::kind(rule)));
        works_->setCellWidget(row, 1, once);
        works_->setCellWidget(row, 2, each);
        works_->setItem(row, 3, new QTableWidgetItem(from));
        once_.push_back(once);
        each_.push_back(each);
    }
    works_->resizeColumnsToContents();
}

void TimesDialog::addWay(std::optional<Id<Yard>> from, const Ptr<Yard>& to, const QString& name) {
    const int row = ways_->rowCount();
    ways_->setRowCount(row + 1);
    auto* minutes = new QSpinBox;
    minutes->setRange(kNotSet, 1440);
    minutes->setSpecialValueText(times_text::notSet());
    minutes->setSuffix(times_text::minutes());
    minutes->setValue(driveMinutes(desk_.snapshot(), from, to->id).value_or(kNotSet));
    minutes->setAccessibleName(name + u' ' + plain(to->label));
    ways_->setItem(row, 0, new QTableWidgetItem(name));
    ways_->setItem(row, 1, new QTableWidgetItem(plain(to->label)));
    ways_->setCellWidget(row, 2, minutes);
    wayRows_.push_back({from, to->id, minutes});
}

/// From home to each yard, then between each two, in driving order.
void TimesDialog::fillWays() {
    std::vector<Ptr<Yard>> yards;
    for (const auto& yard : desk_.snapshot().all<Yard>()) yards.push_back(yard);
    std::stable_sort(yards.begin(), yards.end(),
                     [](const auto& a, const auto& b) { return a->driveOrder < b->driveOrder; });
    for (const auto& yard : yards) addWay(std::nullopt, yard, times_text::home());
    for (std::size_t i = 0; i < yards.size(); ++i)
        for (std::size_t k = i + 1; k < yards.size(); ++k)
            addWay(yards[i]->id, yards[k], plain(yards[i]->label));
    ways_->resizeColumnsToContents();
}

/// All of it is put on "once": ticks cannot tell what each piece takes.
void TimesDialog::takeLearned() {
    for (const auto& learned : learned_) {
        once_[static_cast<std::size_t>(learned.rule)]->setValue(learned.minutes);
        each_[static_cast<std::size_t>(learned.rule)]->setValue(0);
    }
}

void TimesDialog::accept() {
    const auto& snapshot = desk_.snapshot();
    std::vector<WorkTime> works;
    for (std::size_t i = 0; i < once_.size(); ++i) {
        const auto rule = static_cast<TaskRule>(i);
        const auto now = taskMinutes(snapshot, rule);
        const Tenths each{static_cast<std::int32_t>(each_[i]->value() * 10 + 0.5)};
        if (once_[i]->value() != now.once || each != now.each)
            works.push_back({{}, 1, rule, once_[i]->value(), each});
    }
    std::vector<DriveTime> drives;
    for (const auto& way : wayRows_)
        if (way.minutes->value() != kNotSet)
            drives.push_back({{}, 1, way.from, way.to, way.minutes->value()});
    const auto changes = setTimes(snapshot, works, drives, [] { return idMaker().next(); });
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return QDialog::accept();
    told_->setText(plain(done.error().text));
}

}  // namespace tenthday
