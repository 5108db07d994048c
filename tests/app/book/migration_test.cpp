#include "book/migration.h"

#include <QDir>

#include "app/book/book_fixture.h"
#include "book/backups.h"

namespace tenthday {
namespace {

const std::int32_t kNow = newestSchema(schemaSteps());
const std::int32_t kNext = kNow + 1;

/// The next schema as a test has it: one more table, filled from what is there.
Result<void> addHives(Connection& connection) {
    return runScript(connection,
                     "CREATE TABLE hive (label TEXT NOT NULL) STRICT;\n"
                     "INSERT INTO hive SELECT label FROM yard;\n");
}
Result<void> addHivesThenFail(Connection& connection) {
    if (auto done = addHives(connection); !done) return done;
    return runScript(connection, "DELETE FROM batch_bar;\nINSERT INTO hive VALUES (NULL);\n");
}

class Migration : public test::BookTest {
protected:
    OpenOptions withStep(Result<void> (*step)(Connection&), Access access = Access::ReadWrite) {
        steps_ = schemaSteps();
        steps_.push_back({kNext, step});
        auto options = test::fixedOptions(access);
        options.steps = &steps_;
        return options;
    }
    const QString backup_ =
        QStringLiteral("mill-backups/mill-2027-06-01-before-schema-%1.tenthday").arg(kNext);

private:
    Migrations steps_;
};

TEST_F(Migration, TakesAnOldBookToTheNewestSchemaAfterABackup) {
    const auto path = makeSmallBook();
    {
        const auto book = open(path, withStep(addHives));
        EXPECT_EQ(userVersion(book->connection()).value(), kNext);
        EXPECT_EQ(book->connection().readOne(QStringLiteral("SELECT label FROM hive")).value(),
                  CellValue(std::string("Mill")));
        EXPECT_TRUE(book->read().value().sameContent(test::smallBook()));
    }
    EXPECT_TRUE(reread(at(backup_)).sameContent(test::smallBook())) << "still the older schema";
    const auto again = open(path, withStep(addHives));
    EXPECT_EQ(userVersion(again->connection()).value(), kNext) << "the step is not run twice";
}

TEST_F(Migration, AStepThatFailsMidwayLeavesTheBookAsItWas) {
    const auto path = makeSmallBook();
    const auto before = state().value(path);
    const auto book = BookFile::open(path, withStep(addHivesThenFail));
    ASSERT_FALSE(book);
    EXPECT_TRUE(book.error().text.starts_with(
        path.toStdString() + ": could not be taken to schema " + std::to_string(kNext) + ": "))
        << book.error().text;
    EXPECT_EQ(state().value(path), before);
    EXPECT_TRUE(reread(path).sameContent(test::smallBook()));
    EXPECT_TRUE(reread(at(backup_)).sameContent(test::smallBook()));
}

TEST_F(Migration, EachStatementMayFail) {
    const auto path = makeSmallBook();
    const auto before = state().value(path);
    auto options = withStep(addHives);
    for (int failing = 1; failing < 20; ++failing) {
        auto connection = openSqlite(path, Access::ReadWrite).value();
        int count = 0;
        connection->setSaboteur([&](const QString&) { return ++count == failing; });
        if (migrate(*connection, *options.steps)) {
            EXPECT_EQ(failing, 7) << "version, begin, create, fill, version, commit";
            return;
        }
        connection.reset();
        ASSERT_EQ(state().value(path), before) << "statement " << failing;
    }
    FAIL() << "never got through";
}

TEST_F(Migration, WithoutABackupNothingIsTouched) {
    const auto path = makeSmallBook();
    QFile inTheWay(at(QStringLiteral("mill-backups")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    const auto before = state();
    const auto book = BookFile::open(path, withStep(addHives));
    ASSERT_FALSE(book);
    EXPECT_EQ(state(), before);
}

TEST_F(Migration, AnOlderBookIsNotReadInPassing) {
    const auto path = makeSmallBook();
    const auto before = state();
    const auto book = BookFile::open(path, withStep(addHives, Access::ReadOnly));
    ASSERT_FALSE(book);
    EXPECT_EQ(book.error().text, path.toStdString() + ": was made by an older Tenthday (schema " +
                                     std::to_string(kNow) +
                                     "); open it once for writing to bring it up to date");
    EXPECT_EQ(state(), before);
}

/// A book as schema 1 left it: without the user's own tasks.
TEST_F(Migration, ABookOfSchemaOneBecomesOneOfToday) {
    const auto path = makeSmallBook();
    dropTablesSince(path, 2);
    tamper(path, QStringLiteral("PRAGMA user_version = 1"));
    const auto book = open(path);
    EXPECT_EQ(userVersion(book->connection()).value(), kNow);
    EXPECT_TRUE(book->read().value().sameContent(test::smallBook()));
}

/// Rows as schema 3 wrote them come through to today's tables.
TEST_F(Migration, RowsOfSchemaThreeAreKept) {
    const auto path = makeSmallBook();
    const auto row = [&](const char* table) {
        return open(path)->connection().readOne(
            QStringLiteral("SELECT count(*) FROM %1").arg(QLatin1String(table)));
    };
    const auto outcomes = row("outcome").value();
    dropTablesSince(path, 5);
    tamper(path,
           QStringLiteral("INSERT INTO builder_note SELECT "
                          "'0196aaaa-0000-7000-8000-000000000001', 1, id, 'brood_in', "
                          "'2027-05-20', 9, 1, 'all', '', 'three combs' FROM builder LIMIT 1"));
    tamper(path, QStringLiteral("ALTER TABLE builder_note DROP COLUMN brood_age"));
    tamper(path, QStringLiteral("ALTER TABLE builder_note DROP COLUMN donor"));
    tamper(path, QStringLiteral("PRAGMA user_version = 3"));
    const auto book = open(path);
    EXPECT_EQ(userVersion(book->connection()).value(), kNow);
    EXPECT_EQ(book->connection()
                  .readOne(QStringLiteral("SELECT brood_age || donor || note || hour FROM "
                                          "builder_note WHERE kind = 'brood_in' AND "
                                          "day = '2027-05-20'"))
                  .value(),
              CellValue(std::string("allthree combs9")));
    EXPECT_EQ(book->connection().readOne(QStringLiteral("SELECT count(*) FROM outcome")).value(),
              outcomes);
    EXPECT_TRUE(book->read().ok());
}

TEST_F(Migration, ABookOfTheTestsNewerSchemaIsRefusedByTheProgram) {
    const auto path = makeSmallBook();
    open(path, withStep(addHives)).reset();
    const auto before = state();
    EXPECT_FALSE(BookFile::open(path, test::fixedOptions()));
    EXPECT_EQ(state(), before);
}

}  // namespace
}  // namespace tenthday
