/// @file calendar_dialog.h  Which calendar is wanted for the phone: file, tasks, hours, and whether
/// it is kept.
#pragma once
#include <QDialog>
#include <array>
#include <functional>
#include <optional>

#include "options/kept_calendar.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace tenthday {

/// What the dialog begins with.
struct CalendarForm {
    KeptCalendar calendar;  ///< the file proposed, or kept
    bool isKept = false;
    bool canKeep = true;  ///< false: the book is read only
};

struct CalendarChoice {
    KeptCalendar calendar;
    bool keep = false;
};

/// Stays open, with one line that says why, while what was given is refused.
class CalendarDialog : public QDialog {
    Q_OBJECT

public:
    /// Empty when done, else why not.
    using Save = std::function<QString(const CalendarChoice&)>;

    CalendarDialog(const CalendarForm& form, Save save, QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit& file() { return *file_; }
    [[nodiscard]] QCheckBox& kind(TaskRule rule) { return *kinds_[static_cast<std::size_t>(rule)]; }
    [[nodiscard]] QPushButton& none() { return *none_; }
    [[nodiscard]] QRadioButton& allDay() { return *allDay_; }
    [[nodiscard]] QCheckBox& keep() { return *keep_; }
    /// Hidden while nothing is kept.
    [[nodiscard]] QPushButton& stopButton() { return *stop_; }
    [[nodiscard]] QString told() const;

    void accept() override;

Q_SIGNALS:
    void stopWished();

private:
    void fill(const CalendarForm& form);
    void layOut(const CalendarForm& form);
    [[nodiscard]] QWidget* makePlace();
    [[nodiscard]] QWidget* makeKinds();
    [[nodiscard]] QWidget* makeTimes();
    void tickAll(bool on);
    void chooseFile();
    [[nodiscard]] CalendarChoice choice() const;
    void tell(const QString& why);

    Save save_;
    QString folder_;  ///< where a bare name is meant to be
    QLineEdit* file_;
    QPushButton* choose_;
    QPushButton* all_;
    QPushButton* none_;
    QRadioButton* hours_;
    QRadioButton* allDay_;
    QCheckBox* keep_;
    QPushButton* stop_;
    QPushButton* write_;
    QLabel* told_;
    std::array<QCheckBox*, kTokenCount<TaskRule>> kinds_{};
};

}  // namespace tenthday
