#include "book/backups.h"

#include <QDir>

#include "app/book/book_fixture.h"

namespace tenthday {
namespace {

using test::day;

std::vector<Day> daily(std::string_view from, int count) {
    std::vector<Day> days;
    for (int i = 0; i < count; ++i) days.push_back(day(from) + Days{i});
    return days;
}
std::vector<Day> list(std::initializer_list<const char*> texts) {
    std::vector<Day> days;
    for (const char* text : texts) days.push_back(day(text));
    return days;
}

struct Rotation {
    const char* name;
    std::vector<Day> there;
    std::vector<Day> kept;
};
void PrintTo(const Rotation& r, std::ostream* out) { *out << r.name; }

class BackupRotation : public ::testing::TestWithParam<Rotation> {};

TEST_P(BackupRotation, Keeps) { EXPECT_EQ(backupsToKeep(GetParam().there), GetParam().kept); }

// clang-format off
INSTANTIATE_TEST_SUITE_P(Table, BackupRotation, ::testing::Values(
    Rotation{"NothingOfNothing", {}, {}},
    Rotation{"SevenDays", daily("2027-05-03", 7), daily("2027-05-03", 7)},
    // Mon 3 May to Mon 10 May: the Monday before is the newest of no week, and no month's.
    Rotation{"EighthDayGoes", daily("2027-05-03", 8), daily("2027-05-04", 7)},
    // Days of 7, weeks that end on Sundays 2 May and 25 April, and the end of April.
    Rotation{"ThreeWeeks", daily("2027-04-20", 20),
             list({"2027-04-25", "2027-04-30", "2027-05-02", "2027-05-03", "2027-05-04",
                   "2027-05-05", "2027-05-06", "2027-05-07", "2027-05-08", "2027-05-09"})},
    // Opened now and then: days count, not calendar days gone by.
    Rotation{"OldOnesStayWhileNoneAreNewer",
             list({"2025-01-10", "2025-03-02", "2027-05-01"}),
             list({"2025-01-10", "2025-03-02", "2027-05-01"})},
    Rotation{"TwiceTheSame", list({"2027-05-01", "2027-05-01"}), list({"2027-05-01"})}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST(BackupRotation, KeepsTwelveMonthsOfTwoYears) {
    const auto kept = backupsToKeep(daily("2026-01-01", 730));  // until 31 December 2027
    EXPECT_EQ(kept.front(), day("2027-01-31"));
    EXPECT_EQ(kept.back(), day("2027-12-31"));
    // 7 days from 25 December; weeks end on 26, 19, 12, 5 December, 28, 21, 14 November and with
    // 31 December; months end on 31 January to 30 November and with 31 December.
    EXPECT_EQ(kept.size(), 7U + 6U + 11U);
}

TEST(BackupNames, AreReadBack) {
    const auto book = QStringLiteral("/home/a/north mill.2.tenthday");
    EXPECT_EQ(backupFolderOf(book).toStdString(), "/home/a/north mill.2-backups");
    const auto name = backupNameOf(book, day("2027-05-10"));
    EXPECT_EQ(name.toStdString(), "north mill.2-2027-05-10.tenthday");
    EXPECT_EQ(dayOfBackup(book, name), day("2027-05-10"));
    const auto before = migrationBackupNameOf(book, day("2027-05-10"), 2);
    EXPECT_EQ(before.toStdString(), "north mill.2-2027-05-10-before-schema-2.tenthday");
    EXPECT_EQ(dayOfBackup(book, before), std::nullopt);
    EXPECT_EQ(dayOfBackup(book, QStringLiteral("other-2027-05-10.tenthday")), std::nullopt);
}

using Backups = test::BookTest;

TEST_F(Backups, AreMadeOnceADayAndCanBeOpened) {
    const auto path = makeSmallBook();
    const auto book = open(path);
    const auto made = book->backUp();
    ASSERT_TRUE(made) << made.error().text;
    EXPECT_EQ(made.value().toStdString(),
              at(QStringLiteral("mill-backups/mill-2027-06-01.tenthday")).toStdString());
    EXPECT_TRUE(reread(made.value()).sameContent(reread(path)));
    const auto again = book->backUp();
    ASSERT_TRUE(again) << again.error().text;
    EXPECT_EQ(again.value().toStdString(), "");
}

TEST_F(Backups, RotateAndLeaveOtherFilesAlone) {
    const auto path = makeSmallBook();
    const QDir folder(at(QStringLiteral("mill-backups")));
    ASSERT_TRUE(QDir().mkpath(folder.path()));
    const auto put = [&](const QString& name) {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    };
    for (const auto d : daily("2027-05-24", 8)) put(backupNameOf(path, d));
    put(QStringLiteral("mill-2020-01-01-before-schema-1.tenthday"));
    put(QStringLiteral("mill-notes.txt"));
    ASSERT_TRUE(open(path)->backUp());
    EXPECT_EQ(folder.entryList(QDir::Files).join(u'\n').toStdString(),
              "mill-2020-01-01-before-schema-1.tenthday\n"
              "mill-2027-05-26.tenthday\nmill-2027-05-27.tenthday\nmill-2027-05-28.tenthday\n"
              "mill-2027-05-29.tenthday\nmill-2027-05-30.tenthday\nmill-2027-05-31.tenthday\n"
              "mill-2027-06-01.tenthday\nmill-notes.txt");
}

TEST_F(Backups, ASavedCopyIsTheWholeBookAndOverwritesNothingUnasked) {
    const auto path = makeSmallBook();
    const auto book = open(path);
    const auto copy = at(QStringLiteral("copy.tenthday"));
    ASSERT_TRUE(book->saveCopy(copy));
    EXPECT_TRUE(reread(copy).sameContent(reread(path)));
    const auto before = state();
    EXPECT_FALSE(book->saveCopy(copy));
    EXPECT_FALSE(book->saveCopy(path, true)) << "the open book itself";
    EXPECT_FALSE(book->saveCopy(at(QStringLiteral("no such folder/copy.tenthday"))));
    EXPECT_EQ(state(), before);
    EXPECT_TRUE(book->saveCopy(copy, true));
}

}  // namespace
}  // namespace tenthday
