#include "book/restore.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/book/book_fixture.h"
#include "book/backups.h"
#include "book/book_lock.h"
#include "records/verbs.h"

namespace tenthday {
namespace {

using test::day;

class Restore : public test::BookTest {
protected:
    void SetUp() override {
        path_ = makeSmallBook();
        backup_ = open(path_)->backUp().value();
        const auto move = moveBatch(reread(path_), test::kBatch, day("2027-06-08"));
        ASSERT_TRUE(open(path_)->write(move.value()).ok());
    }
    Result<QString> restore() { return restoreBackup(path_, backup_, day("2027-06-09")); }

    QString path_;
    QString backup_;
};

TEST_F(Restore, PutsTheBackupInPlaceAndKeepsWhatWasThere) {
    const auto kept = restore();
    ASSERT_TRUE(kept.ok());
    EXPECT_TRUE(reread(path_).sameContent(test::smallBook()));
    EXPECT_EQ(reread(kept.value()).find(test::kBatch)->day, day("2027-06-08"));
    EXPECT_TRUE(kept.value().endsWith(QStringLiteral("mill-2027-06-09-before-restore-1.tenthday")));
}

TEST_F(Restore, TwiceOnADayKeepsBoth) {
    ASSERT_TRUE(restore().ok());
    const auto second = restore();
    ASSERT_TRUE(second.ok());
    EXPECT_TRUE(second.value().endsWith(QStringLiteral("before-restore-2.tenthday")));
    EXPECT_EQ(backupsOf(path_).size(), 3);
}

TEST_F(Restore, FindsTheBackupsOfABookWithBracketsInItsName) {
    const auto path = at(QStringLiteral("ops [1].tenthday"));
    ASSERT_TRUE(createBook(path, test::smallBookRows(), test::fixedOptions()).ok());
    const auto book = BookFile::open(path, test::fixedOptions()).value();
    ASSERT_TRUE(book->backUp().ok());
    EXPECT_EQ(backupsOf(path).size(), 1);
}

TEST_F(Restore, WhatIsKeptIsNeverRotatedAway) {
    const auto kept = restore().value();
    rotateBackups(path_);
    EXPECT_TRUE(QFile::exists(kept));
}

TEST_F(Restore, ABackupThatIsNotSoundIsRefusedAndNothingChanges) {
    QFile file(backup_);
    ASSERT_TRUE(file.resize(file.size() / 2));
    const auto before = state();
    const auto done = restore();
    ASSERT_FALSE(done.ok());
    EXPECT_NE(done.error().text.find("not sound"), std::string::npos);
    EXPECT_EQ(state(), before);
}

TEST_F(Restore, ABookThatSomebodyHoldsIsLeftAlone) {
    const auto other = open(path_);
    const auto done = restore();
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(reread(path_).find(test::kBatch)->day, day("2027-06-08"));
}

TEST_F(Restore, ADamagedBookIsKeptByteForByteWithItsJournal) {
    QFile file(path_);
    const auto half = file.size() / 2;
    ASSERT_TRUE(file.resize(half));
    QFile journal(path_ + QStringLiteral("-journal"));
    ASSERT_TRUE(journal.open(QIODevice::WriteOnly));
    journal.write("left over");
    journal.close();
    EXPECT_EQ(newestGoodBackup(path_), backup_);
    const auto kept = restore();
    ASSERT_TRUE(kept.ok());
    EXPECT_EQ(QFile(kept.value()).size(), half);
    EXPECT_TRUE(QFile::exists(kept.value() + QStringLiteral("-journal")));
    EXPECT_FALSE(QFile::exists(path_ + QStringLiteral("-journal")));
    EXPECT_TRUE(reread(path_).sameContent(test::smallBook()));
}

TEST_F(Restore, ABackupOfAnOlderSchemaIsTakenAndBroughtUpToDate) {
    dropTablesSince(backup_, 2);
    tamper(backup_, QStringLiteral("PRAGMA user_version = 1"));
    EXPECT_EQ(newestGoodBackup(path_), backup_);
    ASSERT_TRUE(restore().ok());
    EXPECT_TRUE(open(path_)->read().value().sameContent(test::smallBook()));
}

TEST_F(Restore, ThroughALinkTheBookBehindItIsRestored) {
    const auto link = at(QStringLiteral("link.tenthday"));
    ASSERT_TRUE(QFile::link(path_, link));
    ASSERT_TRUE(restoreBackup(link, backup_, day("2027-06-09")).ok());
    EXPECT_TRUE(QFileInfo(link).isSymLink());
    EXPECT_TRUE(reread(path_).sameContent(test::smallBook()));
}

TEST_F(Restore, ABookThatIsGoneComesBack) {
    ASSERT_TRUE(QFile::remove(path_));
    const auto kept = restore();
    ASSERT_TRUE(kept.ok());
    EXPECT_TRUE(kept.value().isEmpty());
    EXPECT_TRUE(reread(path_).sameContent(test::smallBook()));
}

TEST_F(Restore, TheNewestGoodBackupIsNotABrokenNewerOne) {
    const auto newer = QDir(backupFolderOf(path_)).filePath(backupNameOf(path_, day("2029-01-01")));
    QFile file(newer);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("no book");
    file.close();
    EXPECT_EQ(newestGoodBackup(path_), backup_);
}

TEST_F(Restore, OnlyADamagedBookIsCalledSo) {
    EXPECT_FALSE(isDamaged(path_));
    EXPECT_FALSE(isDamaged(at(QStringLiteral("nothing.tenthday"))));
    QFile file(path_);
    ASSERT_TRUE(file.resize(file.size() / 2));
    EXPECT_TRUE(isDamaged(path_));
}

}  // namespace
}  // namespace tenthday
