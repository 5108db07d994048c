/// @file line_room.h  Room along a line that is given away piece by piece.
#pragma once
#include <QRectF>
#include <utility>
#include <vector>

namespace tenthday {

class LineRoom {
public:
    /// @param air  px that pieces keep to each other and to what is taken
    LineRoom(const QRectF& line, const std::vector<QRectF>& taken, qreal air);

    /// What comes keeps so much air to it.
    void close(const QRectF& rect, qreal air);
    /// The free place of such a width whose left end is nearest to x; null where there is none.
    [[nodiscard]] QRectF nearest(qreal x, qreal width) const;
    /// The same; it is taken then.
    QRectF take(qreal x, qreal width);
    /// The first free place of such a width from x on; it is taken then.
    QRectF takeFrom(qreal x, qreal width);

private:
    [[nodiscard]] bool isFree(qreal left, qreal width) const;

    QRectF line_;
    qreal air_;
    std::vector<std::pair<qreal, qreal>> closed_;  ///< from and until, with their air
};

}  // namespace tenthday
