/// @file phone_link.h  The open book and the phone: the dialog that asks for a calendar, and the
/// calendar that is kept.
#pragma once
#include <QObject>
#include <QPointer>
#include <memory>

#include "options/settings.h"
#include "phone/calendar_dialog.h"
#include "phone/calendar_keeper.h"

namespace tenthday {

/// Begins to keep the calendar that the settings name for the book, unless it is read only: then a
/// first window has the book, and keeps it.
class PhoneLink : public QObject {
    Q_OBJECT

public:
    /// Desk, settings and window must outlive it.
    PhoneLink(Desk& desk, Settings& settings, QWidget& window, UtcNow utcNow);
    ~PhoneLink() override;

    /// Opens the dialog.
    void ask();
    /// Null while it is not open.
    [[nodiscard]] CalendarDialog* dialog() const { return dialog_; }
    /// Null while no calendar is kept.
    [[nodiscard]] CalendarKeeper* keeper() const { return keeper_.get(); }

Q_SIGNALS:
    /// Something that was done, or could not be, for the status line.
    void told(const QString& what);
    /// The kept calendar: why it is not up to date, empty when it is.
    void outOfDate(const QString& why);

private:
    [[nodiscard]] QString book() const;
    [[nodiscard]] QString make(const CalendarChoice& choice);
    void keep();
    void stop();
    void follow(const QString& why);

    Desk& desk_;
    Settings& settings_;
    QWidget& window_;
    UtcNow utcNow_;
    QPointer<CalendarDialog> dialog_;
    std::unique_ptr<CalendarKeeper> keeper_;
    QString why_;
};

}  // namespace tenthday
