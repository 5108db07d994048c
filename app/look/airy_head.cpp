#include "look/airy_head.h"

#include <QPainter>
#include <QScopedValueRollback>
#include <QStyleOptionHeader>
#include <algorithm>

namespace tenthday {
namespace {

/// In two lines, as even as its words let; one word stays as it is.
QString inTwoLines(const QString& name, const QFontMetrics& font) {
    QString best = name;
    int narrowest = font.horizontalAdvance(name);
    for (auto at = name.indexOf(u' '); at >= 0; at = name.indexOf(u' ', at + 1)) {
        const int width = std::max(font.horizontalAdvance(name.left(at)),
                                   font.horizontalAdvance(name.mid(at + 1)));
        if (width >= narrowest) continue;
        narrowest = width;
        best = name.left(at) + u'\n' + name.mid(at + 1);
    }
    return best;
}

int widest(const QString& lines, const QFontMetrics& font) { return font.size(0, lines).width(); }

}  // namespace

AiryHead::AiryHead(int air, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), air_(air) {
    setSectionsClickable(true);
    setHighlightSections(false);  // a chosen line would make every head bold
    connect(this, &QHeaderView::sortIndicatorChanged, this, &AiryHead::resizeAnew);
}

void AiryHead::setAir(int air) {
    air_ = air;
    headerDataChanged(orientation(), 0, count() - 1);  // sizes are asked for again
}

void AiryHead::setFit(ListFit fit) {
    fit_ = fit;
    resizeAnew();
}

/// Sizes of columns and of the head itself are asked for again.
void AiryHead::resizeAnew() {
    headerDataChanged(orientation(), 0, count() - 1);
    resizeSections();
    Q_EMIT geometriesChanged();
}

int AiryHead::widthOf(int column, ListFit fit) const {
    // Half as much air at the far side, or a border would touch the last letter.
    const int whole = sizeInOneLine(column).width() + airFor(fit, air_) * 3 / 2;
    if (fit != ListFit::Broken || model() == nullptr) return whole;
    const auto name = model()->headerData(column, orientation()).toString();
    const auto font = fontMetrics();
    return whole - widest(name, font) + widest(inTwoLines(name, font), font);
}

QSize AiryHead::sizeInOneLine(int column) const {
    const QScopedValueRollback<bool> whole(inOneLine_, true);
    QStyleOptionHeaderV2 option;
    initStyleOption(&option);
    initStyleOptionForIndex(&option, column);
    return style()->sizeFromContents(QStyle::CT_HeaderSection, &option, QSize(), this);
}

void AiryHead::paintSection(QPainter* painter, const QRect& rect, int column) const {
    {
        const QScopedValueRollback<bool> ground(groundOnly_, true);
        painter->save();  // the style leaves a clip that lets nothing through
        QHeaderView::paintSection(painter, rect, column);
        painter->restore();
    }
    QStyleOptionHeaderV2 option;
    initStyleOption(&option);
    initStyleOptionForIndex(&option, column);
    option.rect = rect;
    option.rect = style()->subElementRect(QStyle::SE_HeaderLabel, &option, this);
    const bool right = option.textAlignment & Qt::AlignRight;
    option.rect.adjust(right ? 0 : air(), 0, right ? -air() : 0, 0);
    if (option.rect.width() > 0)
        style()->drawControl(QStyle::CE_HeaderLabel, &option, painter, this);
}

void AiryHead::initStyleOptionForIndex(QStyleOptionHeader* option, int column) const {
    QHeaderView::initStyleOptionForIndex(option, column);
    if (groundOnly_) {
        option->text.clear();
        option->icon = {};
    } else if (fit_ == ListFit::Broken && !inOneLine_ &&
               sectionSize(column) < widthOf(column, ListFit::Close)) {
        option->text = inTwoLines(option->text, fontMetrics());
    }
}

QSize AiryHead::sectionSizeFromContents(int column) const {
    const int line = fit_ == ListFit::Broken ? fontMetrics().lineSpacing() : 0;
    return {widthOf(column, fit_), sizeInOneLine(column).height() + line + 4};
}

}  // namespace tenthday
