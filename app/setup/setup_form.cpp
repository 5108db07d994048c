#include "setup/setup_form.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>

#include "look/page_parts.h"
#include "look/palette.h"

namespace tenthday {
namespace {

constexpr int kWidest = 560;  // px
constexpr int kFewestLetters = 50;

}  // namespace

SetupForm::SetupForm(QWidget* parent)
    : QWidget(parent),
      head_(new QLabel),
      area_(new QScrollArea),
      told_(new QLabel),
      save_(new QPushButton(setup_text::save())),
      discard_(new QPushButton(setup_text::discard())) {
    makeHead(*head_, 1.2);
    head_->setWordWrap(true);
    told_->setWordWrap(true);
    area_->setWidgetResizable(true);
    area_->setFrameShape(QFrame::NoFrame);
    area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    area_->setMinimumWidth(kFewestLetters * fontMetrics().averageCharWidth());
    for (auto* button : {save_, discard_}) button->setAutoDefault(true);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(discard_);
    buttons->addWidget(save_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 0, 0, 0);
    column->addWidget(head_);
    column->addWidget(area_, 1);
    column->addWidget(told_);
    column->addLayout(buttons);
    connect(save_, &QPushButton::clicked, this, &SetupForm::saveWanted);
    connect(discard_, &QPushButton::clicked, this, &SetupForm::discardWanted);
    showNothing({});
}

void SetupForm::showNothing(const QString& told) {
    clear();
    kind_ = nullptr;
    draft_ = {};
    head_->clear();
    tell(told);
}

void SetupForm::show(const SetupKind& kind, const Snapshot& book, const std::vector<Uuid>& ids,
                     bool readOnly) {
    clear();
    kind_ = &kind;
    book_ = &book;
    readOnly_ = readOnly;
    draft_ = {ids, {}, kind.values(book, ids)};
    head_->setText(setup_text::atStart(kind.title(book, ids)));
    filling_ = true;
    build(kind.fields(book, ids), readOnly);
    for (std::size_t i = 0; i < parts_.size(); ++i) parts_[i].editor.setValue(draft_.values[i]);
    filling_ = false;
    read();
    draft_.before = draft_.values;
    for (std::size_t i = 0; i < parts_.size(); ++i) showHint(i);
    tell(readOnly ? setup_text::readOnly() : QString());
}

void SetupForm::clear() {
    parts_.clear();
    delete fields_;
    fields_ = nullptr;
}

void SetupForm::build(const std::vector<Field>& fields, bool readOnly) {
    fields_ = new QWidget;
    auto* column = new QVBoxLayout(fields_);
    column->setContentsMargins(0, 4, 8, 4);
    column->setSpacing(3);
    for (std::size_t i = 0; i < fields.size(); ++i)
        parts_.push_back(makePart(fields[i], i, *column));
    column->addStretch(1);
    fields_->setEnabled(!readOnly);
    fields_->setAutoFillBackground(false);
    area_->setWidget(fields_);
    area_->viewport()->setAutoFillBackground(false);
    fields_->installEventFilter(this);
    makeRoom();
}

/// Fields that are filled may ask for more.
bool SetupForm::eventFilter(QObject* watched, QEvent* event) {
    if (watched == fields_ && event->type() == QEvent::LayoutRequest) makeRoom();
    return QWidget::eventFilter(watched, event);
}

void SetupForm::makeRoom() {
    // A row of numbers is read as a whole; only a window too small for it scrolls sideways.
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    const int least = kFewestLetters * fontMetrics().averageCharWidth();
    area_->setMinimumWidth(
        std::clamp(fields_->minimumSizeHint().width() + bar, least, std::max(least, kWidest)));
}

SetupForm::Part SetupForm::makePart(const Field& field, std::size_t index, QVBoxLayout& column) {
    Part part{field, makeEditor(field, book_->today(), [this, index] { edited(index); }),
              new QLabel, new QWidget};
    auto* name = new QLabel(field.name);
    auto* widget = part.editor.widget;
    const bool isGroup = field.kind == FieldKind::Checks || field.kind == FieldKind::Steps;
    auto* target = widget->focusProxy() && !isGroup ? widget->focusProxy() : widget;
    target->setAccessibleName(field.name);
    target->setObjectName(field.name);
    name->setBuddy(target);
    part.under->setWordWrap(true);
    auto small = part.under->font();
    small.setPointSizeF(small.pointSizeF() * 0.92);
    part.under->setFont(small);
    auto* lines = new QVBoxLayout(part.whole);
    lines->setContentsMargins(0, 0, 0, 7);
    lines->setSpacing(3);
    lines->addWidget(name);
    lines->addWidget(widget);
    lines->addWidget(part.under);
    column.addWidget(part.whole);
    return part;
}

void SetupForm::read() {
    for (std::size_t i = 0; i < parts_.size(); ++i) draft_.values[i] = parts_[i].editor.value();
}

void SetupForm::edited(std::size_t field) {
    if (filling_) return;
    read();
    const auto before = draft_.values;
    kind_->follow(*book_, draft_, field);
    filling_ = true;
    for (std::size_t i = 0; i < parts_.size(); ++i)
        if (draft_.values[i] != before[i]) parts_[i].editor.setValue(draft_.values[i]);
    filling_ = false;
    for (std::size_t i = 0; i < parts_.size(); ++i) showHint(i);
    tell(isDirty() ? setup_text::notSavedYet() : QString());
}

void SetupForm::showHint(std::size_t field) {
    auto& part = parts_[field];
    const auto hint = kind_->hint(*book_, draft_, field);
    part.isFault = false;
    part.warns = hint.warns;
    part.whole->setVisible(kind_->fits(draft_, field));
    part.under->setText(hint.text);
    part.under->setToolTip(hint.tip);
    part.under->setVisible(!hint.text.isEmpty());
    tint();
}

void SetupForm::showFault(std::size_t field, const QString& text) {
    auto& part = parts_[field];
    part.isFault = true;
    part.under->setText(text);
    part.under->setVisible(true);
    tint();
    area_->ensureWidgetVisible(part.under);
    auto* widget = part.editor.widget;
    (widget->focusProxy() ? widget->focusProxy() : widget)->setFocus();
    tell(text, true);
}

bool SetupForm::check() {
    read();
    for (std::size_t i = 0; i < parts_.size(); ++i) showHint(i);
    for (std::size_t i = 0; i < parts_.size(); ++i)
        if (const auto text = complaintAbout(parts_[i].field, draft_.values[i]);
            !text.isEmpty() && kind_->fits(draft_, i))
            return showFault(i, text), false;
    const auto fault = kind_->fault(*book_, draft_);
    if (fault) showFault(fault->field, fault->text);
    return !fault;
}

void SetupForm::focusFirst() {
    if (parts_.empty()) return;
    auto* widget = parts_.front().editor.widget;
    (widget->focusProxy() ? widget->focusProxy() : widget)->setFocus();
}

void SetupForm::tell(const QString& text, bool isRefusal) {
    refused_ = isRefusal;
    told_->setText(text);
    followState();
    tint();
}

void SetupForm::followState() {
    save_->setVisible(isOpen());
    discard_->setVisible(isOpen());
    const bool can = isOpen() && !readOnly_;
    save_->setEnabled(can && (isDirty() || draft_.isNew()));
    discard_->setEnabled(can && (isDirty() || draft_.isNew()));
}

void SetupForm::tint() {
    const auto& colours = paletteOf(lookOf(palette()));
    const auto ink = [&](QLabel& label, Role role) {
        auto own = label.palette();
        if (own.color(QPalette::WindowText) == colours[role]) return;
        own.setColor(QPalette::WindowText, colours[role]);
        label.setPalette(own);
    };
    for (const auto& part : parts_)
        ink(*part.under, part.isFault ? Role::Danger : part.warns ? Role::Caution : Role::InkSoft);
    ink(*told_, refused_ ? Role::Danger : isDirty() ? Role::Caution : Role::InkSoft);
}

void SetupForm::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && save_->isEnabled()) return void(Q_EMIT saveWanted());
    if (event->key() == Qt::Key_Escape && discard_->isEnabled())
        return void(Q_EMIT discardWanted());
    QWidget::keyPressEvent(event);
}

void SetupForm::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) tint();
}

}  // namespace tenthday
