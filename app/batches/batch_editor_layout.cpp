// How the parts of the batch editor stand together.
#include <QAction>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QSpinBox>
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>

#include "batches/bars_form.h"
#include "batches/batch_editor.h"
#include "batches/dates_list.h"
#include "batches/draft_form.h"
#include "batches/week_table.h"
#include "batches/yards_form.h"
#include "look/page_parts.h"
#include "screen_text/batch_text.h"

namespace tenthday {
namespace {

QLabel* head(const QString& words) {
    auto* label = new QLabel(words);
    makeHead(*label, 1.15);
    return label;
}

QVBoxLayout* columnOf(QWidget* part) {
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    return column;
}

}  // namespace

void BatchEditor::layOut() {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(18);
    grid->setVerticalSpacing(10);
    grid->addWidget(makeFields(), 0, 0);
    grid->addWidget(makeMiddle(), 0, 1);
    grid->addWidget(makeRight(), 0, 2);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 6);
    grid->setRowStretch(0, 3);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(16, 12, 16, 12);
    all->setSpacing(10);
    all->addLayout(grid, 3);
    all->addWidget(makeWeek(), 2);
    all->addWidget(makeFoot());
    const auto room = screen()->availableSize() - QSize(16, 60);
    resize(QSize(1350, 720).boundedTo(room));
}

QWidget* BatchEditor::makeFields() {
    auto* area = scrolling(form_);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setMinimumWidth(form_->minimumSizeHint().width() +
                          style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    return area;
}

QWidget* BatchEditor::makeMiddle() {
    auto* part = new QWidget;
    auto* column = columnOf(part);
    column->addWidget(head(batch_text::bars()));
    auto* bars = scrolling(bars_);
    bars->setMinimumWidth(bars_->minimumSizeHint().width() +
                          style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    column->addWidget(bars, 3);
    column->addWidget(head(batch_text::yards()));
    column->addWidget(scrolling(yards_), 2);
    return part;
}

QWidget* BatchEditor::makeRight() {
    auto* part = new QWidget;
    auto* column = columnOf(part);
    auto* top = new QHBoxLayout;
    top->addWidget(head(batch_text::dates()));
    top->addStretch();
    whyButton_->setAutoDefault(false);
    top->addWidget(whyButton_);
    column->addLayout(top);
    column->addWidget(dates_, 1);
    column->addWidget(head(batch_text::clashes()));
    clashes_->setWordWrap(true);
    clashes_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    clashes_->setText(batch_text::searching());
    clashes_->setMinimumHeight(2 * clashes_->fontMetrics().lineSpacing());
    clashes_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    column->addWidget(clashes_);
    return part;
}

QWidget* BatchEditor::makeWeek() {
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(22);

    auto* week = new QVBoxLayout;
    week->setSpacing(6);
    auto* top = new QHBoxLayout;
    top->addWidget(head(batch_text::weekHead()));
    top->addStretch();
    top->addWidget(new QLabel(batch_text::freeWeekdays()));
    const auto off = settings_.freeWeekdays();
    for (int i = 0; i < 7; ++i) {
        auto* button = new QToolButton;
        button->setText(QLocale().dayName(i + 1, QLocale::ShortFormat));
        button->setAccessibleName(batch_text::freeWeekdays() + u' ' + QLocale().dayName(i + 1));
        button->setCheckable(true);
        button->setChecked(off[index(i)]);
        top->addWidget(button);
        weekdays_.push_back(button);
    }
    week->addLayout(top);
    week->addWidget(week_, 1);
    weekSum_->setWordWrap(true);
    week->addWidget(weekSum_);

    auto* near = new QVBoxLayout;
    near->setSpacing(6);
    near->addWidget(head(batch_text::nearestHead()));
    nearestTold_->setText(batch_text::searching());
    near->addWidget(nearestTold_);
    near->addLayout(nearest_);
    near->addStretch();
    every_->setRange(1, 60);
    every_->setValue(4);
    more_->setRange(0, 60);
    moreLabel_->setBuddy(more_);
    more_->setAccessibleName(batch_text::repeatMore(0));
    auto* again = new QHBoxLayout;
    auto* everyLabel = new QLabel(batch_text::repeatEvery());
    everyLabel->setBuddy(every_);
    every_->setAccessibleName(QString(batch_text::repeatEvery()).remove(u'&'));
    again->addWidget(everyLabel);
    again->addWidget(every_);
    again->addWidget(more_);
    again->addWidget(moreLabel_);
    again->addStretch();
    near->addLayout(again);
    repeats_->setWordWrap(true);
    near->addWidget(repeats_);

    row->addLayout(week, 7);
    row->addLayout(near, 2);
    weekPart_ = part;
    return part;
}

QWidget* BatchEditor::makeFoot() {
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    told_->setWordWrap(true);
    remove_->setVisible(!isNew_);
    remove_->setEnabled(!desk_.isReadOnly());
    remove_->setAutoDefault(false);
    auto* cancel = new QPushButton(batch_text::cancel());
    cancel->setAutoDefault(false);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    save_->setDefault(true);
    auto* keys = new QAction(this);
    keys->setShortcut(Qt::CTRL | Qt::Key_S);
    connect(keys, &QAction::triggered, save_, &QPushButton::click);
    addAction(keys);
    insure_->setToolTip(batch_text::insureHint());
    for (auto* button : {topUp_, insure_}) {
        button->setAutoDefault(false);
        button->hide();
    }
    row->addWidget(remove_);
    row->addWidget(topUp_);
    row->addWidget(insure_);
    row->addWidget(told_, 1);
    row->addWidget(cancel);
    row->addWidget(save_);
    return part;
}

}  // namespace tenthday
