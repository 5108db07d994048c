#include "sheets/paper.h"

#include "look/type.h"

namespace tenthday {
namespace {

struct PrintShape {
    int size;  ///< points
    QFont::Weight weight;
};
constexpr std::array<PrintShape, kPrintCount> kShapes{{{26, QFont::Bold},
                                                       {15, QFont::Normal},
                                                       {13, QFont::DemiBold},
                                                       {13, QFont::Normal},
                                                       {11, QFont::Normal},
                                                       {11, QFont::DemiBold},
                                                       {8, QFont::Normal}}};
constexpr qreal kLeading = 1.28;
constexpr qreal kLarge = 1.3;

QSizeF upright(Paper paper) {
    switch (paper) {
        case Paper::A4:
            return {millimetres(210), millimetres(297)};
        case Paper::Letter:
            return {612, 792};
        case Paper::A5:
            return {millimetres(148), millimetres(210)};
    }
    return {};
}

}  // namespace

QSizeF sheetSize(const PaperForm& form) {
    const auto size = upright(form.paper);
    return form.landscape ? size.transposed() : size;
}

qreal zoomOf(const PaperForm& form) { return form.large ? kLarge : 1; }

QSizeF sizeOf(const PaperForm& form) { return sheetSize(form) / zoomOf(form); }

QRectF printable(const PaperForm& form) {
    const qreal margin = millimetres(form.paper == Paper::A5 ? 9 : 13) / zoomOf(form);
    return QRectF(QPointF(0, 0), sizeOf(form)).adjusted(margin, margin, -margin, -margin);
}

PaperRuler::PaperRuler() {
    const auto family = systemTypeface().family;
    for (std::size_t i = 0; i < kPrintCount; ++i) {
        fonts_[i] = QFont(family);
        fonts_[i].setPixelSize(kShapes[i].size);
        fonts_[i].setWeight(kShapes[i].weight);
        fonts_[i].setHintingPreference(QFont::PreferNoHinting);
        // Contextual glyphs (a colon between digits) would be lost to whoever reads the PDF's text.
        fonts_[i].setStyleStrategy(QFont::PreferNoShaping);
    }
}

qreal PaperRuler::width(const QString& text, Print type) const {
    return QFontMetricsF(font(type)).horizontalAdvance(text);
}

qreal PaperRuler::line(Print type) const { return kShapes[index(type)].size * kLeading; }

qreal PaperRuler::ascent(Print type) const { return kShapes[index(type)].size; }

QStringList PaperRuler::lines(const QString& text, Print type, qreal room) const {
    QStringList lines;
    QString line;
    const auto add = [&](const QString& word) {
        const auto longer = line.isEmpty() ? word : line + u' ' + word;
        if (width(longer, type) <= room) {
            line = longer;
            return;
        }
        if (!line.isEmpty()) lines += line;
        line.clear();
        for (const auto letter : word) {
            if (!line.isEmpty() && width(line + letter, type) > room) {
                lines += line;
                line.clear();
            }
            line += letter;
        }
    };
    const auto words = text.split(u' ', Qt::SkipEmptyParts);
    for (const auto& word : words) add(word);
    if (!line.isEmpty()) lines += line;
    lines.replaceInStrings(QString(QChar(QChar::Nbsp)), QStringLiteral(" "));
    return lines;
}

QStringList PaperRuler::atMost(int count, const QString& text, Print type, qreal room) const {
    auto all = lines(text, type, room);
    if (all.size() <= count) return all;
    all = all.mid(0, count);
    auto& last = all.back();
    const QChar more(0x2026);
    while (!last.isEmpty() && width(last + more, type) > room) last.chop(1);
    last += more;
    return all;
}

}  // namespace tenthday
