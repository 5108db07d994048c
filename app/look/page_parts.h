/// @file page_parts.h  What pages of widgets have alike: their heads and tables.
#pragma once
#include <QString>
#include <Qt>
#include <functional>

class QHBoxLayout;
class QLabel;
class QLineEdit;
class QScrollArea;
class QTableView;
class QToolButton;
class QVBoxLayout;
class QWidget;

namespace tenthday {

/// Makes a label a page's head. @param times  its size, of the desktop's
void makeHead(QLabel& label, double times = 1.4);

/// Makes a label say what counts: bold, in as many lines as it takes.
void makeStrong(QLabel& label);

/// Makes a field one to search in. @param words  what can be found
void makeSearch(QLineEdit& field, const QString& words);

/// The column all of a page stands in, with the page's margins.
[[nodiscard]] QVBoxLayout* pageColumn(QWidget& page);

/// Words of the buttons that go through days or weeks; without `now` there is no such button.
struct StepWords {
    QString before;
    QString after;
    QString now;
};
/// Arrows, a button for now, and the page's head, which is made here; more may follow in the row.
/// @param step  is given -1 or 1
[[nodiscard]] QHBoxLayout* stepRow(const StepWords& words, QLabel& head,
                                   std::function<void(int)> step, std::function<void()> now = {});

/// An arrow to the day or week before or after.
[[nodiscard]] QToolButton* stepButton(Qt::ArrowType arrow, const QString& words);

/// A part that grows beyond its place scrolls in it.
[[nodiscard]] QScrollArea* scrolling(QWidget* part);

/// A table that is read line by line: whole rows chosen, no grid, air between columns.
void makeList(QTableView& table, const QString& name);
/// Lines as low as their text lets: for lists that stand among other things.
void makeCompact(QTableView& table);

}  // namespace tenthday
