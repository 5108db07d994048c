#include "batches/stays_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include "batches/field_parts.h"
#include "screen_text/dates.h"
#include "screen_text/stays_text.h"

namespace tenthday {
namespace {

constexpr int kMostStays = 9;

}  // namespace

StaysForm::StaysForm(const Snapshot& snapshot, QWidget* parent)
    : QWidget(parent),
      snapshot_(snapshot),
      grid_(new QGridLayout(this)),
      told_(new QLabel),
      add_(new QPushButton) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setVerticalSpacing(6);
    grid_->setColumnStretch(1, 1);
    told_->setWordWrap(true);
    told_->setParent(this);
    add_->setParent(this);
    add_->setAutoDefault(false);
    connect(add_, &QPushButton::clicked, this, &StaysForm::addStay);
}

QString StaysForm::told() const { return told_->text(); }

void StaysForm::standBelow(QWidget& field, int labelWidth, int spacing) {
    before_ = &field;
    grid_->setColumnMinimumWidth(0, labelWidth);
    grid_->setHorizontalSpacing(spacing);
}

void StaysForm::show(const BatchDraft& draft) {
    lists_ = {};
    lists_[static_cast<std::size_t>(Mating::Open)] = Stays{};
    mating_ = draft.mating;
    own() = draft.stays;
    graft_ = plannedGraft(snapshot_, draft);
    build();
}

void StaysForm::setMating(Mating mating) {
    setVisible(mating != Mating::Open);
    if (mating == mating_) return;
    mating_ = mating;
    build();
}

void StaysForm::setGraft(Day graft) {
    if (graft == graft_) return;
    graft_ = graft;
    showDays();
}

void StaysForm::read(BatchDraft& draft) const { draft.stays = own().value_or(Stays{}); }

bool StaysForm::wantsDays() const { return !own(); }

void StaysForm::suggest(std::vector<StayDraft> stays) {
    if (stays.empty()) return;
    own() = std::move(stays);
    build();
}

void StaysForm::follow(const BatchTimeline& timeline) {
    const auto* due = timeline.find(Event::DueToFly);
    const auto* out = timeline.find(Event::Emergence);
    if (mating_ == Mating::Open || due == nullptr || out == nullptr) return;
    const auto& facts = snapshot_.facts();
    const bool none = rows_.empty();
    if (mating_ == Mating::Station) {
        told_->setText(stays_text::dueToFly(dayOf(due->earliest), dayOf(due->latest), none));
        told_->setToolTip(stays_text::whyStation());
    } else {
        const double age = facts[Fact::InseminationAgeD];
        told_->setText(stays_text::oldEnough(age, dayOf(hoursAfter(out->likely, age * 24)), none));
        told_->setToolTip(stays_text::whyInsemination(facts));
    }
}

void StaysForm::clear() {
    while (auto* item = grid_->takeAt(0)) {
        auto* widget = item->widget();
        if (widget != nullptr && widget != add_ && widget != told_) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    rows_.clear();
}

void StaysForm::build() {
    clear();
    int line = 0;
    for (int i = 0; own() && i < static_cast<int>(own()->size()); ++i) {
        rows_.push_back(makeRow(i, line));
        connectRow(i);
    }
    showDays();
    grid_->addWidget(told_, line++, 1, 1, 2);
    add_->setText(stays_text::add(mating_, rows_.empty()));
    add_->setEnabled(count() < kMostStays);
    grid_->addWidget(add_, line, 1, 1, 2, Qt::AlignLeft);
    chainKeys();
}

QComboBox* StaysForm::yardField(std::optional<Id<Yard>> chosenOne) {
    auto* field = new QComboBox;
    field->addItem(stays_text::noStation());
    for (const auto& yard : byLabel(snapshot_.all<Yard>()))
        field->addItem(QString::fromStdString(yard->label), asData(yard->id.uuid));
    choose(*field, chosenOne ? std::optional(chosenOne->uuid) : std::nullopt);
    field->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    field->setMinimumContentsLength(8);
    return field;
}

void StaysForm::put(int line, const QString& words, QWidget* field, int number) {
    auto* label = new QLabel(words);
    label->setBuddy(field);
    field->setAccessibleName(stays_text::ofStay(mating_, number + 1, words));
    grid_->addWidget(label, line, 0);
    grid_->addWidget(field, line, 1);
}

StaysForm::Row StaysForm::makeRow(int number, int& line) {
    const bool station = mating_ == Mating::Station;
    Row row{station ? yardField(stay(number).yard) : nullptr, dateField(), dateField(),
            new QPushButton(QStringLiteral("×"))};
    const auto words = stays_text::remove(mating_);
    row.remove->setToolTip(words);
    row.remove->setAccessibleName(stays_text::ofStay(mating_, number + 1, words));
    row.remove->setAutoDefault(false);
    row.remove->setFixedWidth(row.remove->sizeHint().height() * 5 / 4);
    grid_->addWidget(row.remove, line, 2);
    if (row.yard != nullptr) put(line++, stays_text::station(), row.yard, number);
    put(line++, stays_text::from(mating_), row.from, number);
    put(line++, stays_text::until(mating_), row.until, number);
    return row;
}

void StaysForm::connectRow(int number) {
    const auto& row = rows_[index(number)];
    if (row.yard != nullptr)
        connect(row.yard, &QComboBox::currentIndexChanged, this, [this, number] {
            stay(number).yard = chosen<Yard>(*rows_[index(number)].yard);
            Q_EMIT changed();
        });
    connect(row.remove, &QPushButton::clicked, this, [this, number] { removeStay(number); });
    connect(row.from, &QDateEdit::dateChanged, this, [this, number](const QDate& date) {
        stay(number).from = fromQDate(date) - graft_;
        rows_[index(number)].until->setMinimumDate(date);  // follows where it would end before
        Q_EMIT changed();
    });
    connect(row.until, &QDateEdit::dateChanged, this, [this, number](const QDate& date) {
        stay(number).until = fromQDate(date) - graft_;
        Q_EMIT changed();
    });
}

void StaysForm::showDays() {
    for (int i = 0; i < count(); ++i) {
        const auto& row = rows_[index(i)];
        const QSignalBlocker quietFrom(row.from);
        const QSignalBlocker quietUntil(row.until);
        row.from->setDate(toQDate(graft_ + stay(i).from));
        row.until->setMinimumDate(toQDate(kFirstDay));
        row.until->setDate(toQDate(graft_ + stay(i).until));
        row.until->setMinimumDate(row.from->date());
    }
}

/// A first one is suggested; a further one is as long as the last, from the day after it.
void StaysForm::addStay() {
    if (rows_.empty()) {
        own().reset();
        Q_EMIT changed();
        return;
    }
    const auto last = own()->back();
    const Days from = last.until + Days{1};
    own()->push_back({{}, last.yard, from, from + (last.until - last.from)});
    build();
    rows_.back().from->setFocus();
    Q_EMIT changed();
}

void StaysForm::removeStay(int number) {
    own()->erase(own()->begin() + number);
    build();
    add_->setFocus();
    Q_EMIT changed();
}

/// New widgets come last in the order of the keyboard otherwise.
void StaysForm::chainKeys() {
    auto* last = before_;
    const auto next = [&](QWidget* field) {
        if (last != nullptr && field != nullptr) setTabOrder(last, field);
        if (field != nullptr) last = field;
    };
    for (const auto& row : rows_) {
        next(row.yard);
        next(row.from);
        next(row.until);
        next(row.remove);
    }
    next(add_);
}

}  // namespace tenthday
