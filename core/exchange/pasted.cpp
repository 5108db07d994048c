#include "exchange/pasted.h"

#include <algorithm>
#include <map>
#include <optional>

#include "exchange/csv.h"
#include "exchange/kinds.h"
#include "exchange/outer_space.h"
#include "records/order_days.h"

namespace tenthday {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

std::string trimmed(const std::string& cell) {
    const auto first = cell.find_first_not_of(" \t");
    if (first == std::string::npos) return {};
    return cell.substr(first, cell.find_last_not_of(" \t") - first + 1);
}

/// What stands between the cells of a text, by its first line that is not blank.
char partOf(std::string_view text) {
    const auto begin = std::min(text.find_first_not_of("\r\n"), text.size());
    const auto line = text.substr(begin, text.find_first_of("\r\n", begin) - begin);
    const auto count = [&](char part) { return std::count(line.begin(), line.end(), part); };
    if (count('\t') > 0) return '\t';
    return count(';') > count(',') ? ';' : ',';
}

class PasteReader {
public:
    explicit PasteReader(std::string_view text) : rest_(text) {
        if (rest_.substr(0, 3) == kByteOrderMark) rest_.remove_prefix(3);
        part_ = partOf(rest_);
    }

    Result<PastedCells> read() {
        while (!rest_.empty())
            if (auto read = readLine(); !read) return read.error();
        for (auto& line : cells_.lines) line.resize(cells_.columns);
        return std::move(cells_);
    }

private:
    Result<void> readLine() {
        std::vector<std::string> line;
        do {
            auto cell = !rest_.empty() && rest_.front() == '"' ? quoted() : plain();
            if (!cell) return cell.error();
            line.push_back(std::move(cell).value());
        } while (take(part_));
        endLine();
        const bool blank =
            std::all_of(line.begin(), line.end(), [](const auto& cell) { return cell.empty(); });
        if (blank) return {};
        cells_.columns = std::max(cells_.columns, line.size());
        cells_.lines.push_back(std::move(line));
        return {};
    }

    Result<std::string> plain() {
        std::string cell;
        while (!rest_.empty() && rest_.front() != part_ && rest_.front() != '\n' &&
               rest_.front() != '\r')
            if (auto good = character(cell); !good) return good.error();
        return trimmed(cell);
    }

    Result<std::string> quoted() {
        const int opened = line_;
        take('"');
        std::string cell;
        while (!rest_.empty()) {
            if (!take('"')) {
                if (rest_.front() == '\n') ++line_;
                if (auto good = character(cell); !good) return good.error();
            } else if (!take('"')) {
                auto after = plain();  // what stands behind the closing quote belongs to the cell
                if (!after) return after;
                return cell + after.value();
            } else {
                cell += '"';
            }
        }
        return Error{"line " + std::to_string(opened) + ": a quote is never closed"};
    }

    Result<void> character(std::string& cell) {
        const auto length = rest_.front() == '\0' ? 0 : utf8Length(rest_);
        if (length == 0) return Error{"line " + std::to_string(line_) + ": not readable as text"};
        cell += rest_.substr(0, length);
        rest_.remove_prefix(length);
        return {};
    }

    bool take(char wanted) {
        if (rest_.empty() || rest_.front() != wanted) return false;
        rest_.remove_prefix(1);
        return true;
    }

    void endLine() {
        take('\r');
        take('\n');
        ++line_;
    }

    std::string_view rest_;
    char part_ = '\t';
    int line_ = 1;
    PastedCells cells_;
};

std::string csvOf(const std::vector<std::string>& columns,
                  std::span<const std::vector<std::string>> lines) {
    std::string text;
    appendCsv(text, columns);
    for (const auto& line : lines) appendCsv(text, line);
    return text;
}

/// "line 2, column due: a day ..." without the line, which counts a header that nobody pasted.
std::string withoutLine(const std::string& text) {
    if (text.rfind("line ", 0) != 0) return text;
    const auto end = text.find_first_of(",:");
    return end == std::string::npos ? text : trimmed(text.substr(end + 1));
}

/// The line, counted without its header, that an error of a whole list names; 0 where it names
/// none.
std::size_t lineNamed(const std::string& text) {
    if (text.rfind("line ", 0) != 0) return 0;
    std::size_t line = 0;
    for (std::size_t i = 5; i < text.size() && text[i] >= '0' && text[i] <= '9'; ++i)
        line = line * 10 + static_cast<std::size_t>(text[i] - '0');
    return line > 0 ? line - 1 : 0;
}

bool isNewRow(const RowChange& row) {
    return visitChange([](const auto& change) { return change.before == nullptr; }, row);
}

/// Lines by the rows they make or change: what comes along with a row, such as the sides of a new
/// box, stands in a table of its own and after it.
RowCounts countsOf(const ChangeSet& changes) {
    const auto& rows = changes.rows;
    const auto first = std::find_if(rows.begin(), rows.end(), isNewRow);
    RowCounts counts;
    std::map<decltype(rows.front().table()), std::size_t> changed;
    for (const auto& row : rows) {
        if (!isNewRow(row))
            counts.changed = std::max<std::size_t>(counts.changed, ++changed[row.table()]);
        else if (row.table() == first->table())
            ++counts.fresh;
    }
    return counts;
}

bool bringsNewRow(const ChangeSet& changes) {
    return std::any_of(changes.rows.begin(), changes.rows.end(), isNewRow);
}

}  // namespace

Result<PastedCells> readPasted(std::string_view text) { return PasteReader(text).read(); }

void appendPasted(std::string& text, const std::vector<std::string>& cells) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) text += '\t';
        const bool isBare = cells[i].find_first_of("\t\r\n\"") == std::string::npos;
        if (isBare && !hasOuterSpace(cells[i])) {
            text += cells[i];
            continue;
        }
        text += '"';
        for (const char letter : cells[i]) text += letter == '"' ? "\"\"" : std::string(1, letter);
        text += '"';
    }
    text += '\n';
}

bool PastedEdit::isGood() const {
    return std::all_of(troubles.begin(), troubles.end(),
                       [](const auto& trouble) { return trouble.empty(); });
}

namespace {

/// A kind with one row for each row of another, named by its label.
struct BesideKind {
    std::string_view of;
    std::string_view kind;
    std::string_view column;  ///< that names the other
};
constexpr BesideKind kBeside{"orders", "orderterms", "order"};

using Line = std::vector<std::string>;

/// Lines by the kind they go to.
struct ParsedLines {
    std::string kind;
    std::vector<std::string> columns;
    std::vector<Line> lines;
    std::vector<std::size_t> places;  ///< of these among the lines that were pasted
};

bool hasColumn(std::string_view kind, std::string_view name) {
    const auto columns = columnsOf(kind);
    return std::any_of(columns.begin(), columns.end(),
                       [&](const auto& column) { return column.name == name; });
}

/// The part of the lines that is of the kind itself, then what is beside it, where there is any.
std::vector<ParsedLines> parted(std::string_view kind, const std::vector<std::string>& columns,
                                const std::vector<Line>& lines) {
    ParsedLines own{std::string(kind), {}, std::vector<Line>(lines.size()), {}};
    ParsedLines beside{std::string(kBeside.kind), {std::string(kBeside.column)}, {}, {}};
    std::vector<std::size_t> besideCells;
    std::optional<std::size_t> label;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const bool isBeside = kind == kBeside.of && !hasColumn(kind, columns[c]);
        if (columns[c] == "label") label = c;
        if (isBeside) besideCells.push_back(c);
        (isBeside ? beside : own).columns.push_back(columns[c]);
        for (std::size_t i = 0; !isBeside && i < lines.size(); ++i)
            own.lines[i].push_back(lines[i][c]);
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        own.places.push_back(i);
        Line terms;
        for (const auto c : besideCells) terms.push_back(lines[i][c]);
        const bool isBare =
            std::all_of(terms.begin(), terms.end(), [](const auto& cell) { return cell.empty(); });
        if (!label || isBare) continue;
        terms.insert(terms.begin(), lines[i][*label]);
        beside.lines.push_back(std::move(terms));
        beside.places.push_back(i);
    }
    std::vector<ParsedLines> parts{std::move(own)};
    if (!beside.lines.empty()) parts.push_back(std::move(beside));
    return parts;
}

/// Why lines cannot be taken in, and which of them, counted from 0.
struct PasteTrouble {
    std::size_t at = 0;
    std::string why;
};

/// An order without terms of its own is not given such as say nothing.
void dropBareTerms(ChangeSet& changes) {
    auto& rows = changes.rows;
    const auto saysNothing = [](const RowChange& row) {
        const auto terms = row.as<OrderTerms>();
        return terms && !terms->before && isBare(*terms->after);
    };
    rows.erase(std::remove_if(rows.begin(), rows.end(), saysNothing), rows.end());
}

/// One edit of all parts, each seen by the next.
class PasteEdit {
public:
    PasteEdit(const Snapshot& snapshot, const IdSource& newId)
        : snapshot_(snapshot), newId_(newId) {}

    std::optional<PasteTrouble> take(const ParsedLines& part) {
        auto edit = importOf(snapshot_, part.kind, csvOf(part.columns, part.lines), newId_);
        if (edit) dropBareTerms(edit.value());
        auto next = edit ? applied(snapshot_, edit.value()) : Result<Snapshot>(edit.error());
        if (!next) {
            const auto& text = next.error().text;
            const auto line = std::clamp<std::size_t>(lineNamed(text), 1, part.places.size());
            return PasteTrouble{part.places[line - 1], withoutLine(text)};
        }
        snapshot_ = std::move(next).value();
        auto& rows = edit.value().rows;
        if (changes.rows.empty() && changes.subject.empty()) {
            changes = std::move(edit).value();
        } else {
            changes.rows.insert(changes.rows.end(), rows.begin(), rows.end());
        }
        return std::nullopt;
    }

    ChangeSet changes;

private:
    Snapshot snapshot_;
    const IdSource& newId_;
};

/// Lines up to this number are told apart one by one: new or changed, each trouble.
constexpr std::size_t kMostByLine = 500;

/// What is wrong with each line by itself, and whether it brings a new row.
void judgeLines(const Snapshot& snapshot, std::string_view kind,
                const std::vector<std::string>& columns,
                const std::vector<std::vector<std::string>>& lines, const IdSource& newId,
                PastedEdit& edit) {
    for (const auto& line : lines) {
        PasteEdit alone(snapshot, newId);
        std::string trouble;
        bool isNew = false;
        for (const auto& part : parted(kind, columns, {line})) {
            if (!trouble.empty()) continue;
            if (const auto found = alone.take(part)) trouble = found->why;
            if (part.kind == kind) isNew = trouble.empty() && bringsNewRow(alone.changes);
        }
        edit.isNew.push_back(isNew);
        edit.isSame.push_back(trouble.empty() && alone.changes.rows.empty());
        edit.troubles.push_back(std::move(trouble));
    }
}

}  // namespace

PastedEdit editOf(const Snapshot& snapshot, std::string_view kind,
                  const std::vector<std::string>& columns,
                  const std::vector<std::vector<std::string>>& lines, const IdSource& newId) {
    PastedEdit edit;
    if (lines.empty()) return edit;
    // Together first: a line may lean on another of the list.
    PasteEdit whole(snapshot, newId);
    std::optional<PasteTrouble> trouble;
    const bool isByLine = lines.size() <= kMostByLine;
    for (const auto& part : parted(kind, columns, lines))
        if (!trouble) trouble = whole.take(part);
    if (isByLine)
        judgeLines(snapshot, kind, columns, lines, newId, edit);
    else
        edit.counts = countsOf(whole.changes);
    edit.troubles.resize(lines.size());
    if (!trouble) {
        for (std::size_t i = 0; i < edit.isNew.size(); ++i)
            if (!edit.troubles[i].empty()) edit.isNew[i] = true;  // it leans on a new row
        edit.troubles.assign(lines.size(), {});
        edit.changes = std::move(whole.changes);
        return edit;
    }
    if (edit.isGood()) edit.troubles[trouble->at] = trouble->why;
    return edit;
}

}  // namespace tenthday
