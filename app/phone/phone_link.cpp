#include "phone/phone_link.h"

#include <QDir>
#include <QFileInfo>

#include "phone/phone_calendar.h"
#include "screen_text/phone_text.h"

namespace tenthday {

PhoneLink::PhoneLink(Desk& desk, Settings& settings, QWidget& window, UtcNow utcNow)
    : desk_(desk), settings_(settings), window_(window), utcNow_(std::move(utcNow)) {
    keep();
}

PhoneLink::~PhoneLink() { delete dialog_; }

QString PhoneLink::book() const { return QFileInfo(desk_.path()).absoluteFilePath(); }

void PhoneLink::ask() {
    const auto kept = settings_.keptCalendar(book());
    const QFileInfo info(book());
    const auto proposed =
        info.absoluteDir().filePath(info.completeBaseName() + QStringLiteral(".ics"));
    const CalendarForm form{kept.value_or(KeptCalendar{proposed, {}}), kept.has_value(),
                            !desk_.isReadOnly()};
    delete dialog_;
    dialog_ = new CalendarDialog(
        form, [this](const CalendarChoice& choice) { return make(choice); }, &window_);
    dialog_->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog_, &CalendarDialog::stopWished, this, &PhoneLink::stop);
    dialog_->open();
}

QString PhoneLink::make(const CalendarChoice& choice) {
    const auto& [calendar, keeps] = choice;
    (void)desk_.preview(std::nullopt);  // only what is saved goes to the phone
    const auto outlook = outlookOfToday(desk_.outlook(), desk_.file());
    const auto done = outlook ? updateCalendarFile(calendar, *outlook.value(), stampOf(utcNow_()))
                              : Result<void>(outlook.error());
    if (!done) return phone_text::cannotWrite() + u'\n' + QString::fromStdString(done.error().text);
    if (!desk_.isReadOnly()) {
        settings_.setKeptCalendar(book(), keeps ? std::optional(calendar) : std::nullopt);
        keep();
    }
    Q_EMIT told(keeps ? phone_text::kept(calendar.path) : phone_text::written(calendar.path));
    return {};
}

void PhoneLink::keep() {
    keeper_.reset();
    follow({});
    const auto kept = settings_.keptCalendar(book());
    if (!kept || desk_.isReadOnly()) return;
    keeper_ = std::make_unique<CalendarKeeper>(desk_, *kept, utcNow_);
    connect(keeper_.get(), &CalendarKeeper::tried, this, &PhoneLink::follow);
}

void PhoneLink::stop() {
    settings_.setKeptCalendar(book(), std::nullopt);
    keep();
    Q_EMIT told(phone_text::noLongerKept());
}

/// A failure is told once, and stays to be seen until the file is up to date.
void PhoneLink::follow(const QString& why) {
    if (why == why_) return;
    why_ = why;
    Q_EMIT outOfDate(why);
    if (!why.isEmpty()) Q_EMIT told(phone_text::cannotWrite() + u' ' + why);
}

}  // namespace tenthday
