#include "look/type.h"

#include <QFontDatabase>
#include <QFontInfo>
#include <QGuiApplication>
#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

struct TypeShape {
    double size;  ///< times the base
    QFont::Weight weight;
};

TypeShape shapeOf(Type type) {
    switch (type) {
        case Type::Title:
            return {1.5, QFont::DemiBold};
        case Type::Label:
            return {1.08, QFont::DemiBold};
        case Type::Body:
            return {1, QFont::Normal};
        case Type::Small:
            return {0.92, QFont::Normal};
        case Type::Strong:
            return {0.92, QFont::DemiBold};
        case Type::Number:
            return {0.92, QFont::DemiBold};
        case Type::Batch:
            return {1, QFont::Bold};
    }
    return {1, QFont::Normal};
}

int pixels(int base, double times) {
    return std::max(8, static_cast<int>(std::lround(base * times)));
}

}  // namespace

QFont Typeface::font(Type type) const {
    const auto shape = shapeOf(type);
    QFont font(family);
    font.setPixelSize(pixels(basePx, shape.size));
    font.setWeight(shape.weight);
    // Hinting moves glyphs by whole pixels, which shows at fractional scales.
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

int Typeface::linePx(Type type) const {
    return static_cast<int>(std::ceil(pixels(basePx, shapeOf(type).size) * 1.25));
}

Typeface systemTypeface() {
    const auto desktop = QGuiApplication::font();
    const auto inter = QStringLiteral("Inter");
    static const bool hasInter = QFontDatabase::hasFamily(inter);
    return {hasInter ? inter : desktop.family(),
            std::clamp(QFontInfo(desktop).pixelSize(), 10, 28)};
}

}  // namespace tenthday
