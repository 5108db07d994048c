#include "week/times_dialog.h"

#include <QApplication>
#include <QClipboard>
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
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "book/new_id.h"
#include "look/page_parts.h"
#include "look/table_keys.h"
#include "paste/table_lines.h"
#include "screen_text/times_text.h"
#include "screen_text/week_text.h"
#include "week/times_paste.h"
#include "week/ways.h"

namespace tenthday {
namespace {

constexpr int kNotSet = -1;
enum WorkColumn { OfTask, Once, Each, Source, Clear };

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

QToolButton* makeClear(const QString& tip, const QString& of) {
    auto* clear = new QToolButton;
    clear->setText(times_text::clear());
    clear->setToolTip(tip);
    clear->setAccessibleName(times_text::clear() + u' ' + of);
    clear->setFocusPolicy(Qt::StrongFocus);
    return clear;
}

QSpinBox* makeMinutes(int least, const QString& name) {
    auto* minutes = new QSpinBox;
    minutes->setRange(least, 1440);
    minutes->setSuffix(times_text::minutes());
    minutes->setAccessibleName(name);
    return minutes;
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
      workTable_(makeTable(5, times_text::works(), times_text::workHead)),
      wayTable_(makeTable(4, times_text::ways(), times_text::wayHead)),
      told_(new QLabel),
      learn_(new QPushButton(times_text::takeLearned())),
      paste_(new QPushButton(times_text::paste())),
      save_(new QPushButton(times_text::save())) {
    setWindowTitle(times_text::head());
    auto* explained = new QLabel(times_text::explained());
    for (auto* words : {explained, told_}) words->setWordWrap(true);
    auto* tables = new QHBoxLayout;
    tables->addWidget(workTable_, 3);
    tables->addWidget(wayTable_, 2);
    auto* cancel = new QPushButton(times_text::cancel());
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(learn_);
    buttons->addWidget(paste_);
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
    for (std::size_t i = 0; i < kTokenCount<TaskRule>; ++i) addWork(static_cast<TaskRule>(i));
    workTable_->resizeColumnsToContents();
    fillWays();
    paste_->setToolTip(times_text::pasteTip());
    paste_->setEnabled(!desk.isReadOnly());
    makePastable();
}

QString TimesDialog::told() const { return told_->text(); }

QString TimesDialog::from(TaskRule rule) const {
    return workTable_->item(static_cast<int>(rule), Source)->text();
}

void TimesDialog::addWork(TaskRule rule) {
    const int row = workTable_->rowCount();
    workTable_->setRowCount(row + 1);
    const auto name = week_text::kind(rule);
    const auto minutes = taskMinutes(desk_.snapshot(), rule);
    auto* once = makeMinutes(0, name + u' ' + times_text::workHead(Once));
    once->setValue(minutes.once);
    auto* each = new QDoubleSpinBox;
    each->setRange(0, 240);
    each->setDecimals(1);
    each->setSingleStep(0.5);
    each->setSuffix(times_text::minutes());
    each->setValue(minutes.each.value / 10.0);
    each->setAccessibleName(name + u' ' + times_text::workHead(Each));
    auto* clear = makeClear(times_text::clearTip(), name);
    works_.push_back({once, each, clear, minutes.own});
    workTable_->setItem(row, OfTask, new QTableWidgetItem(name));
    workTable_->setCellWidget(row, Once, once);
    workTable_->setCellWidget(row, Each, each);
    workTable_->setItem(row, Source, new QTableWidgetItem);
    workTable_->setCellWidget(row, Clear, clear);
    setOwn(rule, minutes.own);
    connect(once, &QSpinBox::valueChanged, this, [this, rule] { setOwn(rule, true); });
    connect(each, &QDoubleSpinBox::valueChanged, this, [this, rule] { setOwn(rule, true); });
    connect(clear, &QToolButton::clicked, this, [this, rule] { clearWork(rule); });
}

void TimesDialog::setOwn(TaskRule rule, bool own) {
    works_[at(rule)].own = own;
    works_[at(rule)].clear->setEnabled(own && !desk_.isReadOnly());
    auto from = own ? times_text::own() : times_text::usual();
    for (const auto& learned : learned_)
        if (learned.rule == rule)
            from += QStringLiteral("; ") + times_text::learned(learned.minutes, learned.gaps);
    workTable_->item(static_cast<int>(rule), Source)->setText(from);
}

void TimesDialog::clearWork(TaskRule rule) {
    const auto usual = usualMinutes(rule);
    const auto& work = works_[at(rule)];
    work.once->setFocus();  // the button is no use any more
    work.once->setValue(usual.once);
    work.each->setValue(usual.each.value / 10.0);
    setOwn(rule, false);
}

void TimesDialog::addWay(const DrivenWay& way, const QString& from, const QString& to) {
    const int row = wayTable_->rowCount();
    wayTable_->setRowCount(row + 1);
    auto* minutes = makeMinutes(kNotSet, from + u' ' + to);
    minutes->setSpecialValueText(times_text::notSet());
    auto* clear = makeClear(times_text::clearWayTip(), from + u' ' + to);
    connect(minutes, &QSpinBox::valueChanged, clear, [this, clear](int value) {
        clear->setEnabled(value != kNotSet && !desk_.isReadOnly());
    });
    connect(clear, &QToolButton::clicked, minutes, [minutes] {
        minutes->setFocus();
        minutes->setValue(kNotSet);
    });
    minutes->setValue(driveMinutes(desk_.snapshot(), way.from, way.to).value_or(kNotSet));
    clear->setEnabled(minutes->value() != kNotSet && !desk_.isReadOnly());
    wayTable_->setItem(row, 0, new QTableWidgetItem(from));
    wayTable_->setItem(row, 1, new QTableWidgetItem(to));
    wayTable_->setCellWidget(row, 2, minutes);
    wayTable_->setCellWidget(row, 3, clear);
    ways_.push_back({way, minutes, clear});
}

void TimesDialog::fillWays() {
    const auto& book = desk_.snapshot();
    for (const auto& way : waysOf(book))
        addWay(way, placeName(book, way.from), placeName(book, way.to));
    wayTable_->resizeColumnsToContents();
}

/// The book with the times as they stand here; as it is saved where they cannot be kept.
Snapshot TimesDialog::asTyped() const {
    const auto edit = changes();
    auto typed = edit ? applied(desk_.snapshot(), edit.value()) : Result<Snapshot>(edit.error());
    return typed ? std::move(typed).value() : desk_.snapshot();
}

/// What is pasted fills the fields: like all of it, it is saved with the dialog.
void TimesDialog::makePastable() {
    const auto save = [this](const ChangeSet& changes) {
        fill(changes);
        return QString();
    };
    const auto pastable = [&](QTableWidget& table, auto copied, bool ways) {
        setTableLines(
            desk_, table,
            {[this, copied] { return copied(asTyped()); },
             [this, ways] { return ways ? waysToPaste(asTyped()) : worksToPaste(asTyped()); },
             {},
             save});
    };
    pastable(*workTable_, copiedWorks, false);
    pastable(*wayTable_, copiedWays, true);
    connect(paste_, &QPushButton::clicked, this, [this] {
        auto& table = areWays(QApplication::clipboard()->text()) ? *wayTable_ : *workTable_;
        pasteInto(table);
    });
}

void TimesDialog::fill(const ChangeSet& changes) {
    for (const auto& row : changes.rows) {
        if (const auto work = row.as<WorkTime>()) {
            if (!work->after) {
                clearWork(work->before->rule);
                continue;
            }
            works_[at(work->after->rule)].once->setValue(work->after->minutes);
            works_[at(work->after->rule)].each->setValue(work->after->each.value / 10.0);
            setOwn(work->after->rule, true);
        }
        if (const auto drive = row.as<DriveTime>())
            for (auto& way : ways_) {
                const auto& of = drive->after ? *drive->after : *drive->before;
                const bool isIt = (way.way.from == of.from && way.way.to == of.to) ||
                                  (way.way.from == of.to && of.from == way.way.to);
                if (isIt) way.minutes->setValue(drive->after ? of.minutes : kNotSet);
            }
    }
}

/// All of it is put on "once": ticks cannot tell what each piece takes.
void TimesDialog::takeLearned() {
    for (const auto& learned : learned_) {
        works_[at(learned.rule)].once->setValue(learned.minutes);
        works_[at(learned.rule)].each->setValue(0);
        setOwn(learned.rule, true);  // also where it is just what is usual
    }
}

Result<ChangeSet> TimesDialog::changes() const {
    const auto& snapshot = desk_.snapshot();
    std::vector<WorkTime> works;
    std::vector<TaskRule> dropped;
    for (std::size_t i = 0; i < works_.size(); ++i) {
        const auto& work = works_[i];
        const auto rule = static_cast<TaskRule>(i);
        const Tenths each{static_cast<std::int32_t>(work.each->value() * 10 + 0.5)};
        if (work.own)
            works.push_back({{}, 1, rule, work.once->value(), each});
        else
            dropped.push_back(rule);
    }
    std::vector<DriveTime> drives;
    std::vector<DrivenWay> without;
    for (const auto& [way, minutes, clear] : ways_) {
        if (minutes->value() == kNotSet)
            without.push_back(way);
        else
            drives.push_back({{}, 1, way.from, way.to, minutes->value()});
    }
    auto changes = setTimes(snapshot, works, drives, [] { return idMaker().next(); });
    if (!changes) return changes;
    const auto gone = dropTimes(snapshot, dropped, without);
    auto& rows = changes.value().rows;
    rows.insert(rows.end(), gone.rows.begin(), gone.rows.end());
    return changes;
}

void TimesDialog::accept() {
    const auto edit = changes();
    const auto done = edit ? desk_.apply(edit.value()) : Result<void>(edit.error());
    if (done) return QDialog::accept();
    told_->setText(plain(done.error().text));
}

}  // namespace tenthday
