#include "paste/named_rows.h"

#include <algorithm>
#include <iterator>
#include <map>

#include "screen_text/paste_text.h"

namespace tenthday {
namespace {

QString keyOf(const QStringList& name) {
    QStringList parts;
    for (const auto& part : name) parts += part.simplified();
    return parts.join(QChar(QChar::LineSeparator));
}

QString asItIs(const QString& key) { return key; }
QString withoutCase(const QString& key) { return key.toCaseFolded(); }

}  // namespace

/// One list of lines on its way to the rows: each row is taken once.
class NamedRows::Search {
    using Places = std::vector<std::size_t>;

public:
    Search(const std::vector<Row>& rows, const std::vector<NamedLine>& lines)
        : rows_(rows), lines_(lines), taken_(rows.size()), found_(lines.size()) {
        for (std::size_t at = 0; at < rows.size(); ++at) {
            byName_[rows[at].name].push_back(at);
            byFolded_[withoutCase(rows[at].name)].push_back(at);
        }
    }

    std::vector<RowOfLine> run() {
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (!lines_[i].number.isEmpty()) takeByNumber(i);
        takeByName(byName_, asItIs);
        takeByName(byFolded_, withoutCase);
        for (auto& line : found_)
            if (!isSettled(line)) line.why = paste_text::noSuchRow();
        return std::move(found_);
    }

private:
    static bool isSettled(const RowOfLine& line) { return line.row || !line.why.isEmpty(); }

    void takeByNumber(std::size_t line) {
        const int number = lines_[line].number.toInt();
        const bool isRow = number >= 1 && static_cast<std::size_t>(number) <= rows_.size();
        const auto at = static_cast<std::size_t>(isRow ? number - 1 : 0);
        // Another name: the table has changed since, or the number was meant for another one.
        if (!isRow || withoutCase(rows_[at].name) != withoutCase(keyOf(lines_[line].name))) {
            found_[line].why = paste_text::noSuchRow();
        } else if (taken_[at]) {
            found_[line].why = paste_text::twice();
        } else {
            take(line, at);
        }
    }
    void takeByName(const std::map<QString, Places>& rows, QString (*form)(const QString&)) {
        std::map<QString, Places> lines;
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (!isSettled(found_[i])) lines[form(keyOf(lines_[i].name))].push_back(i);
        for (const auto& [name, places] : lines) {
            const auto known = rows.find(name);
            if (known == rows.end() || (form == asItIs && !isToldByCase(name))) continue;
            Places free;
            std::copy_if(known->second.begin(), known->second.end(), std::back_inserter(free),
                         [&](std::size_t at) { return !taken_[at]; });
            share(places, free);
        }
    }
    /// Another row's name differs from this one of a row in upper and lower case alone.
    [[nodiscard]] bool isToldByCase(const QString& name) const {
        return byFolded_.at(withoutCase(name)).size() > byName_.at(name).size();
    }
    void share(const Places& lines, const Places& rows) {
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (lines.size() < rows.size())
                found_[lines[i]].why = paste_text::severalRows();
            else if (i < rows.size())
                take(lines[i], rows[i]);
            else
                found_[lines[i]].why = paste_text::twice();
    }
    void take(std::size_t line, std::size_t at) {
        taken_[at] = true;
        found_[line].row = rows_[at].row;
    }

    const std::vector<Row>& rows_;
    const std::vector<NamedLine>& lines_;
    std::map<QString, Places> byName_;    ///< in the order of the rows
    std::map<QString, Places> byFolded_;  ///< likewise, whatever the case
    std::vector<bool> taken_;
    std::vector<RowOfLine> found_;
};

int NamedRows::add(const QStringList& name, int row) {
    rows_.push_back({keyOf(name), row});
    return static_cast<int>(rows_.size());
}

std::vector<RowOfLine> NamedRows::rowsOf(const std::vector<NamedLine>& lines) const {
    return Search(rows_, lines).run();
}

}  // namespace tenthday
