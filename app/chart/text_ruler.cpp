#include "chart/text_ruler.h"

#include <QFontMetricsF>

namespace tenthday {

QString TextRuler::elided(const QString& text, Type type, qreal room) const {
    if (width(text, type) <= room) return text;
    for (auto keep = text.size() - 1; keep > 0; --keep) {
        auto cut = text.left(keep).trimmed() + QChar(0x2026);
        if (width(cut, type) <= room) return cut;
    }
    return {};
}

FontRuler::FontRuler(const Typeface& face) : face_(face) {
    for (std::size_t i = 0; i < kTypeCount; ++i)
        caps_[i] = QFontMetricsF(face_.font(static_cast<Type>(i))).capHeight();
}

qreal FontRuler::width(const QString& text, Type type) const {
    constexpr qsizetype kMostRemembered = 4096;
    const std::lock_guard alone(knows_);
    auto& known = widths_[static_cast<std::size_t>(type)];
    if (const auto at = known.constFind(text); at != known.constEnd()) return *at;
    if (known.size() > kMostRemembered) known.clear();
    const qreal width = QFontMetricsF(face_.font(type)).horizontalAdvance(text);
    known.insert(text, width);
    return width;
}

qreal FontRuler::capHeight(Type type) const { return caps_[static_cast<std::size_t>(type)]; }
qreal FontRuler::line(Type type) const { return face_.linePx(type); }

}  // namespace tenthday
