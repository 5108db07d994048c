#include "evening/queen_numbers_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "records/queen_numbers.h"
#include "screen_text/cells_text.h"
#include "screen_text/queen_text.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

/// What the newest batch of the book would give.
QueenNumberParts sampleOf(const Snapshot& book) {
    QueenNumberParts parts;
    parts.year = static_cast<int>(date::year_month_day(book.today()).year());
    Ptr<Batch> newest;
    for (const auto& batch : book.all<Batch>())
        if (!newest || batch->day >= newest->day) newest = batch;
    if (newest) parts.batch = newest->label;
    if (!book.all<Line>().empty()) parts.line = (*book.all<Line>().begin())->label;
    return parts;
}

}  // namespace

QueenNumbersDialog::QueenNumbersDialog(const QueenNumbering& numbering, const Snapshot& book,
                                       QWidget* parent)
    : QDialog(parent),
      book_(book),
      give_(new QCheckBox(queen_text::giveNumbers())),
      pattern_(new QLineEdit(numbering.pattern)),
      told_(new QLabel) {
    setWindowTitle(queen_text::numbersTitle());
    setMinimumSize(460, 220);
    give_->setChecked(numbering.on);
    pattern_->setMaxLength(60);
    auto* help = new QLabel(queen_text::patternHelp());
    for (auto* label : {help, told_}) label->setWordWrap(true);
    auto* buttons = new QDialogButtonBox;
    keep_ = buttons->addButton(cells_text::keep(), QDialogButtonBox::AcceptRole);
    buttons->addButton(window_text::cancel(), QDialogButtonBox::RejectRole);
    keep_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(give_, &QCheckBox::toggled, this, &QueenNumbersDialog::tell);
    connect(pattern_, &QLineEdit::textChanged, this, &QueenNumbersDialog::tell);
    auto* form = new QFormLayout;
    form->addRow(queen_text::pattern(), pattern_);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(give_);
    column->addLayout(form);
    column->addWidget(told_);
    column->addWidget(help);
    column->addStretch();
    column->addWidget(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 70);
    tell();
}

QueenNumbering QueenNumbersDialog::numbering() const {
    return {give_->isChecked(), pattern_->text()};
}

QString QueenNumbersDialog::told() const { return told_->text(); }

void QueenNumbersDialog::tell() {
    const auto pattern = QueenPattern::of(pattern_->text().toStdString());
    pattern_->setEnabled(give_->isChecked());
    keep_->setEnabled(pattern.ok() || !give_->isChecked());
    if (!pattern) return told_->setText(queen_text::badPattern(pattern_->text()));
    QueenNumbers numbers(book_, pattern.value());
    const auto next = [&] { return QString::fromStdString(numbers.next(sampleOf(book_))); };
    const auto first = next();
    const auto second = next();
    told_->setText(queen_text::nextNumbers(first, second, next()));
}

}  // namespace tenthday
