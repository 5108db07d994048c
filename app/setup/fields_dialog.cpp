#include "setup/fields_dialog.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "look/page_parts.h"
#include "look/palette.h"

namespace tenthday {
namespace {

constexpr int kFieldWidth = 46;    ///< of the fields, in characters
constexpr QSize kLeast{460, 220};  ///< a question of one field has room around it too

QWidget* focusTarget(QWidget* widget) {
    return widget->focusProxy() ? widget->focusProxy() : widget;
}

}  // namespace

FieldsDialog::FieldsDialog(FieldsAsked asked, Day today, QWidget* parent)
    : QDialog(parent),
      asked_(std::move(asked)),
      values_(asked_.values),
      grid_(new QGridLayout),
      liveHolder_(new QWidget),
      told_(new QLabel),
      save_(new QPushButton(asked_.saveWord)) {
    setWindowTitle(asked_.head);
    setMinimumSize(kLeast);
    grid_->setHorizontalSpacing(14);
    grid_->setVerticalSpacing(2);
    grid_->setColumnStretch(1, 1);
    grid_->setColumnMinimumWidth(1, fontMetrics().averageCharWidth() * kFieldWidth);
    for (std::size_t i = 0; i < asked_.fields.size(); ++i) makePart(i, today);
    told_->setWordWrap(true);
    told_->hide();
    liveHolder_->hide();
    (new QVBoxLayout(liveHolder_))->setContentsMargins(0, 4, 0, 0);
    auto* fields = new QWidget;
    fields->setLayout(grid_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(save_, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &FieldsDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(fields);
    column->addStretch(1);
    column->addWidget(liveHolder_);
    column->addWidget(told_);
    column->addWidget(buttons);
    filling_ = true;
    for (std::size_t i = 0; i < parts_.size(); ++i) parts_[i].editor.setValue(values_[i]);
    filling_ = false;
    read();
    showHints();
    save_->setDefault(true);  // once it is in the dialog: Enter keeps, whichever field it is in
    if (!parts_.empty()) focusTarget(parts_.front().editor.widget)->setFocus();
}

void FieldsDialog::makePart(std::size_t index, Day today) {
    const auto& field = asked_.fields[index];
    Part part{new QLabel(field.name), makeEditor(field, today, [this, index] { edited(index); }),
              new QLabel};
    auto* target =
        field.kind == FieldKind::Checks ? part.editor.widget : focusTarget(part.editor.widget);
    target->setAccessibleName(field.name);
    target->setObjectName(field.name);
    part.name->setBuddy(target);
    part.under->setWordWrap(true);
    auto small = part.under->font();
    small.setPointSizeF(small.pointSizeF() * 0.92);
    part.under->setFont(small);
    const int row = static_cast<int>(index) * 2;
    const bool isTall = field.kind == FieldKind::Note || field.kind == FieldKind::Steps;
    grid_->addWidget(part.name, row, 0, isTall ? Qt::AlignTop : Qt::AlignVCenter);
    grid_->addWidget(part.editor.widget, row, 1);
    grid_->addWidget(part.under, row + 1, 1);
    parts_.push_back(part);
}

void FieldsDialog::setLive(QWidget* part) {
    liveHolder_->layout()->addWidget(part);
    liveHolder_->show();
}

QString FieldsDialog::under(std::size_t field) const { return parts_[field].under->text(); }
QString FieldsDialog::told() const { return told_->text(); }

void FieldsDialog::read() {
    for (std::size_t i = 0; i < parts_.size(); ++i) values_[i] = parts_[i].editor.value();
}

void FieldsDialog::enter(std::size_t field, const QVariant& value) {
    parts_[field].editor.setValue(value);
    edited(field);  // some editors tell only of keys
}

void FieldsDialog::edited(std::size_t field) {
    if (filling_) return;
    read();
    if (asked_.follow) {
        const auto before = values_;
        asked_.follow(values_, field);
        filling_ = true;
        for (std::size_t i = 0; i < parts_.size(); ++i)
            if (values_[i] != before[i]) parts_[i].editor.setValue(values_[i]);
        filling_ = false;
    }
    told_->hide();
    showHints();
    Q_EMIT changed();
}

bool FieldsDialog::fits(std::size_t field) const {
    return !asked_.fits || asked_.fits(values_, field);
}

void FieldsDialog::showHints() {
    for (std::size_t i = 0; i < parts_.size(); ++i) {
        auto& part = parts_[i];
        const auto hint = asked_.hint ? asked_.hint(values_, i) : Hint{};
        part.isFault = false;
        part.warns = hint.warns;
        part.under->setText(hint.text);
        part.under->setToolTip(hint.tip);
        const bool shown = fits(i);
        part.name->setVisible(shown);
        part.editor.widget->setVisible(shown);
        part.under->setVisible(shown && !hint.text.isEmpty());
    }
    tint();
}

void FieldsDialog::showFault(std::size_t field, const QString& text) {
    auto& part = parts_[field];
    part.isFault = true;
    part.under->setText(text);
    part.under->show();
    tint();
    focusTarget(part.editor.widget)->setFocus();
}

void FieldsDialog::accept() {
    read();
    showHints();
    for (std::size_t i = 0; i < parts_.size(); ++i)
        if (const auto text = complaintAbout(asked_.fields[i], values_[i]);
            !text.isEmpty() && fits(i))
            return showFault(i, text);
    const auto why = asked_.save(values_);
    if (why.isEmpty()) return QDialog::accept();
    told_->setText(why);
    told_->show();
    tint();
}

void FieldsDialog::tint() {
    const auto& colours = paletteOf(lookOf(palette()));
    const auto ink = [&](QLabel& label, Role role) {
        auto own = label.palette();
        if (own.color(QPalette::WindowText) == colours[role]) return;
        own.setColor(QPalette::WindowText, colours[role]);
        label.setPalette(own);
    };
    for (const auto& part : parts_)
        ink(*part.under, part.isFault ? Role::Danger : part.warns ? Role::Caution : Role::InkSoft);
    ink(*told_, Role::Danger);
}

void FieldsDialog::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) tint();
}

}  // namespace tenthday
