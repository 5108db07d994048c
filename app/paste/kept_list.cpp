#include "paste/kept_list.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLocale>
#include <QMessageBox>
#include <QTableView>
#include <algorithm>
#include <set>

#include "exchange/export.h"
#include "exchange/kinds.h"
#include "exchange/pasted.h"
#include "exchange/spreadsheet.h"
#include "look/table_copy.h"
#include "paste/list_dialog.h"
#include "screen_text/window_text.h"

namespace tenthday {
namespace {

using Line = std::vector<std::string>;

/// The kind all of whose heads these are, at least two of them; null where they are content.
const std::string* kindOfHeads(const Line& line, const std::vector<std::string>& kinds) {
    const auto count = std::count_if(line.begin(), line.end(),
                                     [](const std::string& head) { return !head.empty(); });
    const auto found = std::find_if(kinds.begin(), kinds.end(), [&](const std::string& kind) {
        const auto columns = columnsOf(kind);
        return std::all_of(line.begin(), line.end(), [&](const std::string& head) {
            return head.empty() || std::any_of(columns.begin(), columns.end(),
                                               [&](const auto& c) { return c.name == head; });
        });
    });
    return count < 2 || found == kinds.end() ? nullptr : &*found;
}

class ListKeys : public QObject {
public:
    ListKeys(Desk& desk, QTableView& table, std::function<KeptList()> list)
        : QObject(&table), desk_(desk), table_(table), list_(std::move(list)) {}

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::KeyPress) {
            const auto* key = static_cast<QKeyEvent*>(event);
            if (key->matches(QKeySequence::Copy)) return copy(), true;
            if (key->matches(QKeySequence::Paste)) return paste(), true;
        }
        return QObject::eventFilter(watched, event);
    }

private:
    void copy() {
        const auto list = list_();
        std::vector<std::string> keys;
        for (const int row : copiedRows(table_)) keys.push_back(list.key(row));
        const auto book = desk_.file().read({{}, true});
        if (!book) return tell(book.error());
        QApplication::clipboard()->setText(copiedText(book.value(), list.kinds, keys));
    }
    void paste() {
        if (desk_.isReadOnly()) return;
        parts_ = partsByKind(QApplication::clipboard()->text().toStdString(), list_().kinds);
        openNext();
    }
    /// One kind after the other.
    void openNext() {
        if (parts_.empty()) return;
        const auto part = parts_.front();
        parts_.erase(parts_.begin());
        const auto dialog = listDialog(desk_, part.kind, part.text, {}, &table_);
        if (!dialog) return tell(dialog.error());
        dialog.value()->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog.value(), &QDialog::finished, this, [this] { openNext(); });
        dialog.value()->open();
    }
    void tell(const Error& why) {
        parts_.clear();
        QMessageBox::warning(&table_, window_text::cannotOpen(), QString::fromStdString(why.text));
    }

    Desk& desk_;
    QTableView& table_;
    std::function<KeptList()> list_;
    std::vector<PastedPart> parts_;
};

}  // namespace

QString copiedText(const Snapshot& book, const std::vector<std::string>& kinds,
                   const std::vector<std::string>& keys) {
    const std::set<std::string> wanted(keys.begin(), keys.end());
    const bool comma = QLocale().decimalPoint() == QStringLiteral(",");
    QString text;
    for (const auto& kind : kinds) {
        auto listing = exportOf(book, kind);
        std::erase_if(listing.rows,
                      [&](const auto& row) { return !wanted.contains(row.front().text); });
        if (listing.rows.empty() && &kind != &kinds.front()) continue;
        if (!text.isEmpty()) text += u'\n';
        const SpreadsheetForm form{'\t', comma ? ',' : '.'};
        const auto lines = QString::fromStdString(renderForSpreadsheet(listing, kind, form));
        text += lines.startsWith(QChar(QChar::ByteOrderMark)) ? lines.mid(1) : lines;
    }
    return text;
}

std::vector<PastedPart> partsByKind(const std::string& text,
                                    const std::vector<std::string>& kinds) {
    const auto read = readPasted(text);
    if (!read || kinds.size() == 1) return {{kinds.front(), text}};
    std::vector<PastedPart> parts;
    for (const auto& line : read.value().lines) {
        if (const auto* kind = kindOfHeads(line, kinds); kind != nullptr || parts.empty())
            parts.push_back({kind != nullptr ? *kind : kinds.front(), {}});
        appendPasted(parts.back().text, line);
    }
    if (parts.empty()) parts.push_back({kinds.front(), text});
    return parts;
}

void keepList(Desk& desk, QTableView& table, std::function<KeptList()> list) {
    table.installEventFilter(new ListKeys(desk, table, std::move(list)));
}

}  // namespace tenthday
