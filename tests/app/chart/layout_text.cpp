#include "app/chart/layout_text.h"

#include <array>
#include <cstdio>

namespace tenthday::test {
namespace {

constexpr std::array kLayers{"ground", "under", "body",  "ribbon", "marks",
                             "words",  "cover", "names", "top",    "heads"};
constexpr std::array kShapes{"fill", "frame",  "hatch", "dots", "dotted",
                             "path", "stroke", "glyph", "text"};
constexpr std::array kHits{
    "none",         "ground",      "head",        "load",           "make_up",    "look",
    "rest",         "idle",        "cells_day",   "yard_day",       "nuc",        "yard_name",
    "ready_total",  "trouble",     "flying_day",  "outside_limits", "queens_day", "order_flag",
    "promise_week", "grafts",      "builder_row", "yard_row",       "lane_name",  "legend_name",
    "strip",        "lanes_above", "lanes_below"};
static_assert(kHits.size() == static_cast<std::size_t>(Hit::LanesBelow) + 1);

qreal sizeOf(Type type) { return type == Type::Title ? 18 : type == Type::Label ? 13 : 11; }

std::string rectText(const QRectF& rect) {
    const auto number = [](qreal value) { return QString::number(value, 'f', 1); };
    return QStringLiteral("%1 %2 %3x%4")
        .arg(number(rect.x()), number(rect.y()), number(rect.width()), number(rect.height()))
        .toStdString();
}

std::string keyText(const TargetKey& key, const Outlook& outlook) {
    std::string text = kHits[static_cast<std::size_t>(key.hit)];
    if (const auto* batch = outlook.find(key.batch)) text += " batch " + batch->batch->label;
    if (const auto row = outlook.snapshot.find(key.builder)) text += " in " + row->label;
    if (const auto row = outlook.snapshot.find(key.yard)) text += " at " + row->label;
    if (key.day) text += " " + toText(*key.day);
    if (key.index >= 0) text += " #" + std::to_string(key.index);
    return text;
}

}  // namespace

qreal FixedRuler::width(const QString& text, Type type) const {
    return static_cast<qreal>(text.size()) * sizeOf(type) * 0.55;
}
qreal FixedRuler::capHeight(Type type) const { return sizeOf(type) * 0.7; }
qreal FixedRuler::line(Type type) const { return sizeOf(type) * 1.25; }

std::string layoutText(const Layout& layout, const Outlook& outlook) {
    std::string text;
    for (const auto& item : layout.items) {
        text += std::string(kLayers[static_cast<std::size_t>(item.layer)]) + " " +
                kShapes[static_cast<std::size_t>(item.shape)] + " " +
                std::string(token(item.role)) + " " + rectText(item.rect);
        if (item.shape == Shape::Text)
            text += " \"" + layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString() +
                    "\"";
        text += "\n";
    }
    for (const auto& target : layout.targets)
        text += "target " + rectText(target.rect) + " " + keyText(target.key, outlook) + "\n";
    return text;
}

}  // namespace tenthday::test
