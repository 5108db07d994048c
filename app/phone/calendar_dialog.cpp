#include "phone/calendar_dialog.h"

#include <QCheckBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "screen_text/phone_text.h"
#include "screen_text/week_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

const QString kSuffix = QStringLiteral("ics");

QLabel* wrapped(const QString& text) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

QPushButton* plainButton(const QString& text) {
    auto* button = new QPushButton(text);
    button->setAutoDefault(false);
    return button;
}

}  // namespace

CalendarDialog::CalendarDialog(const CalendarForm& form, Save save, QWidget* parent)
    : QDialog(parent),
      save_(std::move(save)),
      folder_(QFileInfo(form.calendar.path).absolutePath()),
      file_(new QLineEdit),
      choose_(plainButton(phone_text::chooseFile())),
      all_(plainButton(phone_text::all())),
      none_(plainButton(phone_text::none())),
      hours_(new QRadioButton(phone_text::withHours())),
      allDay_(new QRadioButton(phone_text::allDay())),
      keep_(new QCheckBox(phone_text::keep())),
      stop_(plainButton(phone_text::stopKeeping())),
      write_(new QPushButton(phone_text::write())),
      told_(wrapped({})) {
    setWindowTitle(window_text::asTitle(phone_text::entry()));
    for (std::size_t i = 0; i < kinds_.size(); ++i)
        kinds_[i] = new QCheckBox(week_text::kind(static_cast<TaskRule>(i)));
    layOut(form);
    fill(form);
    connect(choose_, &QPushButton::clicked, this, &CalendarDialog::chooseFile);
    connect(all_, &QPushButton::clicked, this, [this] { tickAll(true); });
    connect(none_, &QPushButton::clicked, this, [this] { tickAll(false); });
    connect(write_, &QPushButton::clicked, this, &CalendarDialog::accept);
    connect(stop_, &QPushButton::clicked, this, [this] {
        Q_EMIT stopWished();
        reject();
    });
    file_->setFocus();
}

void CalendarDialog::fill(const CalendarForm& form) {
    file_->setText(QDir::toNativeSeparators(form.calendar.path));
    for (std::size_t i = 0; i < kinds_.size(); ++i)
        kinds_[i]->setChecked(form.calendar.wish.wants(static_cast<TaskRule>(i)));
    (form.calendar.wish.allDay ? allDay_ : hours_)->setChecked(true);
    keep_->setEnabled(form.canKeep);
    keep_->setChecked(form.canKeep);
    stop_->setVisible(form.isKept);
}

void CalendarDialog::layOut(const CalendarForm& form) {
    told_->hide();
    write_->setDefault(true);
    auto* cancel = plainButton(window_text::cancel());
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(stop_);
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(write_);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(wrapped(phone_text::what()));
    column->addWidget(makePlace());
    column->addWidget(makeKinds());
    column->addWidget(makeTimes());
    column->addWidget(keep_);
    column->addWidget(wrapped(!form.canKeep ? phone_text::cannotKeep()
                              : form.isKept ? phone_text::keptAlready()
                                            : phone_text::keepMeans()));
    column->addWidget(told_);
    column->addStretch(1);
    column->addLayout(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 84);
}

QWidget* CalendarDialog::makePlace() {
    auto* place = new QWidget;
    auto* line = new QHBoxLayout(place);
    line->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(phone_text::file());
    label->setBuddy(file_);
    file_->setAccessibleName(phone_text::file().remove(u'&'));
    line->addWidget(label);
    line->addWidget(file_, 1);
    line->addWidget(choose_);
    return place;
}

/// Two columns, read downwards: the order of one day's work.
QWidget* CalendarDialog::makeKinds() {
    auto* box = new QGroupBox(phone_text::tasks());
    auto* grid = new QGridLayout(box);
    const int rows = static_cast<int>(kinds_.size() + 1) / 2;
    QWidget* before = nullptr;
    for (int i = 0; i < static_cast<int>(kinds_.size()); ++i) {
        auto* tick = kinds_[static_cast<std::size_t>(i)];
        grid->addWidget(tick, i % rows, i / rows);
        if (before != nullptr) setTabOrder(before, tick);
        before = tick;
    }
    auto* both = new QHBoxLayout;
    both->addWidget(all_);
    both->addWidget(none_);
    both->addStretch(1);
    grid->addLayout(both, rows, 0, 1, 2);
    return box;
}

QWidget* CalendarDialog::makeTimes() {
    auto* box = new QGroupBox(phone_text::times());
    auto* line = new QVBoxLayout(box);
    line->addWidget(hours_);
    line->addWidget(allDay_);
    return box;
}

void CalendarDialog::tickAll(bool on) {
    for (auto* tick : kinds_) tick->setChecked(on);
}

void CalendarDialog::chooseFile() {
    QFileDialog dialog(this, windowTitle(), folder_, phone_text::calendarFiles());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(kSuffix);
    dialog.setOption(QFileDialog::DontConfirmOverwrite);  // a calendar goes on, no other is touched
    dialog.selectFile(choice().calendar.path);
    if (dialog.exec() == QDialog::Accepted)
        file_->setText(QDir::toNativeSeparators(dialog.selectedFiles().value(0)));
}

CalendarChoice CalendarDialog::choice() const {
    CalendarChoice choice;
    auto& [path, wish] = choice.calendar;
    path = QDir::fromNativeSeparators(file_->text().trimmed());
    if (!path.isEmpty()) {
        if (QFileInfo(path).suffix().compare(kSuffix, Qt::CaseInsensitive) != 0)
            path += u'.' + kSuffix;
        path = QDir::cleanPath(QDir(folder_).absoluteFilePath(path));
    }
    for (std::size_t i = 0; i < kinds_.size(); ++i)
        if (kinds_[i]->isChecked()) wish.kinds.push_back(static_cast<TaskRule>(i));
    wish.allDay = allDay_->isChecked();
    choice.keep = keep_->isChecked();
    return choice;
}

QString CalendarDialog::told() const { return told_->text(); }

void CalendarDialog::tell(const QString& why) {
    told_->setText(why);
    told_->show();
}

void CalendarDialog::accept() {
    auto wanted = choice();
    if (wanted.calendar.path.isEmpty()) return tell(phone_text::needsFile()), file_->setFocus();
    if (wanted.calendar.wish.kinds.empty()) return tell(phone_text::needsTasks());
    // All means all, also those that a later program knows.
    if (wanted.calendar.wish.kinds.size() == kinds_.size()) wanted.calendar.wish.kinds.clear();
    const auto why = save_(wanted);
    if (why.isEmpty()) return QDialog::accept();
    tell(why);
}

}  // namespace tenthday
