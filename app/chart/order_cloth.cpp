#include "chart/order_cloth.h"

#include "chart/order_flag.h"

namespace tenthday {

Role roleOf(OrderState state) {
    return state == OrderState::Met      ? Role::Good
           : state == OrderState::AtRisk ? Role::Caution
                                         : Role::Danger;
}

void layCloth(Layer layer, OrderState state, const QRectF& cloth, bool left, Sheet& sheet,
              int target) {
    if (state == OrderState::Met) return sheet.fill(layer, Role::JudgedGood, cloth, target, 1);
    if (state == OrderState::AtRisk) {
        sheet.fill(layer, Role::Ground, cloth, target, 1);
        return sheet.frame(layer, Role::Caution, cloth, 1.5, 1);
    }
    const qreal notch = std::min(order_flag::kNotch, cloth.height() / 2);
    const qreal tail = left ? cloth.left() : cloth.right();
    const qreal inwards = left ? notch : -notch;
    const qreal foot = left ? cloth.right() : cloth.left();
    QPainterPath path(QPointF(foot, cloth.top()));
    path.lineTo(tail, cloth.top());
    path.lineTo(tail + inwards, cloth.center().y());
    path.lineTo(tail, cloth.bottom());
    path.lineTo(foot, cloth.bottom());
    path.closeSubpath();
    sheet.path(layer, Role::DangerGround, path, target);
}

}  // namespace tenthday
