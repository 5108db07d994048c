/// @file day_edit.h  A day, typed or chosen from a calendar; it may be empty.
#pragma once
#include <QDate>
#include <QLineEdit>
#include <QVariant>

#include "calendar/day.h"

namespace tenthday {

class DayEdit : public QWidget {
    Q_OBJECT

public:
    explicit DayEdit(QWidget* parent = nullptr);
    ~DayEdit() override;

    /// QDate; invalid where empty; the text where it is no day.
    [[nodiscard]] QVariant value() const;
    void setValue(const QVariant& value);
    /// The day on which the calendar opens while the field is empty.
    void setNear(Day day) { near_ = day; }
    [[nodiscard]] QLineEdit& line() { return *line_; }

Q_SIGNALS:
    void edited();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void openCalendar();
    void showDay(QDate day);

    QLineEdit* line_;
    QDate shown_;  ///< what the text says, where it was written here
    QString shownText_;
    Day near_{};
};

/// The day a text means: 2027-05-01, or as the reader's language writes days, with the year.
[[nodiscard]] QDate dayFromTyped(const QString& typed);
/// As import takes it, 2027-05-01; what is no day stays as it is.
[[nodiscard]] QString dayToken(const QString& typed);

}  // namespace tenthday
