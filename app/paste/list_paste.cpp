#include "exchange/kinds.h"
#include "paste/paste_dialog.h"
#include "screen_text/season_text.h"
#include "screen_text/window_text.h"

namespace tenthday {

PasteKind listToPaste(const std::string& kind) {
    const auto name = window_text::kindName(QString::fromStdString(kind));
    PasteKind list;
    list.head = name;
    list.kind = kind;
    list.named = name.toStdString();
    list.takeIn = [](int lines) { return season_text::takeInLines(lines); };
    for (const auto& column : columnsOf(kind))
        list.columns.push_back(plainColumn(
            std::string(column.name),
            QString::fromLatin1(column.name.data(), static_cast<qsizetype>(column.name.size())),
            column.needed));
    return list;
}

PasteColumn plainColumn(std::string token, QString name, bool needed) {
    return {std::move(token), std::move(name), needed, [](const QString& typed) { return typed; },
            [](const QString&) { return false; }};
}

}  // namespace tenthday
