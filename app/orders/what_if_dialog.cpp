#include "orders/what_if_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

#include "look/day_field.h"
#include "look/page_parts.h"
#include "look/palette.h"
#include "look/table_keys.h"
#include "screen_text/dates.h"
#include "screen_text/derived_text.h"
#include "screen_text/order_text.h"
#include "screen_text/what_if_text.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

QDateEdit* dayField(Day day, const QString& name) {
    auto* field = new QDateEdit(toQDate(day));
    makeDayField(*field);
    field->setAccessibleName(name);
    return field;
}

Role roleOf(const OrderOutlook& order) {
    return order.state == OrderState::Met      ? Role::Good
           : order.state == OrderState::AtRisk ? Role::Caution
                                               : Role::Danger;
}

}  // namespace

WhatIfDialog::WhatIfDialog(OutlookPtr outlook, QWidget* parent)
    : QDialog(parent),
      outlook_(std::move(outlook)),
      cold_(new QCheckBox(what_if_text::cold())),
      builderLost_(new QCheckBox(what_if_text::builderLost())),
      builder_(new QComboBox),
      robbed_(new QCheckBox(what_if_text::robbed())),
      robbedCount_(new QSpinBox),
      robbedYard_(new QComboBox),
      takeLow_(new QCheckBox(what_if_text::takeLow())),
      take_(new QSpinBox),
      table_(new QTableWidget),
      summary_(new QLabel) {
    setWindowTitle(what_if_text::head());
    auto* grid = new QGridLayout;
    makeChoices(*grid);
    connectChoices();
    makeStrong(*summary_);
    table_->setColumnCount(4);
    table_->setHorizontalHeaderLabels(what_if_text::columnHeads());
    makeList(*table_, what_if_text::head());
    sayNoPaste(*table_, derived_text::whatIf);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    auto* nothing = new QLabel(what_if_text::nothingKept());
    nothing->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(grid);
    column->addWidget(summary_);
    column->addWidget(table_, 1);
    column->addWidget(nothing);
    column->addWidget(buttons);
    resize(820, 560);
    reckon();
}

void WhatIfDialog::makeChoices(QGridLayout& grid) {
    const auto& season = outlook_->season;
    const Day today = std::clamp(outlook_->snapshot.today(), season.first, season.last);
    const Day next = today + Days{8 - isoWeekday(today)};  // Monday
    coldFrom_ = dayField(next, what_if_text::from());
    coldUntil_ = dayField(next + Days{6}, what_if_text::until());
    builderFrom_ = dayField(today, what_if_text::from());
    robbedFrom_ = dayField(today, what_if_text::from());
    fillChoices();
    const std::vector<std::vector<QWidget*>> rows{
        {cold_, new QLabel(what_if_text::from()), coldFrom_, new QLabel(what_if_text::until()),
         coldUntil_},
        {builderLost_, builder_, new QLabel(what_if_text::from()), builderFrom_},
        {robbed_, robbedCount_, robbedYard_, new QLabel(what_if_text::from()), robbedFrom_},
        {takeLow_, take_}};
    for (std::size_t row = 0; row < rows.size(); ++row)
        for (std::size_t column = 0; column < rows[row].size(); ++column)
            grid.addWidget(rows[row][column], static_cast<int>(row), static_cast<int>(column));
    grid.setColumnStretch(6, 1);
}

void WhatIfDialog::fillChoices() {
    for (const auto& builder : outlook_->builders) {
        builders_.push_back(builder.builder->id);
        builder_->addItem(plain(builder.builder->label));
    }
    builder_->setAccessibleName(what_if_text::whichBuilder());
    builderLost_->setEnabled(!builders_.empty());
    yards_.emplace_back();
    robbedYard_->addItem(what_if_text::anyYard());
    for (const auto& yard : outlook_->nucs.yards) {
        yards_.emplace_back(yard.yard->id);
        robbedYard_->addItem(plain(yard.yard->label));
    }
    robbedYard_->setAccessibleName(what_if_text::whichYard());
    robbedCount_->setRange(1, 999);
    robbedCount_->setValue(10);
    robbedCount_->setAccessibleName(what_if_text::howManyNucs());
    take_->setRange(0, 100);
    take_->setValue(50);
    take_->setSuffix(QStringLiteral(" %"));
    take_->setAccessibleName(what_if_text::share());
}

/// A number that is changed means its tick.
void WhatIfDialog::connectChoices() {
    const auto means = [this](QCheckBox* tick) {
        return [this, tick] { tick->isChecked() ? reckon() : tick->setChecked(true); };
    };
    for (auto* tick : {cold_, builderLost_, robbed_, takeLow_})
        connect(tick, &QCheckBox::toggled, this, &WhatIfDialog::reckon);
    connect(coldFrom_, &QDateEdit::dateChanged, this, means(cold_));
    connect(coldUntil_, &QDateEdit::dateChanged, this, means(cold_));
    connect(builder_, &QComboBox::currentIndexChanged, this, means(builderLost_));
    connect(builderFrom_, &QDateEdit::dateChanged, this, means(builderLost_));
    connect(robbedCount_, &QSpinBox::valueChanged, this, means(robbed_));
    connect(robbedYard_, &QComboBox::currentIndexChanged, this, means(robbed_));
    connect(robbedFrom_, &QDateEdit::dateChanged, this, means(robbed_));
    connect(take_, &QSpinBox::valueChanged, this, means(takeLow_));
}

QString WhatIfDialog::summary() const { return summary_->text(); }

WhatIf WhatIfDialog::asked() const {
    WhatIf what;
    const Day coldFrom = fromQDate(coldFrom_->date());
    const Day coldUntil = fromQDate(coldUntil_->date());
    if (cold_->isChecked()) what.cold = DayWindow{coldFrom, std::max(coldFrom, coldUntil)};
    if (builderLost_->isChecked() && builder_->currentIndex() >= 0)
        what.builder = {builders_[static_cast<std::size_t>(builder_->currentIndex())],
                        fromQDate(builderFrom_->date())};
    if (robbed_->isChecked())
        what.nucs = {robbedCount_->value(), fromQDate(robbedFrom_->date()),
                     yards_[static_cast<std::size_t>(robbedYard_->currentIndex())]};
    if (takeLow_->isChecked()) what.take = take_->value() / 100.0;
    return what;
}

void WhatIfDialog::reckon() {
    isReckoning_ = true;
    if (summary_->text().isEmpty()) summary_->setText(what_if_text::reckoning());
    work_.ask([outlook = outlook_, what = asked()] { return whatIf(*outlook, what); },
              [this](const Result<WhatIfAnswer>& answer) { show(answer); });
}

void WhatIfDialog::show(const Result<WhatIfAnswer>& answer) {
    isReckoning_ = false;
    if (!answer) {
        summary_->setText(what_if_text::cannotBe(plain(answer.error().text)));
        return table_->setRowCount(0);
    }
    const auto& orders = answer.value().orders;
    summary_->setText(what_if_text::summary(answer.value(), asked().isNothing()));
    table_->setRowCount(static_cast<int>(orders.size()));
    const auto& colours = paletteOf(lookOf(palette()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const auto& each = orders[static_cast<std::size_t>(row)];
        const auto cell = [&](int column, const QString& text) {
            auto* item = new QTableWidgetItem(text);
            table_->setItem(row, column, item);
            return item;
        };
        cell(0, what_if_text::order(*each.before.order));
        cell(1, weekdayAndDay(each.before.order->due));
        cell(2, what_if_text::state(each.before))->setForeground(colours[roleOf(each.before)]);
        auto* after = cell(3, what_if_text::stateAfter(each.before, each.after));
        after->setForeground(colours[roleOf(each.after)]);
    }
}

}  // namespace tenthday
