/// @file page_parts.h  What pages of widgets have alike: their heads and tables.
#pragma once
#include <QString>
#include <Qt>

class QLabel;
class QScrollArea;
class QTableView;
class QToolButton;
class QWidget;

namespace tenthday {

/// Makes a label a page's head. @param times  its size, of the desktop's
void makeHead(QLabel& label, double times = 1.4);

/// An arrow to the day or week before or after.
[[nodiscard]] QToolButton* stepButton(Qt::ArrowType arrow, const QString& words);

/// A part that grows beyond its place scrolls in it.
[[nodiscard]] QScrollArea* scrolling(QWidget* part);

/// A table that is read line by line: whole rows chosen, no grid, air between columns.
void makeList(QTableView& table, const QString& name);
/// Lines as low as their text lets: for lists that stand among other things.
void makeCompact(QTableView& table);

}  // namespace tenthday
