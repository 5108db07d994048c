#include "phone/calendar_keeper.h"

#include "phone/phone_calendar.h"

namespace tenthday {

std::chrono::sys_seconds stampOf(const QDateTime& moment) {
    return std::chrono::sys_seconds{std::chrono::seconds{moment.toSecsSinceEpoch()}};
}

CalendarKeeper::CalendarKeeper(Desk& desk, KeptCalendar kept, UtcNow utcNow)
    : desk_(desk), kept_(std::move(kept)), utcNow_(std::move(utcNow)), saved_(desk.outlook()) {
    wait_.setSingleShot(true);
    connect(&wait_, &QTimer::timeout, this, &CalendarKeeper::writeNow);
    connect(&desk_, &Desk::shown, this, &CalendarKeeper::follow);
    wait_.start(kOpening);
}

CalendarKeeper::~CalendarKeeper() {
    disconnect(&desk_, nullptr, this, nullptr);
    if (wait_.isActive()) (void)write();
}

void CalendarKeeper::follow(const OutlookPtr& outlook, const Changes& changes) {
    if (changes.isPreview()) return;
    saved_ = outlook;
    if (changes.cause != Cause::PreviewDropped) wait_.start(kRest);
}

Result<void> CalendarKeeper::writeNow() {
    wait_.stop();
    auto done = write();
    if (!done) wait_.start(kRetry);
    Q_EMIT tried(done ? QString() : QString::fromStdString(done.error().text));
    return done;
}

Result<void> CalendarKeeper::write() {
    const auto outlook = outlookOfToday(saved_, desk_.file());
    if (!outlook) return outlook.error();
    return updateCalendarFile(kept_, *outlook.value(), stampOf(utcNow_()));
}

}  // namespace tenthday
