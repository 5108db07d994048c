/// @file airy_head.h  The heads of a list's columns, each above the first letter of its cells.
#pragma once
#include <QHeaderView>

#include "look/airy_cells.h"

namespace tenthday {

/// A horizontal header whose words stand as far from the column's edge as those of its cells.
class AiryHead : public QHeaderView {
    Q_OBJECT

public:
    /// @param air  px on the side where the words begin, beyond what the style leaves there
    AiryHead(int air, QWidget* parent);

    void setAir(int air);
    void setFit(ListFit fit);
    [[nodiscard]] ListFit fit() const { return fit_; }
    /// px that a column's name needs, with its air.
    [[nodiscard]] int widthOf(int column, ListFit fit) const;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;
    void initStyleOptionForIndex(QStyleOptionHeader* option, int column) const override;
    [[nodiscard]] QSize sectionSizeFromContents(int column) const override;

private:
    void resizeAnew();
    [[nodiscard]] int air() const { return airFor(fit_, air_); }
    /// Without air. Only the column that the list is sorted by has room for the arrow.
    [[nodiscard]] QSize sizeInOneLine(int column) const;

    int air_;
    ListFit fit_ = ListFit::Airy;
    mutable bool groundOnly_ = false;  ///< the ground is painted by itself, the words after it
    mutable bool inOneLine_ = false;   ///< asked for while names are measured
};

}  // namespace tenthday
