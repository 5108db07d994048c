#include "setup/in_use_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "screen_text/window_text.h"
#include "setup/day_edit.h"

namespace tenthday {

InUseDialog::InUseDialog(setup_text::Kind kind, const QString& thing, const std::vector<Use>& uses,
                         Day today, Retire retire, QWidget* parent)
    : QDialog(parent), retire_(std::move(retire)) {
    setWindowTitle(setup_text::inUseHead());
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    for (const auto& text :
         {setup_text::inUse(thing, uses),
          retire_ ? setup_text::retireHint(kind) : setup_text::cannotRetire(kind)}) {
        auto* label = new QLabel(text);
        label->setWordWrap(true);
        label->setMinimumWidth(fontMetrics().averageCharWidth() * 60);
        column->addWidget(label);
    }
    if (retire_) addRetiring(*column, today);
    auto* buttons = new QDialogButtonBox;
    if (retire_) {
        auto* yes = buttons->addButton(setup_text::retire(), QDialogButtonBox::AcceptRole);
        yes->setDefault(true);
        connect(yes, &QPushButton::clicked, this, &InUseDialog::tryRetiring);
    }
    auto* no = buttons->addButton(window_text::cancel(), QDialogButtonBox::RejectRole);
    connect(no, &QPushButton::clicked, this, &QDialog::reject);
    column->addWidget(buttons);
}

void InUseDialog::addRetiring(QVBoxLayout& column, Day today) {
    from_ = new DayEdit;
    from_->setNear(today);
    from_->setValue(fromDay(today));
    from_->line().setAccessibleName(setup_text::retireFrom());
    auto* name = new QLabel(setup_text::retireFrom());
    name->setBuddy(&from_->line());
    auto* row = new QHBoxLayout;
    row->addWidget(name);
    row->addWidget(from_, 1);
    column.addLayout(row);
    refusal_ = new QLabel;
    refusal_->setWordWrap(true);
    refusal_->hide();
    column.addWidget(refusal_);
}

void InUseDialog::tryRetiring() {
    const auto typed = from_->value();
    const auto from = toDay(typed);
    const auto why = from ? retire_(*from) : setup_text::noDay(typed.toString());
    if (why.isEmpty()) return accept();
    refusal_->setText(why);
    refusal_->show();
}

}  // namespace tenthday
