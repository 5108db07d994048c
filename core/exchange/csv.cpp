#include "exchange/csv.h"

#include "exchange/outer_space.h"

namespace tenthday {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

/// Walks the text a character at a time and knows where it stands.
class Reader {
public:
    explicit Reader(std::string_view text) : rest_(text) {
        if (rest_.substr(0, 3) == kByteOrderMark) rest_.remove_prefix(3);
    }

    Result<std::vector<CsvRecord>> read() {
        while (!rest_.empty() && !error_) readRecord();
        if (error_) return *error_;
        return std::move(records_);
    }

private:
    void readRecord() {
        CsvRecord record{line_, {}};
        bool quoted = false;
        do {
            quoted = atQuote();
            record.fields.emplace_back();
            quoted ? readQuoted(record.fields.back()) : readPlain(record.fields.back());
        } while (!error_ && take(","));
        if (!error_ && !rest_.empty()) readLineEnd();
        const bool blank = record.fields.size() == 1 && record.fields[0].empty() && !quoted;
        if (!blank) records_.push_back(std::move(record));
    }

    void readPlain(std::string& field) {
        while (!error_ && !rest_.empty() && rest_.front() != ',' && !atLineEnd()) {
            if (atQuote()) return refuse("a quote inside a field that is not quoted");
            if (rest_.front() == '\r') return refuse("a carriage return without a line feed");
            readCharacter(field);
        }
    }

    void readQuoted(std::string& field) {
        const Place opened{line_, column_};
        take("\"");
        while (!error_) {
            if (rest_.empty()) return refuse("the quote opened here is never closed", opened);
            if (take("\"\"")) {
                field += '"';
            } else if (take("\"")) {
                if (!rest_.empty() && rest_.front() != ',' && !atLineEnd())
                    refuse("text after the closing quote");
                return;
            } else if (take("\n")) {
                field += '\n';
                newLine();
            } else {
                readCharacter(field);
            }
        }
    }

    void readCharacter(std::string& field) {
        if (rest_.front() == '\0') return refuse("a zero byte");
        const auto length = utf8Length(rest_);
        if (length == 0) return refuse("not valid UTF-8");
        field += rest_.substr(0, length);
        rest_.remove_prefix(length);
        ++column_;
    }

    void readLineEnd() {
        if (take("\r\n") || take("\n")) newLine();
    }

    [[nodiscard]] bool atQuote() const { return !rest_.empty() && rest_.front() == '"'; }
    [[nodiscard]] bool atLineEnd() const {
        return rest_.front() == '\n' || rest_.substr(0, 2) == "\r\n";
    }
    bool take(std::string_view text) {
        if (rest_.substr(0, text.size()) != text) return false;
        rest_.remove_prefix(text.size());
        column_ += static_cast<std::int32_t>(text.size());
        return true;
    }
    void newLine() {
        ++line_;
        column_ = 1;
    }

    struct Place {
        std::int32_t line;
        std::int32_t column;
    };
    void refuse(std::string_view what) { refuse(what, {line_, column_}); }
    void refuse(std::string_view what, Place place) {
        error_ = Error{"line " + std::to_string(place.line) + ", column " +
                       std::to_string(place.column) + ": " + std::string(what)};
    }

    std::string_view rest_;
    std::int32_t line_ = 1;
    std::int32_t column_ = 1;
    std::vector<CsvRecord> records_;
    std::optional<Error> error_;
};

unsigned char byteAt(std::string_view text, std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0;
}

}  // namespace

Result<std::vector<CsvRecord>> readCsv(std::string_view text) { return Reader(text).read(); }

std::size_t utf8Length(std::string_view text) {
    const auto lead = byteAt(text, 0);
    if (text.empty()) return 0;
    if (lead < 0x80) return 1;
    if (lead < 0xC2 || lead > 0xF4) return 0;
    const std::size_t length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    for (std::size_t i = 1; i < length; ++i)
        if ((byteAt(text, i) & 0xC0) != 0x80) return 0;
    // Overlong forms, surrogates and code points above U+10FFFF are no UTF-8.
    const auto second = byteAt(text, 1);
    const bool good = (lead != 0xE0 || second >= 0xA0) && (lead != 0xED || second < 0xA0) &&
                      (lead != 0xF0 || second >= 0x90) && (lead != 0xF4 || second < 0x90);
    return good ? length : 0;
}

void appendCsv(std::string& text, const std::vector<std::string>& fields) {
    // A record of one empty field would read back as an empty line.
    if (fields.size() == 1 && fields[0].empty()) text += "\"\"";
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (i > 0) text += ',';
        if (fields[i].find_first_of(",\"\r\n") == std::string::npos && !hasOuterSpace(fields[i])) {
            text += fields[i];
            continue;
        }
        text += '"';
        for (const char c : fields[i]) {
            if (c == '"') text += '"';
            text += c;
        }
        text += '"';
    }
    text += '\n';
}

}  // namespace tenthday
