#include "paste/table_lines.h"

#include <QApplication>
#include <QClipboard>
#include <QRegularExpression>
#include <QTableView>
#include <algorithm>
#include <cmath>

#include "look/table_keys.h"
#include "look/table_note.h"
#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

bool isOneOf(const QString& typed, const QStringList& words) {
    return std::any_of(words.begin(), words.end(), [&](const QString& word) {
        return typed.compare(word, Qt::CaseInsensitive) == 0;
    });
}

void openPaste(Desk& desk, QTableView& table, const TableLines& lines) {
    if (desk.isReadOnly()) return showNote(table, paste_text::readOnly());
    const auto pasted = QApplication::clipboard()->text();
    auto save = lines.save ? lines.save : PasteDialog::Save([&desk](const ChangeSet& changes) {
        const auto done = desk.apply(changes);
        return done ? QString() : QString::fromStdString(done.error().text);
    });
    auto* dialog = new PasteDialog(desk, lines.kind(), lines.text ? lines.text(pasted) : pasted,
                                   std::move(save), &table);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

}  // namespace

PastedLine::PastedLine(const std::vector<std::string>& columns,
                       const std::vector<std::string>& cells) {
    for (std::size_t i = 0; i < columns.size(); ++i)
        cells_[columns[i]] = QString::fromStdString(cells[i]).simplified();
}

QString PastedLine::operator[](const std::string& column) const {
    const auto found = cells_.find(column);
    return found == cells_.end() ? QString() : found->second;
}

PastedEdit editLineByLine(const std::vector<std::string>& columns,
                          const std::vector<std::vector<std::string>>& lines,
                          const std::function<LineJudged(const PastedLine&, ChangeSet&)>& judge) {
    PastedEdit edit;
    for (const auto& line : lines) {
        const auto judged = judge(PastedLine(columns, line), edit.changes);
        edit.troubles.push_back(judged.trouble.toStdString());
        edit.isNew.push_back(judged.isNew);
        edit.isSame.push_back(judged.trouble.isEmpty() && !judged.changes);
        edit.takesBack.push_back(judged.trouble.isEmpty() && judged.takesBack);
    }
    if (!edit.isGood()) edit.changes = {};
    return edit;
}

PasteColumn rowColumn() { return plainColumn(kRowColumn, paste_text::row()); }

PastedEdit editNamedLines(
    const std::vector<std::string>& columns, const std::vector<std::vector<std::string>>& lines,
    const NamedRows& rows, const std::vector<std::string>& names,
    const std::function<LineJudged(int row, const PastedLine&, ChangeSet&)>& judge) {
    std::vector<NamedLine> named;
    for (const auto& cells : lines) {
        const PastedLine line(columns, cells);
        auto& last = named.emplace_back();
        for (const auto& column : names) last.name += line[column];
        last.number = line[kRowColumn];
    }
    const auto found = rows.rowsOf(named);
    std::size_t next = 0;
    return editLineByLine(columns, lines, [&](const PastedLine& line, ChangeSet& changes) {
        const auto& [row, why] = found[next++];
        return row ? judge(*row, line, changes) : LineJudged{why};
    });
}

bool areTenths(double number) {
    constexpr double kNoise = 1e-6;  // of decimals as the machine keeps them
    return std::abs(number * 10 - std::round(number * 10)) < kNoise;
}

TickTyped tickTyped(const QString& typed, const QStringList& yes) {
    const auto word = typed.simplified();
    if (isOneOf(word, yes) || isOneOf(word, paste_text::yesWords())) return TickTyped::Yes;
    if (word.isEmpty() || isOneOf(word, paste_text::noWords())) return TickTyped::No;
    return TickTyped::Other;
}

void appendCells(std::string& text, const QStringList& cells) {
    std::vector<std::string> line;
    for (const auto& cell : cells) line.push_back(cell.toStdString());
    appendPasted(text, line);
}

QStringList columnAlone(const QString& pasted) {
    const auto read = readPasted(pasted.toStdString());
    if (!read || read.value().columns != 1 || pasted.contains(u'"')) return {};
    // Split here: the reader passes over blank lines, and each stands beside a row.
    auto values = pasted.split(QRegularExpression(QStringLiteral("\r\n|\r|\n")));
    for (auto& value : values) value = value.simplified();
    return values;
}

QString besideNames(const QString& pasted, const QStringList& heads,
                    const std::vector<QStringList>& names) {
    auto values = columnAlone(pasted);
    if (values.isEmpty()) return pasted;
    if (values.front().compare(heads.back(), Qt::CaseInsensitive) == 0) values.removeFirst();
    std::string text;
    appendCells(text, heads);
    for (qsizetype i = 0; i < values.size(); ++i) {
        if (values[i].isEmpty()) continue;
        const auto at = static_cast<std::size_t>(i);
        QStringList line(heads.size() - 1, QString());
        if (at < names.size()) line = names[at];
        appendCells(text, line << values[i]);
    }
    return QString::fromStdString(text);
}

void setTableLines(Desk& desk, QTableView& table, TableLines lines) {
    auto copied = lines.copied;
    setTableKeys(table, {std::move(copied), [&desk, &table, lines = std::move(lines)] {
                             openPaste(desk, table, lines);
                         }});
}

}  // namespace tenthday
