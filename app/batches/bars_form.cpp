#include "batches/bars_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <algorithm>
#include <cmath>

#include "batches/field_parts.h"
#include "screen_text/batch_text.h"
#include "screen_text/nuc_text.h"

namespace tenthday {
namespace {

constexpr int kMostBars = 30;

}  // namespace

BarsForm::BarsForm(const Snapshot& snapshot, QWidget* parent)
    : QWidget(parent),
      snapshot_(snapshot),
      grid_(new QGridLayout(this)),
      add_(new QPushButton(batch_text::addBar())) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setVerticalSpacing(4);
    add_->setParent(this);
    add_->setAutoDefault(false);
    connect(add_, &QPushButton::clicked, this, &BarsForm::addBar);
}

void BarsForm::show(const BatchDraft& draft) {
    batch_ = draft.id;
    shown_ = draft.bars;
    bars_.clear();
    steps_.clear();
    setMethod(draft.method, draft.start, draft.day);
}

void BarsForm::setMethod(Id<Method> method, Start start, Day day) {
    if (!bars_.empty()) keep();
    const auto rows = snapshot_.all<Step>().of(method.uuid);
    const auto before = steps_;
    steps_.assign(rows.begin(), rows.end());
    std::sort(steps_.begin(), steps_.end(),
              [](const auto& a, const auto& b) { return a->step < b->step; });
    start_ = start;
    for (auto& bar : shown_) {
        bar.steps.resize(steps_.size());
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            const auto builder = bar.steps[i] ? snapshot_.find(*bar.steps[i]) : nullptr;
            const bool fits = builder && builder->kind == steps_[i]->where;
            const bool same = i < before.size() && before[i]->id == steps_[i]->id;
            if (!before.empty() && !same && !fits)
                bar.steps[i] = builderFor(snapshot_, steps_[i]->where, day);
        }
    }
    build();
}

void BarsForm::setCountable(bool countable) {
    countable_ = countable;
    for (const auto& bar : bars_) bar.take->setEnabled(countable);
}

void BarsForm::read(BatchDraft& draft) const {
    draft.bars.clear();
    for (const auto& bar : bars_) {
        BarDraft one{bar.number, chosen<Queen>(*bar.breeder), Cells{bar.cells->value()}, {}, {}};
        for (const auto* step : bar.steps) one.steps.push_back(chosen<Builder>(*step));
        if (bar.take->value() >= 0) one.taken = Cells{bar.take->value()};
        draft.bars.push_back(std::move(one));
    }
}

/// What the fields say, before they are built anew.
void BarsForm::keep() {
    BatchDraft now;
    read(now);
    shown_ = std::move(now.bars);
}

void BarsForm::build() {
    while (auto* item = grid_->takeAt(0)) {
        if (auto* widget = item->widget(); widget != nullptr && widget != add_) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    bars_.clear();
    addHeads();
    int row = 1;
    BatchDraft draft;
    draft.id = batch_;
    draft.bars = shown_;
    const auto numbers = barNumbers(snapshot_, draft);
    for (std::size_t i = 0; i < shown_.size(); ++i)
        bars_.push_back(makeBar(shown_[i], numbers[i], row++));
    grid_->addWidget(add_, row, 0, 1, 3, Qt::AlignLeft);
    grid_->setRowStretch(row + 1, 1);
    grid_->setColumnStretch(1, 2);
    for (std::size_t i = 0; i < steps_.size(); ++i)
        grid_->setColumnStretch(3 + static_cast<int>(i), 2);
    add_->setEnabled(count() < kMostBars);
    setCountable(countable_);
    // New widgets come last in the order of the keyboard otherwise.
    for (std::size_t i = 0; i < bars_.size(); ++i) setTabOrder(bars_[i].remove, add_);
}

void BarsForm::addHeads() {
    QStringList heads{QString(), batch_text::breeder(), batch_text::grafts(start_)};
    for (const auto& step : steps_) heads += batch_text::builderAt(step->where);
    heads += batch_text::take();
    for (int i = 0; i < heads.size(); ++i) grid_->addWidget(new QLabel(heads[i]), 0, i);
}

QComboBox* BarsForm::builderField(BuilderKind where, std::optional<Id<Builder>> chosenOne) {
    auto* field = new QComboBox;
    field->addItem(batch_text::noBuilder());
    // Those of the step's kind first; another may serve too.
    auto builders = byLabel(snapshot_.all<Builder>());
    std::stable_partition(builders.begin(), builders.end(),
                          [&](const auto& b) { return b->kind == where; });
    for (const auto& builder : builders)
        if (!builder->until || *builder->until >= snapshot_.today() || chosenOne == builder->id)
            field->addItem(QString::fromStdString(builder->label), asData(builder->id.uuid));
    choose(*field, chosenOne ? std::optional(chosenOne->uuid) : std::nullopt);
    return field;
}

/// Breeder queens, now or later.
bool BarsForm::isOffered(const Queen& queen) const {
    return queen.breederFrom && (!queen.breederUntil || *queen.breederUntil >= snapshot_.today());
}

BarsForm::Bar BarsForm::makeBar(const BarDraft& draft, std::int32_t number, int row) {
    Bar bar{draft.number, new QComboBox, new QSpinBox,
            {},           new QSpinBox,  new QPushButton(QStringLiteral("×"))};
    const auto name = batch_text::bar(number);
    bar.breeder->addItem(batch_text::noBreeder());
    for (const auto& queen : byLabel(snapshot_.all<Queen>()))
        if (isOffered(*queen) || draft.breeder == queen->id)
            bar.breeder->addItem(QString::fromStdString(queen->label), asData(queen->id.uuid));
    choose(*bar.breeder, draft.breeder ? std::optional(draft.breeder->uuid) : std::nullopt);
    bar.cells->setRange(1, 9999);
    bar.cells->setValue(draft.cells.value);
    for (std::size_t i = 0; i < steps_.size(); ++i)
        bar.steps.push_back(
            builderField(steps_[i]->where, i < draft.steps.size() ? draft.steps[i] : std::nullopt));
    bar.take->setRange(-1, 9999);
    bar.take->setValue(draft.taken ? draft.taken->value : -1);
    bar.remove->setToolTip(batch_text::removeBar());
    bar.remove->setEnabled(shown_.size() > 1);
    bar.remove->setAutoDefault(false);
    bar.remove->setFixedWidth(bar.remove->sizeHint().height() * 5 / 4);
    tellTake(bar);

    int column = 0;
    grid_->addWidget(new QLabel(QLocale().toString(number)), row, column++);
    const auto put = [&](QWidget* field, const QString& what) {
        field->setAccessibleName(name + QStringLiteral(", ") + what);
        grid_->addWidget(field, row, column++);
    };
    put(bar.breeder, batch_text::breeder());
    put(bar.cells, batch_text::grafts(start_));
    for (std::size_t i = 0; i < bar.steps.size(); ++i)
        put(bar.steps[i], batch_text::builderAt(steps_[i]->where));
    put(bar.take, batch_text::take());
    put(bar.remove, batch_text::removeBar());
    for (auto* box : findChildren<QComboBox*>()) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(5);
    }

    for (auto* field : {bar.cells, bar.take})
        connect(field, &QSpinBox::valueChanged, this, [this, bar] {
            tellTake(bar);
            Q_EMIT changed();
        });
    connect(bar.breeder, &QComboBox::currentIndexChanged, this, &BarsForm::changed);
    for (auto* step : bar.steps)
        connect(step, &QComboBox::currentIndexChanged, this, &BarsForm::changed);
    connect(bar.remove, &QPushButton::clicked, this, [this, row] { removeBar(row - 1); });
    return bar;
}

void BarsForm::tellTake(const Bar& bar) const {
    const double rate = hasGraft(start_) ? snapshot_.facts()[Fact::Accepted] : 1;
    const auto share = nuc_text::percent(rate);
    const auto cells = static_cast<int>(std::lround(bar.cells->value() * rate));
    bar.take->setSpecialValueText(batch_text::takeExpected(cells));
    bar.take->setToolTip(batch_text::takeWhy(share));
}

void BarsForm::addBar() {
    keep();
    auto bar = shown_.empty() ? BarDraft{} : shown_.back();
    bar.taken.reset();
    bar.number = 0;
    shown_.push_back(bar);
    build();
    bars_.back().breeder->setFocus();
    Q_EMIT changed();
}

void BarsForm::removeBar(int bar) {
    keep();
    shown_.erase(shown_.begin() + bar);
    build();
    add_->setFocus();
    Q_EMIT changed();
}

}  // namespace tenthday
