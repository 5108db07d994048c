#include "paste/kept_list.h"

#include <QApplication>
#include <QClipboard>
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
#include "look/table_keys.h"
#include "look/table_note.h"
#include "paste/paste_dialog.h"
#include "screen_text/paste_text.h"
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

/// Copies and pastes for one table.
class ListKeys : public QObject {
public:
    ListKeys(Desk& desk, QTableView& table, std::function<KeptList()> list)
        : QObject(&table), desk_(desk), table_(table), list_(std::move(list)) {}

    QString copied() {
        const auto list = list_();
        std::vector<std::string> keys;
        for (const int row : copiedRows(table_))
            for (auto& key : list.keys(row)) keys.push_back(std::move(key));
        const auto book = desk_.file().read({{}, true});
        if (book) return copiedText(book.value(), list.kinds, keys);
        tell(book.error());
        return {};
    }
    void paste() {
        if (desk_.isReadOnly()) return showNote(table_, paste_text::readOnly());
        auto book = desk_.file().read({{}, true});
        if (!book) return tell(book.error());
        book_ = std::make_shared<const Snapshot>(std::move(book).value());
        parts_ = partsByKind(QApplication::clipboard()->text().toStdString(), list_().kinds);
        next_ = 0;
        taken_ = {};
        openNext();
    }

private:
    [[nodiscard]] bool isLast() const { return next_ + 1 == parts_.size(); }

    /// One kind after the other; each is judged as if those before were in the book.
    void openNext() {
        const auto& part = parts_[next_];
        auto list = listToPaste(part.kind);
        list.book = book_;
        list.isPart = parts_.size() > 1;
        if (list.isPart)
            list.head = paste_text::partOf(list.head, static_cast<int>(next_) + 1,
                                           static_cast<int>(parts_.size()));
        if (!isLast()) list.takeIn = [](int) { return paste_text::goOn(); };
        const auto text = QString::fromStdString(plainCsv(part.text, part.kind));
        auto* dialog = new PasteDialog(
            desk_, std::move(list), text,
            [this](const ChangeSet& changes) { return take(changes); }, &table_);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog, &QDialog::accepted, this, [this] {
            if (++next_ < parts_.size()) openNext();
        });
        connect(dialog, &QDialog::rejected, this, [this] {
            if (next_ > 0) showNote(table_, paste_text::gaveUp());
        });
        dialog->open();
    }
    /// Keeps a part until the last one is taken; then all of them, as one edit.
    QString take(const ChangeSet& changes) {
        auto all = taken_.rows.empty() ? changes : taken_;
        if (!taken_.rows.empty())
            all.rows.insert(all.rows.end(), changes.rows.begin(), changes.rows.end());
        if (isLast() && all.isEmpty()) return paste_text::nothingNew();
        if (isLast()) {
            const auto done = desk_.apply(all);
            return done ? QString() : QString::fromStdString(done.error().text);
        }
        auto next = applied(*book_, changes);
        if (!next) return QString::fromStdString(next.error().text);
        book_ = std::make_shared<const Snapshot>(std::move(next).value());
        taken_ = std::move(all);
        return {};
    }
    void tell(const Error& why) {
        QMessageBox::warning(&table_, window_text::cannotOpen(), QString::fromStdString(why.text));
    }

    Desk& desk_;
    QTableView& table_;
    std::function<KeptList()> list_;
    std::vector<PastedPart> parts_;
    std::size_t next_ = 0;
    std::shared_ptr<const Snapshot> book_;
    ChangeSet taken_;
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
    auto* keys = new ListKeys(desk, table, std::move(list));
    setTableKeys(table, {[keys] { return keys->copied(); }, [keys] { keys->paste(); }});
}

}  // namespace tenthday
