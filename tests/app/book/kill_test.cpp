/// A writer killed at any moment loses no edit it was told is saved, and leaves none half done.
#include <QCoreApplication>
#include <QProcess>
#include <QThread>
#include <random>

#include "app/book/book_fixture.h"
#include "app/book/child_writer.h"
#include "book/check_book.h"

namespace tenthday {
namespace {

using KilledWriter = test::BookTest;

/// Starts a writer, kills it some time after its first edit; gives the last edit it reported.
int lastReportedBeforeKill(const QString& path, int firstEdit, int microseconds) {
    QProcess child;
    child.start(QCoreApplication::applicationFilePath(),
                {QString::fromLatin1(test::kChildWriterFlag), path, QString::number(firstEdit)});
    EXPECT_TRUE(child.waitForReadyRead(20'000)) << child.readAllStandardError().toStdString();
    QThread::usleep(static_cast<unsigned long>(microseconds));
    child.kill();
    EXPECT_TRUE(child.waitForFinished(20'000));
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit) << "it was to be killed while writing";
    const auto lines = child.readAllStandardOutput().split('\n');
    return lines.size() < 2 ? -1 : lines[lines.size() - 2].toInt();
}

/// How many rows each edit left behind, by number of edit.
std::map<int, int> rowsByEdit(const Snapshot& snapshot) {
    std::map<int, int> rows;
    for (const auto& row : snapshot.all<DayOff>()) ++rows[std::stoi(row->note)];
    return rows;
}

TEST_F(KilledWriter, LosesNothingItReportedInAHundredKills) {
    const auto path = makeSmallBook();
    std::mt19937 random(20270610);
    std::uniform_int_distribution<int> wait(0, 20'000);
    int next = 0;
    int unreported = 0;
    int journalsLeft = 0;
    for (int round = 0; round < 100; ++round) {
        const int reported = lastReportedBeforeKill(path, next, wait(random));
        ASSERT_GE(reported, next) << "round " << round;
        const bool midway = QFileInfo::exists(path + QStringLiteral("-journal"));
        journalsLeft += midway ? 1 : 0;
        // A listing may come first, also where the writer left a journal to roll back.
        const auto rows = rowsByEdit(round % 2 == 0 ? reread(path) : open(path)->read().value());
        const int last = rows.rbegin()->first;
        ASSERT_GE(last, reported) << "lost an edit in round " << round;
        ASSERT_LE(last, reported + 1);
        ASSERT_EQ(static_cast<int>(rows.size()), last + 1);
        for (const auto& [edit, count] : rows)
            ASSERT_EQ(count, test::kRowsOfAChildEdit) << "edit " << edit << " is half there";
        unreported += last - reported;
        next = last + 1;
    }
    const auto lines = checkBook(path).value();
    for (const auto& line : lines) EXPECT_TRUE(line.good) << line.detail;
    EXPECT_GT(journalsLeft, 0) << "no kill came in the middle of a transaction";
    RecordProperty("edits", next);
    RecordProperty("journals_left", journalsLeft);
    RecordProperty("committed_unreported", unreported);
}

}  // namespace
}  // namespace tenthday
