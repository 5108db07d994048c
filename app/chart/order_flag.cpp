#include "chart/order_flag.h"

#include <algorithm>

#include "screen_text/order_text.h"

namespace tenthday {

using namespace order_flag;

namespace {

constexpr qreal kMostLabel = 240;  ///< a longer name is cut: so much of it says which it is

/// A text in two lines, parted where that makes the wider one narrowest; in one where it is one
/// word.
QStringList inTwoLines(const QString& text, const TextRuler& ruler) {
    QStringList best{text};
    qreal width = ruler.width(text, Type::Small);
    for (auto at = text.indexOf(u' '); at > 0; at = text.indexOf(u' ', at + 1)) {
        const QStringList lines{text.left(at), text.mid(at + 1)};
        const qreal wider =
            std::max(ruler.width(lines[0], Type::Small), ruler.width(lines[1], Type::Small));
        if (wider >= width) continue;
        width = wider;
        best = lines;
    }
    return best;
}

}  // namespace

OrderFlag measured(OrderFlag flag, OrderState state, const TextRuler& ruler) {
    for (const auto& line : flag.lines)
        flag.cloth = std::max(flag.cloth, ruler.width(line, Type::Small));
    flag.cloth += 2 * kPadX + (state == OrderState::Short ? kNotch : 0);
    flag.width = flag.cloth;
    if (!flag.word.isEmpty()) flag.width += kToWord + ruler.width(flag.word, Type::Strong) + 2;
    return flag;
}

std::vector<OrderFlag> flagsOf(const OrderOutlook& order, const TextRuler& ruler) {
    const auto name =
        ruler.elided(QString::fromStdString(order.order->label), Type::Small, kMostLabel);
    const auto whole = order_text::flag(*order.order, name);
    const auto word = order_text::state(order);
    std::vector<OrderFlag> flags;
    for (const auto& lines : {QStringList{whole}, inTwoLines(whole, ruler),
                              QStringList{order_text::briefly(*order.order)}})
        flags.push_back(measured({lines, word}, order.state, ruler));
    return flags;
}

}  // namespace tenthday
