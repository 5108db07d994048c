#include "look/page_parts.h"

#include <QHeaderView>
#include <QLabel>
#include <QStyledItemDelegate>
#include <QTableView>

namespace tenthday {
namespace {

/// Cells a little wider than their text: columns of text would run into each other.
class AiryCells : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * kAir, 0);
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem all = option;
        QStyledItemDelegate::initStyleOption(&all, index);
        // The ground over the whole cell, the text inside it.
        all.text.clear();
        const auto* widget = option.widget;
        widget->style()->drawControl(QStyle::CE_ItemViewItem, &all, painter, widget);
        QStyleOptionViewItem inner = option;
        inner.rect.adjust(kAir, 0, -kAir, 0);
        QStyledItemDelegate::paint(painter, inner, index);
    }

private:
    static constexpr int kAir = 8;
};

}  // namespace

void makeHead(QLabel& label, double times) {
    auto font = label.font();
    font.setPointSizeF(font.pointSizeF() * times);
    label.setFont(font);
}

void makeList(QTableView& table, const QString& name) {
    table.setAccessibleName(name);
    table.setItemDelegate(new AiryCells(&table));
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setAlternatingRowColors(true);
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

void makeCompact(QTableView& table) {
    table.setItemDelegate(new QStyledItemDelegate(&table));
    table.verticalHeader()->setMinimumSectionSize(1);
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.verticalHeader()->setDefaultSectionSize(table.fontMetrics().height() + 5);
}

}  // namespace tenthday
