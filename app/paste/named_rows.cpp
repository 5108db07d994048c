#include "paste/named_rows.h"

#include "screen_text/paste_text.h"

namespace tenthday {

void NamedRows::add(const QStringList& name, int row) { rows_[keyOf(name)].rows.push_back(row); }

std::optional<int> NamedRows::take(const QStringList& name) {
    const auto found = rows_.find(keyOf(name));
    if (found == rows_.end()) return std::nullopt;
    auto& [rows, taken] = found->second;
    if (taken == rows.size()) return std::nullopt;
    return rows[taken++];
}

QString NamedRows::whyNone(const QStringList& name) const {
    return rows_.contains(keyOf(name)) ? paste_text::twice() : paste_text::noSuchRow();
}

QString NamedRows::keyOf(const QStringList& name) {
    QStringList parts;
    for (const auto& part : name) parts += part.simplified().toCaseFolded();
    return parts.join(QChar(QChar::LineSeparator));
}

}  // namespace tenthday
