#include "paste/list_dialog.h"

#include "exchange/spreadsheet.h"

namespace tenthday {

Result<PasteDialog*> listDialog(Desk& desk, const std::string& kind, const std::string& text,
                                std::function<void(int rows)> taken, QWidget* parent) {
    auto all = desk.file().read({{}, true});
    if (!all) return all.error();
    auto list = listToPaste(kind);
    list.book = std::make_shared<const Snapshot>(std::move(all).value());
    const auto save = [&desk, taken](const ChangeSet& changes) {
        if (const auto done = desk.apply(changes); !done)
            return QString::fromStdString(done.error().text);
        if (taken) taken(static_cast<int>(changes.rows.size()));
        return QString();
    };
    return new PasteDialog(desk, std::move(list), QString::fromStdString(plainCsv(text, kind)),
                           save, parent);
}

}  // namespace tenthday
