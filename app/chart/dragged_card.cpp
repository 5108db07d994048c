#include "chart/dragged_card.h"

#include "screen_text/chart_hand_text.h"
#include "screen_text/joined_orders.h"

namespace tenthday {
namespace {

template <class Row>
QString labelOf(const Outlook& outlook, Id<Row> id) {
    const auto row = outlook.snapshot.find(id);
    return row ? QString::fromStdString(row->label) : QString();
}

int graftsOf(const Outlook& outlook, const ChartWish::Grafts& wish) {
    if (const auto* batch = outlook.find(wish.batch))
        for (const auto& bar : batch->bars)
            if (bar->bar == wish.bar) return bar->cells.value;
    return 0;
}

}  // namespace

CardText draggedCard(const Outlook& saved, const Outlook& preview, const ChartWish& wish,
                     const SeasonOrders* before, const SeasonOrders* now) {
    if (wish.batches.empty()) return {};
    const auto* was = saved.find(wish.batches.front());
    if (was == nullptr) return {};
    auto card = chart_cards::dragged(preview, was->batch->id, was->batch->day);
    std::vector<CardLine> lines;
    if (wish.batches.size() > 1)
        lines.push_back({chart_hand_text::batches(static_cast<int>(wish.batches.size())),
                         chart_hand_text::byDays(static_cast<int>(wish.by.count())),
                         {}});
    if (wish.load)
        lines.push_back({chart_hand_text::toBuilder(labelOf(saved, wish.load->to)), {}, {}});
    if (wish.share)
        lines.push_back({chart_hand_text::toYard(labelOf(saved, wish.share->to)), {}, {}});
    if (wish.grafts)
        lines.push_back({chart_hand_text::grafts(wish.grafts->cells),
                         chart_hand_text::were(graftsOf(saved, *wish.grafts)),
                         {}});
    card.lines.insert(card.lines.begin(), lines.begin(), lines.end());
    if (before && !before->orders.empty())
        card.lines.push_back(order_text::unmetLine(*before, now));
    if (wish.by != Days{0}) card.lines.push_back({chart_hand_text::magnetHint(), {}, {}});
    return card;
}

}  // namespace tenthday
