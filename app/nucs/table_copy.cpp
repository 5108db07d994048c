#include "nucs/table_copy.h"

#include <QTableWidget>

namespace tenthday {

QString textOf(const QTableWidget& table) {
    QStringList lines;
    QStringList heads;
    for (int column = 0; column < table.columnCount(); ++column)
        heads += table.horizontalHeaderItem(column)->text();
    lines += heads.join(u'\t');
    for (int row = 0; row < table.rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < table.columnCount(); ++column)
            cells += table.item(row, column)->text();
        lines += cells.join(u'\t');
    }
    return lines.join(u'\n') + u'\n';
}

}  // namespace tenthday
