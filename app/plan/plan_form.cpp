#include "plan/plan_form.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <QVBoxLayout>

#include "look/day_field.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"
#include "screen_text/plan_text.h"

namespace tenthday {
namespace {

QLabel* nameOf(const QString& words, QWidget* field) {
    auto* label = new QLabel(words);
    label->setBuddy(field);
    return label;
}

/// The days on which a graft is worth while, as far as they are known and still to come.
DayWindow worthWhile(const Outlook& outlook) {
    const auto& season = outlook.season;
    auto first = std::max(season.first, outlook.snapshot.today());
    auto last = season.last;
    if (const auto limit = outlook.limits.firstGraft()) first = std::max(first, *limit);
    if (const auto limit = outlook.limits.lastGraft()) last = std::min(last, *limit);
    first = std::min(first, season.last);
    return {first, std::max(first, last)};
}

}  // namespace

PlanForm::PlanForm(QWidget* parent)
    : QWidget(parent),
      from_(new QDateEdit),
      until_(new QDateEdit),
      most_(new QSpinBox),
      hours_(new QSpinBox),
      notOnOne_(new QCheckBox(plan_text::notOnOneBatch())),
      keep_(new QCheckBox(plan_text::keepTicked())) {
    for (auto* date : {from_, until_}) makeDayField(*date);
    most_->setRange(0, 999);
    most_->setSpecialValueText(plan_text::noLimit());
    most_->setSuffix(plan_text::mostGraftsUnit());
    hours_->setRange(0, 24);
    hours_->setSpecialValueText(plan_text::anyHours());
    hours_->setSuffix(plan_text::mostHoursUnit());
    hours_->setToolTip(plan_text::mostHoursTip());
    notOnOne_->setToolTip(plan_text::notOnOneBatchTip());
    keep_->setToolTip(plan_text::keepTickedTip());
    auto* first = new QHBoxLayout;
    first->addWidget(nameOf(plan_text::graftFrom(), from_));
    first->addWidget(from_);
    first->addWidget(nameOf(plan_text::graftUntil(), until_));
    first->addWidget(until_);
    first->addSpacing(16);
    first->addWidget(nameOf(plan_text::mostGrafts(), most_));
    first->addWidget(most_);
    first->addSpacing(16);
    first->addWidget(nameOf(plan_text::mostHours(), hours_));
    first->addWidget(hours_);
    first->addSpacing(16);
    first->addWidget(notOnOne_);
    first->addStretch(1);
    auto* second = new QHBoxLayout;
    auto* free = new QLabel(plan_text::freeWeekdays());
    free->setToolTip(plan_text::freeWeekdaysTip());
    second->addWidget(free);
    for (std::size_t day = 0; day < weekdays_.size(); ++day) {
        weekdays_[day] = new QCheckBox(order_page_text::weekday(static_cast<int>(day) + 1));
        weekdays_[day]->setToolTip(plan_text::freeWeekdaysTip());
        second->addWidget(weekdays_[day]);
    }
    second->addSpacing(16);
    second->addWidget(keep_);
    second->addStretch(1);
    auto* sure = new QLabel(plan_text::howSureTip());
    sure->setForegroundRole(QPalette::PlaceholderText);
    second->addWidget(sure);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addLayout(second);
    setHasProposals(false);
}

void PlanForm::follow(const Outlook& outlook) {
    const auto days = worthWhile(outlook);
    const bool untouched = offered_ == DayWindow{} || (fromQDate(from_->date()) == offered_.first &&
                                                       fromQDate(until_->date()) == offered_.last);
    const auto& season = outlook.season;
    for (auto* date : {from_, until_}) {
        date->setDateRange(toQDate(season.first), toQDate(season.last));
        date->setToolTip(plan_text::graftDaysTip(outlook));
    }
    if (!untouched) return;
    from_->setDate(toQDate(days.first));
    until_->setDate(toQDate(days.last));
    offered_ = days;
}

PlanQuestion PlanForm::question() const {
    PlanQuestion question;
    const auto from = fromQDate(from_->date());
    question.grafts = {from, std::max(from, fromQDate(until_->date()))};
    for (std::size_t day = 0; day < weekdays_.size(); ++day)
        question.freeWeekdays[day] = weekdays_[day]->isChecked();
    if (most_->value() > 0) question.mostGraftsADay = most_->value();
    if (hours_->value() > 0) question.mostMinutesADay = hours_->value() * 60;
    question.notOnOneBatch = notOnOne_->isChecked();
    return question;
}

bool PlanForm::keepsTicked() const { return keep_->isVisibleTo(this) && keep_->isChecked(); }
void PlanForm::setHasProposals(bool has) {
    keep_->setVisible(has);
    if (!has) keep_->setChecked(false);
}

}  // namespace tenthday
