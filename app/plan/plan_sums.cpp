#include "plan/plan_sums.h"

#include <QHeaderView>
#include <algorithm>

#include "look/glyph.h"
#include "look/glyph_delegate.h"
#include "look/page_parts.h"
#include "look/role.h"
#include "look/table_keys.h"
#include "screen_text/derived_text.h"
#include "screen_text/plan_text.h"

namespace tenthday {
namespace {

const OrderChance* chanceOf(const PlanSums& sums, Id<Order> order) {
    const auto found = std::find_if(sums.orders.begin(), sums.orders.end(),
                                    [&](const auto& each) { return each.order == order; });
    return found == sums.orders.end() ? nullptr : &*found;
}

void mark(QTableWidgetItem& item, const OrderChance* chance) {
    if (chance == nullptr) return;
    const bool met = chance->state == OrderState::Met;
    const bool doubt = chance->state == OrderState::AtRisk;
    const auto glyph = met ? Glyph::LookDone : doubt ? Glyph::Doubt : Glyph::Warning;
    const auto role = met ? Role::Good : doubt ? Role::Caution : Role::Danger;
    item.setData(GlyphDelegate::kGlyphRole, static_cast<int>(glyph));
    item.setData(GlyphDelegate::kInkRole, static_cast<int>(role));
}

}  // namespace

PlanSumsTable::PlanSumsTable(QWidget* parent) : QTableWidget(0, ColumnCount, parent) {
    setHorizontalHeaderLabels(plan_text::sumsColumns());
    makeList(*this, plan_text::sumsHead());
    sayNoPaste(*this, derived_text::planSums);
    for (const int column : {Before, After})
        setItemDelegateForColumn(column, new GlyphDelegate(this));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    horizontalHeader()->setSectionResizeMode(What, QHeaderView::Stretch);
    setWordWrap(true);  // names of orders are never cut
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
}

void PlanSumsTable::show(const Outlook& outlook, const PlanSums& before, const PlanSums& after) {
    setRowCount(0);
    const auto add = [&](const QString& what, const QString& then, const QString& now,
                         const QString& because) {
        const int row = rowCount();
        insertRow(row);
        const QString cells[] = {what, then, now};
        for (int column = 0; column < ColumnCount; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(column == What ? what + u'\n' + because : because);
            setItem(row, column, item);
        }
        return row;
    };
    for (const auto& chance : after.orders) {
        const auto order = outlook.snapshot.find(chance.order);
        if (!order) continue;
        const auto* then = chanceOf(before, chance.order);
        const int row = add(plan_text::orderName(*order), plan_text::orderChance(then),
                            plan_text::orderChance(&chance), plan_text::orderBecause(*order));
        mark(*item(row, Before), then);
        mark(*item(row, After), &chance);
    }
    for (int i = 0; i < plan_text::kSums; ++i) {
        const auto sum = static_cast<plan_text::Sum>(i);
        add(plan_text::sumName(sum), plan_text::sumValue(sum, before),
            plan_text::sumValue(sum, after), plan_text::sumBecause(sum));
    }
}

}  // namespace tenthday
