#include "chart/order_flags.h"

#include <algorithm>
#include <set>

#include "chart/leaves_mark.h"
#include "chart/order_cloth.h"
#include "chart/order_flag.h"
#include "screen_text/joined_orders.h"
#include "screen_text/order_text.h"

namespace tenthday {
namespace {

constexpr qreal kPadY = 2;
constexpr qreal kRowGap = 4;
constexpr qreal kMast = 1.5;
constexpr qreal kNear = 160;  ///< masts so far apart can hang on one flag

qreal flagHeight(const TextRuler& ruler) { return std::ceil(ruler.line(Type::Small)) + 2 * kPadY; }

using Flag = OrderFlag;

/// A place in one of the rows where it meets no other; to the right of the mast, else to its left.
struct Place {
    QRectF rect;
    bool leftOfMast = false;
    std::size_t flag = 0;  ///< which of the flags found it
};

std::optional<Place> placeFor(const Flag& flag, qreal mast, const QRectF& area, int rows,
                              const LaneInput& input, const std::vector<QRectF>& taken,
                              const TextRuler& ruler) {
    const qreal row = flagHeight(ruler) + kRowGap;
    for (int first = 0; first + flag.rows() <= rows; ++first)
        for (const bool left : {false, true}) {
            const QRectF rect(left ? mast - flag.width : mast, area.top() + first * row, flag.width,
                              flag.rows() * row - kRowGap);
            if (rect.left() < input.axis.left() || rect.right() > input.axis.right()) continue;
            const bool meets = std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) {
                return other.adjusted(-3, 0, 3, 0).intersects(rect);
            });
            if (!meets) return Place{rect, left};
        }
    return std::nullopt;
}

Role inkOf(OrderState state) {
    return state == OrderState::Met     ? Role::JudgedGoodInk
           : state == OrderState::Short ? Role::DangerInk
                                        : Role::Ink;
}

void layFlag(OrderState state, const Flag& flag, const Place& place, int target,
             bool filledBySelected, Sheet& sheet) {
    const auto& rect = place.rect;
    const qreal wordWidth = flag.width - flag.cloth;
    const QRectF cloth(place.leftOfMast ? rect.left() + wordWidth : rect.left(), rect.top(),
                       flag.cloth, rect.height());
    const QRectF word(place.leftOfMast ? rect.left() : cloth.right(), rect.top(), wordWidth,
                      rect.height());
    if (wordWidth > 0) sheet.fill(Layer::Words, Role::Ground, word, target, 1);
    layCloth(Layer::Words, state, cloth, place.leftOfMast, sheet, target);
    const qreal notch = state == OrderState::Short ? order_flag::kNotch : 0;
    const qreal textLeft = cloth.left() + order_flag::kPadX + (place.leftOfMast ? notch : 0);
    const qreal line = cloth.height() / flag.rows();
    for (int i = 0; i < flag.rows(); ++i)
        sheet.text(Layer::Words, inkOf(state), Type::Small, flag.lines[i],
                   {textLeft, sheet.baselineAt(Type::Small, rect.top() + (i + 0.5) * line)},
                   Align::Left, target);
    const qreal wordLeft = place.leftOfMast ? word.left() + 2 : word.left() + order_flag::kToWord;
    sheet.text(Layer::Words, roleOf(state), Type::Strong, flag.word,
               {wordLeft, sheet.baselineAt(Type::Strong, rect.center().y())}, Align::Left, target);
    if (filledBySelected)
        sheet.frame(Layer::Words, Role::Selection, cloth.adjusted(-1.5, -1.5, 1.5, 1.5), 1.5, 2);
}

/// Down from the flag to the foot, and where the order leaves when that is another day.
void layMast(const LaneInput& input, const OrderOutlook& order, qreal top, const QRectF& area,
             int target, Sheet& sheet) {
    const qreal x = input.axis.middleOf(order.order->due);
    sheet.fill(Layer::Marks, roleOf(order.state), {x - kMast / 2, top, kMast, area.bottom() - top},
               target);
    if (!order.days || order.days->go == order.order->due) return;
    if (!input.visible.contains(order.days->go)) return;
    const QPointF at(input.axis.middleOf(order.days->go), area.bottom());
    sheet.path(Layer::Marks, roleOf(order.state), leavesMark(at), target);
}

/// Those in sight, the worst first: they get their room first.
std::vector<std::size_t> byWeight(const LaneInput& input, const std::vector<OrderOutlook>& orders) {
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < orders.size(); ++i)
        if (input.visible.contains(orders[i].order->due)) shown.push_back(i);
    std::stable_sort(shown.begin(), shown.end(), [&](std::size_t a, std::size_t b) {
        return orders[a].state > orders[b].state;
    });
    return shown;
}

/// Orders that hang on one flag: one, or several for which there is no room side by side.
struct Hung {
    std::vector<std::size_t> orders;  ///< the worst first
    std::vector<Flag> flags;          ///< from the one wished to the shortest
    qreal mast = 0;                   ///< of the worst, which the flag names first
    const Flag* flag = nullptr;       ///< the one that found room ...
    std::optional<Place> place;       ///< ... and where
};

/// Finds room for the flags of a lane.
class Hanging {
public:
    Hanging(const LaneInput& input, const QRectF& area, int rows, const Sheet& sheet)
        : input_(input), area_(area), rows_(rows), ruler_(sheet.ruler()) {
        const auto& orders = input.options.orders->orders;
        for (const auto index : byWeight(input, orders)) {
            const auto& order = orders[index];
            const qreal mast = sheet.snap()(input.axis.middleOf(order.order->due)) - kMast / 2;
            hung_.push_back({{index}, flagsOf(order, ruler_), mast, nullptr, {}});
        }
    }

    /// Orders without room are joined with their neighbour until all have some, or none is near.
    std::vector<Hung>& find() {
        while (const auto left = place()) join(*left);
        nameJoined();
        for (auto& hung : hung_) hung.flag = hung.place ? &hung.flags[hung.place->flag] : nullptr;
        return hung_;
    }

private:
    /// Gives each its place; the first for which there is none.
    std::optional<std::size_t> place() {
        std::vector<QRectF> taken;
        std::optional<std::size_t> left;
        for (std::size_t i = 0; i < hung_.size(); ++i) {
            auto& hung = hung_[i];
            hung.place.reset();
            for (std::size_t flag = 0; flag < hung.flags.size() && !hung.place; ++flag) {
                hung.place =
                    placeFor(hung.flags[flag], hung.mast, area_, rows_, input_, taken, ruler_);
                if (hung.place) hung.place->flag = flag;
            }
            if (hung.place)
                taken.push_back(hung.place->rect);
            else if (!left && !alone_.contains(hung.orders.front()))
                left = i;
        }
        return left;
    }

    /// With the nearest one, where one is near.
    void join(std::size_t at) {
        std::optional<std::size_t> nearest;
        const auto away = [&](std::size_t i) { return std::abs(hung_[i].mast - hung_[at].mast); };
        for (std::size_t i = 0; i < hung_.size(); ++i)
            if (i != at && away(i) <= kNear && (!nearest || away(i) < away(*nearest))) nearest = i;
        if (!nearest) {
            alone_.insert(hung_[at].orders.front());
            return;
        }
        auto& into = hung_[std::min(at, *nearest)];
        auto& gone = hung_[std::max(at, *nearest)];
        into.orders.insert(into.orders.end(), gone.orders.begin(), gone.orders.end());
        const auto& orders = input_.options.orders->orders;
        std::stable_sort(into.orders.begin(), into.orders.end(),
                         [&](auto a, auto b) { return orders[a].state > orders[b].state; });
        into.flags = joinedFlags(into);
        hung_.erase(hung_.begin() + static_cast<std::ptrdiff_t>(std::max(at, *nearest)));
    }

    /// "K-04 14 short, 2 more met", else "3 orders, 1 not met", all on the cloth: no word beside it
    /// looks like that of one order.
    [[nodiscard]] std::vector<Flag> joinedFlags(const Hung& hung) const {
        const auto all = ordersOn(hung);
        std::vector<Flag> flags;
        for (const auto& name : {order_text::joinedName(all), order_text::joinedBriefly(all)})
            flags.push_back(measured({{name}, {}}, stateOf(hung.orders.front()), ruler_));
        return flags;
    }

    /// Several on one flag are named where that takes no other flag its room.
    void nameJoined() {
        for (auto& hung : hung_) {
            if (!hung.place || hung.orders.size() < 2) continue;
            std::vector<QRectF> taken;
            for (const auto& other : hung_)
                if (&other != &hung && other.place) taken.push_back(other.place->rect);
            for (const auto& name : order_text::joinedWithNames(ordersOn(hung))) {
                hung.flags.push_back(measured({{name}, {}}, stateOf(hung.orders.front()), ruler_));
                auto place =
                    placeFor(hung.flags.back(), hung.mast, area_, rows_, input_, taken, ruler_);
                if (!place) continue;
                place->flag = hung.flags.size() - 1;
                hung.place = place;
                break;
            }
        }
    }

    [[nodiscard]] OrderState stateOf(std::size_t order) const {
        return input_.options.orders->orders[order].state;
    }
    [[nodiscard]] std::vector<const OrderOutlook*> ordersOn(const Hung& hung) const {
        std::vector<const OrderOutlook*> all;
        for (const auto i : hung.orders) all.push_back(&input_.options.orders->orders[i]);
        return all;
    }

    const LaneInput& input_;
    QRectF area_;
    int rows_;
    const TextRuler& ruler_;
    std::vector<Hung> hung_;
    std::set<std::size_t> alone_;  ///< first orders of those that have no room and none near
};

}  // namespace

namespace {

TargetKey keyOf(const OrderOutlook& order, std::size_t index) {
    return {.hit = Hit::OrderFlag, .day = order.order->due, .index = static_cast<int>(index)};
}

}  // namespace

qreal OrderFlags::heightOf(int rows, const TextRuler& ruler) {
    return rows * (flagHeight(ruler) + kRowGap);
}

void OrderFlags::lay(const LaneInput& input, const QRectF& area, int rows, Sheet& sheet) const {
    const auto& orders = input.options.orders->orders;
    Hanging hanging(input, area, rows, sheet);
    for (const auto& hung : hanging.find()) {
        const qreal top =
            hung.place ? hung.place->rect.top() : area.top() + heightOf(rows, sheet.ruler());
        // All that share a flag stand at its place, the worst in front.
        if (hung.place)
            for (auto i = hung.orders.size(); i-- > 1;)
                sheet.target(keyOf(orders[hung.orders[i]], hung.orders[i]), hung.place->rect);
        std::optional<int> first;
        bool ofSelected = false;
        for (const auto index : hung.orders) {
            const auto& order = orders[index];
            const qreal mast = sheet.snap()(input.axis.middleOf(order.order->due)) - kMast / 2;
            // The flag asks for the worst of its orders; each other one by its mast.
            const bool hasFlag = hung.place && !first;
            const QRectF hit =
                hasFlag ? hung.place->rect : QRectF(mast - 3, top, 6, area.bottom() - top);
            const int target = sheet.target(keyOf(order, index), hit);
            layMast(input, order, top, area, target, sheet);
            first = first.value_or(target);
            ofSelected = ofSelected ||
                         std::any_of(order.fills.begin(), order.fills.end(), [&](const auto& fill) {
                             return input.isSelected(fill.batch);
                         });
        }
        if (hung.place)
            layFlag(orders[hung.orders.front()].state, *hung.flag, *hung.place, *first, ofSelected,
                    sheet);
    }
}

}  // namespace tenthday
