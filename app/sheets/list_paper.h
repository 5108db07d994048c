/// @file list_paper.h  A list on paper: head, groups with their columns, boxes to tick. One layout
/// serves every list.
#pragma once
#include <QString>
#include <QStringList>
#include <vector>

#include "sheets/page.h"

namespace tenthday {

struct PaperColumn {
    QString head;
    qreal share = 1;  ///< of the room, by the sum of all shares
    Print type = Print::Text;
    bool blank = false;   ///< where a row says nothing there is a line to write on
    bool number = false;  ///< stands at the right, its head too
};

struct PaperRow {
    QStringList cells;
    bool done = false;  ///< its box is ticked
    bool must = false;  ///< on that very day: a black bar
};

/// Rows under one name, such as a yard.
struct PaperGroup {
    QString name;
    std::vector<PaperColumn> columns;
    std::vector<PaperRow> rows;
    QString note;  ///< below its name
};

struct ListPaper {
    QString title;
    QString operation;
    QStringList lead;  ///< below the head of the first page
    std::vector<PaperGroup> groups;
    QStringList notes;     ///< at the end: cautions, what to write where
    QString none;          ///< what is said where there are no groups
    bool ticks = true;     ///< a box before each row
    qreal leastWidth = 0;  ///< of a row; above 0 rows stand side by side, read line by line, and
                           ///< have no heads of columns
};

/// Title, operation and page number stand on each page. A group's name never stands alone at a
/// page's foot and is said again, with the heads of its columns, where its rows go on. A row is
/// never split; rows stand closer where that saves a page; what is too long for a cell of eight
/// lines ends in an ellipsis. At least one page.
[[nodiscard]] std::vector<Page> layOutList(const ListPaper& list, const PaperForm& form,
                                           const PaperRuler& ruler);

}  // namespace tenthday
