/// @file migration.h  From schema to schema, one transaction a step.
#pragma once
#include <functional>
#include <vector>

#include "book/connection.h"

namespace tenthday {

/// "TnDy": says that a SQLite file is a book.
inline constexpr std::int32_t kApplicationId = 0x546E4479;

/// Leads from schema `to - 1` to schema `to`.
struct MigrationStep {
    std::int32_t to = 0;
    std::function<Result<void>(Connection&)> run;
};
using Migrations = std::vector<MigrationStep>;

/// All steps, from the empty file (schema 0) on.
[[nodiscard]] const Migrations& schemaSteps();
[[nodiscard]] std::int32_t newestSchema(const Migrations& steps);

/// Runs the statements of a schema file: each ends with a semicolon at the end of a line.
[[nodiscard]] Result<void> runScript(Connection& connection, std::string_view script);

/// Takes the file to the newest schema. Each step is one transaction that also sets the new schema
/// number: a failed step leaves the file as the step before left it.
[[nodiscard]] Result<void> migrate(Connection& connection, const Migrations& steps);

}  // namespace tenthday
