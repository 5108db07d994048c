/// The tables of a book against the rows of core: same tables, same columns, same tokens.
#include <algorithm>
#include <set>

#include "app/book/book_fixture.h"
#include "book/row_sql.h"

namespace tenthday {
namespace {

class Schema : public test::BookTest {
protected:
    void SetUp() override { book_ = open(makeSmallBook()); }

    /// All text of one column of a query's answer.
    std::vector<std::string> column(const QString& sql, std::size_t place) {
        std::vector<std::string> found;
        const auto done = book_->connection().read(sql, {}, [&](const Values& row) -> Result<void> {
            const auto* text = std::get_if<std::string>(&row[place]);
            found.push_back(text != nullptr ? *text : "");
            return {};
        });
        EXPECT_TRUE(done) << done.error().text;
        return found;
    }
    std::string definitionOf(std::string_view table) {
        return column(QStringLiteral("SELECT sql FROM sqlite_master WHERE name = '%1'")
                          .arg(QString::fromUtf8(table.data(), table.size())),
                      0)
            .at(0);
    }
    std::unique_ptr<BookFile> book_;
};

TEST_F(Schema, HasTheColumnsOfEveryRowTypeInOrder) {
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        const auto table = QString::fromUtf8(ColumnsOf<Row>::table.data());
        std::vector<std::string> expected;
        for (const auto& name : columnNames<Row>()) expected.push_back(name.toStdString());
        EXPECT_EQ(column(QStringLiteral("PRAGMA table_info(%1)").arg(table), 1), expected)
            << ColumnsOf<Row>::table;
    });
}

TEST_F(Schema, HasNoTableBesideThoseAndTheChangeLog) {
    std::set<std::string> expected{"change"};
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        expected.insert(std::string(ColumnsOf<Row>::table));
    });
    const auto tables =
        column(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table'"), 0);
    EXPECT_EQ(std::set<std::string>(tables.begin(), tables.end()), expected);
}

TEST_F(Schema, IsStrictAndKnowsOnlyTextAndInteger) {
    for (const auto& table :
         column(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table'"), 0)) {
        const auto definition = definitionOf(table);
        EXPECT_TRUE(definition.ends_with("STRICT")) << table;
        const auto info =
            QStringLiteral("PRAGMA table_info(%1)").arg(QString::fromStdString(table));
        for (const auto& type : column(info, 2))
            EXPECT_TRUE(type == "TEXT" || type == "INTEGER") << table << ": " << type;
    }
}

template <class T>
struct Bare {
    using type = T;
};
template <class T>
struct Bare<std::optional<T>> {
    using type = T;
};

TEST_F(Schema, AllowsEveryTokenOfEveryColumn) {
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        const auto definition = definitionOf(ColumnsOf<Row>::table);
        forEachColumn<Row>([&](const auto& c) {
            using Member = typename Bare<std::remove_cvref_t<decltype(Row{}.*c.member)>>::type;
            if constexpr (HasTokens<Member>) {
                for (const auto name : TokensOf<Member>::names)
                    EXPECT_NE(definition.find("'" + std::string(name) + "'"), std::string::npos)
                        << ColumnsOf<Row>::table << "." << c.name << ": " << name;
            }
        });
    });
}

struct BadValue {
    const char* name;
    const char* sql;
};
void PrintTo(const BadValue& bad, std::ostream* out) { *out << bad.name; }

class SchemaRefuses : public test::BookTest, public ::testing::WithParamInterface<BadValue> {};

TEST_P(SchemaRefuses, BadValue) {
    const auto book = open(makeSmallBook());
    EXPECT_FALSE(book->connection().run(QString::fromUtf8(GetParam().sql)));
}
// clang-format off
INSTANTIATE_TEST_SUITE_P(Table, SchemaRefuses, ::testing::Values(
    BadValue{"DayNotInTheCalendar", "UPDATE batch SET day = '2027-02-30'"},
    BadValue{"DayInAnotherForm",    "UPDATE batch SET day = '4.6.2027'"},
    BadValue{"OptionalDay",         "UPDATE yard SET frost_day = '2027-02-29'"},
    BadValue{"HourTooLate",         "UPDATE batch SET hour = 24"},
    BadValue{"HourNegative",        "UPDATE batch SET hour = -1"},
    BadValue{"UnknownToken",        "UPDATE builder SET kind = 'cloning'"},
    BadValue{"TextForNumber",       "UPDATE batch_bar SET cells = 'many'"},
    BadValue{"NoLabel",             "UPDATE yard SET label = ''"},
    BadValue{"VersionZero",         "UPDATE yard SET version = 0"},
    BadValue{"IdInUpperCase",       "UPDATE box SET id = '01900000-0000-7000-8000-00000000000A'"},
    BadValue{"IdTooShort",          "UPDATE box SET id = '7'"},
    BadValue{"YardInUse",           "DELETE FROM yard"},
    BadValue{"EmptyWhereNeeded",    "UPDATE batch SET method = NULL"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST_F(Schema, HoldsLabelsUnique) {
    ASSERT_TRUE(book_->connection().run(
        QStringLiteral("INSERT INTO line (id, version, label) "
                       "VALUES ('01900000-0000-7000-8000-000000000001', 1, 'amber')")));
    const auto again = book_->connection().run(
        QStringLiteral("INSERT INTO line (id, version, label) "
                       "VALUES ('01900000-0000-7000-8000-000000000002', 1, 'amber')"));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().text, "line.label: is there already");
}

}  // namespace
}  // namespace tenthday
