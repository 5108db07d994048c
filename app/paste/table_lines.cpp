#include "paste/table_lines.h"

#include <QApplication>
#include <QClipboard>
#include <QRegularExpression>
#include <QTableView>
#include <algorithm>

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
    }
    if (!edit.isGood()) edit.changes = {};
    return edit;
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

QString besideNames(const QString& pasted, const QStringList& heads,
                    const std::vector<QStringList>& names) {
    const auto read = readPasted(pasted.toStdString());
    if (!read || read.value().columns != 1 || pasted.contains(u'"')) return pasted;
    // Split here: the reader passes over blank lines, and each stands beside a row.
    auto values = pasted.split(QRegularExpression(QStringLiteral("\r\n|\r|\n")));
    if (values.front().simplified().compare(heads.back(), Qt::CaseInsensitive) == 0)
        values.removeFirst();
    std::string text;
    appendCells(text, heads);
    for (qsizetype i = 0; i < values.size(); ++i) {
        const auto value = values[i].simplified();
        if (value.isEmpty()) continue;
        const auto at = static_cast<std::size_t>(i);
        QStringList line(heads.size() - 1, QString());
        if (at < names.size()) line = names[at];
        appendCells(text, line << value);
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
