/// @file draft_form.h  The fields of a batch: how it starts, when, by which method and rules.
#pragma once
#include <QWidget>

#include "drafting/day_trials.h"
#include "outlook/outlook.h"

class QComboBox;
class QDateEdit;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace tenthday {

class StaysForm;

class DraftForm : public QWidget {
    Q_OBJECT

public:
    explicit DraftForm(const Snapshot& snapshot, QWidget* parent = nullptr);

    /// Shows a draft; what the user did not touch stays.
    void show(const BatchDraft& draft);
    /// Writes the fields into a draft; the day only while planning forward.
    void read(BatchDraft& draft) const;

    /// A day wanted, while planning backward from it.
    struct Wish {
        Event event;
        Day day;
        Sureness sureness;
    };
    [[nodiscard]] std::optional<Wish> wish() const;
    /// The day that follows from the wish.
    void showDay(Day day);
    /// Back to planning forward, from this day.
    void planForward(Day day);
    /// What each catch rule costs in nuc days; none while unknown.
    void showNucDays(const NucHold* hold);
    /// Start, hour, larvae and method stay once the graft is recorded.
    void lockGraft();

    [[nodiscard]] QLineEdit& label() { return *label_; }
    [[nodiscard]] QComboBox& start() { return *start_; }
    [[nodiscard]] QComboBox& direction() { return *direction_; }
    [[nodiscard]] QDateEdit& dayField() { return *day_; }
    [[nodiscard]] QComboBox& wantedEvent() { return *wantedEvent_; }
    [[nodiscard]] QDateEdit& wantedDay() { return *wantedDay_; }
    [[nodiscard]] QSpinBox& hour() { return *hour_; }
    [[nodiscard]] QSpinBox& larvaFrom() { return *larvaFrom_; }
    [[nodiscard]] QSpinBox& larvaTo() { return *larvaTo_; }
    [[nodiscard]] QComboBox& method() { return *method_; }
    [[nodiscard]] QComboBox& makeUp() { return *makeUp_; }
    [[nodiscard]] QComboBox& mating() { return *mating_; }
    [[nodiscard]] QComboBox& catchRule() { return *catchRule_; }
    [[nodiscard]] StaysForm& stays() { return *stays_; }

Q_SIGNALS:
    void changed();

private:
    void layOut();
    void addRow(QFormLayout& rows, const QString& words, QWidget* field);
    void fillMethods();
    void follow();
    void tellSteps();
    void connectAll();

    const Snapshot snapshot_;
    QLineEdit* label_;
    QComboBox* start_;
    QComboBox* direction_;
    QLabel* dayLabel_;
    QDateEdit* day_;
    QWidget* wanted_;
    QLabel* wantedLabel_;
    QComboBox* wantedEvent_;
    QDateEdit* wantedDay_;
    QComboBox* sureness_;
    QSpinBox* hour_;
    QSpinBox* larvaFrom_;
    QSpinBox* larvaTo_;
    QComboBox* method_;
    QLabel* steps_;
    QComboBox* mating_;
    StaysForm* stays_;
    QComboBox* catchRule_;
    QComboBox* makeUp_;
    QLineEdit* note_;
    std::vector<Id<Method>> methods_;         ///< in the order of the choice
    std::optional<std::int32_t> shownFromH_;  ///< as the draft came
    std::optional<std::int32_t> shownToH_;
    bool locked_ = false;
};

}  // namespace tenthday
