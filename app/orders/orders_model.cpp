#include "orders/orders_model.h"

#include <algorithm>

#include "base/natural_order.h"
#include "look/glyph.h"
#include "look/glyph_delegate.h"
#include "look/role.h"
#include "outlook/supply_of.h"
#include "records/deliveries.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"
#include "screen_text/queen_source_text.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }
qlonglong keyOf(Day day) { return day.time_since_epoch().count(); }

struct StateLook {
    Glyph glyph;
    Role role;
};

StateLook lookOfState(const OrderRow& row) {
    if (row.terms.standing == OrderStanding::Waiting) return {Glyph::Wait, Role::InkSoft};
    if (row.terms.standing == OrderStanding::Cancelled) return {Glyph::Crossed, Role::InkSoft};
    if (!row.outlook) return {Glyph::Wait, Role::InkSoft};  // being reckoned
    if (row.outlook->state == OrderState::Met) return {Glyph::LookDone, Role::Good};
    return row.outlook->state == OrderState::AtRisk ? StateLook{Glyph::Doubt, Role::Caution}
                                                    : StateLook{Glyph::Warning, Role::Danger};
}

QString filledBy(const Outlook& outlook, const OrderRow& row) {
    QStringList parts;
    if (row.outlook)
        for (const auto& fill : row.outlook->fills) {
            const auto* batch = outlook.find(fill.batch);
            const auto from = batch                 ? plain(batch->batch->label)
                              : fill.batch.isNone() ? QString()
                                                    : order_text::earlierSeason();
            if (fill.count >= 0.05) parts += order_page_text::fill(from, fill.count);
        }
    return parts.join(QStringLiteral(", "));
}

bool isNumber(int column) {
    return column == OrdersModel::Count || column == OrdersModel::Delivered ||
           column == OrdersModel::Sure || column == OrdersModel::Weight;
}

}  // namespace

void OrdersModel::show(OutlookPtr outlook, std::vector<OrderRow> rows, bool areOld) {
    beginResetModel();
    areOld_ = areOld;
    outlook_ = std::move(outlook);
    rows_ = std::move(rows);
    endResetModel();
}

bool OrdersModel::isAnythingShort() const {
    return std::any_of(rows_.begin(), rows_.end(), [](const OrderRow& row) {
        return row.outlook && row.outlook->state != OrderState::Met;
    });
}

int OrdersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int OrdersModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString OrdersModel::text(const OrderRow& row, int column) const {
    const auto& order = *row.order;
    const auto days = row.outlook ? row.outlook->days : std::nullopt;
    switch (column) {
        case State:
            return order_page_text::state(row.terms.standing, row.outlook ? &*row.outlook : nullptr,
                                          row.earliest, areOld_);
        case For:
            return plain(order.label);
        case What:
            return order_text::what(order.kind, row.terms.purpose);
        case Count:
            return chart_text::number(order.count);
        case Delivered:
            return row.delivered > 0 ? chart_text::number(row.delivered) : QString();
        case Due:
            return weekdayAndDay(order.due);
        case Goes:
            return days ? weekdayAndDay(days->go) : order_page_text::noDayToGo(row.outlook);
        case Caged:
            return days && days->cage != days->go ? shortDay(days->cage) : QString();
        case Line: {
            const auto line = order.line ? outlook_->snapshot.find(*order.line) : nullptr;
            return line ? plain(line->label) : order_page_text::any();
        }
        case Sure:
            return order_page_text::percent(order.sure);
        case Weight:
            return chart_text::number(order.weight);
        default:
            return filledBy(*outlook_, row);
    }
}

QVariant OrdersModel::sortKey(const OrderRow& row, int column) const {
    const auto& order = *row.order;
    switch (column) {
        case State:
            return row.outlook ? row.outlook->chance : 2;
        case For:
            return QString::fromStdString(naturalKey(order.label));
        case Count:
            return order.count;
        case Delivered:
            return row.delivered;
        case Due:
            return keyOf(order.due);
        case Goes:
            return keyOf(row.outlook && row.outlook->days ? row.outlook->days->go : order.due);
        case Caged:
            return keyOf(row.outlook && row.outlook->days ? row.outlook->days->cage : order.due);
        case Sure:
            return order.sure.value;
        case Weight:
            return order.weight;
        default:
            return text(row, column);
    }
}

QVariant OrdersModel::data(const QModelIndex& index, int role) const {
    const auto& row = at(index.row());
    switch (role) {
        case Qt::DisplayRole:
            return text(row, index.column());
        case kSortRole:
            return sortKey(row, index.column());
        case GlyphDelegate::kGlyphRole:
            return static_cast<int>(lookOfState(row).glyph);
        case GlyphDelegate::kInkRole:
            return static_cast<int>(lookOfState(row).role);
        case Qt::ToolTipRole:
            return order_page_text::because(*outlook_, row.order->note, index.column());
        case Qt::TextAlignmentRole:
            return isNumber(index.column()) ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                            : QVariant();
        default:
            return {};
    }
}

QVariant OrdersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::DisplayRole) return order_page_text::columnHead(section);
    if (role == Qt::TextAlignmentRole && isNumber(section))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

namespace {

/// Orders by what the book alone says.
std::vector<OrderRow> bareRows(const Snapshot& book) {
    std::vector<OrderRow> rows;
    const auto add = [&](const Ptr<Order>& order) {
        const auto out = deliveredOf(book, order->id);
        rows.push_back({order, termsOf(book, order->id), out.good(), out.restOf(*order),
                        std::nullopt, std::nullopt});
    };
    for (const auto& order : ordersOf(book)) add(order);
    for (const auto& order : waitingOrdersOf(book)) add(order);
    const auto cancelled = rows.size();
    for (const auto& order : book.all<Order>())
        if (isOfSeason(book, order->due) &&
            termsOf(book, order->id).standing == OrderStanding::Cancelled)
            add(order);
    std::stable_sort(rows.begin() + static_cast<std::ptrdiff_t>(cancelled), rows.end(),
                     [](const auto& a, const auto& b) { return a.order->due < b.order->due; });
    return rows;
}

OrderRow* rowOf(std::vector<OrderRow>& rows, Id<Order> order) {
    const auto found = std::find_if(rows.begin(), rows.end(),
                                    [&](const auto& row) { return row.order->id == order; });
    return found == rows.end() ? nullptr : &*found;
}

/// How an order stood, with what is known of it now without reckoning.
OrderOutlook broughtUp(const Outlook& outlook, const OrderRow& row, OrderOutlook before) {
    before.order = row.order;
    before.delivered = row.delivered;
    before.rest = row.rest;
    before.days = orderDays(outlook.snapshot, *row.order, row.terms.shipDays);
    before.wholeOn = wholeOn(*row.order, row.terms.shipDays, before.days);
    if (row.rest == 0) {
        before.chance = 1;
        before.state = OrderState::Met;
    }
    std::erase_if(before.fills, [&](const OrderFill& fill) {
        const bool isEarlier = !outlook.snapshot.all<CaughtQueen>().of(fill.batch.uuid).empty();
        return !fill.batch.isNone() && outlook.find(fill.batch) == nullptr && !isEarlier;
    });
    return before;
}

}  // namespace

OrdersReckoned reckonOrders(const OutlookPtr& outlook) {
    OrdersReckoned made{outlook, bareRows(outlook->snapshot), {}};
    auto supply = supplyOf(*outlook);
    for (auto& each : supply.orders())
        if (auto* row = rowOf(made.rows, each.order->id)) row->outlook = std::move(each);
    for (const auto& waiting : waitingOrders(supply))
        if (auto* row = rowOf(made.rows, waiting.order->id)) row->earliest = waiting.earliest;
    made.weeks = promiseByWeek(supply, kPromiseLevel);
    return made;
}

std::vector<OrderRow> orderRows(const Outlook& outlook, const std::vector<OrderRow>& known) {
    auto rows = bareRows(outlook.snapshot);
    for (const auto& before : known) {
        auto* row = rowOf(rows, before.order->id);
        if (row == nullptr) continue;
        if (row->terms.standing == OrderStanding::Open && before.outlook)
            row->outlook = broughtUp(outlook, *row, *before.outlook);
        if (row->terms.standing == OrderStanding::Waiting) row->earliest = before.earliest;
    }
    return rows;
}

}  // namespace tenthday
