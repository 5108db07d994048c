#include "look/table_copy.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QTableView>
#include <algorithm>

#include "exchange/pasted.h"

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

/// What stands in a cell; a box that is ticked says so.
std::string cellText(const QModelIndex& index) {
    const auto text = index.data(Qt::DisplayRole).toString();
    if (!text.isEmpty()) return text.toStdString();
    return index.data(Qt::CheckStateRole).toInt() == Qt::Checked ? "x" : "";
}

class CopyKeys : public QObject {
public:
    explicit CopyKeys(QTableView& table) : QObject(&table), table_(table) {}
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::KeyPress &&
            static_cast<QKeyEvent*>(event)->matches(QKeySequence::Copy)) {
            QApplication::clipboard()->setText(textOf(table_));
            return true;
        }
        return QObject::eventFilter(watched, event);
    }

private:
    QTableView& table_;
};

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
            cells.push_back(cellText(table.model()->index(row, column)));
        appendPasted(text, cells);
    }
    return QString::fromStdString(text);
}

void makeCopyable(QTableView& table) { table.installEventFilter(new CopyKeys(table)); }

}  // namespace tenthday
