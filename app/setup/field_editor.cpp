#include "setup/field_editor.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPlainTextEdit>

#include "setup/day_edit.h"
#include "setup/steps_edit.h"

namespace tenthday {
namespace {

using Edited = std::function<void()>;

FieldEditor textEditor(const Field& field, const Edited& edited) {
    auto* line = new QLineEdit;
    if (!field.choices.empty()) {
        QStringList texts;
        for (const auto& choice : field.choices) texts += choice.text;
        auto* completer = new QCompleter(texts, line);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        line->setCompleter(completer);
    }
    QObject::connect(line, &QLineEdit::textChanged, line, [edited] { edited(); });
    return {line, [line] { return QVariant(line->text().trimmed()); },
            [line](const QVariant& value) {
                if (value.toString() != line->text().trimmed()) line->setText(value.toString());
            }};
}

FieldEditor noteEditor(const Edited& edited) {
    auto* text = new QPlainTextEdit;
    text->setTabChangesFocus(true);
    text->setMaximumHeight(text->fontMetrics().lineSpacing() * 4 + 12);
    QObject::connect(text, &QPlainTextEdit::textChanged, text, [edited] { edited(); });
    return {text, [text] { return QVariant(text->toPlainText()); },
            [text](const QVariant& value) {
                if (value.toString() != text->toPlainText()) text->setPlainText(value.toString());
            }};
}

FieldEditor choiceEditor(const Field& field, const Edited& edited) {
    auto* box = new QComboBox;
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
    for (const auto& choice : field.choices) box->addItem(choice.text, choice.value);
    QObject::connect(box, &QComboBox::currentIndexChanged, box, [edited] { edited(); });
    return {box, [box] { return box->currentData(); },
            [box](const QVariant& value) { box->setCurrentIndex(box->findData(value)); }};
}

/// A line, not a spin box: it may be empty, and the unit stands behind it.
FieldEditor numberEditor(const Field& field, const Edited& edited) {
    auto* whole = new QWidget;
    auto* line = new QLineEdit;
    line->setMaximumWidth(line->fontMetrics().horizontalAdvance(QLatin1Char('0')) * 14);
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(line);
    row->addWidget(new QLabel(field.unit));
    row->addStretch();
    whole->setFocusProxy(line);
    QObject::connect(line, &QLineEdit::textChanged, line, [edited] { edited(); });
    const auto value = [line] {
        const auto text = line->text().trimmed();
        bool good = false;
        const int number = QLocale().toInt(text, &good);
        return text.isEmpty() ? QVariant() : good ? QVariant(number) : QVariant(text);
    };
    return {whole, value, [line, value](const QVariant& wish) {
                if (wish == value()) return;
                QLocale locale;
                locale.setNumberOptions(QLocale::OmitGroupSeparator);
                line->setText(wish.typeId() == QMetaType::Int ? locale.toString(wish.toInt())
                                                              : wish.toString());
            }};
}

FieldEditor dayEditor(Day today, const Edited& edited) {
    auto* day = new DayEdit;
    day->setNear(today);
    QObject::connect(day, &DayEdit::edited, day, [edited] { edited(); });
    return {day, [day] { return day->value(); },
            [day](const QVariant& value) {
                if (value != day->value()) day->setValue(value);
            }};
}

FieldEditor checksEditor(const Field& field, const Edited& edited) {
    auto* whole = new QWidget;
    auto* places =
        new QBoxLayout(field.inRow ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, whole);
    places->setContentsMargins(0, 0, 0, 0);
    places->setSpacing(field.inRow ? 10 : 4);
    std::vector<std::pair<QCheckBox*, QString>> boxes;
    for (const auto& choice : field.choices) {
        auto* box = new QCheckBox(choice.text);
        places->addWidget(box);
        QObject::connect(box, &QCheckBox::toggled, box, [edited] { edited(); });
        boxes.emplace_back(box, choice.value.toString());
    }
    if (field.inRow) places->addStretch();
    if (!boxes.empty()) whole->setFocusProxy(boxes.front().first);
    return {whole,
            [boxes] {
                QStringList ticked;
                for (const auto& [box, value] : boxes)
                    if (box->isChecked()) ticked += value;
                return QVariant(ticked);
            },
            [boxes](const QVariant& value) {
                for (const auto& [box, own] : boxes)
                    box->setChecked(value.toStringList().contains(own));
            }};
}

FieldEditor stepsEditor(const Edited& edited) {
    auto* steps = new StepsEdit;
    QObject::connect(steps, &StepsEdit::edited, steps, [edited] { edited(); });
    return {steps, [steps] { return steps->value(); },
            [steps](const QVariant& value) { steps->setValue(value); }};
}

}  // namespace

FieldEditor makeEditor(const Field& field, Day today, std::function<void()> edited) {
    switch (field.kind) {
        case FieldKind::Text:
            return textEditor(field, edited);
        case FieldKind::Note:
            return noteEditor(edited);
        case FieldKind::Choice:
            return choiceEditor(field, edited);
        case FieldKind::Number:
            return numberEditor(field, edited);
        case FieldKind::Date:
            return dayEditor(today, edited);
        case FieldKind::Checks:
            return checksEditor(field, edited);
        case FieldKind::Steps:
            return stepsEditor(edited);
    }
    return {};
}

}  // namespace tenthday
