/// @file layout_text.h  A chart's layout as text, for golden files; and a ruler that needs no font.
#pragma once
#include <string>

#include "chart/chart_layout.h"

namespace tenthday::test {

/// Every character equally wide: a layout by it is the same on every machine.
class FixedRuler : public TextRuler {
public:
    [[nodiscard]] qreal width(const QString& text, Type type) const override;
    [[nodiscard]] qreal capHeight(Type type) const override;
    [[nodiscard]] qreal line(Type type) const override;
};

/// One line per item and per target, in order; places by the labels of the outlook.
[[nodiscard]] std::string layoutText(const Layout& layout, const Outlook& outlook);

}  // namespace tenthday::test
