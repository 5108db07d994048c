#include "book/writer.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "app/book/book_fixture.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

class Writer : public test::BookTest {
protected:
    void SetUp() override {
        path_ = makeSmallBook();
        book_ = open(path_);
        snapshot_ = book_->read().value();
    }
    /// Writes, and expects the file to hold what core says the edit leads to.
    void writeAndCompare(const ChangeSet& changes) {
        const auto next = applied(snapshot_, changes);
        ASSERT_TRUE(next) << next.error().text;
        const auto written = book_->write(changes);
        ASSERT_TRUE(written) << written.error().text;
        snapshot_ = next.value();
        EXPECT_TRUE(versionsToo(reread(path_), snapshot_));
    }
    static bool versionsToo(const Snapshot& a, const Snapshot& b) {
        bool same = true;
        forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
            same = same && std::equal(a.all<Row>().begin(), a.all<Row>().end(),
                                      b.all<Row>().begin(), b.all<Row>().end(),
                                      [](const auto& x, const auto& y) { return *x == *y; });
        });
        return same;
    }
    std::int32_t count(const QString& table) {
        return std::get<std::int32_t>(
            book_->connection().readOne(QStringLiteral("SELECT count(*) FROM ") + table).value());
    }
    /// The batch to another day.
    ChangeSet moved(Day to) {
        ChangeSet changes{Verb::MoveBatch, "1", to, {}};
        auto after = *snapshot_.find(test::kBatch);
        after.day = to;
        changes.edit(snapshot_.find(test::kBatch), after);
        return changes;
    }
    QString path_;
    std::unique_ptr<BookFile> book_;
    Snapshot snapshot_;
};

TEST_F(Writer, TheSmallBookComesBackAsItWentIn) {
    EXPECT_TRUE(versionsToo(snapshot_, test::smallBook()));
    EXPECT_EQ(snapshot_.seasonId(), id<Season>(1));
    EXPECT_EQ(snapshot_.today(), day("2027-06-01"));
}

TEST_F(Writer, WritesEdits) {
    writeAndCompare(moved(day("2027-06-09")));
    writeAndCompare(moved(day("2027-06-10")));
    EXPECT_EQ(reread(path_).find(test::kBatch)->version, 3);
}

TEST_F(Writer, KeepsEmptyTextZeroAndForeignLetters) {
    ChangeSet changes;
    changes.add(Stocking{id<Stocking>(1), 1, test::kSideA, day("2027-05-14"), Hour{0}, BeesMl{0},
                         Frames{1}, true, "Žďár – 蜂", ""});
    changes.add(
        DayOff{id<DayOff>(1), 1, day("2027-06-01"), day("2027-06-02"), "it's \"off\";\n--"});
    writeAndCompare(changes);
}

TEST_F(Writer, WritesRowsThatReferToLaterOnesOfTheSameEdit) {
    ChangeSet changes;
    changes.add(Queen{.id = id<Queen>(3),
                      .label = "Q9",
                      .year = {},
                      .mother = id<Queen>(4),
                      .line = id<Line>(5),
                      .breederFrom = {},
                      .breederUntil = {},
                      .note = {}});
    changes.add(Queen{.id = id<Queen>(4),
                      .label = "Q8",
                      .year = {},
                      .mother = {},
                      .line = {},
                      .breederFrom = {},
                      .breederUntil = {},
                      .note = {}});
    changes.add(Line{id<Line>(5), 1, "amber"});
    writeAndCompare(changes);
    writeAndCompare(changes.inverse());
}

TEST_F(Writer, LabelsCanBeHandedRound) {
    ChangeSet three;
    for (std::uint64_t i = 1; i <= 3; ++i)
        three.add(Line{id<Line>(i), 1, std::string(1, static_cast<char>('a' + i))});
    writeAndCompare(three);
    ChangeSet round;
    for (std::uint64_t i = 1; i <= 3; ++i) {
        auto after = *snapshot_.find(id<Line>(i));
        after.label = snapshot_.find(id<Line>(i % 3 + 1))->label;
        round.edit(snapshot_.find(id<Line>(i)), after);
    }
    writeAndCompare(round);
    ChangeSet replaced;  // a new row takes the label of one that goes, named before it goes
    replaced.add(Line{id<Line>(9), 1, snapshot_.find(id<Line>(1))->label});
    replaced.erase(snapshot_.find(id<Line>(1)));
    writeAndCompare(replaced);
}

TEST_F(Writer, TakesOneRowEditedTwiceInOneEdit) {
    ChangeSet twice = moved(day("2027-06-09"));
    const auto between = applied(snapshot_, twice).value().find(test::kBatch);
    auto last = *between;
    last.note = "twice";
    twice.edit(between, last);
    EXPECT_EQ(netChanges(twice).size(), 1U);
    writeAndCompare(twice);

    ChangeSet fleeting;
    const Line line{id<Line>(1), 1, "amber"};
    fleeting.add(line);
    fleeting.erase(std::make_shared<const Line>(line));
    EXPECT_EQ(netChanges(fleeting).size(), 0U);
}

TEST_F(Writer, RefusesARowThatIsNotAsTheEditFoundIt) {
    const auto first = moved(day("2027-06-09"));
    auto second = moved(day("2027-06-12"));
    second.add(Line{id<Line>(1), 1, "amber"});
    ASSERT_TRUE(book_->write(first));
    const auto refused = book_->write(second);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text, path_.toStdString() + ": batch: the row was changed meanwhile");
    EXPECT_EQ(reread(path_).find(test::kBatch)->day, day("2027-06-09"));
    EXPECT_EQ(count(QStringLiteral("line")), 0) << "nothing of the refused edit stays";
    EXPECT_EQ(count(QStringLiteral("change")), 2) << "the making of the book and the first edit";
}

TEST_F(Writer, RefusesAtCommitWhatIsInUse) {
    ChangeSet erase;
    erase.erase(snapshot_.find(test::kYard));
    const auto refused = book_->write(erase);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text,
              path_.toStdString() + ": a row refers to nothing, or is still in use elsewhere");
    EXPECT_TRUE(reread(path_).sameContent(snapshot_));
    writeAndCompare(moved(day("2027-06-09")));  // and goes on working
}

TEST_F(Writer, RefusesTextThatIsNotUtf8) {
    ChangeSet changes;
    changes.add(Line{id<Line>(1), 1, "amb\xE9r"});
    EXPECT_FALSE(book_->write(changes));
    EXPECT_EQ(count(QStringLiteral("line")), 0);
}

TEST_F(Writer, LogsEachEditWithItsRows) {
    ASSERT_TRUE(book_->write(moved(day("2027-06-09"))));
    Values logged;
    ASSERT_TRUE(book_->connection().read(
        QStringLiteral("SELECT at, verb, subject, day, images FROM change ORDER BY id DESC"), {},
        [&](const Values& row) -> Result<void> {
            if (logged.empty()) logged = row;
            return {};
        }));
    const Values expected{std::string("2027-06-01T08:30:00.000Z"), std::string("move_batch"),
                          std::string("1"), std::string("2027-06-09")};
    EXPECT_EQ(Values(logged.begin(), logged.begin() + 4), expected);
    const auto images =
        QJsonDocument::fromJson(QByteArray::fromStdString(std::get<std::string>(logged[4])))
            .array();
    ASSERT_EQ(images.size(), 1);
    const auto image = images[0].toObject();
    const auto part = [&](const QString& side, const QString& column) {
        return image.value(side).toObject().value(column);
    };
    EXPECT_EQ(image.value(QStringLiteral("table")).toString().toStdString(), "batch");
    EXPECT_EQ(part(QStringLiteral("before"), QStringLiteral("day")).toString().toStdString(),
              "2027-06-04");
    EXPECT_EQ(part(QStringLiteral("after"), QStringLiteral("day")).toString().toStdString(),
              "2027-06-09");
    EXPECT_EQ(part(QStringLiteral("after"), QStringLiteral("version")).toInt(), 2);
    EXPECT_TRUE(part(QStringLiteral("after"), QStringLiteral("larva_to_h")).isNull());
}

TEST_F(Writer, EachStatementMayFailAndNothingIsHalfWritten) {
    ChangeSet changes = moved(day("2027-06-09"));
    changes.add(Line{id<Line>(1), 1, "amber"});
    const auto before = reread(path_);
    int statements = 0;
    for (int failing = 1;; ++failing) {
        int count = 0;
        book_->connection().setSaboteur([&](const QString&) { return ++count == failing; });
        const bool written = book_->write(changes).ok();
        statements = count;
        if (written) break;
        ASSERT_TRUE(versionsToo(reread(path_), before)) << "statement " << failing;
    }
    EXPECT_EQ(statements, 5) << "begin, update, insert, log, commit";
    EXPECT_EQ(reread(path_).find(id<Line>(1))->label, "amber");
}

TEST_F(Writer, SurvivesARollbackThatFailsToo) {
    book_->connection().setSaboteur([](const QString& sql) {
        return sql == QStringLiteral("COMMIT") || sql == QStringLiteral("ROLLBACK");
    });
    ASSERT_FALSE(book_->write(moved(day("2027-06-09"))));
    book_->connection().setSaboteur({});
    EXPECT_TRUE(reread(path_).sameContent(snapshot_));
    writeAndCompare(moved(day("2027-06-10")));
}

TEST_F(Writer, TheConnectionEnforcesAndWaitsForTheDisk) {
    const auto pragma = [&](const QString& name) {
        return book_->connection().readOne(QStringLiteral("PRAGMA ") + name).value();
    };
    EXPECT_EQ(pragma(QStringLiteral("foreign_keys")), CellValue(1));
    EXPECT_EQ(pragma(QStringLiteral("synchronous")), CellValue(2));
    EXPECT_EQ(pragma(QStringLiteral("journal_mode")), CellValue(std::string("delete")));
    EXPECT_EQ(pragma(QStringLiteral("application_id")), CellValue(kApplicationId));
    EXPECT_EQ(pragma(QStringLiteral("user_version")), CellValue(newestSchema(schemaSteps())));
}

TEST_F(Writer, ABookTakenAwayIsToldAndWhatIsOpenCanStillBeKept) {
    ASSERT_TRUE(QFile::remove(path_));
    const auto written = book_->write(moved(day("2027-06-09")));
    ASSERT_FALSE(written);
    EXPECT_NE(written.error().text.find("no longer there"), std::string::npos)
        << written.error().text;
    const auto copy = path_ + QStringLiteral(".copy");
    const auto kept = book_->saveCopy(copy);
    ASSERT_TRUE(kept) << kept.error().text;
    EXPECT_TRUE(versionsToo(reread(copy), snapshot_));
}

}  // namespace
}  // namespace tenthday
