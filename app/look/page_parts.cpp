#include "look/page_parts.h"

#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QToolButton>

namespace tenthday {
namespace {

/// Cells a little larger than their text: columns and broken lines would run into each other.
class AiryCells : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override {
        QStyleOptionViewItem words = option;  // lines are broken at what is left of the width
        words.rect.adjust(kAir, 0, -kAir, 0);
        return QStyledItemDelegate::sizeHint(words, index) + QSize(2 * kAir, kAir);
    }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem ground = option;
        initStyleOption(&ground, index);
        QStyleOptionViewItem words = ground;
        ground.text.clear();
        ground.icon = {};
        ground.features &= ~QStyleOptionViewItem::HasCheckIndicator;
        // What is inside is drawn once more, but no ground and no frame of its own.
        words.rect.adjust(kAir, 0, -kAir, 0);
        words.backgroundBrush = Qt::NoBrush;
        if (words.state & QStyle::State_Selected)
            words.palette.setBrush(QPalette::Text, words.palette.brush(QPalette::HighlightedText));
        words.state &= ~(QStyle::State_Selected | QStyle::State_HasFocus | QStyle::State_MouseOver);
        const auto* widget = option.widget;
        for (const auto* part : {&ground, &words})
            widget->style()->drawControl(QStyle::CE_ItemViewItem, part, painter, widget);
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

QToolButton* stepButton(Qt::ArrowType arrow, const QString& words) {
    auto* button = new QToolButton;
    button->setArrowType(arrow);
    button->setToolTip(words);
    button->setAccessibleName(words);
    button->setMinimumSize(34, 30);
    return button;
}

QScrollArea* scrolling(QWidget* part) {
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidget(part);
    return area;
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
