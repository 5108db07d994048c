/// @file airy_head.h  The heads of a list's columns, each above the first letter of its cells.
#pragma once
#include <QHeaderView>

namespace tenthday {

/// A horizontal header whose words stand as far from the column's edge as those of its cells.
class AiryHead : public QHeaderView {
    Q_OBJECT

public:
    /// @param air  px on the side where the words begin, beyond what the style leaves there
    AiryHead(int air, QWidget* parent);

    void setAir(int air);

protected:
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;
    void initStyleOptionForIndex(QStyleOptionHeader* option, int column) const override;
    [[nodiscard]] QSize sectionSizeFromContents(int column) const override;

private:
    int air_;
    mutable bool groundOnly_ = false;  ///< the ground is painted by itself, the words after it
};

}  // namespace tenthday
