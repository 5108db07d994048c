#include "app/book/book_fixture.h"

#include <QCryptographicHash>
#include <QDirIterator>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>

namespace tenthday::test {

OpenOptions fixedOptions(Access access) {
    OpenOptions options;
    options.access = access;
    options.clock = Clock(std::nullopt, [] { return day("2027-06-01"); });
    options.utcNow = [] { return QDateTime({2027, 6, 1}, {8, 30}, Qt::UTC); };
    return options;
}

FolderState stateOf(const QString& folder) {
    FolderState state;
    QDirIterator files(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        QCryptographicHash hash(QCryptographicHash::Sha256);
        if (file.open(QIODevice::ReadOnly)) hash.addData(&file);
        state.insert(file.fileName(), hash.result());
    }
    return state;
}

QString BookTest::makeSmallBook(const QString& name) {
    const auto made = createBook(at(name), smallBookRows(), fixedOptions());
    EXPECT_TRUE(made) << made.error().text;
    return at(name);
}

std::unique_ptr<BookFile> BookTest::open(const QString& path, const OpenOptions& options) {
    auto book = BookFile::open(path, options);
    if (!book) throw std::runtime_error(book.error().text);
    return std::move(book).value();
}

void BookTest::tamper(const QString& path, const QString& sql) {
    const auto name = QStringLiteral("tamper");
    {
        auto database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
        database.setDatabaseName(path);
        ASSERT_TRUE(database.open());
        QSqlQuery query(database);
        ASSERT_TRUE(query.exec(sql)) << query.lastError().text().toStdString();
    }
    QSqlDatabase::removeDatabase(name);
}

void BookTest::dropTablesSince(const QString& path, int schema) {
    const std::vector<std::pair<int, const char*>> tables{
        {2, "own_task"},      {2, "task_done"},   {2, "orders"},      {2, "weather_day"},
        {3, "climate_month"}, {3, "yard_note"},   {3, "mating_stay"}, {3, "drone_sighting"},
        {5, "nuc_care"},      {5, "mite_work"},   {5, "queen_note"},  {5, "caught_queen"},
        {5, "queen_stay"},    {5, "order_terms"}, {5, "earmark"},     {5, "delivery"},
        {5, "promise_move"},  {5, "queen_lot"},   {5, "left_out"},    {6, "work_time"},
        {6, "drive_time"},    {6, "task_given"}};
    for (const auto& [since, table] : tables)
        if (since >= schema)
            tamper(path, QStringLiteral("DROP TABLE %1").arg(QLatin1String(table)));
}

Snapshot BookTest::reread(const QString& path) {
    auto snapshot = open(path, fixedOptions(Access::ReadOnly))->read();
    if (!snapshot) throw std::runtime_error(snapshot.error().text);
    return std::move(snapshot).value();
}

}  // namespace tenthday::test
