/// @file plan_form.h  What is asked of a season's plan, beside what the book says.
#pragma once
#include <QWidget>
#include <array>

#include "outlook/outlook.h"
#include "planning/plan_question.h"

class QCheckBox;
class QDateEdit;
class QSpinBox;

namespace tenthday {

class PlanForm : public QWidget {
    Q_OBJECT

public:
    explicit PlanForm(QWidget* parent = nullptr);

    /// Days that can be asked for, and what sets them. Days entered by hand stay while they can.
    void follow(const Outlook& outlook);
    /// Nothing is kept fast: that is for the page to say.
    [[nodiscard]] PlanQuestion question() const;
    [[nodiscard]] bool keepsTicked() const;
    /// Whether there is anything to be kept.
    void setHasProposals(bool has);

    [[nodiscard]] QDateEdit& from() { return *from_; }
    [[nodiscard]] QDateEdit& until() { return *until_; }
    [[nodiscard]] QSpinBox& most() { return *most_; }
    [[nodiscard]] QSpinBox& hours() { return *hours_; }
    [[nodiscard]] QCheckBox& notOnOne() { return *notOnOne_; }
    [[nodiscard]] QCheckBox& keep() { return *keep_; }
    /// @param day  Monday is 0
    [[nodiscard]] QCheckBox& weekday(int day) { return *weekdays_[static_cast<std::size_t>(day)]; }

private:
    QDateEdit* from_;
    QDateEdit* until_;
    QSpinBox* most_;
    QSpinBox* hours_;
    QCheckBox* notOnOne_;
    QCheckBox* keep_;
    std::array<QCheckBox*, 7> weekdays_{};
    DayWindow offered_{};  ///< days that were filled in
};

}  // namespace tenthday
