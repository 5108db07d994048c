/// What is refused, in which words, and that refusing changes nothing on the disk.
#include <QCoreApplication>
#include <QProcess>

#include "app/book/book_fixture.h"

namespace tenthday {
namespace {

using Opening = test::BookTest;
using test::fixedOptions;

class Refused : public test::BookTest {
protected:
    /// The refusal's text without the path, which every one must begin with.
    std::string refusalOf(const QString& path) {
        const auto before = state();
        std::string text;
        for (const auto access : {Access::ReadOnly, Access::ReadWrite}) {
            const auto book = BookFile::open(path, fixedOptions(access));
            if (book) return "not refused";
            text = book.error().text;
            EXPECT_EQ(text.find('\n'), std::string::npos);
            EXPECT_EQ(state(), before);
        }
        const auto start = path.toStdString() + ": ";
        EXPECT_TRUE(text.starts_with(start)) << text;
        return text.substr(start.size());
    }
    void write(const QString& path, const QByteArray& bytes) {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
};

TEST_F(Refused, NoSuchFile) {
    EXPECT_EQ(refusalOf(at(QStringLiteral("none.tenthday"))), "there is no such file");
    EXPECT_EQ(refusalOf(at(QString())), "is no file");
}

TEST_F(Refused, NoBook) {
    const auto path = at(QStringLiteral("letter.tenthday"));
    const std::string text = "is not a Tenthday book; nothing was changed";
    write(path, "Dear friend, the queens are laying.\n");
    EXPECT_EQ(refusalOf(path), text);
    write(path, {});
    EXPECT_EQ(refusalOf(path), text);
    const auto other = at(QStringLiteral("other.sqlite"));
    tamper(other, QStringLiteral("CREATE TABLE song (title TEXT)"));
    EXPECT_EQ(refusalOf(other), text);
}

TEST_F(Refused, NewerSchema) {
    const auto path = makeSmallBook();
    tamper(path, QStringLiteral("PRAGMA user_version = 8"));
    EXPECT_EQ(refusalOf(path),
              "was made by a newer Tenthday (schema 8, this one knows 7); nothing was changed");
}

TEST_F(Refused, NewerFactsRevision) {
    const auto path = makeSmallBook();
    tamper(path, QStringLiteral("UPDATE book SET facts_revision = 9"));
    EXPECT_EQ(refusalOf(path), "was made by a newer Tenthday (facts revision 9, this one knows " +
                                   std::to_string(kNewestFactsRevision) + "); nothing was changed");
}

TEST_F(Refused, Damaged) {
    const auto path = makeSmallBook();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.resize(file.size() / 2));
    file.close();
    EXPECT_EQ(refusalOf(path), "the file is damaged (its end is missing); nothing was changed");

    const auto other = makeSmallBook(QStringLiteral("other.tenthday"));
    QFile scratched(other);
    ASSERT_TRUE(scratched.open(QIODevice::ReadWrite));
    for (qint64 at = 4096; at < scratched.size(); at += 4096) {
        scratched.seek(at);
        scratched.write(QByteArray(512, '\x5A'));
    }
    scratched.close();
    EXPECT_TRUE(refusalOf(other).starts_with("the file is damaged")) << "scratched";
}

TEST_F(Opening, ALargeFileIsLookedThroughBeforeItIsWritten) {
    const auto path = makeSmallBook();
    auto options = fixedOptions();
    options.checkedAtOnce = 0;
    const auto page =
        open(path)->connection().readOne(QStringLiteral("SELECT rootpage FROM sqlite_master "
                                                        "WHERE name = 'change'"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.seek((std::get<std::int32_t>(page.value()) - 1) *
              4096);  // no row of the book stands there
    file.write(QByteArray(4096, '\x5A'));
    file.close();
    EXPECT_FALSE(BookFile::open(path, fixedOptions()));
    const auto book = open(path, options);
    EXPECT_TRUE(book->read());
    const auto before = state();
    ChangeSet changes;
    changes.add(Line{test::id<Line>(1), 1, "amber"});
    const auto written = book->write(changes);
    ASSERT_FALSE(written);
    EXPECT_NE(written.error().text.find(": the file is damaged"), std::string::npos);
    EXPECT_FALSE(book->backUp());
    EXPECT_EQ(state(), before);
}

TEST_F(Opening, NamesARowThatCannotBeRight) {
    const auto path = makeSmallBook();
    tamper(path, QStringLiteral("UPDATE box_layout SET layout = '3+x'"));
    const auto read = open(path)->read();
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().text,
              path.toStdString() +
                  ": box_layout 01900000-0000-7000-8000-000000000001: box_layout.layout: frames "
                  "of each side are needed, such as 7 or 3+3: 3+x");
}

TEST_F(Opening, ForReadingLeavesNoTraceBesideTheBook) {
    const auto path = makeSmallBook();
    const auto before = state();
    const auto book = open(path, fixedOptions(Access::ReadOnly));
    ASSERT_TRUE(book->read());
    EXPECT_EQ(state(), before);
    const auto written = book->write(test::smallBookRows());
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().text,
              path.toStdString() + ": is open for reading only; nothing was changed");
    EXPECT_EQ(state(), before);
}

TEST_F(Opening, AFileMarkedReadOnlyIsReadAndNotWritten) {
    const auto path = makeSmallBook();
    ASSERT_TRUE(QFile::setPermissions(path, QFileDevice::ReadOwner));
    const auto before = state();
    {
        const auto book = open(path);
        EXPECT_TRUE(book->isReadOnly());
        EXPECT_TRUE(book->read());
        EXPECT_FALSE(book->write(test::smallBookRows()));
        EXPECT_TRUE(book->backUp());
    }
    EXPECT_EQ(state(), before);
}

TEST_F(Opening, ASecondWriterIsToldWhoHasItAndGetsItAfterwards) {
    const auto path = makeSmallBook();
    auto first = open(path);
    const auto second = BookFile::open(path, fixedOptions());
    ASSERT_FALSE(second);
    const auto& text = second.error().text;
    EXPECT_NE(text.find("is open for writing by "), std::string::npos) << text;
    EXPECT_NE(text.find("(process " + std::to_string(QCoreApplication::applicationPid()) + ")"),
              std::string::npos)
        << text;
    EXPECT_TRUE(open(path, fixedOptions(Access::ReadOnly))->read()) << "readers need no lock";
    first.reset();
    EXPECT_TRUE(BookFile::open(path, fixedOptions()));
    EXPECT_FALSE(QFileInfo::exists(lockPathOf(path)));
}

TEST_F(Opening, ASecondNameForTheSameFileIsNoWayRoundTheLock) {
    const auto path = makeSmallBook();
    const auto link = at(QStringLiteral("link.tenthday"));
    ASSERT_TRUE(QFile::link(path, link));
    const auto first = open(path);
    EXPECT_FALSE(BookFile::open(link, fixedOptions()));
}

TEST_F(Opening, TakesOverALockOfAProcessThatIsGone) {
    const auto path = makeSmallBook();
    QFile lock(lockPathOf(path));
    ASSERT_TRUE(lock.open(QIODevice::WriteOnly));
    QProcess gone;
    gone.start(QStringLiteral("true"), {});
    const auto pid = gone.processId();
    ASSERT_TRUE(gone.waitForFinished());
    lock.write(QByteArray::number(pid) + "\ntenthday\n" + QSysInfo::machineHostName().toUtf8() +
               "\n");
    lock.close();
    EXPECT_FALSE(open(path)->isReadOnly());
}

TEST_F(Opening, FindsTheSeasonOfTheDay) {
    ChangeSet rows = test::smallBookRows();
    rows.add(
        Season{test::id<Season>(2), 1, "2028", test::day("2028-04-01"), test::day("2028-09-30")});
    ASSERT_TRUE(createBook(at(QStringLiteral("two.tenthday")), rows, fixedOptions()));
    const auto seasonOn = [&](std::string_view today) {
        auto options = fixedOptions(Access::ReadOnly);
        options.clock = Clock(test::day(today));
        return open(at(QStringLiteral("two.tenthday")), options)->read().value();
    };
    EXPECT_EQ(seasonOn("2027-06-01").seasonId(), test::id<Season>(1));
    EXPECT_EQ(seasonOn("2027-06-01").all<Batch>().size(), 1U);
    EXPECT_EQ(seasonOn("2026-01-01").seasonId(), test::id<Season>(1)) << "the next to come";
    EXPECT_EQ(seasonOn("2027-12-01").seasonId(), test::id<Season>(1)) << "late queens may be in it";
    EXPECT_EQ(seasonOn("2028-01-10").seasonId(), test::id<Season>(2)) << "the next to come";
    EXPECT_EQ(seasonOn("2030-01-01").seasonId(), test::id<Season>(2)) << "the last";
    EXPECT_EQ(seasonOn("2028-05-01").all<Batch>().size(), 0U);
    EXPECT_EQ(seasonOn("2028-05-01").all<BatchBar>().size(), 0U);
    auto options = fixedOptions(Access::ReadOnly);
    const auto all =
        open(at(QStringLiteral("two.tenthday")), options)->read({test::id<Season>(2), true});
    EXPECT_EQ(all.value().all<Batch>().size(), 1U);
}

TEST_F(Opening, MakesABookOnlyWhereThereIsNone) {
    const auto path = makeSmallBook();
    const auto before = state();
    const auto again = createBook(path, test::smallBookRows(), fixedOptions());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().text, path.toStdString() + ": is there already; nothing was changed");
    EXPECT_FALSE(createBook(at(QStringLiteral("none/x.tenthday")), test::smallBookRows()));
    ChangeSet bad = test::smallBookRows();
    bad.add(DayOff{test::id<DayOff>(1), 1, test::day("2027-06-02"), test::day("2027-06-01"), ""});
    EXPECT_FALSE(createBook(at(QStringLiteral("bad.tenthday")), bad, fixedOptions()));
    EXPECT_EQ(state(), before);
}

}  // namespace
}  // namespace tenthday
