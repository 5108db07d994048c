/// @file plan_steps.h  The way to a season's plan in three steps, for a season that has none: what
/// is there, what is missing, and where it is entered.
#pragma once
#include <QWidget>
#include <array>

#include "outlook/outlook.h"
#include "screen_text/plan_steps_text.h"

class QLabel;
class QPushButton;

namespace tenthday {

/// What the book has for a plan.
[[nodiscard]] PlanGround planGround(const Outlook& outlook);

class PlanSteps : public QWidget {
    Q_OBJECT

public:
    explicit PlanSteps(QWidget* parent = nullptr);

    void show(const Outlook& outlook);
    /// @param step  0 to 2: orders, boxes and builders, the plan
    [[nodiscard]] QString state(int step) const;
    [[nodiscard]] QString season() const;
    [[nodiscard]] QPushButton& button(int step) { return *parts_[std::size_t(step)].go; }

Q_SIGNALS:
    void ordersWanted();
    /// Where the first thing that is missing is entered, else where boxes are.
    void setupWanted(tenthday::setup_text::Kind kind);
    void seasonsWanted();
    void planWanted();

private:
    struct Part {
        QLabel* name;
        QLabel* state;
        QPushButton* go;
    };
    Part makePart(int step);

    PlanGround ground_;
    QLabel* season_;
    QPushButton* seasons_;
    std::array<Part, 3> parts_{};
};

}  // namespace tenthday
