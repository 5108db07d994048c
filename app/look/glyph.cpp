#include "look/glyph.h"

#include <QTransform>

namespace tenthday {
namespace {

/// Paths in a square from (-1, -1) to (1, 1).
QPainterPath unitPath(Glyph glyph) {
    QPainterPath path;
    switch (glyph) {
        case Glyph::MakeUp:
            path.moveTo(-0.8, -0.6);
            path.lineTo(-0.8, 0.8);
            path.lineTo(0.8, 0.8);
            path.lineTo(0.8, -0.6);
            break;
        case Glyph::BroodIn:
            path.addPolygon(QPolygonF({{0, -1}, {1, 0}, {0, 1}, {-1, 0}, {0, -1}}));
            break;
        case Glyph::LookDue:
            path.moveTo(-0.9, 0.5);
            path.lineTo(0, -0.5);
            path.lineTo(0.9, 0.5);
            break;
        case Glyph::LookDone:
            path.moveTo(-0.9, 0);
            path.lineTo(-0.25, 0.65);
            path.lineTo(0.95, -0.75);
            break;
        case Glyph::Opened:
            path.moveTo(-0.8, -0.35);
            path.lineTo(0, 0.5);
            path.lineTo(0.8, -0.35);
            break;
        case Glyph::Closed:
            path.moveTo(-0.35, -0.8);
            path.lineTo(0.5, 0);
            path.lineTo(-0.35, 0.8);
            break;
        case Glyph::Wait:
            path.moveTo(-0.4, -0.75);
            path.lineTo(-0.4, 0.75);
            path.moveTo(0.4, -0.75);
            path.lineTo(0.4, 0.75);
            break;
        case Glyph::Look:
            path.moveTo(-1, 0);
            path.quadTo(0, -1.1, 1, 0);
            path.quadTo(0, 1.1, -1, 0);
            path.addEllipse(QPointF(0, 0), 0.22, 0.22);
            break;
        case Glyph::Recell:
            path.moveTo(-0.8, -0.9);
            path.lineTo(0.8, -0.9);
            path.moveTo(-0.5, -0.9);
            path.cubicTo(-0.75, 0.3, -0.45, 1, 0, 1);
            path.cubicTo(0.45, 1, 0.75, 0.3, 0.5, -0.9);
            break;
        case Glyph::Combine:
            path.moveTo(-0.8, -0.9);
            path.quadTo(-0.75, -0.1, 0, 0.1);
            path.quadTo(0.75, -0.1, 0.8, -0.9);
            path.moveTo(0, 0.1);
            path.lineTo(0, 0.95);
            break;
        case Glyph::Warning:
            path.setFillRule(Qt::OddEvenFill);
            path.addPolygon(QPolygonF({{0, -1}, {1.05, 0.9}, {-1.05, 0.9}, {0, -1}}));
            path.addRect(-0.13, -0.35, 0.26, 0.6);
            path.addRect(-0.13, 0.42, 0.26, 0.26);
            break;
        case Glyph::Doubt:
            path.addEllipse(QPointF(0, 0), 0.75, 0.75);
            break;
        case Glyph::Crossed:
            path.moveTo(-0.7, -0.7);
            path.lineTo(0.7, 0.7);
            path.moveTo(-0.7, 0.7);
            path.lineTo(0.7, -0.7);
            break;
    }
    return path;
}

}  // namespace

QPainterPath glyphPath(Glyph glyph, QPointF centre, qreal size) {
    const auto place = QTransform::fromTranslate(centre.x(), centre.y()).scale(size / 2, size / 2);
    return place.map(unitPath(glyph));
}

bool isFilled(Glyph glyph) { return glyph == Glyph::Warning || glyph == Glyph::BroodIn; }

}  // namespace tenthday
