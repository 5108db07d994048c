#include "book/migration.h"

#include "book/sqlite.h"
#include "tenthday_app_embedded.h"

namespace tenthday {
namespace {

Result<void> runStep(Connection& connection, const MigrationStep& step) {
    auto transaction = Transaction::begin(connection);
    if (!transaction) return transaction.error();
    if (auto done = step.run(connection); !done) return done;
    if (auto done = setUserVersion(connection, step.to); !done) return done;
    return transaction.value()->commit();
}

Result<void> makeFirstSchema(Connection& connection) {
    if (auto done = setApplicationId(connection, kApplicationId); !done) return done;
    return runScript(connection, embedded::schema_1());
}

}  // namespace

const Migrations& schemaSteps() {
    static const Migrations steps{
        {1, makeFirstSchema},
        {2, [](Connection& connection) { return runScript(connection, embedded::schema_2()); }},
        {3, [](Connection& connection) { return runScript(connection, embedded::schema_3()); }},
        {4, [](Connection& connection) { return runScript(connection, embedded::schema_4()); }},
        {5, [](Connection& connection) { return runScript(connection, embedded::schema_5()); }},
        {6, [](Connection& connection) { return runScript(connection, embedded::schema_6()); }},
        {7, [](Connection& connection) { return runScript(connection, embedded::schema_7()); }}};
    return steps;
}

std::int32_t newestSchema(const Migrations& steps) { return steps.back().to; }

Result<void> runScript(Connection& connection, std::string_view script) {
    while (true) {
        const auto end = script.find(";\n");
        if (end == std::string_view::npos) return {};
        const auto statement = script.substr(0, end);
        if (auto done = connection.run(QString::fromUtf8(statement.data(), statement.size()));
            !done)
            return done.error();
        script.remove_prefix(end + 2);
    }
}

Result<void> migrate(Connection& connection, const Migrations& steps) {
    const auto from = userVersion(connection);
    if (!from) return from.error();
    for (const auto& step : steps) {
        if (step.to <= from.value()) continue;
        if (auto done = runStep(connection, step); !done)
            return Error{"could not be taken to schema " + std::to_string(step.to) + ": " +
                         done.error().text};
    }
    return {};
}

}  // namespace tenthday
