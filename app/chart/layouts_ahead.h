/// @file layouts_ahead.h  Layouts of the chart: made when asked for, or before, beside the window's
/// own work, where somebody says what is likely to be asked for next.
#pragma once
#include <memory>
#include <optional>

#include "chart/changed_area.h"
#include "chart/chart_layout.h"

namespace tenthday {

/// All that a layout hangs on, beside the ruler.
struct LayoutAsk {
    OutlookPtr outlook;
    DayAxis axis;
    ChartOptions options;
    friend bool operator==(const LayoutAsk&, const LayoutAsk&) = default;
};

struct LaidOut {
    Layout layout;
    PictureMarks marks;  ///< of a page of the size in the options
};
using LaidOutPtr = std::shared_ptr<const LaidOut>;

/// Of one thread, which waits for nothing but a layout that is just being made. What comes out is
/// the same whether it was expected or not: each is made from the one made last, in what nothing
/// has changed about (see LaidBefore).
class LayoutsAhead {
public:
    LayoutsAhead();
    ~LayoutsAhead();
    LayoutsAhead(const LayoutsAhead&) = delete;
    LayoutsAhead& operator=(const LayoutsAhead&) = delete;

    /// Words are measured so from now on. Comes before all else.
    void measureBy(std::shared_ptr<const TextRuler> ruler);
    /// @param ask  its outlook is not null
    [[nodiscard]] LaidOutPtr of(const LayoutAsk& ask);
    /// This is likely to be asked for next. What was expected before is not any more.
    void expect(const LayoutAsk& ask);
    void expectNothing();
    /// So many layouts were there when they were asked for. For those who measure or test.
    [[nodiscard]] int wereThere() const { return wereThere_; }

private:
    struct State;
    std::shared_ptr<State> state_;  ///< of the thread beside as well
    int wereThere_ = 0;
};

}  // namespace tenthday
