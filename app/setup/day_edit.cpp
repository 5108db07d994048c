#include "setup/day_edit.h"

#include <QCalendarWidget>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QMenu>
#include <QTextCharFormat>
#include <QToolButton>
#include <QWidgetAction>

#include "screen_text/dates.h"
#include "screen_text/setup_text.h"
#include "setup/field.h"

namespace tenthday {

QDate dayFromTyped(const QString& typed) {
    const QLocale locale;
    const auto text = typed.simplified();
    auto day = QDate::fromString(text, Qt::ISODate);
    const auto shortForm = locale.dateFormat(QLocale::ShortFormat);
    auto withCentury = shortForm;
    if (!withCentury.contains(QStringLiteral("yyyy")))
        withCentury.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
    for (const auto& form :
         {withCentury, locale.dateFormat(QLocale::LongFormat), QStringLiteral("d MMM yyyy"),
          QStringLiteral("d MMMM yyyy"), QStringLiteral("MMM d yyyy"),
          QStringLiteral("MMMM d yyyy"), QStringLiteral("d.M.yyyy"),
          QStringLiteral("ddd d MMM yyyy"), QStringLiteral("ddd MMM d yyyy")}) {
        if (day.isValid()) break;
        day = locale.toDate(text, form);
    }
    return day.isValid() && day.year() >= 1900 && day.year() <= 2199 ? day : QDate();
}

QString dayToken(const QString& typed) {
    const auto day = dayFromTyped(typed);
    return day.isValid() ? day.toString(Qt::ISODate) : typed;
}

DayEdit::DayEdit(QWidget* parent) : QWidget(parent), line_(new QLineEdit) {
    auto* button = new QToolButton;
    button->setArrowType(Qt::DownArrow);
    button->setToolTip(setup_text::calendar());
    button->setAccessibleName(setup_text::calendar());
    button->setFocusPolicy(Qt::NoFocus);  // Alt+Down in the field does the same
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    row->addWidget(line_, 1);
    row->addWidget(button);
    setFocusProxy(line_);
    line_->installEventFilter(this);
    connect(button, &QToolButton::clicked, this, &DayEdit::openCalendar);
    connect(line_, &QLineEdit::textEdited, this, &DayEdit::edited);
    connect(line_, &QLineEdit::editingFinished, this, [this] {
        if (const auto day = value(); day.typeId() == QMetaType::QDate) showDay(day.toDate());
    });
}

/// Going, the line loses the focus, and would still tell of it.
DayEdit::~DayEdit() { line_->disconnect(this); }

QVariant DayEdit::value() const {
    const auto text = line_->text().trimmed();
    if (text.isEmpty()) return {};
    if (shown_.isValid() && text == shownText_) return shown_;
    const auto day = dayFromTyped(text);
    return day.isValid() ? QVariant(day) : QVariant(text);
}

void DayEdit::setValue(const QVariant& value) {
    if (value.typeId() == QMetaType::QDate)
        showDay(value.toDate());
    else
        line_->setText(value.toString());
}

void DayEdit::showDay(QDate day) {
    shown_ = day;
    shownText_ = setup_text::day(*toDay(day));
    line_->setText(shownText_);
}

void DayEdit::openCalendar() {
    auto* calendar = new QCalendarWidget;
    calendar->setVerticalHeaderFormat(QCalendarWidget::ISOWeekNumbers);
    for (const auto weekend : {Qt::Saturday, Qt::Sunday})
        calendar->setWeekdayTextFormat(weekend, QTextCharFormat());
    const auto now = value();
    calendar->setSelectedDate(now.typeId() == QMetaType::QDate ? now.toDate() : toQDate(near_));
    QMenu menu;
    auto* holder = new QWidgetAction(&menu);
    holder->setDefaultWidget(calendar);
    menu.addAction(holder);
    const auto take = [this, &menu](QDate day) {
        showDay(day);
        menu.close();
        Q_EMIT edited();
    };
    connect(calendar, &QCalendarWidget::clicked, this, take);
    connect(calendar, &QCalendarWidget::activated, this, take);
    calendar->setFocus();
    menu.exec(mapToGlobal(QPoint(0, height())));
    line_->setFocus();
}

bool DayEdit::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Down && key->modifiers().testFlag(Qt::AltModifier)) {
            openCalendar();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace tenthday
