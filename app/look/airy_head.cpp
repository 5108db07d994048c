#include "look/airy_head.h"

#include <QPainter>
#include <QScopedValueRollback>
#include <QStyleOptionHeader>

namespace tenthday {

AiryHead::AiryHead(int air, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), air_(air) {
    setSectionsClickable(true);
    setHighlightSections(false);  // a chosen line would make every head bold
}

void AiryHead::setAir(int air) {
    air_ = air;
    headerDataChanged(orientation(), 0, count() - 1);  // sizes are asked for again
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
    option.rect.adjust(right ? 0 : air_, 0, right ? -air_ : 0, 0);
    if (option.rect.width() > 0)
        style()->drawControl(QStyle::CE_HeaderLabel, &option, painter, this);
}

void AiryHead::initStyleOptionForIndex(QStyleOptionHeader* option, int column) const {
    QHeaderView::initStyleOptionForIndex(option, column);
    if (!groundOnly_) return;
    option->text.clear();
    option->icon = {};
}

QSize AiryHead::sectionSizeFromContents(int column) const {
    return QHeaderView::sectionSizeFromContents(column) + QSize(air_, 4);
}

}  // namespace tenthday
