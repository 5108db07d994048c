#include "orders/orders_model.h"

#include <algorithm>

#include "base/natural_order.h"
#include "look/glyph.h"
#include "look/glyph_delegate.h"
#include "look/role.h"
#include "records/deliveries.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"

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
    if (!row.outlook || row.outlook->state == OrderState::Met) return {Glyph::LookDone, Role::Good};
    return row.outlook->state == OrderState::AtRisk ? StateLook{Glyph::Doubt, Role::Caution}
                                                    : StateLook{Glyph::Warning, Role::Danger};
}

QString filledBy(const Outlook& outlook, const OrderRow& row) {
    QStringList parts;
    if (row.outlook)
        for (const auto& fill : row.outlook->fills) {
            const auto* batch = outlook.find(fill.batch);
            if (fill.count >= 0.05)
                parts += order_page_text::fill(batch ? plain(batch->batch->label) : QString(),
                                               fill.count);
        }
    return parts.join(QStringLiteral(", "));
}

bool isNumber(int column) {
    return column == OrdersModel::Count || column == OrdersModel::Delivered ||
           column == OrdersModel::Sure || column == OrdersModel::Weight;
}

}  // namespace

void OrdersModel::show(OutlookPtr outlook, std::vector<OrderRow> rows) {
    beginResetModel();
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
                                          row.earliest);
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
            return days && days->cage != days->go ? weekdayAndDay(days->cage) : QString();
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

std::vector<OrderRow> orderRows(const Outlook& outlook, SeasonSupply& supply) {
    const auto& book = outlook.snapshot;
    std::vector<OrderRow> rows;
    const auto add = [&](const Ptr<Order>& order) -> OrderRow& {
        return rows.emplace_back(OrderRow{order, termsOf(book, order->id),
                                          deliveredOf(book, order->id).good(), std::nullopt,
                                          std::nullopt});
    };
    for (auto& each : supply.orders()) {
        auto& row = add(each.order);
        row.outlook = std::move(each);
    }
    for (const auto& waiting : waitingOrders(supply))
        add(waiting.order).earliest = waiting.earliest;
    const auto cancelled = rows.size();
    for (const auto& order : book.all<Order>())
        if (isOfSeason(book, order->due) &&
            termsOf(book, order->id).standing == OrderStanding::Cancelled)
            add(order);
    std::stable_sort(rows.begin() + static_cast<std::ptrdiff_t>(cancelled), rows.end(),
                     [](const auto& a, const auto& b) { return a.order->due < b.order->due; });
    return rows;
}

}  // namespace tenthday
