#include "look/page_parts.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include "look/airy_cells.h"
#include "look/airy_head.h"
#include "look/column_fit.h"
#include "look/table_copy.h"

namespace tenthday {
namespace {

constexpr int kAir = 8;           ///< px between a list's column and its words
constexpr int kMostLetters = 48;  ///< one long name leaves room for the other columns
constexpr int kAnyLetters = 9999;
constexpr int kCompactAir = 4;  ///< the same of a list that stands among other things

/// Words of heads and cells equally far from their column's edges.
void setAir(QTableView& table, int air, int more, int most) {
    table.setItemDelegate(new AiryCells(air, more, most, &table));
    if (auto* head = qobject_cast<AiryHead*>(table.horizontalHeader())) return head->setAir(air);
    auto* head = new AiryHead(air, &table);
    head->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table.setHorizontalHeader(head);
    fitColumns(table);
}

}  // namespace

void makeHead(QLabel& label, double times) {
    auto font = label.font();
    font.setPointSizeF(font.pointSizeF() * times);
    label.setFont(font);
}

void makeStrong(QLabel& label) {
    auto font = label.font();
    font.setBold(true);
    label.setFont(font);
    label.setWordWrap(true);
}

void makeSearch(QLineEdit& field, const QString& words) {
    field.setPlaceholderText(words);
    field.setAccessibleName(words);
    field.setClearButtonEnabled(true);
    field.setMinimumWidth(220);
}

QVBoxLayout* pageColumn(QWidget& page) {
    auto* column = new QVBoxLayout(&page);
    column->setContentsMargins(16, 14, 16, 12);
    column->setSpacing(10);
    return column;
}

QHBoxLayout* stepRow(const StepWords& words, QLabel& head, std::function<void(int)> step,
                     std::function<void()> now) {
    makeHead(head);
    auto* before = stepButton(Qt::LeftArrow, words.before);
    auto* after = stepButton(Qt::RightArrow, words.after);
    QObject::connect(before, &QToolButton::clicked, &head, [step] { step(-1); });
    QObject::connect(after, &QToolButton::clicked, &head, [step] { step(1); });
    auto* row = new QHBoxLayout;
    row->addWidget(before);
    row->addWidget(after);
    if (now) {
        auto* button = new QPushButton(words.now);
        QObject::connect(button, &QPushButton::clicked, &head, std::move(now));
        row->addWidget(button);
    }
    row->addSpacing(10);
    row->addWidget(&head, 1);
    return row;
}

QToolButton* stepButton(Qt::ArrowType arrow, const QString& words) {
    auto* button = new QToolButton;
    button->setArrowType(arrow);
    button->setToolTip(words);
    button->setAccessibleName(words);
    button->setMinimumSize(34, 30);
    return button;
}

QScrollArea* scrolling(QWidget* part) {
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidget(part);
    return area;
}

void makeList(QTableView& table, const QString& name) {
    table.setAccessibleName(name);
    setAir(table, kAir, kAir, kMostLetters);
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setAlternatingRowColors(true);
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.verticalHeader()->hide();
    makeCopyable(table);
}

void makeCompact(QTableView& table) {
    setAir(table, kCompactAir, 0, kAnyLetters);
    table.verticalHeader()->setMinimumSectionSize(1);
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.verticalHeader()->setDefaultSectionSize(table.fontMetrics().height() + 5);
}

}  // namespace tenthday
