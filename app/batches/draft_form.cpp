#include "batches/draft_form.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalBlocker>
#include <QSpinBox>
#include <algorithm>

#include "batches/field_parts.h"
#include "batches/stays_form.h"
#include "screen_text/batch_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr std::array kWanted{Event::Ripe, Event::Emergence, Event::FirstEggs, Event::SealedBrood,
                             Event::Catch};

/// A spin box whose least value means "not given".
QSpinBox* optionalField(int most, const QString& none) {
    auto* field = new QSpinBox;
    field->setRange(-1, most);
    field->setSpecialValueText(none);
    return field;
}

std::optional<int> valueOf(const QSpinBox& field) {
    return field.value() < 0 ? std::nullopt : std::optional(field.value());
}

}  // namespace

DraftForm::DraftForm(const Snapshot& snapshot, QWidget* parent)
    : QWidget(parent),
      snapshot_(snapshot),
      label_(new QLineEdit),
      start_(new QComboBox),
      direction_(new QComboBox),
      dayLabel_(new QLabel),
      day_(dateField()),
      wanted_(new QWidget),
      wantedLabel_(new QLabel(batch_text::wanted())),
      wantedEvent_(new QComboBox),
      wantedDay_(dateField()),
      sureness_(new QComboBox),
      hour_(optionalField(23, batch_text::hourNotGiven())),
      larvaFrom_(optionalField(72, batch_text::larvaeUsual(snapshot.facts()[Fact::LarvaFromH]))),
      larvaTo_(optionalField(72, batch_text::larvaeUsual(snapshot.facts()[Fact::LarvaToH]))),
      method_(new QComboBox),
      steps_(new QLabel),
      mating_(new QComboBox),
      stays_(new StaysForm(snapshot)),
      catchRule_(new QComboBox),
      makeUp_(new QComboBox),
      note_(new QLineEdit) {
    for (std::size_t i = 0; i < kTokenCount<Start>; ++i)
        start_->addItem(batch_text::startName(static_cast<Start>(i)));
    direction_->addItems({batch_text::forward(), batch_text::backward()});
    for (const auto event : kWanted) wantedEvent_->addItem(batch_text::wantedEvent(event));
    for (const auto s : {Sureness::Likely, Sureness::Latest})
        sureness_->addItem(batch_text::sureness(s));
    hour_->setSuffix(batch_text::hourSuffix());
    fillMethods();
    for (std::size_t i = 0; i < kTokenCount<Mating>; ++i)
        mating_->addItem(batch_text::matingName(static_cast<Mating>(i)));
    catchRule_->addItem(batch_text::catchRuleOfBook(snapshot.book().catchRule));
    QStringList rules{catchRule_->itemText(0)};
    for (std::size_t i = 0; i < kTokenCount<CatchRule>; ++i) {
        const auto rule = static_cast<CatchRule>(i);
        catchRule_->addItem(batch_text::catchRuleName(rule, {}));
        rules += batch_text::catchRuleName(rule, 88);  // days in nucs have two digits at the most
    }
    makeRoomFor(*catchRule_, rules);
    for (const auto plan :
         {MakeUpPlan::None, MakeUpPlan::WithoutOpenBrood, MakeUpPlan::WithOpenBrood})
        makeUp_->addItem(batch_text::makeUpName(plan));
    steps_->setWordWrap(true);
    layOut();
    connectAll();
}

void DraftForm::fillMethods() {
    for (const auto& method : byLabel(snapshot_.all<Method>())) {
        method_->addItem(QString::fromStdString(method->label));
        methods_.push_back(method->id);
    }
}

void DraftForm::addRow(QFormLayout& rows, const QString& words, QWidget* field) {
    auto* label = new QLabel(words);
    label->setBuddy(field);
    field->setAccessibleName(QString(words).remove(u'&'));
    rows.addRow(label, field);
}

void DraftForm::layOut() {
    auto* rows = new QFormLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setVerticalSpacing(6);
    rows->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    rows->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (auto* box :
         {start_, direction_, method_, mating_, catchRule_, makeUp_, wantedEvent_, sureness_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(box == wantedEvent_ || box == sureness_ ? 8 : 19);
    }
    addRow(*rows, batch_text::label(), label_);
    addRow(*rows, batch_text::start(), start_);
    addRow(*rows, batch_text::direction(), direction_);
    auto* wanted = new QHBoxLayout(wanted_);
    wanted->setContentsMargins(0, 0, 0, 0);
    wanted->addWidget(wantedEvent_, 1);
    wanted->addWidget(wantedDay_);
    wanted->addWidget(sureness_, 1);
    wantedLabel_->setBuddy(wantedEvent_);
    wantedDay_->setAccessibleName(QString(batch_text::wanted()).remove(u'&'));
    rows->addRow(wantedLabel_, wanted_);
    dayLabel_->setBuddy(day_);
    rows->addRow(dayLabel_, day_);
    addRow(*rows, batch_text::hour(), hour_);
    auto* larvae = new QWidget;
    auto* ages = new QHBoxLayout(larvae);
    ages->setContentsMargins(0, 0, 0, 0);
    ages->addWidget(larvaFrom_, 1);
    ages->addWidget(new QLabel(batch_text::larvaeTo()));
    ages->addWidget(larvaTo_, 1);
    auto* larvaeLabel = new QLabel(batch_text::larvae());
    larvaeLabel->setBuddy(larvaFrom_);
    larvaFrom_->setAccessibleName(QString(batch_text::larvae()).remove(u'&'));
    larvaTo_->setAccessibleName(batch_text::larvaeTo());
    rows->addRow(larvaeLabel, larvae);
    addRow(*rows, batch_text::method(), method_);
    rows->addRow(QString(), steps_);
    addRow(*rows, batch_text::makeUp(), makeUp_);
    addRow(*rows, batch_text::mating(), mating_);
    rows->addRow(stays_);
    addRow(*rows, batch_text::catchRule(), catchRule_);
    addRow(*rows, batch_text::note(), note_);
    int widest = 0;
    for (int row = 0; row < rows->rowCount(); ++row)
        if (const auto* item = rows->itemAt(row, QFormLayout::LabelRole))
            widest = std::max(widest, item->widget()->sizeHint().width());
    stays_->standBelow(*mating_, widest, rows->horizontalSpacing());
}

void DraftForm::connectAll() {
    const auto tell = [this] {
        follow();
        Q_EMIT changed();
    };
    for (auto* box :
         {start_, direction_, wantedEvent_, sureness_, method_, mating_, catchRule_, makeUp_})
        connect(box, &QComboBox::currentIndexChanged, this, tell);
    for (auto* field : {day_, wantedDay_}) connect(field, &QDateEdit::dateChanged, this, tell);
    for (auto* field : {hour_, larvaFrom_, larvaTo_})
        connect(field, &QSpinBox::valueChanged, this, tell);
    for (auto* field : {label_, note_}) connect(field, &QLineEdit::textEdited, this, tell);
    connect(stays_, &StaysForm::changed, this, &DraftForm::changed);
}

void DraftForm::show(const BatchDraft& draft) {
    const QSignalBlocker quiet(this);
    label_->setText(QString::fromStdString(draft.label));
    start_->setCurrentIndex(static_cast<int>(draft.start));
    day_->setDate(toQDate(draft.day));
    wantedDay_->setDate(toQDate(draft.day + Days{10}));
    hour_->setValue(draft.hour ? draft.hour->value : -1);
    larvaFrom_->setValue(draft.larvaFromH.value_or(-1));
    larvaTo_->setValue(draft.larvaToH.value_or(-1));
    shownFromH_ = draft.larvaFromH;
    shownToH_ = draft.larvaToH;
    const auto method = std::find(methods_.begin(), methods_.end(), draft.method);
    method_->setCurrentIndex(
        method == methods_.end() ? -1 : static_cast<int>(method - methods_.begin()));
    mating_->setCurrentIndex(static_cast<int>(draft.mating));
    catchRule_->setCurrentIndex(draft.catchRule ? static_cast<int>(*draft.catchRule) + 1 : 0);
    makeUp_->setCurrentIndex(static_cast<int>(draft.makeUp));
    note_->setText(QString::fromStdString(draft.note));
    stays_->show(draft);
    follow();
}

void DraftForm::read(BatchDraft& draft) const {
    draft.label = label_->text().trimmed().toStdString();
    draft.start = static_cast<Start>(start_->currentIndex());
    if (!wish()) draft.day = fromQDate(day_->date());
    const auto hour = valueOf(*hour_);
    draft.hour = hour ? std::optional(Hour{*hour}) : std::nullopt;
    draft.larvaFromH = valueOf(*larvaFrom_);
    draft.larvaToH = valueOf(*larvaTo_);
    // One age alone is an exact age, where it is typed; what a file brought stays as it is.
    if (draft.larvaFromH != shownFromH_ || draft.larvaToH != shownToH_) {
        if (!draft.larvaToH) draft.larvaToH = draft.larvaFromH;
        if (!draft.larvaFromH) draft.larvaFromH = draft.larvaToH;
    }
    const auto method = method_->currentIndex();
    draft.method = method < 0 ? Id<Method>{} : methods_[static_cast<std::size_t>(method)];
    draft.mating = static_cast<Mating>(mating_->currentIndex());
    const auto rule = catchRule_->currentIndex();
    draft.catchRule = rule <= 0 ? std::nullopt : std::optional(static_cast<CatchRule>(rule - 1));
    draft.makeUp = static_cast<MakeUpPlan>(makeUp_->currentIndex());
    draft.note = note_->text().toStdString();
    stays_->read(draft);
}

std::optional<DraftForm::Wish> DraftForm::wish() const {
    if (direction_->currentIndex() != 1) return std::nullopt;
    return Wish{kWanted[static_cast<std::size_t>(std::max(wantedEvent_->currentIndex(), 0))],
                fromQDate(wantedDay_->date()), static_cast<Sureness>(sureness_->currentIndex())};
}

void DraftForm::showDay(Day day) {
    const QSignalBlocker quiet(day_);
    day_->setDate(toQDate(day));
}

void DraftForm::planForward(Day day) {
    {
        const QSignalBlocker quiet(this);
        direction_->setCurrentIndex(0);
        day_->setDate(toQDate(day));
        follow();
    }
    Q_EMIT changed();
}

void DraftForm::showNucDays(const NucHold* hold) {
    for (std::size_t i = 0; i < kTokenCount<CatchRule>; ++i) {
        const auto rule = static_cast<CatchRule>(i);
        catchRule_->setItemText(
            static_cast<int>(i) + 1,
            batch_text::catchRuleName(
                rule, hold != nullptr ? std::optional(hold->nucDays(rule)) : std::nullopt));
    }
}

void DraftForm::lockGraft() {
    locked_ = true;
    follow();
}

/// What hangs on other fields: which of them count, and their words.
void DraftForm::follow() {
    const auto start = static_cast<Start>(start_->currentIndex());
    const bool backward = direction_->currentIndex() == 1;
    dayLabel_->setText(batch_text::dayOf(start));
    day_->setAccessibleName(QString(batch_text::dayOf(start)).remove(u'&'));
    wanted_->setVisible(backward);
    wantedLabel_->setVisible(backward);
    day_->setEnabled(!locked_ && !backward);
    direction_->setEnabled(!locked_);
    start_->setEnabled(!locked_);
    hour_->setEnabled(!locked_);
    method_->setEnabled(!locked_);
    const bool aged = start == Start::Graft && !locked_;
    larvaFrom_->setEnabled(aged);
    larvaTo_->setEnabled(aged);
    makeUp_->setEnabled(hasGraft(start));
    stays_->setMating(static_cast<Mating>(mating_->currentIndex()));
    tellSteps();
}

void DraftForm::tellSteps() {
    std::vector<Ptr<Step>> steps;
    if (const auto at = method_->currentIndex(); at >= 0) {
        const auto rows = snapshot_.all<Step>().of(methods_[static_cast<std::size_t>(at)].uuid);
        steps.assign(rows.begin(), rows.end());
        std::sort(steps.begin(), steps.end(),
                  [](const auto& a, const auto& b) { return a->step < b->step; });
    }
    steps_->setText(batch_text::steps(steps));
}

}  // namespace tenthday
