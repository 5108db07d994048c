#include "look/table_copy.h"

#include <QAbstractSpinBox>
#include <QHeaderView>
#include <QTableView>
#include <algorithm>

#include "exchange/pasted.h"
#include "look/table_keys.h"

namespace tenthday {
namespace {

std::vector<int> shownColumns(const QTableView& table) {
    std::vector<int> columns;
    const auto* heads = table.horizontalHeader();
    for (int at = 0; at < table.model()->columnCount(); ++at) {
        const int column = heads->logicalIndex(at);
        if (column >= 0 && !table.isColumnHidden(column)) columns.push_back(column);
    }
    return columns;
}

/// What stands in a cell, or in the field that lies over it; a box that is ticked says so.
std::string cellText(const QTableView& table, const QModelIndex& index) {
    if (const auto* field = qobject_cast<QAbstractSpinBox*>(table.indexWidget(index)))
        return field->text().toStdString();
    const auto text = index.data(Qt::DisplayRole).toString();
    if (!text.isEmpty()) return text.toStdString();
    return index.data(Qt::CheckStateRole).toInt() == Qt::Checked ? "x" : "";
}

}  // namespace

std::vector<int> copiedRows(const QTableView& table) {
    std::vector<int> rows;
    if (const auto* chosen = table.selectionModel())
        for (const auto& index : chosen->selectedRows()) rows.push_back(index.row());
    std::sort(rows.begin(), rows.end());
    if (rows.size() > 1) return rows;
    rows.clear();
    for (int row = 0; row < table.model()->rowCount(); ++row)
        if (!table.isRowHidden(row)) rows.push_back(row);
    return rows;
}

QString textOf(const QTableView& table) {
    if (table.model() == nullptr) return {};
    const auto columns = shownColumns(table);
    std::string text;
    std::vector<std::string> cells;
    for (const int column : columns)
        cells.push_back(table.model()->headerData(column, Qt::Horizontal).toString().toStdString());
    appendPasted(text, cells);
    for (const int row : copiedRows(table)) {
        cells.clear();
        for (const int column : columns)
            cells.push_back(cellText(table, table.model()->index(row, column)));
        appendPasted(text, cells);
    }
    return QString::fromStdString(text);
}

void makeCopyable(QTableView& table) {
    setTableKeys(table, {[&table] { return textOf(table); }, {}});
}

}  // namespace tenthday
