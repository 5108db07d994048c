#include "chart/queens_lane.h"

#include <array>

#include "chart/order_flags.h"
#include "screen_text/chart_text.h"
#include "screen_text/order_text.h"

namespace tenthday {
namespace {

constexpr qreal kAbove = 10;
constexpr qreal kBelow = 6;
constexpr qreal kLeastPlot = 34;
constexpr qreal kWishedPlot = 62;
constexpr qreal kMostPlot = 150;
constexpr int kMostRows = 3;
constexpr int kWishedRows = 2;
constexpr qreal kLine = 2;

/// A step of the scale: 1, 2 or 5 times a power of ten, so that about two fit below the top.
std::int32_t scaleStep(std::int32_t top) {
    std::int32_t step = 1;
    for (std::int32_t power = 1; power < 100'000; power *= 10)
        for (const std::int32_t times : {1, 2, 5}) {
            step = power * times;
            if (3 * step > top) return step;
        }
    return step;
}

/// Queens and their range by day, in sight, within a plot that ends at `top` queens.
class Curve {
public:
    Curve(const LaneInput& input, const QRectF& plot)
        : input_(input), plot_(plot), orders_(*input.options.orders) {
        const auto days = intersection(input.visible, orders_.days);
        for (Day day = days.first; day <= days.last; day += Days{1})
            top_ = std::max(top_, on(day).high);
    }
    [[nodiscard]] std::int32_t top() const { return top_; }
    [[nodiscard]] qreal yOf(std::int32_t queens) const {
        return plot_.bottom() - plot_.height() * std::min(1.0, queens / double(top_));
    }
    void lay(Sheet& sheet) const {
        const auto days = intersection(input_.visible, orders_.days);
        if (days.isEmpty()) return;
        const auto& snap = sheet.snap();
        QPainterPath line;
        for (Day day = days.first; day <= days.last; day += Days{1}) {
            const auto& queens = on(day);
            const qreal left = std::max(input_.axis.xOf(day), input_.axis.left());
            const qreal right = std::min(input_.axis.xOf(day + Days{1}), input_.axis.right());
            if (right <= left) continue;
            sheet.fill(Layer::Body, Role::Laying,
                       snap.rect(left, yOf(queens.high), right, yOf(queens.low)));
            const qreal y = snap(yOf(queens.likely));
            if (line.isEmpty())
                line.moveTo(left, y);
            else
                line.lineTo(left, y);
            line.lineTo(right, y);
        }
        sheet.stroke(Layer::Body, Role::JudgedGood, line, kLine);
    }

private:
    [[nodiscard]] static DayWindow intersection(DayWindow a, DayWindow b) {
        return {std::max(a.first, b.first), std::min(a.last, b.last)};
    }
    [[nodiscard]] const QueensInHand& on(Day day) const {
        return orders_.inHand[static_cast<std::size_t>((day - orders_.days.first).count())];
    }

    const LaneInput& input_;
    QRectF plot_;
    const SeasonOrders& orders_;
    std::int32_t top_ = 5;  ///< a plot of nothing is no plot of one queen
};

/// As many rows of flags as leave the plot its height: a third one only a good height.
int rowsFor(qreal height, const TextRuler& ruler) {
    if (height >= OrderFlags::heightOf(kMostRows, ruler) + kWishedPlot) return kMostRows;
    return height >= OrderFlags::heightOf(kWishedRows, ruler) + kLeastPlot ? kWishedRows : 1;
}

/// What stands beside a line of the scale.
struct ScaleNumber {
    QString text;
    qreal y;
};

/// In the column of names where all of them keep clear of those, else at the left end of their
/// lines, on ground of their own.
void layScaleNumbers(const LaneInput& input, const std::vector<ScaleNumber>& numbers,
                     const std::vector<QRectF>& names, qreal top, Sheet& sheet) {
    constexpr qreal kBeside = 4;
    const auto place = [&](const ScaleNumber& number) {
        return QPointF(input.titleRight, sheet.baselineAt(Type::Small, number.y));
    };
    const bool inNames = std::all_of(numbers.begin(), numbers.end(), [&](const auto& number) {
        const auto rect = sheet.textRect(Type::Small, number.text, place(number), Align::Right)
                              .adjusted(-kBeside, -2, 0, 2);
        return std::none_of(names.begin(), names.end(),
                            [&](const QRectF& name) { return name.intersects(rect); });
    });
    for (const auto& number : numbers) {
        auto at = place(number);
        if (inNames) {
            sheet.text(Layer::Names, Role::InkSoft, Type::Small, number.text, at, Align::Right);
            continue;
        }
        at.setX(input.axis.left() + kBeside);
        const auto rect = sheet.textRect(Type::Small, number.text, at, Align::Left);
        if (rect.top() < top) continue;
        sheet.fill(Layer::Words, Role::Ground, rect.adjusted(-2, -1, 2, 1), -1, 2);
        sheet.text(Layer::Words, Role::InkSoft, Type::Small, number.text, at, Align::Left);
    }
}

/// @param names  the lane's  @param top  of the plot: above it flags stand
void layScale(const LaneInput& input, const Curve& curve, const std::vector<QRectF>& names,
              qreal top, Sheet& sheet) {
    const qreal hair = sheet.snap().hair();
    const std::int32_t step = scaleStep(curve.top());
    std::vector<ScaleNumber> numbers;
    for (std::int32_t queens = step; queens <= curve.top(); queens += step) {
        const qreal y = sheet.snap()(curve.yOf(queens));
        sheet.fill(Layer::Under, Role::Grid, {input.axis.left(), y, input.axis.width(), hair});
        numbers.push_back({chart_text::number(queens), y});
    }
    layScaleNumbers(input, numbers, names, top, sheet);
}

/// @return what they take
std::vector<QRectF> layNames(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    const bool old = input.options.orders && input.options.ordersAreOld;
    const qreal room = input.titleRight - input.titleLeft;
    qreal y = area.top();
    std::vector<QRectF> taken;
    const auto line = [&](const QString& whole, Type type, Role role) {
        const qreal height = ruler.line(type);
        const auto text = ruler.elided(whole, type, room);
        const QPointF at(input.titleLeft, sheet.baselineAt(type, y + height / 2));
        taken.push_back(sheet.textRect(type, text, at, Align::Left));
        sheet.text(Layer::Names, role, type, text, at, Align::Left);
        y += height;
    };
    line(order_text::queensLane(), Type::Label, Role::Ink);
    if (!input.options.orders)
        line(order_text::reckoning(), Type::Small, Role::InkSoft);
    else
        line(old ? order_text::about() : order_text::inHandRange(), Type::Small, Role::InkSoft);
    return taken;
}

}  // namespace

bool showsOrders(const Outlook& outlook, const ChartOptions& options) {
    const auto& orders = options.orders;
    return orders ? !orders->orders.empty() : !ordersOf(outlook.snapshot).empty();
}

LaneHeight QueensLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const auto flags = [&](int rows) {
        return showsOrders(input.outlook, input.options) ? OrderFlags::heightOf(rows, ruler) : 0;
    };
    // Room for the lane's two lines of names; where they leave none beside them, the scale's
    // numbers stand inside the plot.
    const qreal names = ruler.line(Type::Label) + 1.5 * ruler.line(Type::Small);
    const auto plot = [&](int rows, qreal wished) { return std::max(wished, names - flags(rows)); };
    return {kAbove + flags(1) + plot(1, kLeastPlot) + kBelow,
            kAbove + flags(kWishedRows) + plot(kWishedRows, kWishedPlot) + kBelow,
            kAbove + flags(kMostRows) + kMostPlot + kBelow, 0.5};
}

qreal QueensLane::nameMiddle(const QRectF& area, const TextRuler& ruler) const {
    return area.top() + kAbove + ruler.line(Type::Label) / 2;
}

void QueensLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    flags_ = area.adjusted(0, kAbove, 0, -kBelow);
    rows_ = 0;
    if (showsOrders(input.outlook, input.options)) rows_ = rowsFor(flags_.height(), ruler);
    const qreal flags = rows_ > 0 ? OrderFlags::heightOf(rows_, ruler) : 0;
    plot_ = sheet.snap().rect(area.left(), flags_.top() + flags, area.right(), flags_.bottom());
    const auto names = layNames(input, flags_, sheet);
    sheet.fill(Layer::Body, Role::GridStrong,
               {input.axis.left(), plot_.bottom(), input.axis.width(), sheet.snap().hair()});
    if (!input.options.orders) return;
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1})
        sheet.target({.hit = Hit::QueensDay, .day = day},
                     {input.axis.xOf(day), plot_.top(), input.axis.dayWidth(), plot_.height()});
    const Curve curve(input, plot_);
    layScale(input, curve, names, plot_.top(), sheet);
    curve.lay(sheet);
}

void QueensLane::write(const LaneInput& input, Sheet& sheet) {
    if (input.options.orders && rows_ > 0) OrderFlags().lay(input, flags_, rows_, sheet);
}

}  // namespace tenthday
