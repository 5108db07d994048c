#include "look/year_dot.h"

#include <QPainter>
#include <QPixmap>

namespace tenthday {

QIcon yearDot(YearMark mark, Look look) {
    const auto& colours = paletteOf(look);
    const auto role = static_cast<Role>(static_cast<int>(Role::MarkBlue) + static_cast<int>(mark));
    QIcon icon;
    for (const int size : {16, 32, 64}) {
        QPixmap dot(size, size);
        dot.fill(Qt::transparent);
        QPainter painter(&dot);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(colours[role]);
        painter.setPen(QPen(colours[Role::MarkEdge], size / 16.0));
        const double inset = size * 0.16;
        painter.drawEllipse(QRectF(inset, inset, size - 2 * inset, size - 2 * inset));
        painter.end();
        icon.addPixmap(dot);
    }
    return icon;
}

}  // namespace tenthday
