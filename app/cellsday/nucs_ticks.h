/// @file nucs_ticks.h  The list of nucs, ticked by key, by click, and by drawing over ticks.
#pragma once
#include <QTableView>
#include <optional>

#include "cellsday/nucs_ticks_model.h"

namespace tenthday {

class NucsTicks : public QTableView {
    Q_OBJECT

public:
    explicit NucsTicks(QWidget* parent = nullptr);

    [[nodiscard]] NucsTicksModel& rows() const { return *model_; }
    /// Space: the chosen rows get what the current one has not.
    void toggleChosen();

Q_SIGNALS:
    /// Ticks wished for these nucs, or no longer.
    void ticksWished(const std::vector<tenthday::Id<tenthday::NucSide>>& sides, bool ticked);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] bool isTick(const QMouseEvent& event) const;
    void draw(int untilRow);
    void wish(const std::vector<int>& rows, bool ticked);

    NucsTicksModel* model_;
    std::optional<bool> drawing_;  ///< what the press has made of its row
    int drawnTo_ = -1;
};

}  // namespace tenthday
