#include "window/questions.h"

#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "screen_text/window_text.h"
#include "window/backup_dialog.h"

namespace tenthday {
namespace {

QString documents() { return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation); }

/// The entry's text without key mark and dots, as a dialog's title.
QString asTitle(QString text) { return text.remove(u'&').remove(QStringLiteral(" ...")); }

QString saveName(QWidget* window, const QString& title, const QString& suggestion) {
    QFileDialog dialog(window, title, QString(), window_text::bookFiles());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("tenthday"));
    dialog.selectFile(suggestion);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

}  // namespace

QString DialogQuestions::bookToOpen() {
    return QFileDialog::getOpenFileName(window_, asTitle(window_text::openBook()), documents(),
                                        window_text::bookFiles());
}

QString DialogQuestions::placeForNewBook() {
    return saveName(window_, asTitle(window_text::newBook()),
                    QDir(documents()).filePath(window_text::newBookName()));
}

QString DialogQuestions::placeForCopy(const QString& suggestion) {
    return saveName(window_, asTitle(window_text::saveCopy()), suggestion);
}

QString DialogQuestions::backupToRestore(const QStringList& backups) {
    if (backups.isEmpty()) {
        QMessageBox::information(window_, asTitle(window_text::restoreBackup()),
                                 window_text::noBackups());
        return {};
    }
    BackupDialog dialog(backups, window_);
    return dialog.exec() == QDialog::Accepted ? dialog.chosen() : QString();
}

bool DialogQuestions::restoreInstead(const Error& why, const QString& backup) {
    QMessageBox box(QMessageBox::Warning, window_text::title({}), window_text::cannotOpen(),
                    QMessageBox::NoButton, window_);
    box.setInformativeText(QString::fromStdString(why.text) + QStringLiteral("\n\n") +
                           window_text::restoreDamaged(backup));
    const auto* restore = box.addButton(window_text::restoreNow(), QMessageBox::AcceptRole);
    box.addButton(window_text::doNotOpen(), QMessageBox::RejectRole);
    box.exec();
    return box.clickedButton() == restore;
}

bool DialogQuestions::readInstead(const Error& why) {
    QMessageBox box(QMessageBox::Question, window_text::title({}), window_text::cannotOpen(),
                    QMessageBox::NoButton, window_);
    box.setInformativeText(QString::fromStdString(why.text));
    const auto* read = box.addButton(window_text::openForReading(), QMessageBox::AcceptRole);
    box.addButton(window_text::doNotOpen(), QMessageBox::RejectRole);
    box.exec();
    return box.clickedButton() == read;
}

void DialogQuestions::tell(const QString& what, const Error& why, const QString& hint) {
    QMessageBox box(QMessageBox::Warning, window_text::title({}), what, QMessageBox::Ok, window_);
    const auto reason = QString::fromStdString(why.text);
    box.setInformativeText(hint.isEmpty() ? reason : reason + QStringLiteral("\n\n") + hint);
    box.exec();
}

}  // namespace tenthday
