#include "week/own_task_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "look/day_field.h"
#include "screen_text/dates.h"
#include "screen_text/week_text.h"

namespace tenthday {

OwnTaskDialog::OwnTaskDialog(const QString& head, const Snapshot& snapshot,
                             const OwnTaskWords& words, Save save, QWidget* parent)
    : QDialog(parent),
      save_(std::move(save)),
      text_(new QLineEdit(QString::fromStdString(words.text))),
      day_(new QDateEdit(toQDate(words.day))),
      yard_(new QComboBox),
      must_(new QCheckBox(week_text::mustBox())),
      told_(new QLabel) {
    setWindowTitle(head);
    text_->setMinimumWidth(fontMetrics().averageCharWidth() * 48);
    makeDayField(*day_);
    std::vector<Ptr<Yard>> rows(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return a->driveOrder < b->driveOrder; });
    yard_->addItem(week_text::noYard());
    for (const auto& row : rows) {
        yards_.push_back(row->id);
        yard_->addItem(QString::fromStdString(row->label));
        if (words.yard == row->id) yard_->setCurrentIndex(yard_->count() - 1);
    }
    must_->setChecked(words.must);
    told_->setWordWrap(true);
    told_->hide();
    auto* form = new QFormLayout;
    form->addRow(week_text::text(), text_);
    form->addRow(week_text::day(), day_);
    form->addRow(week_text::yard(), yard_);
    form->addRow(QString(), must_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &OwnTaskDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(told_);
    column->addWidget(buttons);
    text_->setFocus();
}

QString OwnTaskDialog::told() const { return told_->text(); }

OwnTaskWords OwnTaskDialog::words() const {
    OwnTaskWords words;
    words.day = fromQDate(day_->date());
    const int yard = yard_->currentIndex() - 1;
    if (yard >= 0) words.yard = yards_[static_cast<std::size_t>(yard)];
    words.text = text_->text().toStdString();
    words.must = must_->isChecked();
    return words;
}

void OwnTaskDialog::accept() {
    const auto why = text_->text().trimmed().isEmpty() ? week_text::textNeeded() : save_(words());
    if (why.isEmpty()) return QDialog::accept();
    told_->setText(why);
    told_->show();
    text_->setFocus();
}

}  // namespace tenthday
