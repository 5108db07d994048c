#include "nucs/mite_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <set>

#include "book/new_id.h"
#include "look/day_field.h"
#include "look/page_parts.h"
#include "look/table_keys.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/derived_text.h"
#include "screen_text/evening_text.h"
#include "screen_text/upkeep_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

/// So far ahead spans are shown with those that are on.
constexpr Days kAhead{21};

QString plain(const std::string& text) { return QString::fromStdString(text); }

QString nameOf(const MiteSpan& span) {
    return span.side ? chart_text::nuc(plain(span.side->box->label), plain(span.side->side->side))
                     : plain(span.builder->builder->label);
}

QString yardOf(const Outlook& outlook, const MiteSpan& span) {
    const auto id =
        span.side ? span.side->yardOn(span.span.from) : std::optional(span.builder->builder->yard);
    const auto yard = id ? outlook.snapshot.find(*id) : nullptr;
    return yard ? plain(yard->label) : QString();
}

}  // namespace

MiteDialog::MiteDialog(Desk& desk, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      table_(new QTableWidget(0, upkeep_text::kMiteColumns)),
      all_(new QCheckBox(upkeep_text::allOfSeason())),
      day_(new QDateEdit(toQDate(desk.snapshot().today()))),
      what_(new QComboBox),
      note_(new QLineEdit),
      enter_(new QPushButton),
      takeBack_(new QPushButton(upkeep_text::takeBackWork())),
      told_(new QLabel) {
    setWindowTitle(upkeep_text::mitesTitle());
    auto* head = new QLabel(upkeep_text::mitesTitle());
    makeHead(*head);
    makeList(*table_, upkeep_text::mitesTitle());
    sayNoPaste(*table_, derived_text::broodless);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    for (int column = 0; column < upkeep_text::kMiteColumns; ++column)
        table_->setHorizontalHeaderItem(column,
                                        new QTableWidgetItem(upkeep_text::mitesHead(column)));
    table_->horizontalHeader()->setStretchLastSection(true);
    auto* caution = new QLabel(upkeep_text::mitesCaution());
    makeStrong(*caution);
    told_->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(head);
    column->addWidget(caution);
    column->addWidget(all_);
    column->addWidget(table_, 1);
    column->addWidget(makeEntry());
    column->addWidget(told_);
    column->addWidget(buttons);
    connect(all_, &QCheckBox::toggled, this, &MiteDialog::follow);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &MiteDialog::tellSelection);
    connect(&desk_, &Desk::shown, this, &MiteDialog::follow);
    resize(fontMetrics().averageCharWidth() * 140, fontMetrics().lineSpacing() * 36);
    follow();
    table_->setFocus();
}

QWidget* MiteDialog::makeEntry() {
    auto* part = new QWidget;
    makeDayField(*day_);
    what_->setEditable(true);
    what_->setMinimumContentsLength(24);
    std::set<std::string> known;
    for (const auto& work : desk_.snapshot().all<MiteWork>())
        if (known.insert(work->what).second) what_->addItem(plain(work->what));
    what_->setCurrentText({});
    enter_->setAutoDefault(false);
    takeBack_->setAutoDefault(false);
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& words, QWidget* field) {
        auto* label = new QLabel(words);
        label->setBuddy(field);
        field->setAccessibleName(words);
        row->addWidget(label);
        row->addWidget(field);
        row->addSpacing(8);
    };
    add(upkeep_text::day(), day_);
    add(upkeep_text::whatWasDone(), what_);
    add(upkeep_text::note(), note_);
    row->addStretch();
    row->addWidget(enter_);
    row->addWidget(takeBack_);
    connect(what_, &QComboBox::editTextChanged, this, &MiteDialog::tellSelection);
    connect(enter_, &QPushButton::clicked, this, &MiteDialog::enter);
    connect(takeBack_, &QPushButton::clicked, this, &MiteDialog::takeBack);
    return part;
}

QString MiteDialog::told() const { return told_->text(); }
void MiteDialog::setDay(Day day) { day_->setDate(toQDate(day)); }

/// Keeps the rows that are chosen.
void MiteDialog::follow() {
    std::set<std::pair<Uuid, Day>> before;
    const auto keyOf = [](const MiteSpan& span) {
        return std::pair(span.side ? span.side->side->id.uuid : span.builder->builder->id.uuid,
                         span.span.from);
    };
    for (const auto* span : chosen()) before.insert(keyOf(*span));
    outlook_ = desk_.outlook();
    const auto& snapshot = outlook_->snapshot;
    const Day today = snapshot.today();
    spans_ = miteSpans(snapshot, outlook_->nucs, outlook_->builders);
    if (!all_->isChecked())
        std::erase_if(spans_, [&](const MiteSpan& span) {
            return span.span.until.value_or(kLastDay) < today || span.span.from > today + kAhead;
        });
    fill();
    const QSignalBlocker quiet(table_);
    for (int row = 0; row < table_->rowCount(); ++row)
        if (before.contains(keyOf(spans_[static_cast<std::size_t>(row)])))
            table_->selectionModel()->select(
                table_->model()->index(row, 0),
                QItemSelectionModel::Select | QItemSelectionModel::Rows);
    tellSelection();
}

void MiteDialog::fill() {
    const QSignalBlocker quiet(table_);
    table_->clearSelection();
    table_->setRowCount(static_cast<int>(spans_.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const auto& span = spans_[static_cast<std::size_t>(row)];
        const QStringList cells{nameOf(span),
                                yardOf(*outlook_, span),
                                weekdayAndDay(span.span.from),
                                upkeep_text::until(span),
                                upkeep_text::noBrood(span),
                                upkeep_text::done(span)};
        const auto tip = upkeep_text::whySpan(span, outlook_->snapshot.facts());
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(tip);
            table_->setItem(row, column, item);
        }
    }
    table_->resizeColumnsToContents();
}

std::vector<const MiteSpan*> MiteDialog::chosen() const {
    std::vector<const MiteSpan*> some;
    for (const auto& index : table_->selectionModel()->selectedRows())
        if (index.row() < static_cast<int>(spans_.size()))
            some.push_back(&spans_[static_cast<std::size_t>(index.row())]);
    return some;
}

void MiteDialog::tellSelection() {
    const auto some = chosen();
    const bool can = !some.empty() && !desk_.isReadOnly();
    const bool any =
        std::any_of(some.begin(), some.end(), [](const auto* span) { return !span->work.empty(); });
    enter_->setText(upkeep_text::enterWork(static_cast<int>(some.size())));
    enter_->setEnabled(can && !what_->currentText().trimmed().isEmpty());
    takeBack_->setEnabled(can && any);
    told_->setText(desk_.isReadOnly() ? evening_text::readOnly()
                   : spans_.empty()   ? upkeep_text::noSpans()
                   : some.empty()     ? upkeep_text::chooseSpans()
                                      : QString());
}

void MiteDialog::save(const Result<ChangeSet>& changes) {
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (!done) told_->setText(window_text::cannotSaveEdit() + u' ' + plain(done.error().text));
}

void MiteDialog::enter() {
    std::vector<MitePlace> places;
    for (const auto* span : chosen()) {
        MitePlace place;
        if (span->side)
            place.side = span->side->side->id;
        else
            place.builder = span->builder->builder->id;
        const bool twice = std::any_of(places.begin(), places.end(), [&](const auto& other) {
            return other.side == place.side && other.builder == place.builder;
        });
        if (!twice) places.push_back(place);
    }
    save(recordMiteWork(desk_.snapshot(), places, fromQDate(day_->date()),
                        what_->currentText().trimmed().toStdString(),
                        note_->text().trimmed().toStdString(), [] { return idMaker().next(); }));
}

void MiteDialog::takeBack() {
    ChangeSet changes{Verb::DeleteRow, {}, {}, {}};
    for (const auto* span : chosen())
        for (const auto& work : span->work) {
            changes.subject = work->what;
            changes.erase(work);
        }
    if (!changes.isEmpty()) save(changes);
}

}  // namespace tenthday
