/// @file tick_delegate.h  The box to tick, plain to see on every ground: also in the chosen row.
#pragma once
#include <QStyledItemDelegate>

namespace tenthday {

/// Presses anywhere in the cell count, so that the box is easy to hit.
class TickDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

protected:
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                     const QModelIndex& index) override;
};

}  // namespace tenthday
