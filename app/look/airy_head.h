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
    /// Where room is short there is less air, and names that are wider than their column break into
    /// two lines.
    void setTight(bool tight);
    [[nodiscard]] bool isTight() const { return isTight_; }
    /// px that a column's name needs, with its air.
    [[nodiscard]] int widthOf(int column, bool tight) const;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;
    void initStyleOptionForIndex(QStyleOptionHeader* option, int column) const override;
    [[nodiscard]] QSize sectionSizeFromContents(int column) const override;

private:
    void resizeAnew();
    [[nodiscard]] int air() const { return isTight_ ? tightAir(air_) : air_; }
    /// Without air. Only the column that the list is sorted by has room for the arrow.
    [[nodiscard]] QSize sizeInOneLine(int column) const;

    int air_;
    bool isTight_ = false;
    mutable bool groundOnly_ = false;  ///< the ground is painted by itself, the words after it
    mutable bool inOneLine_ = false;   ///< asked for while names are measured
};

}  // namespace tenthday
