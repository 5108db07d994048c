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
        list.columns.push_back(
            {std::string(column.name),
             QString::fromLatin1(column.name.data(), static_cast<qsizetype>(column.name.size())),
             column.needed, [](const QString& typed) { return typed; },
             [](const QString&) { return false; }});
    return list;
}

}  // namespace tenthday
