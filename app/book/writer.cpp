#include "book/writer.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <map>

#include "book/new_id.h"
#include "book/row_sql.h"
#include "book/sqlite.h"

namespace tenthday {
namespace {

/// One statement that must touch exactly one row.
template <class Row>
Result<void> touchOne(Connection& connection, const QString& sql, const Values& values) {
    const auto rows = connection.run(sql, values);
    if (!rows) return rows.error();
    if (rows.value() != 1)
        return Error{std::string(ColumnsOf<Row>::table) + ": the row was changed meanwhile"};
    return {};
}

Values keyOf(const auto& row) { return {toCell(row.id), toCell(row.version)}; }

template <class Row>
Result<void> deleteRow(Connection& connection, const Row& before) {
    return touchOne<Row>(connection, deleteStatement(ColumnsOf<Row>::table), keyOf(before));
}

template <class Row>
Result<void> insertRow(Connection& connection, const Row& after) {
    return touchOne<Row>(connection, insertStatement(ColumnsOf<Row>::table, columnNames<Row>()),
                         valuesOf(after));
}

template <class Row>
Result<void> updateRow(Connection& connection, const Row& before, const Row& after) {
    auto values = valuesOf(after);
    values.erase(values.begin());
    for (auto& key : keyOf(before)) values.push_back(std::move(key));
    return touchOne<Row>(connection, updateStatement(ColumnsOf<Row>::table, columnNames<Row>()),
                         values);
}

template <class Row>
concept Labelled = !std::is_same_v<Row, Book> && requires(const Row& row) {
    row.label;
};

/// Labels may be handed round within an edit; the database wants them unique after each statement,
/// so a label about to change makes room first.
template <class Row>
Result<void> clearLabel(Connection& connection, const Row& before, const Row& after) {
    if constexpr (Labelled<Row>) {
        if (before.label == after.label) return {};
        auto cleared = before;
        cleared.label = toText(before.id.uuid);
        return updateRow(connection, before, cleared);
    }
    return {};
}

enum class Pass { Delete, ClearLabels, Update, Insert };

template <class Row>
Result<void> writeRow(Connection& connection, const RowChangeOf<Row>& change, Pass pass) {
    const auto& [before, after] = change;
    switch (pass) {
        case Pass::Delete:
            if (!after) return deleteRow(connection, *before);
            break;
        case Pass::ClearLabels:
            if (before && after) return clearLabel(connection, *before, *after);
            break;
        case Pass::Update:
            if (before && after) return updateRow(connection, *before, *after);
            break;
        case Pass::Insert:
            if (!before) return insertRow(connection, *after);
            break;
    }
    return {};
}

template <class Row>
QJsonValue imageOf(const Ptr<Row>& row) {
    if (!row) return QJsonValue::Null;
    QJsonObject image;
    const auto names = columnNames<Row>();
    const auto values = valuesOf(*row);
    for (std::size_t i = 0; i < values.size(); ++i) {
        QJsonValue value = QJsonValue::Null;
        if (const auto* number = std::get_if<std::int32_t>(&values[i])) value = *number;
        if (const auto* text = std::get_if<std::string>(&values[i]))
            value = QString::fromStdString(*text);
        image.insert(names[static_cast<int>(i)], value);
    }
    return image;
}

Result<void> logChange(Connection& connection, const ChangeSet& changes, const QDateTime& utcNow) {
    static const QStringList columns{QStringLiteral("id"),   QStringLiteral("at"),
                                     QStringLiteral("verb"), QStringLiteral("subject"),
                                     QStringLiteral("day"),  QStringLiteral("images")};
    const Values values{
        toText(idMaker().next()), utcNow.toUTC().toString(Qt::ISODateWithMs).toStdString(),
        toCell(changes.verb),     changes.subject,
        toCell(changes.day),      imagesOf(changes).toStdString()};
    const auto logged = connection.run(insertStatement("change", columns), values);
    if (!logged) return logged.error();
    return {};
}

/// Text that is no UTF-8 would come back changed.
Result<void> checkText(const std::vector<RowChange>& rows) {
    for (const auto& change : rows) {
        const auto values = visitChange(
            [](const auto& c) { return c.after ? valuesOf(*c.after) : Values{}; }, change);
        for (const auto& value : values) {
            const auto* text = std::get_if<std::string>(&value);
            if (text != nullptr && QString::fromStdString(*text).toStdString() != *text)
                return Error{"a text is not in UTF-8"};
        }
    }
    return {};
}

}  // namespace

std::vector<RowChange> netChanges(const ChangeSet& changes) {
    std::vector<RowChange> net;
    std::map<RowKey, std::size_t> places;
    const auto put = [&]<class Row>(const RowChangeOf<Row>& change) {
        const auto id = (change.before ? change.before : change.after)->id;
        const auto [place, isNew] = places.try_emplace(id, net.size());
        if (isNew)
            net.push_back(change);
        else
            net[place->second] =
                RowChangeOf<Row>{net[place->second].template as<Row>()->before, change.after};
    };
    for (const auto& change : changes.rows) visitChange(put, change);
    std::erase_if(net, [](const RowChange& change) {
        return visitChange([](const auto& c) { return !c.before && !c.after; }, change);
    });
    return net;
}

QByteArray imagesOf(const ChangeSet& changes) {
    QJsonArray images;
    for (const auto& change : changes.rows)
        images += visitChange(
            []<class Row>(const RowChangeOf<Row>& c) {
                const auto table = ColumnsOf<Row>::table;
                return QJsonObject{
                    {QStringLiteral("table"), QString::fromUtf8(table.data(), table.size())},
                    {QStringLiteral("before"), imageOf(c.before)},
                    {QStringLiteral("after"), imageOf(c.after)}};
            },
            change);
    return QJsonDocument(images).toJson(QJsonDocument::Compact);
}

Result<void> writeChanges(Connection& connection, const ChangeSet& changes,
                          const QDateTime& utcNow) {
    const auto net = netChanges(changes);
    if (auto good = checkText(net); !good) return good;
    auto transaction = Transaction::begin(connection);
    if (!transaction) return transaction.error();
    for (const auto pass : {Pass::Delete, Pass::ClearLabels, Pass::Update, Pass::Insert})
        for (const auto& change : net) {
            auto done =
                visitChange([&](const auto& c) { return writeRow(connection, c, pass); }, change);
            if (!done) return done;
        }
    if (auto logged = logChange(connection, changes, utcNow); !logged) return logged;
    return transaction.value()->commit();
}

}  // namespace tenthday
