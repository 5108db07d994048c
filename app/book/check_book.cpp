#include "book/check_book.h"

#include "book/book_file.h"
#include "book/row_sql.h"

namespace tenthday {
namespace {

constexpr std::size_t kFaultsOfATable = 20;  // enough to see what is wrong

class Checker {
public:
    explicit Checker(Connection& connection) : connection_(connection) {}

    std::vector<CheckLine> lines() {
        structure();
        addOrFault("schema", "schema " + std::to_string(newestSchema(schemaSteps())),
                   userVersion(connection_));
        facts();
        forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) { checkTable<Row>(); });
        references();
        return std::move(lines_);
    }

private:
    void add(std::string_view subject, bool good, std::string detail) {
        lines_.push_back({std::string(subject), good, std::move(detail)});
    }
    template <class T>
    void addOrFault(std::string_view subject, std::string detail, const Result<T>& result) {
        add(subject, result.ok(), result ? std::move(detail) : result.error().text);
    }
    void addFaults(std::string_view subject, std::string_view fine,
                   const Result<QStringList>& faults) {
        if (!faults || faults.value().empty())
            return addOrFault(subject, std::string(fine), faults);
        for (const auto& fault : faults.value())
            add(subject, false, fault.simplified().toStdString());
    }

    void structure() { addFaults("file", "sound", structureFaults(connection_, false)); }
    void references() {
        addFaults("references", "all lead to a row", referenceFaults(connection_));
    }
    void facts() {
        const auto read = connection_.readOne(QStringLiteral("SELECT facts_revision FROM book"));
        std::int32_t revision = 0;
        const bool known = read && fromCell(read.value(), revision) && revision >= 1 &&
                           revision <= kNewestFactsRevision;
        add("facts", known, read ? "revision " + std::to_string(revision) : read.error().text);
    }

    template <class Row>
    void checkTable() {
        const auto table = ColumnsOf<Row>::table;
        std::size_t rows = 0;
        std::size_t faults = 0;
        const auto visit = [&](const Values& values) -> Result<void> {
            ++rows;
            const auto row = rowOf<Row>(values);
            if (!row && ++faults <= kFaultsOfATable) add(table, false, row.error().text);
            return {};
        };
        const auto read = connection_.read(selectStatement(table, columnNames<Row>()), {}, visit);
        if (!read) return add(table, false, read.error().text);
        const auto detail = std::to_string(rows) + (rows == 1 ? " row" : " rows");
        add(table, faults == 0,
            faults == 0 ? detail : detail + ", " + std::to_string(faults) + " faulty");
    }

    Connection& connection_;
    std::vector<CheckLine> lines_;
};

}  // namespace

Result<std::vector<CheckLine>> checkBook(const QString& path) {
    const auto named = [&](const Error& error) {
        return Error{path.toStdString() + ": " + error.text};
    };
    if (auto good = checkHeader(path, newestSchema(schemaSteps())); !good)
        return named(good.error());
    auto connection = openSqlite(path, Access::ReadOnly);
    if (!connection) return std::vector<CheckLine>{{"file", false, connection.error().text}};
    return Checker(*connection.value()).lines();
}

}  // namespace tenthday
