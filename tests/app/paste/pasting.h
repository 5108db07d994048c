/// @file pasting.h  Copying and pasting in a table by key, and the dialog that looks at it.
#pragma once
#include <QApplication>
#include <QClipboard>
#include <QTableView>
#include <QTest>

#include "paste/paste_dialog.h"

namespace tenthday::test {

inline QString copied(QTableView& table) {
    QApplication::clipboard()->clear();
    QTest::keyClick(&table, Qt::Key_C, Qt::ControlModifier);
    return QApplication::clipboard()->text();
}

/// The dialog that is open over a table now, or null.
inline PasteDialog* pasteDialog(const QTableView& table) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return table.findChild<PasteDialog*>();
}

inline PasteDialog* paste(QTableView& table, const QString& text) {
    QApplication::clipboard()->setText(text);
    QTest::keyClick(&table, Qt::Key_V, Qt::ControlModifier);
    return pasteDialog(table);
}

/// The first line of a text that holds all of these words, with one of its cells changed.
/// @param cell  from 0; a text without such a line comes back as it is
inline QString withCell(const QString& text, const QStringList& words, int cell,
                        const QString& value) {
    auto lines = text.split(u'\n');
    for (auto& line : lines) {
        const bool fits = std::all_of(words.begin(), words.end(),
                                      [&](const QString& word) { return line.contains(word); });
        if (!fits) continue;
        auto cells = line.split(u'\t');
        cells[cell] = value;
        line = cells.join(u'\t');
        return lines.join(u'\n');
    }
    return text;
}

}  // namespace tenthday::test
