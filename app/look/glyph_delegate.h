/// @file glyph_delegate.h  A cell of a table that says something by a glyph and by its words.
#pragma once
#include <QStyledItemDelegate>

namespace tenthday {

class GlyphDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// What a model gives for such a cell: a Glyph and a Role, each as a number. Where there is no
    /// glyph the words stand alone.
    static constexpr int kGlyphRole = Qt::UserRole + 100;
    static constexpr int kInkRole = Qt::UserRole + 101;

    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

}  // namespace tenthday
