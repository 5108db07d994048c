#include <algorithm>

#include "paste/paste_dialog.h"

namespace tenthday {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

QString bare(QString name) { return name.remove(u'&').simplified(); }

bool isNamed(const PasteColumn& column, const std::string& head) {
    const auto word = bare(plain(head));
    return word.compare(plain(column.token), Qt::CaseInsensitive) == 0 ||
           word.compare(bare(column.name), Qt::CaseInsensitive) == 0;
}

/// A first line that names two columns or more, the way tables do, is no content.
bool isHeader(const PasteKind& kind, const std::vector<std::string>& line) {
    const auto named = std::count_if(line.begin(), line.end(), [&](const std::string& cell) {
        return std::any_of(kind.columns.begin(), kind.columns.end(),
                           [&](const auto& column) { return isNamed(column, cell); });
    });
    return named >= 2 || (named == 1 && line.size() == 1);
}

/// Each cell of the column fits, and at least one says something.
bool allFit(const PasteColumn& column, const PastedCells& cells, std::size_t at) {
    if (!column.fits) return false;
    bool any = false;
    for (const auto& line : cells.lines) {
        if (line[at].empty()) continue;
        if (!column.fits(plain(line[at]))) return false;
        any = true;
    }
    return any;
}

}  // namespace

PastePlaces placesOf(const PasteKind& kind, const PastedCells& cells) {
    PastePlaces places{false, std::vector<std::optional<std::size_t>>(kind.columns.size())};
    if (cells.isEmpty()) return places;
    places.hasHeader = isHeader(kind, cells.lines.front());
    std::vector<bool> taken(cells.columns);
    for (std::size_t i = 0; i < kind.columns.size(); ++i)
        for (std::size_t at = 0; at < cells.columns && !places.at[i]; ++at) {
            const bool found = places.hasHeader ? isNamed(kind.columns[i], cells.lines.front()[at])
                                                : allFit(kind.columns[i], cells, at);
            if (!found || taken[at]) continue;
            places.at[i] = at;
            taken[at] = true;
        }
    return places;
}

}  // namespace tenthday
