/// @file calendar_keeper.h  Keeps a calendar file up to date with the open book.
#pragma once
#include <QDateTime>
#include <QObject>
#include <QTimer>
#include <functional>

#include "desk/desk.h"
#include "options/kept_calendar.h"

namespace tenthday {

using UtcNow = std::function<QDateTime()>;

/// The moment as a calendar stamps it.
[[nodiscard]] std::chrono::sys_seconds stampOf(const QDateTime& moment);

/// Writes once for all edits made in quick succession; what still waits when it goes is written
/// then. Where that fails it tries again, at the next change or after a minute.
class CalendarKeeper : public QObject {
    Q_OBJECT

public:
    /// The book must outlive it. The first time is soon, so that the file knows of today.
    CalendarKeeper(Desk& desk, KeptCalendar kept, UtcNow utcNow);
    ~CalendarKeeper() override;

    [[nodiscard]] const KeptCalendar& kept() const { return kept_; }
    /// Writes what there is to write without waiting; tells, and gives back, how it went.
    Result<void> writeNow();

    static constexpr int kRest = 300;       ///< ms without an edit before it writes
    static constexpr int kRetry = 60'000;   ///< ms after a failure
    static constexpr int kOpening = 2'000;  ///< ms: the first picture of a book comes first

Q_SIGNALS:
    /// After each try: empty when the file is up to date, else why not, in one English line.
    void tried(const QString& why);

private:
    void follow(const OutlookPtr& outlook, const Changes& changes);
    [[nodiscard]] Result<void> write();

    Desk& desk_;
    KeptCalendar kept_;
    UtcNow utcNow_;
    OutlookPtr saved_;  ///< never a preview
    QTimer wait_;
};

}  // namespace tenthday
