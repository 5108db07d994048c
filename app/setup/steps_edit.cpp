#include "setup/steps_edit.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

#include "records/kinds.h"
#include "screen_text/chart_text.h"
#include "screen_text/setup_text.h"

namespace tenthday {
namespace {

constexpr int kMostSteps = 20;
constexpr int kLastHour = 480;

QSpinBox* spin(int most, int value, const QString& unit, const QString& name) {
    auto* box = new QSpinBox;
    box->setRange(0, most);
    box->setValue(value);
    box->setSuffix(unit);
    box->setAccessibleName(name);
    return box;
}

}  // namespace

StepsEdit::StepsEdit(QWidget* parent)
    : QWidget(parent),
      grid_(new QGridLayout),
      add_(new QPushButton(setup_text::addStep())),
      drop_(new QPushButton(setup_text::dropStep())) {
    int column = 0;
    for (const auto& head : {setup_text::where(), setup_text::fromHour(), setup_text::toHour(),
                             setup_text::rest(), setup_text::name(setup_text::Name::Days)})
        grid_->addWidget(new QLabel(head), 0, column++);
    grid_->setColumnStretch(0, 1);
    grid_->setHorizontalSpacing(6);
    for (auto* button : {add_, drop_}) button->setAutoDefault(true);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(add_);
    buttons->addWidget(drop_);
    buttons->addStretch();
    auto* column2 = new QVBoxLayout(this);
    column2->setContentsMargins(0, 0, 0, 0);
    column2->addLayout(grid_);
    column2->addLayout(buttons);
    connect(add_, &QPushButton::clicked, this, [this] {
        const int from = lines_.empty() ? 0 : lines_.back().to->value();
        addLine({static_cast<int>(BuilderKind::Finisher), from, std::min(from + 24, kLastHour), 0});
        lines_.back().where->setFocus();
        Q_EMIT edited();
    });
    connect(drop_, &QPushButton::clicked, this, [this] {
        dropLine();
        Q_EMIT edited();
    });
    tell();
}

QVariant StepsEdit::value() const {
    QVariantList steps;
    for (const auto& line : lines_)
        steps.append(QVariant(QVariantList{line.where->currentData(), line.from->value(),
                                           line.to->value(), line.rest->value()}));
    return steps;
}

void StepsEdit::setValue(const QVariant& value) {
    if (value == this->value()) return;  // keeps the place where one types
    while (!lines_.empty()) dropLine();
    for (const auto& step : value.toList()) addLine(step.toList());
    tell();
}

void StepsEdit::addLine(const QVariantList& step) {
    const int row = static_cast<int>(lines_.size()) + 1;
    const auto name = setup_text::stepNumber(row) + QStringLiteral(": ");
    Line line{
        new QComboBox,
        spin(kLastHour, step.value(1).toInt(), setup_text::hours(), name + setup_text::fromHour()),
        spin(kLastHour, step.value(2).toInt(), setup_text::hours(), name + setup_text::toHour()),
        spin(60, step.value(3).toInt(), setup_text::days(), name + setup_text::rest()), new QLabel};
    line.where->setAccessibleName(name + setup_text::where());
    for (std::size_t i = 0; i < kTokenCount<BuilderKind>; ++i)
        line.where->addItem(chart_text::builderKind(static_cast<BuilderKind>(i)),
                            static_cast<int>(i));
    line.where->setCurrentIndex(line.where->findData(step.value(0)));
    line.where->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    line.where->setMinimumContentsLength(10);
    int column = 0;
    for (QWidget* part : {static_cast<QWidget*>(line.where), static_cast<QWidget*>(line.from),
                          static_cast<QWidget*>(line.to), static_cast<QWidget*>(line.rest),
                          static_cast<QWidget*>(line.days)})
        grid_->addWidget(part, row, column++);
    connect(line.where, &QComboBox::activated, this, &StepsEdit::edited);
    for (auto* box : {line.from, line.to, line.rest})
        connect(box, &QSpinBox::valueChanged, this, [this] {
            tell();
            Q_EMIT edited();
        });
    lines_.push_back(line);
    tell();
}

void StepsEdit::dropLine() {
    const auto line = lines_.back();
    lines_.pop_back();
    for (QObject* part : {static_cast<QObject*>(line.where), static_cast<QObject*>(line.from),
                          static_cast<QObject*>(line.to), static_cast<QObject*>(line.rest),
                          static_cast<QObject*>(line.days)})
        delete part;
    tell();
}

void StepsEdit::tell() {
    for (const auto& line : lines_)
        line.days->setText(setup_text::daySpan(line.from->value(), line.to->value()));
    add_->setEnabled(lines_.size() < kMostSteps);
    drop_->setEnabled(lines_.size() > 1);
}

}  // namespace tenthday
